package swineherd.setup;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import swineherd.rulebook.Question;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.Patterns;
import swineherd.units.UnitSystem;

/**
 * The catalogue of questions as a JSON Schema (2020-12), so that an editor can help with a setup
 * file: names, choices with their words, examples, what is wrong by its shape. It refuses nothing
 * that {@link SetupReader} reads; what must hold between answers, and limits of quantities, only
 * the reader knows.
 */
public final class SetupSchema {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final double MOST_MONEY = 1e6;

  private final ObjectNode defs = NODES.objectNode();

  private SetupSchema() {}

  /** The schema as text, ending in a line break. */
  public static String of(Map<String, Question> questions) {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
    try {
      return new ObjectMapper()
              .writer(printer)
              .writeValueAsString(new SetupSchema().root(questions))
          + "\n";
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException(e);
    }
  }

  private ObjectNode root(Map<String, Question> questions) {
    ObjectNode root = NODES.objectNode();
    root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    root.put("title", "A setup file of swineherd");
    root.put(
        "description",
        "What a keeper says about pigs and place. Every answer may be left out or unknown.");
    root.put("type", "object");
    root.set("properties", properties(new ArrayList<>(questions.values()), ""));
    root.put("additionalProperties", false);
    unknown();
    root.set("$defs", defs);
    return root;
  }

  /** The properties of one section; {@code prefix} is its path with a dot behind, or empty. */
  private ObjectNode properties(List<Question> questions, String prefix) {
    Map<String, List<Question>> byName = new LinkedHashMap<>();
    for (Question question : questions) {
      String name = question.path().substring(prefix.length()).split("\\.", 2)[0];
      byName.computeIfAbsent(name, n -> new ArrayList<>()).add(question);
    }
    ObjectNode properties = NODES.objectNode();
    byName.forEach(
        (name, inner) -> {
          String path = prefix + name;
          if (inner.get(0).path().equals(path)) {
            properties.set(name, answer(inner.get(0)));
          } else {
            properties.set(name.replace("[]", ""), section(inner, path));
          }
        });
    return properties;
  }

  /** A section is unknown as a whole where a word stands instead of it. */
  private ObjectNode section(List<Question> questions, String path) {
    boolean list = path.endsWith("[]");
    ObjectNode fields = NODES.objectNode();
    fields.set("type", types(list ? "object" : "object string null"));
    fields.set("properties", properties(questions, path + "."));
    fields.put("additionalProperties", false);
    if (!list) {
      return fields.put("pattern", unknownWords());
    }
    ObjectNode items = NODES.objectNode();
    items.set("type", types("array string null"));
    items.set("items", fields);
    return items.put("pattern", unknownWords());
  }

  private ObjectNode answer(Question question) {
    ObjectNode node = NODES.objectNode();
    node.put("title", question.label());
    node.put("description", description(question));
    ArrayNode examples = NODES.arrayNode();
    examples(question).forEach(examples::add);
    ObjectNode one = one(question);
    if (question.list()) {
      ObjectNode several = NODES.objectNode().put("type", "array");
      several.set("items", one);
      node.putArray("anyOf").add(several).add(one);
    } else {
      node.setAll(one);
    }
    if (!examples.isEmpty()) {
      node.set("examples", examples);
    }
    return node;
  }

  private static String description(Question question) {
    StringBuilder text = new StringBuilder(question.ask());
    if (question.help() != null) {
      text.append(' ').append(question.help());
    }
    Dimension dimension = question.kind().dimension();
    if (question.usual() != null) {
      text.append(" Usual: ").append(limits(question.usual(), dimension)).append('.');
    }
    if (question.range() != null) {
      text.append(" Possible: ").append(limits(question.range(), dimension)).append('.');
    }
    return text.toString();
  }

  private static String limits(List<Double> limits, Dimension dimension) {
    return AnswerReader.limits(limits, dimension);
  }

  /** What could be written: the middle of what is usual, in either kind of units. */
  private static Set<String> examples(Question question) {
    Set<String> examples = new LinkedHashSet<>();
    Dimension dimension = question.kind().dimension();
    List<Double> limits = question.usual() == null ? question.range() : question.usual();
    if (dimension != null && limits != null) {
      double low = limits.get(0);
      double high = limits.get(1);
      // sizes that span several powers of ten have their middle at the root of the product
      double middle = low > 0 && high > 20 * low ? Math.sqrt(low * high) : (low + high) / 2;
      examples.add(Display.amount(middle, dimension, UnitSystem.METRIC));
      examples.add(Display.amount(middle, dimension, UnitSystem.US));
    }
    switch (question.kind()) {
      case DATE -> examples.addAll(List.of("2027-04-24", "24 April 2027"));
      case DAY_OF_YEAR -> examples.addAll(List.of("20 October", "Oct 20"));
      case LATITUDE -> examples.addAll(List.of("45 N", "33.9 S"));
      case PRICE_BY_WEIGHT -> examples.addAll(List.of("0.60 per kg", "15 per 25 kg"));
      default -> {}
    }
    return examples;
  }

  private ObjectNode one(Question question) {
    return switch (question.kind()) {
      case TEXT -> {
        ObjectNode text = NODES.objectNode();
        text.set("type", types("string number boolean null"));
        yield text.put("maxLength", AnswerReader.LONGEST);
      }
      case YES_NO -> define("yesNo", yesNo());
      case CHOICE -> choice(question);
      case COUNT ->
          orUnknown(
              number(question).put("multipleOf", 1), pattern("^\\s*[-+]?\\d+(?:\\.0*)?\\s*$"));
      case LATITUDE -> orUnknown(number(question), pattern(Patterns.latitude()));
      case DATE -> define("date", orUnknown(pattern(Patterns.date())));
      case DAY_OF_YEAR -> define("dayOfYear", orUnknown(pattern(Patterns.dayOfYear())));
      case PRICE -> define("price", price());
      case PRICE_BY_WEIGHT -> define("priceByWeight", orUnknown(pattern(Patterns.priceByWeight())));
      default -> {
        Dimension dimension = question.kind().dimension();
        String name = dimension.name().toLowerCase(Locale.ROOT);
        yield define(name, orUnknown(pattern(Patterns.quantity(dimension))));
      }
    };
  }

  private static ObjectNode price() {
    ObjectNode number = NODES.objectNode().put("type", "number");
    return orUnknown(
        number.put("minimum", 0).put("maximum", MOST_MONEY), pattern(Patterns.price()));
  }

  private static ObjectNode yesNo() {
    ObjectNode words = NODES.objectNode();
    words.putArray("enum").add("yes").add("no").add(true).add(false);
    Set<String> others = new TreeSet<>(AnswerReader.YES);
    others.addAll(AnswerReader.NO);
    return orUnknown(words, pattern(Patterns.words(others)));
  }

  /** Each key with its words, and any other way to say one of them. */
  private static ObjectNode choice(Question question) {
    List<ObjectNode> ways = new ArrayList<>();
    Set<String> others = new TreeSet<>(question.choices().keySet());
    question
        .choices()
        .forEach(
            (key, words) -> {
              ways.add(NODES.objectNode().put("const", key).put("title", words));
              others.add(words);
            });
    question.also().values().forEach(others::addAll);
    ways.add(pattern(Patterns.words(others)));
    return orUnknown(ways.toArray(ObjectNode[]::new));
  }

  private static ObjectNode number(Question question) {
    ObjectNode number = NODES.objectNode().put("type", "number");
    if (question.range() != null) {
      number.put("minimum", question.range().get(0)).put("maximum", question.range().get(1));
    }
    return number;
  }

  private static ObjectNode pattern(String pattern) {
    return NODES.objectNode().put("type", "string").put("pattern", pattern);
  }

  private static ObjectNode orUnknown(ObjectNode... ways) {
    ObjectNode node = NODES.objectNode();
    ArrayNode all = node.putArray("anyOf");
    for (ObjectNode way : ways) {
      all.add(way);
    }
    all.add(NODES.objectNode().put("$ref", "#/$defs/unknown"));
    return node;
  }

  private ObjectNode define(String name, ObjectNode definition) {
    defs.set(name, definition);
    return NODES.objectNode().put("$ref", "#/$defs/" + name);
  }

  private void unknown() {
    ObjectNode unknown = NODES.objectNode();
    unknown.put("title", "not known");
    unknown.put("description", "Not known; it never counts as good news.");
    ArrayNode ways = unknown.putArray("anyOf");
    ways.add(NODES.objectNode().put("const", "unknown"));
    ways.add(pattern(unknownWords()));
    ways.add(NODES.objectNode().put("type", "null"));
    defs.set("unknown", unknown);
  }

  private static String unknownWords() {
    return Patterns.words(new TreeSet<>(AnswerReader.UNKNOWN));
  }

  private static ArrayNode types(String names) {
    ArrayNode types = NODES.arrayNode();
    for (String name : names.split(" ")) {
      types.add(name);
    }
    return types;
  }
}
