package swineherd.figures;

import java.time.LocalDate;
import java.util.function.ToDoubleFunction;

/**
 * The first hard frost of one winter, whose day is not certain: normal about the usual day.
 *
 * @param usual usual day
 * @param spread standard deviation in days, 0 to 40; {@link Winter#USUAL_SPREAD} if not known
 */
public record FirstFrost(LocalDate usual, double spread) {
  /** Nearly all years lie within so many deviations. */
  private static final double FARTHEST = 3;

  private static final double STEP = 0.25;

  /**
   * @throws OutsideDomainException if the spread is outside its domain
   */
  public FirstFrost {
    OutsideDomainException.within("spread of the first freeze in days", spread, 0, 40);
  }

  /** Early date: one year in ten it comes before this. */
  public LocalDate early() {
    return Winter.earlyFreeze(usual, spread);
  }

  /**
   * What something that hangs on the day of the frost comes to over many years; of a chance, the
   * chance.
   *
   * @param onDay what it is if the frost comes on that day
   */
  public double mean(ToDoubleFunction<LocalDate> onDay) {
    double sum = 0;
    double weights = 0;
    for (double z = -FARTHEST; z <= FARTHEST; z += STEP) {
      double weight = Math.exp(-z * z / 2);
      weights += weight;
      sum += weight * onDay.applyAsDouble(usual.plusDays(Math.round(z * spread)));
    }
    return sum / weights;
  }
}
