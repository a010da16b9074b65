package swineherd.figures;

import java.util.List;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * How hard a place's winter is for pigs outdoors, by the mean daily minimum of the coldest month.
 * The classes are this project's judgement, anchored on the lower extremes of {@code fass-guide}:
 * the quick answer. {@link Warmth#nights} with the keeper's own hut, bed and group decides.
 *
 * <p>Tables {@code winter-classes} and {@code winter-weights} under {@code rules/tables/}.
 */
public enum WinterClass {
  /** Mild. */
  A,
  /** Cool. */
  B,
  /** Cold. */
  C,
  /** Hard. */
  D,
  /** Severe. */
  E;

  /** Under this weight, in kg, pigs get the deeper bed. */
  private static final double SMALL = 35;

  /** Shelters that the classes know, poorest first. */
  public enum Lodging {
    THREE_SIDED("three-sided-kg"),
    CLOSED_HUT("closed-hut-kg"),
    INSULATED_HUT("insulated-hut-kg"),
    BARN("barn-kg");

    private final String column;

    Lodging(String column) {
      this.column = column;
    }
  }

  /**
   * @param monthlyMinimum mean daily minimum of the coldest month, degC, -60 to 40
   * @throws OutsideDomainException outside that
   */
  public static WinterClass of(double monthlyMinimum) {
    OutsideDomainException.within("mean minimum of a month in degC", monthlyMinimum, -60, 40);
    for (WinterClass each : values()) {
      if (monthlyMinimum >= each.row().maybe("from-c").orElse(Double.NEGATIVE_INFINITY)) {
        return each;
      }
    }
    throw new IllegalStateException("the table winter-classes ends above " + monthlyMinimum);
  }

  /**
   * The next harder class, for a lone pig, or for three weeks for short-coated pigs bred indoors
   * that arrive in winter.
   */
  public WinterClass harder() {
    return switch (this) {
      case A -> B;
      case B -> C;
      case C -> D;
      case D, E -> E;
    };
  }

  /** Whether this class is {@code other} or harder. */
  public boolean atLeast(WinterClass other) {
    return compareTo(other) >= 0;
  }

  /**
   * Least weight in kg at the first hard freeze, in an unheated dry shelter with a deep nest. Empty
   * if that shelter will not do at any weight.
   *
   * @param monthlyMinimum mean daily minimum of the coldest month, degC, since two classes are
   *     stricter in their colder part
   */
  public OptionalDouble leastWeight(Lodging lodging, double monthlyMinimum) {
    Table.Row found = null;
    for (Table.Row row : Table.named("winter-weights").rows()) {
      boolean milder =
          found != null && monthlyMinimum >= found.maybe("from-c").orElse(Double.NEGATIVE_INFINITY);
      if (row.text("class").equals(name()) && !milder) {
        found = row;
      }
    }
    if (found == null) {
      throw new IllegalStateException("the table winter-weights has no class " + this);
    }
    return found.maybe(lodging.column);
  }

  /**
   * Depth of the winter bed, m of dry straw.
   *
   * @param weight of the lightest pig, kg, 10 to 130
   * @throws OutsideDomainException outside that
   */
  public double bedDepth(double weight) {
    OutsideDomainException.within("live weight in kg", weight, 10, 130);
    return row().number(weight < SMALL ? "straw-small-m" : "straw-m");
  }

  /** Days of winter ration to hold in store. */
  public int feedReserveDays() {
    return (int) row().number("feed-reserve-days");
  }

  /** Keys of what the class requires, in the table's order. */
  public List<String> requirements() {
    return List.of(row().text("requires").split(" "));
  }

  private Table.Row row() {
    return Table.named("winter-classes").row(name());
  }
}
