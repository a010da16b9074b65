package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Parasites;
import swineherd.setup.Setup;

/**
 * Pigs that have yet to come, or came a few days ago, and of which no worming is known nor asked
 * for by a dung count: the time to ask the breeder, and to keep worms off clean ground. Also where
 * the day of arrival is unknown and nothing tells that they are there.
 *
 * @param pigs name of the group
 * @param by day by which to be ready: that of arrival, or now; null if it is unknown
 * @param askBy day by which to ask the breeder: two weeks before, or now; null with the other
 * @param ontoEarth whether they come on to earth; what is not known counts as earth
 */
public record WormArrival(
    String pigs, LocalDate by, LocalDate askBy, boolean ontoEarth, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Worms worms = new Worms(setup, i);
      if (!worms.arriving() || worms.lastDose() != null || worms.untreated()) {
        continue;
      }
      LocalDate arrives = worms.group().arrives();
      LocalDate askBy = arrives == null ? null : arrives.minusDays(Parasites.days("notice"));
      boolean earth =
          worms.pen() == null || worms.pen().ground() == null || worms.pen().ground().isEarth();
      all.add(
          new WormArrival(
              worms.group().name(),
              later(arrives, setup.checkOn()),
              later(askBy, setup.checkOn()),
              earth,
              Grounds.of("pigs[" + i + "]", "arrives", "wormedAtSource", "wormedOn").list()));
    }
    return all;
  }

  /** The later of two days; null if the first is. */
  private static LocalDate later(LocalDate day, LocalDate today) {
    return day != null && day.isBefore(today) ? today : day;
  }
}
