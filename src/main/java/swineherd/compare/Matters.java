package swineherd.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.advice.Unanswered;
import swineherd.outlook.Outlook;

/**
 * Which unanswered questions matter: the engine runs over the plausible answers of each and sees
 * how far the checklist would move. No table says so beforehand.
 */
public final class Matters {
  /** Scores that differ by less are taken as the same. */
  private static final double SAME = 1;

  /**
   * One question, or two that matter together.
   *
   * @param question the question
   * @param with the other question; null if it is one by itself
   * @param moves how many items some plausible answer would add, take away or move; of two
   *     questions only those that both answers together add or take away and neither does alone
   * @param by the most that the scores of those items together would move
   * @param items ids of the items that would move
   */
  public record Matter(
      Unanswered question, Unanswered with, int moves, double by, Set<String> items) {
    Matter(Unanswered question, Unanswered with, double by, Set<String> items) {
      this(question, with, items.size(), by, items);
    }
  }

  /**
   * What came of trying out.
   *
   * @param questions those that would move anything, that which moves the list farthest first
   * @param pairs two questions that matter together, in the same order; empty if not looked for
   * @param untried questions that were not tried, for want of time or because few were asked for
   * @param allPairs whether all pairs were tried that were to be
   */
  public record Tried(
      List<Matter> questions, List<Matter> pairs, List<Unanswered> untried, boolean allPairs) {
    /** Nothing was tried, as there was nothing to try. */
    public static final Tried NONE = new Tried(List.of(), List.of(), List.of(), true);

    /** Questions and pairs in one list, the pairs last. */
    public List<Matter> all() {
      List<Matter> all = new ArrayList<>(questions);
      all.addAll(pairs);
      return List.copyOf(all);
    }
  }

  private final Checklist base;
  private final Trials trials;
  private final Map<String, Double> before;

  private Matters(Checklist base, Trials trials) {
    this.base = base;
    this.trials = trials;
    this.before = Trials.scores(base);
  }

  /**
   * Tries out each question by itself.
   *
   * @param base the checklist as it is
   * @param rules the rules it was checked by
   * @param milliseconds when to stop; what was found until then is returned
   */
  public static Tried of(Checklist base, KnowledgeBase rules, long milliseconds) {
    return of(base, rules, milliseconds, Integer.MAX_VALUE, false);
  }

  /**
   * Tries out only some questions, for somebody who waits: those that items of the list rest on.
   *
   * @param most how many questions
   */
  public static Tried first(Checklist base, KnowledgeBase rules, long milliseconds, int most) {
    return of(base, rules, milliseconds, most, false);
  }

  /** Tries out each question by itself, and then those two and two that are read together. */
  public static Tried withPairs(Checklist base, KnowledgeBase rules, long milliseconds) {
    return of(base, rules, milliseconds, Integer.MAX_VALUE, true);
  }

  private static Tried of(
      Checklist base, KnowledgeBase rules, long milliseconds, int most, boolean alsoPairs) {
    try (Trials trials = new Trials(base.file(), rules, milliseconds)) {
      return new Matters(base, trials).run(most, alsoPairs);
    }
  }

  /** One answer that was tried out. */
  private record Answered(Object answer, Map<String, Double> scores, List<Outlook> outlooks) {}

  private Tried run(int most, boolean alsoPairs) {
    List<Unanswered> all = mostLikelyFirst();
    List<Unanswered> questions = all.subList(0, Math.min(most, all.size()));
    List<Callable<List<Answered>>> work = new ArrayList<>();
    questions.forEach(question -> work.add(() -> answers(question)));
    List<List<Answered>> runs = trials.all(work);
    Map<Unanswered, List<Answered>> tried = new HashMap<>();
    List<Matter> matters = new ArrayList<>();
    List<Unanswered> untried = new ArrayList<>(all.subList(questions.size(), all.size()));
    for (int i = 0; i < questions.size(); i++) {
      if (runs.get(i) == null) {
        untried.add(questions.get(i));
      } else {
        tried.put(questions.get(i), runs.get(i));
        matter(questions.get(i), runs.get(i), matters);
      }
    }
    List<Matter> pairs = alsoPairs ? pairs(tried) : List.of();
    return new Tried(
        sorted(matters),
        sorted(pairs),
        List.copyOf(untried),
        pairs.stream().noneMatch(Objects::isNull));
  }

  /** The questions that items of the list rest on already come first, in case the time is short. */
  private List<Unanswered> mostLikelyFirst() {
    Map<String, Double> resting = new HashMap<>();
    for (Item item : base.items()) {
      item.because().forEach(b -> resting.merge(b.path(), item.rank().score(), Double::sum));
    }
    List<Unanswered> questions = new ArrayList<>(base.unanswered());
    questions.sort(
        Comparator.comparingDouble((Unanswered q) -> resting.getOrDefault(q.path(), 0.0))
            .reversed());
    return questions;
  }

  /** All plausible answers of a question; null if the time is up before the last. */
  private List<Answered> answers(Unanswered question) {
    List<Answered> answered = new ArrayList<>();
    for (Object answer : PlausibleAnswers.to(question, base.file())) {
      if (trials.late()) {
        return null;
      }
      trials
          .with(Map.of(question.path(), answer))
          .ifPresent(c -> answered.add(new Answered(answer, Trials.scores(c), c.outlooks())));
    }
    return answered;
  }

  private void matter(Unanswered question, List<Answered> runs, List<Matter> matters) {
    Set<String> items = new TreeSet<>();
    double farthest = 0;
    for (Answered run : runs) {
      double by = 0;
      for (String key : union(before.keySet(), run.scores().keySet())) {
        double difference = Math.abs(score(before, key) - score(run.scores(), key));
        if (difference >= SAME) {
          by += difference;
          items.add(id(key));
        }
      }
      farthest = Math.max(farthest, by);
    }
    if (!items.isEmpty()) {
      matters.add(new Matter(question, null, farthest, items));
    }
  }

  /** Pairs that matter together; null stands for each for which the time was too short. */
  private List<Matter> pairs(Map<Unanswered, List<Answered>> tried) {
    List<Outlook> outlooks = new ArrayList<>(base.outlooks());
    tried.values().forEach(runs -> runs.forEach(run -> outlooks.addAll(run.outlooks())));
    List<Callable<Matter>> work = new ArrayList<>();
    for (ReadTogether.Pair pair : ReadTogether.of(base.file(), tried.keySet(), outlooks)) {
      work.add(
          () -> together(pair.one(), tried.get(pair.one()), pair.other(), tried.get(pair.other())));
    }
    List<Matter> pairs = new ArrayList<>(trials.all(work));
    pairs.removeIf(pair -> pair != null && pair.items().isEmpty());
    return pairs;
  }

  private Matter together(
      Unanswered one, List<Answered> ones, Unanswered other, List<Answered> others) {
    Set<String> items = new TreeSet<>();
    double farthest = 0;
    for (Answered a : ones) {
      for (Answered b : others) {
        if (trials.late()) {
          return null;
        }
        Map<String, Double> both =
            trials
                .with(Map.of(one.path(), a.answer(), other.path(), b.answer()))
                .map(Trials::scores)
                .orElse(null);
        if (both == null) {
          continue;
        }
        double by = 0;
        for (String key : union(before.keySet(), both.keySet())) {
          boolean after = both.containsKey(key);
          if (before.containsKey(key) != after
              && a.scores().containsKey(key) != after
              && b.scores().containsKey(key) != after) {
            by += Math.abs(score(before, key) - score(both, key));
            items.add(id(key));
          }
        }
        farthest = Math.max(farthest, by);
      }
    }
    return new Matter(one, other, farthest, items);
  }

  private static List<Matter> sorted(List<Matter> matters) {
    return matters.stream()
        .filter(Objects::nonNull)
        .sorted(
            Comparator.comparingDouble(Matter::by)
                .reversed()
                .thenComparing(m -> m.question().path())
                .thenComparing(m -> m.with() == null ? "" : m.with().path()))
        .toList();
  }

  private static Set<String> union(Set<String> some, Set<String> more) {
    Set<String> all = new TreeSet<>(some);
    all.addAll(more);
    return all;
  }

  private static double score(Map<String, Double> scores, String key) {
    return scores.getOrDefault(key, 0.0);
  }

  private static String id(String key) {
    return key.substring(0, key.indexOf(' '));
  }
}
