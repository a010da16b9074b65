package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.FeedBuying;
import swineherd.outlook.Climate;
import swineherd.outlook.FeedStore;
import swineherd.setup.Money;
import swineherd.setup.Setup;
import swineherd.units.UnitSystem;

/** How the feed of all groups together is best bought: bags, orders, bulk. */
final class FeedBuyingSection {
  private static final double BAG_METRIC = 25;
  private static final int MOST_ORDERS = 8;

  private final Setup setup;
  private final Climate climate;
  private final Money money;
  private final List<Pigs> groups;
  private final Rows rows = new Rows("feed-buying", "Buying the feed", "");
  private final LocalDate from;
  private final double[] use;

  private FeedBuyingSection(Setup setup, Climate climate, List<Pigs> all) {
    this.setup = setup;
    this.climate = climate;
    this.money = setup.money();
    this.groups = all.stream().filter(p -> p.feed() != null && !p.gone()).toList();
    this.from =
        groups.stream().map(Pigs::now).min(Comparator.naturalOrder()).orElse(setup.checkOn());
    this.use = use();
  }

  static Section of(Setup setup, Climate climate, List<Pigs> all) {
    FeedBuyingSection section = new FeedBuyingSection(setup, climate, all);
    section.write(all);
    return section.rows.section();
  }

  /** kg a day of all groups, from the day of the check or the first arrival after it. */
  private double[] use() {
    int days = 0;
    for (Pigs pigs : groups) {
      days = Math.max(days, index(pigs.feed().from()) + pigs.feed().daily().length);
    }
    double[] sum = new double[days];
    for (Pigs pigs : groups) {
      double[] daily = pigs.feed().daily();
      int first = index(pigs.feed().from());
      for (int d = Math.max(0, -first); d < daily.length; d++) {
        sum[first + d] += daily[d];
      }
    }
    return sum;
  }

  private int index(LocalDate day) {
    return (int) (day.toEpochDay() - from.toEpochDay());
  }

  private double bag() {
    if (money.bag() != null) {
      return money.bag();
    }
    return setup.units() == UnitSystem.US ? FeedBuying.BAG_50_LB : BAG_METRIC;
  }

  private void write(List<Pigs> all) {
    if (groups.isEmpty()) {
      if (all.stream().allMatch(Pigs::gone)) {
        return;
      }
      Optional<Pigs> refused =
          all.stream().filter(p -> !p.gone() && p.course() != null).findFirst();
      if (refused.isPresent()) {
        rows.add("total", "Still to be bought", row -> new Figure.Beyond(refused.get().refused()));
        return;
      }
      String[] arrivals = all.stream().map(p -> p.path("arrives")).toArray(String[]::new);
      rows.lacks(
          "total",
          "Still to be bought",
          arrivals.length > 0 ? arrivals : new String[] {"pigs[0].arrives"});
      return;
    }
    if (groups.size() < all.stream().filter(p -> !p.gone()).count()) {
      rows.assuming("groups whose feed cannot be worked out are left out");
    }
    double total = Arrays.stream(use).sum();
    rows.add("total", "Still to be fed, all groups", row -> kg(total));
    rows.add(
        "bags",
        "That in bags of {bag}",
        row -> {
          row.with("bag", kg(bag()));
          return bags(FeedBuying.bags(total, bag()));
        });
    orders();
    bulk();
  }

  private static Figure bags(int bags) {
    return new Figure.Count(bags, "bag", "bags");
  }

  private FeedStore store() {
    return new FeedStore(setup, from, use.length);
  }

  /** One order after another, each for as long as the feed keeps. */
  private void orders() {
    if (setup.feed().form() == null) {
      rows.assuming("form of the feed not said: taken as meal, which keeps least of dry feeds");
    }
    if (setup.place().hottestMonth() == null || climate.hemisphere().isEmpty()) {
      rows.assuming("summer not said: feed taken to stand in warm air");
    }
    int next = 0;
    int orders = 0;
    while (next < use.length && orders < MOST_ORDERS) {
      next = order(next);
      orders++;
    }
    int first = next;
    if (first < use.length) {
      rows.add("later-orders", "After that", row -> kg(sum(first, use.length)));
    }
  }

  /** Adds one order and tells the day of the next. */
  private int order(int first) {
    LocalDate day = from.plusDays(first);
    int days = store().daysToBuy();
    int next = Math.min(use.length, first + days);
    rows.add(
        "order",
        "Order for {day}",
        row -> {
          double kg = sum(first, next);
          row.with("day", new Figure.Day(day)).with("days", Figure.days(next - first));
          row.with("bags", bags(FeedBuying.bags(kg, bag()))).note("{bags} for {days}");
          return kg(kg);
        });
    return next;
  }

  private double sum(int first, int next) {
    return Arrays.stream(use, first, next).sum();
  }

  private void bulk() {
    if (money.bulk() == null && money.bulkLoad() == null) {
      return;
    }
    if (money.bulkLoad() != null) {
      load(money.bulkLoad());
    }
    if (money.bulk() == null || money.feed() == null) {
      rows.lacks(
          "bulk-saves", "What bulk saves", money.bulk() == null ? "money.bulk" : "money.feed");
      return;
    }
    FeedBuying.Offer offer = offer();
    rows.add(
        "bulk-even",
        "Bulk is cheaper from",
        row -> {
          OptionalDouble even = offer.breaksEvenAt();
          return even.isEmpty()
              ? Figure.words("no load: bags are not dearer")
              : kg(even.getAsDouble());
        });
    if (money.bulkLoad() == null) {
      rows.lacks("bulk-saves", "What bulk saves", "money.bulkLoad");
      return;
    }
    rows.add(
        "bulk-saves",
        "{load} in bulk saves, against bags",
        row -> {
          row.with("load", kg(money.bulkLoad()));
          row.note("what spoils or is left over saves nothing");
          return Figure.money(offer.saving(best(money.bulkLoad())));
        });
  }

  private FeedBuying.Offer offer() {
    double delivery = money.bulkDelivery() == null ? 0 : money.bulkDelivery();
    if (money.bulkDelivery() == null) {
      rows.assuming("delivery of bulk not said: taken as free");
    }
    double least = money.bulkLoad() == null ? 0 : money.bulkLoad();
    return new FeedBuying.Offer(money.feed(), money.bulk(), delivery, least);
  }

  /** Days a load keeps in the warmest time it may stand in. */
  private int keeps() {
    return store().keepsAtWorst();
  }

  private FeedBuying.Load best(double kg) {
    return FeedBuying.load(use, FeedBuying.bestDay(use, kg, keeps()), kg, keeps());
  }

  private void load(double kg) {
    rows.add(
        "bulk-day",
        "Best day for {load} in bulk",
        row -> {
          row.with("load", kg(kg));
          int day = FeedBuying.bestDay(use, kg, keeps());
          FeedBuying.Load load = best(kg);
          row.with("lasts", Figure.days(load.lasts())).with("keeps", Figure.days(keeps()));
          row.with("left", kg(load.left()));
          row.note("lasts {lasts}, keeps {keeps}");
          row.note(
              load.left() < 1 ? "all of it is eaten in time" : "{left} of it is not eaten in time");
          return new Figure.Day(from.plusDays(day));
        });
  }
}
