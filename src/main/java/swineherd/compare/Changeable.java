package swineherd.compare;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import swineherd.advice.Item;
import swineherd.advice.Unanswered;
import swineherd.advice.UnansweredQuestions;
import swineherd.advice.Value;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Answer;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;

/** Which answers of a setup a keeper could make others, and what they might become. */
final class Changeable {
  /** Sizes tried, as multiples of what is there; each is halved down afterwards. */
  private static final double[] TIMES = {0.25, 0.5, 0.8, 1.25, 2, 4};

  private static final int[] DAYS = {-180, -90, -45, -14, 14, 45, 90, 180};

  private final SetupFile file;

  Changeable(SetupFile file) {
    this.file = file;
  }

  /**
   * One answer and what it might become.
   *
   * @param question the question and where its answer stands
   * @param now the answer as it is; null if there is none
   * @param values what might be said instead, in their order where they have one
   * @param canChange whether the keeper can make it so
   */
  record Option(Unanswered question, Object now, List<Object> values, boolean canChange) {
    Question.Kind kind() {
      return Rulebook.questions().get(question.question()).kind();
    }

    boolean ordered() {
      return !Rulebook.questions().get(question.question()).list()
          && (kind() == Question.Kind.DATE
              || kind() == Question.Kind.COUNT
              || kind().dimension() != null);
    }
  }

  /** Every answer that could clear an item about these pigs or this pen. */
  List<Option> options(Item item) {
    List<Option> options = new ArrayList<>();
    for (Unanswered question : UnansweredQuestions.all(file)) {
      if (isNear(question.path(), item.advice().about())) {
        boolean canChange = canChange(question);
        boolean open = !file.answers().containsKey(question.path());
        if (canChange || (open && rests(item, question.path()))) {
          Object now = open ? null : valueAt(question.path());
          List<Object> values = values(question, now, item);
          if (!values.isEmpty()) {
            options.add(new Option(question, now, values, canChange));
          }
        }
      }
    }
    return options;
  }

  private static boolean rests(Item item, String path) {
    return item.because().stream().anyMatch(because -> because.path().equals(path));
  }

  /** The answers that go along with one that is changed. */
  Map<String, Object> with(Unanswered question, Object value) {
    Map<String, Object> answers = new LinkedHashMap<>();
    answers.put(question.path(), value);
    String section = question.path().substring(0, question.path().lastIndexOf('.') + 1);
    switch (question.question()) {
      case "pigs.arrives" -> {
        // other pigs of the same age, not the same pigs older
        Group group = group(question.path());
        if (group.born() != null && group.arrives() != null) {
          long later = ChronoUnit.DAYS.between(group.arrives(), LocalDate.parse((String) value));
          answers.put(section + "born", group.born().plusDays(later).toString());
        }
      }
      case "pens.fence.wireHeights" -> {
        int heights = ((List<?>) value).size();
        if (!Objects.equals(pen(question.path()).fence().strands(), heights)) {
          answers.put(section + "strands", heights);
        }
      }
      default -> {}
    }
    return answers;
  }

  private boolean canChange(Unanswered question) {
    return switch (Rulebook.questions().get(question.question()).change()) {
      case ALWAYS -> true;
      case NEVER -> false;
      case BEFORE_ARRIVAL -> {
        Group group = group(question.path());
        yield group.arrives() == null
            ? file.setup().diary().stream().noneMatch(e -> group.name().equals(e.pigs()))
            : group.arrives().isAfter(file.setup().checkOn());
      }
    };
  }

  /**
   * Whether an answer is about the whole, about that pen and its pigs, or those pigs and theirs.
   */
  private boolean isNear(String path, String about) {
    Setup setup = file.setup();
    boolean named = setup.pen(about).isPresent() || setup.group(about).isPresent();
    if (!named) {
      return true;
    }
    String pens = setup.group(about).map(Group::pen).orElse(about);
    if (path.startsWith("pens[")) {
      return pen(path).name().equals(pens);
    }
    if (path.startsWith("pigs[")) {
      return group(path).name().equals(about) || Objects.equals(group(path).pen(), pens);
    }
    return true;
  }

  private List<Object> values(Unanswered unanswered, Object now, Item item) {
    Question question = Rulebook.questions().get(unanswered.question());
    Set<Object> values =
        new LinkedHashSet<>(
            switch (question.kind()) {
              case YES_NO -> List.of(true, false);
              case CHOICE -> question.list() ? lists(question, now) : keys(question);
              case DATE -> days(now);
              case COUNT -> counts(question, now, item);
              case TEXT -> unanswered.question().equals("pigs.pen") ? pens() : List.of();
              default ->
                  question.kind().dimension() == null
                      ? now == null ? PlausibleAnswers.to(unanswered, file) : List.of()
                      : question.list() ? advised(question, item) : amounts(question, now, item);
            });
    values.remove(now);
    return List.copyOf(values);
  }

  private static List<Object> keys(Question question) {
    return new ArrayList<>(question.choices().keySet());
  }

  /** Of several answers each is left out in turn, and all of them. */
  private static List<Object> lists(Question question, Object now) {
    List<Object> lists = new ArrayList<>();
    List<String> none =
        question.choices().keySet().stream().filter(k -> k.startsWith("none")).toList();
    if (now instanceof List<?> several) {
      for (Object one : several) {
        List<Object> others = new ArrayList<>(several);
        others.remove(one);
        lists.add(others.isEmpty() ? none : others);
      }
    }
    lists.add(none);
    return lists;
  }

  /** Days to come: what is past cannot be decided. */
  private List<Object> days(Object now) {
    LocalDate from = now == null ? file.setup().checkOn() : LocalDate.parse((String) now);
    List<Object> days = new ArrayList<>();
    for (int ahead : DAYS) {
      LocalDate day = from.plusDays(ahead);
      if (!day.isBefore(file.setup().checkOn())) {
        days.add(day.toString());
      }
    }
    return days;
  }

  private List<Object> pens() {
    return new ArrayList<>(file.setup().pens().stream().map(Pen::name).toList());
  }

  private static List<Object> counts(Question question, Object now, Item item) {
    Set<Integer> counts = new TreeSet<>();
    for (int i = question.range().get(0).intValue(); i <= 8; i++) {
      counts.add(i);
    }
    if (now instanceof Number number) {
      for (double times : TIMES) {
        counts.add((int) Math.round(number.intValue() * times));
      }
    }
    for (Value value : item.advice().values().values()) {
      if (value instanceof Value.Count count) {
        counts.add(count.count());
      }
    }
    counts.removeIf(c -> c < question.range().get(0) || c > question.range().get(1));
    return new ArrayList<>(counts);
  }

  /** Sizes about what is there, what the item itself advises, and what is usual. */
  private static List<Object> amounts(Question question, Object now, Item item) {
    Set<Double> amounts = new TreeSet<>();
    List<Double> usual = question.usual() == null ? question.range() : question.usual();
    double least = Math.max(usual.get(0), usual.get(1) / 1000);
    for (int i = 0; i <= 3; i++) {
      amounts.add(least * Math.pow(usual.get(1) / least, i / 3.0));
    }
    if (now instanceof Number number) {
      for (double times : TIMES) {
        amounts.add(number.doubleValue() * times);
      }
    }
    for (Value value : item.advice().values().values()) {
      if (value instanceof Value.Amount amount
          && amount.dimension() == question.kind().dimension()) {
        amounts.add(amount.band().low());
        amounts.add(amount.band().likely());
        amounts.add(amount.band().high());
      }
    }
    amounts.removeIf(a -> a < question.range().get(0) || a > question.range().get(1));
    return new ArrayList<>(amounts);
  }

  /** Of several sizes, only those that the item itself advises. */
  private static List<Object> advised(Question question, Item item) {
    List<Object> lists = new ArrayList<>();
    for (Value value : item.advice().values().values()) {
      if (value instanceof Value.Amounts amounts
          && amounts.dimension() == question.kind().dimension()) {
        lists.add(amounts.amounts());
      }
    }
    return lists;
  }

  private Group group(String path) {
    return file.setup().pigs().get(index(path));
  }

  private Pen pen(String path) {
    return file.setup().pens().get(index(path));
  }

  private static int index(String path) {
    return Integer.parseInt(path.substring(path.indexOf('[') + 1, path.indexOf(']')));
  }

  /** The answer at a path, in SI units. */
  private Object valueAt(String path) {
    Object at = file.tree();
    for (String step : path.split("\\.")) {
      int open = step.indexOf('[');
      at = ((Map<?, ?>) at).get(open < 0 ? step : step.substring(0, open));
      if (open >= 0) {
        at = ((List<?>) at).get(index(step));
      }
    }
    return at;
  }

  /** What the keeper said there; null if nothing. */
  String said(String path) {
    Answer answer = file.answers().get(path);
    return answer == null ? null : answer.said();
  }
}
