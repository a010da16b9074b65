package swineherd.figures;

import java.util.List;
import swineherd.rulebook.Table;

/** Whose rules hold where the keeper is. A country is a key such as {@code england}. */
final class Country {
  private static final String EUROPEAN_UNION = "eu";

  private Country() {}

  /** The keys under which rules for a country may stand; none for a country that is null. */
  static List<String> rulesOf(String country) {
    if (country == null) {
      return List.of();
    }
    return Table.named("eu-members").has(country)
        ? List.of(country, EUROPEAN_UNION)
        : List.of(country);
  }
}
