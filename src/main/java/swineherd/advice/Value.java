package swineherd.advice;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Band;
import swineherd.units.Dimension;

/** What fills a placeholder of a card. */
public sealed interface Value {
  /** A quantity, uncertain or not, in the base unit of its dimension. */
  record Amount(Band band, Dimension dimension) implements Value {}

  /** Several quantities of one kind, in the base unit of its dimension. */
  record Amounts(List<Double> amounts, Dimension dimension) implements Value {
    public Amounts {
      amounts = List.copyOf(amounts);
    }
  }

  /** A whole number. */
  record Count(int count) implements Value {}

  /** A day. */
  record Day(LocalDate day) implements Value {}

  /** A probability, 0 to 1. */
  record Chance(double chance) implements Value {}

  /** Words of the keeper's or of a table. */
  record Words(String words) implements Value {}
}
