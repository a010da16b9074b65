package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.figures.Carcass.Cutting;
import swineherd.figures.Carcass.Style;
import swineherd.rulebook.Table;

class CarcassTest {
  private static final double POUND = 0.45359237;

  private static final Band USUAL = Carcass.dressingPercent(Style.HEAD_OFF_SKIN_ON, false, false);

  @ParameterizedTest(name = "{0}: {1} lb of {2} lb is {3} % ({5})")
  @CsvSource({
    "YD01, 180, 250, 72.0, 0.05, oklahoma-pork [read]",
    "YD02, 184, 250, 73.6, 0.05, nppc-cuts [read]",
    "YD03, 186, 255, 72.9, 0.1, judging-course [read] prints 73",
    "YD04, 140, 184, 76.1, 0.1, nppc-cuts [read]",
    "YD04, 144, 180, 80.0, 0.1, oklahoma-pork [read]",
    "YD04, 123, 180, 68.3, 0.1, attra-hog-yield [read]",
    "YD09, 104, 215, 48.4, 0.1, wsda-yield [read]",
  })
  void published_weights_give_the_published_percentage(
      String id, double part, double whole, double percent, double tolerance, String source) {
    assertThat(Carcass.percentOf(part, whole))
        .as("%s %s", id, source)
        .isCloseTo(percent, within(tolerance));
  }

  /** Published dressing percentages, skin on: the default band must hold them or say why not. */
  @ParameterizedTest(name = "{0} % is inside {1} ({2})")
  @CsvSource({
    "72.0, HEAD_OFF_SKIN_ON, oklahoma-pork [read]",
    "73.6, HEAD_OFF_SKIN_ON, nppc-cuts [read]",
    "72.9, HEAD_OFF_SKIN_ON, judging-course [read]",
    "70, HEAD_OFF_SKIN_ON, wisconsin-hog-yield [read] low end",
    "75, HEAD_ON_SKIN_ON, wisconsin-hog-yield [read] high end",
  })
  void the_default_band_holds_published_dressing_percentages(
      double percent, Style style, String source) {
    Band band = Carcass.dressingPercent(style, false, false);
    assertThat(percent).as(source).isBetween(band.low(), band.high());
  }

  @Test
  void YD08_a_pig_of_110_kg_hangs_79_kg_and_gives_55_kg_of_meat_derived() {
    Band hanging = Carcass.hangingKg(110, USUAL);
    assertThat(hanging.likely()).isCloseTo(79.2, within(0.01));
    Band meat = Carcass.meatKg(hanging, Carcass.meatPercent(Cutting.BONE_IN, false));
    assertThat(meat.likely()).isCloseTo(55.44, within(0.01));
    // wsda-yield [read]: 104 lb of a 215 lb pig, 48.4 % of live weight, lies inside
    assertThat(0.484 * 110).isBetween(meat.low(), meat.high());
  }

  /** Two eye guesses of 379 and 391 lb were for pigs that hung 190 and 198 lb (a farm record). */
  @Test
  void YD10_hanging_weight_tells_the_live_weight_derived() {
    assertThat(Carcass.liveKg(190 * POUND, 72) / POUND).isCloseTo(263.9, within(0.1));
  }

  /**
   * Trade practice; Wisconsin and a course give 1.5 % for the cooler, wisconsin-hog-yield [read].
   */
  @Test
  void the_cooler_takes_two_percent() {
    Band cold = Carcass.coldKg(Band.exactly(100));
    assertThat(cold.low()).isCloseTo(97, within(1e-9));
    assertThat(cold.likely()).isCloseTo(98, within(1e-9));
    assertThat(cold.high()).isCloseTo(98.5, within(1e-9));
  }

  /**
   * Lower on pasture, higher for a fat pig: wisconsin-hog-yield [read]; sizes are trade practice.
   */
  @Test
  void pasture_lowers_and_fat_raises_the_dressing_percentage() {
    Band pastured = Carcass.dressingPercent(Style.HEAD_OFF_SKIN_ON, true, false);
    Band fat = Carcass.dressingPercent(Style.HEAD_OFF_SKIN_ON, false, true);
    assertThat(pastured).isEqualTo(new Band(68, 70, 72));
    assertThat(fat).isEqualTo(new Band(71, 73.5, 76));
  }

  /**
   * 57 to 83 % is the spread of published yields; a lard pig gives four points less (judgement).
   */
  @ParameterizedTest
  @EnumSource(Cutting.class)
  void meat_lies_within_the_published_spread_and_a_lard_pig_gives_less(Cutting cutting) {
    Band percent = Carcass.meatPercent(cutting, false);
    assertThat(percent.low()).isGreaterThanOrEqualTo(57);
    assertThat(percent.high()).isLessThanOrEqualTo(83);
    assertThat(Carcass.meatPercent(cutting, true).likely()).isEqualTo(percent.likely() - 4);
  }

  @Test
  void YD05_the_oklahoma_cuts_add_up_oklahoma_pork_read() {
    double all = column("wrappedOf180", Set.of());
    assertThat(all).isEqualTo(144);
    assertThat(column("wrappedOf180", Set.of("head", "feet", "backfat"))).isEqualTo(113);
  }

  @Test
  void YD06_the_council_cuts_add_up_nppc_cuts_read() {
    assertThat(column("primalOf184", Set.of())).isCloseTo(184.2, within(0.05));
    assertThat(column("wrappedOf184", Set.of())).isCloseTo(139.8, within(0.05));
  }

  @Test
  void YD07_the_chart_shares_add_up_to_the_carcass_extension_cut_chart_read() {
    assertThat(column("share", Set.of())).isEqualTo(100);
    assertThat(Carcass.cutsKg(80).values().stream().mapToDouble(kg -> kg).sum())
        .isCloseTo(80, within(1e-9));
    assertThat(Carcass.cutsKg(80)).containsEntry("ham", 17.6).doesNotContainKey("trim");
  }

  private static double column(String column, Set<String> without) {
    return Table.named("cuts").rows().stream()
        .filter(row -> !without.contains(row.key()))
        .mapToDouble(row -> row.maybe(column).orElse(0))
        .sum();
  }

  @ParameterizedTest
  @CsvSource({"12", "240", "NaN"})
  void weights_no_dressing_percentage_was_published_for_are_refused(double kg) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Carcass.hangingKg(kg, USUAL))
        .withMessageContaining("live weight in kg");
  }

  @Test
  void more_meat_than_carcass_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Carcass.percentOf(101, 100));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Carcass.percentOf(0, 0));
  }
}
