package swineherd.figures;

/** How a figure of the keeper's stands against its limits, best first. */
public enum Signal {
  /** Nothing to do. */
  GREEN,
  /** Works today, with a cost or a date after which it will not. */
  AMBER,
  /** Change it. */
  RED;

  /** The graver of two. */
  public Signal or(Signal other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
