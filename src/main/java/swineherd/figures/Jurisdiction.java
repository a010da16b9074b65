package swineherd.figures;

import java.util.List;
import java.util.Optional;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** Whose rules hold in a country. */
final class Jurisdiction {
  private static final String EUROPEAN_UNION = "eu";

  private Jurisdiction() {}

  /** Keys under which its rules may stand in a table; none where the country is null, not known. */
  static List<String> of(Country country) {
    if (country == null) {
      return List.of();
    }
    return country.isEuropeanUnion()
        ? List.of(country.key(), EUROPEAN_UNION)
        : List.of(country.key());
  }

  /**
   * The row that holds in a country, from a table keyed by place: its own before the European
   * Union's.
   */
  static Optional<Table.Row> row(String table, Country country) {
    Table laws = Table.named(table);
    return of(country).stream().filter(laws::has).findFirst().map(laws::row);
  }
}
