package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeederSpaceTest {
  @ParameterizedTest(name = "F13: Petherick and Baxter 1981 [memory]: {0} kg is {1} cm wide")
  @CsvSource({"60, 26.3", "110, 32.2"})
  void f13_a_place_is_as_wide_as_published(double weight, double cm) {
    assertThat(100 * FeederSpace.placeWidth(weight)).isCloseTo(cm, within(0.1));
  }

  @Test
  void a_place_is_a_tenth_wider_than_the_shoulders() {
    // shoulders 6.1 cm times the cube root of the weight, Petherick and Baxter 1981 [memory]
    assertThat(FeederSpace.placeWidth(60)).isCloseTo(1.1 * 0.061 * Math.cbrt(60), within(1e-9));
  }

  @Test
  void f14_four_rationed_pigs_of_90_kg_need_the_larger_of_table_and_place() {
    // worked example [derived]: 280 mm in the stockmanship table [read] against 30.1 cm a place
    assertThat(FeederSpace.trough(4, 90)).isCloseTo(1.20, within(0.01));
  }

  @ParameterizedTest(
      name = "Stockmanship standards [read]: {0} kg, trough {1} mm, hopper {2} mm a pig")
  @CsvSource({"15, 150, 38", "35, 200, 50", "60, 240, 60", "90, 280, 70", "120, 300, 75"})
  void no_feeder_is_shorter_than_the_stockmanship_table(
      double weight, double trough, double hopper) {
    for (int pigs = 1; pigs <= 40; pigs++) {
      assertThat(FeederSpace.trough(pigs, weight)).isGreaterThanOrEqualTo(pigs * trough / 1000);
      assertThat(FeederSpace.hopper(pigs, weight)).isGreaterThanOrEqualTo(pigs * hopper / 1000);
    }
  }

  @ParameterizedTest(name = "{0} pigs share {1} hopper places")
  @CsvSource({"1, 2", "4, 2", "8, 2", "9, 3", "12, 3", "13, 4"})
  void a_hopper_has_a_place_for_four_pigs_and_never_only_one(int pigs, int places) {
    // common practice, no source; 4 to 5 pigs a place, National Hog Farmer on older US advice
    // [read]
    assertThat(FeederSpace.hopperPlaces(pigs)).isEqualTo(places);
  }

  @Test
  void heavier_or_more_pigs_never_get_less_room() {
    for (double weight = 5; weight < 140; weight += 0.5) {
      for (int pigs = 0; pigs < 13; pigs++) {
        double trough = FeederSpace.trough(pigs, weight);
        assertThat(FeederSpace.trough(pigs, weight + 0.5)).isGreaterThanOrEqualTo(trough);
        assertThat(FeederSpace.trough(pigs + 1, weight)).isGreaterThanOrEqualTo(trough);
        double hopper = FeederSpace.hopper(pigs, weight);
        assertThat(FeederSpace.hopper(pigs, weight + 0.5)).isGreaterThanOrEqualTo(hopper);
        assertThat(FeederSpace.hopper(pigs + 1, weight)).isGreaterThanOrEqualTo(hopper);
      }
    }
  }

  @Test
  void impossible_pigs_are_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FeederSpace.trough(-1, 60));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FeederSpace.hopper(2, 400));
  }
}
