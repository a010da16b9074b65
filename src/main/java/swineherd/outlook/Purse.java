package swineherd.outlook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.figures.Band;
import swineherd.figures.Budget;
import swineherd.figures.Carcass;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.WeanerPurchase;
import swineherd.rulebook.Table;
import swineherd.setup.Money;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * What the batch costs as far as its prices were said; what has no price counts for nothing, so the
 * true cost is higher. There is one where the keeper gave prices, and number, growth and end of
 * every group are known. Money is the keeper's own.
 *
 * @param pigs all of them
 * @param known cost of everything that has a price
 * @param once what of it is paid once, however few pigs there are
 * @param build what of it is the year's share of fence, shelter, troughs, energizer and freezer
 * @param buildHigh whether that is a high share of it
 * @param weaner price of one weaner; null if not said
 * @param weanerShare its share of what one pig costs, %; null unless weaner, feed, slaughter and
 *     cutting have prices
 * @param weanerDear whether that share is very high
 * @param takings what the meat is worth; null if not said
 * @param perMeat known cost for each kg of wrapped meat
 * @param units in which the keeper reads prices by weight
 */
public record Purse(
    int pigs,
    double known,
    double once,
    double build,
    boolean buildHigh,
    Double weaner,
    Double weanerShare,
    boolean weanerDear,
    Double takings,
    double perMeat,
    Prices units,
    List<String> grounds)
    implements Outlook {

  private static final Set<String> BUILT =
      Set.of("fence", "energiser", "shelter", "trough", "freezer");

  /** Whether the meat is worth less than what is known to be paid for it. */
  public boolean loss() {
    return takings != null && known > takings;
  }

  /** Known cost in words. */
  public String knownWords() {
    return Prices.money(known);
  }

  /** What is paid once, in words. */
  public String onceWords() {
    return Prices.money(once);
  }

  /** What is built, in words. */
  public String buildWords() {
    return Prices.money(build);
  }

  /** What the meat is worth, in words. */
  public String takingsWords() {
    return Prices.money(takings);
  }

  /** Known cost by weight of meat, in words. */
  public String perMeatWords() {
    return units.byWeight(perMeat);
  }

  /** Share of what is built in the known cost, %. */
  public double buildShare() {
    return known == 0 ? 0 : 100 * build / known;
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Stay> stays = Stay.of(setup, courses);
    boolean priced = !prices(setup.money(), new Grounds()).isEmpty();
    if (!priced || stays.isEmpty() || !stays.stream().allMatch(AllFeed::isKnown)) {
      return List.of();
    }
    try {
      return List.of(reckon(setup, stays));
    } catch (OutsideDomainException e) {
      return List.of(new NotWorkedOut("costs", "", e.getMessage(), List.of()));
    }
  }

  private static Purse reckon(Setup setup, List<Stay> stays) {
    int pigs = 0;
    double live = 0;
    double hanging = 0;
    double meat = 0;
    double feed = 0;
    Grounds grounds = new Grounds();
    for (Stay stay : stays) {
      double weight = stay.course().endWeight();
      Band carcass = hanging(setup, stay, weight);
      pigs += stay.count();
      live += stay.count() * weight;
      hanging += stay.count() * carcass.likely();
      meat += stay.count() * meat(stay, carcass);
      feed += stay.count() * DailyFeed.of(stay).givenInAll();
      grounds.and(stay.grounds().list());
    }
    Map<String, Double> prices = prices(setup.money(), grounds);
    Budget budget =
        Budget.draft(Budget.Batch.allFinish(pigs, live / pigs, hanging / pigs, meat / pigs))
            .assuming("feed", feed / pigs);
    double known = 0;
    double once = 0;
    double build = 0;
    for (Map.Entry<String, Double> price : prices.entrySet()) {
      budget = budget.withPrice(price.getKey(), price.getValue());
      OptionalDouble cost = budget.cost(price.getKey());
      if (cost.isPresent()) {
        known += cost.getAsDouble();
        build += BUILT.contains(price.getKey()) ? cost.getAsDouble() : 0;
        once += isOnce(price.getKey()) ? cost.getAsDouble() : 0;
      }
    }
    boolean main = prices.keySet().containsAll(Set.of("weaners", "feed", "kill", "cut"));
    double each = known / pigs;
    Double weaner = setup.money().weaner();
    Double worth = setup.money().meat();
    return new Purse(
        pigs,
        known,
        once,
        build,
        known > 0 && 100 * build / known > limit("building-high"),
        weaner,
        main && each > 0 ? Carcass.percentOf(weaner, each) : null,
        main && each > 0 && WeanerPurchase.price(weaner, each) == WeanerPurchase.Price.VERY_HIGH,
        worth == null ? null : worth * meat,
        known / meat,
        Prices.in(setup.units()),
        grounds.said("money.meat", worth).list());
  }

  private static boolean isOnce(String line) {
    return BUILT.contains(line) || Set.of("vet", "travel", "insurance").contains(line);
  }

  private static Band hanging(Setup setup, Stay stay, double weight) {
    Pen pen = setup.pen(stay.group().pen()).orElse(null);
    boolean pastured = pen != null && pen.ground() == Pen.Ground.MOVED_PASTURE;
    return Carcass.hangingKg(
        weight, Carcass.dressingPercent(Carcass.Style.HEAD_OFF_SKIN_ON, pastured, false));
  }

  private static double meat(Stay stay, Band hanging) {
    return Carcass.meatKg(
            hanging, Carcass.meatPercent(Carcass.Cutting.BONE_IN, Course.isLard(stay.group())))
        .likely();
  }

  /** The prices that were said, by the line of the budget; straw has no amount here. */
  private static Map<String, Double> prices(Money money, Grounds grounds) {
    Map<String, Double> all = new LinkedHashMap<>();
    put(all, grounds, "weaners", "weaner", money.weaner());
    put(all, grounds, "feed", "feed", money.feed());
    put(all, grounds, "vet", "vet", money.vet());
    put(all, grounds, "travel", "travel", money.travel());
    put(all, grounds, "insurance", "insurance", money.insurance());
    put(all, grounds, "kill", "kill", money.kill());
    put(all, grounds, "cut", "cut", money.cut());
    put(all, grounds, "fence", "fence", money.fence());
    put(all, grounds, "energiser", "energizer", money.energizer());
    put(all, grounds, "shelter", "shelter", money.shelter());
    put(all, grounds, "trough", "trough", money.trough());
    put(all, grounds, "freezer", "freezer", money.freezer());
    return all;
  }

  private static void put(
      Map<String, Double> all, Grounds grounds, String line, String path, Double price) {
    if (price != null) {
      all.put(line, price);
      grounds.and("money", path);
    }
  }

  private static double limit(String key) {
    return Table.named("money-limits").row(key).number("value");
  }
}
