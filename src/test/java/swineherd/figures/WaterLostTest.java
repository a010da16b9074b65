package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.WaterLost.Action;
import swineherd.figures.WaterLost.Look;

class WaterLostTest {
  /** Half a per cent of the weight an hour: Merck Veterinary Manual, salt toxicosis [memory]. */
  @ParameterizedTest(name = "V06 {0} kg: {1} L an hour [memory]")
  @CsvSource({"20, 0.10", "40, 0.20", "60, 0.30", "100, 0.50"})
  void the_hourly_ration(double weight, double litres) {
    assertThat(WaterLost.litresPerHour(weight)).isCloseTo(litres, within(0.005));
  }

  @Test
  void after_30_hours_the_vet_comes_first_and_a_pig_of_60_kg_gets_300_ml_an_hour() {
    // > 24 h: J. Swine Health Prod. 31(6) [read]; 0.5 % an hour: Merck Veterinary Manual [memory]
    assertThat(WaterLost.action(30.0, 10.0, Look.BRIGHT)).isEqualTo(Action.VET_FIRST);
    assertThat(WaterLost.litresPerHour(60)).isCloseTo(0.3, within(1e-9));
  }

  /** Worked examples of our rule; hours as in J. Swine Health Prod. 31(6) [read]. */
  @ParameterizedTest(name = "{0} h at {1} °C, {2}: {3} [judgement]")
  @CsvSource({
    "6, 10, BRIGHT, WATCH",
    "6, 10, DULL_OR_UNSEEN, IN_STEPS",
    "6, 10, , IN_STEPS",
    "6, 10, NERVOUS, VET_FIRST",
    "12, 25, BRIGHT, IN_STEPS",
    "12, 26, BRIGHT, VET_FIRST",
    "12, , BRIGHT, VET_FIRST",
    "23, -10, BRIGHT, IN_STEPS",
    "24, -10, BRIGHT, VET_FIRST",
    ", 10, BRIGHT, VET_FIRST"
  })
  void hours_heat_and_looks_decide(Double hours, Double air, Look look, Action then) {
    assertThat(WaterLost.action(hours, air, look)).isEqualTo(then);
  }

  @Test
  void longer_hotter_duller_or_unknown_is_never_milder_seed_46() {
    Random random = new Random(46);
    for (int i = 0; i < 500; i++) {
      double hours = 48 * random.nextDouble();
      double air = -20 + 60 * random.nextDouble();
      for (Look look : Look.values()) {
        Action now = WaterLost.action(hours, air, look);
        assertThat(WaterLost.action(hours + 1, air, look)).isGreaterThanOrEqualTo(now);
        assertThat(WaterLost.action(hours, air + 5, look)).isGreaterThanOrEqualTo(now);
        assertThat(WaterLost.action(hours, air, Look.NERVOUS)).isGreaterThanOrEqualTo(now);
        assertThat(WaterLost.action(null, air, look)).isGreaterThanOrEqualTo(now);
        assertThat(WaterLost.action(hours, null, look)).isGreaterThanOrEqualTo(now);
      }
    }
  }

  @Test
  void impossible_values_are_refused() {
    assertThatThrownBy(() -> WaterLost.action(-1.0, 10.0, Look.BRIGHT))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> WaterLost.litresPerHour(0)).isInstanceOf(OutsideDomainException.class);
  }
}
