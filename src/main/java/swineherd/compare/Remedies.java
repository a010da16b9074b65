package swineherd.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.outlook.Deadline;
import swineherd.outlook.NotWorkedOut;
import swineherd.outlook.Outlook;
import swineherd.rulebook.Question;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;

/**
 * What would take an item off the list: the engine runs over the answers that the keeper could make
 * others, one at a time and then two, and keeps those after which the item is gone. Of sizes,
 * counts and days it finds the smallest change that does.
 */
public final class Remedies {
  /** So many kinds of answers are tried two at a time. */
  private static final int MOST_FOR_PAIRS = 14;

  /**
   * What was found.
   *
   * @param item the item
   * @param remedies those that clear it, the best first
   * @param nearest where none does: the change after which the item weighs least, if that is less
   *     than now; else null
   * @param nearestScore the score of the item then
   * @param complete whether there was time to try out everything
   */
  public record Found(
      Item item, List<Remedy> remedies, Remedy nearest, double nearestScore, boolean complete) {}

  private final Checklist base;
  private final Trials trials;
  private final Item item;
  private final String key;
  private final Changeable changeable;
  private final Map<String, Double> before;
  private final Set<String> notWorkedOut;
  private final Double inTimeNow;

  private Remedies(Checklist base, Trials trials, Item item) {
    this.base = base;
    this.trials = trials;
    this.item = item;
    this.key = Trials.key(item);
    this.changeable = new Changeable(base.file());
    this.before = Trials.scores(base);
    this.notWorkedOut = notWorkedOut(base);
    this.inTimeNow = inTime(base);
  }

  /**
   * Looks for what would clear an item.
   *
   * @param base the checklist it stands on
   * @param rules the rules it was checked by
   * @param item one of its items
   * @param milliseconds when to stop looking
   */
  public static Found of(Checklist base, KnowledgeBase rules, Item item, long milliseconds) {
    try (Trials trials = new Trials(base.file(), rules, milliseconds)) {
      return new Remedies(base, trials, item).run();
    }
  }

  /** An answer that was tried out, and the checklist that came of it; null if it cannot be so. */
  private record Run(Object value, Checklist checklist) {}

  /** All values of one answer. */
  private record Tried(Changeable.Option option, List<Run> runs, List<Remedy> remedies) {}

  private Found run() {
    List<Changeable.Option> options = changeable.options(item);
    List<Callable<Tried>> work = new ArrayList<>();
    options.forEach(option -> work.add(() -> tryOut(option)));
    List<Tried> tried = trials.all(work);
    List<Remedy> found = new ArrayList<>();
    tried.stream().filter(Objects::nonNull).forEach(t -> found.addAll(t.remedies()));
    boolean complete = tried.stream().noneMatch(Objects::isNull);
    if (found.stream().noneMatch(Remedy::worthIt)) {
      List<Remedy> pairs = trials.all(pairs(tried));
      pairs.stream().filter(Objects::nonNull).forEach(found::add);
      complete &= !trials.late();
    }
    found.sort(
        Comparator.comparing((Remedy r) -> !r.worthIt())
            .thenComparing(r -> !isOwn(r))
            .thenComparing(BEST_FIRST));
    Run nearest = null;
    Changeable.Option by = null;
    for (Tried t : tried) {
      for (Run run : t == null ? List.<Run>of() : t.runs()) {
        double score = score(run);
        if (score > 0
            && score < (nearest == null ? before.get(key) - 1 : score(nearest))
            && sum(single(t.option(), run).added()) < before.get(key) - score) {
          nearest = run;
          by = t.option();
        }
      }
    }
    return new Found(
        item,
        List.copyOf(found),
        nearest == null
            ? null
            : remedy(
                List.of(change(by, nearest.value(), Remedy.Bound.EXACTLY, null, List.of())),
                nearest.checklist()),
        nearest == null ? 0 : score(nearest),
        complete);
  }

  private static final Comparator<Remedy> BEST_FIRST =
      Comparator.comparing((Remedy r) -> !r.worthIt())
          .thenComparing(r -> r.changes().stream().anyMatch(c -> !c.canChange()))
          .thenComparingInt(r -> r.changes().size())
          .thenComparingInt(r -> r.added().size() + r.cleared().size())
          .thenComparingDouble(r -> sum(r.added()) - sum(r.cleared()));

  /** The values of one answer in their order; null if the time is up before the last. */
  private Tried tryOut(Changeable.Option option) {
    List<Run> runs = new ArrayList<>();
    for (Object value : option.values()) {
      if (trials.late()) {
        return null;
      }
      run(option, value).ifPresent(runs::add);
    }
    return new Tried(
        option, runs, option.ordered() ? ordered(option, runs, List.of()) : chosen(option, runs));
  }

  private Optional<Run> run(Changeable.Option option, Object value) {
    return trials.with(changeable.with(option.question(), value)).map(c -> new Run(value, c));
  }

  private double score(Run run) {
    return Trials.scores(run.checklist()).getOrDefault(key, 0.0);
  }

  /**
   * Whether the item is gone, and not for the reason that something cannot be worked out any more.
   */
  private boolean clears(Checklist checklist) {
    return !Trials.scores(checklist).containsKey(key)
        && notWorkedOut.containsAll(notWorkedOut(checklist));
  }

  private static Set<String> notWorkedOut(Checklist checklist) {
    return checklist.outlooks().stream()
        .filter(NotWorkedOut.class::isInstance)
        .map(NotWorkedOut.class::cast)
        .map(n -> n.figure() + " " + n.about())
        .collect(Collectors.toSet());
  }

  // ------------------------------------------------------------------ choices

  /** Of choices that clear it, the best, and with it the others that are worth it. */
  private List<Remedy> chosen(Changeable.Option option, List<Run> runs) {
    List<Run> clearing = runs.stream().filter(r -> clears(r.checklist())).toList();
    if (clearing.isEmpty()) {
      return List.of();
    }
    if (option.now() == null && clearing.size() == runs.size()) {
      Run any = best(option, clearing);
      return List.of(
          remedy(
              List.of(change(option, any.value(), Remedy.Bound.ANY, null, List.of())),
              any.checklist()));
    }
    Run best = best(option, clearing);
    boolean worthIt = single(option, best).worthIt();
    List<Object> orElse =
        clearing.stream()
            .filter(r -> !r.value().equals(best.value()) && single(option, r).worthIt() == worthIt)
            .map(Run::value)
            .toList();
    return List.of(
        remedy(
            List.of(change(option, best.value(), Remedy.Bound.EXACTLY, null, orElse)),
            best.checklist()));
  }

  private Run best(Changeable.Option option, List<Run> runs) {
    return runs.stream()
        .min(Comparator.comparing(run -> single(option, run), BEST_FIRST))
        .orElseThrow();
  }

  private Remedy single(Changeable.Option option, Run run) {
    return remedy(
        List.of(change(option, run.value(), Remedy.Bound.EXACTLY, null, List.of())),
        run.checklist());
  }

  // ------------------------------------------------------------------ sizes, counts and days

  /**
   * The smallest change up and down that clears it. The values that were tried part the scale into
   * stretches where it is cleared and others; the end of a stretch is found by halving.
   *
   * @param others changes that are made as well
   */
  private List<Remedy> ordered(
      Changeable.Option option, List<Run> runs, List<Remedy.Change> others) {
    Scale scale = Scale.of(option, base.file().setup().units());
    List<Run> sorted =
        runs.stream().sorted(Comparator.comparingDouble(r -> scale.number(r.value()))).toList();
    double now = option.now() == null ? Double.NaN : scale.number(option.now());
    List<Remedy> remedies = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i++) {
      if (!clears(sorted.get(i).checklist())) {
        continue;
      }
      int first = i;
      while (i + 1 < sorted.size()
          && clears(sorted.get(i + 1).checklist())
          && !between(scale.number(sorted.get(i).value()), now, sorted.get(i + 1), scale)) {
        i++;
      }
      stretch(option, scale, sorted, first, i, now, others).ifPresent(remedies::add);
    }
    return nearestToNow(remedies, scale, now);
  }

  private static boolean between(double from, double now, Run next, Scale scale) {
    return from < now && now < scale.number(next.value());
  }

  /** One stretch of values that clear it, from {@code first} to {@code last}. */
  private Optional<Remedy> stretch(
      Changeable.Option option,
      Scale scale,
      List<Run> runs,
      int first,
      int last,
      double now,
      List<Remedy.Change> others) {
    double low = scale.number(runs.get(first).value());
    double high = scale.number(runs.get(last).value());
    double below = first == 0 ? Double.NaN : scale.number(runs.get(first - 1).value());
    double above = last == runs.size() - 1 ? Double.NaN : scale.number(runs.get(last + 1).value());
    // what is there does not clear it, so it bounds the stretch beside it
    if (now < low && !(below > now)) {
      below = now;
    }
    if (now > high && !(above < now)) {
      above = now;
    }
    boolean openBelow = Double.isNaN(below);
    boolean openAbove = Double.isNaN(above);
    if (openBelow && openAbove) {
      Run some = runs.get((first + last) / 2);
      return finish(option, some.value(), Remedy.Bound.ANY, null, others);
    }
    Object from = openBelow ? null : edge(option, scale, below, low, others);
    Object to = openAbove ? null : edge(option, scale, above, high, others);
    if (openAbove) {
      return finish(option, from, Remedy.Bound.AT_LEAST, null, others);
    }
    if (openBelow) {
      return finish(option, to, Remedy.Bound.AT_MOST, null, others);
    }
    // the end nearer to what is there is the smaller change
    boolean fromBelow = Double.isNaN(now) || now < low;
    Object near = fromBelow ? from : to;
    Object far = fromBelow ? to : from;
    return near.equals(far)
        ? finish(option, near, Remedy.Bound.EXACTLY, null, others)
        : finish(option, near, Remedy.Bound.BETWEEN, far, others);
  }

  /**
   * The last value that clears it between one that does and one that does not, rounded to what can
   * be built, away from the one that does not.
   */
  private Object edge(
      Changeable.Option option,
      Scale scale,
      double not,
      double clearing,
      List<Remedy.Change> others) {
    double bad = not;
    double good = clearing;
    while (scale.goOn(bad, good) && !trials.late()) {
      double middle = scale.middle(bad, good);
      if (tried(option, scale.value(middle), others).map(this::clears).orElse(false)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    Object rounded = scale.value(scale.round(good, good > bad, clearing));
    boolean holds = tried(option, rounded, others).map(this::clears).orElse(false);
    return holds ? rounded : scale.value(good);
  }

  private Optional<Checklist> tried(
      Changeable.Option option, Object value, List<Remedy.Change> others) {
    Map<String, Object> answers = new LinkedHashMap<>();
    others.forEach(other -> answers.putAll(other.answers()));
    answers.putAll(changeable.with(option.question(), value));
    return trials.with(answers);
  }

  private Optional<Remedy> finish(
      Changeable.Option option,
      Object value,
      Remedy.Bound bound,
      Object to,
      List<Remedy.Change> others) {
    List<Remedy.Change> changes = new ArrayList<>(others);
    changes.add(change(option, value, bound, to, List.of()));
    return tried(option, value, others)
        .filter(this::clears)
        .map(checklist -> remedy(changes, checklist));
  }

  /** Of the stretches on each side of what is there only the nearer; all where nothing is. */
  private static List<Remedy> nearestToNow(List<Remedy> remedies, Scale scale, double now) {
    if (Double.isNaN(now)) {
      return remedies;
    }
    Remedy below = null;
    Remedy above = null;
    for (Remedy remedy : remedies) {
      Remedy.Change change = remedy.changes().get(remedy.changes().size() - 1);
      if (scale.number(change.answer()) < now) {
        below = remedy;
      } else if (above == null) {
        above = remedy;
      }
    }
    List<Remedy> nearest = new ArrayList<>();
    Optional.ofNullable(below).ifPresent(nearest::add);
    Optional.ofNullable(above).ifPresent(nearest::add);
    return nearest;
  }

  // ------------------------------------------------------------------ two at once

  /** Two answers at once, of those that the item rests on or its rules read. */
  private List<Callable<Remedy>> pairs(List<Tried> tried) {
    Set<String> read = read();
    List<Tried> telling =
        tried.stream()
            .filter(Objects::nonNull)
            .filter(t -> t.option().canChange())
            .filter(
                t ->
                    read.contains(t.option().question().question())
                        || item.because().stream()
                            .anyMatch(b -> b.path().equals(t.option().question().path())))
            .limit(MOST_FOR_PAIRS)
            .toList();
    List<Callable<Remedy>> pairs = new ArrayList<>();
    for (int i = 0; i < telling.size(); i++) {
      for (Tried other : telling.subList(i + 1, telling.size())) {
        Tried one = telling.get(i);
        pairs.add(() -> together(one.option(), other.option()));
      }
    }
    return pairs;
  }

  /** Whether it changes what the item is called after: of {@code sun.shade} the shade. */
  private boolean isOwn(Remedy remedy) {
    List<String> called = List.of(item.id().split("[.-]"));
    return remedy.changes().stream()
        .flatMap(change -> Arrays.stream(change.question().question().split("\\.")))
        .anyMatch(called::contains);
  }

  /** The keys of the questions that the item's rules look at, themselves or through figures. */
  private Set<String> read() {
    Set<String> keys = new HashSet<>();
    for (String name : item.through()) {
      RuleInfo rule = Rulebook.rules().get(name);
      for (RuleInfo.Reads reads : rule == null ? List.<RuleInfo.Reads>of() : rule.reads()) {
        keys.addAll(reads.questions());
        for (Outlook outlook : base.outlooks()) {
          if (outlook.getClass().getSimpleName().equals(reads.type())) {
            outlook.grounds().forEach(path -> keys.add(Question.keyOf(path)));
          }
        }
      }
    }
    return keys;
  }

  /** The best of two answers changed together; null if none clears it, or either does so alone. */
  private Remedy together(Changeable.Option one, Changeable.Option other) {
    Remedy best = null;
    for (Object a : spread(one.values())) {
      for (Object b : spread(other.values())) {
        if (trials.late()) {
          return best;
        }
        Map<String, Object> answers = new LinkedHashMap<>(changeable.with(one.question(), a));
        answers.putAll(changeable.with(other.question(), b));
        Checklist both = trials.with(answers).filter(this::clears).orElse(null);
        if (both == null
            || run(one, a).map(r -> clears(r.checklist())).orElse(false)
            || run(other, b).map(r -> clears(r.checklist())).orElse(false)) {
          continue;
        }
        Remedy remedy =
            remedy(
                List.of(
                    change(one, a, Remedy.Bound.EXACTLY, null, List.of()),
                    change(other, b, Remedy.Bound.EXACTLY, null, List.of())),
                both);
        if (best == null || BEST_FIRST.compare(remedy, best) < 0) {
          best = remedy;
        }
      }
    }
    return best;
  }

  private static List<Object> spread(List<Object> all) {
    int most = 5;
    if (all.size() <= most) {
      return all;
    }
    List<Object> some = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      some.add(all.get(i * (all.size() - 1) / (most - 1)));
    }
    return some;
  }

  // ------------------------------------------------------------------ what it does besides

  private Remedy.Change change(
      Changeable.Option option, Object value, Remedy.Bound bound, Object to, List<Object> orElse) {
    return new Remedy.Change(
        option.question(),
        changeable.said(option.question().path()),
        changeable.with(option.question(), value),
        bound,
        to,
        orElse,
        option.canChange());
  }

  private Remedy remedy(List<Remedy.Change> changes, Checklist after) {
    Set<String> then = Trials.scores(after).keySet();
    List<Item> added =
        after.items().stream().filter(i -> !before.containsKey(Trials.key(i))).toList();
    List<Item> cleared =
        base.items().stream()
            .filter(i -> !then.contains(Trials.key(i)) && !Trials.key(i).equals(key))
            .toList();
    boolean gone = !then.contains(key);
    double gain = sum(cleared) + (gone ? item.rank().score() : 0);
    Double inTime = inTime(after);
    boolean worthIt =
        sum(added) < gain
            && added.stream().allMatch(i -> i.rank().score() < item.rank().score())
            && (inTime == null || inTimeNow == null || inTime > inTimeNow);
    return new Remedy(changes, added, cleared, worthIt, inTime);
  }

  private static double sum(List<Item> items) {
    return items.stream().mapToDouble(i -> i.rank().score()).sum();
  }

  private Double inTime(Checklist after) {
    boolean aboutIt =
        item.through().stream()
            .map(Rulebook.rules()::get)
            .filter(Objects::nonNull)
            .anyMatch(r -> r.reads().stream().anyMatch(p -> p.type().equals("Deadline")));
    return after.outlooks().stream()
        .filter(o -> aboutIt && o instanceof Deadline)
        .map(Deadline.class::cast)
        .filter(d -> d.pigs().equals(item.advice().about()))
        .findFirst()
        .map(d -> 1 - d.chance())
        .orElse(null);
  }
}
