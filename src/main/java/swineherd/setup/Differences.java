package swineherd.setup;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;

/**
 * How two setups differ, and every setup between them. Pens and groups are the same if they have
 * the same name, signs and entries of the diary if they say the same, wherever they stand.
 *
 * <pre>{@code
 * Differences differences = Differences.between(march, may);
 * SetupFile onlyLater = differences.with(differences.time());
 * }</pre>
 */
public final class Differences {
  /** The day of the check; it passes by itself. */
  private static final String TIME = "checkOn";

  /**
   * One difference: an answer, or a whole pen, group, sign or entry.
   *
   * @param path where it stands in the later setup; in the earlier one if it is gone
   * @param label two or three words for it
   * @param before what was said; null if nothing was
   * @param after what is said now; null if nothing is
   */
  public record Difference(String path, String label, String before, String after) {
    /** Whether it is nothing but the day of the check. */
    public boolean isTime() {
      return path.equals(TIME);
    }
  }

  /** Answers by the path with names in place of numbers: {@code pens{hillside}.area}. */
  private record Side(Map<String, Object> values, Map<String, Answer> answers) {}

  private final SetupFile later;
  private final Side before;
  private final Side after;

  /** The named paths that each difference is made of. */
  private final Map<Difference, Set<String>> parts = new LinkedHashMap<>();

  private Differences(SetupFile earlier, SetupFile later) {
    this.later = later;
    before = side(earlier);
    after = side(later);
    Map<String, Set<String>> units = new LinkedHashMap<>();
    Set<String> all = new LinkedHashSet<>(before.values().keySet());
    all.addAll(after.values().keySet());
    for (String path : all) {
      if (!Objects.equals(before.values().get(path), after.values().get(path))) {
        units.computeIfAbsent(unit(path), u -> new LinkedHashSet<>()).add(path);
      }
    }
    units.forEach((unit, paths) -> parts.put(difference(unit, paths), paths));
  }

  /** All differences between two setups, in the order of the earlier, then the later one. */
  public static Differences between(SetupFile earlier, SetupFile later) {
    return new Differences(earlier, later);
  }

  /** Every difference, the passing of time first. */
  public List<Difference> all() {
    List<Difference> all = new ArrayList<>(parts.keySet());
    all.sort((a, b) -> Boolean.compare(b.isTime(), a.isTime()));
    return List.copyOf(all);
  }

  /**
   * The earlier setup with some of the differences.
   *
   * @throws BadSetupException if the answers do not go together so
   */
  public SetupFile with(Collection<Difference> some) {
    Set<String> changed = new LinkedHashSet<>();
    some.forEach(difference -> changed.addAll(parts.get(difference)));
    Map<String, Object> values = new LinkedHashMap<>();
    Map<String, Answer> answers = new HashMap<>();
    // in the order of the earlier one, and at the end in that of the later
    boolean end = some.size() == parts.size();
    for (Side side : end ? List.of(after, before) : List.of(before, after)) {
      for (String path : side.values().keySet()) {
        Side from = changed.contains(path) ? after : before;
        if (from.values().containsKey(path)) {
          values.put(path, from.values().get(path));
          answers.put(path, from.answers().get(path));
        }
      }
    }
    return made(values, answers);
  }

  private SetupFile made(Map<String, Object> values, Map<String, Answer> answers) {
    Map<String, Object> tree = new LinkedHashMap<>();
    Map<String, Answer> placed = new LinkedHashMap<>();
    Map<String, Integer> places = new HashMap<>();
    Map<String, Integer> sizes = new HashMap<>();
    values.forEach(
        (path, value) -> {
          String at = path;
          int open = path.indexOf('{');
          if (open > 0) {
            int close = path.lastIndexOf('}');
            String list = path.substring(0, open);
            int index =
                places.computeIfAbsent(
                    path.substring(0, close), m -> sizes.merge(list, 1, Integer::sum) - 1);
            at = list + "[" + index + "]" + path.substring(close + 1);
          }
          put(tree, at, value);
          Answer answer = answers.get(path);
          if (answer != null) {
            placed.put(
                at,
                new Answer(
                    at,
                    answer.label(),
                    answer.said(),
                    answer.key(),
                    answer.line(),
                    answer.column()));
          }
        });
    return SetupReader.made(later, tree, placed);
  }

  private static void put(Map<String, Object> tree, String path, Object value) {
    List<Object> steps = new ArrayList<>();
    for (String step : path.split("[.\\[]")) {
      steps.add(step.endsWith("]") ? (Object) Integer.valueOf(step.replace("]", "")) : step);
    }
    Meaning.put(tree, steps, value);
  }

  /** A member that only one side has is one difference; so is every sign and entry. */
  private String unit(String path) {
    int close = path.lastIndexOf('}');
    if (close < 0) {
      return path;
    }
    String member = path.substring(0, close + 1);
    boolean inBoth =
        before.values().containsKey(member + ".name")
            && after.values().containsKey(member + ".name");
    return inBoth ? path : member;
  }

  private Difference difference(String unit, Set<String> paths) {
    String first = paths.iterator().next();
    Answer answer = answer(after, first) == null ? answer(before, first) : answer(after, first);
    if (paths.size() == 1 && unit.equals(first)) {
      String path = answer == null ? unit : answer.path();
      Question question = Rulebook.questions().get(Question.keyOf(path));
      String label = question == null ? path : question.label();
      return new Difference(path, label, said(before, first), said(after, first));
    }
    String list = unit.substring(0, unit.indexOf('{'));
    String path =
        answer == null ? list : answer.path().substring(0, answer.path().indexOf(']') + 1);
    String label =
        switch (list) {
          case "pens" -> "pen";
          case "pigs" -> "pigs";
          case "signs" -> "sign";
          default -> list;
        };
    return new Difference(path, label, whole(before, paths), whole(after, paths));
  }

  private static Answer answer(Side side, String path) {
    return side.answers().get(path);
  }

  private static String said(Side side, String path) {
    Object value = side.values().get(path);
    Answer answer = answer(side, path);
    return value == null ? null : answer == null ? value.toString() : answer.said();
  }

  private static String whole(Side side, Set<String> paths) {
    String all =
        paths.stream()
            .map(path -> said(side, path))
            .filter(Objects::nonNull)
            .collect(Collectors.joining(", "));
    return all.isEmpty() ? null : all;
  }

  private static Side side(SetupFile file) {
    Map<String, Object> values = new LinkedHashMap<>();
    Map<String, Answer> answers = new HashMap<>();
    Map<String, String> names = new HashMap<>();
    file.tree().forEach((name, value) -> flatten(name, name, value, values, names));
    names.forEach(
        (named, path) -> {
          if (file.answers().containsKey(path)) {
            answers.put(named, file.answers().get(path));
          }
        });
    return new Side(values, answers);
  }

  /**
   * @param named the path with names
   * @param path the path with numbers
   */
  private static void flatten(
      String named,
      String path,
      Object value,
      Map<String, Object> values,
      Map<String, String> paths) {
    if (value instanceof Map<?, ?> fields) {
      fields.forEach(
          (name, inner) -> flatten(named + "." + name, path + "." + name, inner, values, paths));
    } else if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Map) {
      Map<String, Integer> seen = new HashMap<>();
      for (int i = 0; i < list.size(); i++) {
        Map<?, ?> member = (Map<?, ?>) list.get(i);
        Object name = path.equals("pens") || path.equals("pigs") ? member.get("name") : member;
        String key = name.toString().replace("}", ")");
        int again = seen.merge(key, 1, Integer::sum);
        String place = named + "{" + key + (again == 1 ? "" : "#" + again) + "}";
        flatten(place, path + "[" + i + "]", member, values, paths);
      }
    } else {
      values.put(named, value);
      paths.put(named, path);
    }
  }
}
