package swineherd.figures;

import java.time.LocalDate;
import swineherd.rulebook.Table;

/** Room for the meat, how fast it freezes, how long it stays good. */
public final class Freezer {
  private Freezer() {}

  /**
   * Freezer space in litres for wrapped meat. Published packings differ 2.7-fold, hence the wide
   * band.
   *
   * @param meatKg meat in kg, 0 to 2000
   * @throws OutsideDomainException if it is outside
   */
  public static Band litres(double meatKg) {
    return band("space").times(OutsideDomainException.within("meat in kg", meatKg, 0, 2000));
  }

  /**
   * Meat in kg that a home freezer freezes through in a day (usda-home-freezing); a whole pig is
   * many times that, so have the butcher freeze it.
   *
   * @param litres inside volume of the freezer in litres, 0 to 2000
   * @throws OutsideDomainException if it is outside
   */
  public static Band freezesKgADay(double litres) {
    return band("freezing").times(OutsideDomainException.within("freezer in L", litres, 0, 2000));
  }

  /**
   * Day by which a cut kept at -18 C is best eaten: the short end of the United States chart. It
   * stays safe beyond.
   *
   * @param cut row of {@code frozen-storage}: {@code roasts}, {@code sausage} ...
   * @throws IllegalArgumentException if there is no such cut
   */
  public static LocalDate bestBefore(LocalDate frozenOn, String cut) {
    return frozenOn.plusMonths((long) Table.named("frozen-storage").row(cut).number("low"));
  }

  private static Band band(String key) {
    Table.Row row = Table.named("freezer").row(key);
    return new Band(row.number("low"), row.number("likely"), row.number("high"));
  }
}
