package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.report.TextReport;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupFile;

/** Runs every example beside the rules, and asks that no rule is without. */
class RuleExamplesTest {

  @TestFactory
  List<DynamicTest> examples() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path path : Examples.files()) {
      Examples.File file = Examples.read(path);
      for (Examples.Example example : file.examples()) {
        tests.add(DynamicTest.dynamicTest(example.rule() + " fires", () -> fires(file, example)));
        for (Map.Entry<String, Map<String, JsonNode>> silent : example.silent().entrySet()) {
          tests.add(
              DynamicTest.dynamicTest(
                  example.rule() + " is silent: " + silent.getKey(),
                  () -> silent(file, example, silent.getValue())));
        }
      }
    }
    assertThat(tests).isNotEmpty();
    return tests;
  }

  @Test
  void every_rule_has_an_example_where_it_fires_and_one_where_it_is_silent() throws IOException {
    Set<String> shown = new TreeSet<>();
    for (Path path : Examples.files()) {
      for (Examples.Example example : Examples.read(path).examples()) {
        if (example.silent() != null && !example.silent().isEmpty()) {
          shown.add(example.rule());
        }
      }
    }
    assertThat(shown)
        .as("rules with examples; add what is missing to rules/TOPIC/TOPIC.examples.yaml")
        .isEqualTo(new TreeSet<>(Rulebook.rules().keySet()));
  }

  private static void fires(Examples.File file, Examples.Example example) {
    Checklist checklist = Advisor.advise(Examples.setup(file, example, Map.of()));
    assertThat(checklist.fired()).as(example.rule() + " should fire").contains(example.rule());
    RuleInfo rule = Rulebook.rules().get(example.rule());
    if (rule.cardId() == null) {
      return;
    }
    if (example.about() != null) {
      assertThat(advice(checklist, example.rule()))
          .extracting(Advice::about)
          .contains(example.about());
    }
    String text = new TextReport(checklist, true, true, s -> s).render().replaceAll("\\s+", " ");
    assertThat(text).as("placeholders left open").doesNotContain("{");
    for (String words : example.says() == null ? List.<String>of() : example.says()) {
      assertThat(text).contains(words);
    }
  }

  private static void silent(
      Examples.File file, Examples.Example example, Map<String, JsonNode> changes) {
    SetupFile setup = Examples.setup(file, example, changes);
    assertThat(Advisor.advise(setup).fired())
        .as(example.rule() + " should be silent")
        .doesNotContain(example.rule());
  }

  private static List<Advice> advice(Checklist checklist, String id) {
    List<Advice> advice = new ArrayList<>();
    checklist.items().forEach(i -> advice.add(i.advice()));
    checklist.inOrder().forEach(o -> advice.add(o.advice()));
    advice.removeIf(a -> !a.id().equals(id));
    return advice;
  }
}
