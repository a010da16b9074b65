package swineherd.figures;

import java.util.List;
import java.util.Locale;
import swineherd.rulebook.Table;

/**
 * What is usual for a breed, from {@code rules/tables/breeds.csv}; a single pig may differ.
 *
 * @param key row in the table
 * @param name usual name
 * @param growthClass key of its {@link GrowthClass}
 * @param skin how it takes the sun
 * @param coat how it takes the cold
 * @param earlyMaturing whether it may breed, and taint, earlier than most; true where that cannot
 *     be excluded
 * @param type what it was bred for
 * @param note what the keeper should know; may be empty
 */
public record Breed(
    String key,
    String name,
    String growthClass,
    Skin skin,
    Coat coat,
    boolean earlyMaturing,
    Type type,
    String note) {
  /** Colour of the skin under the hair, for sunburn. */
  public enum Skin {
    PALE,
    MIXED,
    PIGMENTED
  }

  /** Thickness of the hair in winter. */
  public enum Coat {
    SHORT,
    HEAVY
  }

  /** What the breed was bred for. */
  public enum Type {
    LARD,
    BACON,
    PORK
  }

  /** All breeds in the order of the table. */
  public static List<Breed> all() {
    return Table.named("breeds").rows().stream().map(Breed::of).toList();
  }

  /**
   * The breed in that row of the table.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Breed named(String key) {
    return of(Table.named("breeds").row(key));
  }

  private static Breed of(Table.Row row) {
    return new Breed(
        row.key(),
        row.text("name"),
        row.text("growth_class"),
        Skin.valueOf(row.text("skin").toUpperCase(Locale.ROOT)),
        Coat.valueOf(row.text("coat").toUpperCase(Locale.ROOT)),
        row.text("early_maturing").equals("yes"),
        Type.valueOf(row.text("type").toUpperCase(Locale.ROOT)),
        row.text("note"));
  }
}
