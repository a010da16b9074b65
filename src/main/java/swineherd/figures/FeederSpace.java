package swineherd.figures;

import swineherd.rulebook.Table;

/** Room at the feeder, so that the smallest pig eats as well as the strongest. */
public final class FeederSpace {
  private static final double PLACE = 0.0671;
  private static final double HOPPER_PLACE = 0.30;
  private static final int PIGS_PER_HOPPER_PLACE = 4;
  private static final int FEWEST_HOPPER_PLACES = 2;

  private FeederSpace() {}

  /**
   * Width of one eating place: a tenth more than the shoulders ({@code petherick-baxter-1981}).
   *
   * @param weight live weight in kg, 2.5 to 140
   * @return m
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static double placeWidth(double weight) {
    return PLACE * Math.cbrt(OutsideDomainException.within("live weight in kg", weight, 2.5, 140));
  }

  /**
   * Length of trough for pigs that are rationed and eat all at once: a place for each, and never
   * below the table {@code trough-space}. A weight between two rows takes the heavier row; beyond
   * 120 kg, where the table ends, the width of a place is well above its last row.
   *
   * @param pigs 0 or more
   * @param weight live weight in kg of the heaviest, 2.5 to 140
   * @return m
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static double trough(int pigs, double weight) {
    return notNegative(pigs) * Math.max(placeWidth(weight), fromTable("trough_mm", weight));
  }

  /**
   * Places at a hopper that is never empty: one for four pigs, and at least two however few, so
   * that one pig cannot hold it alone (common practice; four to five a place is the older American
   * rule, six the most without barriers between heads).
   *
   * @param pigs 0 or more
   */
  public static int hopperPlaces(int pigs) {
    return Math.max(
        FEWEST_HOPPER_PLACES,
        (notNegative(pigs) + PIGS_PER_HOPPER_PLACE - 1) / PIGS_PER_HOPPER_PLACE);
  }

  /**
   * Length of hopper front for those places, each 30 cm or the width of a place if that is more.
   *
   * @param pigs 0 or more
   * @param weight live weight in kg of the heaviest, 2.5 to 140
   * @return m
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static double hopper(int pigs, double weight) {
    double places = hopperPlaces(pigs) * Math.max(HOPPER_PLACE, placeWidth(weight));
    return Math.max(places, pigs * fromTable("hopper_mm", weight));
  }

  private static double fromTable(String column, double weight) {
    double metres = 0;
    for (Table.Row row : Table.named("trough-space").rows()) {
      metres = row.number(column) / 1000;
      if (weight <= Double.parseDouble(row.key())) {
        break;
      }
    }
    return metres;
  }

  private static int notNegative(int pigs) {
    if (pigs < 0) {
      throw new OutsideDomainException("pigs must not be negative: " + pigs);
    }
    return pigs;
  }
}
