package swineherd.figures;

import swineherd.rulebook.Table;

/** Judging weaned pigs that are offered: age, weight, price, and how strangers settle. */
public final class WeanerPurchase {
  private WeanerPurchase() {}

  /** What age and weight say of an offered pig. */
  public enum Offer {
    /** Under six weeks: do not buy. */
    TOO_YOUNG,
    /** Light for its age: ask why; a lower price, or none of it. */
    LIGHT,
    USUAL,
    /** Heavy for its age: a good pig, or older than was said. */
    HEAVY
  }

  /** What share of the whole cash cost the pig's price is. */
  public enum Price {
    LOW,
    USUAL,
    HIGH,
    /** Above 30 % of the cash cost. */
    VERY_HIGH
  }

  /**
   * Judges an offered pig.
   *
   * @param ageWeeks age in weeks, 0 to 16
   * @param kg live weight in kg, 0 to 100
   * @throws OutsideDomainException if age or weight is outside
   */
  public static Offer offer(double ageWeeks, double kg, GrowthClass growthClass) {
    OutsideDomainException.within("age in weeks", ageWeeks, 0, limit("oldest"));
    OutsideDomainException.within("live weight in kg", kg, 0, 100);
    if (ageWeeks < limit("youngest")) {
      return Offer.TOO_YOUNG;
    }
    Band usual = usualKg(ageWeeks, growthClass);
    if (kg < usual.low()) {
      return Offer.LIGHT;
    }
    return kg > usual.high() ? Offer.HEAVY : Offer.USUAL;
  }

  /**
   * What pigs of a class usually weigh at an age, in kg: at eight weeks the range of the class;
   * from there along its curve, the light end with slow growth and the heavy end with fast.
   *
   * @param ageWeeks age in weeks, 6 to 16
   * @throws OutsideDomainException if it is outside
   */
  public static Band usualKg(double ageWeeks, GrowthClass growthClass) {
    OutsideDomainException.within("age in weeks", ageWeeks, limit("youngest"), limit("oldest"));
    double days = (ageWeeks - 8) * 7;
    Growth slow = growthClass.growth(limit("growth-slow"));
    Growth usual = growthClass.growth(limit("growth-usual"));
    Growth fast = growthClass.growth(limit("growth-fast"));
    // Before eight weeks it is the slow ones that are the heavier, so both are tried.
    Band at8 = growthClass.eightWeekKg();
    return new Band(
        Math.min(slow.curve(at8.low(), days), fast.curve(at8.low(), days)),
        usual.curve(at8.likely(), days),
        Math.max(slow.curve(at8.high(), days), fast.curve(at8.high(), days)));
  }

  /**
   * Judges a price by its share of the expected cash cost: 15 to 25 % is usual, 20 to 23 % in small
   * published budgets.
   *
   * @param price price of one weaned pig, 0 or more
   * @param cashCost whole cash cost of one pig, its price included, above 0 and not less than the
   *     price
   * @throws OutsideDomainException if one is outside
   */
  public static Price price(double price, double cashCost) {
    double percent = Carcass.percentOf(price, cashCost);
    if (percent < limit("price-low")) {
      return Price.LOW;
    }
    if (percent <= limit("price-high")) {
      return Price.USUAL;
    }
    return percent <= limit("price-alarm") ? Price.HIGH : Price.VERY_HIGH;
  }

  private static double limit(String key) {
    return Table.named("purchase").row(key).number("value");
  }
}
