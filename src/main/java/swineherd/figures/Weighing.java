package swineherd.figures;

import java.time.LocalDate;
<<<<<<< HEAD
import swineherd.rulebook.Table;

/**
 * The weight of one pig, or the mean of one group, on one day.
 *
 * @param on the day
 * @param kg live weight in kg, 1 to 400
 * @param by how it was found
 */
public record Weighing(LocalDate on, double kg, Means by) {
  /**
   * @throws OutsideDomainException if the weight is not within 1 to 400 kg
   */
  public Weighing {
    OutsideDomainException.within("live weight in kg", kg, 1, 400);
  }

  /** How a weight is found, the surest first. */
  public enum Means {
    SCALE("scale"),
    /** The mean of three readings of a tape. */
    TAPE("tape"),
    /** Fewer readings, or a restless pig. */
    TAPE_ONCE("tape-once"),
    GUESS("guess");

    private final String key;

    Means(String key) {
      this.key = key;
    }

    /** How far one weight can be out: one standard deviation, a share of the weight. */
    public double error() {
      return row().number("error");
    }

    /**
     * How far two weights of the same pig by the same means differ for no reason: one standard
     * deviation of each, a share of the weight. A pig's own shape is the same both times, so this
     * is less than {@link #error()} where it is known.
     */
    public double repeatability() {
      return row().maybe("repeatability").orElseGet(this::error);
    }

    private Table.Row row() {
      return Table.named("weighing").row(key);
    }
=======

/**
 * The weight of a pig, or the mean of a group, on a day.
 *
 * @param on day of the weighing
 * @param kg live weight, kg
 * @param error standard deviation of the weight, as a share of it, 0.005 to 0.5
 */
public record Weighing(LocalDate on, double kg, double error) {
  /**
   * @throws OutsideDomainException if the weight is not 1 to 400 kg or the error outside its domain
   */
  public Weighing {
    OutsideDomainException.within("live weight in kg", kg, 1, 400);
    OutsideDomainException.within("weighing error as a share", error, 0.005, 0.5);
  }

  /**
   * A weight with the error that is usual for how it was found.
   *
   * @param kg live weight, kg, 1 to 400
   * @throws OutsideDomainException if the weight is outside its domain
   */
  public static Weighing by(Method method, LocalDate on, double kg) {
    return new Weighing(on, kg, GrowthFactors.likely(method.key));
  }

  /** How a weight was found. */
  public enum Method {
    SCALE("weighed-scale"),
    TAPE("weighed-tape"),
    GUESS("weighed-guess");

    private final String key;

    Method(String key) {
      this.key = key;
    }
>>>>>>> 28f3941 (Growth: classes, breeds, forecast of dates and weights, re-weighing, checked against published trials)
  }
}
