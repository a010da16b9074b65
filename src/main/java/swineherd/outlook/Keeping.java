package swineherd.outlook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * That pigs are kept, or will be: one for the whole setup, none if all are gone.
 *
 * @param here whether pigs are there already
 * @param by two weeks before the first come, not before the day of the check, by which the people
 *     and papers around them should be settled; null if pigs are there or nobody knows when they
 *     come
 */
public record Keeping(boolean here, LocalDate by, List<String> grounds) implements Outlook {

  /** Distance to a house in m within which England asks for full planning permission. */
  public double planningDistance() {
    return number("planning-england");
  }

  /** Days for which records of medicines are kept in the United Kingdom and the Union. */
  public double medicineBook() {
    return number("medicine-book");
  }

  /** Days for which they are kept anywhere else, the least. */
  public double medicineNotes() {
    return number("medicine-notes");
  }

  private static double number(String key) {
    return Table.named("paperwork-numbers").row(key).number("value");
  }

  /** What has to be arranged with others takes so long; judgement. */
  private static final int LEAD_DAYS = 14;

  static List<Outlook> of(Setup setup) {
    List<Group> kept = setup.pigs().stream().filter(g -> !setup.isGone(g)).toList();
    if (kept.isEmpty()) {
      return List.of();
    }
    boolean here = kept.stream().anyMatch(new Whereabouts(setup)::isHere);
    LocalDate first =
        kept.stream()
            .map(Group::arrives)
            .filter(Objects::nonNull)
            .min(Comparator.naturalOrder())
            .map(day -> day.minusDays(LEAD_DAYS))
            .orElse(null);
    LocalDate by = first != null && first.isBefore(setup.checkOn()) ? setup.checkOn() : first;
    return List.of(new Keeping(here, here ? null : by, List.of()));
  }
}
