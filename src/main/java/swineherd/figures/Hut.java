package swineherd.figures;

/**
 * The bed of pigs that live outdoors: floor of a hut or shelter that is for lying only. Factors in
 * {@code rules/tables/space-factors.csv}; the sizing rule is this project's judgement.
 *
 * <p>Size it for the heaviest weight the pigs reach in the season. Areas are m2 for the whole
 * group, weights live weights in kg, 5 to 150, pigs 1 or more; {@link OutsideDomainException}
 * outside those.
 */
public final class Hut {
  /** Room beside the lying pigs, so that they keep the bed clean. */
  private static final double DUNG_FREE_MARGIN = 1.2;

  /** Pigs dung what they do not lie on, and it stays cold. */
  private static final double TOO_LARGE = 2;

  private Hut() {}

  /** When the pigs lie in it. */
  public enum Season {
    /** In the cold they lie close, half on the side. */
    WINTER("bed-winter"),
    /** In the heat they lie apart, flat on the side; also for use all year. */
    SUMMER("bed-summer");

    private final String factor;

    Season(String factor) {
      this.factor = factor;
    }
  }

  /** How a bed fits the pigs on it. */
  public enum Fit {
    TOO_SMALL,
    FITS,
    /** Close part of it off, with bales for instance. */
    TOO_LARGE
  }

  /** Bed area to provide, in m2 for the group. */
  public static double bedArea(Season season, int pigs, double weight) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    return pigs * Allometry.named(season.factor).area(weight) * DUNG_FREE_MARGIN;
  }

  /**
   * Bed area, in m2 for the group, above which a winter bed is too large to keep clean and warm.
   */
  public static double largestWinterBed(int pigs, double weight) {
    return TOO_LARGE * bedArea(Season.WINTER, pigs, weight);
  }

  /** How a bed of {@code area} m2 fits; in summer none is too large. */
  public static Fit fit(Season season, double area, int pigs, double weight) {
    return fit(season, area, bedArea(season, pigs, weight));
  }

  /**
   * The same for pigs of several weights.
   *
   * @param needed the sum of their {@link #bedArea}s, m2
   */
  public static Fit fit(Season season, double area, double needed) {
    if (area < needed) {
      return Fit.TOO_SMALL;
    }
    return season == Season.WINTER && area > TOO_LARGE * needed ? Fit.TOO_LARGE : Fit.FITS;
  }
}
