package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Room for pigs on the road: trailers for finishers, crates for weaners. Weights are live weights
 * in kg, 5 to 150 if nothing else is said, areas m2; {@link OutsideDomainException} outside those.
 *
 * <p>Sources differ by more than half at one weight. What to plan for is room for all to lie
 * ({@code efsa-2022-transport}); the hard line is the larger of European law ({@code eu-1-2005})
 * and of the greatest load advised in Canada ({@code whiting-brandt-2002}).
 */
public final class Transport {
  private static final double LIGHTEST_WEIGHED = 5;
  private static final double HEAVIEST_WEIGHED = 250;

  /** The heaviest pig of which it is known how hot it can stand it. */
  private static final double HEAVIEST_IN_HEAT = 120;

  private Transport() {}

  /**
   * Whether it is so warm that pigs need more room.
   *
   * @param outdoors degC on the road
   */
  public static boolean isHot(double outdoors) {
    return outdoors > limit("hot");
  }

  /**
   * Air temperature over which pigs are not on the road: 30 degC for weaners, 27 degC for heavier
   * pigs. Judgement between {@code scahaw-2002} and {@code animals-2015-trailers}.
   *
   * @param weight live weight in kg, 5 to 150
   * @throws OutsideDomainException outside that
   */
  public static double hottest(double weight) {
    OutsideDomainException.within(
        "live weight in kg", weight, Allometry.LIGHTEST, Allometry.HEAVIEST);
    return weather(weight <= weather("weaners-up-to-kg") ? "weaners-hot-above" : "hot-above");
  }

  /**
   * Air temperature of the day over which they are loaded at dawn: for heavier pigs 3 degC over
   * what they cope with, {@link Heat#upperCritical(double)}, and never more than {@link #hottest}.
   * Judgement.
   *
   * @param weight live weight in kg, 5 to 150
   * @throws OutsideDomainException outside that
   */
  public static double earlyAbove(double weight) {
    double limit = hottest(weight);
    if (weight <= weather("weaners-up-to-kg")) {
      return limit;
    }
    double copes = Heat.upperCritical(Math.min(HEAVIEST_IN_HEAT, weight));
    return Math.min(limit, copes + weather("early-over-upper-critical"));
  }

  /** Room to plan for one pig: all can lie, and a third more in the heat. */
  public static double floor(double weight, boolean hot) {
    return Allometry.named("transport-lying").area(weight) * (hot ? limit("hot-space") : 1);
  }

  /**
   * Greatest load in kg/m2 in good weather, {@code whiting-brandt-2002}.
   *
   * @param weight of one pig, 5 to 250 kg
   */
  public static double greatestPressure(double weight) {
    OutsideDomainException.within("live weight in kg", weight, LIGHTEST_WEIGHED, HEAVIEST_WEIGHED);
    return 37.53 * Math.pow(0.9969, weight) * Math.pow(weight, 0.5008);
  }

  /**
   * Area for one pig at that load.
   *
   * @param weight of one pig, 5 to 250 kg
   */
  public static double leastFloor(double weight) {
    return weight / greatestPressure(weight);
  }

  /**
   * Area for one pig below which no load goes: the larger of {@link #leastFloor} and, from the
   * weights on of which it speaks, what Regulation (EC) 1/2005 asks for ({@code eu-1-2005}). The
   * same in every country.
   *
   * @param weight of one pig, 5 to 150 kg
   */
  public static double hardLine(double weight) {
    OutsideDomainException.within(
        "live weight in kg", weight, Allometry.LIGHTEST, Allometry.HEAVIEST);
    // kept on above the weights the law speaks of, so that a heavier pig never gets less
    double law = weight >= limit("law-lightest") ? weight / limit("law-pressure") : 0;
    return Math.max(leastFloor(weight), law);
  }

  /** How a load stands: red below the hard line, amber below what to plan for. */
  public static Signal load(int pigs, double area, double weight, boolean hot) {
    double each = positive(area) / pigs(pigs);
    if (each < hardLine(weight)) {
      return Signal.RED;
    }
    return each < floor(weight, hot) ? Signal.AMBER : Signal.GREEN;
  }

  /**
   * Trips for a group.
   *
   * @param pigs 1 or more
   * @param perTrip pigs that fit, 1 or more
   */
  public static int trips(int pigs, int perTrip) {
    OutsideDomainException.within("pigs in one trip", perTrip, 1, Integer.MAX_VALUE);
    return (pigs(pigs) + perTrip - 1) / perTrip;
  }

  /**
   * The least crate for weaners that travel together: room to lie, longer than they are, and air
   * above their backs.
   *
   * @param pigs 1 to 4
   * @param weight of one pig
   */
  public static Crate crate(int pigs, double weight, boolean hot) {
    OutsideDomainException.within("pigs in a crate", pigs, 1, limit("crate-most"));
    return new Crate(
        pigs * floor(weight, hot),
        limit("crate-length") * BodySize.length(weight),
        BodySize.backHeight(weight) + limit("crate-headroom"));
  }

  /**
   * Inside measures.
   *
   * @param floor m2
   * @param length m
   * @param height m
   */
  public record Crate(double floor, double length, double height) {}

  private static int pigs(int pigs) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    return pigs;
  }

  private static double positive(double area) {
    return OutsideDomainException.within("area in m2", area, Double.MIN_VALUE, Double.MAX_VALUE);
  }

  private static double weather(String key) {
    return Table.named("haul-weather").row(key).number("value");
  }

  private static double limit(String key) {
    return Table.named("transport").row(key).number("value");
  }
}
