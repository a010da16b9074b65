package swineherd.report;

/** A chart cannot be drawn or written; the message says why, to be shown as it is. */
public final class ChartException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  ChartException(String message, Throwable cause) {
    super(message, cause);
  }
}
