package swineherd.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swineherd.advice.Item;
import swineherd.advice.Unanswered;

/**
 * The smallest change of answers found that takes an item off the list, and what it does besides.
 *
 * @param changes what to change: one thing, or two that only help together
 * @param added items that come instead
 * @param cleared other items that go as well
 * @param worthIt whether what comes weighs less than what goes, and each thing of it less than the
 *     item; never if fewer would be in time than now
 * @param inTime chance, 0 to 1, that the pigs then have their weight by the day that counts; null
 *     where the item is not about that
 */
public record Remedy(
    List<Change> changes, List<Item> added, List<Item> cleared, boolean worthIt, Double inTime) {

  /**
   * One change.
   *
   * @param question the question and where its answer stands
   * @param said what the keeper said; null if nothing
   * @param answers what to answer, by path, as {@link swineherd.setup.SetupFile#with(Map)} takes
   *     it: the answer itself, and such as have to go along with it
   * @param bound whether the answer is the least, the most or the only one
   * @param to where {@link Bound#BETWEEN}, the other end; else null
   * @param orElse other choices that do as well
   * @param canChange whether the keeper can make it so; if not, it can only be found out
   */
  public record Change(
      Unanswered question,
      String said,
      Map<String, Object> answers,
      Bound bound,
      Object to,
      List<Object> orElse,
      boolean canChange) {
    /** The answer in SI units: a number, a truth value, an ISO date, the key of a choice. */
    public Object answer() {
      return answers.get(question.path());
    }
  }

  /** What an answer that helps says of the others. */
  public enum Bound {
    /** Only this one, or one of the others that are named. */
    EXACTLY,
    /** This or more; of days, this or later. */
    AT_LEAST,
    /** This or less; of days, this or earlier. */
    AT_MOST,
    /** From this to another. */
    BETWEEN,
    /** Whatever it is, once it is known. */
    ANY
  }

  /** All answers of all changes. */
  public Map<String, Object> answers() {
    Map<String, Object> all = new LinkedHashMap<>();
    changes.forEach(change -> all.putAll(change.answers()));
    return all;
  }
}
