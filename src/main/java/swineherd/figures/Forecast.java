package swineherd.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.function.DoubleUnaryOperator;

/**
 * When pigs will weigh what, and how sure that is. Two things are uncertain, independently: the
 * rate of growth, of which the logarithm is normal with standard deviation {@code sigma}; and the
 * start weight, which is worth some days of growth. Pigs that are {@code z} deviations ahead have
 * after {@code t} days the growth of
 *
 * <pre>
 * t + sqrt( (t (exp(z sigma) - 1))^2 + (z dt0)^2 )        dt0 = error x W0 / gain at W0
 * </pre>
 *
 * days, and of {@code t - sqrt(...)} days if they are behind ({@code z} negative). Dates, weights
 * and chances are all read from this one relation, so they cannot contradict each other: the weight
 * that nine in ten reach by a date is the weight whose late date that is. The sizes of the errors
 * are in {@code rules/tables/growth-factors.csv}; they are derived, not measured.
 *
 * @param growth the curve
 * @param sigma standard deviation of ln(rate), 0.01 to 0.6
 * @param start the last weight that is known
 * @param checkDays days without growth after the start, 0 to 14: the check after a purchase
 */
public record Forecast(Growth growth, double sigma, KnownWeight start, double checkDays) {
  /** More deviations than this are taken as certain. */
  private static final double CERTAIN = 8;

  /** Roots are found to within so much. */
  private static final double EXACT = 1e-10;

  /**
   * @throws OutsideDomainException if a value is outside its domain, or the start weight is one the
   *     curve is not good for
   */
  public Forecast {
    growth.inRange("start weight in kg", start.kg());
    OutsideDomainException.within("sigma of the growth rate", sigma, 0.01, 0.6);
    OutsideDomainException.within("days of check after the move", checkDays, 0, 14);
  }

  /**
   * A forecast for the mean of a group.
   *
   * @param growthClass the pigs' class
   * @param factor multiplier on its rate, 0.2 to 1.15
   * @param setting how well feed and weights are known
   * @param pigs number of pigs in the mean, at least 1; 1 for one pig's own date
   * @param start the weight it starts from
   * @param justBought whether the start is the purchase: growth then stands still for 4 days
   *     (common practice, no source: 3 to 7)
   * @throws OutsideDomainException if a value is outside its domain
   */
  public static Forecast of(
      GrowthClass growthClass,
      double factor,
      Setting setting,
      int pigs,
      KnownWeight start,
      boolean justBought) {
    return new Forecast(
        growthClass.growth(factor),
        sigma(growthClass, setting, pigs),
        start,
        justBought ? GrowthFactors.likely("settling-check") : 0);
  }

  /**
   * Standard deviation of ln(rate): class, setting and the pigs' own, added as squares.
   *
   * @param pigs number of pigs in the mean, at least 1
   * @throws OutsideDomainException if there are no pigs
   */
  public static double sigma(GrowthClass growthClass, Setting setting, int pigs) {
    OutsideDomainException.within("number of pigs", pigs, 1, 1_000_000);
    double ofSetting = GrowthFactors.likely(setting.key);
    double ofPigs = GrowthFactors.likely("between-pigs") / Math.sqrt(pigs);
    return Math.sqrt(
        growthClass.sigma() * growthClass.sigma() + ofSetting * ofSetting + ofPigs * ofPigs);
  }

  /**
   * Days from the start until a weight is reached, the check after a purchase counted. Nought for a
   * weight that is already passed; the late end may lie beyond the 400 days the curve is used for.
   *
   * @param targetKg live weight, kg, within what the curve is used for
   * @return days
   * @throws OutsideDomainException if the weight is outside its domain or likely takes more than
   *     400 days
   */
  public Band daysTo(double targetKg) {
    double likely = growthDaysTo(targetKg);
    OutsideDomainException.within("days to that weight", likely, -1000, Growth.LONGEST_DAYS);
    return new Band(
        calendarDays(likely, Normal.Z80),
        calendarDays(likely, 0),
        calendarDays(likely, -Normal.Z80));
  }

  /**
   * The same as dates: the day by whose end the weight is reached.
   *
   * @param targetKg live weight, kg, within what the curve is used for
   * @throws OutsideDomainException as {@link #daysTo}
   */
  public DateBand datesOf(double targetKg) {
    return DateBand.after(start.on(), daysTo(targetKg));
  }

  /**
   * Weight on a date. The upper end is cut off where the curve ends.
   *
   * @param date not before the start, at most 400 days of growth later
   * @return live weight, kg
   * @throws OutsideDomainException if the date is outside its domain, or the pigs would likely be
   *     heavier than the curve is good for
   */
  public Band weightOn(LocalDate date) {
    double days = daysUntil(date);
    double likely = growth.weightAfter(start.kg(), days);
    double low = growth.curve(start.kg(), grown(days, -Normal.Z80));
    double high = growth.curve(start.kg(), grown(days, Normal.Z80));
    return new Band(low, likely, Math.min(high, growth.highestKg()));
  }

  /**
   * Whether the curve goes as far as a date, so that {@link #weightOn} tells a weight.
   *
   * @param date not before the start
   * @throws OutsideDomainException if the date is before the start
   */
  public boolean reaches(LocalDate date) {
    double days = daysUntil(date);
    return days <= Growth.LONGEST_DAYS && growth.curve(start.kg(), days) <= growth.highestKg();
  }

  /**
   * Weight on a date; where the curve does not go so far that at its end, which they have at the
   * least, since pigs do not stop growing there.
   *
   * @param date not before the start
   * @return live weight, kg
   * @throws OutsideDomainException if the date is before the start
   */
  public Band leastOn(LocalDate date) {
    double days = Math.min(daysUntil(date), Growth.LONGEST_DAYS);
    double most = growth.highestKg();
    return new Band(
        Math.min(growth.curve(start.kg(), grown(days, -Normal.Z80)), most),
        Math.min(growth.curve(start.kg(), days), most),
        Math.min(growth.curve(start.kg(), grown(days, Normal.Z80)), most));
  }

  /**
   * Chance that the pigs have not reached a weight by a date; so, if they go when they have reached
   * it, the chance that they are still there.
   *
   * @param targetKg live weight, kg, within what the curve is used for
   * @param date not before the start
   * @return 0 to 1
   * @throws OutsideDomainException if a value is outside its domain
   */
  public double chanceNotReached(double targetKg, LocalDate date) {
    double days = daysUntil(date);
    double needed = growthDaysTo(targetKg);
    return Normal.cumulative(root(z -> grown(days, z) - needed, -CERTAIN, CERTAIN));
  }

  /**
   * What a later weight says about the rate, and the forecast from there on. Further weights are
   * added one after another, in the order of their dates.
   *
   * @param later a weight after the start, kg, within what the curve is used for
   * @throws OutsideDomainException if it is not after the start or outside its domain
   */
  public Reweighing reweighed(KnownWeight later) {
    return Reweighing.of(this, later);
  }

  /** The same growth from another weight, after the check that follows a purchase. */
  public Forecast from(KnownWeight weight) {
    return new Forecast(growth, sigma, weight, 0);
  }

  /**
   * How far a weight lies from what was to be expected that day, in standard deviations of both,
   * below nought if it is lighter. Nought where the curve does not go so far, since nobody can say
   * then; and before the start.
   */
  public double deviations(KnownWeight weight) {
    Band expected;
    try {
      expected = weightOn(weight.on());
    } catch (OutsideDomainException e) {
      return 0;
    }
    // the low side: the high one is cut off where the curve ends
    double ofForecast = Math.log(expected.likely() / expected.low()) / Normal.Z80;
    return Math.log(weight.kg() / expected.likely()) / Math.hypot(ofForecast, weight.error());
  }

  /** Days of growth from the start to a date, those of the check left out. */
  double daysUntil(LocalDate date) {
    double days = ChronoUnit.DAYS.between(start.on(), date);
    OutsideDomainException.within("days after the start weight", days, 0, Double.MAX_VALUE);
    return Math.max(0, days - checkDays);
  }

  private double growthDaysTo(double targetKg) {
    return growth.curveDays(start.kg(), growth.inRange("target weight in kg", targetKg));
  }

  /** Days of growth done after some days by pigs that are z deviations ahead. */
  private double grown(double days, double z) {
    double ofRate = days * Math.expm1(z * sigma);
    double ofStart = z * start.error() / (growth.ratePerDay() * growth.logToGo(start.kg()));
    return days + Math.signum(z) * Math.sqrt(ofRate * ofRate + ofStart * ofStart);
  }

  /** Days by which pigs z deviations ahead have done so many days of growth. */
  private double calendarDays(double growthDays, double z) {
    if (grown(0, z) >= growthDays) {
      return 0;
    }
    double longEnough = 1;
    while (grown(longEnough, z) < growthDays) {
      longEnough *= 2;
    }
    return checkDays + root(days -> grown(days, z) - growthDays, 0, longEnough);
  }

  /**
   * Where an increasing function is nought, or the end that is nearest to it. By the chord, and an
   * end that stays twice counts half (the Illinois rule), which takes a fifth of the steps of
   * halving.
   */
  private static double root(DoubleUnaryOperator increasing, double from, double to) {
    double low = from;
    double high = to;
    double atLow = increasing.applyAsDouble(low);
    double atHigh = increasing.applyAsDouble(high);
    if (atLow >= 0) {
      return low;
    }
    if (atHigh <= 0) {
      return high;
    }
    int side = 0;
    for (int i = 0; i < 100 && high - low > EXACT; i++) {
      double middle = (low * atHigh - high * atLow) / (atHigh - atLow);
      double there = increasing.applyAsDouble(middle);
      if (there < 0) {
        low = middle;
        atLow = there;
        atHigh = side < 0 ? atHigh / 2 : atHigh;
        side = -1;
      } else if (there > 0) {
        high = middle;
        atHigh = there;
        atLow = side > 0 ? atLow / 2 : atLow;
        side = 1;
      } else {
        return middle;
      }
    }
    return (low + high) / 2;
  }

  /** How well feed and weights are known. */
  public enum Setting {
    /** Complete feed weighed out, and pigs weighed. */
    MEASURED("setting-measured"),
    /** Complete feed, described in the ordinary way. */
    DESCRIBED("setting-described"),
    /** A diet that is incomplete or not known. */
    UNKNOWN_DIET("setting-unknown-diet");

    private final String key;

    Setting(String key) {
      this.key = key;
    }
  }
}
