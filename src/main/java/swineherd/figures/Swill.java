package swineherd.figures;

import java.util.Locale;
import swineherd.rulebook.Table;

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
   * @param place ISO 3166 code such as {@code gb} or {@code us-ia}; null or one without a row
   *     counts as the strict row {@code anywhere-else}
   */
  public static Verdict verdict(String place, Scraps scraps) {
    return Verdict.valueOf(
        law(place).text(scraps.name().toLowerCase(Locale.ROOT)).toUpperCase(Locale.ROOT));
  }

  /** The row of the table that holds at a place, with its note and source. */
  public static Table.Row law(String place) {
    return LawTable.find("swill-law", place)
        .orElseGet(() -> Table.named("swill-law").row("anywhere-else"));
  }
}
