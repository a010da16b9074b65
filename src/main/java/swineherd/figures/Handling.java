package swineherd.figures;

import swineherd.rulebook.Table;

/** Ramps for loading. Pigs walk up better than down, and best where nothing slopes. */
public final class Handling {
  private Handling() {}

  /**
   * Length in m of a ramp, along its slope.
   *
   * @param rise from ground to floor of the trailer, m, 0 or more
   * @param degrees slope, above 0 and up to 89
   * @throws OutsideDomainException outside those
   */
  public static double rampLength(double rise, double degrees) {
    return rise(rise) / Math.sin(slope(degrees));
  }

  /**
   * Green up to 15 degrees (judgement on {@code goumon-2013}, {@code animals-5-13}), amber up to
   * the 20 degrees of {@code eu-1-2005}, red above: climbing takes longer from there on ({@code
   * warriss-1991}).
   *
   * @param degrees slope, 0 to 89
   * @throws OutsideDomainException outside that
   */
  public static Signal ramp(double degrees) {
    OutsideDomainException.within("slope in degrees", degrees, 0, 89);
    if (degrees > limit("ramp-limit")) {
      return Signal.RED;
    }
    return degrees > limit("ramp-good") ? Signal.AMBER : Signal.GREEN;
  }

  private static double rise(double rise) {
    return OutsideDomainException.within("rise in m", rise, 0, 10);
  }

  private static double slope(double degrees) {
    OutsideDomainException.within("slope in degrees", degrees, Double.MIN_VALUE, 89);
    return Slope.radians(degrees);
  }

  private static double limit(String key) {
    return Table.named("transport").row(key).number("value");
  }
}
