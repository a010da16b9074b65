package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The wave between the two points that are known is a judgement: held against station normals. */
class WinterNightsTest {
  private static final LocalDate MIDWINTER = LocalDate.of(2028, 1, 20);

  // NOAA normals 1991-2020, Minneapolis, mean daily minimum in degF, rounded [memory], and mean
  // first hard freeze about 20 October [memory]; a cold week is 6 degrees colder (judgement)
  @ParameterizedTest(name = "Minneapolis, {0}: mean minimum {1} degF, NOAA normals [memory]")
  @CsvSource({"2027-11-15, 27.7", "2027-12-15, 15.2", "2028-02-15, 12.7", "2028-03-15, 24.9"})
  void nights_lie_near_station_normals_and_on_the_cold_side(LocalDate day, double fahrenheit) {
    ColdSeason season = new ColdSeason(LocalDate.of(2027, 10, 7), LocalDate.of(2028, 5, 4));
    WinterNights nights = WinterNights.ofColdWeeks(season, 10, -13);
    double normal = (fahrenheit - 32) / 1.8 - 6;
    assertThat(nights.on(day)).isBetween(normal - 3, normal + 1);
  }

  // -2.2 degC (28 degF) is the hard freeze of the United States weather service [read]
  @Test
  void the_two_known_points_are_met() {
    WinterNights nights = new WinterNights(LocalDate.of(2027, 10, 20), MIDWINTER, -19);
    assertThat(nights.on(LocalDate.of(2027, 10, 20))).isCloseTo(-2.2, within(1e-9));
    assertThat(nights.on(MIDWINTER)).isCloseTo(-19, within(1e-9));
  }

  // by hand: cos(107 d) -0.2666, cos(94 d) -0.0462, share 0.174, -2.2 - 0.174 x 19.36 [derived]
  @Test
  void a_night_in_late_april_worked_by_hand() {
    WinterNights nights = new WinterNights(LocalDate.of(2027, 10, 5), MIDWINTER, -21.56);
    assertThat(nights.on(LocalDate.of(2028, 4, 23))).isCloseTo(-5.57, within(0.02));
  }

  @Test
  void a_winter_no_colder_than_its_first_frost_is_level() {
    WinterNights nights = new WinterNights(LocalDate.of(2027, 11, 20), MIDWINTER, -1);
    assertThat(nights.on(LocalDate.of(2027, 12, 20))).isEqualTo(-2.2);
    assertThat(nights.on(MIDWINTER)).isEqualTo(-2.2);
  }

  @ParameterizedTest(name = "300 draws with the fixed seed {0}")
  @ValueSource(longs = {91, 92})
  void colder_towards_midwinter_and_alike_on_both_sides(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 300; i++) {
      int before = random.nextInt(20, 180);
      WinterNights nights =
          new WinterNights(MIDWINTER.minusDays(before), MIDWINTER, random.nextDouble(-50, -2.2));
      int days = random.nextInt(1, 180);
      assertThat(nights.on(MIDWINTER.minusDays(days)))
          .isCloseTo(nights.on(MIDWINTER.plusDays(days)), within(1e-9))
          .isGreaterThanOrEqualTo(nights.on(MIDWINTER.minusDays(days - 1)));
    }
  }

  @Test
  void a_frost_after_midwinter_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new WinterNights(MIDWINTER.plusDays(1), MIDWINTER, -10));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new WinterNights(MIDWINTER.minusDays(90), MIDWINTER, -80));
  }
}
