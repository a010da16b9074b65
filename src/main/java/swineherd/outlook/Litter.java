package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import swineherd.figures.Breed;
import swineherd.figures.Puberty;
import swineherd.figures.Puberty.Maturity;
import swineherd.figures.Taint;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Gilts that share a pen with males that can sire, and may be in pig before they go: at most one
 * for each group with gilts that has not gone, with the males that can sire soonest. Groups of
 * which the sexes are not known may have both. Males of which nobody knows whether they are
 * castrated make none; their question has its own advice.
 *
 * @param males name of the group with the males
 * @param gilts name of the group with the gilts; the same if they are one group
 * @param coming whether the gilts have yet to come
 * @param possible whether a gilt may be in pig already
 * @param separateAge age in days by which they should be apart
 * @param breedsFrom age in days from which a gilt can conceive
 * @param separateBy day by which they should be apart, today at the earliest; null without the
 *     gilts' day of birth, like all that follows
 * @param conception first day a gilt can be got in pig
 * @param farrowing first day a litter could come, today at the earliest
 * @param pregnant most days a gilt can be in pig on the day she goes
 * @param chance chance, 0 to 1, that a gilt is in pig on the day she goes; a rough guide
 */
public record Litter(
    String males,
    String gilts,
    boolean coming,
    boolean possible,
    double separateAge,
    double breedsFrom,
    LocalDate separateBy,
    LocalDate conception,
    LocalDate farrowing,
    double pregnant,
    double chance,
    List<String> grounds)
    implements Outlook {

  /** Of the chance nothing less is told where the dates leave one. */
  private static final double LEAST_CHANCE = 0.05;

  /** Where nothing is known of the day they go. */
  private static final double EVEN_CHANCE = 0.5;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    List<Group> groups = setup.pigs();
    for (int g = 0; g < groups.size(); g++) {
      if (setup.isGone(groups.get(g))) {
        continue;
      }
      List<Litter> litters = new ArrayList<>();
      for (int m = 0; m < groups.size(); m++) {
        if (sires(groups.get(m))
            && hasGilts(groups.get(g))
            && (m == g || sharePen(groups.get(m), groups.get(g)))) {
          new Pair(setup, courses, m, g).litter().ifPresent(litters::add);
        }
      }
      litters.stream()
          .min(
              Comparator.comparing(
                  Litter::conception, Comparator.nullsFirst(Comparator.naturalOrder())))
          .ifPresent(all::add);
    }
    return all;
  }

  /** The males as words of a sentence, where they are a group of their own; empty otherwise. */
  public String ofWhom() {
    return males.equals(gilts) ? "" : " of " + males;
  }

  /** When to part those that may have paired already, as it ends a sentence. */
  public String partWhen() {
    return coming ? "the day they come" : "today";
  }

  /** What to do before they come, a sentence; empty if they are there. */
  public String before() {
    return coming
        ? "Better take others, or ask the breeder how long they stood together before you do."
        : "";
  }

  /** Whether they were together, or may have been before they come. */
  public String were() {
    return coming ? "may have been" : "were";
  }

  private static boolean sires(Group group) {
    return group.sex() != Group.Sex.GILTS
        && group.males() != null
        && (group.males() != Group.Males.CASTRATED || group.castratedOn() != null);
  }

  private static boolean hasGilts(Group group) {
    return group.sex() != Group.Sex.MALES;
  }

  private static boolean sharePen(Group a, Group b) {
    return a.pen() != null && a.pen().equals(b.pen());
  }

  /** Males and gilts that share a pen. */
  private static final class Pair {
    private final LocalDate today;
    private final Group males;
    private final Group gilts;
    private final Leaving malesLeave;
    private final Leaving giltsLeave;
    private final boolean oneGroup;
    private final Grounds grounds;

    Pair(Setup setup, List<Course> courses, int m, int g) {
      today = setup.checkOn();
      males = setup.pigs().get(m);
      gilts = setup.pigs().get(g);
      oneGroup = m == g;
      malesLeave = Leaving.of(males, courses);
      giltsLeave = Leaving.of(gilts, courses);
      grounds =
          Grounds.of("pigs[" + m + "]", "males")
              .and("pigs[" + g + "]", "sex", "breed")
              .and(giltsLeave.grounds("pigs[" + g + "]").list());
    }

    Optional<Litter> litter() {
      Maturity maturity = maturity(gilts);
      LocalDate born = giltsLeave.born();
      if (born == null && cameCastrated()) {
        return Optional.empty();
      }
      if (born == null) {
        return Optional.of(
            new Litter(
                males.name(),
                gilts.name(),
                coming(),
                false,
                maturity.separateByDays(),
                maturity.breedsFromDays(),
                null,
                null,
                null,
                Puberty.GESTATION_DAYS,
                EVEN_CHANCE,
                grounds.list()));
      }
      Optional<LocalDate> conception =
          Puberty.earliestConception(maturity, born, maleFrom(born), maleUntil())
              .filter(day -> giltsUntil() == null || day.isBefore(giltsUntil()));
      return conception.map(day -> dated(maturity, born, day));
    }

    private boolean cameCastrated() {
      return males.males() == Group.Males.CASTRATED
          && (males.arrives() == null || !males.castratedOn().isAfter(males.arrives()));
    }

    private Litter dated(Maturity maturity, LocalDate born, LocalDate conception) {
      LocalDate latest = giltsUntil();
      return new Litter(
          males.name(),
          gilts.name(),
          coming(),
          !conception.isAfter(today),
          maturity.separateByDays(),
          maturity.breedsFromDays(),
          separateBy(maturity, born),
          conception,
          later(Puberty.farrowing(conception), today),
          latest == null
              ? Puberty.GESTATION_DAYS
              : Math.min(Puberty.GESTATION_DAYS, Puberty.daysPregnant(conception, latest)),
          chance(born),
          grounds.list());
    }

    private boolean coming() {
      return gilts.arrives() != null && gilts.arrives().isAfter(today);
    }

    /** By the age at which the first of either is to leave, but not before they come or meet. */
    private LocalDate separateBy(Maturity maturity, LocalDate born) {
      LocalDate malesBorn = malesLeave.born();
      LocalDate byAge =
          Stream.of(
                  Puberty.separateBy(maturity, born),
                  malesBorn == null ? null : Puberty.separateBy(maturity(males), malesBorn))
              .filter(Objects::nonNull)
              .min(LocalDate::compareTo)
              .orElseThrow();
      return later(later(later(byAge, met()), gilts.arrives()), today);
    }

    /** First day on which she can meet a male that can sire. */
    private LocalDate maleFrom(LocalDate giltsBorn) {
      LocalDate malesBorn = malesLeave.born();
      LocalDate from =
          later(
              met(),
              malesBorn == null ? null : malesBorn.plusDays(maturity(males).breedsFromDays()));
      LocalDate second = males.secondVaccine();
      if (males.males() != Group.Males.VACCINATED || second == null) {
        return from;
      }
      // both must be old enough before the vaccine works, or they begin when it has worn off
      LocalDate able = later(from, giltsBorn.plusDays(maturity(gilts).breedsFromDays()));
      LocalDate wornOff = Taint.protectedAfter(second).until();
      return able.isBefore(Taint.worksFrom(second)) ? from : later(from, wornOff.plusDays(1));
    }

    /** Last day on which she can meet one; null if it is not known. */
    private LocalDate maleUntil() {
      return males.males() == Group.Males.CASTRATED
          ? males.castratedOn()
          : malesLeave.latestFrom(today);
    }

    /** Last day she is there; null if it is not known, as of pigs that are past their forecast. */
    private LocalDate giltsUntil() {
      return giltsLeave.latestFrom(today);
    }

    /** The day the later of two groups came; null if they are one group, or it is not known. */
    private LocalDate met() {
      return oneGroup ? null : later(males.arrives(), gilts.arrives());
    }

    private double chance(LocalDate born) {
      LocalDate until = giltsLeave.likely();
      if (maleUntil() != null && (until == null || maleUntil().isBefore(until))) {
        until = maleUntil();
      }
      if (until == null || until.isBefore(born)) {
        return EVEN_CHANCE;
      }
      // of a breed nobody named the dates are taken at their worst, the chance is not
      Maturity kind = gilts.breed() == null ? Maturity.ORDINARY : maturity(gilts);
      return Math.max(
          LEAST_CHANCE, Puberty.chanceOnHeat(kind, (double) ChronoUnit.DAYS.between(born, until)));
    }

    private static Maturity maturity(Group group) {
      return Maturity.of(breed(group.breed()), breed(group.crossedWith()));
    }

    private static Breed breed(String key) {
      return key == null ? null : Breed.named(key);
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
      if (a == null || b == null) {
        return a == null ? b : a;
      }
      return a.isAfter(b) ? a : b;
    }
  }
}
