package swineherd.figures;

import java.time.LocalDate;

/**
 * A day that is not certain: eight in ten cases fall from {@code early} to {@code late}.
 *
 * @param early one case in ten is earlier
 * @param likely as many cases before as after
 * @param late one case in ten is later
 */
public record DateBand(LocalDate early, LocalDate likely, LocalDate late) {
  /**
   * @throws IllegalArgumentException if they are not in order
   */
  public DateBand {
    if (early.isAfter(likely) || likely.isAfter(late)) {
      throw new IllegalArgumentException(
          "dates must be in order: " + early + ", " + likely + ", " + late);
    }
  }

  /** Days after a date, counted to the end of the day on which they are full. */
  static DateBand after(LocalDate start, Band days) {
    return new DateBand(
        start.plusDays((long) Math.ceil(days.low())),
        start.plusDays((long) Math.ceil(days.likely())),
        start.plusDays((long) Math.ceil(days.high())));
  }
}
