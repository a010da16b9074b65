package swineherd.figures;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.rulebook.Table;

/** Electric fences: where the wires go, how strong the energizer must be, what a reading means. */
public final class ElectricFence {
  private static final double LIGHTEST = 8;
  private static final double HEAVIEST = 130;
  private static final double METRES_PER_KM = 1000;

  private ElectricFence() {}

  /**
   * How the wires are set while the pigs grow through a range of weights.
   *
   * @param fromKg lightest pig of this setting, kg
   * @param toKg heaviest pig of this setting, kg
   * @param heights live wires above the ground in m, lowest first
   */
  public record Setting(double fromKg, double toKg, List<Double> heights) {
    public Setting {
      heights = List.copyOf(heights);
    }
  }

  /** Why a set of wires does not hold pigs of some weight. */
  public enum Fault {
    /** The lowest wire is so high that they go under it. */
    UNDER,
    /** Two wires are so far apart that they go through. */
    BETWEEN,
    /** The top wire is so low that they go over it. */
    OVER,
    /** The lowest wire lies where rooted soil will soon touch it. */
    IN_THE_SOIL
  }

  /** What the volts at the far end mean. */
  public enum Verdict {
    /** At or above the aim. */
    GOOD,
    /** It holds, but with nothing to spare. */
    FAIR,
    /** Find out why it is weak, now. */
    ACT,
    /** Not a fence. */
    UNSAFE,
    /** More than an energizer may give: suspect the meter or the energizer. */
    TOO_HIGH
  }

  /** Why electric netting does not suit. */
  public enum NettingFault {
    /** Untrained pigs run into it and tangle. */
    UNTRAINED,
    /** Small weaners get caught in it. */
    SMALL,
    /** Not in the weights it is good for, though it may do. */
    BEYOND_BEST_WEIGHT
  }

  /**
   * The energizer a fence needs.
   *
   * @param joules output energy of one impulse in J, at most what the standard allows
   * @param splitOrClear whether the fence asks for more than that, so that it must be split or its
   *     growth cleared
   */
  public record Energizer(double joules, boolean splitOrClear) {}

  /**
   * Height of the lowest live wire in m, 0.30 of the back: it meets the snout. Judgement, fitted to
   * the published pair of extension-hog-fence.
   *
   * @param kg live weight, 8 to 130 kg
   * @throws OutsideDomainException if the weight lies outside
   */
  public static double lowestWire(double kg) {
    return FenceNumbers.build("wire-lowest") * backHeight(kg);
  }

  /**
   * Height of the top live wire in m, 0.65 of the back. Judgement, fitted to the published pair of
   * extension-hog-fence.
   *
   * @param kg live weight, 8 to 130 kg
   * @throws OutsideDomainException if the weight lies outside
   */
  public static double topWire(double kg) {
    return FenceNumbers.build("wire-top") * backHeight(kg);
  }

  /**
   * How the wires are set and re-set while one group grows, lightest first: the rows of {@code
   * wire-heights.csv} that are meant to be built.
   *
   * @param fromKg live weight when they come, 8 to 130 kg
   * @param toKg live weight when they go, from {@code fromKg} to 130 kg
   * @throws OutsideDomainException if a weight lies outside
   */
  public static List<Setting> settings(double fromKg, double toKg) {
    OutsideDomainException.within("live weight in kg", fromKg, LIGHTEST, HEAVIEST);
    OutsideDomainException.within("final weight in kg", toKg, fromKg, HEAVIEST);
    List<Setting> settings = new ArrayList<>();
    for (Table.Row row : Table.named("wire-heights").rows()) {
      double from = Math.max(fromKg, row.number("from_kg"));
      double to = Math.min(toKg, row.number("to_kg"));
      boolean shared = from < to || (from == to && fromKg == toKg && settings.isEmpty());
      if (row.text("use").equals("build") && shared) {
        settings.add(new Setting(from, to, heights(row)));
      }
    }
    return settings;
  }

  /**
   * What is wrong with the heights of live wires for pigs of one weight; empty if they suit. An
   * opening below the lowest wire or between two of more than 0.45 of the back lets them through, a
   * top wire under 0.50 of it lets them over, and a wire under 10 cm is soon buried. Judgement,
   * within which the published pair of extension-hog-fence lies. A single wire at two thirds of the
   * animal, as livestock-fence-page has it, lets pigs go under: they root with the head down.
   *
   * @param heights live wires above the ground in m, in any order, at least one
   * @param kg live weight, 8 to 130 kg
   * @throws IllegalArgumentException if there is no wire
   * @throws OutsideDomainException if the weight or a height lies outside
   */
  public static Set<Fault> faults(List<Double> heights, double kg) {
    if (heights.isEmpty()) {
      throw new IllegalArgumentException("an electric fence has at least one wire");
    }
    double back = backHeight(kg);
    double opening = FenceNumbers.build("wire-opening-widest") * back;
    EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    double below = 0;
    for (double height : heights.stream().sorted().toList()) {
      OutsideDomainException.within("wire height in m", height, 0, 2);
      if (height - below > opening) {
        faults.add(below == 0 ? Fault.UNDER : Fault.BETWEEN);
      }
      below = height;
    }
    if (below < FenceNumbers.build("wire-top-least") * back) {
      faults.add(Fault.OVER);
    }
    if (Collections.min(heights) < FenceNumbers.build("wire-above-soil")) {
      faults.add(Fault.IN_THE_SOIL);
    }
    return faults;
  }

  /**
   * Output energy an energizer needs: about 1 J for each mile (1.6 km) of clean wire, two and five
   * times as much in medium and heavy growth, never under 1 J because pigs' wires lie low in the
   * grass, and never over the limit of the standard. Sources: dealer-miles-per-joule (makers claim
   * from half a mile to ten), energizer-manual-reach, iec-60335-2-76; the floor is judgement.
   *
   * @param perimeter length of the fence, 1 to 20,000 m
   * @param strands number of live wires, 1 to 12
   * @param growth a row of {@code vegetation.csv}
   * @throws OutsideDomainException if a number lies outside
   * @throws IllegalArgumentException if the table has no such growth
   */
  public static Energizer energizer(double perimeter, int strands, String growth) {
    OutsideDomainException.within("fence length in m", perimeter, 1, 20_000);
    OutsideDomainException.within("number of wires", strands, 1, 12);
    double share = Table.named("vegetation").row(growth).number("reach_share");
    double kmOfWire = perimeter * strands / METRES_PER_KM;
    double wanted =
        Math.max(
            FenceNumbers.build("energy-least"),
            kmOfWire / FenceNumbers.build("reach-per-joule") / share);
    double most = FenceNumbers.safety("energy");
    return new Energizer(Math.min(wanted, most), wanted > most);
  }

  /**
   * What the volts at the far end, on the pigs' side, mean. Published minima for pigs run from
   * 2,000 V (german-fence-rules) to 3,000 V (uk-fence-guide), 4,000 V for thick coats
   * (german-paddock-guide); the aims are judgement.
   *
   * @param volts reading, 0 to 50,000 V
   * @param demanding haired breed, winter coat, dry or frozen ground, or pigs in training
   * @throws OutsideDomainException if the reading lies outside
   */
  public static Verdict voltage(double volts, boolean demanding) {
    OutsideDomainException.within("reading in V", volts, 0, 50_000);
    Table.Row limits = Table.named("fence-voltage").row(demanding ? "demanding" : "ordinary");
    if (volts > FenceNumbers.safety("open-voltage")) {
      return Verdict.TOO_HIGH;
    } else if (volts >= limits.number("aim")) {
      return Verdict.GOOD;
    } else if (volts >= limits.number("act_below")) {
      return Verdict.FAIR;
    }
    return volts >= limits.number("unsafe_below") ? Verdict.ACT : Verdict.UNSAFE;
  }

  /**
   * What speaks against electric netting: common practice, no source; that nothing likely to
   * entangle may be built is iec-60335-2-76.
   *
   * @param kg live weight, 5 to 150 kg
   * @param trained whether every pig is known to respect a wire
   * @throws OutsideDomainException if the weight lies outside
   */
  public static Set<NettingFault> nettingFaults(double kg, boolean trained) {
    OutsideDomainException.within("live weight in kg", kg, Allometry.LIGHTEST, Allometry.HEAVIEST);
    Table build = Table.named("fence-build");
    Table.Row best = build.row("netting-best-weight");
    EnumSet<NettingFault> faults = EnumSet.noneOf(NettingFault.class);
    if (!trained) {
      faults.add(NettingFault.UNTRAINED);
    }
    if (kg < build.row("netting-weight").number("low")) {
      faults.add(NettingFault.SMALL);
    } else if (kg < best.number("low") || kg > best.number("high")) {
      faults.add(NettingFault.BEYOND_BEST_WEIGHT);
    }
    return faults;
  }

  private static double backHeight(double kg) {
    OutsideDomainException.within("live weight in kg", kg, LIGHTEST, HEAVIEST);
    return BodySize.backHeight(kg);
  }

  private static List<Double> heights(Table.Row row) {
    List<Double> heights = new ArrayList<>();
    for (String column : List.of("wire1_m", "wire2_m", "wire3_m")) {
      OptionalDouble height = row.maybe(column);
      height.ifPresent(heights::add);
    }
    return heights;
  }
}
