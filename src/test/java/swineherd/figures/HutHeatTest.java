package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.HutHeat.Wall;

class HutHeatTest {
  private static final double CFM = 1.69901;

  // three times maintenance
  @ParameterizedTest(name = "{0}: {1} kg gives off {2} W, CIGR 2002 [memory]")
  @CsvSource({"KU01, 60, 186.5", "table, 30, 123", "table, 100, 235"})
  void heat_of_a_pig(String id, double weight, double watts) {
    assertThat(HutHeat.perPig(weight, 3)).isCloseTo(watts, within(0.5));
  }

  // KU02 and its neighbours [derived]: four of 60 kg, 2.4 x 1.8 x 1.2 m, 12 m3/h for each
  @ParameterizedTest(name = "{0}: {1} walls, {2} degC over outside [derived]")
  @CsvSource({"KU02, PLYWOOD, 7.11", "example, METAL, 5.11", "example, FOAM_LINED, 17.27"})
  void four_pigs_warm_a_low_hut(String id, Wall wall, double degrees) {
    double surface = 2 * (2.4 + 1.8) * 1.2 + 2.4 * 1.8;
    assertThat(surface).isCloseTo(14.4, within(0.01));
    assertThat(HutHeat.gain(4, 60, surface, wall, 12)).isCloseTo(degrees, within(0.05));
  }

  // KU03: a cubic foot a minute is 1.69901 m3/h exactly enough; MWPS-8 [memory]
  @ParameterizedTest(name = "KU03: {0} kg, {1} cubic feet a minute, MWPS-8 [memory]")
  @CsvSource({"14, 3", "33.9, 3", "34, 7", "67, 7", "68, 10", "100, 10"})
  void least_air_in_winter(double weight, double cubicFeet) {
    assertThat(HutHeat.winterVentilation(weight)).isCloseTo(cubicFeet * CFM, within(0.05));
  }

  @Test
  void fewer_pigs_or_a_taller_hut_are_colder() {
    double full = HutHeat.gain(4, 60, 14.4, Wall.PLYWOOD, 12);
    assertThat(HutHeat.gain(2, 60, 14.4, Wall.PLYWOOD, 12)).isLessThan(full);
    assertThat(HutHeat.gain(4, 60, 30, Wall.PLYWOOD, 12)).isLessThan(full);
    assertThat(HutHeat.gain(4, 60, 14.4, Wall.PLYWOOD, 24)).isLessThan(full);
  }

  @Test
  void refuses_pigs_the_formula_was_not_made_for() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HutHeat.perPig(15, 3))
        .withMessageContaining("live weight");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HutHeat.winterVentilation(101));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HutHeat.gain(4, 60, 0, Wall.METAL, 12))
        .withMessageContaining("m2");
  }
}
