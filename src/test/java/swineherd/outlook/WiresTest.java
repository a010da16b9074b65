package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.ElectricFence.Fault;
import swineherd.figures.ElectricFence.NettingFault;

class WiresTest {
  private static Wires wires(String fence, double kg, double target) {
    return Setups.one(Wires.class, Setups.gilts("{kind: electric, " + fence + "}", kg, target));
  }

  /** US Cooperative Extension [read]: 10 and 18 in for growing and finishing pigs. */
  @Test
  void the_published_pair_suits_growing_and_finishing_pigs_to_the_end() {
    Wires pair = wires("wireHeights: [10 in, 18 in]", 60, 115);
    assertThat(pair.faults()).isEmpty();
    assertThat(pair.suit()).isTrue();
    assertThat(pair.wrong()).isEmpty();
  }

  /** The same pair stands too high for weaners: a back of 42 cm at 20 kg, Baxter 1984 [memory]. */
  @Test
  void the_pair_for_finishers_lets_weaners_under() {
    Wires pair = wires("wireHeights: [10 in, 18 in]", 20, 115);
    assertThat(pair.faults()).containsExactlyInAnyOrder(Fault.UNDER, Fault.BETWEEN);
    assertThat(pair.wrong())
        .isEqualTo("they go under the lowest wire, and they go through between two wires");
    assertThat(pair.heights()).containsExactly(0.12, 0.25, 0.40);
    assertThat(pair.suit()).isFalse();
  }

  /**
   * Worked example [derived]: 18 to 50 kg on the published Gompertz curve of gilts (230 kg, 0.0126
   * a day) at 0.92 x 0.93 of its rate takes 47.5 days, after four of standstill. That wires are set
   * anew at 50 kg is judgement.
   */
  @Test
  void wires_of_unknown_height_are_set_for_now_and_again_at_50_kg() {
    Wires unknown = wires("strands: 3", 18, 110);
    assertThat(unknown.known()).isFalse();
    assertThat(unknown.faults()).isEmpty();
    assertThat(unknown.heights()).containsExactly(0.12, 0.25, 0.40);
    assertThat(unknown.laterKg()).isEqualTo(50.0);
    assertThat(unknown.laterHeights()).containsExactly(0.20, 0.45);
    assertThat(ChronoUnit.DAYS.between(LocalDate.of(2027, 4, 24), unknown.laterOn()))
        .isBetween(51L, 52L);
  }

  /**
   * Worked example [derived]: 25 cm is half the back of 0.156 W^0.33 m at 34.9 kg; so at 35 kg the
   * top wire has become too low. The half is judgement.
   */
  @Test
  void two_low_wires_do_for_weaners_until_they_step_over_them() {
    Wires low = wires("wireHeights: [12 cm, 25 cm]", 18, 110);
    assertThat(low.faults()).isEmpty();
    assertThat(low.laterKg()).isEqualTo(35.0);
    assertThat(low.suit()).isFalse();
  }

  @ParameterizedTest(name = "{0} kg, judgement")
  @CsvSource({"10, 0.10 0.20 0.30", "20, 0.12 0.25 0.40", "70, 0.20 0.45"})
  void heights_are_those_for_the_weight(double kg, String metres) {
    assertThat(wires("strands: 2", kg, 115).heights())
        .extracting(h -> "%.2f".formatted(h))
        .containsExactly(metres.split(" "));
  }

  @Test
  void one_wire_is_wrong_at_any_height() {
    assertThat(wires("strands: 1", 20, 110).known()).isTrue();
    assertThat(wires("strands: 1", 20, 110).faults()).contains(Fault.UNDER, Fault.OVER);
  }

  /** Common practice, no source: not for untrained pigs, nor under 15 kg. */
  @Test
  void netting_is_judged_by_size_and_training_not_by_height() {
    Wires netting = wires("conductor: netting", 12, 110);
    assertThat(netting.netting()).isTrue();
    assertThat(netting.faults()).isEmpty();
    assertThat(netting.nettingFaults()).containsExactly(NettingFault.SMALL);
    assertThat(wires("conductor: netting", 35, 60).nettingFaults()).isEmpty();
  }

  /** Heights are known for 8 to 130 kg; what lies outside is judged as these and says so. */
  @ParameterizedTest(name = "{0} kg")
  @ValueSource(doubles = {5.5, 135})
  void pigs_outside_the_known_sizes_are_judged_as_the_nearest(double kg) {
    assertThat(wires("strands: 2", kg, Math.max(kg, 110)).assumed())
        .anyMatch(a -> a.startsWith("wires judged as for pigs of"));
  }
}
