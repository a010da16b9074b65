package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Handling;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;

/**
 * The ramp by which grown pigs walk on to a trailer of usual height.
 *
 * @param pigs name of the group
 * @param leaves day they go; null if nobody can say
 * @param good length that pigs climb well, m
 * @param least length at the steepest that is allowed, m
 * @param by three weeks before they go, or today; null if nobody can say
 */
public record LoadingRamp(
    String pigs, LocalDate leaves, double good, double least, LocalDate by, List<String> grounds)
    implements Outlook {

  private static final int LEAD_DAYS = 21;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    double rise = limit("floor-rise");
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      boolean known = stay.group().slaughterOn() != null || stay.course() != null;
      LocalDate by = stay.to().minusDays(LEAD_DAYS);
      all.add(
          new LoadingRamp(
              stay.group().name(),
              known ? stay.to() : null,
              Handling.rampLength(rise, limit("ramp-good")),
              Handling.rampLength(rise, limit("ramp-limit")),
              !known ? null : by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
              Grounds.of(stay.path(), "slaughterOn", "targetWeight").list()));
    }
    return all;
  }

  private static double limit(String key) {
    return Table.named("transport").row(key).number("value");
  }
}
