package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import swineherd.figures.Tails;
import swineherd.rulebook.Table;
import swineherd.setup.Feed;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * What in a pen is known to lead to bitten tails and bullying. There is one for each pen of two and
 * more pigs, or nobody knows how many, for which such a cause was told.
 *
 * @param pen name of the pen
 * @param causes how many
 * @param words what they are
 * @param law what is told of docking there, and of things to root in where that is a cause
 * @param open what was not said and may be a second cause, where one alone is known; empty if all
 *     is known, or an item on room or shelter asks for it anyway
 * @param nothingToRoot whether the pigs stand on a bare floor with nothing to root and chew in
 * @param come whether pigs are there
 * @param by day to mend it by
 */
public record TailCauses(
    String pen,
    int causes,
    String words,
    String law,
    String open,
    boolean nothingToRoot,
    boolean come,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** What else is to be looked into, as a sentence; empty if nothing. */
  public String more() {
    return open.isEmpty() ? "" : "Not known, and a second cause if it is bad: " + open + ".";
  }

  private static final Set<Pen.Ground> BARE_FLOORS =
      EnumSet.of(Pen.Ground.SLATS, Pen.Ground.CONCRETE);
  private static final Set<Shelter.Bed> BARE_BEDS =
      EnumSet.of(Shelter.Bed.SLATS, Shelter.Bed.BARE, Shelter.Bed.WET);

  private static final Set<Feed.Kind> MIXED_AT_HOME =
      EnumSet.of(Feed.Kind.HOME_MIX, Feed.Kind.GRAIN_OR_SCRAPS, Feed.Kind.FORAGING);

  /**
   * @param known the outlooks that were worked out before: room, feeder, mixing
   */
  static List<Outlook> of(Setup setup, List<Course> courses, List<Outlook> known) {
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      List<Stay> there = in.stays();
      if (in.counted() && in.count() < 2) {
        continue;
      }
      Grounds grounds = new Grounds();
      List<String> causes = causes(setup, pen, in.path(), known, grounds);
      if (!causes.isEmpty()) {
        String open = causes.size() > 1 ? "" : open(setup, pen, in.path(), grounds);
        all.add(
            new TailCauses(
                pen.name(),
                causes.size(),
                String.join("; ", causes),
                law(setup, pen),
                open,
                nothingToRoot(pen),
                !Stay.first(there).isAfter(setup.checkOn()),
                Stay.readyBy(there, setup.checkOn()),
                grounds.list()));
      }
    }
    return all;
  }

  private static String law(Setup setup, Pen pen) {
    String docking = Tails.docking(setup.place().country());
    return nothingToRoot(pen)
        ? Tails.rooting(setup.place().country()).map(root -> root + " " + docking).orElse(docking)
        : docking;
  }

  private static List<String> causes(
      Setup setup, Pen pen, String path, List<Outlook> known, Grounds grounds) {
    List<String> causes = new ArrayList<>();
    if (nothingToRoot(pen)) {
      causes.add(cause("nothing-to-root"));
      grounds.and(path, "ground", "shelter.bed");
    }
    for (Outlook outlook : known) {
      if (outlook instanceof PenRoom room && isHere(pen, room.pen()) && isCrowded(room)) {
        causes.add(cause("crowded"));
        grounds.and(room.grounds());
      }
      if (outlook instanceof FeederRoom feeder
          && isHere(pen, feeder.pen())
          && pen.feederLength() != null
          && pen.feederLength() < feeder.length()) {
        causes.add(cause("feeder-short"));
        grounds.and(path, "feederLength");
      }
      if (outlook instanceof Mixing mixing
          && isHere(pen, mixing.pen())
          && mixing.strangers()
          && !mixing.settled()) {
        causes.add(cause("strangers"));
        grounds.and(mixing.grounds());
      }
    }
    if (pen.shelter().air() == Shelter.Air.STINGS) {
      causes.add(cause("bad-air"));
      grounds.and(path, "shelter.air");
    }
    if (pen.shelter().kind() == Shelter.Kind.OPEN_FRONT) {
      causes.add(cause("draught"));
      grounds.and(path, "shelter.kind");
    }
    if (Boolean.FALSE.equals(setup.feed().premix())) {
      causes.add(cause("minerals"));
      grounds.and("feed", "premix");
    }
    return causes;
  }

  /** What could be a second cause; air, shelter and room are asked for by items of their own. */
  private static String open(Setup setup, Pen pen, String path, Grounds grounds) {
    List<String> open = new ArrayList<>();
    if (mayHaveNothingToRoot(pen)) {
      open.add(asks("nothing-to-root"));
      grounds.and(path, "ground", "shelter.bed");
    }
    if (pen.feederLength() == null) {
      open.add(asks("feeder-short"));
      grounds.and(path, "feederLength");
    }
    if (setup.feed().premix() == null && mayLackMinerals(setup.feed().kind())) {
      open.add(asks("minerals"));
      grounds.and("feed", "premix");
    }
    return String.join("; ", open);
  }

  private static boolean mayHaveNothingToRoot(Pen pen) {
    boolean floor = pen.ground() == null || BARE_FLOORS.contains(pen.ground());
    boolean bare = pen.shelter().bed() == null || BARE_BEDS.contains(pen.shelter().bed());
    return floor && bare && !nothingToRoot(pen);
  }

  /** Feed that is bought for them has its minerals in it. */
  private static boolean mayLackMinerals(Feed.Kind kind) {
    return kind == null || MIXED_AT_HOME.contains(kind);
  }

  private static boolean isHere(Pen pen, String name) {
    return Objects.equals(pen.name(), name);
  }

  private static boolean isCrowded(PenRoom room) {
    return room.verdict() == PenRoom.Verdict.BELOW_LAW || room.verdict() == PenRoom.Verdict.CROWDED;
  }

  private static boolean nothingToRoot(Pen pen) {
    return pen.ground() != null
        && BARE_FLOORS.contains(pen.ground())
        && pen.shelter().bed() != null
        && BARE_BEDS.contains(pen.shelter().bed());
  }

  private static String asks(String key) {
    return Table.named("tail-causes").row(key).text("asks");
  }

  private static String cause(String key) {
    return Table.named("tail-causes").row(key).text("words");
  }
}
