package swineherd.figures;

import java.util.OptionalDouble;

/**
 * One line of a {@link Budget}: how much of something, how often, at what price. What is not known
 * is empty and never counts as nothing.
 *
 * @param key short name, such as {@code feed}
 * @param what in words
 * @param paidFor how often it is paid
 * @param amount how much each time, in {@code unit}; 0 to 1e9
 * @param unit unit of the amount
 * @param price price of one unit in the keeper's money, 0 to 1e9; only the keeper knows it
 * @param amountFrom whether the keeper said the amount
 * @param cash whether it is paid in money; the keeper's own hours are not
 */
public record BudgetLine(
    String key,
    String what,
    PaidFor paidFor,
    OptionalDouble amount,
    String unit,
    OptionalDouble price,
    Said amountFrom,
    boolean cash) {
  private static final double MOST = 1e9;

  /**
   * @throws OutsideDomainException if amount or price is not within 0 to 1e9
   */
  public BudgetLine {
    amount.ifPresent(a -> OutsideDomainException.within("amount of " + what, a, 0, MOST));
    price.ifPresent(p -> OutsideDomainException.within("price of " + what, p, 0, MOST));
  }

  /** How often a line is paid. */
  public enum PaidFor {
    BATCH,
    /** Each pig bought. */
    BOUGHT,
    /** Each pig fed to the end; a pig that is lost counts for the part of its feed it ate. */
    FED,
    /** Each pig slaughtered or sold. */
    FINISHED,
    /** Each kg of hanging weight. */
    HANGING
  }

  /** Where an amount comes from. */
  public enum Said {
    KEEPER,
    ASSUMED
  }

  /** A line paid in money, its amount and price said by the keeper. */
  public static BudgetLine said(
      String key, PaidFor paidFor, double amount, String unit, double price) {
    return new BudgetLine(
        key,
        key,
        paidFor,
        OptionalDouble.of(amount),
        unit,
        OptionalDouble.of(price),
        Said.KEEPER,
        true);
  }

  /**
   * A thing bought once, of which each batch bears a year's wear in a straight line. With two
   * batches a year give twice the years.
   *
   * @param bought price it was bought for
   * @param resale what it will bring at the end, not more than {@code bought}
   * @param years its life, above 0
   */
  public static BudgetLine wear(String key, double bought, double resale, double years) {
    OutsideDomainException.within("life of " + key + " in years", years, 0.1, 100);
    OutsideDomainException.within("resale of " + key, resale, 0, bought);
    return said(key, PaidFor.BATCH, 1 / years, "of its loss in value", bought - resale);
  }

  /** The same line with another amount. */
  public BudgetLine withAmount(double newAmount, Said from) {
    return new BudgetLine(
        key, what, paidFor, OptionalDouble.of(newAmount), unit, price, from, cash);
  }

  /** The same line at a price. */
  public BudgetLine withPrice(double newPrice) {
    return new BudgetLine(
        key, what, paidFor, amount, unit, OptionalDouble.of(newPrice), amountFrom, cash);
  }

  /** Whether it can be turned into money: amount and price known, or nothing of it used. */
  public boolean complete() {
    return cost().isPresent();
  }

  /** Money each time it is paid; empty if amount or price is not known. */
  public OptionalDouble cost() {
    if (amount.isPresent() && amount.getAsDouble() == 0) {
      return OptionalDouble.of(0);
    }
    return amount.isPresent() && price.isPresent()
        ? OptionalDouble.of(amount.getAsDouble() * price.getAsDouble())
        : OptionalDouble.empty();
  }
}
