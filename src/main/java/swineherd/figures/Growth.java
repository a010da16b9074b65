package swineherd.figures;

/**
 * The growth of pigs between weaning and slaughter: a Gompertz curve that starts from a known
 * weight, so that no birth date is needed. How fast a pig grows depends on its weight only:
 *
 * <pre>
 * gain   = b W ln(A/W)
 * W(t)   = A exp(-ln(A/W0) exp(-b t))
 * t      = ln(ln(A/W1) / ln(A/W2)) / b
 * </pre>
 *
 * <p>Of the growth functions with a meaning to their parameters the one that predicts pigs best
 * (source {@code wellock-2004}). It is a curve for pigs that always get the same care; a setback or
 * a change of feed is not in it.
 *
 * @param asymptoteKg A, where the curve of growing pigs levels off, kg; not the weight of old
 *     breeding stock
 * @param ratePerDay b, rate of approach, 1/day, for the feed, place and sex at hand
 * @param lowestKg least start weight the curve is used for, kg
 * @param highestKg greatest weight it is used for, kg
 */
public record Growth(double asymptoteKg, double ratePerDay, double lowestKg, double highestKg) {
  /** Longest time the curve is used for, days. */
  public static final double LONGEST_DAYS = 400;

  /**
   * @throws IllegalArgumentException if the rate is not above nought, or the weights are not in
   *     order: 0 &lt; lowest &lt; highest &lt; asymptote
   */
  public Growth {
    if (!(ratePerDay > 0 && lowestKg > 0 && lowestKg < highestKg && highestKg < asymptoteKg)) {
      throw new IllegalArgumentException(
          "no growth curve: asymptote %s kg, rate %s per day, used from %s to %s kg"
              .formatted(asymptoteKg, ratePerDay, lowestKg, highestKg));
    }
  }

  /**
   * A curve used where most are: from 5 kg to three quarters of the asymptote.
   *
   * @param asymptoteKg A, kg
   * @param ratePerDay b, 1/day
   * @throws IllegalArgumentException as the constructor
   */
  public static Growth of(double asymptoteKg, double ratePerDay) {
    return new Growth(asymptoteKg, ratePerDay, 5, 0.75 * asymptoteKg);
  }

  /** The same pigs growing at another rate, 1/day. */
  public Growth withRate(double newRatePerDay) {
    return new Growth(asymptoteKg, newRatePerDay, lowestKg, highestKg);
  }

  /**
   * Weight some days after a known weight.
   *
   * @param startKg known live weight, kg, {@code lowestKg} to {@code highestKg}
   * @param days days later, 0 to 400
   * @return live weight, kg
   * @throws OutsideDomainException if a value is outside its domain, or the pig would be heavier
   *     than the curve is good for
   */
  public double weightAfter(double startKg, double days) {
    inRange("start weight in kg", startKg);
    OutsideDomainException.within("days of growth", days, 0, LONGEST_DAYS);
    return inRange("weight reached in kg", curve(startKg, days));
  }

  /**
   * Days a pig takes from one weight to another; nought if they are the same.
   *
   * @param startKg live weight now, kg, {@code lowestKg} to {@code highestKg}
   * @param targetKg live weight to be reached, kg, {@code startKg} to {@code highestKg}
   * @return days
   * @throws OutsideDomainException if a weight is outside its domain or it would take more than 400
   *     days
   */
  public double daysBetween(double startKg, double targetKg) {
    inRange("start weight in kg", startKg);
    OutsideDomainException.within("target weight in kg", targetKg, startKg, highestKg);
    return OutsideDomainException.within(
        "days to that weight", curveDays(startKg, targetKg), 0, LONGEST_DAYS);
  }

  /**
   * Daily gain at a weight.
   *
   * @param weightKg live weight, kg, {@code lowestKg} to {@code highestKg}
   * @return gain, kg/day
   * @throws OutsideDomainException if the weight is outside its domain
   */
  public double dailyGain(double weightKg) {
    inRange("live weight in kg", weightKg);
    return ratePerDay * weightKg * logToGo(weightKg);
  }

  /** Live weight at which pigs gain fastest, kg: A/e. */
  public double fastestAtKg() {
    return asymptoteKg / Math.E;
  }

  /** Gain at that weight, kg/day: A b/e. */
  public double fastestGain() {
    return asymptoteKg * ratePerDay / Math.E;
  }

  double inRange(String quantity, double kg) {
    return OutsideDomainException.within(quantity, kg, lowestKg, highestKg);
  }

  /** The curve without its bounds; days may be negative. */
  double curve(double startKg, double days) {
    return asymptoteKg * Math.exp(-logToGo(startKg) * Math.exp(-ratePerDay * days));
  }

  /** The inverse of {@link #curve}. */
  double curveDays(double startKg, double targetKg) {
    return Math.log(logToGo(startKg) / logToGo(targetKg)) / ratePerDay;
  }

  /** ln(A/W): what is still to be grown, as a logarithm. */
  double logToGo(double kg) {
    return Math.log(asymptoteKg / kg);
  }
}
