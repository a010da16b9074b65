package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.shredzone.commons.suncalc.SunPosition;
import org.shredzone.commons.suncalc.SunTimes;

/**
 * Day length and height of the sun, against an astronomical library that is not part of the
 * program. Cooper's declination is known to be off by up to 1.5 degrees, in autumn [memory].
 */
class DaylightTest {
  private static final double COOPER = 1.5;

  @ParameterizedTest(name = "{0}: {1} degrees, day {2} of the year, {3} h, Cooper 1969 [derived]")
  @CsvSource({
    "KD01, 50, 355, 8.07, 0.02",
    "KD02, 40, 172, 15.01, 0.02",
    "table, 30, 355, 10.2, 0.05",
    "table, 40, 355, 9.3, 0.05",
    "table, 45, 355, 8.8, 0.05",
    "table, 52, 355, 7.7, 0.05",
    "table, 55, 355, 7.2, 0.05",
    "table, 60, 355, 5.9, 0.05",
    "south, -50, 172, 8.07, 0.02"
  })
  void day_length(String id, double latitude, int day, double hours, double tolerance) {
    assertThat(Daylight.hours(latitude, LocalDate.ofYearDay(2027, day)))
        .isCloseTo(hours, within(tolerance));
  }

  @ParameterizedTest(name = "{0} degrees, every fifth day of two years")
  @ValueSource(doubles = {-55, -45, -35, -10, 0, 15, 30, 40, 50, 55, 60})
  void agrees_with_an_astronomical_library_within_the_error_of_cooper(double latitude) {
    // an hour of day is 7.5 degrees of the sun's path on either side; near the equinox a degree of
    // declination moves it by tan(latitude) degrees
    double hours = COOPER * Math.abs(Math.tan(Math.toRadians(latitude))) / 7.5 + 0.05;
    for (int i = 0; i < 730; i += 5) {
      LocalDate date = LocalDate.of(2027, 1, 1).plusDays(i);
      SunTimes times = SunTimes.compute().on(date).utc().at(latitude, 0).execute();
      ZonedDateTime rise = Objects.requireNonNull(times.getRise());
      ZonedDateTime set = Objects.requireNonNull(times.getSet());
      double measured = Duration.between(rise, set).toSeconds() / 3600.0;
      assertThat(Daylight.hours(latitude, date))
          .as("day length at %s on %s", latitude, date)
          .isCloseTo(measured, within(hours));

      ZonedDateTime noon = Objects.requireNonNull(times.getNoon());
      double altitude = SunPosition.compute().on(noon).at(latitude, 0).execute().getTrueAltitude();
      assertThat(Daylight.noonHeight(latitude, date))
          .as("noon at %s on %s", latitude, date)
          .isCloseTo(altitude, within(COOPER));
    }
  }

  @Test
  void beyond_the_polar_circles_a_day_may_have_no_end_or_no_beginning() {
    assertThat(Daylight.hours(70, LocalDate.of(2027, 6, 21))).isEqualTo(24);
    assertThat(Daylight.hours(70, LocalDate.of(2027, 12, 21))).isZero();
    assertThat(Daylight.hours(-70, LocalDate.of(2027, 12, 21))).isEqualTo(24);
    assertThat(Daylight.hours(90, LocalDate.of(2027, 7, 1))).isEqualTo(24);
    assertThat(Daylight.noonHeight(70, LocalDate.of(2027, 12, 21))).isNegative();
  }

  @Test
  void refuses_a_latitude_off_the_globe() {
    for (double latitude : new double[] {90.1, -91, Double.NaN}) {
      assertThatExceptionOfType(OutsideDomainException.class)
          .isThrownBy(() -> Daylight.hours(latitude, LocalDate.of(2027, 1, 1)))
          .withMessageContaining("latitude");
    }
  }
}
