package swineherd.figures;

/**
 * A figure was asked for something its source never measured. The message names the quantity, what
 * was given and where the figure holds, so that it can be shown to the keeper as it is.
 */
public final class OutsideDomainException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  public OutsideDomainException(String message) {
    super(message);
  }

  /**
   * Checks that a value lies where a figure holds.
   *
   * @param quantity what it is, with its unit, for the message: {@code "live weight in kg"}
   * @return {@code value}
   * @throws OutsideDomainException if it is not a number or lies outside {@code min..max}
   */
  public static double within(String quantity, double value, double min, double max) {
    if (!(value >= min && value <= max)) {
      throw new OutsideDomainException(
          quantity + " of " + value + " is outside " + min + " to " + max);
    }
    return value;
  }
}
