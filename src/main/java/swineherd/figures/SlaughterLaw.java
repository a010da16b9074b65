package swineherd.figures;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * Who may slaughter at home, who may eat the meat, and what a sale asks for, in a place (table
 * {@code slaughter-law}). Prompts to look, never an answer: each is told with the advice to check
 * the current text. How a pig is killed is told nowhere.
 *
 * @param known whether the law of that place is in the table; if not, the words tell what to ask
 *     and what to take for granted meanwhile
 * @param who who may slaughter at home, in words that follow a colon
 * @param meat for whom the meat may be then
 * @param sale what a sale asks for
 * @param careDays days the keeper must have looked after a pig before; 0 if none are set
 * @param sources whose texts it rests on, in words; empty if it is not known
 */
public record SlaughterLaw(
    boolean known, String who, String meat, String sale, int careDays, String sources) {
  private static final String TABLE = "slaughter-law";

  /**
   * @param country null if unknown: then no law is told
   * @param state State or province as the keeper wrote it; null if unknown
   */
  public static SlaughterLaw of(Country country, String state) {
    Table table = Table.named(TABLE);
    Optional<Table.Row> row = inState(table, country, state);
    if (row.isEmpty()) {
      row = Jurisdiction.row(TABLE, country);
    }
    Table.Row law = row.orElseGet(() -> table.row("no-law"));
    return new SlaughterLaw(
        row.isPresent(),
        law.text("who"),
        law.text("meat"),
        law.text("sale"),
        (int) law.maybe("care_d").orElse(0),
        Arrays.stream(law.text("source").split(" "))
            .filter(key -> !key.isEmpty())
            .map(key -> Rulebook.sources().get(key).brief())
            .distinct()
            .collect(Collectors.joining(", ")));
  }

  /**
   * What the move to slaughter asks for, in words that follow a colon (table {@code
   * slaughter-move}); no law where the country or its law is not known.
   *
   * @param country null if unknown
   */
  public static String move(Country country) {
    return Jurisdiction.row("slaughter-move", country)
        .orElseGet(() -> Table.named("slaughter-move").row("none"))
        .text("words");
  }

  private static Optional<Table.Row> inState(Table table, Country country, String state) {
    if (country == null || state == null) {
      return Optional.empty();
    }
    String written = state.strip().toLowerCase(Locale.ROOT);
    String prefix = country.key() + "-";
    return table.rows().stream()
        .filter(row -> row.key().startsWith(prefix))
        .filter(
            row ->
                row.key().equals(prefix + written.replace(' ', '-'))
                    || List.of(row.text("also").split(" ")).contains(written))
        .findFirst();
  }
}
