package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
  void ids_near_a_wrong_one_are_offered() {
    Run run = run("why", "fence.trian-first");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("Did you mean").contains("fence.train-first  Train them");
  }

  @Test
  void singular_and_plural_british_and_american_find_the_same() {
    assertThat(found("wires")).isEqualTo(found("wire")).hasSizeGreaterThan(10);
    assertThat(found("worming")).isEqualTo(found("worms")).hasSizeGreaterThan(10);
    assertThat(found("diarrhea")).isEqualTo(found("scour")).isNotEmpty();
    assertThat(found("energiser")).isEqualTo(found("energizer")).isNotEmpty();
  }

  @Test
  void rules_about_a_word_come_before_rules_that_mention_it() {
    assertThat(found("shade").get(0)).startsWith("sun.");
    assertThat(found("castration").get(0)).startsWith("taint.");
    assertThat(found("freezer").get(0)).startsWith("slaughter.freezer");
  }

  private static List<String> found(String word) {
    Run run = run("why", word);
    assertThat(run.exit()).as(word).isZero();
    return run.out().lines().toList();
  }

  @Test
  void the_example_names_the_question_and_where_it_stands() {
    assertThat(run("why", "fence.train-first").out())
        .contains("trained to electric wire: no (pigs[0].trained)");
  }

  @Test
  void own_rules_have_pages_too() {
    Run run = run("why", "county.permit", "--rules", "scenarios/own-rules");
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .contains("county.permit: Ask the county for its permit")
        .contains("and no pig is there yet")
        .contains("County code, chapter on livestock (read 2026)");
    assertThat(run("why", "permit", "--rules", "scenarios/own-rules").exit()).isZero();
    assertThat(run("why", "county.permit").exit()).isEqualTo(2);
  }

  @Test
  void every_link_of_the_catalogue_leads_somewhere() {
    String catalogue = run("why", "--all", "--format", "markdown").out();
    Set<String> anchors = new HashSet<>();
    List<String> links = new ArrayList<>();
    for (String line : catalogue.lines().toList()) {
      if (line.startsWith("#")) {
        String heading = line.replaceFirst("^#+ ", "").toLowerCase(Locale.ROOT);
        assertThat(anchors.add(heading.replaceAll("[^a-z0-9 -]", "").replace(' ', '-')))
            .as(heading)
            .isTrue();
      }
      Matcher link = Pattern.compile("^- \\[[^\\]]+\\]\\(#([^)]+)\\)").matcher(line);
      if (link.find()) {
        links.add(link.group(1));
      }
    }
    assertThat(links).hasSizeGreaterThan(Rulebook.rules().size()).allMatch(anchors::contains);
    assertThat(catalogue).doesNotContain("\uFFFD");
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
