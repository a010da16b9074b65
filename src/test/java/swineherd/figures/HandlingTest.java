package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @ParameterizedTest(name = "{0} degrees: {1} (20: Regulation (EC) 1/2005 [read]; 15: judgement)")
  @CsvSource({"0, GREEN", "15, GREEN", "15.1, AMBER", "20, AMBER", "20.1, RED"})
  void the_law_stops_at_20_degrees(double degrees, Signal signal) {
    assertThat(Handling.ramp(degrees)).isEqualTo(signal);
  }

  @Test
  void a_ramp_that_cannot_be_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Handling.rampLength(0.6, 0));
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> Handling.ramp(90));
  }
}
