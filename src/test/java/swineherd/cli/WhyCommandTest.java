package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;

import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.cli.Runs.Run;
import swineherd.rulebook.Rulebook;

class WhyCommandTest {
  @Test
  void a_rule_tells_what_it_says_when_and_an_example_each_way() {
    Run run = run("why", "fence.train-first");
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .contains("fence.train-first: Train them")
        .contains("It says")
        .contains("It applies when all of this is so")
        .contains("It rests on")
        .contains("and not when")
        .contains("they know the wire (pigs[0].trained: yes)");
    assertThat(run.out().lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void the_setup_under_the_example_is_shown_as_it_would_be_written() {
    Run run = run("why", "fence.train-first");
    assertThat(run.out())
        .contains("Both on top of this setup")
        .contains("- checkOn: 2027-03-01")
        .containsPattern("pens\\[0\\]: \\{name: hillside, area: 400 m2")
        .containsPattern("strands:\\s+3,")
        .containsPattern("signs:\\s+yes");
  }

  @Test
  void words_find_rules() {
    Run run = run("why", "WIRE", "train");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("fence.train-first");
  }

  @Test
  void a_word_no_rule_speaks_of_is_said() {
    Run run = run("why", "zeppelin");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("No rule speaks of zeppelin");
  }

  @Test
  void nothing_asked_is_told_so() {
    Run run = run("why");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("--all");
  }

  @TestFactory
  List<DynamicTest> every_rule_has_a_page_and_stands_in_the_catalogue() {
    String catalogue = run("why", "--all", "--format", "markdown").out();
    return Rulebook.rules().keySet().stream()
        .map(
            id ->
                DynamicTest.dynamicTest(
                    id,
                    () -> {
                      assertThat(catalogue).contains("\n### " + id + "\n");
                      Run run = run("why", id);
                      assertThat(run.exit()).isZero();
                      assertThat(run.out()).contains("It applies when", "and not when");
                    }))
        .toList();
  }
}
