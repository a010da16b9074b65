package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.TapeWeight.PigType;
import swineherd.figures.TapeWeight.Reading;

class TapeWeightTest {
  private static final double POUND = 0.45359237;
  private static final double INCH = 0.0254;

  /** As printed on smallholders' pages beside the form in metres. */
  private static final double PRINTED_FACTOR = 69.3;

  private static Reading inches(double girth, double length) {
    return new Reading(girth * INCH, length * INCH);
  }

  @ParameterizedTest(name = "{0}: {1} x {2} in is {3} lb ({5})")
  @CsvSource({
    "WT01, 50, 40, 250.0, 0.05, tape-rule [read]",
    "WT03, 45, 43, 217.6875, 0.0001, tape-rule-almanac [read]",
    "WT04, 40, 45, 180.0, 0.05, tape-rule-light [read]",
  })
  void girth_and_length_give_the_published_weight(
      String id, double girth, double length, double pounds, double tolerance, String source) {
    assertThat(TapeWeight.kg(inches(girth, length)) / POUND)
        .as("%s %s", id, source)
        .isCloseTo(pounds, within(tolerance));
  }

  @ParameterizedTest(name = "{0}: {1} x {2} m is {3} kg with the printed factor ({5})")
  @CsvSource({
    "WT02, 1.27, 1.02, 114.01, 0.01, tape-rule [read]",
    "U06, 0.95, 1.10, 68.8, 0.1, 'smallholder page of 2017 [read], calculated with 69.3'",
  })
  void the_printed_metric_factor_gives_the_printed_weight(
      String id, double girth, double length, double kg, double tolerance, String source) {
    double plain = TapeWeight.plain(new Reading(girth, length), PRINTED_FACTOR);
    assertThat(plain).as("%s %s", id, source).isCloseTo(kg, within(tolerance));
  }

  /**
   * WT06, WT07 [derived]. The printed metric factor 69.3 is a rounding of the form in pounds and
   * inches and lies 0.14 % above it. We keep the exact one, so U06 is 68.7 kg here and not 68.8.
   */
  @Test
  void WT06_WT07_the_factor_is_the_exact_form_of_the_one_in_pounds_and_inches() {
    assertThat(TapeWeight.FACTOR).isCloseTo(69.1998, within(0.0001));
    assertThat(TapeWeight.kg(new Reading(0.95, 1.10))).isCloseTo(68.70, within(0.02));
    assertThat(PRINTED_FACTOR / TapeWeight.FACTOR - 1).isCloseTo(0.0014, within(0.0001));
  }

  /** WT05, tape-rule-light [read]: that keeper adds 6 lb, another 7; we add 7 to a pig of 98 lb. */
  @Test
  void WT05_a_light_pig_lies_within_a_pound_of_the_published_addition() {
    double plain = TapeWeight.plain(inches(35, 32), TapeWeight.FACTOR) / POUND;
    assertThat(plain + 6).isCloseTo(104.0, within(0.05));
    assertThat(TapeWeight.kg(inches(35, 32)) / POUND).isCloseTo(104.0 + 1, within(0.05));
  }

  @ParameterizedTest(name = "WT08 [derived]: {0} lb by the formula is {1} lb")
  @CsvSource({"98, 105", "140, 143.5", "149, 149.35", "160, 160"})
  void the_light_pig_addition_fades_out_towards_150_lb(double plain, double pounds) {
    assertThat(TapeWeight.withLightPigAddition(plain * POUND) / POUND)
        .isCloseTo(pounds, within(0.01));
  }

  @ParameterizedTest(name = "WT09 seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void a_longer_or_thicker_pig_is_never_lighter(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      Reading reading = new Reading(random.nextDouble(0.75, 1.15), random.nextDouble(0.8, 1.2));
      Reading thicker = new Reading(reading.girthM() + random.nextDouble(0.1), reading.lengthM());
      Reading longer = new Reading(reading.girthM(), reading.lengthM() + random.nextDouble(0.1));
      assertThat(TapeWeight.kg(thicker)).isGreaterThanOrEqualTo(TapeWeight.kg(reading));
      assertThat(TapeWeight.kg(longer)).isGreaterThanOrEqualTo(TapeWeight.kg(reading));
      double light = random.nextDouble(20, 140);
      double heavier = light + random.nextDouble(1e-6, 5);
      assertThat(TapeWeight.withLightPigAddition(light))
          .isLessThan(TapeWeight.withLightPigAddition(heavier));
    }
  }

  /**
   * For a small pig of 0.65 x 0.70 m three other equations give 21.4 kg (lrrd-2014-uganda), 23.8
   * (tahp-2023-uganda) and 24.7 (kansas-heart-girth), worked out from the published coefficients
   * [derived]: the addition brings the formula among them.
   */
  @Test
  void the_addition_brings_a_small_pig_among_the_independent_equations() {
    Reading small = new Reading(0.65, 0.70);
    assertThat(TapeWeight.plain(small, TapeWeight.FACTOR)).isCloseTo(20.5, within(0.05));
    assertThat(TapeWeight.kg(small)).isBetween(21.4, 24.7);
  }

  @ParameterizedTest(name = "{0} x {1} m")
  @CsvSource({"0.55, 0.60", "1.35, 1.30"})
  void a_weight_the_formula_is_not_meant_for_is_refused(double girth, double length) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> TapeWeight.kg(new Reading(girth, length)))
        .withMessageContaining("live weight by tape in kg");
  }

  @Test
  void a_measure_in_centimetres_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new Reading(95, 110))
        .withMessageContaining("heart girth in m");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new Reading(0.95, Double.NaN));
  }

  /** Check values WT10, WT14 for each part; the mean for lean pigs is our judgement. */
  @Test
  void girth_alone_says_which_equations_it_used() {
    TapeWeight.FromGirth modern = TapeWeight.fromGirth(1.016, PigType.MODERN);
    assertThat(modern.kg()).isCloseTo(91.21, within(0.01));
    assertThat(modern.equations()).containsExactly("kansas");
    TapeWeight.FromGirth lean = TapeWeight.fromGirth(1.016, PigType.LEAN_OUTDOOR);
    assertThat(lean.kg()).isCloseTo((91.21 + 77.97) / 2, within(0.01));
    assertThat(lean.equations()).containsExactly("kansas", "uganda-girth");
  }

  @Test
  void no_equation_from_girth_is_used_for_lard_and_pot_bellied_pigs() {
    for (PigType type : List.of(PigType.LARD, PigType.POT_BELLIED)) {
      assertThatExceptionOfType(OutsideDomainException.class)
          .isThrownBy(() -> TapeWeight.fromGirth(0.9, type))
          .withMessageContaining("scale");
    }
  }

  /** WT18 [derived]; kansas-heart-girth [read]: an inch of girth is 10 lb on its own equation. */
  @Test
  void WT18_a_girth_read_an_inch_high_adds_nine_pounds() {
    double more = TapeWeight.kg(inches(41, 45)) - TapeWeight.kg(inches(40, 45));
    assertThat(more / POUND).isCloseTo(9.11, within(0.01));
    assertThat(more / TapeWeight.kg(inches(40, 45))).isCloseTo(0.0506, within(0.0001));
    double byGirth =
        TapeWeight.fromGirth(41 * INCH, PigType.MODERN).kg()
            - TapeWeight.fromGirth(40 * INCH, PigType.MODERN).kg();
    assertThat(byGirth / POUND).isCloseTo(10, within(0.2));
  }

  @ParameterizedTest(name = "{0} [derived]: shape {1}, error {2}")
  @CsvSource({"WT19, 0, 0.0334, 0.0001", "section 1.5, 0.04, 0.052, 0.0005"})
  void error_from_half_an_inch_of_girth_and_an_inch_of_length(
      String id, double shape, double error, double tolerance) {
    assertThat(TapeWeight.relativeError(inches(40, 45), 0.5 * INCH, INCH, shape))
        .as(id)
        .isCloseTo(error, within(tolerance));
  }

  /** The 5 and 10 % are common practice, no source; 1.2816 is the normal deviate of 10 and 90 %. */
  @Test
  void three_readings_that_agree_are_surer_than_one() {
    Reading reading = inches(40, 45);
    Band three = TapeWeight.combined(List.of(reading, reading, reading));
    Band one = TapeWeight.combined(List.of(reading));
    assertThat(three.likely() / POUND).isCloseTo(180, within(0.05));
    assertThat(three.high() / three.likely() - 1).isCloseTo(1.2816 * 0.05, within(1e-9));
    assertThat(one.high() / one.likely() - 1).isCloseTo(1.2816 * 0.10, within(1e-9));
  }

  @Test
  void readings_that_lie_far_apart_widen_the_band() {
    Band apart = TapeWeight.combined(List.of(inches(36, 45), inches(40, 45), inches(44, 45)));
    assertThat(apart.high() / apart.likely() - 1).isGreaterThan(1.2816 * 0.10);
  }

  @Test
  void no_reading_is_no_weight() {
    assertThatIllegalArgumentException().isThrownBy(() -> TapeWeight.combined(List.of()));
  }
}
