package swineherd.figures;

import swineherd.rulebook.Table;

/** Reads {@code rules/tables/ground-limits.csv}. */
final class GroundLimits {
  /** m2. */
  static final double HECTARE = 10_000;

  private GroundLimits() {}

  static double value(String key) {
    return Table.named("ground-limits").row(key).number("value");
  }

  static Band band(String key) {
    Table.Row row = Table.named("ground-limits").row(key);
    return new Band(row.number("low"), row.number("value"), row.number("high"));
  }
}
