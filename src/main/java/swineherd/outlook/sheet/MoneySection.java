package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;
import static swineherd.outlook.sheet.Figure.money;
import static swineherd.outlook.sheet.Figure.moneyPerKg;

import java.util.List;
import java.util.OptionalDouble;
import swineherd.figures.Budget;
import swineherd.figures.BudgetLine;
import swineherd.figures.OutsideDomainException;
import swineherd.setup.Money;
import swineherd.setup.Setup;

/** What the batch costs, line by line, and what that makes a pig, a kilogram, another week. */
final class MoneySection {
  private final Money money;
  private final Rows rows = new Rows("money", "Money", "");

  private MoneySection(Setup setup) {
    this.money = setup.money();
  }

  /** The table; without a row where there is no group to reckon with. */
  static Section of(Setup setup, List<Pigs> all, double strawKg) {
    MoneySection section = new MoneySection(setup);
    List<Pigs> groups = all.stream().filter(p -> p.feed() != null).toList();
    if (!groups.isEmpty()) {
      try {
        section.write(all, groups, strawKg);
      } catch (OutsideDomainException e) {
        section.rows.add("cash", "All of it", row -> new Figure.Beyond(e.getMessage()));
      }
    }
    return section.rows.section();
  }

  private void write(List<Pigs> all, List<Pigs> groups, double strawKg) {
    if (groups.size() < all.size()) {
      rows.assuming("groups whose growth or feed cannot be worked out are left out");
    }
    for (Pigs pigs : groups) {
      if (pigs.group().count() == null) {
        rows.assuming("number of pigs not said: " + pigs.name() + " counted as one");
      }
    }
    Budget budget = budget(groups, strawKg);
    for (Asked asked : asked()) {
      line(budget, budget.line(asked.line()), asked.path());
    }
    totals(budget);
    if (groups.size() == 1) {
      week(budget, groups.get(0));
    }
  }

  private Budget budget(List<Pigs> groups, double strawKg) {
    Budget.Batch batch = batch(groups);
    double feed = 0;
    for (Pigs pigs : groups) {
      feed += pigs.count() * pigs.feed().eachInAll().kg();
    }
    Budget budget =
        Budget.draft(batch).assuming("feed", feed / batch.bought()).assuming("bedding", strawKg);
    for (Asked asked : asked()) {
      if (asked.price() != null) {
        budget = budget.withPrice(asked.line(), asked.price());
      }
    }
    return budget;
  }

  /** The mean pig of all groups. */
  private static Budget.Batch batch(List<Pigs> groups) {
    int pigs = 0;
    double live = 0;
    double hanging = 0;
    double meat = 0;
    for (Pigs each : groups) {
      pigs += each.count();
      live += each.count() * each.endWeight();
      hanging += each.count() * SlaughterSection.hanging(each).likely();
      meat += each.count() * SlaughterSection.meat(each).likely();
    }
    return Budget.Batch.allFinish(pigs, live / pigs, hanging / pigs, meat / pigs);
  }

  /**
   * A line of the budget that the keeper is asked about.
   *
   * @param line its key in the budget
   * @param path where its price stands in the setup file
   * @param price the price; null if it was not said
   */
  private record Asked(String line, String path, Double price) {}

  private List<Asked> asked() {
    return List.of(
        new Asked("weaners", "money.weaner", money.weaner()),
        new Asked("feed", "money.feed", money.feed()),
        new Asked("bedding", "money.straw", money.straw()),
        new Asked("vet", "money.vet", money.vet()),
        new Asked("travel", "money.travel", money.travel()),
        new Asked("insurance", "money.insurance", money.insurance()),
        new Asked("kill", "money.kill", money.kill()),
        new Asked("cut", "money.cut", money.cut()),
        new Asked("fence", "money.fence", money.fence()),
        new Asked("energiser", "money.energizer", money.energizer()),
        new Asked("shelter", "money.shelter", money.shelter()),
        new Asked("trough", "money.trough", money.trough()),
        new Asked("freezer", "money.freezer", money.freezer()));
  }

  private void line(Budget budget, BudgetLine line, String path) {
    rows.add(
        "line-" + line.key(),
        capital(line.what()),
        row -> {
          amount(row, budget, line);
          OptionalDouble cost = budget.cost(line.key());
          return cost.isPresent() ? money(cost.getAsDouble()) : new Figure.Missing(List.of(path));
        });
  }

  private void amount(Rows.Draft row, Budget budget, BudgetLine line) {
    OptionalDouble amount = budget.amount(line.key());
    OptionalDouble price = line.price();
    boolean weighed = line.unit().startsWith("kg") || line.key().equals("bedding");
    if (amount.isEmpty()) {
      return;
    }
    String times = "";
    if (weighed) {
      row.with("amount", kg(amount.getAsDouble()));
      times = "{amount}" + (line.key().equals("cut") ? " hanging" : "");
    } else if (line.unit().equals("pig")) {
      row.with("amount", new Figure.Count((int) Math.round(amount.getAsDouble()), "pig", "pigs"));
      times = "{amount}";
    } else if (line.unit().startsWith("of its")) {
      row.with("years", Figure.plain(Math.rint(1 / amount.getAsDouble()), "years"));
      if (price.isPresent()) {
        row.with("price", money(price.getAsDouble())).note("{price} over {years}");
      }
      return;
    }
    if (price.isPresent()) {
      double each = price.getAsDouble();
      row.with("price", weighed ? moneyPerKg(each) : money(each));
      row.note(times.isEmpty() ? "as you said" : times + " at {price}");
    } else if (!times.isEmpty()) {
      row.note(times);
    }
  }

  private void totals(Budget budget) {
    OptionalDouble cash = budget.cash();
    List<String> missing =
        asked().stream()
            .filter(asked -> !budget.line(asked.line()).complete())
            .map(Asked::path)
            .toList();
    rows.add("cash", "All of it", row -> figure(cash, false, missing));
    if (cash.isPresent()) {
      complete(budget);
    } else {
      knownSoFar(budget, missing);
    }
    if (money.meat() != null) {
      worth(budget, missing);
    }
  }

  /** What has a price is worth knowing, even while another is missing; at least so much. */
  private void knownSoFar(Budget budget, List<String> missing) {
    double known = asked().stream().mapToDouble(asked -> budget.cost(asked.line()).orElse(0)).sum();
    if (known > 0) {
      rows.add(
          "known",
          "Known so far",
          row -> {
            row.note("without " + String.join(", ", missing));
            return money(known);
          });
    }
  }

  private void complete(Budget budget) {
    rows.add("per-pig", "A pig", row -> price(budget.perPig(), false));
    rows.add(
        "per-kg-live",
        "By live weight",
        row -> {
          row.note("a live pig must bring this to break even");
          return price(budget.perKgLive(), true);
        });
    rows.add(
        "per-kg-hanging",
        "By hanging weight",
        row -> {
          row.note("so must a carcass");
          return price(budget.perKgHanging(), true);
        });
    rows.add(
        "per-kg-meat",
        "By weight of wrapped meat",
        row -> {
          row.note("so must the cuts");
          return price(budget.perKgMeat(), true);
        });
    if (budget.batch().bought() > 1) {
      rows.add(
          "one-lost",
          "Wrapped meat, if one pig is lost",
          row -> {
            row.note("after a third of its feed");
            return price(budget.forBatch(budget.batch().oneLost()).perKgMeat(), true);
          });
    }
    rows.add(
        "share-feed",
        "Share of the feed in it",
        row -> Figure.percent(100 * budget.share("feed").orElse(0)));
  }

  private void worth(Budget budget, List<String> missing) {
    double takings = money.meat() * budget.batch().meatKg();
    rows.add(
        "left",
        "Left over, the meat at {worth}",
        row -> {
          row.with("worth", moneyPerKg(money.meat()));
          return figure(budget.left(takings), false, missing);
        });
    rows.add(
        "highest-weaner",
        "Most that a weaner may cost",
        row -> {
          List<String> others = missing.stream().filter(p -> !p.equals("money.weaner")).toList();
          return figure(budget.highestWeanerPrice(takings), false, others);
        });
  }

  /** What another week at the end takes and brings. */
  private void week(Budget budget, Pigs pigs) {
    rows.add(
        "week",
        "Feed for another week of one pig",
        row -> {
          double weight = pigs.endWeight();
          double gain = 7 * pigs.course().forecast().growth().dailyGain(weight);
          double feed = 7 * pigs.feed().feeding().given(weight);
          Budget.Extra extra = budget.extra(gain, feed);
          row.with("feed", kg(extra.feedKg())).with("meat", kg(extra.meatKg()));
          row.note("{feed} of feed for {meat} of meat");
          if (extra.feedCostPerKgMeat().isPresent()) {
            row.with("each", moneyPerKg(extra.feedCostPerKgMeat().getAsDouble()));
            row.note("{each} of it, before cutting");
          }
          return figure(extra.feedCost(), false, List.of("money.feed"));
        });
  }

  private static Figure figure(OptionalDouble value, boolean perKg, List<String> missing) {
    return value.isEmpty() ? new Figure.Missing(missing) : price(value, perKg);
  }

  private static Figure price(OptionalDouble value, boolean perKg) {
    return new Figure.Price(value.orElseThrow(), perKg);
  }

  private static String capital(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
