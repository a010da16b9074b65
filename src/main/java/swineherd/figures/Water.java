package swineherd.figures;

import java.util.Map;
import swineherd.rulebook.Table;

/**
 * Drinking water: how much, from how many drinkers and how good. When it has failed: {@link
 * WaterLost}.
 */
public final class Water {
  private static final double PLAN = 1.5;
  private static final double LEAST_PER_KG = 0.06;

  private Water() {}

  /**
   * Water drunk with each kg of dry feed. A line through the ranges of {@code mount-1971}: 2.1 to
   * 2.7 at 7 to 22 °C, 2.8 to 5.0 at 30 to 33 °C.
   *
   * @param air highest air temperature of the day, °C, -5 to 40; the line is level below 22 °C, so
   *     a day of harder frost may be asked for as one of -5
   * @return L/kg feed eaten
   * @throws OutsideDomainException for a temperature outside -5 to 40 °C
   */
  public static double perKgFeed(double air) {
    OutsideDomainException.within("air temperature in °C", air, -5, 40);
    return Math.min(5.0, 2.5 + 0.14 * Math.max(0, air - 22));
  }

  /**
   * Water that one pig on dry feed drinks in a day, and never less than 60 mL for each kg it weighs
   * ({@code aasv-water-2023}, lowest use at drinkers). A wallow comes on top.
   *
   * @param weight live weight in kg, 2.5 to 140; measured pigs were 10 to 130 kg
   * @param feed dry feed eaten, kg a day, 0 to 6
   * @param air highest air temperature of the day, °C, -5 to 40
   * @return L a day
   * @throws OutsideDomainException for a value outside those ranges
   */
  public static double need(double weight, double feed, double air) {
    OutsideDomainException.within("live weight in kg", weight, 2.5, 140);
    OutsideDomainException.within("feed eaten in kg a day", feed, 0, 6);
    return Math.max(perKgFeed(air) * feed, LEAST_PER_KG * weight);
  }

  /**
   * Water to lay on or carry for a need: half as much again for spill, fouling and the hotter day
   * (a judgement).
   *
   * @param need L a day, 0 or more
   * @return L a day
   */
  public static double supply(double need) {
    return PLAN * OutsideDomainException.within("water needed in L a day", need, 0, 10_000);
  }

  /**
   * Nipple drinkers for a pen.
   *
   * @param pigs 0 or more
   * @param weight live weight in kg, 2.5 to 140
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static int drinkers(int pigs, double weight) {
    if (pigs < 0) {
      throw new OutsideDomainException("pigs must not be negative: " + pigs);
    }
    Table.Row row = drinkerFor(weight);
    double enough = Math.ceil(pigs / row.number("pigs_per_nipple"));
    return (int) Math.max(row.number("fewest"), enough);
  }

  /**
   * Flow of a nipple drinker.
   *
   * @param weight live weight in kg, 2.5 to 140
   * @return L/min: the least that will do, what to set, and the most before it soaks the bed
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static Band flow(double weight) {
    Table.Row row = drinkerFor(weight);
    return new Band(row.number("flow_least"), row.number("flow"), row.number("flow_most"));
  }

  private static Table.Row drinkerFor(double weight) {
    OutsideDomainException.within("live weight in kg", weight, 2.5, 140);
    Table drinkers = Table.named("drinkers");
    Table.Row weaner = drinkers.row("weaner");
    return weight < weaner.number("to_kg") ? weaner : drinkers.row("grower");
  }

  /** How good a water is, best first. */
  public enum Quality {
    GOOD,
    CAUTION,
    UNFIT
  }

  /**
   * Judges one measured value against the table {@code water-quality}.
   *
   * @param item row of the table, such as {@code sulfate}
   * @param value in the unit of that row, 0 or more
   * @throws IllegalArgumentException if the table has no such item
   * @throws OutsideDomainException if the value is negative or not a number
   */
  public static Quality quality(String item, double value) {
    Table.Row limits = measured(item, value);
    if (limits.maybe("unfit_above").orElse(Double.POSITIVE_INFINITY) < value) {
      return Quality.UNFIT;
    }
    boolean good =
        value >= limits.maybe("good_from").orElse(0) && value <= limits.number("good_to");
    return good ? Quality.GOOD : Quality.CAUTION;
  }

  /**
   * The worst of several measured values; what was not measured is not in it, so good here means
   * good as far as it was measured.
   *
   * @param values by row of {@code water-quality}, each in the unit of its row; at least one
   */
  public static Quality quality(Map<String, Double> values) {
    return values.entrySet().stream()
        .map(measurement -> quality(measurement.getKey(), measurement.getValue()))
        .max(Quality::compareTo)
        .orElseThrow(() -> new OutsideDomainException("nothing was measured"));
  }

  private static Table.Row measured(String item, double value) {
    OutsideDomainException.within("measured " + item, value, 0, 1e6);
    return Table.named("water-quality").row(item);
  }

  /**
   * Water a pig went without, as on a day when the drinker was frozen.
   *
   * @param need what it drinks, L a day, 0 or more
   * @param hours without water, 0 or more
   * @return L
   */
  public static double missed(double need, double hours) {
    OutsideDomainException.within("water needed in L a day", need, 0, 10_000);
    return need * OutsideDomainException.within("hours without water", hours, 0, 10_000) / 24;
  }
}
