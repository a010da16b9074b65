package swineherd.figures;

import java.time.LocalDate;
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
  }
}
