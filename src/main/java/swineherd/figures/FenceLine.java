package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * How many volts are left at the far end of an electric fence, with nothing touching it and with a
 * pig's nose on it. A tester on an untouched fence of thin polywire looks fine while the pig gets a
 * quarter of it.
 *
 * <p>The line is a resistance with leakage spread along it, fed at one end: the transmission-line
 * equations for a steady current. Capacity and waves are left out; judged good to a fifth up to 2
 * km.
 *
 * @param length of the fence from energizer to far end, 1 to 2,000 m
 * @param ohmPerKm resistance of all live wires together
 * @param siemensPerKm leakage of all live wires together
 */
public record FenceLine(double length, double ohmPerKm, double siemensPerKm) {
  /** Longest line the model is trusted for, in m. */
  public static final double LONGEST = 2000;

  private static final double ERROR = 0.2;
  private static final double METRES_PER_KM = 1000;
  private static final double OPEN = 0;

  /**
   * @throws OutsideDomainException if a number lies outside: 1 to 2,000 m, 0.1 to 50,000 ohm/km,
   *     0.00001 to 1 S/km
   */
  public FenceLine {
    OutsideDomainException.within("length of the line in m", length, 1, LONGEST);
    checkWires(ohmPerKm, siemensPerKm);
  }

  /**
   * What feeds the line, from the two figures of an energizer's label.
   *
   * @param noLoad volts with nothing connected
   * @param at500 volts into 500 ohm
   */
  public record Energizer(double noLoad, double at500) {
    /**
     * @throws OutsideDomainException if no-load volts are not above 0 and at most 20,000, or the
     *     volts into 500 ohm not above 0 and at most the no-load volts
     */
    public Energizer {
      OutsideDomainException.within("no-load voltage in V", noLoad, 1, 20_000);
      OutsideDomainException.within("voltage at 500 ohm in V", at500, 1, noLoad);
    }

    /** Inner resistance in ohm: Ohm's law between the two figures. */
    public double innerOhm() {
      return FenceNumbers.safety("load") * (noLoad / at500 - 1);
    }
  }

  /**
   * A fence of several equal live wires, all fed at the energizer.
   *
   * @param length in m, 1 to 2,000
   * @param strands live wires, 1 to 12
   * @param joined whether they are joined at the far end too; if not, a pig there draws through one
   *     wire, and one wire's resistance is taken, which is on the safe side
   * @param conductor a row of {@code conductors.csv}
   * @param growth a row of {@code vegetation.csv}
   * @throws OutsideDomainException if a number lies outside
   * @throws IllegalArgumentException if a table has no such row
   */
  public static FenceLine of(
      double length, int strands, boolean joined, String conductor, String growth) {
    OutsideDomainException.within("number of wires", strands, 1, 12);
    double ohm = Table.named("conductors").row(conductor).number("ohm_per_km");
    double leak = Table.named("vegetation").row(growth).number("leak_ms_per_km") / 1000;
    return new FenceLine(length, joined ? ohm / strands : ohm, leak * strands);
  }

  /**
   * Volts at the far end with nothing touching.
   *
   * @param earthOhm resistance of the earth rods, 0 to 20,000 ohm, see {@link Earthing#resistance}
   * @throws OutsideDomainException if it lies outside
   */
  public Band openVolts(Energizer energizer, double earthOhm) {
    return band(energizer, volts(energizer, earthOhm, OPEN));
  }

  /**
   * Volts at the far end with a pig on it, taken as the 500 ohm of iec-60335-2-76: a wet pig draws
   * more current at fewer volts.
   *
   * @param earthOhm resistance of the earth rods, 0 to 20,000 ohm, see {@link Earthing#resistance}
   * @throws OutsideDomainException if it lies outside
   */
  public Band touchedVolts(Energizer energizer, double earthOhm) {
    return band(energizer, volts(energizer, earthOhm, 1 / FenceNumbers.safety("load")));
  }

  /**
   * The longest fence in m of the same wires in the same growth that still gives a touching pig
   * 2,000 V; empty if not even the shortest does. An answer of {@link #LONGEST} means that or more.
   *
   * @param earthOhm resistance of the earth rods, 0 to 20,000 ohm
   * @throws OutsideDomainException if it lies outside
   */
  public OptionalDouble longestThatHolds(Energizer energizer, double earthOhm) {
    double metres =
        METRES_PER_KM
            * reach(
                energizer,
                earthOhm,
                1 / FenceNumbers.safety("load"),
                ohmPerKm,
                siemensPerKm,
                LONGEST / METRES_PER_KM);
    return metres < 1 ? OptionalDouble.empty() : OptionalDouble.of(metres);
  }

  private double volts(Energizer energizer, double earthOhm, double touch) {
    checkEarth(earthOhm);
    return farVolts(energizer, earthOhm, touch, ohmPerKm, siemensPerKm, length / METRES_PER_KM);
  }

  /** Length in km, up to {@code most}, at which the far end falls to the volts that still hold. */
  static double reach(
      Energizer energizer,
      double earthOhm,
      double touch,
      double ohmPerKm,
      double siemensPerKm,
      double most) {
    checkEarth(earthOhm);
    double least = Table.named("fence-voltage").row("ordinary").number("unsafe_below");
    double holds = 0;
    double fails = most;
    if (farVolts(energizer, earthOhm, touch, ohmPerKm, siemensPerKm, most) >= least) {
      return most;
    }
    while (fails - holds > 1e-5) {
      double middle = (holds + fails) / 2;
      if (farVolts(energizer, earthOhm, touch, ohmPerKm, siemensPerKm, middle) >= least) {
        holds = middle;
      } else {
        fails = middle;
      }
    }
    return holds;
  }

  /**
   * Volts at the end of {@code km} of line closed by a conductance of {@code touch} siemens, 0 when
   * open. The end voltage is written as a quotient: the usual difference of two large terms loses
   * all its digits on a long line.
   */
  static double farVolts(
      Energizer energizer,
      double earthOhm,
      double touch,
      double ohmPerKm,
      double siemensPerKm,
      double km) {
    double decay = Math.sqrt(ohmPerKm * siemensPerKm) * km;
    double wave = Math.sqrt(ohmPerKm / siemensPerKm);
    double load = wave * touch;
    double input = wave * (1 + load * Math.tanh(decay)) / (Math.tanh(decay) + load);
    double near = energizer.noLoad() * input / (input + energizer.innerOhm() + earthOhm);
    return near / (Math.cosh(decay) + load * Math.sinh(decay));
  }

  private static Band band(Energizer energizer, double volts) {
    return new Band((1 - ERROR) * volts, volts, Math.min((1 + ERROR) * volts, energizer.noLoad()));
  }

  private static void checkWires(double ohmPerKm, double siemensPerKm) {
    OutsideDomainException.within("resistance in ohm/km", ohmPerKm, 0.1, 50_000);
    OutsideDomainException.within("leakage in S/km", siemensPerKm, 1e-5, 1);
  }

  private static void checkEarth(double earthOhm) {
    OutsideDomainException.within("earth resistance in ohm", earthOhm, 0, 20_000);
  }
}
