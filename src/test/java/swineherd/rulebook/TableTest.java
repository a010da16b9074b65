package swineherd.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class TableTest {
  @Test
  void an_unknown_table_is_named() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Table.named("no-such-table"))
        .withMessageContaining("no-such-table");
  }

  @Test
  void every_source_has_the_key_it_stands_under() {
    assertThat(Rulebook.sources()).isNotEmpty();
    Rulebook.sources().forEach((key, source) -> assertThat(source.key()).isEqualTo(key));
  }
}
