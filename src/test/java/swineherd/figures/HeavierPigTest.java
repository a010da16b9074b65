package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HeavierPigTest {
  @ParameterizedTest(name = "YD11 tas-2017 [read]: {0} changes by {1} over 20 kg")
  @CsvSource({"carcass-yield, 0.82", "backfat, 3.6", "fat-free-lean, -1.56"})
  void twenty_kilograms_change_the_carcass(String trait, double change) {
    assertThat(HeavierPig.change(trait, 110, 130)).isCloseTo(change, within(0.01));
    assertThat(HeavierPig.change(trait, 130, 110)).isCloseTo(-change, within(0.01));
  }

  @ParameterizedTest(name = "YD12 [derived]: {0} at 110 kg is {2} at {1} kg")
  @CsvSource({
    "2.778, 130, 2.959, 0.003",
    "2.78, 120, 2.87, 0.005",
    "2.78, 130, 2.96, 0.005",
    "2.78, 140, 3.06, 0.005"
  })
  void feed_conversion_worsens(double at110, double kg, double conversion, double tolerance) {
    assertThat(HeavierPig.feedConversion(at110, kg)).isCloseTo(conversion, within(tolerance));
  }

  @Test
  void weights_outside_the_review_are_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HeavierPig.change("backfat", 90, 110));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HeavierPig.feedConversion(2.8, 151));
  }
}
