package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.rulebook.Table;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Fence;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.units.Dimension;
import swineherd.units.Display;

/**
 * Pigs that are to move to another pen on the day of the check; those that have moved are {@link
 * JustMoved}.
 *
 * @param pigs name of the group
 * @param pen name of the pen they go to
 * @param count how many; null if not said
 * @param crowd whether they are more than are driven well at a time, or nobody said how many
 * @param knowWire whether every one of them knows electric wire; not known counts as no
 * @param ground who was or is on that ground, in words
 * @param wireThere whether there is or may be live wire about a pen, this one or one they left
 */
public record OnTheMove(
    String pigs,
    String pen,
    Integer count,
    boolean crowd,
    boolean knowWire,
    boolean wireThere,
    String ground,
    List<String> grounds)
    implements Outlook {

  static List<OnTheMove> of(Setup setup) {
    List<OnTheMove> all = new ArrayList<>();
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      boolean today = entry.isPlanned() && setup.checkOn().equals(entry.on());
      Group group = today ? group(setup, entry) : null;
      Pen pen = today ? setup.pen(entry.pen()).orElse(null) : null;
      if (group != null && pen != null && !setup.isGone(group)) {
        all.add(of(setup, group, pen, "diary[" + i + "]"));
      }
    }
    return all;
  }

  private static OnTheMove of(Setup setup, Group group, Pen pen, String path) {
    double most = Table.named("diary").row("moved-at-a-time").number("value");
    return new OnTheMove(
        group.name(),
        pen.name(),
        group.count(),
        group.count() == null || group.count() > most,
        Boolean.TRUE.equals(group.trained()),
        setup.pens().stream().anyMatch(p -> mayHaveWire(p.fence().kind())),
        ground(setup, group, pen),
        Grounds.of(path, "pen", "on")
            .and("pens[" + setup.pens().indexOf(pen) + "]", "pigsBefore", "restedFor")
            .list());
  }

  private static String ground(Setup setup, Group group, Pen pen) {
    Whereabouts whereabouts = new Whereabouts(setup);
    List<String> there =
        setup.pigs().stream()
            .filter(g -> pen.name().equals(g.pen()) && !g.equals(group) && whereabouts.isHere(g))
            .map(Group::name)
            .toList();
    if (!there.isEmpty()) {
      return "it already holds " + String.join(" and ", there);
    }
    if (pen.pigsBefore() == null) {
      return "whether pigs were on it before is not said";
    }
    if (!pen.pigsBefore()) {
      return "no pigs were on it before";
    }
    return pen.restedFor() == null
        ? "pigs were on it before, and how long it has rested is not said"
        : "pigs were on it before, and it has rested "
            + Display.amount(pen.restedFor(), Dimension.TIME, setup.units());
  }

  private static boolean mayHaveWire(Fence.Kind kind) {
    return kind != Fence.Kind.SOLID && kind != Fence.Kind.NONE;
  }

  private static Group group(Setup setup, DiaryEntry entry) {
    if (entry.pigs() == null) {
      return setup.pigs().size() == 1 ? setup.pigs().get(0) : null;
    }
    return setup.group(entry.pigs()).orElse(null);
  }
}
