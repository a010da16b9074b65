package swineherd.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Feed added up day by day along a course of weights.
 *
 * <p>A course holds the live weight in kg on each morning, from the day of arrival to the morning
 * of slaughter: n + 1 weights for n days of feeding, since nothing is fed after the last. Extra
 * feed for cold is not in here; it is reckoned from shelter and weather, and added to these.
 */
public final class FeedIntake {
  private FeedIntake() {}

  /**
   * A course of mornings from a growth curve.
   *
   * @param weightOnDay live weight in kg by days since arrival
   * @param days days of feeding, 0 or more
   * @return {@code days + 1} weights in kg
   */
  public static double[] mornings(DoubleUnaryOperator weightOnDay, int days) {
    if (days < 0) {
      throw new OutsideDomainException("days of feeding must not be negative: " + days);
    }
    return IntStream.rangeClosed(0, days).mapToDouble(weightOnDay::applyAsDouble).toArray();
  }

  /**
   * Feed to be given on each day, waste counted.
   *
   * @param mornings live weight in kg on each morning, at least one
   * @param pigs pigs in the group, 0 or more
   * @return kg for the whole group, one value a day, one fewer than the mornings
   * @throws OutsideDomainException if a weight lies outside 2.5 to 140 kg, or there is no morning
   */
  public static double[] daily(Feeding feeding, double[] mornings, int pigs) {
    if (pigs < 0) {
      throw new OutsideDomainException("pigs must not be negative: " + pigs);
    }
    IntToDoubleFunction feed = day -> pigs * feeding.given(mornings[day]);
    return IntStream.range(0, days(mornings)).mapToDouble(feed).toArray();
  }

  /**
   * Feed for one pig over the whole course.
   *
   * @param mornings live weight in kg on each morning, at least one
   * @throws OutsideDomainException if a weight lies outside 2.5 to 140 kg, or there is no morning
   */
  public static FeedUse total(Feeding feeding, double[] mornings) {
    return stretch(feeding, mornings, 0, days(mornings));
  }

  /**
   * Feed for one pig by phase of weight. A day belongs to the phase of its morning's weight; once a
   * pig has passed an edge it stays in the later phase even if it loses weight again.
   *
   * @param mornings live weight in kg on each morning, at least one
   * @param edges weights in kg, rising, at which a new phase begins
   * @return the phases that hold at least one day, in order; together they are the whole course
   * @throws OutsideDomainException if a weight lies outside 2.5 to 140 kg, or there is no morning
   */
  public static List<FeedUse> phases(Feeding feeding, double[] mornings, double... edges) {
    List<FeedUse> phases = new ArrayList<>();
    int first = 0;
    for (double edge : edges) {
      int next = first;
      while (next < days(mornings) && mornings[next] < edge) {
        next++;
      }
      if (next > first) {
        phases.add(stretch(feeding, mornings, first, next));
      }
      first = next;
    }
    if (first < days(mornings)) {
      phases.add(stretch(feeding, mornings, first, days(mornings)));
    }
    return phases;
  }

  /**
   * The rule of thumb, for where there is no course of weights to add up along.
   *
   * @param growthClass key of a {@link GrowthClass}, of a cross too
   * @param gain live weight to be put on, kg, 0 to 140
   * @return kg feed for one pig, waste counted
   */
  public static double ruleOfThumb(String growthClass, double gain) {
    OutsideDomainException.within("gain in kg", gain, 0, 140);
    return gain * Feeding.ofClass(growthClass, "feed_per_gain");
  }

  private static FeedUse stretch(Feeding feeding, double[] mornings, int first, int next) {
    double kg = IntStream.range(first, next).mapToDouble(d -> feeding.given(mornings[d])).sum();
    return new FeedUse(mornings[first], mornings[next], next - first, kg);
  }

  private static int days(double[] mornings) {
    if (mornings.length == 0) {
      throw new OutsideDomainException("a course of weights needs at least one morning");
    }
    return mornings.length - 1;
  }
}
