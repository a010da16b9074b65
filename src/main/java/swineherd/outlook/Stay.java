package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swineherd.figures.GrowthClass;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * A group from now, or from its arrival, to its end: for figures that must be had whatever is not
 * known of it. Where there is no course of growth, it weighs what it came with on its first day and
 * its target afterwards.
 *
 * @param group the pigs
 * @param path where they stand in the setup
 * @param course how they grow; null if that is not known
 * @param feed how they are fed
 * @param from first day they are there, not before the day of the check
 * @param to last day; a year on where that is not known
 */
record Stay(Group group, String path, Course course, Feed feed, LocalDate from, LocalDate to) {
  /** Weights between which the curves of appetite and thirst hold, kg. */
  private static final double LIGHTEST = 2.5;

  private static final double HEAVIEST = 140;

  private static final int LEAD_DAYS = 7;

  /** The groups that are still there or to come, in the order of the setup. */
  static List<Stay> of(Setup setup, List<Course> courses) {
    List<Stay> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (!setup.isGone(group)) {
        Course course = Course.find(courses, group).orElse(null);
        LocalDate from = later(group.arrives(), setup.checkOn());
        LocalDate end = group.slaughterOn() != null ? group.slaughterOn() : end(course, from);
        all.add(new Stay(group, "pigs[" + i + "]", course, setup.feed(), from, later(end, from)));
      }
    }
    return all;
  }

  /** Those of them that are or will be in a pen. */
  static List<Stay> in(String pen, List<Stay> all) {
    return all.stream().filter(s -> Objects.equals(s.group.pen(), pen)).toList();
  }

  /** The same with another last day. */
  Stay until(LocalDate last) {
    return new Stay(group, path, course, feed, from, last);
  }

  /** Every day on which some of them are there, in their order. */
  static NavigableSet<LocalDate> days(List<Stay> stays) {
    return stays.stream().flatMap(Stay::days).collect(Collectors.toCollection(TreeSet::new));
  }

  /** Every day they are there. */
  Stream<LocalDate> days() {
    return from.datesUntil(to.plusDays(1));
  }

  private static LocalDate end(Course course, LocalDate from) {
    return course == null || course.end() == null ? from.plusYears(1) : course.end();
  }

  static LocalDate first(List<Stay> stays) {
    return stays.stream().map(Stay::from).min(Comparator.naturalOrder()).orElseThrow();
  }

  /** When something must be ready for them: a week before the first come, or at once. */
  static LocalDate readyBy(List<Stay> stays, LocalDate today) {
    return later(first(stays).minusDays(LEAD_DAYS), today);
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a == null || a.isBefore(b) ? b : a;
  }

  /** The day they came or come; where it was not said, the first day they are there. */
  LocalDate first() {
    return group.arrives() == null ? from : group.arrives();
  }

  boolean isThereOn(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  /** Whether there are pigs among them that may be entire males; not if it was not said. */
  boolean hasEntireMales() {
    return group.sex() != Group.Sex.GILTS
        && group.males() != null
        && group.males() != Group.Males.CASTRATED;
  }

  /** First day on which they weigh so much; null if they never do, or growth is not known. */
  LocalDate reach(double weight) {
    if (course == null) {
      return null;
    }
    return days().filter(day -> weightOn(day) >= weight).findFirst().orElse(null);
  }

  /** Number of pigs; one where it was not said. */
  int count() {
    return group.countOrOne();
  }

  GrowthClass growthClass() {
    return course == null ? GrowthClass.ofBreed(group.breed()) : course.growthClass();
  }

  /** Likely weight on a day they are there, kg, within what the curves of appetite hold. */
  double weightOn(LocalDate day) {
    return Math.max(LIGHTEST, Math.min(HEAVIEST, reckonedOn(day)));
  }

  private double reckonedOn(LocalDate day) {
    if (course != null) {
      return course.weightOn(day).likely();
    }
    if (day.isAfter(from)) {
      return endWeight();
    }
    return group.arrivalWeight() == null
        ? growthClass().eightWeekKg().likely()
        : group.arrivalWeight();
  }

  /** Live weight of one when it goes, kg; what is usual for the breed where nobody said. */
  double endWeight() {
    return new Leaving(group, course).endWeight();
  }

  /** The answers that their number and weight rest on. */
  Grounds grounds() {
    return Grounds.of(path, "count", "breed", "arrivalWeight", "targetWeight");
  }
}
