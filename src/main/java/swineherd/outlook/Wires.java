package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import swineherd.figures.BodySize;
import swineherd.figures.ElectricFence;
import swineherd.figures.OutsideDomainException;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;

/**
 * How the live wires of a pen should stand for the pigs in it, now and when they have grown, and
 * what is wrong with them as they stand. The heights are known for pigs of 8 to 130 kg; lighter and
 * heavier ones are judged as these, and {@link #assumed} says so.
 *
 * @param pen name of the pen
 * @param known whether enough was said to judge them
 * @param faults what is wrong with them for the pigs of today; empty if nothing or not known
 * @param wrong the same in words; empty if nothing
 * @param netting whether it is electric netting
 * @param nettingFaults what speaks against netting here; empty if it is none
 * @param kg live weight that {@link #heights} are for, kg
 * @param back height of such a pig at the back, m
 * @param heights where the wires should be now, lowest first, m
 * @param laterKg live weight at which they must be set anew, kg; null if never
 * @param laterOn the day that is likely; null if never or not known
 * @param laterHeights where they should be then, m; empty if never
 * @param assumed what was not said and how it was taken
 */
public record Wires(
    String pen,
    boolean known,
    Set<ElectricFence.Fault> faults,
    String wrong,
    boolean netting,
    Set<ElectricFence.NettingFault> nettingFaults,
    double kg,
    double back,
    List<Double> heights,
    Double laterKg,
    LocalDate laterOn,
    List<Double> laterHeights,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final double LIGHTEST = 8;
  private static final double HEAVIEST = 130;

  static Wires of(Occupants pigs) {
    Fence fence = pigs.pen().fence();
    List<String> assumed = new ArrayList<>();
    double kg = covered(pigs.lightest().kgNow(), assumed);
    double heavy = covered(pigs.heaviestNow(), assumed);
    double end = covered(pigs.heaviestEnd(), assumed);
    boolean netting = fence.conductor() == Fence.Conductor.NETTING;
    List<Double> given = netting ? null : fence.wireHeights();
    boolean single = !netting && Integer.valueOf(1).equals(fence.strands());
    Set<ElectricFence.Fault> faults = EnumSet.noneOf(ElectricFence.Fault.class);
    if (given != null) {
      faults.addAll(ElectricFence.faults(given, kg));
      faults.addAll(ElectricFence.faults(given, heavy));
    } else if (single) {
      // no height of one wire alone keeps them from going under it and over it
      faults.addAll(EnumSet.of(ElectricFence.Fault.UNDER, ElectricFence.Fault.OVER));
    }
    List<ElectricFence.Setting> settings = ElectricFence.settings(kg, end);
    ElectricFence.Setting later =
        given != null && faults.isEmpty()
            ? firstToFail(given, kg, end, settings)
            : settings.size() > 1 ? settings.get(1) : null;
    return new Wires(
        pigs.pen().name(),
        given != null || single,
        Collections.unmodifiableSet(faults),
        words(faults),
        netting,
        netting ? ElectricFence.nettingFaults(kg, trained(pigs)) : Set.of(),
        kg,
        BodySize.backHeight(kg),
        settings.get(0).heights(),
        later == null ? null : later.fromKg(),
        later == null ? null : day(pigs, later.fromKg()),
        later == null ? List.of() : later.heights(),
        List.copyOf(assumed),
        Grounds.of("pens[" + pigs.index() + "].fence", "strands", "wireHeights", "conductor")
            .and(pigs.ofPigs("arrives", "arrivalWeight"))
            .list());
  }

  /** Whether the wires suit from now until the pigs go. */
  public boolean suit() {
    return known && faults.isEmpty() && laterKg == null;
  }

  /** The setting to change to when wires that suit now no longer do; null if they always do. */
  private static ElectricFence.Setting firstToFail(
      List<Double> given, double from, double to, List<ElectricFence.Setting> settings) {
    for (double kg = Math.ceil(from); kg <= to; kg++) {
      if (!ElectricFence.faults(given, kg).isEmpty()) {
        for (ElectricFence.Setting setting : settings) {
          if (kg <= setting.toKg()) {
            return new ElectricFence.Setting(kg, setting.toKg(), setting.heights());
          }
        }
      }
    }
    return null;
  }

  private static LocalDate day(Occupants pigs, double kg) {
    Course course = pigs.lightest().course();
    if (course == null) {
      return null;
    }
    try {
      LocalDate day = course.forecast().datesOf(kg).likely();
      return day.isBefore(pigs.setup().checkOn()) ? pigs.setup().checkOn() : day;
    } catch (OutsideDomainException e) {
      return null;
    }
  }

  private static boolean trained(Occupants pigs) {
    return pigs.members().stream().allMatch(m -> Boolean.TRUE.equals(m.group().trained()));
  }

  private static String words(Set<ElectricFence.Fault> faults) {
    return faults.stream()
        .map(
            f ->
                Table.named("wire-faults").row(f.name().toLowerCase(Locale.ROOT).replace('_', '-')))
        .map(row -> row.text("words"))
        .collect(Collectors.joining(", and "));
  }

  private static double covered(double kg, List<String> assumed) {
    double nearest = Math.max(LIGHTEST, Math.min(HEAVIEST, kg));
    if (nearest != kg) {
      String words = "wires judged as for pigs of " + Math.round(nearest) + " kg";
      if (!assumed.contains(words)) {
        assumed.add(words);
      }
    }
    return nearest;
  }
}
