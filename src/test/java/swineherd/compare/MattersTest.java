package swineherd.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

class MattersTest {
  private static SetupFile read(String text) {
    return SetupReader.read("test.yaml", text, LocalDate.of(2027, 3, 1));
  }

  @Test
  void a_question_that_decides_an_item_matters_and_says_which() {
    Checklist checklist =
        Advisor.advise(
            read(
                """
                pens: [{name: lot, fence: {kind: electric}}]
                pigs: [{name: reds, count: 3}]
                """));
    assertThat(Matters.of(checklist, KnowledgeBase.shipped(), 60_000))
        .filteredOn(m -> m.question().path().equals("pigs[0].trained"))
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.items()).contains("fence.train-first");
              assertThat(m.moves()).isEqualTo(m.items().size());
              assertThat(m.by()).isPositive();
            });
  }

  @Test
  void a_question_that_moves_nothing_is_left_out() {
    Checklist checklist = Advisor.advise(read("pigs: [{name: reds, count: 3}]"));
    assertThat(Matters.of(checklist, KnowledgeBase.shipped(), 60_000))
        .extracting(m -> m.question().path())
        .doesNotContain("units", "checkOn", "name");
  }

  @Test
  void the_one_that_moves_the_list_farthest_comes_first() {
    Checklist checklist = Advisor.advise(read("pens: [{name: a}]\npigs: [{name: b, count: 2}]"));
    List<Matters.Matter> matters = Matters.of(checklist, KnowledgeBase.shipped(), 60_000);
    assertThat(matters).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(b.by(), a.by()));
  }

  @Test
  void without_trying_out_it_tells_what_the_list_already_rests_on() {
    Checklist checklist =
        Advisor.advise(read("pens: [{name: lot}]\npigs: [{name: reds, count: 3}]"));
    assertThat(Matters.resting(checklist))
        .filteredOn(m -> m.question().path().equals("pens[0].fence.kind"))
        .singleElement()
        .satisfies(m -> assertThat(m.items()).contains("fence.find-out"));
  }

  @Test
  void no_time_means_no_answer_and_no_fault() {
    Checklist checklist = Advisor.advise(read("pigs: [{name: reds, count: 3}]"));
    assertThat(Matters.of(checklist, KnowledgeBase.shipped(), 0)).isEmpty();
  }

  @Test
  void an_answer_given_changes_the_copy_and_not_the_setup() {
    SetupFile file = read("pens: [{name: lot}]\npigs: [{name: reds, count: 3}]");
    SetupFile changed = file.with("pens[0].fence.kind", "electric");
    assertThat(changed.setup().pens().get(0).fence().kind()).isNotNull();
    assertThat(changed.answers()).containsKey("pens[0].fence.kind");
    assertThat(file.setup().pens().get(0).fence().kind()).isNull();
    assertThat(changed.with("pens[0].fence.kind", null).setup()).isEqualTo(file.setup());
  }
}
