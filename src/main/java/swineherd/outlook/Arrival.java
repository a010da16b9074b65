package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Weaner;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * The coming, and the first weeks, of a group that is to come or came not long ago.
 *
 * @param pigs name of the group
 * @param coming whether they are still to come
 * @param arrives day of arrival; null if not known
 * @param by the same if they are still to come; null otherwise
 * @param fever rectal temperature from which a vet is called the same day, in both units
 * @param highFever from which one is called now, in both units
 * @param chance that something shows, 0 to 1 (judgement)
 */
public record Arrival(
    String pigs,
    boolean coming,
    LocalDate arrives,
    LocalDate by,
    String fever,
    String highFever,
    double chance,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    int watch = Weaner.quarantineDays().high();
    for (Stay stay : Stay.of(setup, courses)) {
      if (whereabouts.isNew(stay, watch)) {
        all.add(of(stay, whereabouts.isComing(stay.group())));
      }
    }
    return all;
  }

  private static Arrival of(Stay stay, boolean coming) {
    Group group = stay.group();
    Table.Row signs = DailyLook.signs(stay);
    return new Arrival(
        group.name(),
        coming,
        group.arrives(),
        coming ? group.arrives() : null,
        degrees(signs.number("fever_same_day_c")),
        degrees(signs.number("fever_emergency_c")),
        group.source() != null && group.source().isMixed() ? 0.3 : 0.15,
        Grounds.of(stay.path(), "arrives")
            .said(stay.path() + ".source", group.source())
            .said(stay.path() + ".breed", group.breed())
            .list());
  }

  /** Tenths only where there are some: {@code 40 C (104 F)}. */
  private static String degrees(double celsius) {
    return DailyLook.degrees(celsius).replace(".0 ", " ");
  }
}
