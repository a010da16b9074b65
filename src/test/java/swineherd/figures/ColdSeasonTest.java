package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** That a cold season is even about midwinter is this project's judgement: worked examples. */
class ColdSeasonTest {
  private static final MonthDay OCTOBER = MonthDay.of(10, 20);
  private static final MonthDay MAY = MonthDay.of(5, 20);

  @ParameterizedTest(name = "mean {0}, {1}, asked on {2}: {3} to {4} [derived]")
  @CsvSource({
    "--10-20, NORTH, 2027-03-01, 2026-10-07, 2027-05-05",
    "--10-20, NORTH, 2027-06-01, 2027-10-07, 2028-05-04",
    "--10-20, NORTH, 2027-12-31, 2027-10-07, 2028-05-04",
    "--05-20, SOUTH, 2027-01-15, 2027-05-07, 2027-10-02",
    "--05-20, SOUTH, 2027-10-03, 2028-05-07, 2028-10-02",
    "--01-05, NORTH, 2027-12-25, 2027-12-23, 2028-02-17"
  })
  void the_season_a_day_falls_into_or_the_next(
      String mean, Hemisphere hemisphere, LocalDate on, LocalDate start, LocalDate end) {
    assertThat(ColdSeason.currentOrNext(MonthDay.parse(mean), 10, hemisphere, on))
        .isEqualTo(new ColdSeason(start, end));
  }

  @Test
  void the_cold_months_run_over_the_end_of_the_year() {
    LocalDate on = LocalDate.of(2027, 6, 1);
    assertThat(ColdSeason.currentOrNext(OCTOBER, 10, Hemisphere.NORTH, on).months())
        .containsExactly(
            Month.OCTOBER,
            Month.NOVEMBER,
            Month.DECEMBER,
            Month.JANUARY,
            Month.FEBRUARY,
            Month.MARCH,
            Month.APRIL);
    assertThat(ColdSeason.currentOrNext(MAY, 10, Hemisphere.SOUTH, on).months())
        .containsExactly(Month.MAY, Month.JUNE, Month.JULY, Month.AUGUST, Month.SEPTEMBER);
  }

  @Test
  void both_ends_belong_to_it() {
    ColdSeason season = new ColdSeason(LocalDate.of(2027, 10, 7), LocalDate.of(2028, 5, 4));
    assertThat(season.days()).isEqualTo(211);
    assertThat(season.contains(season.start())).isTrue();
    assertThat(season.contains(season.end())).isTrue();
    assertThat(season.contains(season.start().minusDays(1))).isFalse();
    assertThat(season.contains(season.end().plusDays(1))).isFalse();
  }

  @Test
  void a_northern_date_in_the_south_is_refused() {
    LocalDate on = LocalDate.of(2027, 6, 1);
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> ColdSeason.currentOrNext(OCTOBER, 10, Hemisphere.SOUTH, on))
        .withMessageContaining("no day of a first frost");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> ColdSeason.currentOrNext(MAY, 10, Hemisphere.NORTH, on));
  }

  @ParameterizedTest(name = "300 draws with the fixed seed {0}")
  @ValueSource(longs = {81, 82})
  void a_season_is_never_over_and_earlier_freezes_make_it_longer(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 300; i++) {
      LocalDate on = LocalDate.of(2026, 1, 1).plusDays(random.nextInt(1500));
      int before = random.nextInt(20, 180);
      LocalDate mean = LocalDate.of(2027, 1, 20).minusDays(before);
      ColdSeason late = ColdSeason.currentOrNext(MonthDay.from(mean), 10, Hemisphere.NORTH, on);
      ColdSeason early =
          ColdSeason.currentOrNext(MonthDay.from(mean.minusDays(1)), 10, Hemisphere.NORTH, on);
      assertThat(late.end()).isAfterOrEqualTo(on);
      assertThat(on.until(late.start(), ChronoUnit.DAYS)).isLessThan(366);
      // a day more at either end
      assertThat(early.days()).isEqualTo(late.days() + 2);
    }
  }
}
