package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import swineherd.figures.Band;
import swineherd.figures.KnownWeight;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Reweighing;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;

/**
 * The last weight of a group against what was to be expected, if it is of the last weeks.
 *
 * @param pigs name of the group
 * @param on day of that weight
 * @param kg the weight, kg each
 * @param before the weight known before it, kg each
 * @param expected what was to be expected that day, kg; null where the curve does not go so far
 * @param lost whether they are lighter than before by more than both weights may be wrong
 * @param slow whether they have grown so slowly that something is likely to be wrong
 */
public record LastWeight(
    String pigs,
    LocalDate on,
    double kg,
    double before,
    Band expected,
    boolean lost,
    boolean slow,
    List<String> grounds)
    implements Outlook {

  static List<LastWeight> of(Setup setup, List<Course> courses) {
    long days = (long) Table.named("diary").row("weight-counts-for").number("value");
    LocalDate since = setup.checkOn().minusDays(days);
    List<LastWeight> all = new ArrayList<>();
    for (Course course : courses) {
      boolean here =
          course.slaughterOn() == null || !course.slaughterOn().isBefore(setup.checkOn());
      Reweighing last = last(course);
      if (here && last != null && !last.later().on().isBefore(since)) {
        all.add(of(setup, course, last));
      }
    }
    return all;
  }

  /**
   * The last one; a low one counts here even if the forecast doubts it, for ill pigs must not pass
   * for a slip of the scale. Null if there is none.
   */
  private static Reweighing last(Course course) {
    List<Reweighing> used = course.weighings();
    Reweighing last = used.isEmpty() ? null : used.get(used.size() - 1);
    for (KnownWeight doubted : course.doubted()) {
      boolean later = last == null || doubted.on().isAfter(last.later().on());
      if (later && course.forecast().deviations(doubted) < 0) {
        try {
          last = course.forecast().reweighed(doubted);
        } catch (OutsideDomainException e) {
          // no weight such pigs have, or on the days of their arrival: the note says so
        }
      }
    }
    return last;
  }

  private static LastWeight of(Setup setup, Course course, Reweighing last) {
    double before = last.before().start().kg();
    double kg = last.later().kg();
    double error = Math.hypot(last.before().start().error(), last.later().error());
    boolean lost = kg < before * (1 - error);
    Band expected = expected(last);
    Grounds grounds = new Grounds().and(course.grounds());
    for (int i = 0; i < setup.diary().size(); i++) {
      if (Objects.equals(setup.diary().get(i).on(), last.later().on())
          && Objects.equals(setup.diary().get(i).pigs(), course.pigs())) {
        grounds.and("diary[" + i + "]", "weight", "on");
      }
    }
    return new LastWeight(
        course.pigs(),
        last.later().on(),
        kg,
        before,
        expected,
        lost,
        last.lagging() || isSlow(last, expected),
        grounds.list());
  }

  /**
   * Below the forecast's low end, and with far less gain than was likely; a few days say nothing.
   */
  private static boolean isSlow(Reweighing last, Band expected) {
    Table table = Table.named("diary");
    KnownWeight first = last.before().start();
    long days = ChronoUnit.DAYS.between(first.on(), last.later().on());
    if (expected == null || days < table.row("slow-after").number("value")) {
      return false;
    }
    double kg = last.later().kg();
    double share = table.row("slow-below").number("value");
    return kg < expected.low() && kg - first.kg() < share * (expected.likely() - first.kg());
  }

  private static Band expected(Reweighing last) {
    try {
      return last.before().weightOn(last.later().on());
    } catch (OutsideDomainException e) {
      return null;
    }
  }
}
