package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Distances;
import swineherd.figures.Signal;
import swineherd.rulebook.Table;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * How far the pigs of a pen stay from a well or from open water. There is one for each of the two
 * of each pen in use whose distance is known.
 *
 * @param pen name of the pen
 * @param water which water
 * @param distance of the pen from it, m
 * @param signal how that stands for the edge of a pen
 * @param least m between the two at the very least
 * @param plan m to plan for
 * @param things m to keep feeder, wallow and heap from it
 * @param law m that a law known for the country asks between it and the edge or a feeder; 0 if none
 * @param breaksLaw whether a law that is known for the country asks for more, if the feeder stands
 *     anywhere in the pen
 * @param earth whether the pigs stand on earth, or that is not known
 */
public record NearWater(
    String pen,
    Distances.Water water,
    double distance,
    Signal signal,
    double least,
    double plan,
    double things,
    double law,
    boolean breaksLaw,
    boolean earth,
    List<String> grounds)
    implements Outlook {

  /** Whether dung of sloping, overloaded ground still drains to it: a judgement. */
  public boolean inReach() {
    return distance < plan * Table.named("ground-limits").row("runoff-times").number("value");
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      String path = in.path();
      if (pen.wellDistance() != null) {
        all.add(
            of(
                setup,
                pen,
                Distances.Water.DRINKING_WATER,
                pen.wellDistance(),
                path,
                "wellDistance"));
      }
      if (pen.openWaterDistance() != null) {
        all.add(
            of(
                setup,
                pen,
                Distances.Water.OPEN_WATER,
                pen.openWaterDistance(),
                path,
                "openWaterDistance"));
      }
    }
    return all;
  }

  private static NearWater of(
      Setup setup, Pen pen, Distances.Water water, double metres, String path, String field) {
    Distances.Separation edge =
        Distances.check(setup.place().country(), water, Distances.Thing.PEN, metres);
    Distances.Separation feeder =
        Distances.check(setup.place().country(), water, Distances.Thing.FEEDER, metres);
    return new NearWater(
        pen.name(),
        water,
        metres,
        edge.signal(),
        edge.least(),
        edge.advised(),
        feeder.advised(),
        Math.max(edge.law().orElse(0), feeder.law().orElse(0)),
        edge.breaksLaw() || feeder.breaksLaw(),
        pen.ground() == null || pen.ground().isEarth(),
        Grounds.of(path, field).and("place", "country").list());
  }
}
