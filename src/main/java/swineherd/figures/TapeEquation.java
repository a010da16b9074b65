package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * A published equation for live weight from body measurements, one row of the table {@code
 * tape-equations}: a weighted sum of the measures in centimetres, raised to a power. Each holds
 * only for the kind of pig and the weights it was made on.
 */
public final class TapeEquation {
  private final Table.Row row;

  private TapeEquation(Table.Row row) {
    this.row = row;
  }

  /**
   * @param key row of {@code tape-equations}: {@code kansas}, {@code uganda-girth} and so on
   * @throws IllegalArgumentException if there is no such row
   */
  public static TapeEquation named(String key) {
    return new TapeEquation(Table.named("tape-equations").row(key));
  }

  /**
   * Measures of one standing pig in metres; what was not measured is empty.
   *
   * @param girthM heart girth
   * @param lengthM between the ears to the root of the tail
   * @param heightM height at the withers
   * @param widthM width of the body
   */
  public record Measures(
      double girthM, OptionalDouble lengthM, OptionalDouble heightM, OptionalDouble widthM) {
    /** Girth alone, in metres. */
    public static Measures girth(double girthM) {
      return new Measures(
          girthM, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Girth and length, in metres. */
    public static Measures of(double girthM, double lengthM) {
      return new Measures(
          girthM, OptionalDouble.of(lengthM), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** All four, in metres. */
    public static Measures of(double girthM, double lengthM, double heightM, double widthM) {
      return new Measures(
          girthM,
          OptionalDouble.of(lengthM),
          OptionalDouble.of(heightM),
          OptionalDouble.of(widthM));
    }
  }

  /**
   * Live weight in kg.
   *
   * @throws IllegalArgumentException if the equation needs a measure that is not there
   * @throws OutsideDomainException if the weight lies outside those the equation was made on
   */
  public double kg(Measures measures) {
    double sum =
        row.number("constant")
            + part("girth", OptionalDouble.of(measures.girthM))
            + part("length", measures.lengthM)
            + part("height", measures.heightM)
            + part("width", measures.widthM);
    double kg = Math.pow(sum, row.number("power"));
    return OutsideDomainException.within(
        "live weight in kg by the equation for " + row.text("pigs"),
        kg,
        row.number("minKg"),
        row.number("maxKg"));
  }

  /**
   * The heart girth in metres at which an equation from girth alone gives a weight: with the ends
   * of its weights, the girths it holds for.
   *
   * @param kg live weight in kg
   * @throws IllegalArgumentException if the equation uses other measures as well
   */
  public double girthM(double kg) {
    if (row.maybe("length").isPresent()) {
      throw new IllegalArgumentException("equation " + row.key() + " does not rest on girth alone");
    }
    double sum = Math.pow(kg, 1 / row.number("power"));
    return (sum - row.number("constant")) / row.number("girth") / 100;
  }

  /** Lightest weight in kg the equation was made on. */
  public double minKg() {
    return row.number("minKg");
  }

  /** Heaviest weight in kg the equation was made on. */
  public double maxKg() {
    return row.number("maxKg");
  }

  private double part(String column, OptionalDouble metres) {
    OptionalDouble factor = row.maybe(column);
    if (factor.isEmpty()) {
      return 0;
    }
    double measured =
        metres.orElseThrow(
            () ->
                new IllegalArgumentException(
                    "equation " + row.key() + " needs the " + column + " of the pig"));
    return factor.getAsDouble() * measured * 100;
  }
}
