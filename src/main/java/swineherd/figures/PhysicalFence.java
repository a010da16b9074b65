package swineherd.figures;

import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.rulebook.Table;

/** Fences that hold by being solid: how high, how tight, and what each kind is worth. */
public final class PhysicalFence {
  private static final double HIGHEST_MEASURED = 4;

  private PhysicalFence() {}

  /** Who the fence has to hold. */
  public enum Occasion {
    /** Pigs that have lived behind it for two weeks. */
    SETTLED,
    /** The first two weeks, training, loading, frightened or wild-type pigs. */
    FIRST_WEEKS,
    /** Entire males near or past puberty. */
    BOARS
  }

  /** Why a barrier does not hold, or is not yet known to. */
  public enum Fault {
    /** Pigs bend, tear or lift it. */
    LIGHT,
    /** The pigs are small enough to pass through it, or smaller than it is used for. */
    SLIPS_THROUGH,
    /** Nobody knows how wide the openings near the ground are. */
    GAP_UNKNOWN,
    /** Pigs can clear it. */
    LOW,
    /** Nobody knows how high it is. */
    HEIGHT_UNKNOWN,
    /** Pigs go under it unless it is buried, has an apron inside or a hot wire. */
    FOOT_GUARD,
    /** It holds only with live wires in it. */
    LIVE_WIRE,
    /** It tears skin, and must not be electrified. */
    INJURES,
    /** Good for weeks, not for a season. */
    SHORT_TERM
  }

  /**
   * A barrier as it stands.
   *
   * @param kind a row of {@code fence-kinds.csv}
   * @param height lowest height in m, as measured
   * @param lowGap widest opening near the ground in m, as measured
   */
  public record Barrier(String kind, OptionalDouble height, OptionalDouble lowGap) {
    /**
     * @throws IllegalArgumentException if the table has no such kind
     * @throws OutsideDomainException if a measure is below 0 m or above 4 m
     */
    public Barrier {
      Table.named("fence-kinds").row(kind);
      height.ifPresent(h -> OutsideDomainException.within("height in m", h, 0, HIGHEST_MEASURED));
      lowGap.ifPresent(g -> OutsideDomainException.within("gap in m", g, 0, HIGHEST_MEASURED));
    }

    /** A barrier nobody has measured. */
    public static Barrier of(String kind) {
      return new Barrier(kind, OptionalDouble.empty(), OptionalDouble.empty());
    }
  }

  /**
   * Height a solid fence needs, in m: 0.9 m or 1.2 times the back for settled pigs, 1.2 m where
   * they may jump, more for boars. Pigs do jump (ontario-outdoor-pig-fencing) though they rather go
   * under (australia-pastured-pig-fencing); the heights are judgement, rows {@code height-*} of
   * {@code fence-build.csv}.
   *
   * @param kg live weight of the heaviest pig, 5 to 150 kg
   * @return one value, and a range for boars
   * @throws OutsideDomainException if the weight lies outside
   */
  public static Band height(double kg, Occasion occasion) {
    double settled =
        Math.max(
            FenceNumbers.build("height-settled"),
            FenceNumbers.build("height-by-body") * BodySize.backHeight(kg));
    return switch (occasion) {
      case SETTLED -> Band.exactly(settled);
      case FIRST_WEEKS -> Band.exactly(Math.max(settled, FenceNumbers.build("height-first-weeks")));
      case BOARS -> FenceNumbers.band("fence-build", "height-boars", 1);
    };
  }

  /**
   * The widest opening in m to leave near the ground when building: 10 cm, and never more than
   * {@link BodySize#widestGap}. Common practice, no source.
   *
   * @param kg live weight of the lightest pig, 5 to 150 kg
   * @throws OutsideDomainException if the weight lies outside
   */
  public static double widestLowGap(double kg) {
    return Math.min(FenceNumbers.build("gap-low"), BodySize.widestGap(kg));
  }

  /**
   * What is wrong with a barrier for pigs of one weight; empty if it should hold them. What was not
   * measured is taken from {@code fence-kinds.csv}, and where the kind leaves it open it counts as
   * unknown. A boars' fence is measured against the lower end of its range.
   *
   * @param kg live weight, 5 to 150 kg
   * @throws OutsideDomainException if the weight lies outside
   */
  public static Set<Fault> faults(Barrier barrier, double kg, Occasion occasion) {
    Table.Row kind = Table.named("fence-kinds").row(barrier.kind());
    EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    addIf(faults, Fault.LIGHT, yes(kind, "light"));
    addIf(faults, Fault.FOOT_GUARD, yes(kind, "foot_guard"));
    addIf(faults, Fault.LIVE_WIRE, yes(kind, "live_wire"));
    addIf(faults, Fault.INJURES, yes(kind, "injures"));
    addIf(faults, Fault.SHORT_TERM, yes(kind, "short_term"));
    addGapFault(faults, barrier, kind, kg);
    addHeightFault(faults, barrier, kind, height(kg, occasion).low());
    return faults;
  }

  private static void addGapFault(Set<Fault> faults, Barrier barrier, Table.Row kind, double kg) {
    OptionalDouble usual = kind.maybe("low_gap_m");
    if (barrier.lowGap().isPresent()) {
      addIf(faults, Fault.SLIPS_THROUGH, barrier.lowGap().getAsDouble() > BodySize.widestGap(kg));
    } else if (usual.isPresent()) {
      boolean tooYoung = kg < kind.maybe("holds_from_kg").orElse(0);
      addIf(faults, Fault.SLIPS_THROUGH, tooYoung || usual.getAsDouble() > BodySize.widestGap(kg));
    } else {
      faults.add(Fault.GAP_UNKNOWN);
    }
  }

  private static void addHeightFault(
      Set<Fault> faults, Barrier barrier, Table.Row kind, double needed) {
    if (barrier.height().isPresent()) {
      addIf(faults, Fault.LOW, barrier.height().getAsDouble() < needed);
      return;
    }
    OptionalDouble highest = kind.maybe("height_high_m");
    if (highest.isPresent() && highest.getAsDouble() < needed) {
      faults.add(Fault.LOW);
    } else if (kind.maybe("height_low_m").orElse(0) < needed) {
      faults.add(Fault.HEIGHT_UNKNOWN);
    }
  }

  private static boolean yes(Table.Row kind, String column) {
    return kind.text(column).equals("yes");
  }

  private static void addIf(Set<Fault> faults, Fault fault, boolean found) {
    if (found) {
      faults.add(fault);
    }
  }
}
