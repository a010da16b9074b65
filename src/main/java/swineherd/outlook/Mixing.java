package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import swineherd.figures.Allometry;
import swineherd.figures.Space;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;

/**
 * Two groups that come together in one pen: fights, and what the larger do to the smaller. There is
 * one for each two groups of a pen that are there at the same time.
 *
 * @param pen name of the pen
 * @param pigs the group that comes later
 * @param others the group that is there before, or comes with it
 * @param on day they come together; the day of the check where that is not known
 * @param strangers whether they come on different days, or that is not known
 * @param settled whether the days of fighting are over
 * @param light weight of the lighter group on that day, kg
 * @param heavy weight of the heavier group, kg
 * @param farApart whether the heavier can hurt and starve the lighter
 * @param room m2 to give all of them in these days
 */
public record Mixing(
    String pen,
    String pigs,
    String others,
    LocalDate on,
    boolean strangers,
    boolean settled,
    double light,
    double heavy,
    boolean farApart,
    double room,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Stay> stays = Stay.of(setup, courses);
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < stays.size(); i++) {
      for (int j = i + 1; j < stays.size(); j++) {
        if (meet(stays.get(i), stays.get(j))) {
          all.add(of(setup.checkOn(), stays.get(i), stays.get(j)));
        }
      }
    }
    return all;
  }

  private static boolean meet(Stay one, Stay other) {
    return one.group().pen() != null
        && Objects.equals(one.group().pen(), other.group().pen())
        && !one.from().isAfter(other.to())
        && !other.from().isAfter(one.to());
  }

  private static Mixing of(LocalDate today, Stay one, Stay other) {
    LocalDate a = one.group().arrives();
    LocalDate b = other.group().arrives();
    boolean daysKnown = a != null && b != null;
    boolean oneIsLater = a != null && (b == null ? a.isAfter(today) : a.isAfter(b));
    Stay later = oneIsLater ? one : other;
    Stay before = oneIsLater ? other : one;
    LocalDate met = later.from();
    boolean settled =
        daysKnown
            && ChronoUnit.DAYS.between(later.group().arrives(), today) > value("fighting-days");
    double w1 = one.weightOn(met);
    double w2 = other.weightOn(met);
    double room = value("extra-room") * (lying(one, met) + lying(other, met));
    return new Mixing(
        one.group().pen(),
        later.group().name(),
        before.group().name(),
        met,
        !daysKnown || !a.equals(b),
        settled,
        Math.min(w1, w2),
        Math.max(w1, w2),
        Math.max(w1, w2) >= value("far-apart") * Math.min(w1, w2),
        room,
        Grounds.of(later.path(), "arrives", "arrivalWeight", "count")
            .and(before.path(), "arrives", "arrivalWeight", "count")
            .list());
  }

  private static double lying(Stay stay, LocalDate day) {
    double weight = Math.max(Allometry.LIGHTEST, stay.weightOn(day));
    return stay.count() * Space.pen(null, 1, 1, weight).roomy();
  }

  private static double value(String key) {
    return Table.named("mixing").row(key).number("value");
  }
}
