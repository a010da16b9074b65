package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HandlingTest {
  @ParameterizedTest(name = "{0}: rise {1} m at {2} degrees, {3} m [derived]")
  @CsvSource({
    "HG02, 0.45, 20, 1.32",
    "HG02, 0.45, 15, 1.74",
    "HG02, 0.45, 10, 2.59",
    "TR09, 0.40, 20, 1.17",
    "TR09, 0.40, 10, 2.30"
  })
  void a_flatter_ramp_is_longer(String id, double rise, double degrees, double length) {
    assertThat(Handling.rampLength(rise, degrees)).isCloseTo(length, within(0.01));
  }

  // HG03 [derived]; above 20 degrees, Regulation (EC) 1/2005 annex I ch. III [read]
  @Test
  void a_ramp_of_1_5_m_to_a_floor_at_0_6_m_is_too_steep() {
    double degrees = Handling.rampDegrees(0.6, 1.5);
    assertThat(degrees).isCloseTo(23.6, within(0.1));
    assertThat(Handling.ramp(degrees)).isEqualTo(Signal.RED);
  }

  @ParameterizedTest(name = "{0} degrees: {1} (20: Regulation (EC) 1/2005 [read]; 15: judgement)")
  @CsvSource({"0, GREEN", "15, GREEN", "15.1, AMBER", "20, AMBER", "20.1, RED"})
  void the_law_stops_at_20_degrees(double degrees, Signal signal) {
    assertThat(Handling.ramp(degrees)).isEqualTo(signal);
  }

  // Regulation (EC) 1/2005 annex I ch. III: 10 degrees, 17.6 % [read]
  @Test
  void a_ramp_over_10_degrees_needs_cleats() {
    assertThat(Handling.needsCleats(10)).isFalse();
    assertThat(Handling.needsCleats(10.1)).isTrue();
  }

  @Test
  void a_ramp_that_cannot_be_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Handling.rampDegrees(0.6, 0.6));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Handling.rampLength(0.6, 0));
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> Handling.ramp(90));
  }

  @ParameterizedTest(name = "{0} draws with the fixed seed 61")
  @ValueSource(ints = 500)
  void rise_run_and_length_make_a_right_angle(int draws) {
    SplittableRandom random = new SplittableRandom(61);
    for (int i = 0; i < draws; i++) {
      double rise = random.nextDouble(0.1, 1.5);
      double degrees = random.nextDouble(1, 60);
      double length = Handling.rampLength(rise, degrees);
      assertThat(Math.hypot(rise, Handling.rampRun(rise, degrees)))
          .isCloseTo(length, within(1e-9 * length));
      assertThat(Handling.rampDegrees(rise, length)).isCloseTo(degrees, within(1e-9));
    }
  }
}
