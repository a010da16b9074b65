package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.GroundRest.Worth;

class GroundRestTest {
  /**
   * A judgement from survival: whipworm eggs at least 2 years (Res. Vet. Sci. 26 [read]), roundworm
   * 4 to 10 years by source [read].
   */
  @ParameterizedTest(name = "{0} days of rest: {1} [judgement]")
  @CsvSource({
    "0, TOO_SHORT",
    "364, TOO_SHORT",
    "365.25, STRONGYLES_ONLY",
    "730.5, FAIR",
    "1826.25, GOOD",
    "Infinity, GOOD"
  })
  void a_rest_is_worth(double days, Worth expected) {
    assertThat(GroundRest.worth(days)).isEqualTo(expected);
  }

  @Test
  void ground_rests_two_years_and_five_after_a_heavy_infestation() {
    LocalDate last = LocalDate.of(2025, 10, 1);
    assertThat(GroundRest.restUntil(last, false)).isEqualTo(LocalDate.of(2027, 10, 1));
    assertThat(GroundRest.restUntil(last, true)).isEqualTo(LocalDate.of(2030, 9, 30));
  }

  @Test
  void a_negative_rest_is_refused() {
    assertThatThrownBy(() -> GroundRest.worth(-1)).isInstanceOf(OutsideDomainException.class);
  }
}
