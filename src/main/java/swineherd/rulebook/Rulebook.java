package swineherd.rulebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the build made of {@code rules/}: the same content, checked, in a form that loads in
 * milliseconds. {@link RulebookCompiler} writes it, everything else reads it here.
 */
public final class Rulebook {
  private Rulebook() {}

  static List<Map<String, String>> table(String name) {
    List<Map<String, String>> rows = new ArrayList<>();
    for (Object row : (List<?>) tree("tables/" + name + ".json")) {
      Map<String, String> cells = new LinkedHashMap<>();
      ((Map<?, ?>) row).forEach((column, cell) -> cells.put((String) column, (String) cell));
      rows.add(cells);
    }
    return rows;
  }

  /** Every published source by its key. */
  public static Map<String, Source> sources() {
    return Sources.BY_KEY;
  }

  /** Every question by its key ({@link Question#key()}), in the order in which they are asked. */
  public static Map<String, Question> questions() {
    return Questions.BY_KEY;
  }

  /** What the build knows of each rule, by its name. */
  public static Map<String, RuleInfo> rules() {
    return Rules.BY_ID;
  }

  /** The names of the classes that hold the compiled rules. */
  public static List<String> models() {
    return ((List<?>) tree("models.json")).stream().map(String.class::cast).toList();
  }

  /**
   * The card of that id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static Card card(String id) {
    String topic = id.substring(0, Math.max(0, id.indexOf('.')));
    Card card = Cards.BY_TOPIC.computeIfAbsent(topic, Cards::read).get(id);
    if (card == null) {
      throw new IllegalArgumentException("there is no card " + id);
    }
    return card;
  }

  /** Every card of every topic, by its id. */
  public static Map<String, Card> cards() {
    Map<String, Card> all = new TreeMap<>();
    rules().values().stream()
        .map(RuleInfo::topic)
        .distinct()
        .forEach(topic -> all.putAll(Cards.BY_TOPIC.computeIfAbsent(topic, Cards::read)));
    return all;
  }

  /** The example of a rule: a setup where it fires and changes that silence it. */
  public static Optional<RuleExample> example(RuleInfo rule) {
    Map<?, ?> file;
    try {
      file = (Map<?, ?>) tree("examples/" + rule.topic() + ".json");
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    for (Object example : (List<?>) file.get("examples")) {
      Map<?, ?> fields = (Map<?, ?>) example;
      if (rule.id().equals(fields.get("rule")) && fields.get("silent") != null) {
        return Optional.of(
            new RuleExample(
                file.get("base"), fields.get("fires"), (Map<?, ?>) fields.get("silent")));
      }
    }
    return Optional.empty();
  }

  private static final class Rules {
    static final Map<String, RuleInfo> BY_ID = all(RuleInfo.class, "rules.json");
  }

  private static final class Cards {
    static final Map<String, Map<String, Card>> BY_TOPIC = new ConcurrentHashMap<>();

    static Map<String, Card> read(String topic) {
      return all(Card.class, "cards/" + topic + ".json");
    }
  }

  private static final class Questions {
    static final Map<String, Question> BY_KEY = all(Question.class, "questions.json");
  }

  private static final class Sources {
    static final Map<String, Source> BY_KEY = all(Source.class, "sources.json");
  }

  private static <T> Map<String, T> all(Class<T> type, String path) {
    return RecordReader.readAll(type, tree(path));
  }

  private static Object tree(String path) {
    try (InputStream in = Rulebook.class.getResourceAsStream("/rulebook/" + path)) {
      if (in == null) {
        throw new IllegalArgumentException("the rulebook has no " + path);
      }
      return RecordReader.tree(in);
    } catch (IOException e) {
      throw new UncheckedIOException("the rulebook's " + path + " cannot be read", e);
    }
  }
}
