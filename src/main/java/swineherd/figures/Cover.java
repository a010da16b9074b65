package swineherd.figures;

/**
 * Plant cover counted on a walk: a W through the paddock, and at each of 50 or so steps a look at
 * the toe of the boot: plant, living or dead, or bare soil.
 *
 * @param hits steps that met a plant
 * @param steps steps looked at, 1 or more
 */
public record Cover(int hits, int steps) {
  /** Standard normal deviate of a 95 % interval. */
  private static final double Z = 1.959964;

  /**
   * @throws OutsideDomainException if there are no steps, or more hits than steps
   */
  public Cover {
    OutsideDomainException.within("steps", steps, 1, Integer.MAX_VALUE);
    OutsideDomainException.within("steps that met a plant", hits, 0, steps);
  }

  /** Share of the ground that is covered, in %. */
  public double percent() {
    return 100.0 * hits / steps;
  }

  /**
   * Cover in % with the two ends of its 95 % interval (not 80 %, as in other bands): what the count
   * alone can tell, by the score interval of {@code wilson-1927}.
   */
  public Band band() {
    double share = (double) hits / steps;
    double inverse = Z * Z / steps;
    double middle = (share + inverse / 2) / (1 + inverse);
    double half = Math.sqrt(inverse * (share * (1 - share) + inverse / 4)) / (1 + inverse);
    return new Band(
        100 * Math.max(0, Math.min(share, middle - half)),
        percent(),
        100 * Math.min(1, Math.max(share, middle + half)));
  }

  /**
   * Green: stay; amber: move now; red: move, and close the ground for repair. The first line is
   * {@code nc-sows-2020}, the second this project's judgement.
   */
  public Signal signal() {
    if (percent() < GroundLimits.value("cover-repair")) {
      return Signal.RED;
    }
    return percent() < GroundLimits.value("cover-keep") ? Signal.AMBER : Signal.GREEN;
  }

  /**
   * Whether so much of a paddock is rooted up that the pigs should move, whatever its cover.
   *
   * @param rooted share of the ground in %, 0 to 100
   * @throws OutsideDomainException outside that
   */
  public static boolean isRootedUp(double rooted) {
    OutsideDomainException.within("rooted share in %", rooted, 0, 100);
    return rooted >= GroundLimits.value("rooted-move");
  }
}
