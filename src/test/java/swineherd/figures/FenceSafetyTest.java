package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** IEC 60335-2-76 and its annex BB [read], unless a test says otherwise. */
class FenceSafetyTest {
  @Test
  void EF26_fences_of_two_energizers_2_m_apart_are_unsafe() {
    assertThat(FenceSafety.fencesFarEnough(2.0)).isFalse();
    assertThat(FenceSafety.fencesFarEnough(2.5)).isTrue();
  }

  @Test
  void EF27_a_rod_8_m_from_the_earth_of_the_house_is_too_near() {
    assertThat(FenceSafety.earthFarEnough(8)).isFalse();
    assertThat(FenceSafety.earthFarEnough(10)).isTrue();
  }

  @Test
  void EF28_a_live_wire_10_cm_from_barbed_wire_is_too_near() {
    assertThat(FenceSafety.clearOfBarbedWire(0.10)).isFalse();
    assertThat(FenceSafety.clearOfBarbedWire(0.15)).isTrue();
  }

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
  void EF30_a_sign_of_100_by_200_mm_with_letters_of_25_mm_is_the_smallest_allowed() {
    assertThat(FenceSafety.signLargeEnough(0.100, 0.200, 0.025)).isTrue();
    assertThat(FenceSafety.signLargeEnough(0.200, 0.100, 0.025)).isTrue();
    assertThat(FenceSafety.signLargeEnough(0.099, 0.200, 0.025)).isFalse();
    assertThat(FenceSafety.signLargeEnough(0.100, 0.199, 0.025)).isFalse();
    assertThat(FenceSafety.signLargeEnough(0.100, 0.200, 0.024)).isFalse();
  }

  @ParameterizedTest(name = "{0}: a line of {1} V is kept {2} m clear of")
  @CsvSource({"EF31, 12000, 4", "up to 1 kV, 1000, 3", "up to 33 kV, 33000, 4", "above, 33001, 8"})
  void a_power_line_is_kept_clear_of(String id, double volts, double metres) {
    assertThat(FenceSafety.powerLineClearance(volts)).as(id).isEqualTo(metres);
  }

  @Test
  void EF31_a_fence_near_a_power_line_is_at_most_3_m_high() {
    assertThat(FenceSafety.heightNearPowerLine()).isEqualTo(3);
  }

  @Test
  void an_impulse_has_at_most_5_joules() {
    assertThat(FenceSafety.energyAllowed(5)).isTrue();
    assertThat(FenceSafety.energyAllowed(5.1)).isFalse();
  }

  /** 1 s [read], 10 ms [memory]. */
  @Test
  void impulses_are_short_and_a_second_apart() {
    assertThat(FenceSafety.rhythmAllowed(1, 0.010)).isTrue();
    assertThat(FenceSafety.rhythmAllowed(0.9, 0.001)).isFalse();
    assertThat(FenceSafety.rhythmAllowed(1.2, 0.011)).isFalse();
  }

  @Test
  void a_negative_distance_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> FenceSafety.fencesFarEnough(-1));
  }
}
