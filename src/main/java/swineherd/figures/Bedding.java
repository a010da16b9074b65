package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Straw for deep beds. Amounts in kg of dry straw, from a trial in hoops ({@code isu-hoops}); table
 * {@code rules/tables/bedding.csv}. How deep a bed should be: {@link WinterClass#bedDepth}.
 */
public final class Bedding {
  private Bedding() {}

  /** When the gain is made: cold beds take more. */
  public enum Season {
    WINTER("straw-per-gain-winter"),
    SUMMER("straw-per-gain-summer");

    private final String key;

    Season(String key) {
      this.key = key;
    }
  }

  /**
   * Straw the bed takes while pigs grow.
   *
   * @param pigs 1 or more
   * @param gain of one pig in that season, kg, 0 to 200
   * @throws OutsideDomainException outside those
   */
  public static Band straw(Season season, int pigs, double gain) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    OutsideDomainException.within("gain in kg", gain, 0, 200);
    Table.Row row = row(season.key);
    return new Band(row.number("low"), row.number("likely"), row.number("high")).times(pigs * gain);
  }

  /**
   * Straw to buy: the likely amount and a quarter more (this project's judgement).
   *
   * @param straw from {@link #straw}, kg
   */
  public static double order(Band straw) {
    return straw.likely() * likely("reserve");
  }

  /**
   * Straw for the first bed, by the density of loose straw (common practice).
   *
   * @param area of the bed, m2, 0 to 1000
   * @param depth m, 0 to 2
   * @throws OutsideDomainException outside those
   */
  public static Band firstFill(double area, double depth) {
    OutsideDomainException.within("bed in m2", area, 0, 1000);
    OutsideDomainException.within("depth of straw in m", depth, 0, 2);
    Table.Row row = row("loose-straw");
    return new Band(row.number("low"), row.number("likely"), row.number("high"))
        .times(area * depth);
  }

  /**
   * Whole bales that hold an amount.
   *
   * @param straw kg, 0 or more
   * @param bale weight of one bale, kg; {@link #smallBale} or what the seller says
   * @throws OutsideDomainException if a bale is not 1 to 1000 kg, or the straw is negative
   */
  public static int bales(double straw, double bale) {
    OutsideDomainException.within("straw in kg", straw, 0, 1e6);
    OutsideDomainException.within("weight of a bale in kg", bale, 1, 1000);
    // an amount that is a whole number of bales must not become one more by rounding
    return (int) Math.ceil(straw / bale - 1e-9);
  }

  /** Weight of a usual small square bale, kg (common practice). */
  public static double smallBale() {
    return likely("small-bale");
  }

  private static double likely(String key) {
    return row(key).number("likely");
  }

  private static Table.Row row(String key) {
    return Table.named("bedding").row(key);
  }
}
