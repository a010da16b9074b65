package swineherd.figures;

import swineherd.rulebook.Table;
import swineherd.setup.Place.Soil;
import swineherd.units.Dimension;

/**
 * Pigs on grass: how much of it they use up, how long it lasts, and how it is divided.
 *
 * <p>The measure is the pig-day: one pig of 67 kg, the mean of the trials, for one day. The lines
 * are this project's judgement, drawn through trials on southern US grasses and in Denmark ({@code
 * bermudagrass-2020}, {@code fescue-2020}, {@code thomsen-2001}) and extension advice ({@code
 * umn-bu-07736}); wet cool clay is worse, dry sand better. Rest for grass is not rest for worms,
 * which takes years.
 *
 * <p>Areas are m2, times days, weights kg. Every method throws {@link OutsideDomainException} for
 * an area, a time or a number of pigs that is not above zero.
 */
public final class Pasture {
  private static final double LIGHTEST = 10;
  private static final double HEAVIEST = 150;

  private Pasture() {}

  /**
   * What a group asks of the ground, in pig-days of a 67 kg pig.
   *
   * @param pigs 1 or more
   * @param days on that ground in the season
   * @param meanWeight of one pig over those days in kg, 10 to 150; the load is taken as
   *     proportional to it
   * @throws OutsideDomainException outside those
   */
  public static double pigDays(int pigs, double days, double meanWeight) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    OutsideDomainException.within("mean live weight in kg", meanWeight, LIGHTEST, HEAVIEST);
    return pigs * positive("days", days) * meanWeight / GroundLimits.value("trial-pig");
  }

  /** Pig-days for each m2 in the season. */
  public static double load(double pigDays, double area) {
    return positive("pig-days", pigDays) / positive("area in m2", area);
  }

  /**
   * Green while grass should live through the season (2.7 m2 and more for each pig-day, which is a
   * load of 0.37), red where it will be gone (a load above 0.75); on wet clay at half of that.
   *
   * @param soil null if it is not known, and then counted as one that drains
   */
  public static Signal signal(double pigDays, double area, Soil soil) {
    if (load(pigDays, area) * timesOnClay(soil) > GroundLimits.value("bare-load")) {
      return Signal.RED;
    }
    return area < areaNeeded(pigDays, soil) ? Signal.AMBER : Signal.GREEN;
  }

  /** Least m2 on which grass should live through the season. */
  public static double areaNeeded(double pigDays, Soil soil) {
    return positive("pig-days", pigDays)
        * GroundLimits.value("area-per-pig-day")
        * timesOnClay(soil);
  }

  /**
   * Days until the ground is bare, counted from the day it was whole.
   *
   * @param pigs 1 or more
   * @param meanWeight of one pig in kg, 10 to 150
   * @throws OutsideDomainException outside those
   */
  public static double daysUntilBare(int pigs, double meanWeight, double area, Soil soil) {
    return GroundLimits.value("bare-load")
        * positive("area in m2", area)
        / (pigDays(pigs, 1, meanWeight) * timesOnClay(soil));
  }

  /**
   * How pigs are usually moved: a week on one paddock, and two months until they are back ({@code
   * attra-woods}: three to seven days, and 30 to 90).
   */
  public static Turn usualTurn() {
    return new Turn(
        (int) GroundLimits.value("paddock-stay"), (int) GroundLimits.value("paddock-rest"));
  }

  /**
   * @param stay days on one paddock, above 0
   * @param rest days it then lies empty, above 0
   */
  public record Turn(int stay, int rest) {
    /** Paddocks that takes, the one the pigs are on counted. */
    public int paddocks() {
      return (int) Math.ceil((double) rest / stay) + 1;
    }
  }

  /**
   * Whether the ground will be bare whatever is done, and is better planned as a dirt lot.
   *
   * @param areaEach m2 for each pig in the season
   */
  public static boolean isDirtLot(double areaEach) {
    return positive("area in m2", areaEach) < GroundLimits.value("dirt-lot");
  }

  /**
   * Hard or free-draining ground for wet weeks and winter, in m2 for the group: the least, and the
   * two ends of what is comfortable. The hut comes on top.
   */
  public static Band sacrificeArea(int pigs) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    return GroundLimits.band("sacrifice-area").times(pigs);
  }

  /**
   * Pigs on a hectare.
   *
   * @param low fewest that was advised or found good
   * @param high most
   */
  public record Stocking(double low, double high) {
    /**
     * A row of {@code rules/tables/stocking.csv}.
     *
     * @throws IllegalArgumentException if there is none of that key
     */
    public static Stocking published(String key) {
      Table.Row row = Table.named("stocking").row(key);
      double factor = row.text("unit").equals("pigs/acre") ? perHectare(1) : 1;
      return new Stocking(row.number("low") * factor, row.number("high") * factor);
    }
  }

  /** Pigs on a hectare from pigs on an acre. */
  public static double perHectare(double perAcre) {
    return perAcre * GroundLimits.HECTARE / Dimension.AREA.toBase(1, "ac");
  }

  /** Pigs on an acre from pigs on a hectare. */
  public static double perAcre(double perHectare) {
    return perHectare * Dimension.AREA.toBase(1, "ac") / GroundLimits.HECTARE;
  }

  /**
   * Radius in m around a stem that pigs must not root up ({@code bs-5837}).
   *
   * @param stem diameter in m at 1.5 m height, up to 1.25, where the standard stops growing it
   * @throws OutsideDomainException outside that
   */
  public static double treeRadius(double stem) {
    return GroundLimits.value("tree-radius")
        * OutsideDomainException.within("stem diameter in m", stem, Double.MIN_VALUE, 1.25);
  }

  /** Wet clay carries half the pigs. */
  private static double timesOnClay(Soil soil) {
    return soil == Soil.WET_CLAY ? GroundLimits.value("wet-clay") : 1;
  }

  private static double positive(String quantity, double value) {
    return OutsideDomainException.within(quantity, value, Double.MIN_VALUE, Double.MAX_VALUE);
  }
}
