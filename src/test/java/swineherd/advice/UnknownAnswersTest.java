package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import swineherd.rulebook.Referral;
import swineherd.setup.Answer;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;

/**
 * Not knowing must never look better than knowing. Every answer of every scenario is taken away in
 * turn: nothing may throw, and an item with a referral or a caution must still be there, or another
 * that stands for it and refers at least as strongly.
 */
class UnknownAnswersTest {
  private static final YAMLMapper YAML = new YAMLMapper();

  @TestFactory
  List<DynamicTest> every_answer_of_every_scenario_taken_away() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    try (Stream<Path> scenarios = Files.list(Path.of("scenarios"))) {
      for (Path scenario :
          scenarios.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        ObjectNode tree = (ObjectNode) YAML.readTree(scenario.toFile());
        SetupFile whole = Examples.read(tree);
        Checklist known = Advisor.advise(whole);
        for (Answer answer : whole.answers().values()) {
          // names tie the parts of a setup together and are not facts about pigs
          if (answer.path().endsWith("name")
              || answer.path().endsWith(".pen")
              || answer.path().endsWith(".pigs")
              || answer.path().equals("checkOn")) {
            continue;
          }
          tests.add(
              DynamicTest.dynamicTest(
                  scenario.getFileName() + " without " + answer.path(),
                  () -> blank(tree, answer.path(), known)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(8);
    return tests;
  }

  private static void blank(ObjectNode tree, String path, Checklist known) {
    JsonNode blanked = tree.deepCopy();
    Examples.set(blanked, path, NullNode.instance);
    Checklist checklist;
    try {
      checklist = Advisor.advise(Examples.read(blanked));
    } catch (BadSetupException e) {
      // what hangs on the answer is told with it: then the whole setup is refused, not passed
      return;
    }
    Set<String> present = new HashSet<>();
    for (Item item : checklist.items()) {
      present.add(item.id());
      present.addAll(item.card().standsFor());
    }
    for (Item item : known.items()) {
      if (item.referral() != Referral.NONE || item.card().caution() != null) {
        assertThat(present)
            .as("without %s the item %s and its caution vanish", path, item.id())
            .contains(item.id());
      }
    }
  }
}
