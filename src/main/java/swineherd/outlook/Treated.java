package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Withdrawal;
import swineherd.figures.Withdrawal.Basis;
import swineherd.figures.Withdrawal.Clearance;
import swineherd.figures.Withdrawal.Region;
import swineherd.figures.Withdrawal.Treatment;
import swineherd.setup.DiaryEntry;
import swineherd.setup.DiaryEntry.Did;
import swineherd.setup.DiaryEntry.Route;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * One medicine that a group, or one pig of it, was given, and from what day the pigs may go as far
 * as it is concerned. Several entries of one active given the same way are one course: its last day
 * and its longest withdrawal count. What was not named is one course only on one day. A worming of
 * which only the day is known is a treatment too.
 *
 * <p>What a group may do hangs on all that any pig of it was given; {@link #each} tells more.
 *
 * @param pigs name of the group
 * @param pig which of them, by its tag; null if all of them
 * @param active active ingredient as the keeper wrote it; null if unknown
 * @param route the way it was given; null if unknown
 * @param noted whether it stands in the diary
 * @param lastDose day of the last dose; null if unknown
 * @param clearance the first day they may go, and what it rests on
 * @param said withdrawal the keeper noted from the label or the vet, the longer, days; null if none
 * @param offLabel given other than the pack says
 * @param region whose labels and law hold
 * @param running the withdrawal is known and not over today
 * @param mayReach it may still be running on the next day they could go, which is the one set, or
 *     the early end of the forecast, or today; what is unknown counts as yes
 * @param latest of all that these pigs were given and that has a date, it clears last
 * @param blocked some treatment of these pigs has no date and may still matter, or there is a
 *     medicine in their feed
 * @param each from when which pig may go, in a sentence; empty if all were given the same
 * @param toAsk all that they were given and only the vet can tell the days of, in words; null if
 *     this is not the first of it
 * @param slaughterOn day set for slaughter; null if there is none
 * @param checkOn day of the check
 */
public record Treated(
    String pigs,
    String pig,
    String active,
    Route route,
    boolean noted,
    LocalDate lastDose,
    Clearance clearance,
    Double said,
    boolean offLabel,
    Region region,
    boolean running,
    boolean mayReach,
    boolean latest,
    boolean blocked,
    String each,
    String toAsk,
    LocalDate slaughterOn,
    LocalDate checkOn,
    List<String> grounds)
    implements Outlook {

  private static final Map<Route, String> WAYS =
      Map.of(
          Route.INJECTION,
          "by injection",
          Route.FEED,
          "in feed",
          Route.WATER,
          "in water",
          Route.POUR_ON,
          "poured on",
          Route.BY_MOUTH,
          "by mouth");

  /** First day they may go, the safety day counted; null if there is no date. */
  public LocalDate clearOn() {
    return clearance.date();
  }

  public Basis basis() {
    return clearance.basis();
  }

  /** Withdrawal that was counted, days; null if there is no date. */
  public Integer days() {
    return clearance.days();
  }

  /** Whether the withdrawal noted is shorter than any printed there. */
  public boolean shorterThanPrinted() {
    return clearance.shorterThanTable();
  }

  /** Whether the withdrawal noted is shorter than what the law there sets for use off the label. */
  public boolean shorterThanLaw() {
    return shorterThanPrinted() && offLabel && region == Region.EU_UK;
  }

  /** Withdrawals that labels print for that active, by the way it is given, in words. */
  public String labels() {
    return region == Region.ELSEWHERE
        ? Withdrawal.labelsAnywhere(active)
        : Withdrawal.labels(active, region);
  }

  /** What was given, and how if that is known: {@code ivermectin by injection}. */
  public String given() {
    return route == null ? activeWords() : activeWords() + " " + WAYS.get(route);
  }

  /** Whom it was given to: {@code barrows}, {@code pig 12 of barrows}. */
  public String whom() {
    return pig == null ? pigs : "pig " + pig + " of " + pigs;
  }

  /** The active, or that it has no name, as words of a sentence. */
  public String activeWords() {
    return active == null ? "something that was not named" : active;
  }

  /** Words of a vet that tell of one. */
  private static final Pattern WITHDRAWAL = Pattern.compile("(?i)withdraw");

  /** Days from the day set for slaughter to the first they may go; 0 if it is kept. */
  public int late() {
    return slaughterOn == null || clearOn() == null || !clearOn().isAfter(slaughterOn)
        ? 0
        : (int) ChronoUnit.DAYS.between(slaughterOn, clearOn());
  }

  /** Feed that one pig eats in the days it is {@link #late}, kg. */
  public double extraFeed() {
    return Withdrawal.extraFeed(late());
  }

  /** Everything that the groups still here were given. */
  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (setup.isGone(group)) {
        continue;
      }
      Grounds grounds = Grounds.of("pigs[" + i + "]", "slaughterOn").and("place", "country");
      try {
        all.addAll(of(setup, group, mayGo(setup, group, courses), given(setup, i), grounds));
      } catch (OutsideDomainException e) {
        all.add(new NotWorkedOut("withdrawal", group.name(), e.getMessage(), grounds.list()));
      }
    }
    return all;
  }

  private static List<Treated> of(
      Setup setup, Group group, LocalDate mayGo, Collection<Medicine> given, Grounds grounds) {
    Region region = Region.of(setup.place().country());
    Medicine latest = null;
    // the days of a medicine in the feed begin when it stops
    boolean blocked = setup.feed().madeFor() == Feed.MadeFor.MEDICATED;
    List<Medicine> toAsk = new ArrayList<>();
    for (Medicine medicine : given) {
      Clearance clearance = medicine.clearance(region);
      LocalDate clearOn = clearance.date();
      boolean mayReach = medicine.mayReach(mayGo, region);
      blocked |= clearOn == null && mayReach;
      if (medicine.noted && clearance.basis() == Basis.ASK_THE_VET && mayReach) {
        toAsk.add(medicine);
      }
      if (clearOn != null && (latest == null || clearOn.isAfter(latest.clearance(region).date()))) {
        latest = medicine;
      }
    }
    String asked =
        toAsk.stream().map(Medicine::words).distinct().collect(Collectors.joining(", and "));
    String each = each(given, region, setup.checkOn());
    List<Treated> all = new ArrayList<>();
    for (Medicine medicine : given) {
      Clearance clearance = medicine.clearance(region);
      all.add(
          new Treated(
              group.name(),
              medicine.pig,
              medicine.active,
              medicine.route,
              medicine.noted,
              medicine.lastDose(),
              clearance,
              medicine.said(),
              medicine.offLabel,
              region,
              clearance.date() != null && clearance.date().isAfter(setup.checkOn()),
              medicine.mayReach(mayGo, region),
              medicine == latest,
              blocked,
              each,
              !toAsk.isEmpty() && medicine == toAsk.get(0) ? asked : null,
              group.slaughterOn(),
              setup.checkOn(),
              medicine.grounds.and(grounds.list()).list()));
    }
    return all;
  }

  /** From when each pig that was treated alone may go, and from when all the others. */
  private static String each(Collection<Medicine> given, Region region, LocalDate today) {
    Set<String> tags = new LinkedHashSet<>();
    given.stream().map(m -> m.pig).filter(Objects::nonNull).forEach(tags::add);
    if (tags.isEmpty()) {
      return "";
    }
    List<String> words = new ArrayList<>();
    for (String tag : tags) {
      words.add("pig " + tag + " may go " + from(given, tag, region, today));
    }
    words.add("the others " + from(given, null, region, today));
    return "By the diary "
        + String.join(", ", words)
        + ". Send some alone only if every tag can be read for sure.";
  }

  private static String from(
      Collection<Medicine> given, String tag, Region region, LocalDate today) {
    LocalDate from = today;
    for (Medicine medicine : given) {
      if (medicine.pig == null || medicine.pig.equals(tag)) {
        LocalDate clearOn = medicine.clearance(region).date();
        if (clearOn == null && medicine.mayReach(today, region)) {
          return "on no day that can be told yet";
        }
        from = clearOn != null && clearOn.isAfter(from) ? clearOn : from;
      }
    }
    return from.equals(today) ? "any day" : "from " + Dates.words(from);
  }

  private static LocalDate mayGo(Setup setup, Group group, List<Course> courses) {
    if (group.slaughterOn() != null) {
      return group.slaughterOn();
    }
    return earlyFinish(setup, group, courses).orElse(setup.checkOn());
  }

  /** The early end of the forecast, if it lies ahead. */
  static Optional<LocalDate> earlyFinish(Setup setup, Group group, List<Course> courses) {
    return courses.stream()
        .filter(c -> c.pigs().equals(group.name()) && c.finish() != null)
        .map(c -> c.finish().early())
        .filter(early -> early.isAfter(setup.checkOn()))
        .findFirst();
  }

  /**
   * Whether an entry tells of a treatment of that group. One of which only the medicine was said
   * counts too, and one that names no group counts for all.
   */
  static boolean isTreatment(DiaryEntry entry, Group group) {
    boolean treated = entry.did() == Did.TREATED || (entry.did() == null && entry.active() != null);
    return treated && (entry.pigs() == null || entry.pigs().equals(group.name()));
  }

  private static Collection<Medicine> given(Setup setup, int index) {
    Group group = setup.pigs().get(index);
    List<Medicine> all = new ArrayList<>();
    for (int k = 0; k < setup.diary().size(); k++) {
      DiaryEntry entry = setup.diary().get(k);
      if (isTreatment(entry, group)) {
        Medicine medicine = new Medicine(entry);
        all.stream()
            .filter(medicine::isSameCourse)
            .findFirst()
            .orElseGet(
                () -> {
                  all.add(medicine);
                  return medicine;
                })
            .add(entry, "diary[" + k + "]");
      }
    }
    for (Medicine hasty : List.copyOf(all)) {
      List<Medicine> same = all.stream().filter(hasty::isLikeButForTheWay).toList();
      if (same.size() == 1) {
        same.get(0).add(hasty);
        all.remove(hasty);
      }
    }
    if (all.stream().allMatch(m -> m.vet == null)) {
      spokenOf(setup, group).ifPresent(all::add);
    }
    LocalDate wormedOn = group.wormedOn();
    if (wormedOn != null && all.stream().noneMatch(m -> m.isWormingOf(wormedOn))) {
      Medicine unnamed = new Medicine();
      unnamed.days.add(wormedOn);
      unnamed.grounds.and("pigs[" + index + "]", "wormedOn");
      all.add(unnamed);
    }
    return all;
  }

  /**
   * What a vet named a withdrawal for, in words that nobody turned into days: something was given,
   * and until the days are noted no end of it is known.
   */
  private static Optional<Medicine> spokenOf(Setup setup, Group group) {
    Medicine last = null;
    for (int k = 0; k < setup.diary().size(); k++) {
      DiaryEntry entry = setup.diary().get(k);
      boolean theirs = entry.pigs() == null || entry.pigs().equals(group.name());
      if (theirs
          && entry.did() == Did.VET_SAID
          && entry.note() != null
          && WITHDRAWAL.matcher(entry.note()).find()) {
        last = new Medicine(entry);
        last.add(entry, "diary[" + k + "]");
      }
    }
    return Optional.ofNullable(last);
  }

  /** What is known of one medicine that a group was given. */
  private static final class Medicine {
    private final String pig;
    private final String active;
    private final Route route;
    private final boolean noted;
    private final LocalDate first;
    private final List<LocalDate> days = new ArrayList<>();
    private final Grounds grounds = new Grounds();
    private Double label;
    private Double vet;
    private boolean offLabel;

    /** A worming of which nothing but the day is known. */
    Medicine() {
      pig = null;
      active = null;
      route = null;
      noted = false;
      first = null;
    }

    Medicine(DiaryEntry entry) {
      pig = entry.pig() == null ? null : entry.pig().strip();
      active = entry.active() == null ? null : entry.active().strip();
      route = entry.route();
      noted = true;
      first = entry.on();
    }

    void add(DiaryEntry entry, String path) {
      days.add(entry.on());
      label = longer(label, entry.withdrawal());
      vet = longer(vet, entry.vetWithdrawal());
      offLabel |= Boolean.TRUE.equals(entry.offLabel());
      grounds.and(path, "active", "route", "on", "withdrawal");
      grounds.said(path + ".pig", entry.pig());
      grounds.said(path + ".offLabel", entry.offLabel());
      grounds.said(path + ".vetWithdrawal", entry.vetWithdrawal());
    }

    void add(Medicine hasty) {
      days.addAll(hasty.days);
      label = longer(label, hasty.label);
      vet = longer(vet, hasty.vet);
      offLabel |= hasty.offLabel;
      grounds.and(hasty.grounds.list());
    }

    /** What is unnamed is the same only on one day: the days that a vet gave for it come later. */
    boolean isSameCourse(Medicine other) {
      if (!Objects.equals(pig, other.pig)) {
        return false;
      }
      if (active == null || other.active == null) {
        boolean wayMayBe = route == null || other.route == null || route == other.route;
        return active == null && other.active == null && wayMayBe && isOfDay(other.first);
      }
      return active.equalsIgnoreCase(other.active) && route == other.route;
    }

    private boolean isOfDay(LocalDate day) {
      return first != null && first.equals(day);
    }

    /** Whether it is one more dose of something of which the way was said then, and not now. */
    boolean isLikeButForTheWay(Medicine other) {
      return active != null
          && route == null
          && other.route != null
          && active.equalsIgnoreCase(other.active)
          && Objects.equals(pig, other.pig);
    }

    /** What it is, and to whom it was given if not to all. */
    String words() {
      String what = active == null ? "something that was not named" : active;
      return pig == null ? what : what + " (pig " + pig + ")";
    }

    Double said() {
      return longer(label, vet);
    }

    private static Double longer(Double a, Double b) {
      if (a == null || b == null) {
        return a == null ? b : a;
      }
      return Math.max(a, b);
    }

    /** Whether this is the worming of that day, or a later one. */
    boolean isWormingOf(LocalDate day) {
      return days.contains(day)
          || (Withdrawal.isForWorms(active)
              && days.stream().filter(Objects::nonNull).anyMatch(d -> d.isAfter(day)));
    }

    /** Null if the day of any dose is unknown: it may be the last. */
    LocalDate lastDose() {
      return days.contains(null) ? null : days.stream().max(LocalDate::compareTo).orElseThrow();
    }

    Clearance clearance(Region region) {
      return Withdrawal.clearance(
          new Treatment(active, route, region, lastDose(), label, vet, offLabel));
    }

    boolean mayReach(LocalDate mayGo, Region region) {
      Clearance clearance = clearance(region);
      if (clearance.date() != null) {
        return clearance.date().isAfter(mayGo);
      }
      if (lastDose() == null) {
        return true;
      }
      String labelled = clearance.basis() == Basis.READ_THE_LABEL ? active : null;
      int days =
          noted ? Withdrawal.hardlyLonger(labelled, region) : Withdrawal.longestForWorms(region);
      return Withdrawal.earliestSlaughter(lastDose(), days).isAfter(mayGo);
    }
  }
}
