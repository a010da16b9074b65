package swineherd.outlook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import swineherd.figures.Handling;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * The ramp by which grown pigs walk on to a trailer of usual height. There is one where any pigs
 * go, unless all are slaughtered at home; it is for those that go first.
 *
 * @param pigs name of the group that goes first; of the first group where nobody can say
 * @param good length that pigs climb well, m
 * @param least length at the steepest that is allowed, m
 * @param by three weeks before they go, or today; null if nobody can say
 */
public record LoadingRamp(
    String pigs, double good, double least, LocalDate by, List<String> grounds) implements Outlook {

  private static final int LEAD_DAYS = 21;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Stay> stays =
        Stay.of(setup, courses).stream()
            .filter(s -> s.group().slaughterAt() != Group.SlaughterAt.HOME)
            .toList();
    if (stays.isEmpty()) {
      return List.of();
    }
    Stay first =
        stays.stream()
            .filter(LoadingRamp::endKnown)
            .min(Comparator.comparing(Stay::to))
            .orElse(stays.get(0));
    LocalDate by = first.to().minusDays(LEAD_DAYS);
    double rise = limit("floor-rise");
    return List.of(
        new LoadingRamp(
            first.group().name(),
            Handling.rampLength(rise, limit("ramp-good")),
            Handling.rampLength(rise, limit("ramp-limit")),
            !endKnown(first) ? null : by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
            Grounds.of(first.path(), "slaughterOn", "targetWeight").list()));
  }

  private static boolean endKnown(Stay stay) {
    return stay.group().slaughterOn() != null || stay.course() != null;
  }

  private static double limit(String key) {
    return Table.named("transport").row(key).number("value");
  }
}
