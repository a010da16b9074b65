package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.PhysicalFence.Fault;

class SolidFenceTest {
  private static SolidFence solid(String fence, double kg, double target) {
    return Setups.one(SolidFence.class, Setups.gilts("{kind: solid, " + fence + "}", kg, target));
  }

  @ParameterizedTest(name = "PF01 {0} kg: {1} m, judgement")
  @CsvSource({"110, 0.90", "130, 0.93"})
  void it_is_high_enough_for_the_pigs_when_they_go(double kg, double metres) {
    assertThat(solid("solid: boards", 20, kg).height()).isCloseTo(metres, within(0.005));
    assertThat(solid("solid: boards", 20, kg).firstWeeks()).isEqualTo(1.2);
  }

  @ParameterizedTest(name = "{0} m: too low {1}")
  @CsvSource({"0.80, true", "0.86, false", "1.00, false"})
  void a_height_that_falls_short_by_little_is_let_pass(double metres, boolean low) {
    // 0.86 m: the low welded panel that keepers use from 20 kg up, common practice
    assertThat(
            solid("solid: boards, gap: 5 cm, height: " + metres + " m", 20, 110)
                .faults()
                .contains(Fault.LOW))
        .isEqualTo(low);
  }

  @ParameterizedTest(name = "PF02 {0} kg, gap of {1} cm: slips through {2}, judgement")
  @CsvSource({"12, 11.5, false", "12, 12, true", "20, 13.5, false", "20, 14.2, true"})
  void the_smallest_pig_finds_the_gap(double kg, double cm, boolean slips) {
    SolidFence fence = solid("solid: boards, height: 1.1 m, gap: " + cm + " cm", kg, 110);
    assertThat(fence.faults().contains(Fault.SLIPS_THROUGH)).isEqualTo(slips);
    assertThat(fence.gap()).isEqualTo(0.10);
  }

  /** US Cooperative Extension [read]: woven wire of 40 in and a hot wire inside. */
  @Test
  void the_published_perimeter_holds_them() {
    SolidFence fence =
        solid("solid: woven-wire, height: 40 in, gap: 2 in, footGuard: hot-wire", 12, 115);
    assertThat(fence.faults()).isEmpty();
    assertThat(fence.unknown()).isEmpty();
  }

  @Test
  void what_is_to_go_as_a_whole_is_told_once() {
    assertThat(solid("solid: poultry-wire, height: 60 cm, footGuard: none", 12, 110).faults())
        .containsExactly(Fault.LIGHT);
    assertThat(solid("solid: barbed", 12, 110).faults()).containsExactly(Fault.INJURES);
    assertThat(solid("solid: barbed", 12, 110).unknown()).isEmpty();
  }

  @Test
  void one_list_says_what_is_not_known() {
    assertThat(solid("solid: unknown", 20, 110).unknown())
        .isEqualTo(
            "solid part, height of the solid part, widest gap low down and guard at the foot");
    assertThat(solid("solid: hinge-joint", 20, 110).unknown())
        .isEqualTo("widest gap low down and guard at the foot");
    assertThat(solid("solid: hog-panel", 20, 110).unknown()).isEmpty();
  }

  @Test
  void a_live_wire_low_down_guards_the_foot() {
    String both =
        Setups.gilts(
            "{kind: both, solid: woven-wire, height: 1.1 m, gap: 8 cm, wireHeights: 20 cm}",
            20,
            110);
    assertThat(Setups.one(SolidFence.class, both).unknown()).isEmpty();
    assertThat(Setups.one(SolidFence.class, both).alone()).isFalse();
  }
}
