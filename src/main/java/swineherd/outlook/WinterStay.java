package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.ColdSeason;
import swineherd.figures.FirstFrost;

/**
 * Whether a group will still be there at the next first hard frost, or comes after it. There is one
 * for each group with a course, except where winters are mild.
 *
 * @param pigs name of the group
 * @param pen name of the pen; null if not said
 * @param frostKnown whether anything is known of the frost; if not, {@code chance} is that of being
 *     there late in autumn and for four weeks more, good only to see whether the frost matters
 * @param soon whether it is time to think of it: they have yet to come, or that frost is no more
 *     than three months off
 * @param begun whether they are there and the cold season has begun
 * @param frost the first hard frost of that winter
 * @param season the cold season
 * @param from the first day from which they are reckoned with: today, or that of arrival
 * @param chance that they are there at that frost, 0 to 1: they go on the day set for slaughter, or
 *     else once they have the target weight; the frost may come early or late
 * @param weight live weight then, kg, of those that are still there
 */
public record WinterStay(
    String pigs,
    String pen,
    boolean frostKnown,
    boolean soon,
    boolean begun,
    FirstFrost frost,
    ColdSeason season,
    LocalDate from,
    double chance,
    Band weight,
    List<String> grounds)
    implements Outlook {

  /** With so few days left the frost of an unknown place is not asked for. */
  private static final int FOUR_WEEKS = 28;

  /** Usual day of the first hard frost, or the day they come if that is later. */
  public LocalDate firstDay() {
    return later(frost.usual(), from);
  }

  static WinterStay of(Course course, WinterClimate climate, LocalDate checkOn) {
    LocalDate from = later(course.arrives(), checkOn);
    boolean known = climate.kind() == WinterClimate.Kind.FREEZES;
    boolean present = !course.arrives().isAfter(checkOn);
    ColdSeason season = climate.seasonFor(from, !present);
    FirstFrost frost = climate.frostOf(season);
    double chance =
        known
            ? frost.mean(day -> thereOn(course, day, from))
            : thereOn(course, later(frost.usual(), from.plusDays(FOUR_WEEKS)), from);
    return new WinterStay(
        course.pigs(),
        course.pen(),
        known,
        !present || !checkOn.isBefore(frost.usual().minusMonths(3)),
        present && !checkOn.isBefore(season.start()),
        frost,
        season,
        from,
        chance,
        weight(course, later(frost.usual(), from)),
        new Grounds().and(climate.frostGrounds()).and(course.grounds()).list());
  }

  /** Chance that they are there on a day; on the first day and before they are. */
  private static double thereOn(Course course, LocalDate day, LocalDate from) {
    if (course.slaughterOn() != null) {
      return day.isBefore(course.slaughterOn()) ? 1 : 0;
    }
    return day.isAfter(from) ? course.stillThereOn(day) : 1;
  }

  /** Those that have the target are gone, unless a day is set or they should have gone already. */
  private static Band weight(Course course, LocalDate day) {
    Band grown = course.weightOn(day);
    if (course.slaughterOn() != null || course.isOverdue()) {
      return grown;
    }
    double target = course.target();
    return new Band(
        Math.min(grown.low(), target),
        Math.min(grown.likely(), target),
        Math.min(grown.high(), target));
  }

  static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
