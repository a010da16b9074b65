package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Heat;
import swineherd.figures.HutHeat;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * A closed hut that is not known to be insulated, where summers are hot. The sun on its roof counts
 * for more than the pigs' own heat, which is all that is reckoned here.
 *
 * @param pen name of the pen
 * @param hottest air outdoors on the hottest days, degC
 * @param shut air in the hut with the pigs shut in on such a day, degC
 */
public record HotHut(String pen, double hottest, double shut, List<String> grounds)
    implements Outlook {

  /** Weights for which the heat of a pig is known, kg. */
  private static final double LIGHTEST = 20;

  private static final double HEAVIEST = 100;

  /** Height of the walls of a low hut, m; common practice is 1 to 1.2 m at the bed. */
  private static final double HEIGHT = 1.2;

  /**
   * @param known the outlooks that were worked out before: those on the heat of summer
   */
  static List<Outlook> of(Setup setup, List<Outlook> known) {
    List<Outlook> all = new ArrayList<>();
    for (Outlook outlook : known) {
      if (outlook instanceof SummerHeat heat && heat.known()) {
        int index = index(setup, heat.pen());
        Shelter shelter = setup.pens().get(index).shelter();
        boolean hot =
            Heat.SummerClass.of(setup.place().hottestMonth()).compareTo(Heat.SummerClass.HOT) >= 0;
        if (hot
            && shelter.kind() == Shelter.Kind.CLOSED_HUT
            && !Boolean.TRUE.equals(shelter.insulated())
            && shelter.floorArea() != null) {
          add(setup, index, heat, all);
        }
      }
    }
    return all;
  }

  private static void add(Setup setup, int index, SummerHeat heat, List<Outlook> all) {
    Pen pen = setup.pens().get(index);
    int count =
        setup.pigs().stream()
            .filter(g -> pen.name().equals(g.pen()) && g.count() != null)
            .mapToInt(g -> g.count())
            .sum();
    double floor = pen.shelter().floorArea();
    double surface = floor + 4 * Math.sqrt(floor) * HEIGHT;
    double weight = Math.max(LIGHTEST, Math.min(HEAVIEST, heat.weight()));
    double hottest = heat.hottest().likely();
    try {
      double gain =
          HutHeat.gain(
              Math.max(1, count),
              weight,
              surface,
              HutHeat.Wall.PLYWOOD,
              HutHeat.winterVentilation(weight));
      all.add(
          new HotHut(
              pen.name(),
              hottest,
              hottest + gain,
              Grounds.of("pens[" + index + "].shelter", "kind", "insulated", "floorArea")
                  .and("place", "hottestMonth")
                  .list()));
    } catch (OutsideDomainException e) {
      all.add(
          new NotWorkedOut(
              "heat of the hut",
              pen.name(),
              e.getMessage(),
              List.of("pens[" + index + "].shelter.floorArea")));
    }
  }

  private static int index(Setup setup, String pen) {
    int index = 0;
    while (!pen.equals(setup.pens().get(index).name())) {
      index++;
    }
    return index;
  }
}
