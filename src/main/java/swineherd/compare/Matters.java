package swineherd.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.advice.Unanswered;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;

/**
 * Which unanswered questions matter: the engine runs over the plausible answers of each and sees
 * how far the checklist would move. No table says so beforehand.
 */
public final class Matters {
  /** Scores that differ by less are taken as the same. */
  private static final double SAME = 1;

  /**
   * One question.
   *
   * @param question the question
   * @param moves how many items some plausible answer would add, take away or move
   * @param by the most that the scores of all items together would move
   * @param items ids of the items that would move
   */
  public record Matter(Unanswered question, int moves, double by, Set<String> items) {}

  private Matters() {}

  /**
   * The unanswered questions that items of the list already rest on: quick, and less than {@link
   * #of} finds, which tries out every question.
   */
  public static List<Matter> resting(Checklist checklist) {
    List<Matter> matters = new ArrayList<>();
    for (Unanswered question : checklist.unanswered()) {
      Set<String> items = new TreeSet<>();
      double by = 0;
      for (Item item : checklist.items()) {
        if (item.because().stream().anyMatch(b -> b.path().equals(question.path()))) {
          items.add(item.id());
          by += item.rank().score();
        }
      }
      if (!items.isEmpty()) {
        matters.add(new Matter(question, items.size(), by, items));
      }
    }
    return sorted(matters);
  }

  /**
   * The questions that would move anything, those that move the list farthest first.
   *
   * @param base the checklist as it is
   * @param rules the rules it was checked by
   * @param milliseconds when to stop looking; what was found until then is returned
   */
  public static List<Matter> of(Checklist base, KnowledgeBase rules, long milliseconds) {
    long end = System.nanoTime() + milliseconds * 1_000_000;
    Map<String, Double> before = scores(base);
    List<Matter> matters = new ArrayList<>();
    for (Unanswered question : base.unanswered()) {
      Set<String> items = new TreeSet<>();
      double farthest = 0;
      for (Object answer : PlausibleAnswers.to(question, base.file())) {
        if (System.nanoTime() > end) {
          return sorted(matters);
        }
        farthest = Math.max(farthest, move(base.file(), rules, question, answer, before, items));
      }
      if (!items.isEmpty()) {
        matters.add(new Matter(question, items.size(), farthest, items));
      }
    }
    return sorted(matters);
  }

  private static List<Matter> sorted(List<Matter> matters) {
    matters.sort(
        Comparator.comparingDouble(Matter::by).reversed().thenComparing(m -> m.question().path()));
    return List.copyOf(matters);
  }

  /** How far one answer moves the list; adds the ids of what it moves to {@code items}. */
  private static double move(
      SetupFile file,
      KnowledgeBase rules,
      Unanswered question,
      Object answer,
      Map<String, Double> before,
      Set<String> items) {
    SetupFile answered;
    try {
      answered = file.with(question.path(), answer);
    } catch (BadSetupException e) {
      return 0; // it cannot be so, given the other answers
    }
    Map<String, Double> after = scores(Advisor.advise(answered, rules));
    Set<String> all = new TreeSet<>(before.keySet());
    all.addAll(after.keySet());
    double by = 0;
    for (String key : all) {
      double difference = Math.abs(before.getOrDefault(key, 0.0) - after.getOrDefault(key, 0.0));
      if (difference >= SAME) {
        by += difference;
        items.add(key.substring(0, key.indexOf(' ')));
      }
    }
    return by;
  }

  private static Map<String, Double> scores(Checklist checklist) {
    Map<String, Double> scores = new HashMap<>();
    for (Item item : checklist.items()) {
      scores.merge(item.id() + " " + item.advice().about(), item.rank().score(), Math::max);
    }
    return scores;
  }
}
