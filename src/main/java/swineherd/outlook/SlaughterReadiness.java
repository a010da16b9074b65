package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.figures.SlaughterDay;
import swineherd.figures.SlaughterLaw;
import swineherd.rulebook.Table;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Whether a group is ready for slaughter on the day that is set, or today where none is: its
 * weight, the medicines, a standstill, castration and vaccine. One for each group that has not
 * gone.
 *
 * @param pigs name of the group
 * @param today day of the check
 * @param arrives the day they come, if it lies ahead; null if they are there, or nobody said
 * @param day the day set for slaughter; null if there is none
 * @param on the day it is judged for: the day set, or today
 * @param weight live weight then, kg; null if no growth is known
 * @param atLeast whether that is where the curve of their growth ends, so that they weigh more
 * @param target live weight aimed at, kg; null with the growth
 * @param finish when the target is reached; null if that is not known
 * @param tooHeavyOver live weight over which they are kept too long, kg; null with the growth
 * @param tooHeavyFrom first day they likely weigh more than that; null if it is not foreseen
 * @param clearOn first day by the last withdrawal that has a date; null if there is none
 * @param blocked whether something they were given has no date and may still matter, or there is a
 *     medicine in their feed, whose days begin when it stops
 * @param leaveOn first day on which the standstill of an arrival lets pigs leave; null if none does
 *     not
 * @param castrationClearOn first day after a late castration; null if there was none
 * @param vaccineFrom first day by a vaccine against taint; null if there was none
 * @param vaccineUntil last day on which it still works; null with it
 * @param careUntil first day on which the law lets the keeper slaughter at home after having cared
 *     for them long enough; null if no law does
 * @param ill whether something is noted that is wrong with one of them
 * @param tooHot whether it is forecast to be too hot for the road that day
 * @param weighBy when to weigh or tape them once more; null if it was done, or is far off
 * @param bookBy when to have booked the likely day; null if it is booked, or no day is likely
 * @param begun whether it is time to think of it: the day to have booked by is at most six weeks
 *     off, or no day is likely
 * @param near whether the day, or the early end of the finish, is at most six weeks off, or nothing
 *     is known of either
 */
public record SlaughterReadiness(
    String pigs,
    LocalDate today,
    LocalDate arrives,
    LocalDate day,
    LocalDate on,
    Band weight,
    boolean atLeast,
    Double target,
    DateBand finish,
    Double tooHeavyOver,
    LocalDate tooHeavyFrom,
    LocalDate clearOn,
    boolean blocked,
    LocalDate leaveOn,
    LocalDate castrationClearOn,
    LocalDate vaccineFrom,
    LocalDate vaccineUntil,
    LocalDate careUntil,
    boolean ill,
    boolean tooHot,
    LocalDate weighBy,
    LocalDate bookBy,
    boolean begun,
    boolean near,
    List<String> grounds)
    implements Outlook {

  private static final int NEAR_DAYS = 42;
  private static final int WEIGH_DAYS = 21;

  /** Judgement: a target that is reached within the week counts as reached. */
  private static final int WEEK = 7;

  private static final int FORESEEN_WEEKS = 60;

  /** How a group stands. */
  public enum Verdict {
    READY,
    NOT_YET,
    TOO_LATE,
    /** Nothing keeps them that is known, but their weight is not. */
    WEIGHT_NOT_KNOWN
  }

  /**
   * How they stand on the day they are judged for; what keeps meat from being eaten comes first.
   */
  public Verdict verdict() {
    if (isTooSoon() || ill || tooHot) {
      return Verdict.NOT_YET;
    }
    if (isVaccineOver() || isHeavy()) {
      return Verdict.TOO_LATE;
    }
    if (weight == null || (atLeast && weight.likely() < target)) {
      return Verdict.WEIGHT_NOT_KNOWN;
    }
    return isLight() ? Verdict.NOT_YET : Verdict.READY;
  }

  /** Whether medicine, standstill, castration or vaccine forbid that day, or may. */
  public boolean isTooSoon() {
    return blocked || earliest().isAfter(on);
  }

  /** Whether they will likely not have the target within a week of that day. */
  public boolean isLight() {
    if (weight == null || atLeast || weight.likely() >= target) {
      return false;
    }
    return finish == null || finish.likely().isAfter(on.plusDays(WEEK));
  }

  /** Whether they will likely be heavier than they should become. */
  public boolean isHeavy() {
    return weight != null && weight.likely() > tooHeavyOver;
  }

  /** Whether they are there, no day is set, and they are heavier than they should become. */
  public boolean isKeptTooLong() {
    return day == null && arrives == null && isHeavy();
  }

  /** What stands before the weight in a sentence; empty unless it is where their curve ends. */
  public String least() {
    return atLeast ? "at least " : "";
  }

  /** The weight as it is told: without a span where it is the least they weigh. */
  public Band told() {
    return atLeast ? Band.exactly(weight.likely()) : weight;
  }

  /** Whether the vaccine against taint no longer works on that day. */
  public boolean isVaccineOver() {
    return vaccineUntil != null && on.isAfter(vaccineUntil);
  }

  /** The first day that nothing known forbids, today at the earliest; their weight is not asked. */
  public LocalDate earliest() {
    return Stream.of(today, arrives, clearOn, leaveOn, castrationClearOn, vaccineFrom, careUntil)
        .filter(Objects::nonNull)
        .max(LocalDate::compareTo)
        .orElseThrow();
  }

  /**
   * The first day on which nothing known forbids it and the target is likely reached; null if a
   * treatment has no date, or no finish is known.
   */
  public LocalDate readyOn() {
    if (blocked || finish == null) {
      return null;
    }
    return finish.likely().isAfter(earliest()) ? finish.likely() : earliest();
  }

  /** The day set, or a later one if that is too soon; null if none is set, or none can be told. */
  public LocalDate meatOn() {
    if (day == null || blocked) {
      return null;
    }
    return isTooSoon() ? earliest() : day;
  }

  /** Days until the day set; -1 if there is none. */
  public long daysLeft() {
    return day == null ? -1 : ChronoUnit.DAYS.between(today, day);
  }

  /** Times on the evening before, for a kill at eight in the morning. */
  public SlaughterDay.FeedOff feedOff(LocalDate kill) {
    return SlaughterDay.feedOff(kill.atTime(8, 0), kill.atTime(8, 0));
  }

  /** When to take the feed away at the earliest, such as {@code 14:00}. */
  public String feedFrom() {
    return feedOff(on).earliest().toLocalTime().toString();
  }

  /** When to take the feed away at the latest. */
  public String feedTo() {
    return feedOff(on).latest().toLocalTime().toString();
  }

  /** The day before. */
  public LocalDate dayBefore() {
    return on.minusDays(1);
  }

  /**
   * @param worked what was worked out before: treatments, standstills, castration, vaccine
   */
  static List<Outlook> of(Setup setup, List<Course> courses, Collection<Outlook> worked) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      boolean gone = setup.isGone(group);
      if (!gone) {
        all.add(of(setup, i, Leaving.of(group, courses), List.copyOf(worked)));
      }
    }
    return all;
  }

  private static SlaughterReadiness of(
      Setup setup, int index, Leaving leaving, List<Outlook> worked) {
    Group group = setup.pigs().get(index);
    LocalDate today = setup.checkOn();
    LocalDate on = group.slaughterOn() == null ? today : group.slaughterOn();
    Course course = leaving.course();
    List<Treated> treated = find(worked, Treated.class, t -> t.pigs().equals(group.name()));
    Optional<TaintVaccine> vaccine =
        find(worked, TaintVaccine.class, v -> v.pigs().equals(group.name())).stream()
            .filter(v -> v.best() != null)
            .findFirst();
    Double over = course == null ? null : tooHeavy(course);
    LocalDate likely = leaving.likely();
    boolean near = near(today, leaving);
    Grounds grounds = leaving.grounds("pigs[" + index + "]");
    return new SlaughterReadiness(
        group.name(),
        today,
        group.arrives() != null && group.arrives().isAfter(today) ? group.arrives() : null,
        group.slaughterOn(),
        on,
        course == null ? null : course.weightOn(on),
        course != null && !course.foresees(on),
        course == null ? null : course.target(),
        course == null ? null : course.finish(),
        over,
        course == null ? null : heavyFrom(course, over, today),
        treated.stream()
            .map(Treated::clearOn)
            .filter(Objects::nonNull)
            .filter(clear -> clear.isAfter(today))
            .max(LocalDate::compareTo)
            .orElse(null),
        treated.stream().anyMatch(Treated::blocked)
            || setup.feed().madeFor() == Feed.MadeFor.MEDICATED,
        leaveOn(group, worked),
        find(worked, LateCastration.class, c -> c.pigs().equals(group.name())).stream()
            .map(LateCastration::clearedOn)
            .findFirst()
            .orElse(null),
        vaccine.map(v -> v.best().from()).orElse(null),
        vaccine.map(v -> v.best().until()).orElse(null),
        careUntil(setup, group),
        setup.signs().stream().anyMatch(s -> s.pigs() == null || s.pigs().equals(group.name())),
        find(worked, HaulToSlaughter.class, h -> h.pigs().equals(group.name())).stream()
            .anyMatch(HaulToSlaughter::isRefused),
        near ? weighBy(setup, group, likely) : null,
        bookBy(setup, group, likely),
        likely == null
            || !SlaughterDay.bookBy(likely, setup.place().country())
                .isAfter(today.plusDays(NEAR_DAYS)),
        near,
        grounds.list());
  }

  private static <T extends Outlook> List<T> find(
      List<Outlook> worked, Class<T> type, Predicate<T> which) {
    return worked.stream().filter(type::isInstance).map(type::cast).filter(which).toList();
  }

  private static LocalDate leaveOn(Group group, List<Outlook> worked) {
    List<LeaveBarred> barred = find(worked, LeaveBarred.class, b -> true);
    return barred.stream()
        .filter(
            b -> group.slaughterOn() == null ? b.leaver() == null : group.name().equals(b.leaver()))
        .map(LeaveBarred::first)
        .findFirst()
        .orElse(null);
  }

  private static LocalDate careUntil(Setup setup, Group group) {
    if (group.slaughterAt() != Group.SlaughterAt.HOME || group.arrives() == null) {
      return null;
    }
    int days = SlaughterLaw.of(setup.place().country(), setup.place().state()).careDays();
    LocalDate first = group.arrives().plusDays(days);
    return days > 0 && first.isAfter(setup.checkOn()) ? first : null;
  }

  private static double tooHeavy(Course course) {
    return Table.named("weight-limits").row("too-heavy").number("limit")
        * Math.max(course.target(), course.growthClass().slaughterToKg());
  }

  private static LocalDate heavyFrom(Course course, double over, LocalDate today) {
    LocalDate from = course.arrives().isAfter(today) ? course.arrives() : today;
    for (int week = 0; week <= FORESEEN_WEEKS; week++) {
      LocalDate day = from.plusWeeks(week);
      if (course.weightOn(day).likely() > over) {
        return day;
      }
    }
    return null;
  }

  /** Where no day is set, nor any growth known, it may be any day. */
  private static boolean near(LocalDate today, Leaving leaving) {
    LocalDate earliest = leaving.earliest();
    if (earliest == null) {
      return leaving.course() == null;
    }
    return !earliest.isAfter(today.plusDays(NEAR_DAYS));
  }

  private static LocalDate weighBy(Setup setup, Group group, LocalDate likely) {
    if (likely == null) {
      return null;
    }
    LocalDate by = likely.minusDays(WEIGH_DAYS);
    boolean done =
        setup.diary().stream()
            .filter(entry -> DiaryWeight.isOf(entry, group))
            .map(DiaryEntry::on)
            .filter(Objects::nonNull)
            .anyMatch(on -> !on.isBefore(by));
    if (done || (group.arrives() != null && group.arrives().isAfter(by))) {
      return null;
    }
    return by.isBefore(setup.checkOn()) ? setup.checkOn() : by;
  }

  private static LocalDate bookBy(Setup setup, Group group, LocalDate likely) {
    if (Boolean.TRUE.equals(group.booked()) || likely == null) {
      return null;
    }
    LocalDate by = SlaughterDay.bookBy(likely, setup.place().country());
    LocalDate first = setup.checkOn();
    return by.isBefore(first) ? first : by;
  }
}
