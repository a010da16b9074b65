package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.OutsideDomainException;
import swineherd.outlook.Climate;

/**
 * The course of one group as a chart shows it, week by week.
 *
 * @param group name of the group
 * @param weeks points a week apart and the last days, at least two
 * @param target live weight at which they should go, kg
 * @param marks days that matter, in their order
 */
public record Plot(String group, List<Week> weeks, double target, List<Mark> marks) {
  private static final int STEP = 7;
  private static final int MOST_WEEKS = 80;

  public Plot {
    weeks = List.copyOf(weeks);
    marks = List.copyOf(marks);
  }

  /**
   * A point in time, a week or less after the one before.
   *
   * @param day the day
   * @param kg live weight of the mean of the group on it, kg
   * @param fed feed of the whole group from its arrival to that day, kg; null where it is not
   *     known, and after the last day
   */
  public record Week(LocalDate day, Band kg, Double fed) {}

  /**
   * A day that matters.
   *
   * @param day the day
   * @param what what it is, in a few words
   */
  public record Mark(LocalDate day, String what) {}

  /** One for each group whose growth can be followed for a week or more. */
  static List<Plot> of(List<Pigs> groups, Climate climate, Worked worked) {
    List<Plot> plots = new ArrayList<>();
    for (Pigs pigs : groups) {
      if (pigs.course() != null) {
        List<Week> weeks = weeks(pigs);
        if (weeks.size() > 1) {
          plots.add(
              new Plot(
                  pigs.name(), weeks, pigs.course().target(), marks(pigs, climate, worked, weeks)));
        }
      }
    }
    return plots;
  }

  /** From the arrival to the last day on which they may be there, as far as the curve goes. */
  private static List<Week> weeks(Pigs pigs) {
    LocalDate last = pigs.last();
    LocalDate until = last;
    if (pigs.course().slaughterOn() == null
        && pigs.course().finish() != null
        && pigs.course().finish().late().isAfter(last)) {
      until = pigs.course().finish().late();
    }
    List<Week> weeks = new ArrayList<>();
    LocalDate day = pigs.course().arrives();
    while (weeks.size() < MOST_WEEKS && pigs.course().foresees(day)) {
      weeks.add(week(pigs, day));
      if (until != null && !day.isBefore(until)) {
        break;
      }
      LocalDate next = day.plusDays(STEP);
      // the last days are points of their own, so that the lines end where they should
      if (last != null && last.isAfter(day) && last.isBefore(next)) {
        next = last;
      } else if (until != null && until.isBefore(next)) {
        next = until;
      }
      day = next;
    }
    return weeks;
  }

  private static Week week(Pigs pigs, LocalDate day) {
    boolean fed = pigs.feed() != null && !day.isAfter(pigs.last());
    return new Week(day, pigs.course().weightOn(day), fed ? pigs.feed().kgUntil(day) : null);
  }

  private static List<Mark> marks(Pigs pigs, Climate climate, Worked worked, List<Week> weeks) {
    List<Mark> marks = new ArrayList<>();
    if (pigs.course().slaughterOn() != null) {
      marks.add(new Mark(pigs.course().slaughterOn(), "slaughter set"));
    } else if (pigs.course().finish() != null) {
      marks.add(new Mark(pigs.course().finish().likely(), "finished"));
    }
    ReleaseSection.clearOn(pigs, worked)
        .ifPresent(day -> marks.add(new Mark(day, "withdrawal over")));
    frost(pigs, climate).ifPresent(day -> marks.add(new Mark(day, "hard frost may come")));
    LocalDate first = weeks.get(0).day();
    LocalDate last = weeks.get(weeks.size() - 1).day();
    marks.removeIf(mark -> mark.day().isBefore(first) || mark.day().isAfter(last.plusDays(60)));
    marks.sort((a, b) -> a.day().compareTo(b.day()));
    return marks;
  }

  private static Optional<LocalDate> frost(Pigs pigs, Climate climate) {
    try {
      return climate.frostKnown() ? climate.nextFrost(pigs.now()) : Optional.empty();
    } catch (OutsideDomainException e) {
      return Optional.empty();
    }
  }
}
