package swineherd.figures;

import java.util.Optional;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * Tails: what the law says of docking them, {@code docking-law.csv}, and of what keeps pigs from
 * biting them, {@code rooting-law.csv}.
 */
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

  /**
   * What the law says of straw and other things to root in, as a sentence; nothing where the
   * country or its law is not known.
   *
   * @param country null if not known
   */
  public static Optional<String> rooting(Country country) {
    return Jurisdiction.row("rooting-law", country).map(row -> row.text("words"));
  }
}
