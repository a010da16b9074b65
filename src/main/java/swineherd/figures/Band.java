package swineherd.figures;

/**
 * An uncertain number: what it will likely be, and the two ends it should fall between.
 *
 * <p>Unless a figure says otherwise the ends are the 10th and 90th percentile, so that eight in ten
 * cases fall inside. All three are in the same unit, which the figure that makes the band names.
 *
 * @param low lower end
 * @param likely best single value
 * @param high upper end
 */
public record Band(double low, double likely, double high) {
  /**
   * @throws IllegalArgumentException if a value is not finite or they are not in order
   */
  public Band {
    if (!(Double.isFinite(low) && Double.isFinite(likely) && Double.isFinite(high))) {
      throw new IllegalArgumentException(
          "a band needs finite ends: " + low + ", " + likely + ", " + high);
    }
    if (low > likely || likely > high) {
      throw new IllegalArgumentException(
          "a band must be in order: " + low + " <= " + likely + " <= " + high);
    }
  }

  /** A number known exactly enough to be shown as one value. */
  public static Band exactly(double value) {
    return new Band(value, value, value);
  }

  /** The same band in another unit, or for several pigs; {@code factor} must not be negative. */
  public Band times(double factor) {
    return new Band(low * factor, likely * factor, high * factor);
  }
}
