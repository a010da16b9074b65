package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * The area a pig covers, from its weight: {@code k * W^exponent}. Publications differ in the
 * exponent (0.66 to 0.67) as well as in k, so each factor carries the exponent it was published
 * with.
 *
 * @param k m2 per kg^exponent
 * @param exponent about two thirds, since an area grows slower than a mass
 */
public record Allometry(double k, double exponent) {
  /** Lightest pig, in kg, for which the published factors are used. */
  public static final double LIGHTEST = 5;

  /** Heaviest pig, in kg, for which the published factors are used. */
  public static final double HEAVIEST = 150;

  /**
   * The factor in {@code rules/tables/space-factors.csv} under that key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Allometry named(String key) {
    Table.Row row = Table.named("space-factors").row(key);
    return new Allometry(row.number("k"), row.number("exponent"));
  }

  /**
   * Area one pig covers, in m2.
   *
   * @param weight live weight in kg, 5 to 150
   * @throws OutsideDomainException for another weight
   */
  public double area(double weight) {
    return k
        * Math.pow(
            OutsideDomainException.within("live weight in kg", weight, LIGHTEST, HEAVIEST),
            exponent);
  }

  /**
   * Weight in kg at which an area is used up: the inverse of {@link #area}.
   *
   * @param area m2 for one pig
   * @throws OutsideDomainException if the answer is not a weight of 5 to 150 kg
   */
  public double weightAt(double area) {
    return OutsideDomainException.within(
        "the live weight in kg that fills the area",
        Math.pow(area / k, 1 / exponent),
        LIGHTEST,
        HEAVIEST);
  }
}
