package swineherd.figures;

/**
 * Nitrogen and phosphorus that pigs leave behind, and the ground it takes. Body content of 25 g
 * nitrogen and 5.4 g phosphorus for each kg of gain: {@code arc-1981}, {@code nrc-2012}. Feed that
 * is wasted counts as eaten, since it ends on the same ground.
 */
public final class Nutrients {
  /** kg of protein that hold one kg of nitrogen. */
  private static final double PROTEIN_OF_NITROGEN = 6.25;

  private static final double NITROGEN_KEPT = 0.025;
  private static final double PHOSPHORUS_KEPT = 0.0054;

  /** kg of P2O5 that hold one kg of phosphorus, from the masses of the atoms. */
  private static final double PHOSPHATE_OF_PHOSPHORUS = 2.2914;

  private Nutrients() {}

  /**
   * Nitrogen one pig excretes, in kg.
   *
   * @param feed it ate or wasted, kg as fed
   * @param protein crude protein of the feed in %, 5 to 40
   * @param gain kg of live weight
   * @throws OutsideDomainException outside those, or if the feed holds less than the pig kept
   */
  public static double nitrogen(double feed, double protein, double gain) {
    OutsideDomainException.within("crude protein in %", protein, 5, 40);
    return excreted(
        "nitrogen", feed * protein / 100 / PROTEIN_OF_NITROGEN, feed, gain, NITROGEN_KEPT);
  }

  /**
   * Phosphorus one pig excretes, in kg.
   *
   * @param feed it ate or wasted, kg as fed
   * @param phosphorus total phosphorus of the feed in %, 0.2 to 2
   * @param gain kg of live weight
   * @throws OutsideDomainException outside those, or if the feed holds less than the pig kept
   */
  public static double phosphorus(double feed, double phosphorus, double gain) {
    OutsideDomainException.within("total phosphorus in %", phosphorus, 0.2, 2);
    return excreted("phosphorus", feed * phosphorus / 100, feed, gain, PHOSPHORUS_KEPT);
  }

  private static double excreted(
      String nutrient, double eaten, double feed, double gain, double keptOfGain) {
    OutsideDomainException.within("feed in kg", feed, 0, 10_000);
    OutsideDomainException.within("gain in kg", gain, 0, 1_000);
    double left = eaten - keptOfGain * gain;
    if (left < 0) {
      throw new OutsideDomainException(
          "a pig cannot gain "
              + gain
              + " kg from "
              + feed
              + " kg of a feed with so little "
              + nutrient);
    }
    return left;
  }

  /** The same phosphorus as manure tables and fertiliser bags print it: kg of P2O5. */
  public static double asPhosphate(double phosphorus) {
    return PHOSPHATE_OF_PHOSPHORUS * phosphorus;
  }

  /**
   * kg on a hectare in a year.
   *
   * @param kilograms of nitrogen or phosphorus from all pigs of the year
   * @param area m2, more than 0
   * @throws OutsideDomainException outside those
   */
  public static double load(double kilograms, double area) {
    OutsideDomainException.within("kg of nutrient", kilograms, 0, Double.MAX_VALUE);
    OutsideDomainException.within("area in m2", area, Double.MIN_VALUE, Double.MAX_VALUE);
    return kilograms / area * GroundLimits.HECTARE;
  }

  /**
   * How a nitrogen load stands against the limit of {@code eu-91-676}, 170 kg/ha in a year, which
   * is law only in vulnerable zones and on organic farms of the European Union. Amber up to twice
   * that: this project's judgement.
   *
   * @param load kg/ha of nitrogen in a year
   * @param nearWater whether it lies close to a well or open water, see {@link Distances}: then red
   * @throws OutsideDomainException for a load below 0
   */
  public static Signal signal(double load, boolean nearWater) {
    OutsideDomainException.within("kg/ha of nitrogen", load, 0, Double.MAX_VALUE);
    if ((nearWater && load > 0) || load > GroundLimits.value("nitrogen-red")) {
      return Signal.RED;
    }
    return load > GroundLimits.value("nitrogen-limit") ? Signal.AMBER : Signal.GREEN;
  }

  /**
   * m2 over which the nitrogen of a year stays within 170 kg/ha.
   *
   * @param kilograms of nitrogen from all pigs of the year
   * @throws OutsideDomainException below 0
   */
  public static double areaForNitrogen(double kilograms) {
    OutsideDomainException.within("kg of nitrogen", kilograms, 0, Double.MAX_VALUE);
    return kilograms / GroundLimits.value("nitrogen-limit") * GroundLimits.HECTARE;
  }
}
