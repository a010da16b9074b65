package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * What speeds or slows growth, and how far a forecast is to be trusted: the rows of {@code
 * rules/tables/growth-factors.csv}, each with its source.
 */
public final class GrowthFactors {
  private GrowthFactors() {}

  /**
   * A factor with its bounds.
   *
   * @param key row in the table, such as {@code feed-to-appetite}
   * @throws IllegalArgumentException if there is no such row, or it has no bounds
   */
  public static Band band(String key) {
    Table.Row row = row(key);
    return new Band(row.number("low"), row.number("likely"), row.number("high"));
  }

  /**
   * The likely value of a factor.
   *
   * @throws IllegalArgumentException if there is no such row
   */
  public static double likely(String key) {
    return row(key).number("likely");
  }

  /**
   * The multiplier on a class's rate for one feed, one place and one sex. Sex is left out for the
   * classes where no difference is settled.
   *
   * @param feedKey row of kind feed
   * @param environmentKey row of kind environment
   * @param sexKey row of kind sex
   * @return multiplier, 1 for complete feed to appetite, housed, healthy, gilts
   * @throws IllegalArgumentException if a row is missing or of another kind
   */
  public static double product(
      GrowthClass growthClass, String feedKey, String environmentKey, String sexKey) {
    double sex = ofKind("sex", sexKey);
    return ofKind("feed", feedKey)
        * ofKind("environment", environmentKey)
        * (growthClass.sexMatters() ? sex : 1);
  }

  private static double ofKind(String kind, String key) {
    if (!row(key).text("kind").equals(kind)) {
      throw new IllegalArgumentException(key + " is no " + kind + " factor of growth");
    }
    return likely(key);
  }

  private static Table.Row row(String key) {
    return Table.named("growth-factors").row(key);
  }
}
