package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import swineherd.figures.GrowthClass;
import swineherd.figures.KnownWeight;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * The groups that are or will be in one pen, which the outlooks on its fence share. Groups whose
 * day of slaughter has passed are left out.
 *
 * @param index place of the pen in the setup
 * @param members at least one
 */
record Occupants(Setup setup, int index, Pen pen, List<Member> members) {
  /**
   * One group.
   *
   * @param path where the group stands in the setup
   * @param course null if nobody said when they come
   * @param there whether they are in the pen on the day of the check
   * @param kgNow live weight today or, if they are still to come, on arrival, kg
   * @param kgEnd live weight when they go, kg
   */
  record Member(
      String path, Group group, Course course, boolean there, double kgNow, double kgEnd) {}

  /** All pens in which there are, or will be, pigs. */
  static List<Occupants> of(Setup setup, List<Course> courses) {
    List<Occupants> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      List<Member> members = in.stays().stream().map(stay -> member(setup, stay)).toList();
      all.add(new Occupants(setup, in.index(), in.pen(), members));
    }
    return all;
  }

  /** The path of an answer about the fence. */
  String fence(String field) {
    return "pens[" + index + "].fence." + field;
  }

  boolean anyThere() {
    return members.stream().anyMatch(Member::there);
  }

  /**
   * Whether all groups came so many days ago or more; a day of arrival nobody knows is long ago.
   */
  boolean allThereFor(int days) {
    LocalDate since = setup.checkOn().minusDays(days);
    return members.stream()
        .allMatch(
            m -> m.there() && (m.group().arrives() == null || !m.group().arrives().isAfter(since)));
  }

  /**
   * Day by which something must stand, so many days before the first pigs come; today if that has
   * passed or they are there; null if nobody said when they come.
   */
  LocalDate readyBy(int daysBefore) {
    LocalDate today = setup.checkOn();
    if (anyThere()) {
      return today;
    }
    return members.stream()
        .map(m -> m.group().arrives())
        .filter(Objects::nonNull)
        .min(Comparator.naturalOrder())
        .map(first -> first.minusDays(daysBefore))
        .map(day -> day.isBefore(today) ? today : day)
        .orElse(null);
  }

  /** The last day that pigs are there; null if nobody can say. */
  LocalDate until() {
    LocalDate last = null;
    for (Member member : members) {
      LocalDate end =
          member.course() == null ? member.group().slaughterOn() : member.course().end();
      if (end == null) {
        return null;
      }
      last = last == null || end.isAfter(last) ? end : last;
    }
    return last;
  }

  /** The group that is lightest now. */
  Member lightest() {
    return members.stream().min(Comparator.comparingDouble(Member::kgNow)).orElseThrow();
  }

  /** Weight of the heaviest group now, kg. */
  double heaviestNow() {
    return members.stream().mapToDouble(Member::kgNow).max().orElseThrow();
  }

  /** Weight of the heaviest group when it goes, kg. */
  double heaviestEnd() {
    return members.stream().mapToDouble(Member::kgEnd).max().orElseThrow();
  }

  /** The paths of some answers about every group. */
  List<String> ofPigs(String... fields) {
    Grounds grounds = new Grounds();
    members.forEach(m -> grounds.and(m.path(), fields));
    return grounds.list();
  }

  private static Member member(Setup setup, Stay stay) {
    Group group = stay.group();
    Course course = stay.course();
    boolean there = setup.isThere(group);
    double now;
    if (course == null) {
      now = lastWeight(setup, group, stay.growthClass());
    } else {
      LocalDate first =
          course.arrives().isAfter(setup.checkOn()) ? course.arrives() : setup.checkOn();
      now = course.weightOn(first).likely();
    }
    return new Member(stay.path(), group, course, there, now, Math.max(now, stay.endWeight()));
  }

  /** What they weighed last, or will on arrival; what is usual where nobody said. */
  private static double lastWeight(Setup setup, Group group, GrowthClass usual) {
    Double weight = group.arrivalWeight();
    for (DiaryEntry entry : setup.diary()) {
      if (DiaryWeight.isOf(entry, group)) {
        weight = DiaryWeight.maybe(entry, group).map(KnownWeight::kg).orElse(weight);
      }
    }
    return weight == null ? usual.eightWeekKg().likely() : weight;
  }
}
