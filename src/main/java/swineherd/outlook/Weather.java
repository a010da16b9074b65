package swineherd.outlook;

import java.time.LocalDate;
import swineherd.figures.Heat;
import swineherd.figures.Hemisphere;
import swineherd.setup.Place;

/** How warm it may be at a place; what is not known counts as warm. Judgement, for planning. */
record Weather(Place place) {
  /** Air temperature on a hot day where nothing is known of the summer, degC. */
  static final double HOT_IF_UNKNOWN = 35;

  /** Highest air temperature on an ordinary day outside the warm months, degC. */
  private static final double COOL = 20;

  private static final double TROPIC = 23.44;
  private static final double LONG_SUMMER = 30;

  /** Hottest air that the figures on water go up to, degC. */
  private static final double HOTTEST = 40;

  /**
   * Whether the day lies in the warm months: May to September in the north, a month more at either
   * end where the hottest month passes 30 degC; all year in the tropics and where it is not known
   * how far north or south it is.
   */
  boolean isWarm(LocalDate day) {
    Hemisphere hemisphere = hemisphere();
    if (hemisphere == null) {
      return true;
    }
    int fromJuly = Math.abs(day.getMonthValue() - 7);
    int fromMidsummer = hemisphere == Hemisphere.NORTH ? fromJuly : 6 - fromJuly;
    return fromMidsummer <= (hottestMonth() > LONG_SUMMER ? 3 : 2);
  }

  /** Null in the tropics and where it is not known. */
  private Hemisphere hemisphere() {
    boolean tropics = place.latitude() != null && Math.abs(place.latitude()) <= TROPIC;
    return tropics ? null : new Climate(place).hemisphereSaid().orElse(null);
  }

  /** Highest air temperature of an ordinary day in that season, degC. */
  double ordinaryDay(LocalDate day) {
    return isWarm(day) ? hottestMonth() : Math.min(COOL, hottestMonth());
  }

  /** Air temperature on the hottest days of that season, degC. */
  double hotDay(LocalDate day) {
    if (!isWarm(day)) {
      return ordinaryDay(day);
    }
    return place.hottestMonth() == null
        ? HOT_IF_UNKNOWN
        : Math.min(HOTTEST, Heat.hottestDays(place.hottestMonth()).likely());
  }

  private double hottestMonth() {
    return place.hottestMonth() == null ? HOT_IF_UNKNOWN : place.hottestMonth();
  }
}
