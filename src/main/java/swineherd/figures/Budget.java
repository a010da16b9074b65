package swineherd.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import swineherd.figures.BudgetLine.PaidFor;
import swineherd.figures.BudgetLine.Said;
import swineherd.rulebook.Table;

/**
 * What a batch of pigs costs, line by line. Money is a number in whatever currency the keeper
 * thinks in; prices come from the keeper alone, and a total with a price missing is not known.
 * Everything else is a line that can be seen and changed:
 *
 * <pre>{@code
 * Budget.draft(Budget.Batch.allFinish(3, 110, 79.2, 55.44))
 *     .assuming("feed", 278)      // kg for each pig, from the feed figures
 *     .withAmount("bedding", 150) // kg the keeper says he uses
 *     .withPrice("feed", 0.60)
 *     .missing();                 // prices still to be asked for
 * }</pre>
 *
 * <p>Pigs that die are paid for and only the others earn. A published textbook form divides the
 * deaths out again and lets them cost nothing (pig-textbook-budgets): it is wrong and not followed.
 *
 * @param batch the pigs
 * @param lines the lines, each key once
 */
public record Budget(Batch batch, List<BudgetLine> lines) {
  /**
   * @throws IllegalArgumentException if two lines have one key
   */
  public Budget {
    lines = List.copyOf(lines);
    if (lines.stream().map(BudgetLine::key).distinct().count() < lines.size()) {
      throw new IllegalArgumentException("two lines of the budget have one key");
    }
  }

  /**
   * The pigs of a budget.
   *
   * @param bought pigs bought, 1 to 1000
   * @param finished pigs slaughtered or sold; not whole when it is an expectation
   * @param lostFeed share of a finished pig's feed that a lost pig has eaten, 0 to 1
   * @param liveKg live weight of one finished pig in kg
   * @param hangingKg its carcass in kg
   * @param meatKg its wrapped meat in kg
   */
  public record Batch(
      int bought,
      double finished,
      double lostFeed,
      double liveKg,
      double hangingKg,
      double meatKg) {
    /**
     * @throws OutsideDomainException if more pigs finish than were bought, or the weights do not
     *     fall from live to carcass to meat
     */
    public Batch {
      OutsideDomainException.within("pigs bought", bought, 1, 1000);
      OutsideDomainException.within("pigs finished", finished, 0, bought);
      OutsideDomainException.within("share of feed a lost pig ate", lostFeed, 0, 1);
      OutsideDomainException.within("live weight in kg", liveKg, 1, 400);
      OutsideDomainException.within("hanging weight in kg", hangingKg, 0.1, liveKg);
      OutsideDomainException.within("meat in kg", meatKg, 0.1, hangingKg);
    }

    /** A batch of which none is lost; weights of one pig in kg. */
    public static Batch allFinish(int pigs, double liveKg, double hangingKg, double meatKg) {
      return new Batch(pigs, pigs, loss("lost-feed") / 100, liveKg, hangingKg, meatKg);
    }

    private static double loss(String key) {
      return Table.named("losses").row(key).number("value");
    }

    /**
     * The same pigs with a share of them expected to be lost: fit for many pigs; with three or
     * fewer show {@link #oneLost} instead.
     *
     * @param share 0 to 1
     */
    public Batch deathLoss(double share) {
      OutsideDomainException.within("share of pigs lost", share, 0, 1);
      return new Batch(bought, bought * (1 - share), lostFeed, liveKg, hangingKg, meatKg);
    }

    /** The same pigs if one more of them dies; none can if none is left. */
    public Batch oneLost() {
      return new Batch(bought, Math.max(0, finished - 1), lostFeed, liveKg, hangingKg, meatKg);
    }

    private double times(PaidFor paidFor) {
      return switch (paidFor) {
        case BATCH -> 1;
        case BOUGHT -> bought;
        case FED -> finished + (bought - finished) * lostFeed;
        case FINISHED -> finished;
        case HANGING -> finished * hangingKg;
      };
    }
  }

  /**
   * What some more weight costs and brings, for one pig.
   *
   * @param feedKg feed in kg
   * @param hangingKg carcass in kg
   * @param meatKg wrapped meat in kg
   * @param feedCost money for the feed; empty without its price
   * @param feedCostPerKgMeat the same for each kg of meat, before cutting
   */
  public record Extra(
      double feedKg,
      double hangingKg,
      double meatKg,
      OptionalDouble feedCost,
      OptionalDouble feedCostPerKgMeat) {}

  /**
   * All the usual lines (tables {@code budget-lines} and {@code equipment-lives}) with their
   * assumed amounts and no price. Equipment bears one batch a year; its price is what was paid less
   * the resale.
   */
  public static Budget draft(Batch batch) {
    List<BudgetLine> lines = new ArrayList<>();
    for (Table.Row row : Table.named("budget-lines").rows()) {
      PaidFor paidFor = PaidFor.valueOf(row.text("paidFor").toUpperCase(Locale.ROOT));
      boolean cash = row.text("cash").equals("yes");
      lines.add(assumed(row, paidFor, row.maybe("amount"), row.text("unit"), cash));
    }
    for (Table.Row row : Table.named("equipment-lives").rows()) {
      OptionalDouble share = OptionalDouble.of(1 / row.number("years"));
      lines.add(assumed(row, PaidFor.BATCH, share, "of its loss in value", true));
    }
    return new Budget(batch, lines);
  }

  private static BudgetLine assumed(
      Table.Row row, PaidFor paidFor, OptionalDouble amount, String unit, boolean cash) {
    return new BudgetLine(
        row.key(),
        row.text("what"),
        paidFor,
        amount,
        unit,
        OptionalDouble.empty(),
        Said.ASSUMED,
        cash);
  }

  /** With an amount the keeper said, each time the line is paid. */
  public Budget withAmount(String key, double amount) {
    return change(key, line -> line.withAmount(amount, Said.KEEPER));
  }

  /** With an amount another figure worked out, each time the line is paid. */
  public Budget assuming(String key, double amount) {
    return change(key, line -> line.withAmount(amount, Said.ASSUMED));
  }

  /** With the keeper's price for one unit of a line. */
  public Budget withPrice(String key, double price) {
    return change(key, line -> line.withPrice(price));
  }

  /** With a line added, or put in place of the one with its key. */
  public Budget with(BudgetLine line) {
    List<BudgetLine> changed = new ArrayList<>(lines);
    changed.removeIf(old -> old.key().equals(line.key()));
    changed.add(line);
    return new Budget(batch, changed);
  }

  /** The same lines for other pigs. */
  public Budget forBatch(Batch other) {
    return new Budget(other, lines);
  }

  /**
   * The line with a key.
   *
   * @throws IllegalArgumentException if there is none
   */
  public BudgetLine line(String key) {
    return lines.stream()
        .filter(line -> line.key().equals(key))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the budget has no line " + key));
  }

  /** How much of a line the whole batch takes, in the line's unit; empty if it is not known. */
  public OptionalDouble amount(String key) {
    return times(line(key), line(key).amount());
  }

  /** Money for a line in the whole batch; empty if amount or price is not known. */
  public OptionalDouble cost(String key) {
    return times(line(key), line(key).cost());
  }

  /** Lines that lack an amount or a price and are not nothing. */
  public List<BudgetLine> missing() {
    return lines.stream().filter(line -> !line.complete()).toList();
  }

  /** Cash cost of the batch; empty while the price or amount of a cash line is missing. */
  public OptionalDouble cash() {
    return sum(lines.stream().filter(BudgetLine::cash).toList());
  }

  /** Cash cost for each finished pig; empty if none finishes. */
  public OptionalDouble perPig() {
    return per(1);
  }

  /** Cash cost for each kg of live weight: the price a live pig must bring to break even. */
  public OptionalDouble perKgLive() {
    return per(batch.liveKg);
  }

  /** Cash cost for each kg hanging: the price by hanging weight at which it breaks even. */
  public OptionalDouble perKgHanging() {
    return per(batch.hangingKg);
  }

  /** Cash cost for each kg of wrapped meat: the price by the cut at which it breaks even. */
  public OptionalDouble perKgMeat() {
    return per(batch.meatKg);
  }

  /** Share of a line in the cash cost, 0 to 1; empty if a price is missing or nothing is paid. */
  public OptionalDouble share(String key) {
    OptionalDouble cash = cash();
    OptionalDouble cost = cost(key);
    return cash.isEmpty() || cost.isEmpty() || cash.getAsDouble() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(cost.getAsDouble() / cash.getAsDouble());
  }

  /**
   * What is left of the takings.
   *
   * @param takingsPerPig takings for each finished pig
   * @return negative for a loss; empty while a price is missing
   */
  public OptionalDouble left(double takingsPerPig) {
    double takings = batch.finished * money("takings for a pig", takingsPerPig);
    return map(cash(), cost -> takings - cost);
  }

  /**
   * The most a weaned pig may cost so that nothing is lost: (1 - deaths) x takings less all other
   * cost of a pig bought.
   *
   * @param takingsPerPig takings for each finished pig, or what its meat would cost elsewhere
   * @return negative if even a free pig loses money; empty while another price is missing
   */
  public OptionalDouble highestWeanerPrice(double takingsPerPig) {
    double takings = batch.finished * money("takings for a pig", takingsPerPig);
    List<BudgetLine> others =
        lines.stream().filter(line -> line.cash() && !line.key().equals("weaners")).toList();
    return map(sum(others), cost -> (takings - cost) / batch.bought);
  }

  /**
   * What keeping one pig longer takes and brings, its carcass and meat in the proportions of the
   * batch.
   *
   * @param liveKg further live weight in kg: 10, or a week's gain; 0 to 100
   * @param feedKg feed it takes in kg, 0 to 1000
   * @throws OutsideDomainException if one is outside
   */
  public Extra extra(double liveKg, double feedKg) {
    OutsideDomainException.within("further live weight in kg", liveKg, 0, 100);
    OutsideDomainException.within("feed for it in kg", feedKg, 0, 1000);
    double hanging = liveKg * batch.hangingKg / batch.liveKg;
    double meat = liveKg * batch.meatKg / batch.liveKg;
    OptionalDouble cost = map(line("feed").price(), price -> price * feedKg);
    OptionalDouble perKg = meat == 0 ? OptionalDouble.empty() : map(cost, c -> c / meat);
    return new Extra(feedKg, hanging, meat, cost, perKg);
  }

  private Budget change(String key, UnaryOperator<BudgetLine> changed) {
    BudgetLine old = line(key);
    return new Budget(
        batch, lines.stream().map(line -> line.equals(old) ? changed.apply(line) : line).toList());
  }

  private OptionalDouble times(BudgetLine line, OptionalDouble each) {
    return map(each, value -> value * batch.times(line.paidFor()));
  }

  private OptionalDouble sum(List<BudgetLine> some) {
    double sum = 0;
    for (BudgetLine line : some) {
      OptionalDouble cost = times(line, line.cost());
      if (cost.isEmpty()) {
        return cost;
      }
      sum += cost.getAsDouble();
    }
    return OptionalDouble.of(sum);
  }

  private OptionalDouble per(double eachPig) {
    return batch.finished == 0
        ? OptionalDouble.empty()
        : map(cash(), cost -> cost / (batch.finished * eachPig));
  }

  private static OptionalDouble map(OptionalDouble value, DoubleUnaryOperator to) {
    return value.isEmpty() ? value : OptionalDouble.of(to.applyAsDouble(value.getAsDouble()));
  }

  private static double money(String what, double value) {
    return OutsideDomainException.within(what, value, 0, 1e9);
  }
}
