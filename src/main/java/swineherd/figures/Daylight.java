package swineherd.figures;

import java.time.LocalDate;

/**
 * Sun in the sky by latitude and date ({@code cooper-1969}). Latitudes in degrees, south negative,
 * -90 to 90; {@link OutsideDomainException} outside that. The declination may be off by a degree
 * and a half about the equinoxes, which is a quarter of an hour of day at 55 degrees.
 */
public final class Daylight {
  /** Height of the sun's centre when its upper rim is seen on the horizon, degrees. */
  private static final double RISING = -0.833;

  private Daylight() {}

  /** Degrees that the sun stands north of the equator on a date. */
  public static double declination(LocalDate date) {
    return 23.44 * Math.sin(Math.toRadians(360.0 * (284 + date.getDayOfYear()) / 365));
  }

  /** Hours from sunrise to sunset, 0 to 24. */
  public static double hours(double latitude, LocalDate date) {
    double lat =
        Math.toRadians(OutsideDomainException.within("latitude in degrees", latitude, -90, 90));
    double dec = Math.toRadians(declination(date));
    double cosine =
        (Math.sin(Math.toRadians(RISING)) - Math.sin(lat) * Math.sin(dec))
            / (Math.cos(lat) * Math.cos(dec));
    if (cosine >= 1) {
      return 0;
    }
    return cosine <= -1 ? 24 : 24 / Math.PI * Math.acos(cosine);
  }

  /** Height of the sun at solar noon over the horizon, degrees; negative in the polar night. */
  public static double noonHeight(double latitude, LocalDate date) {
    OutsideDomainException.within("latitude in degrees", latitude, -90, 90);
    return 90 - Math.abs(latitude - declination(date));
  }
}
