package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * What keeping a pig to a heavier weight changes, by the review of heavy market pigs (tas-2017;
 * table {@code slaughter-traits}). For modern lean pigs of 100 to 150 kg only.
 */
public final class HeavierPig {
  private static final double FROM = 100;
  private static final double TO = 150;

  /** Weight in kg at which the keeper's own starting values are given. */
  private static final double BASE = 110;

  private HeavierPig() {}

  /**
   * Change of a trait between two live weights, in the unit of its row: {@code backfat} in mm,
   * {@code carcass-yield} in points of live weight, and so on.
   *
   * @param trait row of {@code slaughter-traits}
   * @param fromKg live weight in kg, 100 to 150
   * @param toKg live weight in kg, 100 to 150; less than {@code fromKg} turns the sign
   * @throws IllegalArgumentException if there is no such trait
   * @throws OutsideDomainException if a weight is outside
   */
  public static double change(String trait, double fromKg, double toKg) {
    double tens = (within(toKg) - within(fromKg)) / 10;
    return Table.named("slaughter-traits").row(trait).number("per10Kg") * tens;
  }

  /**
   * Feed conversion over the whole time, kg of feed per kg of gain, at another slaughter weight.
   *
   * @param at110Kg feed conversion to 110 kg, 1.5 to 6
   * @param kg live weight in kg, 100 to 150
   * @throws OutsideDomainException if one is outside
   */
  public static double feedConversion(double at110Kg, double kg) {
    OutsideDomainException.within("feed conversion to 110 kg", at110Kg, 1.5, 6);
    return 1 / (1 / at110Kg + change("gain-to-feed", BASE, kg));
  }

  private static double within(double kg) {
    return OutsideDomainException.within("live weight in kg", kg, FROM, TO);
  }
}
