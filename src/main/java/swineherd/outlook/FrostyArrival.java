package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swineherd.figures.ColdSeason;
import swineherd.figures.WinterNights;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * A group that comes near the end of the cold season, while nights may still be too cold for
 * weaners in their shelter as it is. Those that come before or in the winter itself are judged with
 * all that are there then: {@link WinterLying}.
 *
 * @param pigs name of the group
 * @param pen name of the pen
 * @param arrives day of arrival
 * @param weight live weight on that day, kg
 * @param night air on a night of an ordinary cold week at that time, degC
 * @param warmFrom first day from which their shelter is warm enough for that weight once it has a
 *     deep bed
 * @param sure whether the winter is known well enough; if not, it is so in the worst winter that
 *     the answers leave open
 */
public record FrostyArrival(
    String pigs,
    String pen,
    LocalDate arrives,
    double weight,
    double night,
    LocalDate warmFrom,
    boolean sure,
    List<String> grounds)
    implements Outlook {

  private static final int LONGEST_DAYS = 120;

  /**
   * Empty if the shelter is warm enough as it is. One that is not known or not there counts as open
   * to the weather, and nights that are not known as those of a cold winter. Where a harder winter
   * is left open too it is tried, unless the shelter has to be asked for first.
   */
  static Optional<FrostyArrival> of(
      Setup setup, int pen, Course course, WinterClimate climate, int pigsInPen) {
    if (!course.arrives().isAfter(setup.checkOn())) {
      return Optional.empty();
    }
    Optional<FrostyArrival> told =
        climate.kind() == WinterClimate.Kind.FREEZES
            ? in(climate, climate.nightsOrCold(), true, setup, pen, course, pigsInPen)
            : Optional.empty();
    if (told.isPresent() || climate.isTold() || setup.pens().get(pen).shelter().kind() == null) {
      return told;
    }
    WinterClimate worst = climate.atWorst();
    return in(worst, worst.nights(), false, setup, pen, course, pigsInPen);
  }

  private static Optional<FrostyArrival> in(
      WinterClimate climate,
      double coldest,
      boolean sure,
      Setup setup,
      int pen,
      Course course,
      int pigsInPen) {
    ColdSeason at = climate.seasonOn(course.arrives());
    boolean tail =
        at.contains(course.arrives()) && !climate.seasonFor(course.arrives(), true).equals(at);
    if (!tail) {
      return Optional.empty();
    }
    WinterNights nights = WinterNights.ofColdWeeks(at, climate.spread(), coldest);
    double weight = course.weightOn(course.arrives()).likely();
    Lodging asIs = lodging(setup.pens().get(pen).shelter());
    if (asIs.warmEnough(nights.on(course.arrives()), pigsInPen, weight, 0)) {
      return Optional.empty();
    }
    for (int days = 0; days <= LONGEST_DAYS; days++) {
      LocalDate day = course.arrives().plusDays(days);
      if (asIs.withDeepBed().warmEnough(nights.on(day), pigsInPen, weight, 0)) {
        return Optional.of(
            new FrostyArrival(
                course.pigs(),
                course.pen(),
                course.arrives(),
                weight,
                nights.on(course.arrives()),
                day,
                sure,
                WinterLying.shelterGrounds(
                        new Grounds().and(climate.grounds()), pen, setup.pens().get(pen).shelter())
                    .and(course.grounds())
                    .list()));
      }
    }
    return Optional.empty();
  }

  private static Lodging lodging(Shelter shelter) {
    boolean open = shelter.kind() == null || shelter.kind() == Shelter.Kind.NONE;
    return open ? Lodging.openTo(shelter.bed()) : Lodging.of(shelter);
  }
}
