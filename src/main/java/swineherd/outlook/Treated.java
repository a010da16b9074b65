package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Withdrawal;
import swineherd.figures.Withdrawal.Basis;
import swineherd.figures.Withdrawal.Clearance;
import swineherd.figures.Withdrawal.Region;
import swineherd.figures.Withdrawal.Treatment;
import swineherd.setup.DiaryEntry;
import swineherd.setup.DiaryEntry.Did;
import swineherd.setup.DiaryEntry.Route;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * One medicine that a group was given, and from what day the pigs may go as far as it is concerned.
 * Several entries of one active are one course: its last day and its longest withdrawal count. A
 * worming of which only the day is known is one too.
 *
 * @param pigs name of the group
 * @param active active ingredient as the keeper wrote it; null if unknown
 * @param noted whether it stands in the diary
 * @param lastDose day of the last dose; null if unknown
 * @param clearance the first day they may go, and what it rests on
 * @param said withdrawal the keeper noted from the label or the vet, the longer, days; null if none
 * @param offLabel given other than the pack says
 * @param labels withdrawals printed there for that active, by the way it is given, in words
 * @param running the withdrawal is known and not over today
 * @param mayReach it may still be running on the next day they could go, which is the one set, or
 *     the early end of the forecast, or today; what is unknown counts as yes
 * @param latest of all that these pigs were given and that has a date, it clears last
 * @param blocked some treatment of these pigs has no date and may still matter
 * @param slaughterOn day set for slaughter; null if there is none
 * @param checkOn day of the check
 */
public record Treated(
    String pigs,
    String active,
    boolean noted,
    LocalDate lastDose,
    Clearance clearance,
    Double said,
    boolean offLabel,
    String labels,
    boolean running,
    boolean mayReach,
    boolean latest,
    boolean blocked,
    LocalDate slaughterOn,
    LocalDate checkOn,
    List<String> grounds)
    implements Outlook {

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

  /** The active, or that it has no name, as words of a sentence. */
  public String activeWords() {
    return active == null ? "something that was not named" : active;
  }

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
    boolean blocked = false;
    for (Medicine medicine : given) {
      LocalDate clearOn = medicine.clearance(region).date();
      blocked |= clearOn == null && medicine.mayReach(mayGo, region);
      if (clearOn != null && (latest == null || clearOn.isAfter(latest.clearance(region).date()))) {
        latest = medicine;
      }
    }
    List<Treated> all = new ArrayList<>();
    for (Medicine medicine : given) {
      Clearance clearance = medicine.clearance(region);
      all.add(
          new Treated(
              group.name(),
              medicine.active,
              medicine.noted,
              medicine.lastDose(),
              clearance,
              medicine.said(),
              medicine.offLabel,
              Withdrawal.labels(medicine.active, region),
              clearance.date() != null && clearance.date().isAfter(setup.checkOn()),
              medicine.mayReach(mayGo, region),
              medicine == latest,
              blocked,
              group.slaughterOn(),
              setup.checkOn(),
              medicine.grounds.and(grounds.list()).list()));
    }
    return all;
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
    Map<String, Medicine> byActive = new LinkedHashMap<>();
    for (int k = 0; k < setup.diary().size(); k++) {
      DiaryEntry entry = setup.diary().get(k);
      if (isTreatment(entry, group)) {
        String active = entry.active() == null ? "" : entry.active().strip();
        byActive
            .computeIfAbsent(
                active.toLowerCase(Locale.ROOT), a -> new Medicine(entry.active(), true))
            .add(entry, "diary[" + k + "]");
      }
    }
    List<Medicine> all = new ArrayList<>(byActive.values());
    LocalDate wormedOn = group.wormedOn();
    if (wormedOn != null && all.stream().noneMatch(m -> m.isWormingOf(wormedOn))) {
      Medicine unnamed = new Medicine(null, false);
      unnamed.days.add(wormedOn);
      unnamed.grounds.and("pigs[" + index + "]", "wormedOn");
      all.add(unnamed);
    }
    return all;
  }

  /** What is known of one medicine that a group was given. */
  private static final class Medicine {
    private final String active;
    private final boolean noted;
    private final List<LocalDate> days = new ArrayList<>();
    private final List<Route> routes = new ArrayList<>();
    private final Grounds grounds = new Grounds();
    private Double label;
    private Double vet;
    private boolean offLabel;

    Medicine(String active, boolean noted) {
      this.active = active;
      this.noted = noted;
    }

    void add(DiaryEntry entry, String path) {
      days.add(entry.on());
      routes.add(entry.route());
      label = longer(label, entry.withdrawal());
      vet = longer(vet, entry.vetWithdrawal());
      offLabel |= Boolean.TRUE.equals(entry.offLabel());
      grounds.and(path, "active", "route", "on", "withdrawal");
      grounds.said(path + ".offLabel", entry.offLabel());
      grounds.said(path + ".vetWithdrawal", entry.vetWithdrawal());
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
      Route route = routes.stream().distinct().count() == 1 ? routes.get(0) : null;
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
