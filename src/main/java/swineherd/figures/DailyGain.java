package swineherd.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import swineherd.rulebook.Table;

/**
 * Daily gain of one pig or one group from repeated weighings: a straight line through them. A pig
 * does not grow in a straight line, so this is a rough check over a few weeks; beyond that the
 * growth curve is the answer.
 *
 * @param days from the first to the last weighing
 * @param kgPerDay gain in kg a day; negative if the weights fall
 * @param error one standard deviation of it, in kg a day
 * @param repeatability relative error of each weight against the others, a share
 * @param lastOn the day of the last weighing
 * @param lastKg weight on that day in kg: as weighed if there were two weighings, on the line if
 *     more
 * @param lostWeight whether any weight was below the one before it
 */
public record DailyGain(
    long days,
    double kgPerDay,
    double error,
    double repeatability,
    LocalDate lastOn,
    double lastKg,
    boolean lostWeight) {

  /** What a gain gives reason to do. */
  public enum Flag {
    /**
     * A weight fell. Ask the vet; a tape can be wrong by that much, but a pig that loses is ill.
     */
    LOST_WEIGHT,
    /** Clearly slower than expected: look at feed, water, worms, health. */
    SLOW,
    /** The weighings lie too close together, or are too rough, to say anything. */
    UNSURE
  }

  /**
   * Gain from two or more weighings of the same pig or group, in any order. With two it is their
   * difference, with more the least-squares line. Weights found by different means do not share a
   * pig's own shape, so then each carries its full error, the largest of them.
   *
   * @throws IllegalArgumentException if there are fewer than two or two on one day
   */
  public static DailyGain from(List<Weighing> weighings) {
    List<Weighing> sorted = weighings.stream().sorted(Comparator.comparing(Weighing::on)).toList();
    checkDays(sorted);
    Weighing first = sorted.get(0);
    Weighing last = sorted.get(sorted.size() - 1);
    long days = ChronoUnit.DAYS.between(first.on(), last.on());
    double r = repeatability(sorted);
    boolean lost = lostWeight(sorted);
    if (sorted.size() == 2) {
      double gain = (last.kg() - first.kg()) / days;
      double error = r * Math.hypot(first.kg(), last.kg()) / days;
      return new DailyGain(days, gain, error, r, last.on(), last.kg(), lost);
    }
    double meanDay = sorted.stream().mapToLong(w -> day(first, w)).average().orElseThrow();
    double meanKg = sorted.stream().mapToDouble(Weighing::kg).average().orElseThrow();
    double products = 0;
    double squares = 0;
    for (Weighing weighing : sorted) {
      double t = day(first, weighing) - meanDay;
      products += t * (weighing.kg() - meanKg);
      squares += t * t;
    }
    double gain = products / squares;
    double error = r * meanKg / Math.sqrt(squares);
    double lastKg = meanKg + gain * (days - meanDay);
    return new DailyGain(days, gain, error, r, last.on(), lastKg, lost);
  }

  /**
   * Shortest gap in days after which two weighings say something: the gain is then out by a fifth
   * at most.
   *
   * @param kg live weight in kg, above 0
   * @param kgPerDay expected gain in kg a day, above 0
   * @throws OutsideDomainException if one is not above 0
   */
  public static double shortestUsefulGapDays(double kg, double kgPerDay, Weighing.Means by) {
    OutsideDomainException.within("live weight in kg", kg, Double.MIN_NORMAL, 400);
    OutsideDomainException.within("gain in kg a day", kgPerDay, Double.MIN_NORMAL, 2);
    return Math.sqrt(2) * by.repeatability() * kg / (limit("gain-error") * kgPerDay);
  }

  /**
   * Days from the last weighing until the line reaches a weight, as an eight-in-ten band; all zero
   * if it is reached already. However far ahead: a check of the curve, not a date to plan by.
   *
   * @param targetKg live weight in kg
   * @throws OutsideDomainException if the pig does not gain, or so little against the error that
   *     the late end has no limit
   */
  public Band daysTo(double targetKg) {
    double toGain = OutsideDomainException.within("target in kg", targetKg, 1, 400) - lastKg;
    if (toGain <= 0) {
      return Band.exactly(0);
    }
    if (!(kgPerDay - Normal.Z80 * error > 0)) {
      throw new OutsideDomainException(
          "a gain of " + kgPerDay + " kg a day, out by " + error + ", gives no date");
    }
    double share = Normal.Z80 * error / kgPerDay;
    double likely = toGain / kgPerDay;
    return new Band(likely / (1 + share), likely, likely / (1 - share));
  }

  /**
   * What the gain gives reason to do.
   *
   * @param expectedKgPerDay gain the growth curve expects at these weights, in kg a day
   */
  public Set<Flag> flags(double expectedKgPerDay) {
    Set<Flag> flags = EnumSet.noneOf(Flag.class);
    if (lostWeight || kgPerDay < 0) {
      flags.add(Flag.LOST_WEIGHT);
    }
    if (kgPerDay < limit("gain-slow") * expectedKgPerDay) {
      flags.add(Flag.SLOW);
    }
    if (error > limit("gain-error") * Math.abs(kgPerDay)) {
      flags.add(Flag.UNSURE);
    }
    return flags;
  }

  private static void checkDays(List<Weighing> sorted) {
    Set<LocalDate> days = new HashSet<>();
    for (Weighing weighing : sorted) {
      if (!days.add(weighing.on())) {
        throw new IllegalArgumentException("two weighings on " + weighing.on());
      }
    }
    if (days.size() < 2) {
      throw new IllegalArgumentException("a gain needs weighings on two days or more");
    }
  }

  private static double repeatability(List<Weighing> weighings) {
    boolean oneMeans = weighings.stream().map(Weighing::by).distinct().count() == 1;
    if (oneMeans) {
      return weighings.get(0).by().repeatability();
    }
    return weighings.stream().mapToDouble(w -> w.by().error()).max().orElseThrow();
  }

  private static boolean lostWeight(List<Weighing> sorted) {
    for (int i = 1; i < sorted.size(); i++) {
      if (sorted.get(i).kg() < sorted.get(i - 1).kg()) {
        return true;
      }
    }
    return false;
  }

  private static long day(Weighing first, Weighing weighing) {
    return ChronoUnit.DAYS.between(first.on(), weighing.on());
  }

  private static double limit(String key) {
    return Table.named("weight-limits").row(key).number("limit");
  }
}
