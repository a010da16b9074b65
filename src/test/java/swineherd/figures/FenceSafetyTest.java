package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IEC 60335-2-76 and its annex BB [read], unless a test says otherwise. */
class FenceSafetyTest {
  @ParameterizedTest(name = "{0}: {1} m of road: {2} signs [judgement]")
  @CsvSource({"EF29, 180, 5", "none, 0, 1", "one length, 50, 2"})
  void signs_stand_50_m_apart(String id, double metres, int signs) {
    assertThat(FenceSafety.signs(metres)).as(id).isEqualTo(signs);
  }

  /** Trade code 90 m, Germany 100 m, US practice 200 to 300 ft [read]. */
  @ParameterizedTest(name = "at most {0} m")
  @CsvSource({"90", "100", "60.96"})
  void signs_stand_no_farther_apart_than_any_published_spacing(double spacing) {
    for (int metres = 10; metres <= 1000; metres += 10) {
      assertThat(metres / (double) (FenceSafety.signs(metres) - 1)).isLessThanOrEqualTo(spacing);
    }
  }

  @Test
  void an_impulse_has_at_most_5_joules() {
    assertThat(FenceSafety.energyAllowed(5)).isTrue();
    assertThat(FenceSafety.energyAllowed(5.1)).isFalse();
  }
}
