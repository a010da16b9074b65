package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.rulebook.RulebookException;

/**
 * A small sound rulebook, and one thing broken in it at a time: the build must say what and where.
 */
class RuleCompilerTest {
  private static final String RULE =
      """
      package swineherd.rules.shed;

      import swineherd.advice.Advice;
      import swineherd.setup.Pen;

      // sheds without a size
      rule "shed.measure"
      when
          // the pen
          $pen : Pen(area < 20)
      then
          insertLogical(Advice.of("shed.measure", $pen.name()).with("number", 3));
      end
      """;
  private static final String CARD =
      """
      - id: shed.measure
        heading: Measure {about}.
        do: Take a tape {number} times.
        why: It looks small.
        stage: now
        consequence: comfort
        likelihood: 0.5
        evidence: judgement
      """;
  private static final String QUESTION = "- {path: name, label: name, ask: Which, kind: text}\n";
  private static final String SOURCE =
      "- {key: some-law, body: A parliament, title: A law, year: 2000, seen: read}\n";
  private static final String TABLE = "key,value,source,evidence,mark\na,1,some-law,law,read\n";

  @TempDir Path rules;
  @TempDir Path classes;

  @BeforeEach
  void sound() throws IOException {
    write("shed/shed.drl", RULE);
    write("shed/shed.yaml", CARD);
    write("questions.yaml", QUESTION);
    write("sources.yaml", SOURCE);
    write("tables/sizes.csv", TABLE);
  }

  private void write(String file, String text) throws IOException {
    Path path = rules.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  private List<String> faults() {
    RulebookException e =
        catchThrowableOfType(RulebookException.class, () -> RuleCompiler.compile(rules, classes));
    assertThat(e).as("a rulebook that should be refused").isNotNull();
    return e.faults();
  }

  private void broken(String file, String before, String after, String... says) throws IOException {
    String text = Files.readString(rules.resolve(file));
    assertThat(text).contains(before);
    write(file, text.replace(before, after));
    assertThat(faults())
        .anySatisfy(f -> assertThat(f).contains(file.substring(file.indexOf('/') + 1)))
        .anySatisfy(f -> assertThat(f).contains(says));
  }

  @Test
  void a_sound_rulebook_is_counted() throws IOException {
    assertThat(RuleCompiler.compile(rules, classes))
        .isEqualTo("rulebook: 1 rules, 1 cards, 1 questions, 1 tables, 1 sources");
    assertThat(classes.resolve("rulebook/cards/shed.json")).exists();
    assertThat(Files.readString(classes.resolve("rulebook/models.json")))
        .contains("swineherd.rules.shed.Rules");
  }

  @Test
  void classes_of_rules_that_are_no_more_are_taken_away() throws IOException {
    Path old = classes.resolve("swineherd/rules/shed/LambdaOld.class");
    Path foreign = classes.resolve("swineherd/setup/Setup.class");
    for (Path file : List.of(old, foreign)) {
      Files.createDirectories(file.getParent());
      Files.writeString(file, "");
    }
    RuleCompiler.compile(rules, classes);
    assertThat(old).doesNotExist();
    assertThat(foreign).exists();
    assertThat(old.getParent()).isDirectoryContaining("glob:**/Rules*.class");
  }

  @Test
  void a_slip_of_the_pen_has_its_line() throws IOException {
    broken("shed/shed.drl", "then\n", "den\n", "shed.drl:");
  }

  @Test
  void an_unknown_fact_names_the_rule_and_its_line() throws IOException {
    broken(
        "shed/shed.drl", "Pen(area < 20)", "Pan(area < 20)", "shed.drl:7: rule \"shed.measure\"");
  }

  @Test
  void an_unknown_field_names_the_rule_and_its_line() throws IOException {
    broken("shed/shed.drl", "area < 20", "aera < 20", "shed.drl:7: rule \"shed.measure\"");
  }

  @Test
  void a_fault_after_then_names_the_rule_and_its_line() throws IOException {
    broken("shed/shed.drl", "$pen.name()", "$pan.name()", "shed.drl:7: rule \"shed.measure\"");
  }

  @Test
  void the_guilty_one_of_two_rules_is_named() throws IOException {
    String second =
        RULE.substring(RULE.indexOf("// sheds"))
            .replace("shed.measure", "shed.second")
            .replace("area < 20", "aera < 20");
    write("shed/shed.drl", RULE + "\n" + second);
    write("shed/shed.yaml", CARD + CARD.replace("shed.measure", "shed.second"));
    assertThat(faults()).singleElement().asString().contains("shed.drl:16: rule \"shed.second\"");
  }

  @Test
  void only_logical_conclusions_may_follow_then() throws IOException {
    broken("shed/shed.drl", "insertLogical(", "insert(", "only insertLogical(...)");
  }

  @Test
  void salience_is_refused() throws IOException {
    broken("shed/shed.drl", "\"\nwhen", "\"\nsalience 10\nwhen", "no salience");
  }

  @Test
  void a_rule_is_called_after_its_topic() throws IOException {
    broken(
        "shed/shed.drl",
        "rule \"shed.measure\"",
        "rule \"pen.measure\"",
        "must begin with \"shed.\"");
  }

  @Test
  void a_package_is_called_after_its_folder() throws IOException {
    broken("shed/shed.drl", "rules.shed;", "rules.hut;", "package must be swineherd.rules.shed");
  }

  @Test
  void two_rules_of_one_name_are_told_with_both_places() throws IOException {
    write("hut/hut.drl", RULE.replace("rules.shed", "rules.hut"));
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("stands also in"));
  }

  @Test
  void advice_of_another_name_is_refused() throws IOException {
    broken("shed/shed.drl", "of(\"shed.measure\"", "of(\"shed.other\"", "must have its name");
  }

  @Test
  void a_rule_without_a_card_is_refused() throws IOException {
    broken("shed/shed.yaml", "id: shed.measure", "id: shed.other", "has no card");
  }

  @Test
  void a_card_without_a_rule_is_refused() throws IOException {
    write("shed/shed.yaml", CARD + CARD.replace("shed.measure", "shed.other"));
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("no rule has this name"));
  }

  @Test
  void a_card_twice_is_refused() throws IOException {
    write("shed/shed.yaml", CARD + CARD);
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("stands there twice"));
  }

  @Test
  void a_placeholder_nobody_fills_is_refused() throws IOException {
    broken("shed/shed.yaml", "{number}", "{size}", "does not fill [size]");
  }

  @Test
  void an_unknown_source_of_a_card_is_refused() throws IOException {
    broken("shed/shed.yaml", "judgement", "law\n  sources: [no-law]", "unknown source no-law");
  }

  @Test
  void evidence_that_claims_a_source_needs_one() throws IOException {
    broken("shed/shed.yaml", "judgement", "study", "its evidence needs a source");
  }

  @Test
  void a_likelihood_is_a_share() throws IOException {
    broken("shed/shed.yaml", "0.5", "50", "a likelihood lies above 0");
  }

  @Test
  void an_item_needs_all_its_parts() throws IOException {
    broken("shed/shed.yaml", "  why: It looks small.\n", "", "needs do, why");
  }

  @Test
  void a_card_may_stand_only_for_cards_that_are_there() throws IOException {
    broken(
        "shed/shed.yaml", "judgement", "judgement\n  standsFor: [shed.no]", "which is not there");
  }

  @Test
  void a_card_that_stands_for_another_calls_the_vet_no_later() throws IOException {
    write(
        "shed/shed.drl",
        RULE + "\n" + RULE.substring(RULE.indexOf("// sheds")).replace("shed.measure", "shed.ill"));
    write(
        "shed/shed.yaml",
        CARD
            + "  standsFor: [shed.ill]\n"
            + CARD.replace("shed.measure", "shed.ill")
            + "  referral: vet-today\n");
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("must not call the vet later"));
  }

  @Test
  void a_word_that_is_no_part_of_a_card_is_told() throws IOException {
    broken("shed/shed.yaml", "  why:", "  wy:", "unknown word wy; one of: [");
  }

  @Test
  void a_row_needs_a_known_source() throws IOException {
    broken("tables/sizes.csv", "some-law", "no-law", "sizes.csv:2: row a: unknown source no-law");
  }

  @Test
  void a_row_needs_known_evidence() throws IOException {
    broken("tables/sizes.csv", ",law,", ",rumour,", "unknown evidence");
  }

  @Test
  void a_row_stands_once() throws IOException {
    write("tables/sizes.csv", TABLE + "a,2,some-law,law,read\n");
    assertThat(faults())
        .anySatisfy(f -> assertThat(f).contains("sizes.csv:3: row a stands there twice"));
  }

  @Test
  void a_source_stands_once() throws IOException {
    write("sources.yaml", SOURCE + SOURCE);
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("some-law stands there twice"));
  }

  @Test
  void a_question_needs_a_kind() throws IOException {
    broken("questions.yaml", ", kind: text", "", "needs path, label, ask and kind");
  }

  @Test
  void limits_of_a_question_have_their_unit() throws IOException {
    broken("questions.yaml", "kind: text", "kind: mass, range: [1, 2 kg]", "has no unit");
  }

  @Test
  void a_question_hangs_only_on_answers_that_exist() throws IOException {
    broken("questions.yaml", "kind: text", "kind: text, when: {place.x: [y]}", "no such answer");
  }
}
