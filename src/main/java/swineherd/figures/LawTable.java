package swineherd.figures;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import swineherd.rulebook.Table;

/**
 * Finds the row of a law table that holds at a place: the region's own, its country's, the EU's.
 */
final class LawTable {
  private static final Set<String> EU =
      Set.of(
          "at", "be", "bg", "cy", "cz", "de", "dk", "ee", "es", "fi", "fr", "gr", "hr", "hu", "ie",
          "it", "lt", "lu", "lv", "mt", "nl", "pl", "pt", "ro", "se", "si", "sk");

  private LawTable() {}

  /**
   * @param table name of a table keyed by place
   * @param place ISO 3166 code of a country, or of a region in it such as {@code us-ia}; upper or
   *     lower case; null if unknown
   * @return nothing if the table has no law for the place
   */
  static Optional<Table.Row> find(String table, String place) {
    if (place == null) {
      return Optional.empty();
    }
    Table laws = Table.named(table);
    String region = place.toLowerCase(Locale.ROOT);
    String country = region.replaceFirst("-.*", "");
    if (laws.has(region)) {
      return Optional.of(laws.row(region));
    }
    if (laws.has(country)) {
      return Optional.of(laws.row(country));
    }
    return EU.contains(country) && laws.has("eu") ? Optional.of(laws.row("eu")) : Optional.empty();
  }
}
