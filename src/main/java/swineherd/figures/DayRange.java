package swineherd.figures;

/**
 * A span that a source gives by its two ends only, in whole days; no value between them is likelier
 * than another, so it is not a {@link Band}.
 *
 * @param low shorter end, days
 * @param high longer end, days
 */
public record DayRange(int low, int high) {
  /**
   * @throws IllegalArgumentException if negative or not in order
   */
  public DayRange {
    if (low < 0 || low > high) {
      throw new IllegalArgumentException("days must be in order: " + low + " to " + high);
    }
  }
}
