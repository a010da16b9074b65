package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.ElectricFence.Verdict;

/** What runs through the wires: voltage, energizer, earth and the far end. */
class LiveFenceTest {
  private static String live(String answers) {
    return Setups.gilts("{kind: electric, " + answers + "}", 20, 110);
  }

  /** EF03: limits of judgement between published 2,000 and 3,000 V [read]. */
  @ParameterizedTest(name = "EF03 {0} V: {1}, judgement")
  @CsvSource({"4200, GOOD", "2600, ACT", "1800, UNSAFE", "3400, FAIR", "10500, TOO_HIGH"})
  void a_reading_has_its_meaning(int volts, Verdict verdict) {
    Voltage voltage = Setups.one(Voltage.class, live("endVoltage: " + volts + " V"));
    assertThat(voltage.verdict()).isEqualTo(verdict);
    assertThat(voltage.demanding()).isFalse();
  }

  /** German paddock guide [read]: 4,000 V for thick coats. */
  @ParameterizedTest(name = "{1} instead of {0}")
  @CsvSource({
    "breed: commercial-cross, breed: mangalitsa",
    "breed: commercial-cross, breed: unknown",
    "soil: loam, soil: dry-loam",
    "soil: loam, soil: sand",
    "soil: loam, soil: unknown",
    "trained: yes, trained: no",
  })
  void thick_coats_dry_ground_and_training_need_4000_V(String ordinary, String demanding) {
    String yaml = live("endVoltage: 3900 V");
    assertThat(Setups.one(Voltage.class, yaml).verdict()).isEqualTo(Verdict.FAIR);
    Voltage more = Setups.one(Voltage.class, yaml.replace(ordinary, demanding));
    assertThat(more.demanding()).isTrue();
    assertThat(more.verdict()).isEqualTo(Verdict.ACT);
  }

  @ParameterizedTest(name = "{0}: {1} m, {2} strands, {3}: {4} J [derived]")
  @CsvSource({
    "EF04, 120, 2, heavy, 1.00",
    "EF05, 400, 3, heavy, 3.73",
    "EF06, 800, 2, medium, 1.99",
  })
  void an_energizer_has_the_output_its_fence_needs(
      String id, int metres, int strands, String growth, double joules) {
    EnergizerNeed need =
        Setups.one(
            EnergizerNeed.class,
            live("length: %d m, strands: %d, growth: %s".formatted(metres, strands, growth)));
    assertThat(need.joules()).isCloseTo(joules, within(0.02));
    assertThat(need.splitOrClear()).isFalse();
    assertThat(need.enough()).isNull();
  }

  /** The limit: IEC 60335-2-76 [read]. */
  @Test
  void EF07_a_fence_that_asks_for_more_than_5_J_is_to_be_split_or_cleared() {
    EnergizerNeed need =
        Setups.one(
            EnergizerNeed.class, live("length: 2 km, strands: 3, growth: heavy, output: 6 J"));
    assertThat(need.joules()).isEqualTo(5);
    assertThat(need.splitOrClear()).isTrue();
    assertThat(need.tooStrong()).isTrue();
  }

  /** 400 m of three strands: 3.7 J in heavy growth, under 1 J in clean [derived]. */
  @ParameterizedTest(name = "{0} J: {1}")
  @CsvSource(
      value = {"0.5, false", "2, null", "4, true"},
      nullValues = "null")
  void growth_nobody_described_is_told_only_where_it_does_not_matter(
      double output, Boolean enough) {
    assertThat(
            Setups.one(
                    EnergizerNeed.class,
                    live("length: 400 m, strands: 3, output: " + output + " J"))
                .enough())
        .isEqualTo(enough);
  }

  /** A square of 900 m2 is 120 m round. */
  @Test
  void a_length_nobody_measured_follows_from_the_area() {
    EnergizerNeed need =
        Setups.one(EnergizerNeed.class, live("strands: 12, growth: heavy, output: 1 J"));
    assertThat(need.joules()).isCloseTo(0.120 * 12 / 1.609344 / 0.2, within(0.02));
    assertThat(need.assumed()).contains("length taken from the area of the pen");
  }

  @ParameterizedTest(name = "EF20 {0} J on moist ground: {1} rods, judgement")
  @CsvSource({"1, 1", "2, 2", "3, 3", "5, 3"})
  void an_energizer_has_its_earth_rods(int joules, int rods) {
    EarthNeed earth =
        Setups.one(EarthNeed.class, live("output: %d J, earthRods: %d".formatted(joules, rods)));
    assertThat(earth.rods()).isEqualTo(rods);
    assertThat(earth.enough()).isTrue();
    assertThat(earth.drySand()).isFalse();
    String fewer = live("output: %d J, earthRods: %d".formatted(joules, rods - 1));
    assertThat(Setups.one(EarthNeed.class, fewer).enough()).isFalse();
  }

  /** British Columbia, as quoted [read]: a return wire for dry and frozen ground. */
  @Test
  void on_dry_sand_rods_alone_do_not_help() {
    String sand = live("earthRods: 4").replace("loam", "sand");
    assertThat(Setups.one(EarthNeed.class, sand).drySand()).isTrue();
  }

  /** EF13 and EF14, worked examples [derived]: two joined strands, small unit, one rod in loam. */
  @ParameterizedTest(name = "400 m of poly wire, {0}: open {1} V, touched {2} V [derived]")
  @CsvSource({"medium, 5700, 1342", "heavy, 2395, 811"})
  void a_pig_at_the_far_end_gets_what_the_worked_example_says(
      String growth, double open, double touched) {
    FarEnd far =
        Setups.one(
            FarEnd.class,
            live(
                "conductor: poly-6, length: 400 m, strands: 2, earthRods: 1, growth: "
                    + growth
                    + ", openVoltage: 8 kV, loadVoltage: 3500 V"));
    assertThat(far.fromLabel()).isTrue();
    assertThat(far.open().likely()).isCloseTo(open, within(10.0));
    assertThat(far.touched().likely()).isCloseTo(touched, within(5.0));
    assertThat(far.holds()).isFalse();
  }

  /** Worked examples [derived], to two digits: 0.20 km in medium growth, 0.14 in heavy. */
  @ParameterizedTest(name = "{0} growth: {1} m [derived]")
  @CsvSource({"medium, 200", "heavy, 140"})
  void without_a_label_poly_wire_reaches_as_far_as_from_a_small_energizer(
      String growth, double metres) {
    FarEnd far =
        Setups.one(
            FarEnd.class,
            live("conductor: poly-6, length: 400 m, strands: 2, earthRods: 1, growth: " + growth));
    assertThat(far.fromLabel()).isFalse();
    assertThat(far.poly()).isTrue();
    assertThat(far.holds()).isFalse();
    assertThat(far.reach()).isCloseTo(metres, within(5.0));
  }

  @Test
  void steel_holds_where_poly_does_not_and_netting_is_left_out() {
    String answers = "length: 400 m, strands: 2, earthRods: 1, growth: medium, conductor: ";
    assertThat(Setups.one(FarEnd.class, live(answers + "steel-2.5")).holds()).isTrue();
    assertThat(Setups.all(FarEnd.class, live(answers + "netting"))).isEmpty();
    assertThat(Setups.all(FarEnd.class, live("conductor: poly-6"))).isEmpty();
  }

  private static LocalDate frozenBy(String place, String until) {
    return Setups.one(
            EarthNeed.class,
            live("strands: 2")
                .replace("soil: loam", "soil: loam, " + place)
                .replace("trained: yes", "trained: yes, slaughterOn: " + until))
        .frozenBy();
  }

  /**
   * Worked example [derived]: 1.28 standard deviations of 10 days before 5 October are 22
   * September, and six weeks before that 11 August. The weeks are judgement.
   */
  @Test
  void a_return_wire_is_ready_six_weeks_before_an_early_frost() {
    String cold = "coldestMonth: -8 C, firstHardFrost: 5 October, latitude: 45 N";
    assertThat(frozenBy(cold, "2027-12-20")).isEqualTo(LocalDate.of(2027, 8, 11));
    assertThat(frozenBy(cold, "2027-09-20")).isNull();
  }

  /** Frozen ground asks for more volts while it lasts; German paddock guide [read]: 4,000 V. */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"2027-01-15, ACT", "2027-06-15, FAIR"})
  void frozen_ground_needs_4000_V_as_long_as_it_lasts(String day, Verdict verdict) {
    String yaml =
        live("endVoltage: 3900 V")
            .replace("checkOn: 2027-03-01", "checkOn: " + day)
            .replace("soil: loam", "soil: loam, coldestMonth: -8 C, firstHardFrost: 5 October")
            .replace("arrives: 2027-04-24", "arrives: 2026-12-20");
    assertThat(Setups.one(Voltage.class, yaml).verdict()).isEqualTo(verdict);
  }

  /** The same half a year later in the south: 10 May, 27 April, 16 March. */
  @Test
  void the_south_has_its_winter_in_the_middle_of_the_year() {
    assertThat(frozenBy("coldestMonth: -2 C, firstHardFrost: 10 May, latitude: 45 S", "2027-07-20"))
        .isEqualTo(LocalDate.of(2027, 3, 16));
  }

  /** Frozen ground is reckoned with from winter class C: mean minimum under 0 C, judgement. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "'coldestMonth: 1 C, firstHardFrost: 5 October', false",
    "'freezes: no', false",
    "'latitude: 45 N', false",
    "'freezes: yes', true",
    "'firstHardFrost: 5 October', true",
    "'hardinessZone: 5b', true",
    "'hardinessZone: 9a', false",
    "'coldestMonth: -8 C', true",
  })
  void what_is_not_known_of_the_winter_is_taken_as_cold_if_it_freezes(
      String place, boolean frozen) {
    assertThat(frozenBy(place, "2028-01-20") != null).isEqualTo(frozen);
  }
}
