package swineherd.outlook;

import java.time.LocalDate;
import swineherd.figures.Hemisphere;
import swineherd.figures.Sun;
import swineherd.setup.Place;

/** When the sun is strong, and when it is hot, at a place. Not known counts as always. */
record SkyOver(Place place) {
  /** Between the tropics the hottest month is not told by the hemisphere. */
  private static final double TROPIC = 23.44;

  boolean isLatitudeKnown() {
    return place.latitude() != null;
  }

  /** UV index at noon under a clear sky; only where the latitude is known. */
  double index(LocalDate day) {
    return Sun.uvIndex(place.latitude(), day);
  }

  /** Whether the noon sun burns pale skin on a clear day. */
  boolean isStrong(LocalDate day) {
    return isLatitudeKnown() ? index(day) >= Sun.STRONG : !Sun.isDark(place.country(), day);
  }

  /** Whether the day lies in the three summer months; all year in the tropics. */
  boolean isSummer(LocalDate day) {
    if (!isLatitudeKnown()) {
      return !Sun.isDark(place.country(), day);
    }
    if (Math.abs(place.latitude()) <= TROPIC) {
      return true;
    }
    return switch (day.getMonth()) {
      case JUNE, JULY, AUGUST -> Hemisphere.of(place.latitude()) == Hemisphere.NORTH;
      case DECEMBER, JANUARY, FEBRUARY -> Hemisphere.of(place.latitude()) == Hemisphere.SOUTH;
      default -> false;
    };
  }
}
