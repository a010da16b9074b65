package swineherd.figures;

/** Slope of ground and ramps: degrees in the law of some places, per cent in that of others. */
public final class Slope {
  private Slope() {}

  /**
   * Rise in % of the level distance.
   *
   * @param degrees 0 to 89
   * @throws OutsideDomainException outside that
   */
  public static double percent(double degrees) {
    return 100 * Math.tan(radians(degrees));
  }

  /**
   * Angle in degrees.
   *
   * @param percent rise in % of the level distance, 0 or more
   * @throws OutsideDomainException below 0
   */
  public static double degrees(double percent) {
    OutsideDomainException.within("slope in %", percent, 0, Double.MAX_VALUE);
    return Math.toDegrees(Math.atan(percent / 100));
  }

  /**
   * How ground for pigs stands: green up to 8 % (common practice), red above 12 degrees, which
   * counts as a pollution risk in England ({@code england-farming-rules}).
   *
   * @param degrees 0 to 89
   * @throws OutsideDomainException outside that
   */
  public static Signal ground(double degrees) {
    double percent = percent(degrees);
    if (degrees > GroundLimits.value("slope-risk")) {
      return Signal.RED;
    }
    return percent > GroundLimits.value("slope-ideal") ? Signal.AMBER : Signal.GREEN;
  }

  static double radians(double degrees) {
    return Math.toRadians(OutsideDomainException.within("slope in degrees", degrees, 0, 89));
  }
}
