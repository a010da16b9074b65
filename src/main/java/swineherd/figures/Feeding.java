package swineherd.figures;

import java.util.Arrays;
import swineherd.rulebook.Table;

/**
 * How a group of pigs is fed: everything besides its weight that decides how much feed goes in a
 * day.
 *
 * @param curve whose intake curve
 * @param appetite appetite of the breed class as a share of a modern pig's, over 0 to 1
 * @param scale share of its appetite that the pig is given, 0.7 to 1; 1 for feeding to appetite
 * @param place factor for where it lives, 1 to 1.2; 1 for a house
 * @param waste share of the bought feed that is never eaten, 0 to 0.5
 * @param energy metabolizable energy of the feed in kcal/kg, 2700 to 3700
 */
public record Feeding(
    IntakeCurve curve, double appetite, double scale, double place, double waste, double energy) {
  /**
   * @throws OutsideDomainException for a value outside the ranges given above
   */
  public Feeding {
    OutsideDomainException.within("share of a modern pig's appetite", appetite, 0.3, 1);
    OutsideDomainException.within("share of appetite given", scale, 0.7, 1);
    OutsideDomainException.within("feed factor of the place", place, 1, 1.2);
    OutsideDomainException.within("share of feed wasted", waste, 0, 0.5);
    OutsideDomainException.within("energy of the feed in kcal/kg", energy, 2700, 3700);
  }

  /**
   * A way of feeding put together from the tables.
   *
   * @param growthClass key of a {@link GrowthClass}, of a cross too: its appetite lies between
   * @param scale row of {@code feed-factors}: to-appetite, restricted, finishing-restricted
   * @param place row of {@code feed-factors}: housed, outdoors
   * @param feeder row of {@code feed-factors}: self-feeder, trough, thrown-on-ground
   * @param feed row of {@code feed-factors}: compound, fibrous
   * @throws IllegalArgumentException if there is no such row, or one of another kind
   */
  public static Feeding of(
      String growthClass,
      IntakeCurve curve,
      String scale,
      String place,
      String feeder,
      String feed) {
    return new Feeding(
        curve,
        ofClass(growthClass, "appetite"),
        factor(scale, "share"),
        factor(place, "factor"),
        factor(feeder, "waste"),
        factor(feed, "kcal/kg"));
  }

  /** A number of {@code feed-classes}; for a cross, "a x b", the mean of its parents. */
  static double ofClass(String growthClass, String column) {
    Table classes = Table.named("feed-classes");
    return Arrays.stream(growthClass.split(" x "))
        .mapToDouble(parent -> classes.row(parent).number(column))
        .average()
        .orElseThrow();
  }

  private static double factor(String key, String unit) {
    Table.Row row = Table.named("feed-factors").row(key);
    if (!row.text("unit").equals(unit)) {
      throw new IllegalArgumentException(key + " is not a " + unit + " in table feed-factors");
    }
    return row.number("value");
  }

  /**
   * Feed that one pig eats in a day, nothing of it wasted.
   *
   * @param weight live weight in kg, 2.5 to 140
   * @return kg a day
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public double eaten(double weight) {
    return appetite * scale * place * curve.energyPerDay(weight) / energy;
  }

  /**
   * Feed that must be given for one pig in a day, waste counted.
   *
   * @param weight live weight in kg, 2.5 to 140
   * @return kg a day
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public double given(double weight) {
    return eaten(weight) / (1 - waste);
  }
}
