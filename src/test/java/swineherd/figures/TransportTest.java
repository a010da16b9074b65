package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.units.Dimension;

/** Room on the road and ramps, against law, a published model and a published table. */
class TransportTest {
  private static final double POUND = 0.45359237;

  @ParameterizedTest(
      name = "{0}: pigs of {1} kg, at most {2} kg/m2, Whiting and Brandt 2002 [read]")
  @CsvSource({
    "HG05, 10, 115.3, 0.5",
    "HG05, 100, 276.1, 0.5",
    "TR01, 100, 276.2, 0.1",
    "TR01, 113.398, 282.1, 0.1"
  })
  void heavier_pigs_may_stand_closer_by_the_weight(
      String id, double weight, double pressure, double tolerance) {
    assertThat(Transport.greatestPressure(weight)).isCloseTo(pressure, within(tolerance));
  }

  // TR02: Whiting and Brandt print 57, which is 57.8 cut off
  @Test
  void the_greatest_pressure_at_250_lb_is_57_lb_on_a_square_foot() {
    double metric = Transport.greatestPressure(250 * POUND);
    double imperial = Dimension.MASS.fromBase(metric, "lb") / Dimension.AREA.fromBase(1, "sq ft");
    assertThat(imperial).isCloseTo(57.8, within(0.1));
  }

  @ParameterizedTest(name = "{0}: {1} kg, {2} m2 [derived from Whiting and Brandt 2002]")
  @CsvSource({
    "TR03, 14, 0.1039, 0.0005",
    "TR03, 50, 0.2194, 0.0005",
    "TR03, 110, 0.3918, 0.0005",
    "HG06, 100, 0.362, 0.002"
  })
  void a_pig_needs_at_least_that_floor(String id, double weight, double floor, double tolerance) {
    assertThat(Transport.leastFloor(weight)).isCloseTo(floor, within(tolerance));
  }

  // Transport Quality Assurance handbook, National Pork Board [memory]: an independent table
  @ParameterizedTest(name = "{0} lb, {1} sq ft, US table [memory], within 6 % of the model")
  @CsvSource({"50, 1.53", "100, 2.32", "150, 2.95", "200, 3.48", "250, 4.26"})
  void the_canadian_model_agrees_with_the_american_table(double pounds, double squareFeet) {
    double floor = Dimension.AREA.fromBase(Transport.leastFloor(pounds * POUND), "sq ft");
    assertThat(floor).isCloseTo(squareFeet, within(0.06 * squareFeet));
  }

  // same table: 4.79 sq ft at 300 lb, where the model asks for 6.2 % more; the larger stands
  @Test
  void at_300_lb_the_model_is_the_more_careful_of_the_two() {
    double floor = Transport.leastFloor(300 * POUND);
    assertThat(Dimension.AREA.fromBase(floor, "sq ft")).isGreaterThan(4.79);
  }

  @ParameterizedTest(name = "{0}: {1} kg, {2} m2, Regulation (EC) 1/2005 annex I ch. VII D [read]")
  @CsvSource({"TR04, 100, 0.4255, 0.0002", "TR04, 110, 0.4681, 0.0002", "HG04, 100, 0.426, 0.001"})
  void no_load_of_finishers_goes_below_european_law(
      String id, double weight, double floor, double tolerance) {
    assertThat(Transport.hardLine(weight)).isCloseTo(floor, within(tolerance));
  }

  // TR07 [derived from k 0.027, EFSA 2022]
  @Test
  void weaners_of_14_kg_get_room_to_lie() {
    assertThat(Transport.floor(14, false)).isCloseTo(0.1582, within(0.001));
    assertThat(Transport.crate(2, 14, false).floor()).isCloseTo(0.316, within(0.001));
    assertThat(Transport.crate(3, 14, false).floor()).isCloseTo(0.475, within(0.001));
    assertThat(Transport.crate(3, 14, true).floor()).isCloseTo(0.617, within(0.001));
  }

  // HG07 [derived] takes the exponent 0.667 with the same k; publications print 0.66 to 0.67. What
  // is planned for uses 0.67 (TR06, TR07), which gives 1 % more room.
  @ParameterizedTest(name = "HG07: {0} kg, {1} m2 with the exponent 0.667 [derived]")
  @CsvSource({"20, 0.199", "110, 0.621"})
  void the_larger_of_two_printed_exponents_is_used(double weight, double floor) {
    double k = Allometry.named("transport-lying").k();
    assertThat(new Allometry(k, 0.667).area(weight)).isCloseTo(floor, within(0.001));
    assertThat(Transport.floor(weight, false)).isBetween(floor, floor * 1.015);
  }

  @ParameterizedTest(name = "{0}: {1} m2, {2} kg: {3} planned, {4} by EU law [derived]")
  @CsvSource({"HG08, 3.6, 110, 5, 7", "TR08, 1.8, 110, 2, 3"})
  void a_trailer_takes_so_many_finishers(
      String id, double area, double weight, int planned, int legal) {
    assertThat(Transport.load(planned, area, weight, false)).isEqualTo(Signal.GREEN);
    assertThat(Transport.load(legal, area, weight, false)).isEqualTo(Signal.AMBER);
    assertThat(Transport.load(legal + 1, area, weight, false)).isEqualTo(Signal.RED);
  }

  @ParameterizedTest(name = "{0} pigs, {1} a trip: {2} trips")
  @CsvSource({"5, 2, 3", "4, 2, 2", "1, 5, 1"})
  void nobody_is_left_behind(int pigs, int perTrip, int trips) {
    assertThat(Transport.trips(pigs, perTrip)).isEqualTo(trips);
  }

  @Test
  void a_trailer_too_small_for_one_pig_makes_no_trips() {
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> Transport.trips(3, 0));
  }

  // reference centre for animal welfare, pigs: above 25 C 30 % more room [read]
  @Test
  void heat_takes_a_third_more_room() {
    assertThat(Transport.isHot(25)).isFalse();
    assertThat(Transport.isHot(25.1)).isTrue();
    assertThat(Transport.floor(100, true)).isCloseTo(0.768, within(0.001));
  }

  // HG09 [derived]
  @Test
  void two_weaners_of_15_kg_travel_in_a_crate() {
    Transport.Crate crate = Transport.crate(2, 15, false);
    assertThat(crate.floor()).isCloseTo(0.33, within(0.01));
    assertThat(crate.length()).isCloseTo(0.81, within(0.01));
    assertThat(crate.height()).isCloseTo(0.48, within(0.01));
  }

  @Test
  void what_nobody_measured_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Transport.greatestPressure(4));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Transport.hardLine(151));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Transport.crate(5, 14, false));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Transport.load(0, 2, 14, false));
  }

  @ParameterizedTest(name = "{0} draws with the fixed seed 51")
  @ValueSource(ints = 2000)
  void heavier_pigs_never_need_less_and_fewer_never_fit_worse(int draws) {
    SplittableRandom random = new SplittableRandom(51);
    for (int i = 0; i < draws; i++) {
      double light = random.nextDouble(5, 150);
      double heavy = random.nextDouble(light, 150);
      int pigs = random.nextInt(2, 20);
      double area = random.nextDouble(0.2, 10);
      boolean hot = random.nextBoolean();
      assertThat(Transport.hardLine(heavy)).isGreaterThanOrEqualTo(Transport.hardLine(light));
      assertThat(Transport.floor(heavy, hot)).isGreaterThanOrEqualTo(Transport.floor(light, hot));
      assertThat(Transport.floor(light, false)).isGreaterThan(Transport.hardLine(light));
      assertThat(Transport.load(pigs - 1, area, light, hot))
          .isLessThanOrEqualTo(Transport.load(pigs, area, light, hot));
      assertThat(Transport.load(pigs, area, light, hot))
          .isLessThanOrEqualTo(Transport.load(pigs, area, heavy, hot));
      assertThat(Transport.load(pigs, area, light, false))
          .isLessThanOrEqualTo(Transport.load(pigs, area, light, true));
    }
  }

  /**
   * Weaners to 30 kg: comfort to 32 degC (SCAHAW 2002 [read]), 30 set here [judgement]; heavier
   * pigs 27 degC, the upper end that trailers bore in Animals 5(2) 2015 [read]. Loaded at dawn from
   * 27 - 0.05 W + 3 on [derived].
   */
  @ParameterizedTest(name = "{0} kg: at dawn if the day passes {1} degC, not over {2} degC")
  @CsvSource({
    "5, 30, 30",
    "30, 30, 30",
    "31, 27, 27",
    "60, 27, 27",
    "80, 26, 27",
    "110, 24.5, 27",
    "120, 24, 27",
    "150, 24, 27"
  })
  void heavy_pigs_bear_less_heat_on_the_road(double weight, double early, double limit) {
    assertThat(Transport.earlyAbove(weight)).isCloseTo(early, within(1e-9));
    assertThat(Transport.hottest(weight)).isEqualTo(limit);
  }

  @ParameterizedTest(name = "{0} kg are refused")
  @ValueSource(doubles = {4.9, 150.1, Double.NaN})
  void no_limit_of_heat_where_no_weight_was_looked_at(double weight) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Transport.hottest(weight));
  }
}
