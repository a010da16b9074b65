package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import swineherd.figures.FeedIntake;
import swineherd.figures.FeedUse;
import swineherd.figures.Feeding;
import swineherd.figures.OutsideDomainException;
import swineherd.outlook.Course;
import swineherd.outlook.DailyFeed;
import swineherd.setup.Feed;
import swineherd.setup.Group;

/** The feed of one group, day by day from its arrival to its last day. */
final class FeedCourse {
  private static final double[] PHASES = {11, 25, 50, 75, 100};

  private final Feeding feeding;
  private final LocalDate from;
  private final double[] mornings;
  private final double[] daily;

  private FeedCourse(Feeding feeding, LocalDate from, double[] mornings, int pigs) {
    this.feeding = feeding;
    this.from = from;
    this.mornings = mornings;
    this.daily = FeedIntake.daily(feeding, mornings, pigs);
  }

  /**
   * @param last last day they are there
   * @throws OutsideDomainException if the weights are beyond what the intake curves hold
   */
  static FeedCourse of(Course course, Group group, Feed feed, LocalDate last) {
    Feeding feeding = DailyFeed.feeding(course.growthClass().key(), group, feed, course.housed());
    LocalDate from = course.arrives();
    int days = (int) Math.max(0, last.toEpochDay() - from.toEpochDay());
    double[] mornings =
        IntStream.rangeClosed(0, days).mapToDouble(day -> weight(course, from, day)).toArray();
    return new FeedCourse(feeding, from, mornings, course.count());
  }

  private static double weight(Course course, LocalDate from, int day) {
    LocalDate on = from.plusDays(day);
    if (!course.foresees(on)) {
      throw new OutsideDomainException(
          "the growth curve of these pigs does not go as far as " + on);
    }
    return course.weightOn(on).likely();
  }

  /** How they are fed; see {@link DailyFeed#feeding}. */
  Feeding feeding() {
    return feeding;
  }

  /** The first day of feeding. */
  LocalDate from() {
    return from;
  }

  /** kg for the whole group on each day from the first, waste counted. */
  double[] daily() {
    return daily.clone();
  }

  /** kg for the whole group from a day on. */
  double kgFrom(LocalDate day) {
    int first = (int) Math.max(0, day.toEpochDay() - from.toEpochDay());
    return first >= daily.length ? 0 : Arrays.stream(daily, first, daily.length).sum();
  }

  /** kg for the whole group from its arrival to a day. */
  double kgUntil(LocalDate day) {
    int next = (int) Math.max(0, day.toEpochDay() - from.toEpochDay());
    return Arrays.stream(daily, 0, Math.min(next, daily.length)).sum();
  }

  /** For one pig over the whole time. */
  FeedUse eachInAll() {
    return FeedIntake.total(feeding, mornings);
  }

  /** For one pig by the phases in which its needs differ. */
  List<FeedUse> eachByPhase() {
    return FeedIntake.phases(feeding, mornings, PHASES);
  }
}
