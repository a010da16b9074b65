package swineherd.figures;

import java.util.List;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * Heat: how hot a pig can stand it, what it then leaves uneaten, and when not to move it. Air
 * temperatures in degC in the shade; live weights in kg. Thresholds come from chambers at constant
 * temperature; pigs outdoors with cool nights cope better.
 */
public final class Heat {
  /** What shade, wallow and cool nights together are worth, degrees; this project's judgement. */
  private static final double EASED = 3;

  /** Hottest days over the mean daily maximum of the hottest month, degrees, give or take 2. */
  private static final double DESIGN_DAY = 6;

  private static final double DESIGN_ERROR = 2;

  /** Degrees over the upper critical temperature at which shade alone no longer does. */
  private static final double NEEDS_WATER = 3;

  private Heat() {}

  /**
   * Temperature-humidity index ({@code nrc-1971}).
   *
   * @param air degC, -60 to 60
   * @param humidity relative, percent, 0 to 100
   * @throws OutsideDomainException outside those
   */
  public static double index(double air, double humidity) {
    OutsideDomainException.within("air temperature in degC", air, -60, 60);
    OutsideDomainException.within("relative humidity in percent", humidity, 0, 100);
    return 1.8 * air + 32 - (0.55 - 0.0055 * humidity) * (1.8 * air - 26);
  }

  /**
   * Upper critical temperature, over which pigs fed to appetite eat and grow less: 27 - 0.05 W,
   * derived from {@code huynh-2005} (60 kg) and {@code ars-42-32}.
   *
   * @param weight kg, 20 to 120
   * @throws OutsideDomainException outside that
   */
  public static double upperCritical(double weight) {
    return 27 - 0.05 * OutsideDomainException.within("live weight in kg", weight, 20, 120);
  }

  /** As {@link #upperCritical(double)}; higher for pigs with shade, a wallow and cool nights. */
  public static double upperCritical(double weight, boolean eased) {
    return upperCritical(weight) + (eased ? EASED : 0);
  }

  /**
   * Air temperature on the hottest days of an ordinary year, degC.
   *
   * @param monthlyMaximum mean daily maximum of the hottest month, degC, -20 to 50
   * @throws OutsideDomainException outside that
   */
  public static Band hottestDays(double monthlyMaximum) {
    double likely = month(monthlyMaximum) + DESIGN_DAY;
    return new Band(likely - DESIGN_ERROR, likely, likely + DESIGN_ERROR);
  }

  /**
   * Whether pigs of that weight need shade and water on the skin in the hottest month.
   *
   * @param monthlyMaximum mean daily maximum of the hottest month, degC, -20 to 50
   * @param weight kg then, 20 to 120
   * @throws OutsideDomainException outside those
   */
  public static boolean needsWetting(double monthlyMaximum, double weight) {
    return hottestDays(monthlyMaximum).likely() > upperCritical(weight) + NEEDS_WATER;
  }

  /**
   * Wallow for a group, m2; shade must be near (common practice).
   *
   * @param pigs 1 or more
   * @throws OutsideDomainException if fewer
   */
  public static Band wallow(int pigs) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    double least = ground("wallow-least");
    double low = Math.max(least, pigs * ground("wallow-low"));
    double high = Math.max(least, pigs * ground("wallow-high"));
    return new Band(low, (low + high) / 2, high);
  }

  /** How hot summers are; {@code rules/tables/heat-classes.csv}, this project's judgement. */
  public enum SummerClass {
    MILD("mild"),
    WARM("warm"),
    HOT("hot"),
    VERY_HOT("very-hot");

    private final String key;

    SummerClass(String key) {
      this.key = key;
    }

    /**
     * @param monthlyMaximum mean daily maximum of the hottest month, degC, -20 to 50
     * @throws OutsideDomainException outside that
     */
    public static SummerClass of(double monthlyMaximum) {
      String key = Steps.last("heat-classes", "from-c", month(monthlyMaximum)).key();
      for (SummerClass each : values()) {
        if (each.key.equals(key)) {
          return each;
        }
      }
      throw new IllegalStateException("unknown row in heat-classes: " + key);
    }

    /** Keys of what the class requires, in the table's order. */
    public List<String> requirements() {
      return List.of(Table.named("heat-classes").row(key).text("requires").split(" "));
    }

    /** Weight that pigs should not be over in it, kg; empty where it does not matter. */
    public OptionalDouble lightTo() {
      return Table.named("heat-classes").row(key).maybe("light-kg");
    }
  }

  /** Whether the weather suits loading and hauling; {@code rules/tables/haul-weather.csv}. */
  public enum Haul {
    FIT,
    /** Dry pigs, deep straw, front vents covered. */
    COLD,
    /** Load before eight in the morning; never park loaded. */
    EARLY,
    /** Not on that day. */
    POSTPONE
  }

  /**
   * Whether to load and haul pigs, by the forecast. The rule is this project's judgement; the outer
   * limits of 5 and 27 degC are from {@code animals-2015-trailers}.
   *
   * @param air degC, -60 to 60
   * @param humidity relative, percent, 0 to 100
   * @param weight kg, 20 to 120
   * @throws OutsideDomainException outside those
   */
  public static Haul haul(double air, double humidity, double weight) {
    double thi = index(air, humidity);
    if (thi >= haulLimit("postpone-from-thi")) {
      return Haul.POSTPONE;
    }
    boolean hotForWeight =
        air > upperCritical(weight) + haulLimit("early-over-upper-critical")
            || air > haulLimit("hot-above");
    if (hotForWeight || thi >= haulLimit("early-from-thi")) {
      return Haul.EARLY;
    }
    return air < haulLimit("cold-below") ? Haul.COLD : Haul.FIT;
  }

  /**
   * As {@link #haul(double, double, double)} where the humidity is not known: it is taken as 60 %,
   * with which nothing is loaded from about 29.4 degC on (this project's judgement). Weights beyond
   * those measured count as the nearest that was.
   *
   * @param air degC, -60 to 60
   * @param weight kg
   * @throws OutsideDomainException outside those
   */
  public static Haul haul(double air, double weight) {
    double reckoned = Math.max(20, Math.min(120, weight));
    return haul(air, haulLimit("humidity-if-unknown"), reckoned);
  }

  private static double month(double monthlyMaximum) {
    return OutsideDomainException.within(
        "mean maximum of a month in degC", monthlyMaximum, -20, 50);
  }

  private static double ground(String key) {
    return Table.named("summer-ground").row(key).number("value");
  }

  private static double haulLimit(String key) {
    return Table.named("haul-weather").row(key).number("value");
  }
}
