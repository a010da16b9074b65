package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Setup;

/**
 * Pigs that have yet to come, or came a few days ago, of which no worming is known and in which no
 * eggs were found: the time to ask the breeder and to keep worms off clean ground. Also where the
 * day of arrival is unknown and nothing tells that they are there.
 *
 * @param pigs name of the group
 * @param by day by which to be ready: that of arrival, or now; null if it is unknown
 * @param ontoEarth whether they come on to earth; what is not known counts as earth
 */
public record WormArrival(String pigs, LocalDate by, boolean ontoEarth, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Worms worms = new Worms(setup, i);
      if (!worms.arriving() || worms.lastDose() != null || worms.untreated()) {
        continue;
      }
      LocalDate arrives = worms.group().arrives();
      boolean earth =
          worms.pen() == null || worms.pen().ground() == null || worms.pen().ground().isEarth();
      all.add(
          new WormArrival(
              worms.group().name(),
              later(arrives, setup.checkOn()),
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
