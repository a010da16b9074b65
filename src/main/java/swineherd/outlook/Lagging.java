package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Reweighing;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * A group that was weighed lately and lags far behind what such pigs do on such feed.
 *
 * @param pigs name of the group
 * @param on day of the last weight
 * @param found that weight, kg
 * @param expected what was expected then, kg
 * @param finish when they are likely finished at this pace, a sentence; empty if that is not known
 */
public record Lagging(
    String pigs, LocalDate on, double found, double expected, String finish, List<String> grounds)
    implements Outlook {

  /** An older weight says little of today; judgement. */
  private static final int LATELY = 42;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Course course : courses) {
      int last = course.weighings().size() - 1;
      if (last < 0 || !course.weighings().get(last).lagging()) {
        continue;
      }
      Reweighing weighing = course.weighings().get(last);
      LocalDate on = weighing.later().on();
      boolean there =
          course.slaughterOn() == null || !course.slaughterOn().isBefore(setup.checkOn());
      if (there && !on.plusDays(LATELY).isBefore(setup.checkOn())) {
        all.add(
            new Lagging(
                course.pigs(),
                on,
                weighing.later().kg(),
                weighing.before().weightOn(on).likely(),
                course.finish() == null
                    ? ""
                    : "At this pace they are finished about "
                        + Dates.words(course.finish().likely())
                        + ".",
                course.grounds()));
      }
    }
    return all;
  }
}
