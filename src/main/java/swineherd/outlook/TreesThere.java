package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Pasture;
import swineherd.figures.Signal;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;
import swineherd.setup.Shade;

/**
 * Trees in a pen whose ground the pigs wear bare, so that they go for bark and roots. There is one
 * for each pen of earth that has its shade from trees.
 *
 * @param pen name of the pen
 * @param worn whether the ground is a lot or will be worn
 * @param stem diameter of a stem, m, for which the radius is told
 * @param radius m around such a stem that pigs must not root up
 */
public record TreesThere(String pen, boolean worn, double stem, double radius, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Outlook> grass) {
    List<Outlook> all = new ArrayList<>();
    double stem = Table.named("ground-limits").row("tree-example").number("value");
    for (Outlook outlook : grass) {
      Grass ground = (Grass) outlook;
      if (setup.pen(ground.pen()).orElseThrow().shade().kind() == Shade.Kind.TREES) {
        all.add(
            new TreesThere(
                ground.pen(),
                ground.lot() || ground.load() != Signal.GREEN,
                stem,
                Pasture.treeRadius(stem),
                ground.grounds()));
      }
    }
    return all;
  }
}
