package swineherd.rulebook;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import swineherd.units.UnreadableException;

/**
 * Checks the YAML and CSV under {@code rules/} and writes them as JSON for the program to load.
 * Runs in the build, so that a fault there breaks the build and never reaches a keeper.
 */
public final class RulebookCompiler {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final YAMLMapper YAML = new YAMLMapper();

  private final Path rules;
  private final Path out;
  private final List<String> faults = new ArrayList<>();
  private final Map<String, List<Map<String, String>>> tables = new LinkedHashMap<>();

  private RulebookCompiler(Path rules, Path out) {
    this.rules = rules;
    this.out = out;
  }

  /**
   * Checks the rulebook and writes it as JSON.
   *
   * @param rules the folder of rules
   * @param known what the DRL in it holds, by the name of the rule
   * @param classes the folder of classes to write into
   * @return a line that counts what was seen
   * @throws RulebookException with every fault found
   */
  public static String compile(Path rules, Map<String, RuleInfo> known, Path classes)
      throws IOException {
    RulebookCompiler compiler = new RulebookCompiler(rules, classes.resolve("rulebook"));
    Map<String, Source> sources = compiler.sources();
    int tables = compiler.tables(sources.keySet());
    int questions = compiler.questions();
    int cards = compiler.cards(known, sources.keySet());
    compiler.write("rules.json", known);
    if (!compiler.faults.isEmpty()) {
      throw new RulebookException(compiler.faults);
    }
    return "rulebook: %d rules, %d cards, %d questions, %d tables, %d sources"
        .formatted(known.size(), cards, questions, tables, sources.size());
  }

  private Map<String, Source> sources() throws IOException {
    Path file = rules.resolve("sources.yaml");
    Map<String, Source> byKey = new LinkedHashMap<>();
    try {
      for (Source source : YAML.readValue(file.toFile(), Source[].class)) {
        if (source.body() == null || source.title() == null || source.seen() == null) {
          faults.add(file + ": source " + source.key() + " needs body, title and seen");
        }
        if (byKey.put(source.key(), source) != null) {
          faults.add(file + ": source " + source.key() + " stands there twice");
        }
      }
    } catch (JsonProcessingException e) {
      faults.add(place(file, e));
    }
    write("sources.json", byKey);
    return byKey;
  }

  private int tables(Set<String> sources) throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.list(rules.resolve("tables"))) {
      files = found.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
    }
    CsvMapper csv =
        CsvMapper.builder()
            .enable(CsvParser.Feature.TRIM_SPACES)
            .enable(CsvParser.Feature.SKIP_EMPTY_LINES)
            .enable(CsvParser.Feature.ALLOW_COMMENTS)
            .build();
    for (Path file : files) {
      List<Map<String, String>> rows = new ArrayList<>();
      Set<String> keys = new HashSet<>();
      try (MappingIterator<Map<String, String>> read =
          csv.readerFor(new TypeReference<Map<String, String>>() {})
              .with(CsvSchema.emptySchema().withHeader())
              .readValues(file.toFile())) {
        while (read.hasNextValue()) {
          int line = read.getCurrentLocation().getLineNr();
          Map<String, String> row = read.nextValue();
          rows.add(row);
          String key = row.values().iterator().next();
          if (!keys.add(key)) {
            faults.add(file + ":" + line + ": row " + key + " stands there twice");
          }
          checkRow(file + ":" + line + ": row " + key, row, sources);
        }
      } catch (JsonProcessingException e) {
        faults.add(place(file, e));
      }
      String name = file.getFileName().toString().replace(".csv", ".json");
      tables.put(name.replace(".json", ""), rows);
      write("tables/" + name, rows);
    }
    return files.size();
  }

  private int cards(Map<String, RuleInfo> known, Set<String> sources) throws IOException {
    Map<String, Card> all = readCards(known, sources);
    Map<String, Map<String, Card>> byTopic = new TreeMap<>();
    all.forEach(
        (id, card) ->
            byTopic.computeIfAbsent(card.topic(), t -> new LinkedHashMap<>()).put(id, card));
    for (Map.Entry<String, Map<String, Card>> topic : byTopic.entrySet()) {
      write("cards/" + topic.getKey() + ".json", topic.getValue());
      Path examples = rules.resolve(topic.getKey()).resolve(topic.getKey() + ".examples.yaml");
      if (Files.exists(examples)) {
        try {
          write(
              "examples/" + topic.getKey() + ".json",
              YAML.readValue(examples.toFile(), Object.class));
        } catch (JsonProcessingException e) {
          faults.add(place(examples, e));
        }
      }
    }
    return all.size();
  }

  /**
   * The cards of a keeper's own folder of rules. Their sources may be written out, as only shipped
   * ones have keys.
   *
   * @param rules the folder
   * @param known what the DRL in it holds
   * @throws RulebookException with every fault found
   */
  public static Map<String, Card> own(Path rules, Map<String, RuleInfo> known) throws IOException {
    RulebookCompiler compiler = new RulebookCompiler(rules, null);
    Map<String, Card> cards = compiler.readCards(known, null);
    if (!compiler.faults.isEmpty()) {
      throw new RulebookException(compiler.faults);
    }
    return cards;
  }

  /** Reads and checks the cards; without {@code sources} any text is one. */
  private Map<String, Card> readCards(Map<String, RuleInfo> known, Set<String> sources)
      throws IOException {
    Map<String, Card> all = new LinkedHashMap<>();
    List<Path> files;
    try (Stream<Path> found = Files.list(rules)) {
      files =
          found
              .map(f -> f.resolve(f.getFileName() + ".yaml"))
              .filter(Files::exists)
              .sorted()
              .toList();
    }
    Set<Path> unread = new HashSet<>();
    for (Path file : files) {
      try {
        List<String> text = Files.readAllLines(file);
        for (Card card : YAML.readValue(file.toFile(), Card[].class)) {
          checkCard(
              file
                  + lineOf(card, text)
                  + (card.id() == null ? ": card without an id: " : ": card " + card.id() + ": "),
              card,
              card.id() == null ? null : known.get(card.id()),
              sources);
          if (all.put(card.id(), card) != null) {
            faults.add(file + lineOf(card, text) + ": card " + card.id() + " stands there twice");
          }
        }
      } catch (JsonProcessingException e) {
        faults.add(place(file, e));
        unread.add(file);
      }
    }
    for (RuleInfo rule : known.values()) {
      Path cards = rules.resolve(rule.topic()).resolve(rule.topic() + ".yaml");
      if (rule.cardId() != null && !all.containsKey(rule.cardId()) && !unread.contains(cards)) {
        faults.add(
            "%s:%d: rule %s has no card of that id in %s"
                .formatted(rule.file(), rule.line(), rule.id(), cards));
      }
    }
    for (Card card : all.values()) {
      for (String other : card.standsFor()) {
        Card covered = all.get(other);
        if (covered == null) {
          faults.add(cardFile(card) + " stands for " + other + ", which is not there");
        } else if (covered.referral().compareTo(card.referral()) > 0) {
          faults.add(cardFile(card) + " stands for " + other + " and must not call the vet later");
        }
      }
    }
    return all;
  }

  /** Where a card begins, {@code :12}; the last of its name. */
  private static String lineOf(Card card, List<String> text) {
    for (int i = text.size() - 1; i >= 0; i--) {
      if (text.get(i).strip().replaceFirst("^- +", "").equals("id: " + card.id())) {
        return ":" + (i + 1);
      }
    }
    return "";
  }

  private String cardFile(Card card) {
    return rules.resolve(card.topic()).resolve(card.topic() + ".yaml") + ": card " + card.id();
  }

  private void checkCard(String place, Card card, RuleInfo rule, Set<String> sources) {
    if (card.id() == null || !card.id().contains(".")) {
      faults.add(place + "needs an id, topic.what-it-says");
      return;
    }
    if (rule == null || rule.cardId() == null) {
      faults.add(place + "no rule has this name and gives advice");
      return;
    }
    Set<String> open = card.placeholders();
    open.removeAll(rule.fills());
    open.remove("about");
    if (!open.isEmpty()) {
      faults.add(place + "the rule does not fill " + open);
    }
    if (card.heading() == null || card.evidence() == null) {
      faults.add(place + "needs a heading and evidence");
    }
    if (card.kind() == Card.Kind.ITEM) {
      if (card.doIt() == null
          || card.why() == null
          || card.stage() == null
          || card.consequence() == null
          || card.likelihood() == null) {
        faults.add(place + "needs do, why, stage, consequence and likelihood");
      } else if (!(card.likelihood() > 0 && card.likelihood() <= 1)) {
        faults.add(place + "a likelihood lies above 0 and up to 1");
      }
    }
    for (String sign : card.covers()) {
      if (sources != null && !choicesOf("signs").containsKey(sign)) {
        faults.add(place + "covers " + sign + ", which is no row of the table signs");
      }
    }
    try {
      card.againDays();
    } catch (UnreadableException e) {
      faults.add(place + "again: " + e.getMessage());
    }
    for (String source : card.sources()) {
      if (sources != null && !sources.contains(source)) {
        faults.add(place + "unknown source " + source);
      }
    }
    boolean sourced =
        card.evidence() != Evidence.COMMON_PRACTICE && card.evidence() != Evidence.JUDGEMENT;
    if (sourced && card.sources().isEmpty()) {
      faults.add(place + "its evidence needs a source; name it under sources: [...]");
    }
  }

  private int questions() throws IOException {
    Path file = rules.resolve("questions.yaml");
    Map<String, Question> byKey = new LinkedHashMap<>();
    try {
      for (WrittenQuestion written : YAML.readValue(file.toFile(), WrittenQuestion[].class)) {
        try {
          Question question = written.checked(this::choicesOf);
          if (byKey.put(question.key(), question) != null) {
            faults.add(file + ": " + written.path() + " stands there twice");
          }
        } catch (IllegalArgumentException e) {
          faults.add(file + ": " + written.path() + ": " + e.getMessage());
        }
      }
    } catch (JsonProcessingException e) {
      faults.add(place(file, e));
    }
    for (Question question : byKey.values()) {
      for (Map.Entry<String, List<String>> when : question.when().entrySet()) {
        Question other = byKey.get(Question.keyOf(when.getKey()));
        if (other == null || !answers(other).containsAll(when.getValue())) {
          faults.add(file + ": " + question.path() + ": no such answer: " + when);
        }
      }
    }
    write("questions.json", byKey);
    return byKey.size();
  }

  private static Set<String> answers(Question question) {
    return question.kind() == Question.Kind.YES_NO
        ? Set.of("yes", "no")
        : question.choices().keySet();
  }

  /** The rows of a table as choices: the column {@code name}, and {@code words} split by ";". */
  private Map<String, List<String>> choicesOf(String table) {
    Map<String, List<String>> choices = new LinkedHashMap<>();
    for (Map<String, String> row : tables.getOrDefault(table, List.of())) {
      List<String> words = new ArrayList<>(List.of(row.getOrDefault("name", "")));
      for (String alias : row.getOrDefault("words", row.getOrDefault("also", "")).split(";")) {
        if (!alias.isBlank()) {
          words.add(alias.strip());
        }
      }
      choices.put(row.values().iterator().next(), words);
    }
    return choices;
  }

  private void checkRow(String place, Map<String, String> row, Set<String> sources) {
    String source = row.get("source");
    String evidence = row.get("evidence");
    String mark = row.get("mark");
    if (source == null || evidence == null || mark == null) {
      faults.add(place + ": a table needs the columns source, evidence and mark");
      return;
    }
    try {
      JSON.convertValue(evidence, Evidence.class);
      JSON.convertValue(mark, Mark.class);
    } catch (IllegalArgumentException e) {
      faults.add(place + ": unknown evidence or mark: " + evidence + ", " + mark);
    }
    boolean sourced = !evidence.equals("common-practice") && !evidence.equals("judgement");
    if (source.isEmpty() && sourced) {
      faults.add(place + ": evidence " + evidence + " needs a source");
    }
    for (String key : source.split(" ")) {
      if (!key.isEmpty() && !sources.contains(key)) {
        faults.add(place + ": unknown source " + key);
      }
    }
  }

  private void write(String path, Object content) throws IOException {
    Path file = out.resolve(path);
    Files.createDirectories(file.getParent());
    JSON.writeValue(file.toFile(), content);
  }

  private static String place(Path file, JsonProcessingException e) {
    String line = e.getLocation() == null ? "" : ":" + e.getLocation().getLineNr();
    if (e instanceof UnrecognizedPropertyException unknown) {
      return file
          + line
          + ": before here an unknown word "
          + unknown.getPropertyName()
          + "; one of: "
          + unknown.getKnownPropertyIds();
    }
    if (e instanceof InvalidFormatException bad) {
      Class<?> wanted = bad.getTargetType();
      String field =
          bad.getPath().isEmpty() ? "" : bad.getPath().get(bad.getPath().size() - 1).getFieldName();
      return "%s%s: %s: %s is not accepted; %s"
          .formatted(
              file,
              line,
              field,
              bad.getValue(),
              wanted.isEnum() ? "one of: " + words(wanted) : "a number, such as 0.5");
    }
    if (e instanceof MismatchedInputException) {
      return file + line + ": is not laid out as here is expected; a list of \"- id: ...\"";
    }
    return file + line + ": " + e.getOriginalMessage().lines().findFirst().orElse("");
  }

  /** The words of a choice, as they are written in YAML. */
  private static String words(Class<?> choice) {
    List<String> words = new ArrayList<>();
    for (Object one : choice.getEnumConstants()) {
      words.add(JSON.convertValue(one, String.class));
    }
    return String.join(", ", words);
  }
}
