package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.ElectricFence.Fault;
import swineherd.figures.ElectricFence.NettingFault;
import swineherd.figures.ElectricFence.Setting;
import swineherd.figures.ElectricFence.Verdict;
import swineherd.rulebook.Table;

class ElectricFenceTest {
  @ParameterizedTest(name = "{0}: {1} kg, wires at {2} and {3} cm [derived]")
  @CsvSource({"EF01, 20, 12.6, 27.3", "EF02, 100, 21.4, 46.3"})
  void wires_stand_at_the_heights_of_the_worked_examples(
      String id, double kg, double lowest, double top) {
    assertThat(ElectricFence.lowestWire(kg) * 100).as(id).isCloseTo(lowest, within(0.3));
    assertThat(ElectricFence.topWire(kg) * 100).as(id).isCloseTo(top, within(0.3));
  }

  /**
   * Published: 10 and 18 in (25 and 46 cm) for growing-finishing pigs, US Cooperative Extension
   * [read]. Our lowest wire is 4 cm under it at 100 kg, on the side that keeps pigs from going
   * under.
   */
  @Test
  void EF02_the_published_pair_has_the_same_top_wire_and_no_lower_bottom_wire() {
    Table.Row published = Table.named("wire-heights").row("growing-finishing");
    assertThat(ElectricFence.topWire(100)).isCloseTo(published.number("wire2_m"), within(0.005));
    assertThat(ElectricFence.lowestWire(100)).isLessThan(published.number("wire1_m"));
  }

  @ParameterizedTest(name = "{0} kg")
  @ValueSource(doubles = {60, 80, 100, 130})
  void the_published_pair_suits_growing_finishing_pigs(double kg) {
    assertThat(ElectricFence.faults(List.of(0.25, 0.46), kg)).isEmpty();
  }

  /** Published lowest wires by extension [read] and press [read]: rows `published` of the table. */
  @Test
  void the_lowest_wire_to_build_is_never_above_a_published_one_for_the_same_pigs() {
    for (Table.Row row : Table.named("wire-heights").rows()) {
      if (row.text("use").equals("published")) {
        for (Setting setting : ElectricFence.settings(row.number("from_kg"), row.number("to_kg"))) {
          assertThat(setting.heights().get(0))
              .as(row.key())
              .isLessThanOrEqualTo(row.number("wire1_m"));
        }
      }
    }
  }

  @Test
  void wires_are_reset_at_about_50_kg_by_judgement() {
    assertThat(ElectricFence.settings(15, 110))
        .containsExactly(
            new Setting(15, 50, List.of(0.12, 0.25, 0.40)),
            new Setting(50, 110, List.of(0.20, 0.45)));
  }

  @Test
  void pigs_that_come_lighter_start_lower() {
    assertThat(ElectricFence.settings(10, 20).get(0))
        .isEqualTo(new Setting(10, 15, List.of(0.10, 0.20, 0.30)));
  }

  @Test
  void pigs_of_one_weight_get_one_setting() {
    assertThat(ElectricFence.settings(15, 15)).hasSize(1);
    assertThat(ElectricFence.settings(70, 70)).hasSize(1);
  }

  @Test
  void wires_built_as_told_suit_the_pigs_at_both_ends_of_each_setting() {
    for (Setting setting : ElectricFence.settings(8, 130)) {
      assertThat(ElectricFence.faults(setting.heights(), setting.fromKg())).isEmpty();
      assertThat(ElectricFence.faults(setting.heights(), setting.toKg())).isEmpty();
    }
  }

  @Test
  void weaners_go_under_the_wires_of_finishers() {
    assertThat(ElectricFence.faults(List.of(0.25, 0.46), 12)).contains(Fault.UNDER);
  }

  @Test
  void finishers_go_over_the_wires_of_weaners() {
    assertThat(ElectricFence.faults(List.of(0.10, 0.20, 0.30), 110)).containsExactly(Fault.OVER);
  }

  @Test
  void a_pig_goes_between_wires_set_too_far_apart() {
    assertThat(ElectricFence.faults(List.of(0.12, 0.60), 20)).containsExactly(Fault.BETWEEN);
  }

  @Test
  void a_wire_near_the_ground_is_soon_buried() {
    assertThat(ElectricFence.faults(List.of(0.06, 0.20, 0.35), 20))
        .containsExactly(Fault.IN_THE_SOIL);
  }

  @Test
  void wires_may_be_named_in_any_order() {
    assertThat(ElectricFence.faults(List.of(0.46, 0.25), 100)).isEmpty();
  }

  @Test
  void a_fence_without_wires_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> ElectricFence.faults(List.of(), 50));
  }

  @ParameterizedTest(name = "{0}: {1} V is {2} [judgement]")
  @CsvSource({"EF03, 4200, GOOD", "EF03, 2600, ACT", "EF03, 1800, UNSAFE"})
  void volts_at_the_far_end_get_their_verdict(String id, double volts, Verdict verdict) {
    assertThat(ElectricFence.voltage(volts, false)).as(id).isEqualTo(verdict);
  }

  @ParameterizedTest(name = "{0} V is {1}, {2} where it is demanding [judgement]")
  @CsvSource({
    "1999, UNSAFE, UNSAFE",
    "2000, ACT, ACT",
    "2999, ACT, ACT",
    "3000, FAIR, ACT",
    "3999, FAIR, ACT",
    "4000, GOOD, FAIR",
    "4999, GOOD, FAIR",
    "5000, GOOD, GOOD",
    "10000, GOOD, GOOD",
    "10001, TOO_HIGH, TOO_HIGH",
  })
  void the_limits_belong_to_the_better_side(double volts, Verdict ordinary, Verdict demanding) {
    assertThat(ElectricFence.voltage(volts, false)).isEqualTo(ordinary);
    assertThat(ElectricFence.voltage(volts, true)).isEqualTo(demanding);
  }

  /** German and UK trade guides and two trade lists [read]: the other rows of the table. */
  @Test
  void the_aim_is_at_or_above_every_published_minimum() {
    Table table = Table.named("fence-voltage");
    double demanding = table.row("demanding").number("aim");
    for (Table.Row row : table.rows()) {
      for (String column : List.of("unsafe_below", "act_below", "aim")) {
        row.maybe(column)
            .ifPresent(v -> assertThat(demanding).as(row.key()).isGreaterThanOrEqualTo(v));
      }
    }
    assertThat(table.row("ordinary").number("act_below"))
        .isGreaterThanOrEqualTo(table.row("german-guide").number("act_below"))
        .isGreaterThanOrEqualTo(table.row("uk-guide").number("act_below"));
    assertThat(table.row("demanding").number("act_below"))
        .isGreaterThanOrEqualTo(table.row("german-guide-thick-coats").number("act_below"));
  }

  /**
   * Worked examples [derived] from 1 J per mile (fencing trade [read]), growth shares of an
   * energizer manual [read] and the 5 J limit of IEC 60335-2-76 [read].
   */
  @ParameterizedTest(name = "{0}: {1} m x {2}, {3}: {4} J, split or clear {6} [derived]")
  @CsvSource({
    "EF04, 120, 2, heavy, 1.00, 0.01, false",
    "EF05, 400, 3, heavy, 3.73, 0.02, false",
    "EF06, 800, 2, medium, 1.99, 0.02, false",
    "EF07, 2000, 3, heavy, 5, 0, true",
  })
  void a_fence_gets_the_energizer_of_the_worked_examples(
      String id,
      double perimeter,
      int strands,
      String growth,
      double joules,
      double tolerance,
      boolean split) {
    var energizer = ElectricFence.energizer(perimeter, strands, growth);
    assertThat(energizer.joules()).as(id).isCloseTo(joules, within(tolerance));
    assertThat(energizer.splitOrClear()).as(id).isEqualTo(split);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13})
  void a_heavier_pig_never_gets_a_lower_top_wire(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double light = 8 + 122 * random.nextDouble();
      double heavy = light + (130 - light) * random.nextDouble();
      assertThat(ElectricFence.topWire(heavy)).isGreaterThanOrEqualTo(ElectricFence.topWire(light));
      assertThat(topToBuild(heavy)).isGreaterThanOrEqualTo(topToBuild(light));
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23})
  void more_fence_or_more_growth_never_needs_a_smaller_energizer(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double perimeter = 1 + 9000 * random.nextDouble();
      int strands = 1 + random.nextInt(5);
      double joules = ElectricFence.energizer(perimeter, strands, "clean").joules();
      double medium = ElectricFence.energizer(perimeter, strands, "medium").joules();
      assertThat(medium).isGreaterThanOrEqualTo(joules);
      assertThat(ElectricFence.energizer(perimeter, strands, "heavy").joules())
          .isGreaterThanOrEqualTo(medium);
      assertThat(ElectricFence.energizer(2 * perimeter, strands, "clean").joules())
          .isGreaterThanOrEqualTo(joules);
      assertThat(ElectricFence.energizer(perimeter, strands + 1, "clean").joules())
          .isGreaterThanOrEqualTo(joules);
    }
  }

  @Test
  void netting_is_for_trained_growers_common_practice_no_source() {
    assertThat(ElectricFence.nettingFaults(45, true)).isEmpty();
    assertThat(ElectricFence.nettingFaults(45, false)).containsExactly(NettingFault.UNTRAINED);
    assertThat(ElectricFence.nettingFaults(14, true)).containsExactly(NettingFault.SMALL);
    assertThat(ElectricFence.nettingFaults(90, true))
        .containsExactly(NettingFault.BEYOND_BEST_WEIGHT);
  }

  @ParameterizedTest(name = "{0} kg")
  @ValueSource(doubles = {7.9, 130.1})
  void other_weights_are_refused(double kg) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> ElectricFence.topWire(kg));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> ElectricFence.faults(List.of(0.2), kg));
  }

  private static double topToBuild(double kg) {
    List<Double> heights = ElectricFence.settings(kg, kg).get(0).heights();
    return heights.get(heights.size() - 1);
  }
}
