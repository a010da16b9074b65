package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Snow on a roof. Unless the maker states a load that is at least the local ground snow load, prop
 * the ridge, clear wet snow at 15 cm, and keep pigs out while clearing (this project's judgement).
 */
public final class SnowLoad {
  /** Pounds a square foot in 1 kg/m2. */
  public static final double PSF = 0.204816;

  private SnowLoad() {}

  /** Kinds of snow, a row each in {@code rules/tables/snow-densities.csv} (common practice). */
  public enum Snow {
    FRESH("fresh"),
    SETTLED("settled"),
    WET("wet"),
    ICE("ice");

    private final String key;

    Snow(String key) {
      this.key = key;
    }
  }

  /**
   * Load in kg/m2.
   *
   * @param depth m, 0 to 5
   * @param density kg/m3, 20 to 917 (ice)
   * @throws OutsideDomainException outside those
   */
  public static double of(double depth, double density) {
    OutsideDomainException.within("depth of snow in m", depth, 0, 5);
    OutsideDomainException.within("density of snow in kg/m3", density, 20, 917);
    return depth * density;
  }

  /**
   * Load in kg/m2 for a kind of snow, the middle of its densities being likely.
   *
   * @param depth m, 0 to 5
   * @throws OutsideDomainException outside that
   */
  public static Band of(double depth, Snow snow) {
    Table.Row row = Table.named("snow-densities").row(snow.key);
    double low = of(depth, row.number("low-kg-m3"));
    double high = of(depth, row.number("high-kg-m3"));
    return new Band(low, (low + high) / 2, high);
  }
}
