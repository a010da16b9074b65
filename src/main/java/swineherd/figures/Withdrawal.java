package swineherd.figures;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.text.similarity.LevenshteinDistance;
import swineherd.rulebook.Table;
import swineherd.setup.Country;
import swineherd.setup.DiaryEntry.Route;

/**
 * From what day a treated pig may go to slaughter. The days on the pack or from the vet decide; the
 * table {@code withdrawal} only tests them for plausibility, and stands in where a keeper in the
 * United States has no label at hand. Where the days cannot be known there is no date: ask the vet.
 *
 * <p>Every sum is on the safe side: the longest of label, vet and table counts, part days round up,
 * and a safety day is added.
 */
public final class Withdrawal {
  /** Letters that a misspelt name may differ by. */
  private static final int MISSPELT = 2;

  private static final Map<String, String> ROUTES =
      Map.of(
          "feed",
          "in feed",
          "water",
          "in water",
          "water feed",
          "in water or feed",
          "injection",
          "by injection");

  private Withdrawal() {}

  /** Whose labels and law hold. */
  public enum Region {
    US("United States"),
    EU_UK("Europe"),
    /** No table: the label or the vet must say. */
    ELSEWHERE("");

    private final String words;

    Region(String words) {
      this.words = words;
    }

    /**
     * @param country null if unknown
     */
    public static Region of(Country country) {
      if (country == null) {
        return ELSEWHERE;
      }
      if (country == Country.UNITED_STATES) {
        return US;
      }
      return country.isUnitedKingdom() || country.isEuropeanUnion() ? EU_UK : ELSEWHERE;
    }
  }

  /**
   * One course of one medicine; null stands for unknown.
   *
   * @param active active ingredient as in column {@code active} of the table
   * @param route how it was given; unknown, every route of the table is allowed for
   * @param region where
   * @param lastDose day of the last dose
   * @param labelDays withdrawal for pig meat on the pack, days (hours: see {@link #daysFromHours})
   * @param vetDays withdrawal the vet gave in writing, days
   * @param offLabel given other than the pack says: more, longer, another route, in a bigger
   *     volume, or a product for another animal
   */
  public record Treatment(
      String active,
      Route route,
      Region region,
      LocalDate lastDose,
      Double labelDays,
      Double vetDays,
      boolean offLabel) {}

  /** What a date rests on, or why there is none. */
  public enum Basis {
    /** The keeper's label or vet; the longest counts, and the table if it is longer still. */
    LABEL_OR_VET,
    /** The table, for want of a label: to be confirmed from the pack. */
    TABLE,
    /** No date: the days stand on the pack, which must be read. */
    READ_THE_LABEL,
    /** No date: product unknown, or used off its label and the vet has not said. */
    ASK_THE_VET,
    /** No date: the day of the last dose is not known. */
    LAST_DOSE_UNKNOWN
  }

  /**
   * @param date first day the pig may be slaughtered; null if no date can be given
   * @param days withdrawal counted, days; null with the date
   * @param basis what it rests on
   * @param shorterThanTable the keeper's days are fewer than labels or law there print, or, where
   *     no table holds, than any that is known here: read the pack again, ask the vet
   */
  public record Clearance(LocalDate date, Integer days, Basis basis, boolean shorterThanTable) {}

  /**
   * Days the table prints for an active by a route in a region, over all its products, and over all
   * routes where the route is null.
   *
   * @return nothing if the table has no such product for pigs, or its text prints no days
   */
  public static Optional<DayRange> tableDays(String active, Route route, Region region) {
    List<Table.Row> rows =
        rows(active, route, region).stream().filter(Withdrawal::printed).toList();
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    double low = rows.stream().mapToDouble(row -> row.number("low_d")).min().orElseThrow();
    double high = rows.stream().mapToDouble(row -> row.number("high_d")).max().orElseThrow();
    return Optional.of(new DayRange((int) low, (int) high));
  }

  /** Whether the table says that an active by that route is not meant for pigs there. */
  public static boolean notLabelledForPigs(String active, Route route, Region region) {
    List<Table.Row> rows = rows(active, route, region);
    return !rows.isEmpty() && rows.stream().allMatch(row -> row.text("labelled").equals("no"));
  }

  /**
   * Whether the table knows the active for pigs there, but not by that route: another route than
   * the pack's is use off the label. Only the table of the United States is full enough to say so.
   */
  public static boolean notByThatRoute(String active, Route route, Region region) {
    return region == Region.US
        && route != null
        && !rows(active, null, region).isEmpty()
        && rows(active, route, region).isEmpty();
  }

  /**
   * What the table prints for an active in a region, in words: {@code 18 days by injection, 5 days
   * in feed}; empty if it prints nothing.
   */
  public static String labels(String active, Region region) {
    return rows(active, null, region).stream()
        .filter(Withdrawal::printed)
        .map(row -> days(row) + ROUTES.get(row.text("routes")))
        .collect(Collectors.joining(", "));
  }

  /** The same of the tables of all regions: {@code 18 days by injection (United States)}. */
  public static String labelsAnywhere(String active) {
    return Stream.of(Region.US, Region.EU_UK)
        .filter(region -> !labels(active, region).isEmpty())
        .map(region -> labels(active, region) + " (" + region.words + ")")
        .collect(Collectors.joining(", "));
  }

  private static String days(Table.Row row) {
    long low = (long) row.number("low_d");
    long high = (long) row.number("high_d");
    return (low == high ? "" : low + " to ") + high + (high == 1 ? " day " : " days ");
  }

  /** Whether an active is one that is given against worms; false where the table has none such. */
  public static boolean isForWorms(String active) {
    return active != null
        && Table.named("withdrawal").rows().stream()
            .anyMatch(row -> isCalled(row, active) && forWorms(row));
  }

  /**
   * Longest withdrawal in days that the table prints for anything against worms in a region; where
   * it has none for that region, in any.
   */
  public static int longestForWorms(Region region) {
    return longest(row -> forWorms(row) && isOf(row, region));
  }

  /** Longest withdrawal in days that the table prints for anything anywhere. */
  public static int longest() {
    return longest(row -> true);
  }

  private static int longest(Predicate<Table.Row> which) {
    return (int)
        Table.named("withdrawal").rows().stream()
            .filter(Withdrawal::printed)
            .filter(which)
            .mapToDouble(row -> row.number("high_d"))
            .max()
            .orElseThrow();
  }

  private static boolean isOf(Table.Row row, Region region) {
    return region == Region.ELSEWHERE || row.text("region").equals(key(region));
  }

  private static boolean forWorms(Table.Row row) {
    return row.text("used").equals("worms");
  }

  private static boolean printed(Table.Row row) {
    return row.text("labelled").equals("yes") && row.maybe("low_d").isPresent();
  }

  private static List<Table.Row> rows(String active, Route route, Region region) {
    if (active == null || region == null) {
      return List.of();
    }
    String place = key(region);
    return Table.named("withdrawal").rows().stream()
        .filter(row -> isCalled(row, active))
        .filter(row -> row.text("region").equals(place))
        .filter(row -> route == null || List.of(row.text("routes").split(" ")).contains(key(route)))
        .toList();
  }

  /** Whether a row is of that active, by its name or one that keepers write for it. */
  private static boolean isCalled(Table.Row row, String active) {
    String name = written(active);
    return row.text("active").equals(name)
        || Stream.of(row.text("also").split("\\|")).map(Withdrawal::written).anyMatch(name::equals);
  }

  /** An active as the table writes it. */
  private static String written(String active) {
    return active.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "-");
  }

  /** Whether any table here knows an active of that name. */
  public static boolean isKnown(String active) {
    return Table.named("withdrawal").rows().stream().anyMatch(row -> isCalled(row, active));
  }

  /** The name of an active in the tables that is written nearly so; nothing if there is none. */
  public static Optional<String> nearly(String active) {
    LevenshteinDistance letters = new LevenshteinDistance(MISSPELT);
    return Table.named("withdrawal").rows().stream()
        .map(row -> row.text("active"))
        .filter(name -> letters.apply(name, written(active)) > 0)
        .findFirst()
        .map(name -> name.replace('-', ' '));
  }

  private static String key(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Whole days of a withdrawal printed in hours, rounded up. */
  public static int daysFromHours(double hours) {
    return (int)
        Math.ceil(OutsideDomainException.within("withdrawal in hours", hours, 0, 1e4) / 24);
  }

  /**
   * Least meat withdrawal in days that the law of the EU and the UK lets a vet set for use off the
   * label ({@code uk-vmr-2013}).
   *
   * @param longestLabelDays longest withdrawal for meat on the label, days; empty if it has none
   *     for a food animal
   */
  public static int cascadeMinimum(OptionalDouble longestLabelDays) {
    return longestLabelDays.isPresent()
        ? (int) Math.ceil(rule("cascade-factor") * longestLabelDays.getAsDouble())
        : (int) rule("cascade-no-label");
  }

  /**
   * Days after which even a use off the label is usually past: half as long again as the longest
   * withdrawal the table prints for that active there, or for anything anywhere where it prints
   * none. Only for how much to make of a label that is not at hand; it clears no pig.
   *
   * @param active null if unknown
   */
  public static int hardlyLonger(String active, Region region) {
    int longest = tableDays(active, null, region).map(DayRange::high).orElse(longest());
    return cascadeMinimum(OptionalDouble.of(longest));
  }

  /** Feed in kg that one pig eats if it is kept some days past its day. */
  public static double extraFeed(int days) {
    return rule("finisher-feed") * OutsideDomainException.within("days", days, 0, 400);
  }

  /** First day a pig may be slaughtered after {@code days} of withdrawal, with the safety day. */
  public static LocalDate earliestSlaughter(LocalDate lastDose, double days) {
    return lastDose.plusDays(wholeDays(days) + (long) rule("safety"));
  }

  /** Last day a dose with {@code days} of withdrawal may be given before a booked slaughter. */
  public static LocalDate latestLastDose(LocalDate slaughter, double days) {
    return slaughter.minusDays(wholeDays(days) + (long) rule("safety"));
  }

  private static int wholeDays(double days) {
    return (int) Math.ceil(OutsideDomainException.within("withdrawal in days", days, 0, 400));
  }

  private static double rule(String key) {
    return Table.named("withdrawal-rules").row(key).number("value");
  }

  /**
   * When a pig may be slaughtered after one course.
   *
   * @throws OutsideDomainException if the label's or the vet's days are negative, above 400 or no
   *     number
   */
  public static Clearance clearance(Treatment t) {
    boolean offLabel =
        t.offLabel()
            || notLabelledForPigs(t.active(), t.route(), t.region())
            || notByThatRoute(t.active(), t.route(), t.region());
    if (t.vetDays() == null && (offLabel || t.active() == null)) {
      return none(Basis.ASK_THE_VET);
    }
    if (t.lastDose() == null) {
      return none(Basis.LAST_DOSE_UNKNOWN);
    }
    if (t.labelDays() != null || t.vetDays() != null) {
      int said = Math.max(days(t.labelDays()), days(t.vetDays()));
      int least = offLabel ? leastOffLabel(t) : leastPrinted(t).orElse(0);
      return on(t.lastDose(), Math.max(said, least), Basis.LABEL_OR_VET, said < least);
    }
    // European packs differ too much from one another for a table to stand in for them.
    Optional<DayRange> table = tableDays(t.active(), t.route(), t.region());
    if (table.isPresent() && t.region() == Region.US) {
      return on(t.lastDose(), table.get().high(), Basis.TABLE, false);
    }
    return none(Basis.READ_THE_LABEL);
  }

  /**
   * Fewer days than these on a label deserve a doubt; by any route where none is printed for it.
   */
  private static Optional<Integer> leastPrinted(Treatment t) {
    List<Region> regions =
        t.region() == null || t.region() == Region.ELSEWHERE
            ? List.of(Region.US, Region.EU_UK)
            : List.of(t.region());
    return leastPrinted(t.active(), t.route(), regions)
        .or(() -> leastPrinted(t.active(), null, regions));
  }

  private static Optional<Integer> leastPrinted(String active, Route route, List<Region> regions) {
    return regions.stream()
        .flatMap(region -> tableDays(active, route, region).stream())
        .map(DayRange::low)
        .min(Integer::compareTo);
  }

  /** What the law, or else any label, sets at the least for use off the label, days. */
  private static int leastOffLabel(Treatment t) {
    Optional<Integer> printed = leastPrinted(t);
    if (t.region() != Region.EU_UK) {
      return Math.max(printed.orElse(0), days(t.labelDays()));
    }
    if (t.labelDays() == null && printed.isEmpty()) {
      return cascadeMinimum(OptionalDouble.empty());
    }
    return cascadeMinimum(OptionalDouble.of(Math.max(days(t.labelDays()), printed.orElse(0))));
  }

  /**
   * When a pig may be slaughtered after several courses: the latest of their dates. If one of them
   * has no date, there is none.
   *
   * @return the course that decides; nothing if there was no treatment
   */
  public static Optional<Clearance> clearance(List<Treatment> treatments) {
    return treatments.stream().map(Withdrawal::clearance).reduce((a, b) -> later(a, b));
  }

  private static Clearance later(Clearance a, Clearance b) {
    if (a.date() == null || b.date() == null) {
      return a.date() == null ? a : b;
    }
    return b.date().isAfter(a.date()) ? b : a;
  }

  private static int days(Double days) {
    return days == null ? 0 : wholeDays(days);
  }

  private static Clearance none(Basis why) {
    return new Clearance(null, null, why, false);
  }

  private static Clearance on(LocalDate lastDose, int days, Basis basis, boolean shorter) {
    return new Clearance(earliestSlaughter(lastDose, days), days, basis, shorter);
  }
}
