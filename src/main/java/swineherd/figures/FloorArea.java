package swineherd.figures;

import java.util.List;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * The floor that law and codes of practice ask for each weaned pig kept in a group, from {@code
 * rules/tables/floor-area-law.csv}. Unobstructed floor: what a trough, hopper or post takes does
 * not count. A pig that outgrows its class needs the area of the next one at once.
 *
 * <p>A country may be null, not known. A country that is not in the table gets no figure; none is
 * guessed. Law changes: check the current text.
 */
public final class FloorArea {
  private FloorArea() {}

  /**
   * Least area by law in m2 for each pig; where both a member state and the European Union have a
   * figure, the larger.
   *
   * @param country null if it is not known
   * @param weight live weight in kg, more than 0
   * @return empty if no law is known here
   */
  public static OptionalDouble law(Country country, double weight) {
    return largest(Jurisdiction.of(country), weight, true);
  }

  /**
   * Area in m2 for each pig that the country's code of practice or handbook asks for, where it is
   * not law.
   *
   * @param country null if it is not known
   * @param weight live weight in kg, 5 to 150
   * @return empty if none is known here
   * @throws OutsideDomainException for a weight outside the domain of a code that is a formula
   */
  public static OptionalDouble code(Country country, double weight) {
    String formula = country == null ? "" : "code-" + country.key();
    if (Table.named("space-factors").has(formula)) {
      return OptionalDouble.of(Allometry.named(formula).area(weight));
    }
    return largest(Jurisdiction.of(country), weight, false);
  }

  /**
   * What organic rules of the European Union ask for.
   *
   * @param weight live weight in kg, more than 0
   */
  public static Organic organic(double weight) {
    Table.Row row =
        rows(List.of("eu-organic"), weight, true).stream()
            .findFirst()
            .orElseThrow(() -> new OutsideDomainException("live weight in kg of " + weight));
    return new Organic(row.number("floor_m2"), row.number("run_m2"));
  }

  /**
   * Greatest live weight in kg at which an area still meets the law.
   *
   * @param country null if it is not known
   * @param area m2 for each pig, unobstructed
   * @return infinity if it meets it at every weight, 0 if at none; empty if no law is known here
   */
  public static OptionalDouble weightLimit(Country country, double area) {
    List<String> rules = Jurisdiction.of(country);
    return Table.named("floor-area-law").rows().stream()
        .filter(row -> isLaw(row) && rules.contains(row.text("rule")))
        .mapToDouble(
            row -> row.number("floor_m2") > area ? row.number("over_kg") : Double.POSITIVE_INFINITY)
        .min();
  }

  /**
   * Area for a pig under organic rules.
   *
   * @param floor m2 under a roof
   * @param run m2 outdoors, besides
   */
  public record Organic(double floor, double run) {}

  private static OptionalDouble largest(List<String> rules, double weight, boolean law) {
    return rows(rules, weight, law).stream().mapToDouble(row -> row.number("floor_m2")).max();
  }

  private static List<Table.Row> rows(List<String> rules, double weight, boolean law) {
    OutsideDomainException.within("live weight in kg", weight, Double.MIN_VALUE, Double.MAX_VALUE);
    return Table.named("floor-area-law").rows().stream()
        .filter(row -> isLaw(row) == law && rules.contains(row.text("rule")))
        .filter(row -> weight > row.number("over_kg"))
        .filter(row -> weight <= row.maybe("to_kg").orElse(Double.POSITIVE_INFINITY))
        .toList();
  }

  /** The table also holds what is only advised, and says so in each row. */
  private static boolean isLaw(Table.Row row) {
    return row.text("evidence").equals("law");
  }
}
