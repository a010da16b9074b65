package swineherd.figures;

import swineherd.rulebook.Table;

/** Tables whose rows are classes of something that rises from row to row. */
final class Steps {
  private Steps() {}

  /**
   * The last row that begins at or under {@code value}. An empty cell begins at minus infinity.
   *
   * @throws OutsideDomainException if every row begins above it, or it is not a number
   */
  static Table.Row last(String table, String column, double value) {
    Table.Row found = null;
    for (Table.Row row : Table.named(table).rows()) {
      if (value >= row.maybe(column).orElse(Double.NEGATIVE_INFINITY)) {
        found = row;
      }
    }
    if (found == null) {
      throw new OutsideDomainException(column + " " + value + " is below table " + table);
    }
    return found;
  }
}
