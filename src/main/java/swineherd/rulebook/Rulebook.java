package swineherd.rulebook;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * What the build made of {@code rules/}: the same content, checked, in a form that loads in
 * milliseconds. {@link RulebookCompiler} writes it, everything else reads it here.
 */
public final class Rulebook {
  private static final ObjectMapper JSON = new ObjectMapper();

  private Rulebook() {}

  static List<Map<String, String>> table(String name) {
    return read("tables/" + name + ".json", new TypeReference<>() {});
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
    return read("models.json", new TypeReference<>() {});
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

  private static final class Rules {
    static final Map<String, RuleInfo> BY_ID = read("rules.json", new TypeReference<>() {});
  }

  private static final class Cards {
    static final Map<String, Map<String, Card>> BY_TOPIC = new ConcurrentHashMap<>();

    static Map<String, Card> read(String topic) {
      return Rulebook.read("cards/" + topic + ".json", new TypeReference<>() {});
    }
  }

  private static final class Questions {
    static final Map<String, Question> BY_KEY = read("questions.json", new TypeReference<>() {});
  }

  private static final class Sources {
    static final Map<String, Source> BY_KEY = read("sources.json", new TypeReference<>() {});
  }

  private static <T> T read(String path, TypeReference<T> type) {
    try (InputStream in = Rulebook.class.getResourceAsStream("/rulebook/" + path)) {
      if (in == null) {
        throw new IllegalArgumentException("the rulebook has no " + path);
      }
      return JSON.readValue(in, type);
    } catch (IOException e) {
      throw new UncheckedIOException("the rulebook's " + path + " cannot be read", e);
    }
  }
}
