package swineherd.outlook;

import java.util.Locale;
import swineherd.units.Dimension;
import swineherd.units.UnitSystem;

/** Money in words: plain numbers in whatever money the keeper thinks in. */
public enum Prices {
  BY_KG("kg"),
  BY_LB("lb");

  /** From here on no keeper asks for the cents. */
  private static final double ROUND = 100;

  private final String unit;

  Prices(String unit) {
    this.unit = unit;
  }

  static Prices in(UnitSystem units) {
    return units == UnitSystem.US ? BY_LB : BY_KG;
  }

  /** {@code 7.50}, {@code 240}. */
  static String money(double amount) {
    return String.format(Locale.ROOT, amount < ROUND ? "%.2f" : "%.0f", amount);
  }

  /**
   * {@code 7.50 a kg}.
   *
   * @param perKg money for each kg
   */
  String byWeight(double perKg) {
    return money(perKg * Dimension.MASS.toBase(1, unit)) + " a " + unit;
  }
}
