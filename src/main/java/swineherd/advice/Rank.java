package swineherd.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import swineherd.rulebook.Card;
import swineherd.rulebook.Consequence;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Stage;

/**
 * Where an item stands: consequence x likelihood x how soon it must be begun.
 *
 * <ul>
 *   <li>The weight of the consequence is {@link Consequence#weight()}: people 100, animals 60, law
 *       40, meat 30, money 15, comfort 8.
 *   <li>The likelihood, 0 to 1, is that of the consequence if nothing is done.
 *   <li>How soon: 2 if it is due today or overdue, falling towards 1 with the days left: {@code 1 +
 *       1 / (1 + days / 14)}, so 1.5 at two weeks and 1.25 at six. An item without a day counts as
 *       six weeks off, one for now as due today.
 * </ul>
 *
 * An emergency, for which vet or authority is called now, stands before everything else.
 *
 * @param emergency whether vet or authority is to be called now
 * @param consequence weight of the consequence
 * @param likelihood 0 to 1
 * @param soon 1 to 2
 */
public record Rank(boolean emergency, int consequence, double likelihood, double soon) {
  private static final double HALF_DAYS = 14;
  private static final long NO_DAY = 42;

  /** The highest first. */
  public static final Comparator<Rank> HIGHEST_FIRST =
      Comparator.comparing(Rank::emergency).thenComparing(Rank::score).reversed();

  static Rank of(Card card, Advice advice, LocalDate due, LocalDate today) {
    double likelihood = advice.likelihood() == null ? card.likelihood() : advice.likelihood();
    long days = due == null ? NO_DAY : Math.max(0, ChronoUnit.DAYS.between(today, due));
    if (due == null && card.stage() == Stage.NOW) {
      days = 0;
    }
    return new Rank(
        card.referral().compareTo(Referral.VET_NOW) >= 0,
        card.consequence().weight(),
        likelihood,
        1 + 1 / (1 + days / HALF_DAYS));
  }

  /** The product, rounded to a tenth. */
  public double score() {
    return Math.round(consequence * likelihood * soon * 10) / 10.0;
  }

  /** The sum, as it can be shown: {@code 60 x 0.9 x 1.5 = 81}. */
  public String sum() {
    return "%d x %.2f x %.2f = %.1f%s"
        .formatted(
            consequence,
            likelihood,
            soon,
            score(),
            emergency ? ", before all others: call now" : "");
  }
}
