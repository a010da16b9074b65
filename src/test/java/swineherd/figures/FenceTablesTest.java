package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;

class FenceTablesTest {
  @ParameterizedTest(name = "{0} in {1}.csv")
  @CsvSource({
    "pens.fence.solid, fence-kinds",
    "pens.fence.conductor, conductors",
    "pens.fence.growth, vegetation",
    "place.soil, soils",
  })
  void every_answer_a_keeper_can_give_has_its_row(String question, String table) {
    assertThat(Rulebook.questions().get(question).choices().keySet())
        .isNotEmpty()
        .allSatisfy(choice -> assertThat(Table.named(table).has(choice)).as(choice).isTrue());
  }
}
