package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swineherd.figures.OutsideDomainException;
import swineherd.outlook.Course;
import swineherd.outlook.NotWorkedOut;
import swineherd.outlook.Outlook;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * One group: what was said of it, its growth and its feed.
 *
 * @param setup the setup it belongs to
 * @param index its place in the list of groups
 * @param group what was said of it
 * @param course its growth; null if there is none
 * @param refused why there is no growth or no feed although the answers are there; may be null
 * @param feed its feed; null if there is none
 */
record Pigs(Setup setup, int index, Group group, Course course, String refused, FeedCourse feed) {

  /** All groups of a setup. */
  static List<Pigs> of(Setup setup, List<Outlook> outlooks) {
    List<Pigs> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      all.add(of(setup, i, outlooks));
    }
    return all;
  }

  private static Pigs of(Setup setup, int index, List<Outlook> outlooks) {
    Group group = setup.pigs().get(index);
    Optional<Course> course = Course.find(Course.all(outlooks), group);
    if (course.isEmpty()) {
      String refused =
          outlooks.stream()
              .filter(NotWorkedOut.class::isInstance)
              .map(NotWorkedOut.class::cast)
              .filter(n -> n.figure().equals("growth") && n.about().equals(group.name()))
              .findFirst()
              .map(NotWorkedOut::why)
              .orElse(null);
      return new Pigs(setup, index, group, null, refused, null);
    }
    Pigs grown = new Pigs(setup, index, group, course.get(), null, null);
    if (grown.last() == null) {
      return new Pigs(setup, index, group, course.get(), "no last day can be given", null);
    }
    try {
      FeedCourse feed = FeedCourse.of(course.get(), group, setup.feed(), grown.last());
      return new Pigs(setup, index, group, course.get(), null, feed);
    } catch (OutsideDomainException e) {
      return new Pigs(setup, index, group, course.get(), e.getMessage(), null);
    }
  }

  /** Path of one of its answers. */
  String path(String field) {
    return "pigs[" + index + "]." + field;
  }

  String name() {
    return group.name();
  }

  /** Number of pigs; one where it was not said. */
  int count() {
    return course == null ? group.countOrOne() : course.count();
  }

  /** Whether the day set for slaughter has passed. */
  boolean gone() {
    return setup.isGone(group);
  }

  /**
   * The day from which figures are of use: the check, or the arrival if that is later; of pigs that
   * are gone their last day.
   */
  LocalDate now() {
    return gone() ? group.slaughterOn() : later(course.arrives(), setup.checkOn());
  }

  /** The last day they are likely to be there, not before {@link #now}; null if not known. */
  LocalDate last() {
    return course.end() == null ? null : later(course.end(), now());
  }

  /** Likely weight on the last day, kg; see {@link Course#endWeight}. */
  double endWeight() {
    return course.endWeight();
  }

  /** Likely weight on a day, kg; see {@link Course#weightOn}. */
  double weightOn(LocalDate day) {
    return course.weightOn(day).likely();
  }

  /** Whether they are there on any day of a span. */
  boolean thereBetween(LocalDate first, LocalDate last) {
    return !course.arrives().isAfter(last) && (last() == null || !last().isBefore(first));
  }

  /**
   * Begins a table about this group.
   *
   * @return nothing where there is no growth to work from: the table then says why
   */
  Rows rows(String key, String title) {
    Rows rows = new Rows(key, title, name());
    if (course == null) {
      rows.add(
          key,
          "These figures",
          row ->
              refused == null
                  ? new Figure.Missing(List.of(path("arrives")))
                  : new Figure.Beyond(refused));
      return rows;
    }
    rows.assuming(course.assumed());
    if (group.count() == null) {
      rows.assuming("number of pigs not said: figures are for one");
    }
    return rows;
  }

  private static LocalDate later(LocalDate a, LocalDate b) {
    return a.isAfter(b) ? a : b;
  }
}
