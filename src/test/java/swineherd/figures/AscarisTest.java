package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AscarisTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "P01 17 °C [judgement], 17, 80",
    "22 °C [judgement], 22, 27",
    "P02 24.5 °C [judgement], 24.5, 20",
    "P03 30 °C [judgement], 30, 13",
    "33 °C is held at the shortest [judgement], 33, 12",
  })
  void eggs_are_infective_after(String check, double meanC, int days) {
    assertThat(Ascaris.daysToInfective(meanC)).hasValue(days);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "barn in winter 11-12 weeks at about 17 °C (Saskatchewan) [read], 17, 77, 84",
    "damp 13-18 days at 30 °C (Univ. of Pennsylvania) [read], 30, 13, 18",
  })
  void the_formula_meets_the_published_times(String check, double meanC, int low, int high) {
    assertThat(Ascaris.daysToInfective(meanC).orElseThrow()).isBetween(low, high);
  }

  @ParameterizedTest(name = "P04 none at {0} °C (Parasites and Vectors 9:80) [read]")
  @ValueSource(doubles = {12, 14.5, -5})
  void no_egg_develops_in_the_cold(double meanC) {
    assertThat(Ascaris.daysToInfective(meanC)).isEmpty();
  }

  @Test
  void warmer_is_never_later() {
    int before = Integer.MAX_VALUE;
    for (int tenths = 146; tenths <= 330; tenths++) {
      int days = Ascaris.daysToInfective(tenths / 10.0).orElseThrow();
      assertThat(days).isLessThanOrEqualTo(before).isGreaterThanOrEqualTo(12);
      before = days;
    }
  }

  @ParameterizedTest(name = "{0} °C is refused")
  @ValueSource(doubles = {33.1, -41, Double.NaN})
  void a_temperature_nobody_tried_is_refused(double meanC) {
    assertThatThrownBy(() -> Ascaris.daysToInfective(meanC))
        .isInstanceOf(OutsideDomainException.class);
  }
}
