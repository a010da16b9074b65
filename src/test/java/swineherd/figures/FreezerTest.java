package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreezerTest {
  private static final double POUND = 0.45359237;
  private static final double CUBIC_FOOT = 28.316847;

  @Test
  void YD13_three_pigs_of_166_kg_of_meat_take_349_litres_derived() {
    assertThat(Freezer.litres(166.3).likely()).isCloseTo(349, within(1.0));
  }

  /**
   * YD14: 35 and 40 lb per cubic foot are the tight packings smallholders print, 0.5606 and 0.6407
   * kg per litre exactly; our tight end is the 40, rounded to a tenth of a litre.
   */
  @ParameterizedTest(name = "YD14 {0} lb per cubic foot is {1} kg/L")
  @CsvSource({"35, 0.5606", "40, 0.6407"})
  void the_tight_end_is_forty_pounds_to_the_cubic_foot(double pounds, double kgPerLitre) {
    double exact = pounds * POUND / CUBIC_FOOT;
    assertThat(exact).isCloseTo(kgPerLitre, within(0.0001));
    assertThat(1 / exact).isBetween(Freezer.litres(1).low() - 0.05, Freezer.litres(1).likely());
  }

  /**
   * A farm [read] sells half a pig as 3.5 cubic feet and a whole one, 144 lb of meat, as 7.5: the
   * loose end. The whole pig at 19 lb per cubic foot lies 5 % beyond our 20 and is taken for
   * rounding up.
   */
  @Test
  void a_loosely_packed_half_pig_fits_the_upper_end() {
    Band half = Freezer.litres(72 * POUND);
    assertThat(3.5 * CUBIC_FOOT).isBetween(half.likely(), half.high());
  }

  /** usda-home-freezing [memory]: 2 to 3 lb for each cubic foot a day. */
  @Test
  void a_chest_of_two_hundred_litres_freezes_six_to_ten_kilograms_a_day() {
    Band kg = Freezer.freezesKgADay(200);
    assertThat(kg.low()).isCloseTo(2 * POUND / CUBIC_FOOT * 200, within(0.05));
    assertThat(kg.high()).isCloseTo(3 * POUND / CUBIC_FOOT * 200, within(0.05));
  }

  /** us-cold-storage [read]: roasts 4 to 12 months, sausage 1 to 2, bacon 1. */
  @ParameterizedTest(name = "{0} frozen on 31 October, best before {1}")
  @CsvSource({"roasts, 2026-02-28", "sausage, 2025-11-30", "bacon, 2025-11-30"})
  void meat_is_best_before_the_short_end_of_the_chart(String cut, LocalDate best) {
    assertThat(Freezer.bestBefore(LocalDate.of(2025, 10, 31), cut)).isEqualTo(best);
  }

  @Test
  void an_unknown_cut_is_named() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Freezer.bestBefore(LocalDate.of(2025, 10, 31), "trotters"))
        .withMessageContaining("trotters");
  }
}
