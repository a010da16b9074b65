package swineherd.figures;

import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** Tails: what the law says of docking them, {@code docking-law.csv}. */
public final class Tails {
  private Tails() {}

  /**
   * What a keeper is told of docking, as a sentence; no law where the country or its law is not
   * known.
   *
   * @param country null if not known
   */
  public static String docking(Country country) {
    return Jurisdiction.row("docking-law", country)
        .orElseGet(() -> Table.named("docking-law").row("none"))
        .text("words");
  }
}
