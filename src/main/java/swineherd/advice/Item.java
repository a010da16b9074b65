package swineherd.advice;

import java.time.LocalDate;
import java.util.List;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Stage;

/**
 * One item of a checklist.
 *
 * @param card its wording
 * @param advice what the rule concluded
 * @param rank its place in the order, with the sum
 * @param due the day by which it is to be done or begun; null if there is none
 * @param because the answers it rests on
 * @param through rules that led to it, the last first
 */
public record Item(
    Card card,
    Advice advice,
    Rank rank,
    LocalDate due,
    List<Because> because,
    List<String> through) {

  public String id() {
    return card.id();
  }

  /** When it is to be done: now, if it is due today or overdue. */
  public Stage stage() {
    return rank.soon() >= 2 ? Stage.NOW : card.stage();
  }

  public Referral referral() {
    return card.referral();
  }

  /**
   * An answer that an item rests on.
   *
   * @param path where it stands in the setup
   * @param label two or three words for the question
   * @param said what the keeper wrote; null if it was not answered
   */
  public record Because(String path, String label, String said) {}
}
