package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FencePowerTest {
  @ParameterizedTest(name = "{0}: {1} A for {2} days, {3} usable: {4} Ah, {6}")
  @CsvSource({
    "EF21, 0.100, 8, 0.5, 38.4, 0.1, worked example [derived]",
    "EF22, 0.195, 8, 0.576, 65, 1, energizer manual [read]",
    "EF23, 0.450, 8, 0.576, 150, 1, energizer manual [read]",
    "smallest, 0.060, 8, 0.576, 20, 1, energizer manual [read]",
  })
  void a_battery_is_as_large_as_published(
      String id,
      double amperes,
      double days,
      double usable,
      double ampereHours,
      double tolerance,
      String source) {
    assertThat(FencePower.battery(amperes, days, usable))
        .as("%s, %s", id, source)
        .isCloseTo(ampereHours, within(tolerance));
    assertThat(FencePower.days(FencePower.battery(amperes, days, usable), amperes, usable))
        .isCloseTo(days, within(1e-9));
  }

  @ParameterizedTest(name = "{0}: {1} A at {2} h: {3} W, {5}")
  @CsvSource({
    "EF24, 0.290, 4, 25.06, 0.05, energizer catalogue [read]",
    "EF25, 0.100, 1.5, 23.0, 0.1, worked example [derived]",
  })
  void a_panel_is_as_large_as_published(
      String id, double amperes, double hours, double watts, double tolerance, String source) {
    assertThat(FencePower.panel(amperes, hours))
        .as("%s, %s", id, source)
        .isCloseTo(watts, within(tolerance));
  }

  /** Energizer catalogue [read]; 1.5 J is midway between two of its units. */
  @ParameterizedTest(name = "{0} J draws {1} mA")
  @CsvSource({"0.3, 100", "1, 100", "1.5, 140", "2, 180", "3, 290"})
  void an_energizer_draws_the_published_current(double joules, double milliamps) {
    assertThat(FencePower.current(joules) * 1000).isCloseTo(milliamps, within(1e-9));
  }

  /**
   * Lead-acid: 80 % at 0 degC and 50 % at -20 degC [memory]; rated at 25 degC, IEC 60095-1
   * [memory].
   */
  @ParameterizedTest(name = "{0} degC: {1} [memory]")
  @CsvSource({"-20, 0.5", "-10, 0.65", "0, 0.8", "25, 1", "40, 1"})
  void the_cold_takes_its_share_of_a_battery(double degC, double share) {
    assertThat(FencePower.coldShare(degC)).isCloseTo(share, within(1e-9));
  }

  /** 50 to 55 degrees north: December 0.5 to 1, March and September 2.5 to 3.5, June 5 [memory]. */
  @ParameterizedTest(name = "{0}: {1} to {2} h [memory]")
  @CsvSource({"DECEMBER, 0.5, 1", "MARCH, 2.5, 3.5", "SEPTEMBER, 2.5, 3.5", "JUNE, 5, 5"})
  void the_sun_of_the_known_months_is_given(Month month, double low, double high) {
    Band sun = FencePower.peakSun(52, month);
    assertThat(sun.low()).isEqualTo(low);
    assertThat(sun.high()).isEqualTo(high);
  }

  @Test
  void the_sun_is_weaker_each_month_from_june_to_december() {
    for (int month = 6; month < 12; month++) {
      assertThat(FencePower.peakSun(52, Month.of(month + 1)).likely())
          .isLessThan(FencePower.peakSun(52, Month.of(month)).likely());
    }
  }

  @Test
  void usable_share_and_days_of_reserve_are_those_of_the_tables() {
    assertThat(FencePower.usable("lead-acid")).isEqualTo(0.5);
    assertThat(FencePower.usable("lithium")).isEqualTo(0.8);
    assertThat(FencePower.reserveDays().low()).isEqualTo(8);
    assertThat(FencePower.reserveDays().high()).isEqualTo(14);
  }

  @Test
  void what_nobody_published_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> FencePower.current(4));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FencePower.coldShare(-25));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FencePower.peakSun(-37, Month.JUNE))
        .withMessageContaining("-37");
  }

  /**
   * Between the known belts the one towards the pole is taken, so never more sun than there is: the
   * hours of 50 to 55 degrees in April, 3.3 to 4.0 [derived], at 45 degrees; of 25 to 35 degrees in
   * January, 3 to 4 [memory], as they stand.
   */
  @Test
  void a_panel_is_sized_by_the_belt_towards_the_pole() {
    assertThat(FencePower.leastPeakSun(45, Month.APRIL))
        .isEqualTo(FencePower.peakSun(52, Month.APRIL));
    assertThat(FencePower.leastPeakSun(30, Month.JANUARY))
        .isEqualTo(FencePower.peakSun(30, Month.JANUARY));
    assertThat(FencePower.leastPeakSun(30, Month.JUNE))
        .isEqualTo(FencePower.peakSun(52, Month.JUNE));
  }

  @Test
  void in_the_south_the_months_are_turned_round() {
    assertThat(FencePower.leastPeakSun(-42, Month.JUNE))
        .isEqualTo(FencePower.peakSun(52, Month.DECEMBER));
  }

  @Test
  void no_panel_is_sized_near_the_poles_or_the_equator() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FencePower.leastPeakSun(60, Month.JUNE));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FencePower.leastPeakSun(-10, Month.JUNE));
  }
}
