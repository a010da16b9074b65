package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.report.JsonReport;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.Problem;
import swineherd.setup.SetupReader;

/**
 * Ten described setups with what an expert would answer, {@code cases/expectations.yaml}. What the
 * expert says and no rule says yet is shown as skipped.
 */
class CasesTest {
  private static final Path CASES = Path.of("src/test/resources/cases");
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final ObjectMapper JSON = new ObjectMapper();

  /** One case; see the file for what each list means. */
  record Case(
      @JsonProperty("case") String id,
      String file,
      Integer most,
      List<Must> must,
      List<MustNot> mustNot,
      List<List<String>> top,
      Referral referral,
      List<String> open) {}

  record Must(String says, List<String> items, List<String> words) {}

  record MustNot(String items, String words, String because) {}

  @TestFactory
  List<DynamicNode> what_an_expert_would_answer() throws IOException {
    List<Case> cases =
        YAML.readValue(CASES.resolve("expectations.yaml").toFile(), new TypeReference<>() {});
    List<DynamicNode> nodes = new ArrayList<>();
    for (Case expected : cases) {
      nodes.add(dynamicContainer(expected.id(), tests(expected)));
    }
    assertThat(nodes).hasSize(9);
    return nodes;
  }

  private static List<DynamicTest> tests(Case expected) throws IOException {
    Checklist checklist =
        Advisor.advise(SetupReader.read(CASES.resolve(expected.file()), Examples.TODAY));
    JsonNode items = JSON.readTree(new JsonReport(checklist, List.of()).render()).get("items");
    List<DynamicTest> tests = new ArrayList<>();
    for (Must must : expected.must()) {
      tests.add(dynamicTest("must: " + must.says(), () -> must(items, must)));
    }
    for (MustNot mustNot : expected.mustNot()) {
      String what = mustNot.items() == null ? mustNot.words() : mustNot.items();
      tests.add(
          dynamicTest(
              "must not: " + what + ", because " + mustNot.because(),
              () -> mustNot(items, mustNot)));
    }
    if (expected.most() != null) {
      tests.add(
          dynamicTest(
              "no more than " + expected.most() + " items",
              () -> assertThat(ids(items)).hasSizeLessThanOrEqualTo(expected.most())));
    }
    tests.add(dynamicTest("the first three", () -> top(items, expected)));
    tests.add(dynamicTest("whom to call: " + expected.referral(), () -> call(items, expected)));
    return tests;
  }

  private static void must(JsonNode items, Must must) {
    assumeFalse(must.items() == null, "no rule says this yet");
    for (String pattern : must.items()) {
      assertThat(Rulebook.rules().keySet()).as("cards called %s", pattern).anyMatch(glob(pattern));
    }
    List<String> said = new ArrayList<>();
    for (JsonNode item : items) {
      if (must.items().stream().anyMatch(p -> glob(p).test(item.get("id").asText()))) {
        said.add(text(item));
      }
    }
    assertThat(said).as("one of %s among %s", must.items(), ids(items)).isNotEmpty();
    if (must.words() != null) {
      assertThat(said)
          .anySatisfy(
              text ->
                  assertThat(must.words())
                      .allSatisfy(words -> assertThat(text).containsPattern("(?i)" + words)));
    }
  }

  private static void mustNot(JsonNode items, MustNot mustNot) {
    for (JsonNode item : items) {
      if (mustNot.items() != null) {
        assertThat(item.get("id").asText())
            .as(text(item))
            .matches(id -> !glob(mustNot.items()).test(id));
      }
      if (mustNot.words() != null) {
        assertThat(text(item)).doesNotContainPattern("(?i)" + mustNot.words());
      }
    }
  }

  private static void top(JsonNode items, Case expected) {
    assumeFalse(open(expected, "top"), "the rules that would give it are not there yet");
    List<String> shown = ids(items);
    assertThat(shown).isNotEmpty();
    assertThat(shown.get(0)).matches(id -> any(expected.top().get(0), id));
    List<String> three = shown.subList(0, Math.min(3, shown.size()));
    assertThat(expected.top().stream().filter(t -> three.stream().anyMatch(id -> any(t, id))))
        .as("of the expert's three among %s", three)
        .hasSizeGreaterThanOrEqualTo(2);
  }

  private static void call(JsonNode items, Case expected) {
    int highest = 0;
    for (JsonNode item : items) {
      String key = item.get("referral").asText().toUpperCase(Locale.ROOT).replace('-', '_');
      highest = Math.max(highest, level(Referral.valueOf(key)));
    }
    assertThat(highest).isLessThanOrEqualTo(level(expected.referral()) + 1);
    assumeFalse(open(expected, "referral"), "the rules that would give it are not there yet");
    assertThat(highest).isGreaterThanOrEqualTo(level(expected.referral()));
  }

  /** Vet now and authority now are one level. */
  private static int level(Referral referral) {
    return switch (referral) {
      case NONE -> 0;
      case ASK_VET -> 1;
      case VET_THIS_WEEK -> 2;
      case VET_TODAY -> 3;
      case VET_NOW, AUTHORITY_NOW -> 4;
    };
  }

  private static boolean open(Case expected, String what) {
    return expected.open() != null && expected.open().contains(what);
  }

  private static boolean any(List<String> patterns, String id) {
    return patterns.stream().anyMatch(p -> glob(p).test(id));
  }

  private static Predicate<String> glob(String pattern) {
    return Pattern.compile(pattern.replace(".", "\\.").replace("*", ".*")).asMatchPredicate();
  }

  private static List<String> ids(JsonNode items) {
    List<String> ids = new ArrayList<>();
    items.forEach(i -> ids.add(i.get("id").asText()));
    return ids;
  }

  private static String text(JsonNode item) {
    return String.join(
        "\n",
        List.of(
            item.get("heading").asText(),
            item.get("do").asText(),
            item.get("why").asText(),
            item.get("caution").asText(""),
            item.path("ready").asText(""),
            item.path("atRisk").asText(""),
            item.path("meat").asText("")));
  }

  @Test
  void B08_impossible_answers_are_each_named_with_what_is_accepted_and_nothing_is_worked_out() {
    BadSetupException refused =
        catchThrowableOfType(
            BadSetupException.class,
            () -> SetupReader.read(CASES.resolve("b08.yaml"), Examples.TODAY));
    // limits of a growing pig: judgement; whole drinkers, sides above nothing, days in their order
    assertThat(refused.problems())
        .extracting(Problem::path)
        .containsExactly(
            "pens[0].area",
            "pens[0].water.drinkers",
            "pigs[0].arrivalWeight",
            "pigs[0].arrives",
            "pigs[1].arrives");
    assertThat(refused.problems().get(0).at("f"))
        .contains("\"-20 x 30 ft\" is not possible: a side is more than nothing")
        .contains("write it like 400 m2");
    assertThat(refused.problems().get(1).at("f"))
        .contains("\"2.5\" is not a whole number")
        .contains("0 to 50");
    assertThat(refused.problems().get(2).at("f"))
        .contains("\"5000 lb\" is not possible")
        .contains("2.2 to 705 lb");
    assertThat(refused.problems().get(3).at("f"))
        .contains("10 August 2026 is after the slaughter, 1 March 2026");
  }

  @Test
  void two_sides_below_nothing_do_not_make_an_area() {
    BadSetupException refused =
        catchThrowableOfType(
            BadSetupException.class,
            () -> SetupReader.read("b08.yaml", "pens: [{area: -20 x -30 ft}]", Examples.TODAY));
    assertThat(refused).hasMessageContaining("is not possible");
  }
}
