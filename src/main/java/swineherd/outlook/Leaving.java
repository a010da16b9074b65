package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.GrowthClass;
import swineherd.setup.Group;

/**
 * When a group is born and when it goes, as far as it is known; all of it may be null.
 *
 * @param group the pigs
 * @param course how they grow; null if that is not known
 */
record Leaving(Group group, Course course) {
  static Leaving of(Group group, List<Course> courses) {
    return new Leaving(group, Course.find(courses, group).orElse(null));
  }

  LocalDate born() {
    if (group.born() != null || group.arrives() == null || group.ageOnArrival() == null) {
      return group.born();
    }
    return group.arrives().minusDays(Math.round(group.ageOnArrival()));
  }

  /** The day set for slaughter, otherwise the end of their {@link Course#end course}. */
  LocalDate likely() {
    return course == null ? group.slaughterOn() : course.end();
  }

  /**
   * Live weight of one when it goes, kg: at the end of their {@link Course#endWeight course}, or
   * else the target, or what is usual for the breed.
   */
  double endWeight() {
    if (course != null) {
      return course.endWeight();
    }
    return group.targetWeight() == null
        ? GrowthClass.ofBreed(group.breed()).usualSlaughterKg()
        : group.targetWeight();
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
