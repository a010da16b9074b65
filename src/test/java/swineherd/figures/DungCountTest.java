package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.DungCount.Eggs;
import swineherd.figures.DungCount.Reading;

class DungCountTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "P14 roundworm 150: may be passing through (Vet. Parasitol. 72) [memory],"
        + " ROUNDWORM, 150, false, DOUBTFUL",
    "roundworm 200: a true infection (the same) [memory], ROUNDWORM, 200, false, POSITIVE",
    "P15 whipworm 50: any egg counts [memory], WHIPWORM, 50, false, POSITIVE",
    "strongyle 450 in good pigs (common practice; no source), STRONGYLE, 450, false, LOW",
    "strongyle 450 in thin pigs (common practice; no source), STRONGYLE, 450, true, POSITIVE",
    "strongyle 500 (common practice; no source), STRONGYLE, 500, false, POSITIVE",
    "no egg excludes no larva (Univ. of Pennsylvania) [read], ROUNDWORM, 0, true, NONE_SEEN",
  })
  void a_count_reads_as(String check, Eggs eggs, double count, boolean thin, Reading expected) {
    assertThat(DungCount.reading(eggs, count, thin)).isEqualTo(expected);
  }

  @Test
  void a_negative_count_is_refused() {
    assertThatThrownBy(() -> DungCount.reading(Eggs.WHIPWORM, -1, false))
        .isInstanceOf(OutsideDomainException.class);
  }
}
