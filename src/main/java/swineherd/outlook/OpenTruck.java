package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.WindChill;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * A journey home in the open, where the wind of the road gets at the pigs.
 *
 * @param pigs name of the group
 * @param arrives day of the journey; null if not known
 * @param chill what air at 0 degC feels like in that wind, degC
 */
public record OpenTruck(String pigs, LocalDate arrives, double chill, List<String> grounds)
    implements Outlook {

  private static final double FREEZING = 0;

  static List<Outlook> of(Setup setup) {
    double wind = Table.named("transport").row("road-wind").number("value");
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (group.carriedIn() == Group.CarriedIn.OPEN && new Whereabouts(setup).isComing(group)) {
        all.add(
            new OpenTruck(
                group.name(),
                group.arrives(),
                WindChill.celsius(FREEZING, wind),
                Grounds.of("pigs[" + i + "]", "carriedIn", "arrives").list()));
      }
    }
    return all;
  }
}
