package swineherd.figures;

import java.time.LocalDate;

/**
 * A weight that a forecast starts from, with how far it may be out; it need not have been weighed.
 *
 * @param on the day
 * @param kg live weight of a pig, or the mean of a group, kg, 1 to 400
 * @param error standard deviation of the weight, as a share of it, 0.005 to 0.5
 */
public record KnownWeight(LocalDate on, double kg, double error) {
  /**
   * @throws OutsideDomainException if the weight or the error is outside its domain
   */
  public KnownWeight {
    OutsideDomainException.within("live weight in kg", kg, 1, 400);
    OutsideDomainException.within("error of the weight as a share", error, 0.005, 0.5);
  }

  /** A weight that was found by scale, tape or eye, with the error that goes with it. */
  public static KnownWeight of(Weighing weighing) {
    return new KnownWeight(weighing.on(), weighing.kg(), weighing.by().error());
  }
}
