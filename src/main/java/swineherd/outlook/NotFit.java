package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import swineherd.setup.Setup;
import swineherd.setup.Sign;
import swineherd.units.Dates;

/**
 * Pigs of which something is wrong with one, and that go to slaughter soon, or may: all such groups
 * together, since a vet is asked once.
 *
 * @param about name of the group; empty if they are several
 * @param who their names
 * @param when what is known of the day, a sentence
 * @param today day of the check
 */
public record NotFit(String about, String who, String when, LocalDate today, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, Collection<Outlook> worked) {
    List<SlaughterReadiness> ill =
        worked.stream()
            .filter(SlaughterReadiness.class::isInstance)
            .map(SlaughterReadiness.class::cast)
            .filter(r -> r.ill() && r.near())
            .toList();
    if (ill.isEmpty()) {
      return List.of();
    }
    List<String> names = ill.stream().map(SlaughterReadiness::pigs).toList();
    return List.of(
        new NotFit(
            names.size() == 1 ? names.get(0) : "",
            String.join(" and ", names),
            when(ill),
            setup.checkOn(),
            grounds(setup, names)));
  }

  private static String when(List<SlaughterReadiness> ill) {
    List<String> days = new ArrayList<>();
    for (SlaughterReadiness ready : ill) {
      if (ready.day() != null) {
        days.add(Dates.words(ready.day()) + (ill.size() == 1 ? "" : " (" + ready.pigs() + ")"));
      }
    }
    if (!days.isEmpty()) {
      return "The day is set for " + String.join(" and ", days) + ".";
    }
    boolean grown = ill.stream().allMatch(r -> r.finish() != null);
    return grown
        ? "No day is set, but they may weigh enough within six weeks."
        : "No day is set, nor is it known when they weigh enough; it may be soon.";
  }

  private static List<String> grounds(Setup setup, List<String> names) {
    Grounds grounds = new Grounds();
    for (int i = 0; i < setup.signs().size(); i++) {
      Sign sign = setup.signs().get(i);
      if (sign.pigs() == null || names.contains(sign.pigs())) {
        grounds.and("signs[" + i + "]", "sign");
      }
    }
    for (int i = 0; i < setup.pigs().size(); i++) {
      if (names.contains(setup.pigs().get(i).name())) {
        grounds.and("pigs[" + i + "]", "slaughterOn");
      }
    }
    return grounds.list();
  }
}
