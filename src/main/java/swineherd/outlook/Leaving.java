package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Band;
import swineherd.setup.Group;

/** When a group is born and when it goes, as far as it is known; all of it may be null. */
final class Leaving {
  private final Group group;
  private final Course course;

  private Leaving(Group group, Course course) {
    this.group = group;
    this.course = course;
  }

  static Leaving of(Group group, List<Course> courses) {
    return new Leaving(
        group,
        courses.stream().filter(c -> c.pigs().equals(group.name())).findFirst().orElse(null));
  }

  /** The course of the group; null if it has none. */
  Course course() {
    return course;
  }

  LocalDate born() {
    if (group.born() != null || group.arrives() == null || group.ageOnArrival() == null) {
      return group.born();
    }
    return group.arrives().minusDays(Math.round(group.ageOnArrival()));
  }

  /** The day set for slaughter, otherwise the likely finish. */
  LocalDate likely() {
    if (group.slaughterOn() != null || course == null || course.finish() == null) {
      return group.slaughterOn();
    }
    return course.finish().likely();
  }

  /** The likely day, or a later one: pigs that should have gone are still there. */
  LocalDate likelyFrom(LocalDate today) {
    LocalDate likely = likely();
    return likely != null && likely.isBefore(today) ? today : likely;
  }

  /** Live weight of one on {@link #likelyFrom}, kg; null without a course. */
  Double weightFrom(LocalDate today) {
    if (course == null) {
      return null;
    }
    LocalDate likely = likely();
    Band late = likely != null && likely.isBefore(today) ? course.weightOn(today) : null;
    return late == null ? course.endWeight() : late.likely();
  }

  /** The day set for slaughter, otherwise the early end of the finish. */
  LocalDate earliest() {
    return group.slaughterOn() != null || likely() == null
        ? group.slaughterOn()
        : course.finish().early();
  }

  /** The day set for slaughter, otherwise the late end of the finish. */
  LocalDate latest() {
    return group.slaughterOn() != null || likely() == null
        ? group.slaughterOn()
        : course.finish().late();
  }

  /**
   * The same, but null, not known, for pigs that should have gone by the forecast and are still
   * there.
   */
  LocalDate latestFrom(LocalDate today) {
    LocalDate latest = latest();
    boolean overdue = group.slaughterOn() == null && latest != null && latest.isBefore(today);
    return overdue ? null : latest;
  }

  /** The answers that the days rest on, those of them that were given. */
  Grounds grounds(String path) {
    Grounds grounds = new Grounds();
    if (group.born() != null) {
      grounds.and(path, "born");
    } else {
      grounds.and(path, "ageOnArrival");
    }
    grounds.and(path, "arrives");
    if (group.slaughterOn() != null) {
      return grounds.and(path, "slaughterOn");
    }
    return grounds.and(path, "targetWeight");
  }
}
