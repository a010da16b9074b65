package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/** Bags or bulk, how much at a time, and what would spoil before it is eaten. */
public final class FeedBuying {
  /** Kg in the usual American bag of 50 lb; the others hold 20 or 25 kg. */
  public static final double BAG_50_LB = 50 * 0.45359237;

  private FeedBuying() {}

  /**
   * Whole bags for an amount of feed.
   *
   * @param kg feed in kg, 0 to 100000
   * @param bag kg in a bag, 1 to 1500
   * @throws OutsideDomainException for a value outside those ranges
   */
  public static int bags(double kg, double bag) {
    OutsideDomainException.within("feed in kg", kg, 0, 100_000);
    OutsideDomainException.within("kg in a bag", bag, 1, 1500);
    return (int) Math.ceil(kg / bag - 1e-9);
  }

  /**
   * Trips to fetch bags.
   *
   * @param bags 0 or more
   * @param bag kg in a bag, 1 to 1500
   * @param payload what the vehicle may carry, kg
   * @throws OutsideDomainException if not even one bag may be carried
   */
  public static int trips(int bags, double bag, double payload) {
    OutsideDomainException.within("bags", bags, 0, 100_000);
    OutsideDomainException.within("kg in a bag", bag, 1, 1500);
    OutsideDomainException.within("payload in kg", payload, bag, 40_000);
    double atATime = Math.floor(payload / bag + 1e-9);
    return (int) Math.ceil(bags / atATime);
  }

  /**
   * Days that feed keeps from the day it was made, dry and closed. A label that says less governs.
   *
   * @param form row of {@code feed-storage}: whole-grain, pellets, ground, home-mash,
   *     milk-or-fat-mash, wet
   * @param air highest air temperature where it will stand, °C
   * @return days, never negative
   * @throws IllegalArgumentException if there is no such form
   */
  public static int keepsFor(String form, double air) {
    return forAir(form, air, "warm_days", "cool_days");
  }

  private static int forAir(String form, double air, String warm, String cool) {
    OutsideDomainException.within("air temperature in °C", air, -60, 60);
    Table.Row row = Table.named("feed-storage").row(form);
    return (int) row.number(air > row.number("warm_above_c") ? warm : cool);
  }

  /**
   * Days of use to buy at a time: 4 weeks in warm weather, 8 otherwise (common practice), and never
   * more than it still keeps.
   *
   * @param form row of {@code feed-storage}
   * @param air highest air temperature where it will stand, °C
   * @param age days since it was made, 0 or more
   * @return days, never negative
   */
  public static int daysToBuy(String form, double air, int age) {
    OutsideDomainException.within("age of the feed in days", age, 0, 10_000);
    int keeps = Math.max(0, keepsFor(form, air) - age);
    return Math.min(keeps, forAir(form, air, "order_warm", "order_cool"));
  }

  /**
   * What becomes of one load.
   *
   * @param kg what was bought
   * @param lasts days until it would be gone if it kept; until the pigs go if they leave some
   * @param eaten kg eaten while it keeps and there are pigs
   */
  public record Load(double kg, double lasts, double eaten) {
    /** Kg left when the pigs go or the feed is no longer fit, never negative. */
    public double left() {
      return Math.max(0, kg - eaten);
    }
  }

  /**
   * Follows a load through the days on which it is eaten.
   *
   * @param use kg a day for the whole group, from the day the pigs arrive
   * @param day day from which the load is fed, 0 for the day they arrive
   * @param kg the load, 0 to 100000
   * @param keeps days it keeps from that day on, 0 or more; take off its age
   * @throws OutsideDomainException for a value outside those ranges
   */
  public static Load load(double[] use, int day, double kg, int keeps) {
    OutsideDomainException.within("day of delivery", day, 0, use.length);
    OutsideDomainException.within("load in kg", kg, 0, 100_000);
    OutsideDomainException.within("days the feed keeps", keeps, 0, 10_000);
    double remaining = kg;
    double inTime = 0;
    double lasts = 0;
    for (int d = day; d < use.length && remaining > 0; d++) {
      double today = Math.min(use[d], remaining);
      lasts += use[d] > 0 ? today / use[d] : 1;
      remaining -= today;
      inTime += d - day < keeps ? today : 0;
    }
    return new Load(kg, lasts, inTime);
  }

  /**
   * The day to buy a load so that most of it is eaten while it keeps; the earliest of equals. Until
   * then the pigs are fed from bags.
   *
   * @param use kg a day for the whole group, from the day the pigs arrive; at least one day
   * @param kg the load
   * @param keeps days it keeps from the day it comes
   * @return day, 0 for the day the pigs arrive
   */
  public static int bestDay(double[] use, double kg, int keeps) {
    int best = 0;
    for (int day = 1; day < use.length; day++) {
      // the margin keeps rounding of a sum from passing for a better day
      if (load(use, day, kg, keeps).eaten() > load(use, best, kg, keeps).eaten() + 1e-6) {
        best = day;
      }
    }
    return best;
  }

  /**
   * A price for bulk against the price in bags; money in any one currency.
   *
   * @param bagPrice for each kg in bags
   * @param bulkPrice for each kg in bulk
   * @param extra delivery, and the bin or tank if one must be bought
   * @param minimum smallest load the mill brings, kg; 0 if there is none
   */
  public record Offer(double bagPrice, double bulkPrice, double extra, double minimum) {
    /**
     * @throws OutsideDomainException if a price or amount is negative or not a number
     */
    public Offer {
      OutsideDomainException.within("price in bags", bagPrice, 0, 1e6);
      OutsideDomainException.within("price in bulk", bulkPrice, 0, 1e6);
      OutsideDomainException.within("delivery and container", extra, 0, 1e9);
      OutsideDomainException.within("smallest load in kg", minimum, 0, 100_000);
    }

    /** Load in kg from which bulk is the cheaper, all of it eaten; empty if it never is. */
    public OptionalDouble breaksEvenAt() {
      return bagPrice > bulkPrice
          ? OptionalDouble.of(extra / (bagPrice - bulkPrice))
          : OptionalDouble.empty();
    }

    /**
     * Money saved by a load against bags for what is eaten of it. What goes stale or is left over
     * was paid for and saves nothing.
     *
     * @return negative where bags are the cheaper
     */
    public double saving(Load load) {
      return load.eaten() * bagPrice - load.kg() * bulkPrice - extra;
    }
  }
}
