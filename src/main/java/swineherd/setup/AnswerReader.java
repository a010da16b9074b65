package swineherd.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.text.similarity.LevenshteinDistance;
import swineherd.rulebook.Question;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Latitude;
import swineherd.units.Price;
import swineherd.units.Quantity;
import swineherd.units.UnreadableException;

/**
 * Reads the answers of a parsed file by the catalogue of questions: what is not in the catalogue is
 * a problem, what is gets its value in SI units.
 */
final class AnswerReader {
  static final Set<String> UNKNOWN =
      Set.of("", "unknown", "?", "don't know", "dont know", "not known", "null", "~");
  static final int LONGEST = 200;
  static final Set<String> YES = Set.of("yes", "y", "true", "on");
  static final Set<String> NO = Set.of("no", "n", "false", "off");

  private final Map<String, Question> questions;
  private final List<Problem> problems;
  private final List<Problem> unusual;
  private final Map<String, Answer> answers = new LinkedHashMap<>();

  AnswerReader(Map<String, Question> questions, List<Problem> problems, List<Problem> unusual) {
    this.questions = questions;
    this.problems = problems;
    this.unusual = unusual;
  }

  Map<String, Answer> answers() {
    return answers;
  }

  /** The answers as a tree of plain values: SI numbers, ISO dates, keys of choices. */
  Map<String, Object> read(Node root) {
    if (!(root instanceof Node.Fields fields)) {
      problems.add(
          new Problem("", root.line(), root.column(), "a setup is a list of named answers", null));
      return new LinkedHashMap<>();
    }
    Map<String, Object> tree = fields("", "", fields);
    checkWhen();
    return tree;
  }

  private Map<String, Object> fields(String path, String key, Node.Fields fields) {
    Map<String, Object> out = new LinkedHashMap<>();
    fields
        .fields()
        .forEach(
            (name, field) -> {
              String innerPath = path.isEmpty() ? name : path + "." + name;
              String innerKey = key.isEmpty() ? name : key + "." + name;
              Question question = questions.get(innerKey);
              if (question != null) {
                Object value = answer(innerPath, question, field.value());
                if (value != null) {
                  out.put(name, value);
                }
              } else if (isSection(innerKey)) {
                Object value = section(innerPath, innerKey, field);
                if (value != null) {
                  out.put(name, value);
                }
              } else {
                problems.add(unknownKey(innerPath, key, name, field));
              }
            });
    return out;
  }

  private Object section(String path, String key, Node.Field field) {
    Node node = field.value();
    if (node instanceof Node.Scalar scalar && isUnknown(scalar.text())) {
      return null;
    }
    boolean list = isList(key);
    if (list && node instanceof Node.Items items) {
      List<Object> out = new ArrayList<>();
      for (Node item : items.items()) {
        String itemPath = path + "[" + out.size() + "]";
        if (item instanceof Node.Fields fields) {
          out.add(fields(itemPath, key, fields));
        } else {
          problems.add(
              new Problem(
                  itemPath, item.line(), item.column(), "is not a set of named answers", null));
          out.add(new LinkedHashMap<>());
        }
      }
      return out;
    }
    if (!list && node instanceof Node.Fields fields) {
      return fields(path, key, fields);
    }
    problems.add(
        new Problem(
            path,
            field.line(),
            field.column(),
            list ? "is a list, even for one" : "is a set of named answers, not a list or a word",
            list
                ? "begin each with \"- name: ...\""
                : "one of: " + String.join(", ", namesIn(key))));
    return null;
  }

  private Object answer(String path, Question question, Node node) {
    if (node instanceof Node.Items items && question.list()) {
      List<Object> out = new ArrayList<>();
      List<String> said = new ArrayList<>();
      for (Node item : items.items()) {
        Object value = single(path + "[" + out.size() + "]", question, item);
        if (value != null) {
          out.add(value);
          said.add(((Node.Scalar) item).text());
        }
      }
      remember(path, question, String.join(", ", said), out.toString(), node);
      return out;
    }
    Object value = single(path, question, node);
    if (value == null) {
      return null;
    }
    String key = value instanceof Boolean yes ? (yes ? "yes" : "no") : String.valueOf(value);
    remember(path, question, ((Node.Scalar) node).text(), key, node);
    return question.list() ? List.of(value) : value;
  }

  private void remember(String path, Question question, String said, String key, Node node) {
    answers.put(
        path, new Answer(path, question.label(), onOneLine(said), key, node.line(), node.column()));
  }

  /** The value of one answer; null where it is unknown or wrong. */
  private Object single(String path, Question question, Node node) {
    if (!(node instanceof Node.Scalar scalar)) {
      problems.add(
          new Problem(
              path, node.line(), node.column(), "takes one answer", "write it on the same line"));
      return null;
    }
    if (isUnknown(scalar.text())) {
      return null;
    }
    try {
      mustBeShort(scalar.text());
      return value(path, question, scalar);
    } catch (UnreadableException e) {
      problems.add(new Problem(path, node.line(), node.column(), e.getMessage(), e.accepted()));
      return null;
    }
  }

  private Object value(String path, Question question, Node.Scalar scalar) {
    String text = onOneLine(scalar.text());
    String lower = text.toLowerCase(Locale.ROOT);
    return switch (question.kind()) {
      case TEXT -> text;
      case YES_NO -> {
        if (!YES.contains(lower) && !NO.contains(lower)) {
          throw new UnreadableException("\"" + text + "\" is neither", "yes, no or unknown");
        }
        yield YES.contains(lower);
      }
      case CHOICE -> choice(question, text);
      case DATE -> Dates.parse(text).toString();
      case DAY_OF_YEAR -> Dates.parseDayOfYear(text).toString();
      case COUNT -> {
        double count = number(text);
        if (count != Math.rint(count)) {
          throw new UnreadableException(
              "\"" + text + "\" is not a whole number", "a whole number" + from(question));
        }
        check(path, question, scalar, count);
        yield (int) count;
      }
      case LATITUDE -> {
        double latitude = Latitude.parse(text);
        check(path, question, scalar, latitude);
        yield latitude;
      }
      case PRICE -> Price.parse(text);
      case PRICE_BY_WEIGHT -> Price.perKg(text);
      default -> {
        if (text.matches("[-+]?[\\d.,]+")) {
          throw new UnreadableException(
              "\"" + text + "\" has no unit",
              "write it like " + question.kind().dimension().example());
        }
        double quantity = Quantity.parse(text, question.kind().dimension());
        check(path, question, scalar, quantity);
        yield quantity;
      }
    };
  }

  /** Answers are quoted back to the keeper, so they must be such as can be shown in a line. */
  private static void mustBeShort(String text) {
    if (text.length() > LONGEST) {
      throw new UnreadableException(
          "is longer than " + LONGEST + " characters", "a shorter answer");
    }
    if (!text.chars().allMatch(Node::isText)) {
      throw new UnreadableException("holds a character that cannot be shown", "plain text");
    }
  }

  private static String onOneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  private static double number(String text) {
    try {
      double number = Double.parseDouble(text);
      if (Double.isFinite(number) && Math.abs(number) < 1e6) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw new UnreadableException("\"" + text + "\" is not a number", "a count, such as 3");
  }

  private static String choice(Question question, String text) {
    Optional<String> key = question.choice(text);
    if (key.isPresent()) {
      return key.get();
    }
    List<String> all = new ArrayList<>();
    question
        .choices()
        .forEach(
            (choice, words) -> {
              all.addAll(question.also().getOrDefault(choice, List.of()));
              all.add(choice);
              all.add(words);
            });
    String wanted = text.replace('_', '-').replaceAll("\\s+", " ");
    String near = nearest(wanted, all);
    String accepted =
        question.choices().size() <= 15
            ? "one of: " + String.join(", ", question.choices().keySet())
            : "one of " + question.choices().size() + " that the questions list";
    throw new UnreadableException(
        "\"" + text + "\" is not one of the answers",
        near == null ? accepted : "did you mean " + near + "? " + accepted);
  }

  private void check(String path, Question question, Node.Scalar scalar, double value) {
    List<Double> range = question.range();
    if (range != null && (value < range.get(0) || value > range.get(1))) {
      throw new UnreadableException(
          "\"" + scalar.text().strip() + "\" is not possible",
          "from " + limits(question, range) + " is");
    }
    List<Double> usual = question.usual();
    if (usual != null && (value < usual.get(0) || value > usual.get(1))) {
      unusual.add(
          new Problem(
              path,
              scalar.line(),
              scalar.column(),
              "\"" + scalar.text().strip() + "\" is unusual: is it right?",
              "usual is " + limits(question, usual)));
    }
  }

  private static String from(Question question) {
    return question.range() == null ? "" : " from " + limits(question, question.range());
  }

  private static String limits(Question question, List<Double> limits) {
    return limits(limits, question.kind().dimension());
  }

  /** Both limits in words, in US units too where those differ. */
  static String limits(List<Double> limits, Dimension dimension) {
    if (dimension == null) {
      return plain(limits.get(0)) + " to " + plain(limits.get(1));
    }
    String si = plain(limits.get(0)) + " to " + plain(limits.get(1)) + " " + dimension.base();
    String us = dimension.usSymbol();
    return us == null
        ? si
        : si
            + " ("
            + plain(dimension.fromBase(limits.get(0), us))
            + " to "
            + plain(dimension.fromBase(limits.get(1), us))
            + " "
            + us
            + ")";
  }

  private static String plain(double value) {
    if (value == Math.rint(value) || Math.abs(value) >= 100) {
      return String.valueOf(Math.round(value));
    }
    return String.valueOf(Math.round(value * 100) / 100.0);
  }

  /** An answer that another answer rules out is a contradiction the keeper should see. */
  private void checkWhen() {
    for (Answer answer : answers.values()) {
      Question question = questions.get(Question.keyOf(answer.path()));
      question
          .when()
          .forEach(
              (other, values) -> {
                String otherPath = beside(answer.path(), other);
                Answer said = answers.get(otherPath);
                if (said != null && !values.contains(said.key())) {
                  problems.add(
                      new Problem(
                          answer.path(),
                          answer.line(),
                          answer.column(),
                          "does not go with " + otherPath + ": " + said.key(),
                          "only with " + String.join(" or ", values)));
                }
              });
    }
  }

  /** The path of another question for the same pen or group. */
  static String beside(String path, String other) {
    int open = path.indexOf('[');
    int otherOpen = other.indexOf("[]");
    if (open < 0
        || otherOpen < 0
        || !path.substring(0, open).equals(other.substring(0, otherOpen))) {
      return other;
    }
    String index = path.substring(open, path.indexOf(']') + 1);
    return other.replace("[]", index);
  }

  private Problem unknownKey(String path, String key, String name, Node.Field field) {
    Set<String> names = namesIn(key);
    String near = nearest(name, names);
    return new Problem(
        path,
        field.line(),
        field.column(),
        "is not something that can be answered",
        near == null ? "one of: " + String.join(", ", names) : "did you mean " + near + "?");
  }

  static String nearest(String name, Iterable<String> names) {
    LevenshteinDistance distance = new LevenshteinDistance(Math.max(2, name.length() / 3));
    String best = null;
    int least = Integer.MAX_VALUE;
    for (String other : names) {
      int d = distance.apply(name.toLowerCase(Locale.ROOT), other.toLowerCase(Locale.ROOT));
      if (d >= 0 && d < least) {
        least = d;
        best = other;
      }
    }
    return best;
  }

  private boolean isSection(String key) {
    return questions.keySet().stream().anyMatch(k -> k.startsWith(key + "."));
  }

  private boolean isList(String key) {
    return questions.values().stream().anyMatch(q -> q.path().startsWith(key + "[]"));
  }

  /** The names that may stand under a section; the top of the file is the empty key. */
  private Set<String> namesIn(String key) {
    String prefix = key.isEmpty() ? "" : key + ".";
    Set<String> names = new TreeSet<>();
    for (String other : questions.keySet()) {
      if (other.startsWith(prefix)) {
        String rest = other.substring(prefix.length());
        int dot = rest.indexOf('.');
        names.add(dot < 0 ? rest : rest.substring(0, dot));
      }
    }
    return names;
  }

  static boolean isUnknown(String text) {
    return text == null || UNKNOWN.contains(text.strip().toLowerCase(Locale.ROOT));
  }
}
