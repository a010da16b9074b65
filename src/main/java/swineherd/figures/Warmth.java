package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * Cold and what it costs. Two lines must be kept apart: under the <em>lower critical
 * temperature</em> a pig burns feed to stay warm, which costs money; the <em>lower extreme</em>,
 * far below it, is where it comes to harm.
 *
 * <p>Weights are live weights in kg, 10 to 130, temperatures in degC. The tables are {@code
 * cold-terms}, {@code lower-extremes} and {@code cold-feed} under {@code rules/tables/}.
 */
public final class Warmth {
  private static final double LIGHTEST = 10;
  private static final double HEAVIEST = 130;

  /** From here up the line of nrc-2012 holds. */
  private static final double NRC_FROM = 20;

  private Warmth() {}

  /** How much pigs are fed: a fasting pig makes less heat. */
  public enum FeedLevel {
    FULL("feed-full"),
    RESTRICTED("feed-restricted"),
    MAINTENANCE("feed-maintenance");

    private final String key;

    FeedLevel(String key) {
      this.key = key;
    }
  }

  /**
   * Lower critical temperature of well-fed pigs in a group on a dry, bare, solid floor without
   * draught: 17.9 - 0.0375 W from 20 kg ({@code nrc-2012}). It lies about 2 degrees over what was
   * measured on groups, which is the margin {@code ahdb-temperature} asks for. Below 20 kg a
   * straight line to 22 at 10 kg, derived.
   *
   * @param weight kg, 10 to 130
   * @throws OutsideDomainException outside that
   */
  public static double lowerCritical(double weight) {
    OutsideDomainException.within("live weight in kg", weight, LIGHTEST, HEAVIEST);
    return weight < NRC_FROM ? 22 - 0.485 * (weight - LIGHTEST) : 17.9 - 0.0375 * weight;
  }

  /**
   * Lower critical temperature with the terms for company and feed. Steps for company are this
   * project's judgement, those for feed differences in {@code holmes-close-1977}.
   *
   * @param weight kg, 10 to 130
   * @param pigs that lie together, 1 or more
   * @throws OutsideDomainException outside those
   */
  public static double lowerCritical(double weight, int pigs, FeedLevel feed) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    return lowerCritical(weight) + company(pigs) + term(feed.key);
  }

  /**
   * Degrees of cold: how far the effective temperature lies under the lower critical one, or 0.
   *
   * @param lowerCritical degC
   * @param effective degC, from {@link LyingPlace#effectiveTemperature}
   */
  public static double degreesOfCold(double lowerCritical, double effective) {
    return Math.max(0, lowerCritical - effective);
  }

  /**
   * Feed in kg a pig and day, over the ration it would get in warmth, that keeps it growing in the
   * cold. Sources differ threefold, so show it as "about". Use either this or a flat winter factor
   * on the ration, never both.
   *
   * @param weight kg, 10 to 130
   * @param degreesOfCold on the mean of the day, 0 to 80
   * @throws OutsideDomainException outside those
   */
  public static Band extraFeed(double weight, double degreesOfCold) {
    OutsideDomainException.within("degrees of cold", degreesOfCold, 0, 80);
    Table.Row row = forWeight("cold-feed", weight);
    return new Band(row.number("low-g"), row.number("likely-g"), row.number("high-g"))
        .times(degreesOfCold / 1000);
  }

  /**
   * Extra feed as far as a pig can eat it: a quarter of its ration (this project's judgement). If
   * the cap bites, bed and shelter come first.
   *
   * @param extra kg a day
   * @param ration kg a day without it, more than 0
   * @throws OutsideDomainException if the ration is not 0 to 10 kg
   */
  public static Band eatable(Band extra, double ration) {
    double cap =
        term("feed-cap") * OutsideDomainException.within("ration in kg a day", ration, 0, 10);
    return new Band(
        Math.min(extra.low(), cap), Math.min(extra.likely(), cap), Math.min(extra.high(), cap));
  }

  /**
   * Effective temperature in degC under which pigs of that weight come to harm ({@code fass-guide},
   * which gives it as air temperature; to hold it against the lying place is our judgement).
   *
   * @param weight kg, 10 to 130
   * @throws OutsideDomainException outside that
   */
  public static double lowerExtreme(double weight) {
    return forWeight("lower-extremes", weight).number("lower-extreme-c");
  }

  /**
   * The least weight, in kg, of pigs that come to no harm at an effective temperature; empty where
   * even the heaviest do. The inverse of {@link #lowerExtreme}.
   *
   * @param effective degC, from {@link LyingPlace#effectiveTemperature}
   */
  public static OptionalDouble leastWeight(double effective) {
    return Table.named("lower-extremes").rows().stream()
        .filter(row -> effective >= row.number("lower-extreme-c"))
        .mapToDouble(row -> row.number("from-kg"))
        .min();
  }

  /** How far a night of an ordinary cold week lies under the mean minimum of its month, degrees. */
  public static double coldWeekBelow() {
    return term("cold-week");
  }

  /**
   * Degrees by which the lower extreme may be eased for pigs with a winter coat, 0 for short-haired
   * ones: for heavy-coated breeds at most 5, once they have lived outdoors through the autumn (this
   * project's judgement).
   */
  public static double easedBy(Breed.Coat coat) {
    return coat == Breed.Coat.HEAVY ? term("heavy-coat") : 0;
  }

  /**
   * Air temperature in degC over which pigs of that weight come to harm ({@code fass-guide}).
   *
   * @param weight kg, 10 to 130
   * @throws OutsideDomainException outside that
   */
  public static double upperExtreme(double weight) {
    return forWeight("lower-extremes", weight).number("upper-extreme-c");
  }

  /**
   * Holds a lying place against the two nights that matter.
   *
   * @param pigs that lie together, 1 or more
   * @param weight of one pig then, kg, 10 to 130
   * @param monthlyMinimum mean daily minimum of the coldest month, degC
   * @param worstNight mean lowest temperature of the year, degC, from {@link Winter#worstNight} or
   *     a hardiness zone
   * @throws OutsideDomainException outside those
   */
  public static Nights nights(
      LyingPlace place, int pigs, double weight, double monthlyMinimum, double worstNight) {
    return new Nights(
        place.effectiveTemperature(monthlyMinimum - term("cold-week"), pigs),
        place.effectiveTemperature(worstNight, pigs),
        lowerExtreme(weight));
  }

  /**
   * What pigs feel on the two nights, degC.
   *
   * @param coldWeek effective temperature on a night of an ordinary cold week
   * @param worst effective temperature on the worst night of an ordinary year
   * @param lowerExtreme under which they come to harm
   */
  public record Nights(double coldWeek, double worst, double lowerExtreme) {
    /** If not: not this shelter, or not pigs of this weight. */
    public boolean suitable() {
      return coldWeek >= lowerExtreme;
    }

    /** Whether the keeper must have written down where the pigs go on the worst nights. */
    public boolean planNeeded() {
      return worst < lowerExtreme;
    }
  }

  private static double company(int pigs) {
    double value = 0;
    for (Table.Row row : Table.named("cold-terms").rows()) {
      if (row.key().startsWith("group-") && pigs >= row.number("from-pigs")) {
        value = row.number("value");
      }
    }
    return value;
  }

  private static Table.Row forWeight(String table, double weight) {
    OutsideDomainException.within("live weight in kg", weight, LIGHTEST, HEAVIEST);
    return Steps.last(table, "from-kg", weight);
  }

  static double term(String key) {
    return Table.named("cold-terms").row(key).number("value");
  }
}
