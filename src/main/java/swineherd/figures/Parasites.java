package swineherd.figures;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import swineherd.rulebook.Table;
import swineherd.setup.Pen.Ground;

/**
 * Worms: when the next dung test is due, and how long they take to show. It schedules a
 * <em>test</em>; whether to treat is for the count ({@link DungCount}) and the vet.
 */
public final class Parasites {
  private Parasites() {}

  /** What is known of worms in these pigs. */
  public enum History {
    /** Two clean dung tests, and no spots on livers. */
    TWO_CLEAN_TESTS,
    /** A dose at the breeder's with a record, nothing known since. */
    DOSED_AT_SOURCE,
    /** An egg count, worms seen, or spotted livers. */
    KNOWN_POSITIVE
  }

  /** An input of {@link #nextTest}. */
  public enum Input {
    AREA,
    GROUND,
    REST,
    WASHING,
    HISTORY,
    AGE,
    SEASON
  }

  /**
   * How the pigs are kept; null stands for unknown everywhere.
   *
   * @param areaPerPigM2 earth or pasture for each pig, m2; not asked indoors
   * @param ground what they live on
   * @param restDays days the ground was without pigs and pig manure before these came; 0 if used
   *     all along, infinite if it never had any; not asked on concrete or slats
   * @param washed concrete or slats only: washed, steamed and dried before these came
   * @param history what is known of their worms
   * @param ageWeeks age in weeks
   * @param breeding sows and boars over 12 months
   * @param coldThroughout soil and bedding stay under 14.5 degC for the whole coming interval
   */
  public record Keeping(
      Double areaPerPigM2,
      Ground ground,
      Double restDays,
      Boolean washed,
      History history,
      Double ageWeeks,
      boolean breeding,
      Boolean coldThroughout) {}

  /**
   * @param days days from the last effective dose, or from arrival, to the next dung test
   * @param overloaded the ground is so heavily loaded that the sum fell well below the shortest
   *     sensible interval: moving the pigs is the answer and more drug is not
   * @param assumed inputs that were unknown and taken at their worst
   */
  public record NextTest(int days, boolean overloaded, Set<Input> assumed) {
    public NextTest {
      assumed = Set.copyOf(assumed);
    }
  }

  /**
   * Days to the next dung test: 56 days (the upper prepatent value of the large roundworm) times
   * one factor each for area, ground, rest, history, age and season, kept between a floor and a
   * ceiling (tables {@code parasite-factors} and {@code parasite-days}). All of it a judgement, in
   * the open so that a vet can argue with it.
   *
   * @throws OutsideDomainException if a known area, rest or age is negative or no number
   */
  public static NextTest nextTest(Keeping k) {
    EnumSet<Input> assumed = EnumSet.noneOf(Input.class);
    boolean earth = k.ground() == null || k.ground().isEarth();
    double product =
        area(k, earth, assumed)
            * ground(k, assumed)
            * rest(k, assumed)
            * history(k, assumed)
            * age(k, assumed)
            * season(k, assumed);
    boolean older = k.breeding() || (k.ageWeeks() != null && k.ageWeeks() > youngUpToWeeks());
    double floor = span(older ? "floor-older" : "floor");
    double ceiling = span(older ? "ceiling-older" : "ceiling");
    double raw = span("base") * product;
    long days = Math.round(Math.min(ceiling, Math.max(floor, raw)));
    return new NextTest((int) days, raw < 0.8 * floor, assumed);
  }

  /** Area a pig in m2 from which on more of it does not lengthen the way to the next test. */
  public static double lightArea() {
    return Table.named("parasite-factors").rows().stream()
        .filter(row -> row.text("factor").equals("area"))
        .mapToDouble(row -> row.number("from"))
        .max()
        .orElseThrow();
  }

  private static double area(Keeping k, boolean earth, Set<Input> assumed) {
    if (!earth) {
      return 1;
    }
    if (k.areaPerPigM2() == null) {
      assumed.add(Input.AREA);
      return step("area", 0);
    }
    return step(
        "area", OutsideDomainException.within("area a pig in m2", k.areaPerPigM2(), 0, 1e6));
  }

  private static double ground(Keeping k, Set<Input> assumed) {
    if (k.ground() == null) {
      assumed.add(Input.GROUND);
      return level(Ground.BARE_WET);
    }
    return level(k.ground());
  }

  private static double rest(Keeping k, Set<Input> assumed) {
    if (isConcrete(k.ground())) {
      if (k.washed() == null) {
        assumed.add(Input.WASHING);
      }
      return factor(Boolean.TRUE.equals(k.washed()) ? "housing-washed" : "housing-not-washed");
    }
    if (k.restDays() == null) {
      assumed.add(Input.REST);
      return step("rest", 0);
    }
    return step(
        "rest",
        OutsideDomainException.within("rest in days", k.restDays(), 0, Double.POSITIVE_INFINITY));
  }

  private static boolean isConcrete(Ground ground) {
    return ground == Ground.SLATS || ground == Ground.CONCRETE || ground == Ground.BEDDED_CONCRETE;
  }

  private static double history(Keeping k, Set<Input> assumed) {
    if (k.history() == null) {
      assumed.add(Input.HISTORY);
      // A level of its own: that worms were found cannot be assumed of every pig without a paper.
      return factor("history-unknown");
    }
    return factor("history-" + key(k.history()));
  }

  private static double age(Keeping k, Set<Input> assumed) {
    if (k.breeding()) {
      return factor("age-breeding");
    }
    if (k.ageWeeks() == null) {
      assumed.add(Input.AGE);
      return factor("age-under-16");
    }
    double weeks = OutsideDomainException.within("age in weeks", k.ageWeeks(), 0, 1000);
    if (weeks > youngUpToWeeks()) {
      return factor("age-over-32");
    }
    return factor(weeks >= row("age-16").number("from") ? "age-16" : "age-under-16");
  }

  private static double youngUpToWeeks() {
    return row("age-over-32").number("from");
  }

  private static double season(Keeping k, Set<Input> assumed) {
    if (k.coldThroughout() == null) {
      assumed.add(Input.SEASON);
    }
    return factor(Boolean.TRUE.equals(k.coldThroughout()) ? "season-cold" : "season-warm");
  }

  /** The value of the highest level of a stepped factor that has been reached. */
  private static double step(String factor, double value) {
    return Table.named("parasite-factors").rows().stream()
        .filter(row -> row.text("factor").equals(factor))
        .filter(row -> row.maybe("from").isPresent() && row.number("from") <= value)
        .max(Comparator.comparingDouble(row -> row.number("from")))
        .orElseThrow()
        .number("value");
  }

  private static double level(Ground ground) {
    return factor("ground-" + key(ground));
  }

  private static String key(Enum<?> level) {
    return level.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static double factor(String level) {
    return row(level).number("value");
  }

  private static Table.Row row(String level) {
    return Table.named("parasite-factors").row(level);
  }

  private static double span(String key) {
    return Table.named("parasite-days").row(key).number("days");
  }

  /**
   * A span of table {@code parasite-days}, days.
   *
   * @throws IllegalArgumentException if it has no such row
   */
  public static int days(String key) {
    return (int) span(key);
  }

  /**
   * Day of the next dung test. Never sooner than the shortest time in which roundworm or whipworm
   * can shed again, 42 days; an earlier test answers for strongyle worms only.
   *
   * @param lastDose day of the last effective dose, or of arrival
   */
  public static LocalDate dungTestOn(LocalDate lastDose, NextTest next) {
    return lastDose.plusDays(Math.max(next.days(), (long) span("dung-test-roundworm")));
  }

  /**
   * Days from infection to eggs in dung.
   *
   * @param worm key of a row in {@code rules/tables/worms.csv}
   * @return nothing for a parasite that sheds none
   */
  public static Optional<DayRange> prepatent(String worm) {
    return days(worm, "prepatent_low_d", "prepatent_high_d");
  }

  private static Optional<DayRange> days(String worm, String low, String high) {
    Table.Row row = Table.named("worms").row(worm);
    return row.maybe(low).isEmpty()
        ? Optional.empty()
        : Optional.of(new DayRange((int) row.number(low), (int) row.number(high)));
  }
}
