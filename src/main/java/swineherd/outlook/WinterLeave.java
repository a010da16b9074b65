package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swineherd.figures.WindChill;
import swineherd.figures.WinterNights;
import swineherd.setup.Setup;

/**
 * A group that goes to slaughter in the middle of a cold winter. There is one for each whose day,
 * set or likely, lies in the cold season of a winter of class C or harder, if its nights are known.
 *
 * @param pigs name of the group
 * @param day the day set, or the likely finish
 * @param night air on a night of an ordinary cold week then, degC
 * @param windChill what such air is like in an open trailer at 80 km/h, degC
 * @param by two weeks before, not before the day of the check
 */
public record WinterLeave(
    String pigs, LocalDate day, double night, double windChill, LocalDate by, List<String> grounds)
    implements Outlook {

  private static final double ON_THE_ROAD = 80;
  private static final int WEEKS = 2;

  static Optional<WinterLeave> of(Setup setup, WinterPen.Winterer group, WinterClimate climate) {
    LocalDate day = group.course().end();
    if (day == null
        || group.course().isOverdue()
        || climate.nights() == null
        || !group.stay().season().contains(day)
        || day.isBefore(setup.checkOn())) {
      return Optional.empty();
    }
    double night =
        WinterNights.ofColdWeeks(group.stay().season(), climate.spread(), climate.nights()).on(day);
    return Optional.of(
        new WinterLeave(
            group.course().pigs(),
            day,
            night,
            WindChill.celsius(night, ON_THE_ROAD),
            WinterStay.later(day.minusWeeks(WEEKS), setup.checkOn()),
            group.stay().grounds()));
  }
}
