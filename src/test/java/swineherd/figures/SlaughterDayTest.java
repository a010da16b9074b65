package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.SlaughterDay.Fast;
import swineherd.figures.SlaughterDay.FeedOff;
import swineherd.figures.SlaughterDay.Hanging;
import swineherd.setup.Country;

class SlaughterDayTest {
  private static final LocalDateTime KILL = LocalDateTime.of(2025, 10, 14, 10, 0);

  @Test
  void SL01_feed_off_at_19_and_killed_at_10_is_fifteen_hours_ontario_05_065_read() {
    assertThat(SlaughterDay.hoursOffFeed(LocalDateTime.of(2025, 10, 13, 19, 0), KILL))
        .isEqualTo(15);
  }

  /** The ends belong to the better class: 12-18 h is best, over 18 and over 24 are worse. */
  @ParameterizedTest(name = "SL02 ontario-05-065 [read]: {0} h is {1}")
  @CsvSource({
    "15, GOOD",
    "10, SHORT",
    "20, LONG",
    "26, TOO_LONG",
    "11.9, SHORT",
    "12, GOOD",
    "18, GOOD",
    "18.1, LONG",
    "24, LONG",
    "24.1, TOO_LONG"
  })
  void a_fast_has_its_class(double hours, Fast fast) {
    assertThat(SlaughterDay.fast(hours)).isEqualTo(fast);
  }

  @Test
  void pigs_that_leave_in_the_morning_lose_their_feed_the_evening_before() {
    FeedOff off = SlaughterDay.feedOff(KILL.minusHours(3), KILL);
    assertThat(off.earliest()).isEqualTo(LocalDateTime.of(2025, 10, 13, 16, 0));
    assertThat(off.latest()).isEqualTo(LocalDateTime.of(2025, 10, 13, 22, 0));
    assertThat(off.fast()).isEqualTo(Fast.GOOD);
    // the published 19:00 lies inside
    assertThat(LocalDateTime.of(2025, 10, 13, 19, 0)).isBetween(off.earliest(), off.latest());
  }

  @Test
  void pigs_delivered_the_evening_before_are_fed_until_they_leave() {
    LocalDateTime leave = KILL.minusHours(16);
    FeedOff off = SlaughterDay.feedOff(leave, KILL);
    assertThat(off.earliest()).isEqualTo(KILL.minusHours(18));
    assertThat(off.latest()).isEqualTo(leave);
    assertThat(off.fast()).isEqualTo(Fast.GOOD);
  }

  @ParameterizedTest(name = "leaving {0} h before the kill: {1}")
  @CsvSource({"22, LONG", "30, TOO_LONG"})
  void pigs_that_leave_too_early_fast_too_long_and_it_is_said(int hours, Fast fast) {
    FeedOff off = SlaughterDay.feedOff(KILL.minusHours(hours), KILL);
    assertThat(off.earliest()).isEqualTo(off.latest()).isEqualTo(KILL.minusHours(hours));
    assertThat(off.fast()).isEqualTo(fast);
  }

  @Test
  void a_kill_before_the_journey_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SlaughterDay.feedOff(KILL.plusHours(1), KILL));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SlaughterDay.hoursOffFeed(KILL.plusHours(1), KILL));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> SlaughterDay.fast(Double.NaN));
  }

  @ParameterizedTest(name = "{0}: night {1} C, day {2} C, cooler {3}: {4}")
  @CsvSource({
    "SL13 usda-fb-2265 [read], 3, 9, false, REFUSED",
    "35 and 40 F usda-fb-2265 [read], 1.6, 4.4, false, SHED",
    "warm day, 1, 5, false, REFUSED",
    "warm night, 2, 4, false, REFUSED",
    "under 28 F usda-fb-2265 [read], -6, 1, false, SHED_MAY_FREEZE",
    "named cooler, 12, 22, true, COOLER",
  })
  void weather_decides_unless_a_cooler_is_named(
      String id, double night, double day, boolean cooler, Hanging hanging) {
    assertThat(SlaughterDay.hanging(night, day, cooler)).as(id).isEqualTo(hanging);
  }

  /** Common practice, no source: 16 weeks in the United States, 2 to 6 in the UK and EU. */
  @ParameterizedTest(name = "{0}: book by {1}")
  @CsvSource({
    "UNITED_STATES, 2025-06-24",
    "WALES, 2025-09-02",
    "IRELAND, 2025-09-02",
    "ELSEWHERE, 2025-06-24",
    ", 2025-06-24"
  })
  void a_place_is_booked_weeks_ahead_and_the_longest_where_nothing_is_known(
      Country country, LocalDate day) {
    assertThat(SlaughterDay.bookBy(KILL.toLocalDate(), country)).isEqualTo(day);
  }
}
