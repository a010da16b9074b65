package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Signal;
import swineherd.figures.Slope;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * How steep a pen is. There is one for each pen whose slope was said and in which pigs are or will
 * be.
 *
 * @param pen name of the pen
 * @param slope rise in % of the level distance
 * @param steep green where soil stays, amber above that, red where it counts as a risk
 */
public record Hillside(String pen, double slope, Signal steep, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      if (pen.slope() != null) {
        all.add(
            new Hillside(
                pen.name(),
                pen.slope(),
                Slope.ground(Slope.degrees(pen.slope())),
                List.of(in.path() + ".slope")));
      }
    }
    return all;
  }
}
