package swineherd.figures;

/**
 * How far pigs of one age differ in weight, from 117,268 pigs of 16 sources (source {@code
 * tolosa-2021}): for the first that is ready and the last. The two formulas were fitted apart and
 * differ by up to a tenth.
 */
public final class Spread {
  private static final double LEAST_KG = 1.5;
  private static final double MOST_KG = 130;

  private Spread() {}

  /**
   * Standard deviation between pigs.
   *
   * @param meanKg mean live weight of the group, kg, 1.5 to 130 (birth to market)
   * @return kg
   * @throws OutsideDomainException if the weight is outside its domain
   */
  public static double deviationKg(double meanKg) {
    check(meanKg);
    return 0.41 + 0.150 * meanKg - 0.00041 * meanKg * meanKg;
  }

  /**
   * Coefficient of variation between pigs.
   *
   * @param meanKg mean live weight of the group, kg, 1.5 to 130 (birth to market)
   * @return per cent
   * @throws OutsideDomainException if the weight is outside its domain
   */
  public static double variationPercent(double meanKg) {
    check(meanKg);
    return 20.04 - 0.135 * meanKg + 0.00043 * meanKg * meanKg;
  }

  /**
   * Weights between which eight in ten pigs of the group fall.
   *
   * @param meanKg mean live weight of the group, kg, 1.5 to 130 (birth to market)
   * @return kg
   * @throws OutsideDomainException if the weight is outside its domain
   */
  public static Band pigsKg(double meanKg) {
    double half = Normal.Z80 * deviationKg(meanKg);
    return new Band(meanKg - half, meanKg, meanKg + half);
  }

  private static void check(double meanKg) {
    OutsideDomainException.within("mean live weight in kg", meanKg, LEAST_KG, MOST_KG);
  }
}
