package swineherd.advice;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import swineherd.figures.Band;
import swineherd.units.Dimension;

/**
 * One thing to do, or one thing that is in order, as a rule concludes it. Rules insert it
 * logically; equal conclusions of one rule are one piece of advice. The words are on the card of
 * that id.
 *
 * <pre>{@code
 * insertLogical(Advice.of("fence.train-first", $pigs.name())
 *     .with("days", $training.days(), Dimension.TIME)
 *     .by($training.start()));
 * }</pre>
 *
 * @param id id of the card, which is the name of the rule
 * @param about name of the group or pen it is about; empty if it is about the whole setup
 * @param values what fills the placeholders of the card
 * @param due the day by which it is to be done or begun, lead time counted; null if there is none
 * @param likelihood how likely the consequence is, 0 to 1; null to take the card's
 */
public record Advice(
    String id, String about, Map<String, Value> values, LocalDate due, Double likelihood) {

  public Advice {
    values = Collections.unmodifiableMap(new TreeMap<>(values));
    if (likelihood != null && !(likelihood >= 0 && likelihood <= 1)) {
      throw new IllegalArgumentException(id + ": a likelihood is 0 to 1, not " + likelihood);
    }
  }

  /** By id and about alone: the engine asks for it often, and the rest is seldom different. */
  @Override
  public int hashCode() {
    return 31 * id.hashCode() + about.hashCode();
  }

  /** Advice about one group or pen; about the whole setup if {@code about} is empty. */
  public static Advice of(String id, String about) {
    return new Advice(id, about, Map.of(), null, null);
  }

  /** Fills a placeholder with an uncertain quantity in the base unit of its dimension. */
  public Advice with(String name, Band band, Dimension dimension) {
    return with(name, new Value.Amount(band, dimension));
  }

  /** Fills a placeholder with a quantity in the base unit of its dimension. */
  public Advice with(String name, double amount, Dimension dimension) {
    return with(name, new Value.Amount(Band.exactly(amount), dimension));
  }

  /** Fills a placeholder with several quantities in the base unit of their dimension. */
  public Advice with(String name, List<Double> amounts, Dimension dimension) {
    return with(name, new Value.Amounts(amounts, dimension));
  }

  /** Fills a placeholder with a whole number. */
  public Advice with(String name, int count) {
    return with(name, new Value.Count(count));
  }

  /** Fills a placeholder with a day. */
  public Advice with(String name, LocalDate day) {
    return with(name, new Value.Day(day));
  }

  /** Fills a placeholder with words. */
  public Advice with(String name, String words) {
    return with(name, new Value.Words(words));
  }

  /** Fills a placeholder with a probability, 0 to 1, told as so many in ten. */
  public Advice withChance(String name, double chance) {
    return with(name, new Value.Chance(chance));
  }

  private Advice with(String name, Value value) {
    Map<String, Value> more = new TreeMap<>(values);
    more.put(name, value);
    return new Advice(id, about, more, due, likelihood);
  }

  /** The day by which it is to be done or begun. */
  public Advice by(LocalDate day) {
    return new Advice(id, about, values, day, likelihood);
  }

  /** How likely the consequence is here, 0 to 1. */
  public Advice likely(double chance) {
    return new Advice(id, about, values, due, chance);
  }
}
