package swineherd.figures;

import java.time.Month;
import java.util.Comparator;
import java.util.List;
import swineherd.rulebook.Table;

/** Batteries and solar panels for an energizer of 12 V. */
public final class FencePower {
  private static final double HOURS = 24;
  private static final double VOLTS = 12;

  private FencePower() {}

  /**
   * Mean current in A that an energizer draws, between the rows of {@code energizer-current.csv}
   * (energizer-catalogue-panel). Under 1 J the current of 1 J is taken, which is on the safe side:
   * a small unit draws about 0.06 A (energizer-manual-battery).
   *
   * @param joules output energy, 0.01 to 3 J; nothing is published above
   * @throws OutsideDomainException if it lies outside
   */
  public static double current(double joules) {
    OutsideDomainException.within("output energy in J", joules, 0.01, 3);
    List<Table.Row> known =
        Table.named("energizer-current").rows().stream()
            .filter(row -> row.maybe("joules").isPresent())
            .toList();
    double least = known.get(0).number("joules");
    return between(known, "joules", "milliamps", Math.max(joules, least)) / 1000;
  }

  /**
   * Rated charge in Ah of a battery that lasts some days without charging.
   *
   * @param amperes mean current, 0.001 to 5 A
   * @param days without charge, 0.1 to 60
   * @param usable share that may be drawn, 0.1 to 1, see {@link #usable}; multiply by {@link
   *     #coldShare} for lead-acid in the cold
   * @throws OutsideDomainException if a number lies outside
   */
  public static double battery(double amperes, double days, double usable) {
    checkCurrent(amperes);
    OutsideDomainException.within("days without charge", days, 0.1, 60);
    checkUsable(usable);
    return amperes * HOURS * days / usable;
  }

  /**
   * Days a battery lasts without charging: {@link #battery} turned round.
   *
   * @param ampereHours rated charge, 1 to 1,000 Ah
   * @param amperes mean current, 0.001 to 5 A
   * @param usable share that may be drawn, 0.1 to 1
   * @throws OutsideDomainException if a number lies outside
   */
  public static double days(double ampereHours, double amperes, double usable) {
    OutsideDomainException.within("rated charge in Ah", ampereHours, 1, 1000);
    checkCurrent(amperes);
    checkUsable(usable);
    return ampereHours * usable / (amperes * HOURS);
  }

  /** Days without charge to be ready for: 8 to 14. Judgement. */
  public static Band reserveDays() {
    return FenceNumbers.band("fence-build", "reserve-days", 1);
  }

  /**
   * Share of the rated charge that may be drawn, by kind of battery. Cited from memory.
   *
   * @param kind a row of {@code batteries.csv}
   * @throws IllegalArgumentException if the table has no such kind
   */
  public static double usable(String kind) {
    return Table.named("batteries").row(kind).number("usable");
  }

  /**
   * Share of its rated charge that a lead-acid battery gives in the cold, on straight lines between
   * the rows of {@code battery-cold.csv}; 1 above 25 degC. Cited from memory.
   *
   * @param degC temperature of the battery, -20 to 45 degC
   * @throws OutsideDomainException if it lies outside
   */
  public static double coldShare(double degC) {
    OutsideDomainException.within("temperature in degC", degC, -20, 45);
    List<Table.Row> known = Table.named("battery-cold").rows();
    double warmest = known.get(known.size() - 1).number("deg_c");
    return between(known, "deg_c", "share", Math.min(degC, warmest));
  }

  /**
   * Rated power of a solar panel in W that keeps the battery up through the worst month of use,
   * with a fifth to spare (energizer-catalogue-panel).
   *
   * @param amperes mean current, 0.001 to 5 A
   * @param peakSunHours a day in that month, 0.1 to 8, see {@link #peakSun}
   * @throws OutsideDomainException if a number lies outside
   */
  public static double panel(double amperes, double peakSunHours) {
    checkCurrent(amperes);
    OutsideDomainException.within("peak sun hours", peakSunHours, 0.1, 8);
    return amperes * HOURS * VOLTS * FenceNumbers.build("panel-margin") / peakSunHours;
  }

  /**
   * Hours a day at full sun that a month's light is worth, on the level and unshaded; the likely
   * value is the middle. Cited from memory for some months, drawn between them for the others:
   * {@code peak-sun.csv}.
   *
   * @param latitude degrees north
   * @throws OutsideDomainException if the table has no such place and month: it knows 50 to 55
   *     degrees north all year, and 25 to 35 in winter
   */
  public static Band peakSun(double latitude, Month month) {
    for (Table.Row row : Table.named("peak-sun").rows()) {
      if (latitude >= row.number("lat_from")
          && latitude <= row.number("lat_to")
          && month.getValue() == row.number("month")) {
        double low = row.number("low");
        double high = row.number("high");
        return new Band(low, (low + high) / 2, high);
      }
    }
    throw new OutsideDomainException(
        "peak sun hours are not known for latitude " + latitude + " in " + month);
  }

  /** Value on the straight line between two rows; the rows rise by {@code x} and enclose it. */
  private static double between(List<Table.Row> rows, String x, String y, double at) {
    int upper = 1;
    while (upper < rows.size() - 1 && rows.get(upper).number(x) < at) {
      upper++;
    }
    Table.Row left = rows.get(upper - 1);
    Table.Row right = rows.get(upper);
    double share = (at - left.number(x)) / (right.number(x) - left.number(x));
    return left.number(y) + share * (right.number(y) - left.number(y));
  }

  private static void checkCurrent(double amperes) {
    OutsideDomainException.within("mean current in A", amperes, 0.001, 5);
  }

  private static void checkUsable(double usable) {
    OutsideDomainException.within("usable share of the charge", usable, 0.1, 1);
  }

  /**
   * Hours to size a panel by: those of {@link #peakSun} where they are known, or else those of the
   * next belt towards the pole, which has less sun; south of the equator the months half a year
   * away. Derived.
   *
   * @param latitude 25 to 55 degrees, north or south; nearer the poles nothing is known, nearer the
   *     equator clouds count for more than latitude
   * @throws OutsideDomainException if it lies outside
   */
  public static Band leastPeakSun(double latitude, Month month) {
    double north = Math.abs(latitude);
    OutsideDomainException.within("latitude in degrees", north, 25, 55);
    Month there = latitude < 0 ? month.plus(6) : month;
    return Table.named("peak-sun").rows().stream()
        .filter(row -> row.number("month") == there.getValue() && row.number("lat_to") >= north)
        .min(Comparator.comparingDouble(row -> row.number("lat_to")))
        .map(row -> peakSun(row.number("lat_from"), there))
        .orElseThrow();
  }
}
