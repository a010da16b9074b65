package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swineherd.figures.Weaner;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * What to see on a group that is there, day by day, and what is normal for its kind.
 *
 * @param pigs name of the group
 * @param settled whether they have been there for more than the month in which arrivals are watched
 * @param lard whether they are bred for lard, so that they grow over-fat rather than thin
 * @param normal rectal temperature at rest, in words and both units
 * @param breathing breaths a minute at rest, in words
 * @param fever rectal temperature from which the vet is called the same day, in words
 * @param highFever from which the vet is called now, in words
 * @param chill under which the vet is called now, in words
 */
public record DailyLook(
    String pigs,
    boolean settled,
    boolean lard,
    String normal,
    String breathing,
    String fever,
    String highFever,
    String chill,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    int watch = Weaner.quarantineDays().high();
    for (Stay stay : Stay.of(setup, courses)) {
      if (whereabouts.isHere(stay.group())) {
        all.add(of(stay, !whereabouts.isNew(stay, watch)));
      }
    }
    return all;
  }

  private static DailyLook of(Stay stay, boolean settled) {
    Group group = stay.group();
    Table.Row signs = signs(stay);
    double mean = signs.number("mean_c");
    double spread = signs.number("spread_c");
    return new DailyLook(
        group.name(),
        settled,
        Course.isLard(group),
        range(mean - spread, mean + spread),
        breathing(signs),
        degrees(signs.number("fever_same_day_c")),
        degrees(signs.number("fever_emergency_c")),
        degrees(signs.number("cold_emergency_c")),
        Grounds.of(stay.path(), "arrives").said(stay.path() + ".breed", group.breed()).list());
  }

  /** What is normal of such pigs: pot-bellied ones are cooler than farm pigs. */
  static Table.Row signs(Stay stay) {
    boolean potBellied = stay.growthClass().key().equals("pot-bellied");
    return Table.named("vital-signs").row(potBellied ? "pot-bellied" : "grower");
  }

  private static String breathing(Table.Row signs) {
    return signs.maybe("breaths_low").isEmpty()
        ? "breathing without effort"
        : (int) signs.number("breaths_low")
            + " to "
            + (int) signs.number("breaths_high")
            + " breaths a minute";
  }

  /** Tenths count here, so it is written in both units: {@code 40.0 C (104.0 F)}. */
  static String degrees(double celsius) {
    return String.format(Locale.ROOT, "%.1f C (%.1f F)", celsius, fahrenheit(celsius));
  }

  private static String range(double low, double high) {
    return String.format(
        Locale.ROOT,
        "%.1f to %.1f C (%.1f to %.1f F)",
        low,
        high,
        fahrenheit(low),
        fahrenheit(high));
  }

  private static double fahrenheit(double celsius) {
    return celsius * 9 / 5 + 32;
  }
}
