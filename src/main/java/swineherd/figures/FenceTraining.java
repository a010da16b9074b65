package swineherd.figures;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.rulebook.Table;

/**
 * Training pigs to respect an electric wire before the wire is all that holds them. An untrained
 * pig that is shocked on the snout runs forward, through the fence; a solid wall behind the wire
 * makes it turn back (smallholder-press-weaners; defra-pb7950 asks for it).
 */
public final class FenceTraining {
  private FenceTraining() {}

  /**
   * When pigs may leave the training pen, if by then every one of them respects the wire.
   *
   * @param earliest after the fewest days that practice knows
   * @param likely after a week
   * @param latest after two weeks, for slow or flighty pigs
   */
  public record TurnOut(LocalDate earliest, LocalDate likely, LocalDate latest) {}

  /**
   * A training pen as it stands.
   *
   * @param wallHeight lowest height of the solid wall in m
   * @param area m2
   * @param wireInside from the wall to the wire in m
   * @param wireHeight of the lowest live wire in m
   * @param volts at the far end, empty if nobody has measured
   * @param waterClear from the drinker to the wire in m
   */
  public record Pen(
      double wallHeight,
      double area,
      double wireInside,
      double wireHeight,
      OptionalDouble volts,
      double waterClear) {
    /**
     * @throws OutsideDomainException if a measure is negative or above a million
     */
    public Pen {
      for (double measure :
          new double[] {wallHeight, area, wireInside, wireHeight, volts.orElse(0), waterClear}) {
        OutsideDomainException.within("a measure of the pen", measure, 0, 1e6);
      }
    }
  }

  /** What a training pen lacks. */
  public enum Need {
    HIGHER_WALL,
    MORE_ROOM,
    /** Not where the pigs have room to turn between wire and wall and still meet it. */
    WIRE_TO_MOVE_IN_OR_OUT,
    /** Not at nose height. */
    WIRE_TO_MOVE_UP_OR_DOWN,
    MORE_VOLTS,
    VOLTS_TO_MEASURE,
    /** A drinker so near that a pig is driven from water into the wire. */
    WATER_FARTHER_FROM_WIRE,
    /** Pigs this heavy are trained the same way, behind a stronger wall. */
    STRONGER_WALL
  }

  /** Days of training: 3, likely 7, up to 14. Judgement between sources; no trial was found. */
  public static Band days() {
    return FenceNumbers.band("training", "days", 1);
  }

  /**
   * The day the wire goes live: the second after arrival, when the pigs are calm, fed and watered.
   * Judgement.
   */
  public static LocalDate wireOn(LocalDate arrival) {
    return arrival.plusDays((long) FenceNumbers.training("start-day"));
  }

  /** When pigs may be turned out, from the day they come. */
  public static TurnOut turnOut(LocalDate arrival) {
    return turnOutAfter(wireOn(arrival));
  }

  /** When pigs may be turned out, from the day the wire goes live. */
  public static TurnOut turnOutAfter(LocalDate start) {
    Band days = days();
    return new TurnOut(
        start.plusDays((long) days.low()),
        start.plusDays((long) days.likely()),
        start.plusDays((long) days.high()));
  }

  /**
   * Least area of the pen in m2: 10 m2 for two pigs to 20 m2 for five, 4 m2 for each one more.
   * Judgement.
   *
   * @param pigs 1 to 20
   * @throws OutsideDomainException if the number lies outside
   */
  public static double area(int pigs) {
    OutsideDomainException.within("number of pigs", pigs, 1, 20);
    double two = FenceNumbers.training("area-two-pigs");
    double five = FenceNumbers.training("area-five-pigs");
    if (pigs > 5) {
      return five + (pigs - 5) * FenceNumbers.training("area-each-beyond");
    }
    return two + Math.max(0, pigs - 2) * (five - two) / 3;
  }

  /**
   * Height of the training wire in m: between the lowest and the top wire of a fence for that
   * weight, the likely value midway, which is the snout.
   *
   * @param kg live weight, 8 to 130 kg
   * @throws OutsideDomainException if the weight lies outside
   */
  public static Band wireHeight(double kg) {
    double low = ElectricFence.lowestWire(kg);
    double high = ElectricFence.topWire(kg);
    return new Band(low, (low + high) / 2, high);
  }

  /**
   * What a training pen lacks for these pigs; empty if it will do. Limits: {@code training.csv} and
   * the demanding row of {@code fence-voltage.csv}.
   *
   * @param pigs 1 to 20
   * @param kg live weight, 8 to 130 kg
   * @throws OutsideDomainException if a number lies outside
   */
  public static Set<Need> needs(Pen pen, int pigs, double kg) {
    EnumSet<Need> needs = EnumSet.noneOf(Need.class);
    Band height = wireHeight(kg);
    Table.Row inside = Table.named("training").row("wire-inside");
    double volts = Table.named("fence-voltage").row("demanding").number("act_below");
    addIf(needs, Need.HIGHER_WALL, pen.wallHeight() < FenceNumbers.training("wall-height"));
    addIf(needs, Need.MORE_ROOM, pen.area() < area(pigs));
    addIf(
        needs,
        Need.WIRE_TO_MOVE_IN_OR_OUT,
        outside(pen.wireInside(), inside.number("low"), inside.number("high")));
    addIf(
        needs,
        Need.WIRE_TO_MOVE_UP_OR_DOWN,
        outside(pen.wireHeight(), height.low(), height.high()));
    addIf(needs, Need.VOLTS_TO_MEASURE, pen.volts().isEmpty());
    addIf(needs, Need.MORE_VOLTS, pen.volts().orElse(volts) < volts);
    addIf(
        needs,
        Need.WATER_FARTHER_FROM_WIRE,
        pen.waterClear() < FenceNumbers.training("water-clear"));
    addIf(needs, Need.STRONGER_WALL, kg > FenceNumbers.training("stronger-fence-over"));
    return needs;
  }

  private static boolean outside(double value, double low, double high) {
    return value < low || value > high;
  }

  private static void addIf(Set<Need> needs, Need need, boolean lacking) {
    if (lacking) {
      needs.add(need);
    }
  }
}
