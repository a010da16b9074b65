package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.SnowLoad.Snow;

/** Densities of snow are common practice without a source; the loads follow from them. */
class SnowLoadTest {
  @ParameterizedTest(name = "{0}: {1} m of {2} kg/m3, {3} kg/m2, {4} psf [derived]")
  @CsvSource({"KN01, 0.40, 200, 80, 16.4", "KN02, 0.30, 350, 105, 21.5"})
  void load_by_density(String id, double depth, double density, double load, double psf) {
    assertThat(SnowLoad.of(depth, density)).isCloseTo(load, within(0.1));
    assertThat(SnowLoad.of(depth, density) * SnowLoad.PSF).isCloseTo(psf, within(0.1));
  }

  @Test
  void a_kind_of_snow_gives_a_band() {
    assertThat(SnowLoad.of(1, Snow.WET)).isEqualTo(new Band(300, 375, 450));
    assertThat(SnowLoad.of(1, Snow.ICE)).isEqualTo(Band.exactly(900));
  }

  @Test
  void settling_makes_the_same_depth_heavier() {
    List<Snow> kinds = List.of(Snow.values());
    for (int i = 1; i < kinds.size(); i++) {
      assertThat(SnowLoad.of(0.3, kinds.get(i)).low())
          .isGreaterThanOrEqualTo(SnowLoad.of(0.3, kinds.get(i - 1)).high());
    }
  }

  @Test
  void refuses_snow_denser_than_ice() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> SnowLoad.of(0.3, 1000))
        .withMessageContaining("density");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> SnowLoad.of(-0.1, Snow.WET))
        .withMessageContaining("depth");
  }
}
