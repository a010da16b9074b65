package swineherd.figures;

import java.util.Locale;
import java.util.Optional;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** Whether scraps may be fed to pigs at a place (table {@code swill-law}); always check locally. */
public final class Swill {
  private Swill() {}

  /** What the keeper would feed. When in doubt it is the last that fits. */
  public enum Scraps {
    /** Straight from plot or field, never through a kitchen. */
    GARDEN,
    /** Bread and bakery goods that were in no household kitchen. */
    BAKERY,
    MILK,
    /** Plants only, but through a kitchen; a vegan one is a kitchen. */
    KITCHEN_PLANT,
    /** Meat, fish, or anything that touched them. */
    ANIMAL
  }

  /** Mildest first. */
  public enum Verdict {
    ALLOWED,
    /** Not before the local rule was read; until then as if forbidden. */
    CHECK,
    FORBIDDEN
  }

  /**
   * @param country null if unknown; one without a row counts as the strict row {@code elsewhere}
   * @param state state or province by name or postal code, in any case; null if unknown
   */
  public static Verdict verdict(Country country, String state, Scraps scraps) {
    return Verdict.valueOf(
        law(country, state).text(scraps.name().toLowerCase(Locale.ROOT)).toUpperCase(Locale.ROOT));
  }

  /** The row of the table that holds there, with its note and source. */
  public static Table.Row law(Country country, String state) {
    return stateLaw(country, state)
        .or(() -> Jurisdiction.row("swill-law", country))
        .orElseGet(() -> Table.named("swill-law").row("elsewhere"));
  }

  private static Optional<Table.Row> stateLaw(Country country, String state) {
    if (country == null || state == null) {
      return Optional.empty();
    }
    String named = state.strip().toLowerCase(Locale.ROOT);
    String key = country.key() + "-" + named.replace(' ', '-');
    return Table.named("swill-law").rows().stream()
        .filter(row -> row.key().startsWith(country.key() + "-"))
        .filter(row -> row.key().equals(key) || row.text("code").equals(named))
        .findFirst();
  }
}
