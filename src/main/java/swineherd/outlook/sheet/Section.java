package swineherd.outlook.sheet;

import java.util.List;

/**
 * One table of the sheet.
 *
 * @param key short name that stays the same: {@code growth}
 * @param title its heading
 * @param about the group or pen it is of; empty for all of them
 * @param rows its lines
 * @param assumed what was not said and how it was taken
 */
public record Section(
    String key, String title, String about, List<Row> rows, List<String> assumed) {
  public Section {
    rows = List.copyOf(rows);
    assumed = List.copyOf(assumed);
  }
}
