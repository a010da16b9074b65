package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** What must hold of the rules as a whole, tried on every scenario, case and example. */
class RuleBaseTest {
  /** Two items that must never stand on one list about the same pigs or pen. */
  record Exclusion(String one, String other, String because) {}

  /** Answers that can only be an improvement, by the question. */
  private static final Map<String, Object> BETTER =
      Map.of(
          "pigs.trained", true,
          "pigs.males", "castrated",
          "pigs.wormedAtSource", true,
          "pens.water.frostProof", true,
          "pens.shelter.bed", "deep-nest",
          "pens.shade.wallow", true,
          "pens.fence.signs", true,
          "pens.fence.returnWire", true,
          "keeper.vet", true);

  /** Areas of which more is never worse for what is judged by them. */
  private static final Set<String> MORE_IS_BETTER = Set.of("pens.area", "pens.shade.area");

  @TestFactory
  List<DynamicTest> items_that_exclude_each_other_never_meet() throws IOException {
    List<Exclusion> exclusions =
        new YAMLMapper()
            .readValue(Path.of("rules/exclusions.yaml").toFile(), new TypeReference<>() {});
    assertThat(exclusions).isNotEmpty();
    for (Exclusion exclusion : exclusions) {
      assertThat(Rulebook.rules()).containsKeys(exclusion.one(), exclusion.other());
    }
    return tests(
        (file, name) -> {
          Set<String> keys = keys(Advisor.advise(file));
          for (Exclusion exclusion : exclusions) {
            for (String key : keys) {
              if (key.startsWith(exclusion.one() + " ")) {
                assertThat(keys)
                    .as("%s: %s", name, exclusion.because())
                    .doesNotContain(key.replace(exclusion.one(), exclusion.other()));
              }
            }
          }
        });
  }

  @TestFactory
  List<DynamicTest> better_never_adds_an_item_of_its_topic() throws IOException {
    return tests(
        (file, name) -> {
          Checklist before = Advisor.advise(file);
          for (Map.Entry<String, Object> change : improvements(file).entrySet()) {
            SetupFile better;
            try {
              better = file.with(change.getKey(), change.getValue());
            } catch (BadSetupException e) {
              continue;
            }
            Set<String> touched = topicsOf(before, change.getKey());
            Set<String> added = keys(Advisor.advise(better));
            added.removeAll(keys(before));
            assertThat(added.stream().filter(k -> touched.contains(topic(k))))
                .as("%s: %s made %s", name, change.getKey(), change.getValue())
                .isEmpty();
          }
        });
  }

  @Test
  void no_rule_is_dead() throws IOException {
    Set<String> fired = new TreeSet<>();
    for (SetupFile file : all().values()) {
      fired.addAll(Advisor.advise(file).fired());
    }
    assertThat(fired).containsExactlyInAnyOrderElementsOf(Rulebook.rules().keySet());
  }

  @Test
  void a_heading_stands_once_about_the_same_pigs() throws IOException {
    all()
        .forEach(
            (name, file) -> {
              List<String> keys =
                  Advisor.advise(file).items().stream()
                      .map(i -> i.id() + " " + i.advice().about())
                      .toList();
              assertThat(keys).as(name).doesNotHaveDuplicates();
            });
  }

  @Test
  void many_at_once_give_the_same_answers_and_leave_nothing_behind() throws Exception {
    Map<String, SetupFile> all = all();
    Map<String, String> alone = new LinkedHashMap<>();
    all.forEach((name, file) -> alone.put(name, print(file)));
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      Map<String, Future<String>> together = new LinkedHashMap<>();
      all.forEach((name, file) -> together.put(name, pool.submit(() -> print(file))));
      for (Map.Entry<String, Future<String>> run : together.entrySet()) {
        assertThat(run.getValue().get()).as(run.getKey()).isEqualTo(alone.get(run.getKey()));
      }
    } finally {
      pool.shutdown();
    }
    assertThat(KnowledgeBase.shipped().base().getKieSessions())
        .as("sessions that were not closed")
        .isEmpty();
  }

  private static String print(SetupFile file) {
    return Advisor.advise(file).items().stream()
        .map(i -> i.id() + " " + i.advice() + " " + i.rank() + " " + i.because())
        .collect(Collectors.joining("\n"));
  }

  private interface Check {
    void on(SetupFile file, String name);
  }

  private static List<DynamicTest> tests(Check check) throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    all()
        .forEach(
            (name, file) -> tests.add(DynamicTest.dynamicTest(name, () -> check.on(file, name))));
    return tests;
  }

  /** Every scenario, case and example that is a sound setup. */
  private static Map<String, SetupFile> all() throws IOException {
    Map<String, SetupFile> all = new LinkedHashMap<>();
    for (Path folder : List.of(Path.of("scenarios"), Path.of("src/test/resources/cases"))) {
      try (Stream<Path> files = Files.list(folder)) {
        for (Path file : files.sorted().toList()) {
          String name = file.getFileName().toString();
          if (name.matches("(?!expectations).*\\.(yaml|json)") && !name.equals("b08.yaml")) {
            all.put(name, SetupReader.read(file, Examples.TODAY));
          }
        }
      }
    }
    for (Path path : Examples.files()) {
      Examples.File file = Examples.read(path);
      for (Examples.Example example : file.examples()) {
        String name = "example of " + example.rule();
        while (all.containsKey(name)) {
          name += "'";
        }
        all.put(name, Examples.setup(file, example, Map.of()));
      }
    }
    assertThat(all).hasSizeGreaterThan(20);
    return all;
  }

  private static Map<String, Object> improvements(SetupFile file) {
    Map<String, Object> changes = new LinkedHashMap<>();
    file.answers()
        .forEach(
            (path, answer) -> {
              String key = Question.keyOf(path);
              if (BETTER.containsKey(key)) {
                changes.put(path, BETTER.get(key));
              } else if (MORE_IS_BETTER.contains(key)) {
                changes.put(path, Double.parseDouble(answer.key()) * 2);
              }
            });
    return changes;
  }

  /** The topics that look at an answer: of the items that rest on it. */
  private static Set<String> topicsOf(Checklist checklist, String path) {
    return checklist.items().stream()
        .filter(i -> i.because().stream().anyMatch(b -> b.path().equals(path)))
        .map(i -> i.card().topic())
        .collect(Collectors.toSet());
  }

  private static String topic(String key) {
    return key.substring(0, key.indexOf('.'));
  }

  private static Set<String> keys(Checklist checklist) {
    return checklist.items().stream()
        .map(i -> i.id() + " " + i.advice().about())
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
