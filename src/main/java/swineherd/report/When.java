package swineherd.report;

import java.util.List;
import java.util.Objects;
import swineherd.advice.Item;
import swineherd.rulebook.Stage;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/** When an item is to be done, in words. */
final class When {
  private When() {}

  /** {@code By 17 April 2027, before the pigs come.} For pigs that are there it is now. */
  static String words(Item item, Setup setup) {
    boolean past =
        item.stage().compareTo(Stage.ON_ARRIVAL) <= 0 && haveCome(item.advice().about(), setup);
    String stage = past ? Stage.NOW.words() : item.stage().words();
    if (item.due() == null) {
      return Wording.capital(stage) + ".";
    }
    if (item.stage() == Stage.NOW && item.rank().soon() >= 2) {
      return "Now.";
    }
    String by = "By " + Dates.words(item.due());
    return past || item.stage() == Stage.NOW ? by + "." : by + ", " + stage + ".";
  }

  /** The day alone where there is one: {@code By 17 April 2027.} */
  static String briefly(Item item, Setup setup) {
    String words = words(item, setup);
    int comma = words.indexOf(", ");
    return item.due() == null || comma < 0 ? words : words.substring(0, comma) + ".";
  }

  /** Whether the pigs it is about, or some in the pen or on the place, have come already. */
  private static boolean haveCome(String about, Setup setup) {
    List<Group> meant =
        setup.pigs().stream()
            .filter(g -> Objects.equals(g.name(), about) || Objects.equals(g.pen(), about))
            .toList();
    boolean ofAll = meant.isEmpty() && setup.pen(about).isEmpty();
    return (ofAll ? setup.pigs() : meant).stream().anyMatch(setup::isThere);
  }
}
