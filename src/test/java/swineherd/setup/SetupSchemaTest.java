package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setups.Setups;

/**
 * The schema against its own standard, JSON Schema 2020-12 (json-schema.org/draft/2020-12/schema
 * [read]), and setups of all sorts against the schema, with a validator that knows nothing of pigs.
 */
class SetupSchemaTest {
  private static final Path SHIPPED = Path.of("rules/setup.schema.json");
  private static final LocalDate TODAY = LocalDate.of(2027, 12, 31);
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final String TEXT = SetupSchema.of(Rulebook.questions());
  private static final Schema SCHEMA = REGISTRY.getSchema(TEXT);

  private static List<Error> errors(JsonNode setup) {
    return SCHEMA.validate(setup);
  }

  private static JsonNode read(Path file) throws IOException {
    return (file.toString().endsWith(".json") ? JSON : YAML).readTree(Files.readString(file));
  }

  @Test
  void the_schema_is_valid_by_the_meta_schema_of_2020_12() throws IOException {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(JSON.readTree(TEXT))).isEmpty();
    assertThat(meta.validate(JSON.readTree("{\"type\": \"pig\"}")))
        .as("the validator can refuse")
        .isNotEmpty();
  }

  /** Run with {@code -Dgolden=write}, or {@code swineherd schema >rules/setup.schema.json}. */
  @Test
  void the_shipped_file_is_up_to_date_with_the_questions() throws IOException {
    if ("write".equals(System.getProperty("golden"))) {
      Files.writeString(SHIPPED, TEXT);
    }
    assertThat(Files.readString(SHIPPED)).isEqualTo(TEXT);
  }

  static List<Path> setups() throws IOException {
    try (Stream<Path> scenarios = Files.list(Path.of("scenarios"));
        Stream<Path> cases = Files.list(Path.of("src/test/resources/cases"))) {
      return Stream.concat(scenarios, cases)
          .filter(f -> f.toString().matches(".*\\.(yaml|json)"))
          .filter(f -> !f.endsWith("expectations.yaml"))
          .sorted()
          .toList();
    }
  }

  @ParameterizedTest
  @MethodSource("setups")
  void every_scenario_and_case_is_valid_if_the_reader_takes_it(Path file) throws IOException {
    boolean broken = file.endsWith("b08.yaml"); // two and a half drinkers, on purpose
    assertThat(errors(read(file)).isEmpty()).isEqualTo(!broken);
  }

  @Test
  void generated_setups_are_valid_seed_41() {
    Setups.from(41)
        .limit(300)
        .forEach(setup -> assertThat(errors(setup.tree())).as(setup.yaml()).isEmpty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "unknown-key.yaml",
        "wrong-shape.yaml",
        "wrong-unit.yaml",
        "number-keys.yaml",
        "list-at-top.yaml",
        "list-at-top.json",
        "long-string.yaml",
        "escape-codes.yaml"
      })
  void a_file_that_is_bad_by_its_shape_is_invalid(String bad) throws IOException {
    assertThat(errors(read(Path.of("src/test/resources/bad", bad)))).isNotEmpty();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "pens[0].ground, lava",
    "pens[0].area, 12 kg",
    "pens[0].area, 12",
    "pens[0].fence.endVoltage, 4 joules",
    "pens[0].fence.signs, maybe",
    "pigs[0].count, some",
    "pigs[0].count, 0",
    "pigs[0].count, 2.5",
    "pigs[0].arrives, soon",
    "pigs[0].arrivalWeight, 40",
    "pigs[0].arrivalWeight, 40 F",
    "place.latitude, 45 W",
    "place.firstHardFrost, autumn",
    "money.feed, 15",
    "money.weaner, cheap",
    "units, stone",
  })
  void a_value_that_the_reader_refuses_by_its_shape_is_invalid(String path, String value)
      throws IOException {
    JsonNode setup = YAML.readTree(yaml(path, value));
    assertThat(errors(setup)).isNotEmpty();
    assertThat(setup(path, value)).as("what the reader says").isFalse();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "pens[0].area, 12 by 30 ft",
    "pens[0].area, half an acre",
    "pens[0].area, 6 m x 8 m",
    "pens[0].area, ?",
    "pens[0].fence.signs, True",
    "pens[0].ground, Deep Litter",
    "pens[0].ground, bare_dry",
    "pigs[0].count, 3",
    "pigs[0].arrives, 'April 24th, 2027'",
    "pigs[0].arrives, 24 of april 2027",
    "pigs[0].arrivalWeight, about 2 st 4 lb",
    "pigs[0].males, boars",
    "place.latitude, -33.9",
    "place.latitude, 45° N",
    "place.coldestMonth, −4 °F",
    "money.feed, $17 per 50 lb",
    "money.feed, 330/t",
    "money.meat, 5.50 a lb",
    "money.weaner, '1,250.50'",
    "pigs, unknown",
    "place, unknown",
  })
  void what_the_reader_takes_is_valid(String path, String value) throws IOException {
    assertThat(setup(path, value)).as("what the reader says").isTrue();
    assertThat(errors(YAML.readTree(yaml(path, value)))).isEmpty();
  }

  /** Every example in the schema is one that the reader takes. */
  @Test
  void the_examples_of_every_question_can_be_answered_so() throws IOException {
    int seen = 0;
    for (Question question : Rulebook.questions().values()) {
      String at =
          "/properties/" + question.path().replace("[]", "/items").replace(".", "/properties/");
      JsonNode node = JSON.readTree(TEXT).at(at);
      assertThat(node.path("description").asText()).as(at).startsWith(question.ask());
      assertThat(node.path("title").asText()).isEqualTo(question.label());
      for (JsonNode example : node.path("examples")) {
        String path = question.path().replace("[]", "[0]");
        assertThat(setup(path, example.asText())).as(path + ": " + example).isTrue();
        assertThat(errors(YAML.readTree(yaml(path, example.asText())))).isEmpty();
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(60);
  }

  @Test
  void the_words_of_a_choice_stand_beside_its_key() throws IOException {
    ArrayNode choices =
        (ArrayNode) JSON.readTree(TEXT).at("/properties/pens/items/properties/ground/anyOf");
    assertThat(choices.get(0).path("const").asText()).isEqualTo("slats");
    assertThat(choices.get(1).path("title").asText()).contains("scraped daily");
  }

  private static boolean setup(String path, String value) {
    try {
      SetupReader.read("t.yaml", yaml(path, value), TODAY);
      return true;
    } catch (BadSetupException e) {
      return false;
    }
  }

  private static String yaml(String path, String value) {
    ObjectNode root = YAML.createObjectNode();
    ObjectNode at = root;
    String[] steps = path.split("\\.");
    for (int i = 0; i < steps.length - 1; i++) {
      String name = steps[i].replace("[0]", "");
      at = steps[i].endsWith("]") ? at.putArray(name).addObject() : at.putObject(name);
    }
    String last = steps[steps.length - 1];
    if (value.matches("-?\\d+(\\.\\d+)?")) {
      at.put(last, Double.valueOf(value)); // as an editor sees a bare number
    } else {
      at.put(last, value);
    }
    return root.toString(); // JSON is YAML too
  }
}
