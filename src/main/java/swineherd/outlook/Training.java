package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import swineherd.figures.Band;
import swineherd.figures.ElectricFence;
import swineherd.figures.FenceTraining;
import swineherd.rulebook.Table;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Fence;
import swineherd.setup.Group;

/**
 * Training to the wire, for a group that is not known to respect it and will have nothing but wire
 * around it.
 *
 * @param pigs name of the group
 * @param pen name of the pen it is meant for
 * @param penReady whether there is a pen to train in and the days are known
 * @param days how long it takes, days
 * @param batch how many are trained at a time
 * @param area least area of the pen for them, m2
 * @param nose height of the training wire: lowest to highest that still meets the snout, m
 * @param by day to have the pen ready or to begin; null if nobody said when they come
 * @param begin day the wire goes live; null if nobody said when they come
 * @param earliest first day they may be turned out if all respect the wire; null as above
 * @param likely the day that is likely; null as above
 * @param latest the day for slow or flighty pigs; null as above
 * @param since first day they stood in that pen; null if it is not known, or lies ahead
 * @param longThere whether they have stood behind that wire longer than any training takes, and it
 *     is not known to be dead, so that they may well know it
 * @param chance how likely they break out if nothing is done, 0 to 1
 * @param assumed what was not said and how it was taken
 */
public record Training(
    String pigs,
    String pen,
    boolean penReady,
    Band days,
    int batch,
    double area,
    Band nose,
    LocalDate by,
    LocalDate begin,
    LocalDate earliest,
    LocalDate likely,
    LocalDate latest,
    LocalDate since,
    boolean longThere,
    double chance,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final int MOST_AT_A_TIME = 20;
  private static final double LIGHTEST = 8;
  private static final double HEAVIEST = 130;

  static List<Training> of(Occupants pigs) {
    if (pigs.pen().fence().kind() != Fence.Kind.ELECTRIC) {
      return List.of();
    }
    return pigs.members().stream()
        .filter(m -> !Boolean.TRUE.equals(m.group().trained()))
        .map(m -> of(pigs, m))
        .toList();
  }

  private static Training of(Occupants pigs, Occupants.Member member) {
    List<String> assumed = new ArrayList<>();
    Group group = member.group();
    LocalDate today = pigs.setup().checkOn();
    LocalDate begin = begin(group.arrives(), today);
    FenceTraining.TurnOut out = begin == null ? null : FenceTraining.turnOutAfter(begin);
    boolean hasPen = Boolean.TRUE.equals(pigs.pen().fence().trainingPen());
    int count = group.count() == null ? 3 : group.count();
    if (group.count() == null) {
      assumed.add("training pen for three pigs");
    }
    LocalDate since = since(pigs, member);
    boolean longThere = longThere(pigs.pen().fence(), since, today);
    int batch = Math.min(count, MOST_AT_A_TIME);
    return new Training(
        group.name(),
        pigs.pen().name(),
        hasPen && begin != null,
        FenceTraining.days(),
        batch,
        FenceTraining.area(batch),
        FenceTraining.wireHeight(Math.max(LIGHTEST, Math.min(HEAVIEST, member.kgNow()))),
        hasPen && begin != null && begin.isAfter(today)
            ? begin
            : pigs.readyBy((int) Table.named("fence-build").row("lead-days").number("value")),
        begin,
        out == null ? null : out.earliest(),
        out == null ? null : out.likely(),
        out == null ? null : out.latest(),
        since,
        longThere,
        chance(group, longThere),
        List.copyOf(assumed),
        Grounds.of("pens[" + pigs.index() + "].fence", "trainingPen")
            .said(pigs.fence("endVoltage"), pigs.pen().fence().endVoltage())
            .and(member.path(), "trained", "arrives", "arrivalWeight")
            .list());
  }

  /** The second day after they come; today if by then they should long be trained and are not. */
  private static LocalDate begin(LocalDate arrives, LocalDate today) {
    if (arrives == null) {
      return null;
    }
    return FenceTraining.turnOut(arrives).likely().isBefore(today)
        ? today
        : FenceTraining.wireOn(arrives);
  }

  /**
   * Judgement: pigs that have lived behind it for weeks may well know it, whatever they knew when
   * they came.
   */
  private static double chance(Group group, boolean longThere) {
    if (longThere) {
      return chance("long-there");
    }
    return chance(group.trained() == null ? "unknown" : "untrained");
  }

  /** The day they came, or were moved there if that was later. */
  private static LocalDate since(Occupants pigs, Occupants.Member member) {
    if (!member.there()) {
      return null;
    }
    LocalDate came = member.course() == null ? member.group().arrives() : member.course().arrives();
    return Stream.concat(
            Stream.ofNullable(came),
            pigs.setup().diary().stream()
                .filter(e -> e.did() == DiaryEntry.Did.MOVED && !e.isPlanned())
                .filter(e -> e.pigs() == null || e.tellsOf(member.group().name()))
                .map(DiaryEntry::on)
                .filter(Objects::nonNull))
        .max(LocalDate::compareTo)
        .orElse(null);
  }

  /** A wire that carries next to nothing has taught them nothing. */
  private static boolean longThere(Fence fence, LocalDate since, LocalDate today) {
    boolean dead =
        fence.endVoltage() != null
            && ElectricFence.voltage(fence.endVoltage(), true) == ElectricFence.Verdict.UNSAFE;
    return !dead && since != null && FenceTraining.turnOut(since).latest().isBefore(today);
  }

  private static double chance(String key) {
    return Table.named("training").row("breaks-out-" + key).number("value");
  }
}
