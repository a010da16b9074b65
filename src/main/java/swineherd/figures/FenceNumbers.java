package swineherd.figures;

import swineherd.rulebook.Table;

/** Reads the one-number rows of the fence tables. */
final class FenceNumbers {
  private FenceNumbers() {}

  static double build(String key) {
    return Table.named("fence-build").row(key).number("value");
  }

  static double training(String key) {
    return Table.named("training").row(key).number("value");
  }

  static double safety(String key) {
    return Table.named("fence-safety").row(key).number("value");
  }

  /** A row's low, value and high as they stand, times {@code factor}. */
  static Band band(String table, String key, double factor) {
    Table.Row row = Table.named(table).row(key);
    return new Band(row.number("low"), row.number("value"), row.number("high")).times(factor);
  }
}
