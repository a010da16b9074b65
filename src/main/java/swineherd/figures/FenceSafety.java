package swineherd.figures;

/**
 * What an electric fence must keep to so that it hurts nobody: iec-60335-2-76 with its annex BB,
 * and practice where that leaves it open. Limits: {@code fence-safety.csv}. The law of the place,
 * the standard as it stands now and the label come first.
 */
public final class FenceSafety {
  private FenceSafety() {}

  /**
   * Whether an impulse is within the standard: at most 5 J into 500 ohm.
   *
   * @param joules output energy, 0 or more
   * @throws OutsideDomainException if it is negative or above 100,000
   */
  public static boolean energyAllowed(double joules) {
    return notNegative("output energy in J", joules) <= FenceNumbers.safety("energy");
  }

  /**
   * Signs along a public road or path, one at each end: 50 m apart, by judgement, because trade
   * codes and countries say 50 to 100 m. Gates, corners and crossings need theirs besides.
   *
   * @param metres of fence along it, 0 to 20,000
   * @throws OutsideDomainException if it lies outside
   */
  public static int signs(double metres) {
    OutsideDomainException.within("fence along the road in m", metres, 0, 20_000);
    return (int) Math.ceil(metres / FenceNumbers.safety("signs-apart")) + 1;
  }

  private static double notNegative(String quantity, double value) {
    return OutsideDomainException.within(quantity, value, 0, 100_000);
  }
}
