package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FirstFrostTest {
  private static final LocalDate USUAL = LocalDate.of(2027, 10, 20);

  @Test
  void KC07_the_early_date_of_20_October_is_7_October() {
    // mean - 1.2816 x 10 days; "early" is the tenth percentile at the Midwestern Regional Climate
    // Center [read]
    assertThat(new FirstFrost(USUAL, 10).early()).isEqualTo(LocalDate.of(2027, 10, 7));
  }

  @Test
  void the_mean_of_the_day_is_the_usual_day_and_its_spread_the_spread() {
    FirstFrost frost = new FirstFrost(USUAL, 12);
    assertThat(frost.mean(day -> (double) ChronoUnit.DAYS.between(USUAL, day)))
        .isCloseTo(0, within(1e-9));
    assertThat(frost.mean(day -> Math.pow((double) ChronoUnit.DAYS.between(USUAL, day), 2)))
        .isCloseTo(144, within(4.0));
  }

  // the normal distribution, from any table: 0.159, 0.5, 0.841, 0.977; steps of a quarter of the
  // spread allow a tenth of one step of probability
  @ParameterizedTest(name = "a frost within {0} days of the usual one: {1}, table of the normal")
  @CsvSource({"-10, 0.159", "0, 0.5", "10, 0.841", "20, 0.977"})
  void chances_are_those_of_the_normal_distribution(long days, double expected) {
    FirstFrost frost = new FirstFrost(USUAL, 10);
    LocalDate limit = USUAL.plusDays(days);
    double chance = frost.mean(day -> day.isBefore(limit) ? 1.0 : day.isEqual(limit) ? 0.5 : 0.0);
    assertThat(chance).isCloseTo(expected, within(0.01));
  }

  @Test
  void a_sure_frost_is_one_day() {
    assertThat(new FirstFrost(USUAL, 0).mean(day -> day.equals(USUAL) ? 1 : 0)).isEqualTo(1);
  }

  @Test
  void a_spread_of_more_than_forty_days_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new FirstFrost(USUAL, 41));
  }
}
