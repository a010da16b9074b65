package swineherd.figures;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import swineherd.rulebook.Table;

/**
 * What follows from the few things a keeper can say about the winter of a place: a hardiness zone,
 * the mean minimum of the coldest month, the mean date of the first hard freeze (-2.2 degC, 28
 * degF). Temperatures in degC; tables {@code winter-nights} and {@code winter-lead-times} under
 * {@code rules/tables/}.
 */
public final class Winter {
  /** Usual standard deviation of the date of the first hard freeze, in days; 7 to 14. */
  public static final double USUAL_SPREAD = 10;

  /** Key of the task of laying in feed. */
  public static final String FEED_STORE = "feed-store";

  /** Key of the task of going round the shelter. */
  public static final String REPAIRS = "repairs";

  /** Key of the task of trying everything out. */
  public static final String TEST_RUN = "test-run";

  /** One year in ten is earlier than this many standard deviations before the mean. */
  private static final double TENTH_PERCENTILE = 1.2816;

  /** Under this the worst night lies further below the monthly minimum. */
  private static final double HARD_WINTER = -8;

  private Winter() {}

  /**
   * Mean daily minimum of the coldest month, with the error of the method, which is fitted to
   * {@code noaa-normals}.
   *
   * @param maritime whether the sea keeps the winter mild
   */
  public static Band monthlyMinimum(HardinessZone zone, boolean maritime) {
    double likely = zone.extremeMinimum().likely() + nights(toMonthly(zone, maritime));
    double error = nights("to-monthly-error");
    return new Band(likely - error, likely, likely + error);
  }

  /**
   * The worst night of an ordinary year, for a place whose zone is not known. If it is, take the
   * middle of {@link HardinessZone#extremeMinimum}.
   *
   * @param monthlyMinimum mean daily minimum of the coldest month, degC, -60 to 40
   * @param maritime whether the sea keeps the winter mild
   * @throws OutsideDomainException outside that
   */
  public static double worstNight(double monthlyMinimum, boolean maritime) {
    OutsideDomainException.within("mean minimum of a month in degC", monthlyMinimum, -60, 40);
    if (maritime) {
      return monthlyMinimum - nights("to-worst-maritime");
    }
    return monthlyMinimum
        - nights(monthlyMinimum < HARD_WINTER ? "to-worst-hard" : "to-worst-inland");
  }

  /**
   * The 24-hour mean of the coldest month, which is what extra feed is reckoned on.
   *
   * @param monthlyMinimum mean daily minimum of the coldest month, degC, -60 to 40
   * @param maritime whether the sea keeps day and night close together
   * @throws OutsideDomainException outside that
   */
  public static double dayMean(double monthlyMinimum, boolean maritime) {
    OutsideDomainException.within("mean minimum of a month in degC", monthlyMinimum, -60, 40);
    return monthlyMinimum + nights(maritime ? "day-over-night" : "day-over-night-inland");
  }

  /**
   * Early date of the first hard freeze: one year in ten it comes before this ({@code
   * mrcc-freeze-dates}). Works at any time of the year, so in both hemispheres.
   *
   * @param mean mean date, in the year in question
   * @param spread standard deviation in days, 0 to 40; {@link #USUAL_SPREAD} if not known
   * @throws OutsideDomainException outside that
   */
  public static LocalDate earlyFreeze(LocalDate mean, double spread) {
    OutsideDomainException.within("spread of the first freeze in days", spread, 0, 40);
    return mean.minusDays(Math.round(TENTH_PERCENTILE * spread));
  }

  /**
   * The mean date of the first hard freeze, from the early one: the inverse of {@link
   * #earlyFreeze}.
   *
   * @param early early date
   * @param spread standard deviation in days, 0 to 40
   * @throws OutsideDomainException outside that
   */
  public static LocalDate usualFreeze(LocalDate early, double spread) {
    OutsideDomainException.within("spread of the first freeze in days", spread, 0, 40);
    return early.plusDays(Math.round(TENTH_PERCENTILE * spread));
  }

  /**
   * The winter tasks of a class, each with the days to start and to have done it, in that order.
   * The weeks are this project's judgement; no source states any.
   *
   * @param earlyFreeze from {@link #earlyFreeze}
   */
  public static List<Task> readiness(WinterClass winter, LocalDate earlyFreeze) {
    List<Task> tasks = new ArrayList<>();
    for (Table.Row row : Table.named("winter-lead-times").rows()) {
      if (row.text("occasion").equals("before-frost")
          && winter.atLeast(WinterClass.valueOf(row.text("from-class")))) {
        tasks.add(
            new Task(
                row.key(),
                earlyFreeze.minusWeeks((long) row.number("weeks-from")),
                earlyFreeze.minusWeeks((long) row.number("weeks-by"))));
      }
    }
    tasks.sort(Comparator.comparing(Task::due).thenComparing(Task::start));
    return List.copyOf(tasks);
  }

  /**
   * Something to have ready before winter.
   *
   * @param key row of {@code rules/tables/winter-lead-times.csv}
   * @param start day to begin
   * @param due day to have it done
   */
  public record Task(String key, LocalDate start, LocalDate due) {}

  private static String toMonthly(HardinessZone zone, boolean maritime) {
    if (maritime) {
      return "to-monthly-maritime";
    }
    return switch (zone.number()) {
      case 1, 2, 3, 4, 5 -> "to-monthly-zone-5";
      case 6, 7 -> "to-monthly-zone-7";
      case 8 -> "to-monthly-zone-8";
      default -> "to-monthly-zone-9";
    };
  }

  private static double nights(String key) {
    return Table.named("winter-nights").row(key).number("degrees-c");
  }
}
