package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import java.util.stream.Stream;
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.Castration;
import swineherd.figures.Taint;
import swineherd.figures.Taint.Risk;
import swineherd.figures.Taint.RiskClass;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * How likely the meat of a group's males is tainted on the day they go, and until when it would be
 * less. There is one for every group that has not gone and is not of gilts only or of castrated
 * males; males of which nobody knows are taken as entire.
 *
 * @param pigs name of the group
 * @param males what the keeper said of the males; null if nothing
 * @param here whether the pigs have come; false if the day of arrival is not known
 * @param askBy day by which the breeder should have been asked; null if the arrival is not known
 * @param day the day they go, set or likely, and today if they should have gone and are still
 *     there; null if neither is known
 * @param weight live weight on that day in kg; without a course the weight they are to reach
 * @param riskClass the class of that day
 * @param atLeast whether age or breed are not known, so that it may be higher
 * @param lowerUntil last day in a lower class; null if there is none to come, or arrival or growth
 *     are not known
 * @param lowerWeight live weight on that last day in kg; null with it
 * @param until last day in this class if they stay longer than planned; null if it stays, or no day
 *     is known
 * @param decideBy the first of the days, not yet past, on which a choice is lost: the lower class,
 *     or the lead of a vaccine or castration; null if none is known
 * @param castration who may castrate them, in words for the keeper
 */
public record TaintRisk(
    String pigs,
    Group.Males males,
    boolean here,
    LocalDate askBy,
    LocalDate day,
    double weight,
    RiskClass riskClass,
    boolean atLeast,
    LocalDate lowerUntil,
    Band lowerWeight,
    LocalDate until,
    LocalDate decideBy,
    String castration,
    List<String> grounds)
    implements Outlook {

  /** Farther ahead than so many years no day is looked for. */
  private static final int HORIZON = 4;

  /** The class in words: {@code high}, {@code at least high}. */
  public String className() {
    String words = riskClass.key().replace('-', ' ');
    return atLeast ? "at least " + words : words;
  }

  /** Chance, 0 to 1, that a carcass of this class is over one of the limits. */
  public double chance() {
    return Taint.chance(riskClass);
  }

  /** Whose fat the published shares were found in. */
  public String surveyed() {
    return survey().text("surveyed");
  }

  /** Share of them over the usual limit of androstenone, in per cent. */
  public double androstenone() {
    return survey().number("androstenone_over_10_pct");
  }

  /** Share of them over the limit of skatole, in per cent. */
  public double skatole() {
    return survey().number("skatole_over_limit_pct");
  }

  /** Days before slaughter by which a vaccine or a castration must have been begun. */
  public double vetLead() {
    return Taint.vetLeadDays();
  }

  /** Days to wait after a mature boar was castrated. */
  public double matureWait() {
    return Taint.clearingDays(true);
  }

  private Table.Row survey() {
    return Taint.nearestSurvey(riskClass);
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (group.sex() != Group.Sex.GILTS
          && group.males() != Group.Males.CASTRATED
          && !setup.isGone(group)) {
        all.add(of(setup, group, "pigs[" + i + "]", Leaving.of(group, courses)));
      }
    }
    return all;
  }

  private static TaintRisk of(Setup setup, Group group, String path, Leaving leaving) {
    LocalDate today = setup.checkOn();
    LocalDate arrives = group.arrives();
    boolean here = arrives != null && !arrives.isAfter(today);
    LocalDate from = here || arrives == null ? today : arrives;
    LocalDate day = leaving.likely();
    Male male = Male.of(setup, group, leaving);
    double weight = leaving.endWeight();
    Risk risk = male.risk(day, weight);
    RiskClass riskClass = risk.riskClass();
    LocalDate lowerUntil = male.lastBefore(c -> c.compareTo(riskClass) >= 0, from);
    Band lowerWeight = lowerUntil == null ? null : male.weightOn(lowerUntil);
    if (lowerWeight == null || (day != null && !lowerUntil.isBefore(day))) {
      lowerUntil = null;
      lowerWeight = null;
    }
    LocalDate until = day == null ? null : male.lastBefore(c -> c.compareTo(riskClass) > 0, day);
    LocalDate vetBy = day == null ? null : day.minusDays(Taint.vetLeadDays());
    return new TaintRisk(
        group.name(),
        group.males(),
        here,
        askBy(today, arrives),
        day,
        weight,
        riskClass,
        risk.atLeast() || (group.breed() == null && riskClass != RiskClass.VERY_HIGH),
        lowerUntil,
        lowerWeight,
        until,
        Stream.of(lowerUntil, vetBy)
            .filter(Objects::nonNull)
            .filter(d -> !d.isBefore(today))
            .min(LocalDate::compareTo)
            .orElse(null),
        Castration.words(setup.place().country()),
        grounds(setup, group, path, leaving).list());
  }

  private static LocalDate askBy(LocalDate today, LocalDate arrives) {
    if (arrives == null) {
      return null;
    }
    LocalDate ask = arrives.minusDays(Taint.askTheBreederDays());
    return ask.isBefore(today) ? today : ask;
  }

  private static Grounds grounds(Setup setup, Group group, String path, Leaving leaving) {
    Grounds grounds = Grounds.of(path, "males", "breed").and(leaving.grounds(path).list());
    if (group.mated() != null) {
      grounds.and(path, "mated");
    }
    setup
        .pen(group.pen())
        .filter(TaintRisk::wetBed)
        .ifPresent(pen -> grounds.and("pens[" + setup.pens().indexOf(pen) + "].shelter", "bed"));
    return grounds;
  }

  private static boolean wetBed(Pen pen) {
    return pen.shelter().bed() == Shelter.Bed.WET;
  }

  /** An entire male as he grows; his class only rises. */
  private record Male(Course course, LocalDate born, boolean early, boolean wetBed, boolean mated) {

    static Male of(Setup setup, Group group, Leaving leaving) {
      boolean early =
          Stream.of(group.breed(), group.crossedWith())
              .anyMatch(breed -> breed != null && Breed.named(breed).earlyMaturing());
      return new Male(
          leaving.course(),
          leaving.born(),
          early,
          setup.pen(group.pen()).filter(TaintRisk::wetBed).isPresent(),
          Boolean.TRUE.equals(group.mated()));
    }

    Risk risk(LocalDate day, Double weight) {
      boolean aged = born != null && day != null && !day.isBefore(born);
      Double age = aged ? (double) ChronoUnit.DAYS.between(born, day) : null;
      return Taint.risk(new Taint.Pig(Taint.Sex.ENTIRE, age, weight, early, wetBed, mated));
    }

    Band weightOn(LocalDate day) {
      return course == null ? null : course.weightOn(day);
    }

    /** The day before his class is one of some; null if it is from the start, or never. */
    LocalDate lastBefore(Predicate<RiskClass> reached, LocalDate from) {
      LocalDate day = from;
      // by weeks, then back by days: the class only rises
      while (!reaches(reached, day)) {
        day = day.plusWeeks(1);
        if (day.isAfter(from.plusYears(HORIZON))) {
          return null;
        }
      }
      while (day.isAfter(from) && reaches(reached, day.minusDays(1))) {
        day = day.minusDays(1);
      }
      return day.equals(from) ? null : day.minusDays(1);
    }

    private boolean reaches(Predicate<RiskClass> reached, LocalDate day) {
      Band weight = weightOn(day);
      boolean unborn = born == null || day.isBefore(born);
      return (weight != null || !unborn || mated)
          && reached.test(risk(day, weight == null ? null : weight.likely()).riskClass());
    }
  }
}
