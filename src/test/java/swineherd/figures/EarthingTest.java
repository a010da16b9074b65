package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Earthing.ReturnWire;
import swineherd.rulebook.Table;

class EarthingTest {
  /** Dwight 1936 [memory]; the values are worked examples [derived]. */
  @ParameterizedTest(name = "{0}: {2} rods in {1} ohm m have {3} ohm [derived]")
  @CsvSource({
    "EF18, 100, 1, 51.3, 0.5",
    "EF18, 1000, 1, 513, 1",
    "EF19, 100, 3, 19.7, 0.1",
  })
  void rods_have_the_resistance_of_the_worked_examples(
      String id, double soil, int rods, double ohm, double tolerance) {
    assertThat(Earthing.resistance(soil, 1.8, 0.016, rods))
        .as(id)
        .isCloseTo(ohm, within(tolerance));
  }

  /**
   * IEEE 142 [memory] prints the resistance of a rod of 10 ft by 5/8 in beside the mean resistivity
   * of four groups of soil, in whole ohms.
   */
  @ParameterizedTest(name = "{0} ohm m: {1} ohm [memory]")
  @CsvSource({"23.7, 8", "40.6, 13", "158, 52", "940, 311"})
  void one_rod_has_the_resistance_printed_in_the_handbook(double soil, double ohm) {
    assertThat(Earthing.resistance(soil, 3.048, 0.015875, 1)).isCloseTo(ohm, within(0.5));
  }

  /**
   * IEEE 142 [memory]: rods one length apart have this many times the resistance of rods that do
   * not disturb one another. Ours stand two lengths apart, so they lie between.
   */
  @ParameterizedTest(name = "{0} rods: {1} times [memory]")
  @CsvSource({"2, 1.16", "3, 1.29", "4, 1.36"})
  void several_rods_lie_between_undisturbed_and_one_length_apart(int rods, double factor) {
    double undisturbed = Earthing.resistance(100, 1.8, 0.016, 1) / rods;
    assertThat(Earthing.resistance(100, 1.8, 0.016, rods))
        .isBetween(undisturbed, factor * undisturbed);
  }

  @ParameterizedTest(name = "{0}: {1} J in moist ground takes {2} rods [judgement]")
  @CsvSource({"EF20, 1, 1", "EF20, 2, 2", "EF20, 3, 3", "EF20, 5, 3"})
  void an_energizer_gets_its_rods(String id, double joules, int rods) {
    assertThat(Earthing.rods(joules, "loam")).as(id).isEqualTo(rods);
  }

  @ParameterizedTest(name = "{0} J")
  @ValueSource(doubles = {0.5, 1, 2, 3, 5})
  void dry_ground_takes_twice_as_many_by_judgement(double joules) {
    assertThat(Earthing.rods(joules, "dry-loam")).isEqualTo(2 * Earthing.rods(joules, "loam"));
  }

  /** 5 J: 15 ft by the farm press [read], three rods of 8 ft by a power cooperative [read]. */
  @Test
  void the_rods_for_5_joules_lie_between_the_two_published_rules() {
    double metres = 1.8 * Earthing.rods(5, "loam");
    assertThat(metres).isBetween(5 * 3 * 0.3048, 3 * 8 * 0.3048);
  }

  /** British Columbia Ministry of Agriculture, as quoted [read], for frozen and dry ground. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"frozen, YES", "sand, YES", "dry-loam, IF_RODS_FAIL", "loam, NO"})
  void a_return_wire_is_the_answer_where_the_pig_stands_insulated(String soil, ReturnWire answer) {
    assertThat(Earthing.returnWire(soil)).isEqualTo(answer);
  }

  @Test
  void every_soil_has_an_answer() {
    assertThat(Table.named("soils").rows())
        .allSatisfy(row -> assertThat(Earthing.returnWire(row.key())).isNotNull());
  }

  @ParameterizedTest(name = "{0} V on the last rod: {1}, makers' practice [memory]")
  @CsvSource({"150, GOOD", "200, GOOD", "250, ENOUGH", "300, ENOUGH", "301, MORE_RODS"})
  void the_earth_test_is_read(double volts, Earthing.Test verdict) {
    assertThat(Earthing.test(volts)).isEqualTo(verdict);
  }

  @Test
  void more_rods_never_have_more_resistance_and_more_joules_never_fewer_rods() {
    for (Table.Row soil : Table.named("soils").rows()) {
      for (int rods = 1; rods < 10; rods++) {
        assertThat(Earthing.resistance(soil.key(), rods + 1))
            .isLessThan(Earthing.resistance(soil.key(), rods));
      }
      for (int tenths = 1; tenths < 150; tenths++) {
        assertThat(Earthing.rods((tenths + 1) / 10.0, soil.key()))
            .isGreaterThanOrEqualTo(Earthing.rods(tenths / 10.0, soil.key()));
      }
    }
  }

  @Test
  void no_rods_and_no_energy_are_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Earthing.resistance("wet-clay", 0));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Earthing.rods(0, "wet-clay"));
  }
}
