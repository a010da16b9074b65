package swineherd.figures;

import java.util.Locale;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/** Reads a laboratory's count of worm eggs in dung. */
public final class DungCount {
  private DungCount() {}

  /** Eggs in dung, as a laboratory names them. */
  public enum Eggs {
    ROUNDWORM,
    WHIPWORM,
    /** Strongyle type: nodular worm and red stomach worm. */
    STRONGYLE
  }

  /** What an egg count means. */
  public enum Reading {
    /** No egg. Young worms shed none: a cough can come before any egg does. */
    NONE_SEEN,
    /** Eggs, but no agreed reason to treat. */
    LOW,
    /** May be eaten eggs passing through: repeat in one to two weeks. */
    DOUBTFUL,
    /** A true infection: ask the vet about treatment. */
    POSITIVE
  }

  /**
   * Reads an egg count by table {@code dung-counts}.
   *
   * @param eggsPerGram eggs per gram of dung
   * @param thin whether the pigs are thin, which makes any strongyle count matter
   * @throws OutsideDomainException if the count is negative or no number
   */
  public static Reading reading(Eggs eggs, double eggsPerGram, boolean thin) {
    double count = OutsideDomainException.within("eggs per gram", eggsPerGram, 0, 1e7);
    Table.Row row = Table.named("dung-counts").row(eggs.name().toLowerCase(Locale.ROOT));
    if (count == 0) {
      return Reading.NONE_SEEN;
    }
    OptionalDouble positiveFrom = row.maybe("positive_from");
    if (positiveFrom.isPresent() && count >= positiveFrom.getAsDouble()) {
      return Reading.POSITIVE;
    }
    return thin && eggs == Eggs.STRONGYLE
        ? Reading.POSITIVE
        : Reading.valueOf(row.text("below").toUpperCase(Locale.ROOT));
  }
}
