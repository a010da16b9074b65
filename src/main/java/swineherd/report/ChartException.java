package swineherd.report;

/** A chart cannot be drawn or written; the message says why, to be shown as it is. */
public final class ChartException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final boolean badPlace;

  /**
   * @param badPlace whether it is the place it was to go to, and not this machine
   */
  ChartException(String message, boolean badPlace, Throwable cause) {
    super(message, cause);
    this.badPlace = badPlace;
  }

  /** Whether the place it was to go to is at fault, and not this machine. */
  public boolean isBadPlace() {
    return badPlace;
  }
}
