package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.PhysicalFence.Barrier;
import swineherd.figures.PhysicalFence.Fault;
import swineherd.figures.PhysicalFence.Occasion;

class PhysicalFenceTest {
  @ParameterizedTest(name = "{0}: settled pigs of {1} kg need {2} m [judgement]")
  @CsvSource({"PF01, 110, 0.90", "PF01, 130, 0.93"})
  void settled_pigs_need_nine_tenths_of_a_metre_or_more(String id, double kg, double metres) {
    assertThat(PhysicalFence.height(kg, Occasion.SETTLED).likely())
        .as(id)
        .isCloseTo(metres, within(0.01));
  }

  @Test
  void newly_come_pigs_need_1_2_m_by_judgement() {
    assertThat(PhysicalFence.height(12, Occasion.FIRST_WEEKS)).isEqualTo(Band.exactly(1.2));
  }

  @Test
  void boars_need_1_2_to_1_4_m_by_judgement() {
    Band boars = PhysicalFence.height(110, Occasion.BOARS);
    assertThat(boars.low()).isEqualTo(1.2);
    assertThat(boars.high()).isEqualTo(1.4);
  }

  @ParameterizedTest(name = "{0} kg")
  @ValueSource(doubles = {12, 20, 60, 110})
  void builders_leave_at_most_10_cm_near_the_ground_common_practice_no_source(double kg) {
    assertThat(PhysicalFence.widestLowGap(kg)).isEqualTo(0.10);
  }

  @Test
  void for_the_smallest_pigs_the_gap_is_less_than_10_cm() {
    assertThat(PhysicalFence.widestLowGap(5)).isLessThan(0.10);
  }

  @Test
  void graded_panel_is_used_from_20_kg_common_practice_no_source() {
    Barrier panel = new Barrier("hog-panel", OptionalDouble.of(0.91), OptionalDouble.empty());
    assertThat(PhysicalFence.faults(panel, 20, Occasion.SETTLED)).isEmpty();
    assertThat(PhysicalFence.faults(panel, 19, Occasion.SETTLED))
        .containsExactly(Fault.SLIPS_THROUGH);
  }

  @Test
  void weaners_pass_the_wide_squares_of_cattle_panel_common_practice_no_source() {
    Barrier panel = Barrier.of("cattle-panel");
    assertThat(PhysicalFence.faults(panel, 15, Occasion.FIRST_WEEKS))
        .containsExactly(Fault.SLIPS_THROUGH);
    assertThat(PhysicalFence.faults(panel, 100, Occasion.FIRST_WEEKS)).isEmpty();
  }

  @Test
  void cattle_panel_with_its_foot_lined_holds_weaners_common_practice_no_source() {
    Barrier lined = new Barrier("cattle-panel", OptionalDouble.empty(), OptionalDouble.of(0.05));
    assertThat(PhysicalFence.faults(lined, 12, Occasion.FIRST_WEEKS)).isEmpty();
  }

  @Test
  void a_hog_panel_is_too_low_for_the_first_weeks() {
    // sold 34 to 36 in (86 to 91 cm) high [common]; 1.2 m wanted [judgement]
    assertThat(PhysicalFence.faults(Barrier.of("hog-panel"), 25, Occasion.FIRST_WEEKS))
        .containsExactly(Fault.LOW);
  }

  @Test
  void a_hog_panel_nobody_measured_may_or_may_not_be_high_enough_for_settled_pigs() {
    assertThat(PhysicalFence.faults(Barrier.of("hog-panel"), 25, Occasion.SETTLED))
        .containsExactly(Fault.HEIGHT_UNKNOWN);
  }

  /** US Cooperative Extension, What type of fence will I need to pasture hogs? [read]. */
  @Test
  void woven_wire_needs_a_guard_at_its_foot_and_high_tensile_needs_live_wires() {
    assertThat(PhysicalFence.faults(Barrier.of("woven-wire"), 60, Occasion.SETTLED))
        .containsExactly(Fault.FOOT_GUARD);
    assertThat(PhysicalFence.faults(Barrier.of("high-tensile"), 60, Occasion.SETTLED))
        .contains(Fault.LIVE_WIRE);
  }

  @ParameterizedTest(name = "{0}: {1}, common practice, no source")
  @CsvSource({
    "poultry-wire, LIGHT",
    "chain-link, FOOT_GUARD",
    "pallets, FOOT_GUARD",
    "pallets, SHORT_TERM",
    "barbed, INJURES",
  })
  void what_pigs_break_is_named(String kind, Fault fault) {
    assertThat(PhysicalFence.faults(Barrier.of(kind), 40, Occasion.SETTLED)).contains(fault);
  }

  @Test
  void a_gap_that_nobody_measured_is_not_good_news() {
    assertThat(PhysicalFence.faults(Barrier.of("pallets"), 12, Occasion.SETTLED))
        .contains(Fault.GAP_UNKNOWN);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void heavier_pigs_never_need_a_lower_fence_or_a_narrower_gap(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double light = 5 + 125 * random.nextDouble();
      double heavy = light + (130 - light) * random.nextDouble();
      assertThat(BodySize.widestGap(heavy)).isGreaterThanOrEqualTo(BodySize.widestGap(light));
      for (Occasion occasion : Occasion.values()) {
        assertThat(PhysicalFence.height(heavy, occasion).likely())
            .isGreaterThanOrEqualTo(PhysicalFence.height(light, occasion).likely());
      }
    }
  }

  @Test
  void an_unknown_kind_is_refused_by_name() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Barrier.of("hedge"))
        .withMessageContaining("hedge");
  }

  @Test
  void a_negative_height_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new Barrier("boards", OptionalDouble.of(-1), OptionalDouble.empty()));
  }
}
