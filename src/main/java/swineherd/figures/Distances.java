package swineherd.figures;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * How far pigs and what comes with them stay from water, from {@code rules/tables/distances.csv}.
 * Local rules often ask for more: ask the water authority. Never uphill of a shallow well, and no
 * wallow in a stream, at any distance.
 */
public final class Distances {
  private Distances() {}

  /** What must be kept clean. */
  public enum Water {
    /** Well, spring or borehole that people or animals drink from. */
    DRINKING_WATER,
    /** Stream, pond or ditch. */
    OPEN_WATER
  }

  /** What fouls it. */
  public enum Thing {
    /** Edge of the pen or paddock. */
    PEN,
    FEEDER,
    WALLOW,
    /** Heap of manure or dirty bedding. */
    HEAP,
    /** Manure that is spread. */
    SPREADING
  }

  /**
   * How a distance stands.
   *
   * @param country null if it is not known: no law is guessed
   * @param metres between the two
   * @throws OutsideDomainException if metres are below 0
   */
  public static Separation check(Country country, Water water, Thing thing, double metres) {
    OutsideDomainException.within("distance in m", metres, 0, Double.MAX_VALUE);
    List<String> rules = Jurisdiction.of(country);
    List<Table.Row> rows =
        Table.named("distances").rows().stream()
            .filter(row -> row.text("water").equals(key(water)))
            .filter(row -> row.text("thing").equals(key(thing)))
            .filter(row -> row.text("country").isEmpty() || rules.contains(row.text("country")))
            .toList();
    return new Separation(
        metres,
        largest(rows, "least_m", row -> row.text("evidence").equals("law")),
        largest(rows, "least_m", row -> true).orElseThrow(),
        largest(rows, "advised_m", row -> true).orElseThrow());
  }

  /**
   * A distance against its limits, all in m.
   *
   * @param metres what there is
   * @param law least by law; empty if none is known for the country
   * @param least hard line, by law or not
   * @param advised what to plan for
   */
  public record Separation(double metres, OptionalDouble law, double least, double advised) {
    /** Whether a law that is known here asks for more. */
    public boolean breaksLaw() {
      return law.isPresent() && metres < law.getAsDouble();
    }

    public Signal signal() {
      if (metres < least) {
        return Signal.RED;
      }
      return metres < advised ? Signal.AMBER : Signal.GREEN;
    }
  }

  private static OptionalDouble largest(
      List<Table.Row> rows, String column, Predicate<Table.Row> which) {
    return rows.stream().filter(which).mapToDouble(row -> row.number(column)).max();
  }

  private static String key(Enum<?> of) {
    return of.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
