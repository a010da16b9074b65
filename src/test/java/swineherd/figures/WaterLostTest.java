package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.WaterLost.Action;

class WaterLostTest {
  /** Half a per cent of the weight an hour: Merck Veterinary Manual, salt toxicosis [memory]. */
  @ParameterizedTest(name = "V06 {0} kg: {1} L an hour [memory]")
  @CsvSource({"20, 0.10", "40, 0.20", "60, 0.30", "100, 0.50"})
  void the_hourly_ration(double weight, double litres) {
    assertThat(WaterLost.litresPerHour(weight)).isCloseTo(litres, within(0.005));
  }

  /** Severe after more than 24 h, sooner in heat (J. Swine Health Prod. 31:295 [read]). */
  @ParameterizedTest(name = "{0} h dry at {1} °C, signs {2}: {3} [judgement]")
  @CsvSource({
    "8, 15, false, RESTORE",
    "8, 30, false, RESTORE",
    "12, 15, false, RESTORE_IN_STAGES",
    "12, 25, false, RESTORE_IN_STAGES",
    "12, 25.1, false, VET_NOW_AND_RATION",
    "12, , false, VET_NOW_AND_RATION",
    "24, 5, false, VET_NOW_AND_RATION",
    "3, 15, true, VET_NOW_AND_RATION",
    ", 15, false, VET_NOW_AND_RATION",
  })
  void the_action_follows_hours_and_heat(Double hours, Double air, boolean signs, Action expected) {
    assertThat(WaterLost.action(hours, air, signs)).isEqualTo(expected);
  }

  @Test
  void longer_or_hotter_is_never_a_milder_action_seed_46() {
    Random random = new Random(46);
    for (int i = 0; i < 1000; i++) {
      double hours = random.nextDouble() * 40;
      double air = random.nextDouble() * 50 - 10;
      Action action = WaterLost.action(hours, air, false);
      assertThat(WaterLost.action(hours + random.nextDouble() * 20, air, false))
          .isGreaterThanOrEqualTo(action);
      assertThat(WaterLost.action(hours, air + random.nextDouble() * 10, false))
          .isGreaterThanOrEqualTo(action);
      assertThat(WaterLost.action(hours, null, false)).isGreaterThanOrEqualTo(action);
    }
  }

  @Test
  void impossible_values_are_refused() {
    assertThatThrownBy(() -> WaterLost.action(-1.0, 10.0, false))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> WaterLost.litresPerHour(0)).isInstanceOf(OutsideDomainException.class);
  }
}
