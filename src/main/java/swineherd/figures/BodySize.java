package swineherd.figures;

/**
 * How long, high and wide a pig is, from its weight. Length and shoulder width after {@code
 * petherick-1983}, height of the back after {@code baxter-1984}, height of the shoulder after
 * {@code tas-2017}. Measured on the pigs of 1968 to 1983; the pigs of today differ somewhat.
 *
 * <p>Every weight is a live weight in kg, 5 to 150; another throws {@link OutsideDomainException}.
 */
public final class BodySize {
  private static final double LENGTH = 0.300;
  private static final double BACK = 0.156;
  private static final double SHOULDER_WIDTH = 0.064;
  private static final double EXPONENT = 0.33;

  /**
   * The ribs give: a pig gets through where its shoulders are wider than the gap. Our judgement.
   */
  private static final double SQUEEZE = 0.8;

  private BodySize() {}

  /** From nose to root of tail, in m. */
  public static double length(double weight) {
    return size(LENGTH, weight);
  }

  /** From the ground to the back, in m. */
  public static double backHeight(double weight) {
    return size(BACK, weight);
  }

  /** Across the shoulders, in m. */
  public static double shoulderWidth(double weight) {
    return size(SHOULDER_WIDTH, weight);
  }

  /** The widest gap, in m, that still holds the pig: 0.8 of its shoulders. */
  public static double widestGap(double weight) {
    return SQUEEZE * shoulderWidth(weight);
  }

  private static double size(double factor, double weight) {
    OutsideDomainException.within(
        "live weight in kg", weight, Allometry.LIGHTEST, Allometry.HEAVIEST);
    return factor * Math.pow(weight, EXPONENT);
  }
}
