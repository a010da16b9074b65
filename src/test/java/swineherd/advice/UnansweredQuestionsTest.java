package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.setup.SetupReader;

/** Which questions are still open; not an example from a publication. */
class UnansweredQuestionsTest {
  private static List<String> open(String text) {
    return UnansweredQuestions.of(SetupReader.read("test.yaml", text, Examples.TODAY)).stream()
        .map(Unanswered::path)
        .toList();
  }

  @Test
  void gilts_are_not_asked_when_they_were_castrated() {
    assertThat(open("pigs: [{name: reds, sex: gilts}]"))
        .doesNotContain(
            "pigs[0].males", "pigs[0].castratedOn", "pigs[0].secondVaccine", "pigs[0].mated");
  }

  @Test
  void males_of_which_nothing_is_known_are_asked_everything() {
    assertThat(open("pigs: [{name: reds, sex: males}]"))
        .contains("pigs[0].males", "pigs[0].castratedOn", "pigs[0].secondVaccine");
  }

  @Test
  void an_answer_rules_out_the_questions_for_the_other_answers() {
    assertThat(open("pigs: [{name: reds, sex: males, males: castrated}]"))
        .contains("pigs[0].castratedOn")
        .doesNotContain("pigs[0].males", "pigs[0].secondVaccine", "pigs[0].mated");
  }

  @Test
  void a_question_is_ruled_out_by_the_answers_of_its_own_group_only() {
    assertThat(open("pigs: [{name: a, sex: gilts}, {name: b}]"))
        .contains("pigs[1].castratedOn")
        .doesNotContain("pigs[0].castratedOn");
  }
}
