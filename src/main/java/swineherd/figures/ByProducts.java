package swineherd.figures;

import java.util.List;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * Feeds beside the ration, from the table {@code by-products}: how much of one a pig bears, what it
 * stands in for, what is then missing. Feeding limits only: whether the law lets it be fed comes
 * first, and is not decided here.
 */
public final class ByProducts {
  private static final double FINISHING_FROM = 60;
  private static final double DRY_MATTER_OF_FEED = 0.88;

  private ByProducts() {}

  /**
   * Live weight from which pigs may have it.
   *
   * @param byProduct row of the table, such as {@code whey}
   * @return kg
   */
  public static double fromWeight(String byProduct) {
    return row(byProduct).number("from_kg");
  }

  /**
   * The highest share of the day's feed by dry matter. Where sources give a range of highest shares
   * this is its lower end.
   *
   * @param byProduct row of the table, such as {@code whey}
   * @param weight live weight in kg, 2.5 to 140
   * @return 0 to 1; 0 for a pig too light for it; empty where no share is published, which is not
   *     leave to feed it freely
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static OptionalDouble highestShare(String byProduct, double weight) {
    return limit(byProduct, weight, "growing", "finishing");
  }

  /**
   * The most of it that a pig may have in a day, as it is fed.
   *
   * @param byProduct row of the table
   * @param weight live weight in kg, 2.5 to 140
   * @param eaten compound feed the pig would eat if it had nothing else, kg a day, 0 to 6
   * @return kg (or L, for milk and whey) a day; empty where no limit or no dry matter is published
   * @throws OutsideDomainException for a value outside those ranges
   */
  public static OptionalDouble mostPerDay(String byProduct, double weight, double eaten) {
    OutsideDomainException.within("feed eaten in kg a day", eaten, 0, 6);
    OptionalDouble litres = limit(byProduct, weight, "litres_growing", "litres_finishing");
    OptionalDouble share = highestShare(byProduct, weight);
    OptionalDouble dryMatter = row(byProduct).maybe("dry_matter");
    if (litres.isPresent() || share.isEmpty() || dryMatter.isEmpty()) {
      return litres;
    }
    return OptionalDouble.of(
        share.getAsDouble() * eaten * DRY_MATTER_OF_FEED / dryMatter.getAsDouble());
  }

  /**
   * Compound feed that may be left out for it, weight for weight of dry matter.
   *
   * @param byProduct row of the table
   * @param kg kg a day as it is fed, 0 to 20
   * @return kg a day; empty where it does not stand in for whole feed, or its dry matter is unknown
   */
  public static OptionalDouble feedSpared(String byProduct, double kg) {
    OutsideDomainException.within(byProduct + " in kg a day", kg, 0, 20);
    OptionalDouble dryMatter = row(byProduct).maybe("dry_matter");
    if (dryMatter.isEmpty() || !row(byProduct).text("replaces").equals("feed")) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(kg * dryMatter.getAsDouble() / DRY_MATTER_OF_FEED);
  }

  /** What the ration lacks once it stands in for feed: energy, protein, lysine, minerals, ... */
  public static List<String> shortOf(String byProduct) {
    return List.of(row(byProduct).text("short_of").split(" "));
  }

  private static OptionalDouble limit(
      String byProduct, double weight, String growing, String finishing) {
    OutsideDomainException.within("live weight in kg", weight, 2.5, 140);
    Table.Row row = row(byProduct);
    OptionalDouble limit = row.maybe(weight > FINISHING_FROM ? finishing : growing);
    boolean tooLight = weight < fromWeight(byProduct);
    return limit.isPresent() && tooLight ? OptionalDouble.of(0) : limit;
  }

  private static Table.Row row(String byProduct) {
    return Table.named("by-products").row(byProduct);
  }
}
