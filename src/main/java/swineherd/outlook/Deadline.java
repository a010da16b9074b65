package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.figures.Forecast;
import swineherd.figures.Growth;
import swineherd.figures.GrowthClass;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.SlaughterDay;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dimension;
import swineherd.units.Display;

/**
 * The day by which a group should have its target weight, and what can be done if it will not: the
 * day set for slaughter, where a target was said with it, or else the first hard frost.
 *
 * @param pigs name of the group
 * @param coming whether they have yet to come, so that another breed or day can be chosen
 * @param byDay whether it is the day set for slaughter; if not, that of the first hard frost
 * @param day the day set, or the usual day of the frost
 * @param frostKnown whether anything is known of the frost
 * @param chance that they have not reached the target by then, 0 to 1
 * @param winterIfKept chance that they have not reached it at the first hard frost, so that those
 *     who wait for it keep them into the winter
 * @param weight live weight on that day, kg
 * @param target live weight aimed at, kg
 * @param finish when they reach it; null if the curve does not go so far
 * @param crossFinish when a modern cross, bought as an ordinary weaner on the same day and kept on
 *     the same feed, reaches it, if eight in ten such groups do so in time and these do not; else
 *     null
 * @param latestArrival the last day of arrival from which eight in ten such groups reach it in
 *     time; null if they are there already, or the curve does not go so far
 * @param arrivalPast words to end its sentence: that it is past on the day of the check, or nothing
 * @param lighter live weight that eight in ten such groups have in time, kg, but not above the
 *     target
 * @param orLighter a sentence on that as a target; empty where it is no less than the target, or so
 *     little that nobody wants it
 * @param most heaviest that such pigs get on this feed as far as the curve is known, kg
 * @param decideBy when to have decided what to do: a month before they come, or else before the day
 *     set or an early frost; today if that is past
 * @param bookBy when to have booked the likely day of finish; null if that is not known
 */
public record Deadline(
    String pigs,
    boolean coming,
    boolean byDay,
    LocalDate day,
    boolean frostKnown,
    double chance,
    double winterIfKept,
    Band weight,
    double target,
    DateBand finish,
    LocalDate crossFinish,
    LocalDate latestArrival,
    String arrivalPast,
    double lighter,
    String orLighter,
    double most,
    LocalDate decideBy,
    LocalDate bookBy,
    List<String> grounds)
    implements Outlook {

  /** In time means: eight groups in ten are. */
  private static final double LATE = 0.2;

  private static final String MODERN = "modern-cross";
  private static final int LONGEST_DAYS = 2000;
  private static final double EXACT_KG = 0.1;

  /** Judgement: a target so little under the other is the same. */
  private static final double LEAST_LIGHTER_KG = 2;

  /** Judgement: so long it takes to find other pigs, or to get ready for these. */
  private static final int MONTH = 30;

  /** Whether the target is never reached as far as the curve goes. */
  public boolean outOfReach() {
    return finish == null;
  }

  /**
   * Empty where there is nothing to be late for: no day with a target, and the frost not known, or
   * so near that they plainly meet it, or pigs that should have gone already.
   */
  static Optional<Deadline> of(Setup setup, Course course, WinterStay stay) {
    Group group = setup.group(course.pigs()).orElseThrow();
    boolean byDay = course.slaughterOn() != null;
    boolean beforeFrost =
        stay.frostKnown() && stay.from().isBefore(stay.frost().early()) && !course.isOverdue();
    if (byDay ? group.targetWeight() == null : !beforeFrost) {
      return Optional.empty();
    }
    boolean coming = course.arrives().isAfter(setup.checkOn());
    LocalDate day = byDay ? course.slaughterOn() : stay.frost().usual();
    double inWinter = stay.frost().mean(frost -> course.notReachedBy(frost));
    double chance = byDay ? course.notReachedBy(day) : stay.chance();
    Band weight = course.weightOn(day);
    double lighter = lighter(course, stay, byDay);
    DateBand finish = course.finish();
    LocalDate latestArrival = coming ? latestArrival(course, stay, byDay) : null;
    boolean past = latestArrival != null && latestArrival.isBefore(setup.checkOn());
    return Optional.of(
        new Deadline(
            course.pigs(),
            coming,
            byDay,
            day,
            stay.frostKnown(),
            chance,
            inWinter,
            weight,
            course.target(),
            finish,
            coming && chance > LATE ? crossFinish(course, stay, byDay) : null,
            latestArrival,
            past ? ", which is past" : "",
            lighter,
            orLighter(lighter, course, setup),
            most(course),
            decideBy(course, stay, coming, setup.checkOn()),
            finish == null
                ? null
                : WinterStay.later(
                    SlaughterDay.bookBy(finish.likely(), setup.place().country()), setup.checkOn()),
            stay.grounds()));
  }

  private static LocalDate decideBy(
      Course course, WinterStay stay, boolean coming, LocalDate checkOn) {
    LocalDate latest = coming ? course.arrives() : stay.frost().early();
    if (course.slaughterOn() != null && course.slaughterOn().isBefore(latest)) {
      latest = course.slaughterOn();
    }
    return WinterStay.later(latest.minusDays(MONTH), checkOn);
  }

  /** A modern cross of the usual weight at eight weeks, on the same feed in the same place. */
  private static LocalDate crossFinish(Course course, WinterStay stay, boolean byDay) {
    GrowthClass modern = GrowthClass.named(MODERN);
    GrowthClass own = course.growthClass();
    if (own.key().equals(MODERN)) {
      return null;
    }
    Forecast forecast = course.forecast();
    double factor = forecast.growth().ratePerDay() / own.ratePerDay();
    double besidesClass = forecast.sigma() * forecast.sigma() - own.sigma() * own.sigma();
    try {
      Forecast cross =
          new Forecast(
              modern.growth(factor),
              Math.sqrt(Math.max(0, besidesClass) + modern.sigma() * modern.sigma()),
              modern.usualAtEightWeeks(course.arrives()),
              forecast.checkDays());
      LocalDate finish = cross.datesOf(course.target()).likely();
      return late(cross, course, stay, byDay, 0) <= LATE ? finish : null;
    } catch (OutsideDomainException e) {
      return null;
    }
  }

  /** Found by halving: the earlier they come, the surer they are in time. */
  private static LocalDate latestArrival(Course course, WinterStay stay, boolean byDay) {
    if (course.target() > course.forecast().growth().highestKg()) {
      return null;
    }
    long least = -ChronoUnit.DAYS.between(course.arrives(), stay.frost().usual());
    long most = LONGEST_DAYS;
    if (byDay) {
      least = -ChronoUnit.DAYS.between(course.arrives(), course.slaughterOn());
    }
    while (most - least > 1) {
      long middle = Math.floorDiv(least + most, 2);
      if (late(course.forecast(), course, stay, byDay, middle) <= LATE) {
        most = middle;
      } else {
        least = middle;
      }
    }
    return most == LONGEST_DAYS ? null : course.arrives().minusDays(most);
  }

  /** Found by halving between what they weigh and the target. */
  private static double lighter(Course course, WinterStay stay, boolean byDay) {
    double least = course.forecast().start().kg();
    double most = Math.min(course.target(), course.forecast().growth().highestKg());
    while (most - least > EXACT_KG) {
      double middle = (least + most) / 2;
      if (late(course.forecast(), middle, course, stay, byDay, 0) <= LATE) {
        least = middle;
      } else {
        most = middle;
      }
    }
    return Math.min(least, course.target());
  }

  /** Judgement: under half the target it is no plan. */
  private static String orLighter(double lighter, Course course, Setup setup) {
    if (lighter < course.target() / 2 || lighter > course.target() - LEAST_LIGHTER_KG) {
      return "";
    }
    return "Or set a lighter target: eight in ten have "
        + Display.amount(lighter, Dimension.MASS, setup.units())
        + " before the frost.";
  }

  private static double most(Course course) {
    Forecast forecast = course.forecast();
    try {
      return forecast.growth().weightAfter(forecast.start().kg(), Growth.LONGEST_DAYS);
    } catch (OutsideDomainException e) {
      return forecast.growth().highestKg();
    }
  }

  /** Chance of not being in time if they come so many days earlier. */
  private static double late(
      Forecast forecast, Course course, WinterStay stay, boolean byDay, long earlier) {
    return late(forecast, course.target(), course, stay, byDay, earlier);
  }

  private static double late(
      Forecast forecast, double target, Course course, WinterStay stay, boolean byDay, long days) {
    if (byDay) {
      return late(forecast, target, course.slaughterOn().plusDays(days));
    }
    return stay.frost().mean(day -> late(forecast, target, day.plusDays(days)));
  }

  private static double late(Forecast forecast, double target, LocalDate day) {
    return day.isAfter(forecast.start().on()) ? forecast.chanceNotReached(target, day) : 1;
  }
}
