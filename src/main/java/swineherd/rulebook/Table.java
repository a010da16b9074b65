package swineherd.rulebook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;

/**
 * One of the number tables under {@code rules/tables/}. The first column is the key of a row; the
 * columns {@code source}, {@code evidence} and {@code mark} say where the row comes from.
 */
public final class Table {
  private static final Map<String, Table> LOADED = new ConcurrentHashMap<>();

  private final String name;
  private final Map<String, Row> rows;

  private Table(String name, List<Map<String, String>> cells) {
    this.name = name;
    Map<String, Row> byKey = new LinkedHashMap<>();
    for (Map<String, String> row : cells) {
      String key = row.values().iterator().next();
      byKey.put(key, new Row(name, key, row));
    }
    this.rows = byKey;
  }

  /**
   * The table in {@code rules/tables/NAME.csv}, as the build checked it.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Table named(String name) {
    return LOADED.computeIfAbsent(name, n -> new Table(n, Rulebook.table(n)));
  }

  /** All rows in the order of the file. */
  public List<Row> rows() {
    return List.copyOf(rows.values());
  }

  public boolean has(String key) {
    return rows.containsKey(key);
  }

  /**
   * @throws IllegalArgumentException if no row has that key
   */
  public Row row(String key) {
    Row row = rows.get(key);
    if (row == null) {
      throw new IllegalArgumentException("no row " + key + " in table " + name);
    }
    return row;
  }

  /** One row; cells are text until they are asked for as something else. */
  public record Row(String table, String key, Map<String, String> cells) {
    /**
     * @throws IllegalArgumentException if the table has no such column
     */
    public String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException("no column " + column + " in table " + table);
      }
      return cell;
    }

    /**
     * @throws IllegalArgumentException if the cell is empty or not a number
     */
    public double number(String column) {
      return maybe(column)
          .orElseThrow(
              () ->
                  new IllegalArgumentException(
                      "table " + table + ", row " + key + ", column " + column + " is empty"));
    }

    /** The number in a cell that may be empty. */
    public OptionalDouble maybe(String column) {
      String cell = text(column);
      if (cell.isEmpty()) {
        return OptionalDouble.empty();
      }
      try {
        return OptionalDouble.of(Double.parseDouble(cell));
      } catch (NumberFormatException e) {
        throw new IllegalArgumentException(
            "table " + table + ", row " + key + ", column " + column + ": not a number: " + cell,
            e);
      }
    }
  }
}
