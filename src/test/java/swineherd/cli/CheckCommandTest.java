package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;
import static swineherd.cli.Runs.runOn;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.cli.Runs.Run;

/** The command line from end to end: what is typed, and what comes out where. */
class CheckCommandTest {
  private static final String DEMO = "scenarios/alder-bottom.yaml";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private String file(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name), text).toString();
  }

  private static void isRefused(Run run) {
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isNotBlank()
        .doesNotContain("Exception", "\tat ", "Caused by", "swineherd.cli.", "java.");
  }

  @Test
  void a_setup_gives_a_checklist_on_standard_output_and_nothing_else() {
    Run run = run("check", DEMO);
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Alder Bottom: three pigs coming 24 April 2027. Checked 1 March 2027.\n")
        .contains("\n 1  ")
        .endsWith("your law, the label and your vet come first.\n");
    assertThat(run.out().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
    assertThat(run.out()).as("colour only on a terminal").doesNotContain("\u001b");
  }

  @Test
  void the_brief_list_has_every_item_of_the_long_one_in_its_order() {
    Run whole = run("check", DEMO);
    Run brief = run("check", "--brief", DEMO);
    assertThat(brief.exit()).isZero();
    assertThat(firstLines(brief.out())).hasSameSizeAs(firstLines(whole.out())).isNotEmpty();
    assertThat(brief.out()).contains("By 24 April 2027.", "[ask vet]").doesNotContain("Because");
    assertThat(brief.out().lines())
        .allMatch(l -> l.codePointCount(0, l.length()) <= 80)
        .as("a page of 60 lines and a little more")
        .hasSizeLessThan(75);
    Run boxes = run("check", "--brief", "--format", "markdown", DEMO);
    assertThat(boxes.out().lines().filter(l -> l.startsWith("- [ ] ")))
        .hasSameSizeAs(firstLines(whole.out()));
  }

  private static List<String> firstLines(String out) {
    return out.lines().filter(l -> l.matches(" ?\\d+  \\S.*")).toList();
  }

  @ParameterizedTest
  @ValueSource(strings = {"--all", "--show-rank", "--matters", "--format=json"})
  void brief_is_refused_beside_what_makes_a_list_longer(String other) {
    isRefused(run("check", "--brief", other, DEMO));
  }

  /** The names are a contract with other programs: fields may be added, never renamed. */
  @Test
  void json_has_the_fields_that_other_programs_rely_on() throws IOException {
    Run run = run("check", "--format", "json", DEMO);
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode root = JSON.readTree(run.out());
    assertThat(root.get("checkedOn").asText()).isEqualTo("2027-03-01");
    assertThat(root.get("items").isArray()).isTrue();
    assertThat(root.get("unanswered").isArray()).isTrue();
    assertThat(root.get("figures").isObject()).isTrue();
    assertThat(root.get("problems").isArray()).isTrue();
    assertThat(root.get("items")).isNotEmpty();
    int rank = 1;
    for (JsonNode item : root.get("items")) {
      assertThat(item.get("rank").asInt()).isEqualTo(rank++);
      assertThat(item.fieldNames())
          .toIterable()
          .contains(
              "rank",
              "id",
              "topic",
              "stage",
              "heading",
              "do",
              "why",
              "because",
              "figures",
              "dueOn",
              "consequence",
              "likelihood",
              "referral",
              "caution",
              "evidence",
              "sources");
      assertThat(item.get("id").asText()).startsWith(item.get("topic").asText() + ".");
      assertThat(item.get("likelihood").asDouble()).isBetween(0.0, 1.0);
      if (!item.get("dueOn").isNull()) {
        assertThat(item.get("dueOn").asText()).matches("\\d{4}-\\d\\d-\\d\\d");
      }
      for (JsonNode because : item.get("because")) {
        assertThat(because.fieldNames()).toIterable().contains("path", "said");
      }
    }
    for (JsonNode open : root.get("unanswered")) {
      assertThat(open.fieldNames()).toIterable().contains("path", "question", "moves");
    }
    assertThat(root.get("unanswered"))
        .anySatisfy(open -> assertThat(open.get("path").asText()).isEqualTo("pigs[0].males"));
  }

  @Test
  void json_tells_answers_that_should_be_looked_at_again_under_problems() throws IOException {
    Run run = run("check", "--format=json", file("one.yaml", "pigs: [{count: 1}]\n"));
    JsonNode problems = JSON.readTree(run.out()).get("problems");
    assertThat(problems).hasSize(1);
    assertThat(problems.get(0).get("path").asText()).isEqualTo("pigs[0].count");
    assertThat(problems.get(0).get("line").asInt()).isEqualTo(1);
    assertThat(problems.get(0).get("message").asText()).contains("\"1\" is unusual");
  }

  @Test
  void markdown_has_a_heading_for_the_whole_and_for_each_item() throws IOException {
    Run run = run("check", "--format", "markdown", DEMO);
    assertThat(run.exit()).isZero();
    int items = JSON.readTree(run("check", "--format", "json", DEMO).out()).get("items").size();
    assertThat(run.out()).startsWith("# Alder Bottom: three pigs coming 24 April 2027.");
    assertThat(run.out().lines().filter(l -> l.matches("## \\d+\\. .+"))).hasSize(items);
  }

  @Test
  void what_a_keeper_wrote_does_not_become_markup() throws IOException {
    String name = "# Fat *Joe* <b>[x](y)</b> `z`";
    Run run = run("check", "--format", "markdown", file("m.yaml", "name: '" + name + "'\n"));
    assertThat(run.out())
        .startsWith("# \\# Fat \\*Joe\\* \\<b\\>\\[x\\](y)\\</b\\> \\`z\\`: no pigs");
  }

  @Test
  void all_also_lists_what_is_in_order() throws IOException {
    String scenario = "scenarios/bramble-shaw.yaml";
    JsonNode json = JSON.readTree(run("check", "--format", "json", scenario).out());
    Run without = run("check", scenario);
    Run with = run("check", "--all", scenario);
    assertThat(without.out()).doesNotContain("Already in order");
    if (json.get("inOrder").isEmpty()) {
      assertThat(with.out()).isEqualTo(without.out());
    } else {
      assertThat(with.out()).contains("\nAlready in order\n");
      assertThat(run("check", "--all", "--format", "markdown", scenario).out())
          .contains("\n## Already in order\n");
    }
  }

  @Test
  void show_rank_shows_how_each_rank_comes_about() throws IOException {
    int items = JSON.readTree(run("check", "--format", "json", DEMO).out()).get("items").size();
    assertThat(run("check", DEMO).out()).doesNotContain("    Rank ");
    Run run = run("check", "--show-rank", DEMO);
    assertThat(
            run.out()
                .lines()
                .filter(l -> l.matches(" {4}Rank +\\d+ x [01]\\.\\d\\d x [12]\\.\\d\\d = .*")))
        .hasSize(items);
    assertThat(run("check", "--show-rank", "--format", "markdown", DEMO).out())
        .contains("- **Rank:** ");
  }

  @Test
  void a_minus_reads_standard_input() throws IOException {
    String text = Files.readString(Path.of(DEMO));
    Run run = runOn(text, "check", "--format", "json", "-");
    assertThat(run.exit()).isZero();
    assertThat(JSON.readTree(run.out()).get("items"))
        .isEqualTo(JSON.readTree(run("check", "--format", "json", DEMO).out()).get("items"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{\"name\": \"Lot\"}", "{\n\t\"name\": \"Lot\",\n\t\"pigs\": [\n\t]\n}\n"})
  void a_minus_reads_JSON_too(String text) {
    Run run = runOn(text, "check", "-");
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).startsWith("Lot: ");
  }

  @Test
  void problems_of_standard_input_are_told_at_their_line() {
    Run run = runOn("name: Lot\npens:\n  - area: 12\n", "check", "-");
    isRefused(run);
    assertThat(run.err()).startsWith("-:3:11: pens[0].area: \"12\" has no unit");
  }

  @Test
  void every_problem_has_a_line_with_file_line_and_column() throws IOException {
    String file = file("bad.yaml", "nmae: Lot\npigs:\n  - count: 2.5\n    arrives: 2027-02-30\n");
    Run run = run("check", file);
    isRefused(run);
    assertThat(run.err().lines())
        .hasSize(3)
        .satisfiesExactly(
            l -> assertThat(l).startsWith(file + ":1:1: nmae: ").endsWith("did you mean name?"),
            l -> assertThat(l).startsWith(file + ":3:12: pigs[0].count: \"2.5\" is not a whole"),
            l -> assertThat(l).startsWith(file + ":4:14: pigs[0].arrives: there is no 2027-02-30"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "markdown"})
  void a_bad_setup_prints_nothing_on_standard_output_in_any_format(String format)
      throws IOException {
    isRefused(run("check", "--format", format, file("bad.yaml", "pigs: many\n")));
  }

  static List<Path> badFiles() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("src/test/resources/bad"))) {
      return files.sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("badFiles")
  void no_bad_file_shows_a_stack_trace(Path file) {
    Run run = run("check", file.toString());
    assertThat(run.exit()).isIn(0, 2);
    if (run.exit() == 2) {
      isRefused(run);
      assertThat(run.err().lines()).allMatch(l -> l.startsWith(file + ":"));
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "check | FILE",
        "check --fromat json x.yaml | --fromat",
        "check --format pdf x.yaml | pdf",
        "check --format | --format",
        "check x.yaml y.yaml | y.yaml",
        "chek x.yaml | check",
        "check no-such-file.yaml | no-such-file.yaml: there is no such file",
        "check scenarios | scenarios: is a folder",
      })
  void what_cannot_be_understood_is_told_in_a_line_and_exits_with_2(String args, String says) {
    Run run = run(args.split(" "));
    isRefused(run);
    assertThat(run.err()).contains(says);
  }

  @Test
  void an_unknown_format_names_those_there_are() {
    assertThat(run("check", "--format", "pdf", DEMO).err()).contains("text", "json", "markdown");
    assertThat(run("check", "--format", "JSON", DEMO).exit()).as("any case will do").isZero();
  }

  @Test
  void a_path_that_cannot_be_one_is_refused() {
    isRefused(run("check", "a\0b.yaml"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "check --help", "--version", "help check"})
  void help_goes_to_standard_output(String args) {
    Run run = run(args.split(" "));
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isNotBlank();
  }
}
