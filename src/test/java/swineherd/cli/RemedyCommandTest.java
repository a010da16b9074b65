package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.cli.Runs.Run;

class RemedyCommandTest {
  private static final String DEMO = "scenarios/alder-bottom.yaml";
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  @Test
  void says_what_to_change_in_the_units_of_the_keeper() {
    Run run = run("remedy", DEMO, "fence.stronger-energizer");
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .startsWith("Alder Bottom: three pigs coming 24 April 2027.")
        .contains("What would take this off the list:", "Energizer output (hillside): 1 J or more")
        .endsWith("your law, the label and your vet come first.\n");
    assertThat(run.out().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
  }

  @Test
  void json_has_the_answers_as_a_program_can_set_them() throws IOException {
    Run run = run("remedy", "--format", "json", DEMO, "fence.set-wires");
    assertThat(run.exit()).isZero();
    JsonNode root = JSON.readTree(run.out());
    assertThat(root.get("onTheList").asBoolean()).isTrue();
    assertThat(root.get("remedies"))
        .anySatisfy(
            r -> {
              JsonNode change = r.get("changes").get(0);
              assertThat(change.get("path").asText()).isEqualTo("pens[0].fence.wireHeights");
              assertThat(change.get("answers").get("pens[0].fence.wireHeights")).hasSize(3);
              // three wires where there are two strands: both answers go together
              assertThat(change.get("answers").get("pens[0].fence.strands").asInt()).isEqualTo(3);
              assertThat(r.get("worthIt").asBoolean()).isTrue();
            });
  }

  @Test
  void an_item_there_is_not_is_refused_with_the_nearest() {
    Run run = run("remedy", DEMO, "fence.train-frist");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .isEqualTo("There is no item fence.train-frist; did you mean fence.train-first?\n");
  }

  @Test
  void nothing_is_suggested_for_what_is_like_no_item() {
    Run run = run("remedy", DEMO, "elephant");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).isEqualTo("There is no item elephant.\n");
  }

  @Test
  void shade_comes_first_where_shade_is_missing_and_never_a_floor_of_slats() {
    assertThat(run("remedy", DEMO, "sun.shade").out())
        .containsPattern("(?m)^ 1  Shade \\(hillside\\)")
        .doesNotContain("slats");
  }

  @Test
  void an_item_that_is_not_on_the_list_is_said_so() {
    Run run = run("remedy", DEMO, "space.lone-pig");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("space.lone-pig is not on the list");
  }

  @Test
  void of_two_with_one_id_the_other_is_named() throws IOException {
    String file =
        Files.writeString(
                folder.resolve("two.yaml"),
                """
                checkOn: 2027-03-01
                pens: [{name: a}, {name: b}]
                pigs: [{name: reds, pen: a, count: 3}, {name: blacks, pen: b, count: 3}]
                """)
            .toString();
    assertThat(run("remedy", file, "fence.find-out").out()).contains("too; say --about.");
    Run wrong = run("remedy", "--about", "c", file, "fence.find-out");
    assertThat(wrong.exit()).isEqualTo(2);
    assertThat(wrong.err()).contains("not on the list about \"c\", but about");
    assertThat(run("remedy", "--about", "b", file, "fence.find-out").out())
        .contains("Fence (b)")
        .doesNotContain("Fence (a)");
  }
}
