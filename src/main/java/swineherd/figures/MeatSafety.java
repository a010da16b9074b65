package swineherd.figures;

import java.util.Comparator;
import java.util.Optional;
import swineherd.rulebook.Table;

/**
 * Heat and cold that make pork safe from trichinae. Curing, smoking, drying and microwaves alone do
 * not; meat of wild boar, and of a pig that may have eaten game or rodents, is cooked, since its
 * parasites can stand frost.
 */
public final class MeatSafety {
  /** Thickest meat, in cm, the former United States rule froze: 27 in. */
  private static final double THICKEST_CM = 68.6;

  /** Up to here, in cm, the shorter days held: 6 in. */
  private static final double THIN_CM = 15.2;

  private MeatSafety() {}

  /** What meat it is. */
  public enum Meat {
    WHOLE_CUT,
    /** Mince and sausage. */
    GROUND,
    /** Wild boar, or a pig that may have eaten game or rodents. */
    GAME
  }

  /** Inside temperature to reach, degC (table {@code cooking}). */
  public static double cookToC(Meat meat) {
    return cooking(meat).number("inside_c");
  }

  /** Inside temperature of the United Kingdom's advice for all meat, held for two minutes, degC. */
  public static double cookForTwoMinutesC() {
    return Table.named("cooking").row("uk-2-minutes").number("inside_c");
  }

  /** Warmest freezing that counts at all, degC. */
  public static double warmestFreezingC() {
    return Table.named("freezing").rows().stream()
        .mapToDouble(row -> row.number("coldest_c"))
        .max()
        .orElseThrow();
  }

  private static Table.Row cooking(Meat meat) {
    return Table.named("cooking")
        .row(
            switch (meat) {
              case WHOLE_CUT -> "whole-cut";
              case GROUND -> "ground";
              case GAME -> "game";
            });
  }

  /** Whether a freezing counts. */
  public enum Freezing {
    ADEQUATE,
    TOO_SHORT,
    /** Above the warmest row: no number of days counts. */
    TOO_WARM,
    /** Thicker than the rule knows. */
    TOO_THICK,
    /** Wild boar and the like: cook it. */
    NOT_ACCEPTED
  }

  /**
   * Days of freezing that the former 9 CFR 318.10 asked for (removed in 2018, kept as guidance). A
   * temperature between two rows counts as the warmer one. It must have been proved throughout the
   * meat; a freezer's dial does not.
   *
   * @param warmestC warmest temperature of the freezing, degC, taken to a tenth as in the rule
   * @param thicknessCm thickness of the piece or layer, cm
   * @return days; nothing if it is too warm
   * @throws OutsideDomainException outside -100 to 60 degC, or 0 to 68.6 cm
   */
  public static Optional<Integer> freezingDays(double warmestC, double thicknessCm) {
    String days =
        OutsideDomainException.within("thickness in cm", thicknessCm, 0, THICKEST_CM) <= THIN_CM
            ? "days_thin"
            : "days_thick";
    double t =
        Math.rint(OutsideDomainException.within("temperature in degC", warmestC, -100, 60) * 10)
            / 10;
    return Table.named("freezing").rows().stream()
        .filter(row -> t <= row.number("coldest_c"))
        .min(Comparator.comparingDouble(row -> row.number("coldest_c")))
        .map(row -> (int) row.number(days));
  }

  /**
   * @param thicknessCm thickness of the piece or layer, cm
   * @param days days at {@code warmestC} or colder throughout
   * @throws OutsideDomainException as {@link #freezingDays}, or if days are negative
   */
  public static Freezing freezing(Meat meat, double warmestC, double thicknessCm, double days) {
    if (meat == Meat.GAME) {
      return Freezing.NOT_ACCEPTED;
    }
    if (thicknessCm > THICKEST_CM) {
      return Freezing.TOO_THICK;
    }
    double held = OutsideDomainException.within("days of freezing", days, 0, 1e5);
    return freezingDays(warmestC, thicknessCm)
        .map(needed -> held >= needed ? Freezing.ADEQUATE : Freezing.TOO_SHORT)
        .orElse(Freezing.TOO_WARM);
  }
}
