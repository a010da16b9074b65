package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Withdrawal;
import swineherd.figures.Withdrawal.Region;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * Lice and mange on pigs that are to come: both are treated twice, and the withdrawal counts from
 * the second time.
 *
 * @param pigs name of the group
 * @param source where they are bought; null if not known
 * @param repeatLow days from the first treatment to the second, the fewest
 * @param repeatHigh the most
 * @param offPig days that mites live off the pig where it is damp, the most
 * @param longest longest withdrawal of anything usual there, days
 * @param lastFirst last day for the first of two treatments; null if nobody knows when they go
 * @param by the day they come; null if not known
 */
public record SkinCheck(
    String pigs,
    Group.Source source,
    int repeatLow,
    int repeatHigh,
    int offPig,
    int longest,
    LocalDate lastFirst,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** That day, as it ends a sentence. */
  public String lastFirstWords() {
    return lastFirst == null ? "that long before they go" : "by " + Dates.words(lastFirst);
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    Table table = Table.named("skin-parasites");
    Table.Row mange = table.row("mange");
    int repeatHigh =
        table.rows().stream().mapToInt(r -> (int) r.number("repeat_high_d")).max().orElseThrow();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (whereabouts.isComing(group)) {
        int longest = Withdrawal.longestForWorms(Region.of(setup.place().country()));
        LocalDate leaves = Leaving.of(group, courses).earliest();
        all.add(
            new SkinCheck(
                group.name(),
                group.source(),
                (int) mange.number("repeat_low_d"),
                repeatHigh,
                (int) mange.number("off_pig_high_d"),
                longest,
                leaves == null
                    ? null
                    : Withdrawal.latestLastDose(leaves, longest).minusDays(repeatHigh),
                group.arrives(),
                Grounds.of("pigs[" + i + "]", "source", "arrives", "slaughterOn")
                    .and("place", "country")
                    .list()));
      }
    }
    return all;
  }
}
