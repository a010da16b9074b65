package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static swineherd.figures.ForecastTest.known;

import java.time.LocalDate;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;

class GrowthClassTest {
  private static final LocalDate DAY = LocalDate.of(2027, 5, 1);

  /**
   * Published weights the classes are held against. Those that are marked "looked at" were seen
   * when the class or its usual factor was chosen; they show that the numbers went in right. The
   * others are independent.
   */
  @ParameterizedTest(name = "{0}: {1} x {2}, {3} kg, {4} d: published {5} kg, within {6} %. {7}")
  @CsvSource({
    "G12, lard, 1.00, 24.3, 183.9, 115.5, 0.9, Mangalitsa: Radovic 2017 [read], looked at",
    "G13, lard, 1.00, 29.9, 192.2, 131.3, 8, Moravka: Radovic 2017 [read]",
    "G14, modern-cross, 1.05, 25, 89, 119.0, 6, 'France, barrows: Quiniou 2010 [read]'",
    "G15, modern-cross, 1.025, 22.11, 94, 121.18, 8, 'Brazil: Ciencia Rural 2015 [read]'",
    "G16, modern-cross, 0.86, 18.14, 56, 56.7, 8, 'US small farms: ATTRA [read], looked at'",
    "G16, modern-cross, 0.86, 18.14, 28, 34.0, 8, 'US small farms: ATTRA [read], looked at'",
    "G17, modern-cross, 0.74, 22.68, 106, 99.8, 8, 'youth lesson: 4-H [read], looked at'",
    "1.8, modern-cross, 1.00, 30, 76, 116.6, 10, 'pasture to appetite: Aarhus University [read]'",
    "1.8, modern-cross, 1.00, 18, 86, 89, 10, 'J. Anim. Sci. Technol. 2025 [read], start assumed'",
  })
  void a_class_meets_published_weights(
      String id,
      String key,
      double factor,
      double start,
      double days,
      double published,
      double tolerance,
      String source) {
    assertThat(GrowthClass.named(key).growth(factor).weightAfter(start, days))
        .as(source)
        .isCloseTo(published, Percentage.withPercentage(tolerance));
  }

  /** The same results, each inside the band that a keeper would be shown. */
  @ParameterizedTest(name = "{0} x {1}, {2} kg, {3} d: published {4} kg. {5}")
  @CsvSource({
    "modern-cross, 1.025, 22.11, 94, 121.18, 'Brazil: Ciencia Rural 2015 [read]'",
    "modern-cross, 1.05, 25, 89, 119.0, 'France: Quiniou 2010 [read]'",
    "modern-cross, 1.00, 30, 76, 116.6, 'Denmark: Aarhus University [read]'",
    "modern-cross, 1.00, 18, 86, 89, 'Italy: J. Anim. Sci. Technol. 2025 [read]'",
    "lard, 1.00, 29.9, 192, 131.3, 'Moravka: Radovic 2017 [read]'",
  })
  void independent_results_fall_inside_the_band(
      String key, double factor, double start, int days, double published, String source) {
    Forecast forecast =
        Forecast.of(
            GrowthClass.named(key),
            factor,
            Forecast.Setting.DESCRIBED,
            100,
            known(Weighing.Means.SCALE, DAY, start),
            false);
    Band band = forecast.weightOn(DAY.plusDays(days));
    assertThat(published).as(source).isBetween(band.low(), band.high());
  }

  /**
   * NRC 2012, Table 16-1A [memory], gives mixed sexes 9 to 13 % less gain than this class, whose
   * curve comes from faster trial pigs. It lies inside the class's own spread with an ordinary
   * setting, which is what the band is for; the class is not moved to meet it.
   */
  @ParameterizedTest(name = "NRC 2012: {0} to {1} kg at {2} kg a day")
  @CsvSource({"25, 50, 0.758", "50, 75, 0.900", "75, 100, 0.917", "100, 135, 0.867"})
  void gains_of_the_nrc_table_are_inside_the_band(double from, double to, double gain) {
    GrowthClass modern = GrowthClass.named("modern-cross");
    double expected = (to - from) / modern.growth(1).daysBetween(from, to);
    double half = Normal.Z80 * Forecast.sigma(modern, Forecast.Setting.DESCRIBED, 100);
    assertThat(gain).isBetween(expected * Math.exp(-half), expected * Math.exp(half));
  }

  @Test
  void G18_a_hereford_is_at_market_weight_in_five_to_six_months() {
    // hobby-farm and breed pages: 250 lb (113.4 kg) in 5 to 6 months of age [read]
    Growth growth = GrowthClass.named("improved").growth(1);
    assertThat(growth.daysBetween(16, 113.4)).isBetween(95.0, 130.0);
  }

  @ParameterizedTest(name = "G19: {0} from {1} kg is at 60 kg in {2} days [derived]")
  @CsvSource({
    "modern-cross, 18, 51",
    "improved, 16, 58",
    "traditional, 14, 81",
    "lard, 10, 122",
    "meishan, 10, 122",
    "small-lard, 6, 202",
    "kunekune, 6, 244",
  })
  void classes_come_in_their_order(String key, double start, double days) {
    GrowthClass growthClass = GrowthClass.named(key);
    assertThat(growthClass.eightWeekKg().likely()).isEqualTo(start);
    assertThat(growthClass.growth(1).daysBetween(start, 60)).isCloseTo(days, within(1.0));
  }

  @ParameterizedTest(name = "{0} to {1} kg: {2}, {3}, {4} days at 1.00, 0.86, 0.74 [derived]")
  @CsvSource({
    "modern-cross, 110, 98, 114, 133",
    "improved, 110, 108, 126, 146",
    "traditional, 70, 94, 110, 127",
    "traditional, 100, 134, 156, 181",
    // by hand 309.4 days, 52.2 weeks of age
    "lard, 130, 266, 309, 360",
    "meishan, 90, 185, 215, 250",
    "small-lard, 60, 202, 235, 273",
    "kunekune, 60, 244, 284, 330",
  })
  void days_to_finish_are_those_worked_by_hand(
      String key, double target, double full, double usual, double poor) {
    GrowthClass c = GrowthClass.named(key);
    double start = c.eightWeekKg().likely();
    assertThat(c.growth(1.00).daysBetween(start, target)).isCloseTo(full, within(0.51));
    assertThat(c.growth(0.86).daysBetween(start, target)).isCloseTo(usual, within(0.51));
    assertThat(c.growth(0.74).daysBetween(start, target)).isCloseTo(poor, within(0.51));
  }

  /** Peaks of gain that had no part in choosing the class. */
  @ParameterizedTest(name = "{0} gains fastest near {1} kg: {2}")
  @CsvSource({
    "modern-cross, 78, 'barrows, University of Illinois 2013 [read]'",
    "modern-cross, 77, 'gilts, University of Illinois 2013 [read]'",
    "modern-cross, 83, 'barrows, mixed-model growth functions [read]'",
    "meishan, 62.5, 'Liangshan, Luo 2015 [read]'",
    "traditional, 84.2, 'Nero di Parma castrates [read]'",
  })
  void gain_peaks_where_it_was_seen_to(String key, double kg, String source) {
    // expectation set beforehand: within 12 %, as a fixed-shape curve puts the peak at A/e
    assertThat(GrowthClass.named(key).growth(1).fastestAtKg())
        .as(source)
        .isCloseTo(kg, Percentage.withPercentage(12));
  }

  @Test
  void a_cross_of_two_classes_lies_between_them_and_grows_a_little_faster() {
    GrowthClass cross = GrowthClass.named("modern-cross").crossedWith(GrowthClass.named("meishan"));
    // by hand: (230+160)/2, (0.0126+0.0085)/2 x 1.05 [derived]
    assertThat(cross.asymptoteKg()).isEqualTo(195);
    assertThat(cross.ratePerDay()).isCloseTo(0.0110775, within(1e-9));
    assertThat(cross.eightWeekKg().likely()).isEqualTo(14);
    assertThat(cross.sigma()).isEqualTo(0.20);
    assertThat(cross.sexMatters()).isFalse();
  }

  /**
   * Genet. Sel. Evol. 25:83, 1993 [read]: with Meishan dams pigs gained 71 g/d (SE 16) less than
   * with Large White dams, 30 to 100 kg, to appetite. The mean of the two classes loses more than
   * that (most of the vigour of so wide a cross is not in the 5 %), so the likely date of such a
   * cross is late rather than early; its band must still hold what was measured.
   */
  @Test
  void the_band_of_a_meishan_cross_holds_the_measured_loss_of_gain() {
    GrowthClass white = GrowthClass.named("improved");
    GrowthClass cross = white.crossedWith(GrowthClass.named("meishan"));
    double measured = 70 / white.growth(1).daysBetween(30, 100) - 0.071;
    double likely = 70 / cross.growth(1).daysBetween(30, 100);
    double half = Normal.Z80 * Forecast.sigma(cross, Forecast.Setting.DESCRIBED, 100);
    assertThat(measured).isBetween(likely, likely * Math.exp(half));
  }

  @Test
  void two_breeds_of_one_class_stay_in_it() {
    GrowthClass traditional = GrowthClass.named("traditional");
    assertThat(traditional.crossedWith(traditional)).isEqualTo(traditional);
  }

  @Test
  void crossing_does_not_depend_on_which_parent_is_named_first() {
    GrowthClass one = GrowthClass.named("lard").crossedWith(GrowthClass.named("modern-cross"));
    GrowthClass other = GrowthClass.named("modern-cross").crossedWith(GrowthClass.named("lard"));
    assertThat(one.growth(1)).isEqualTo(other.growth(1));
    assertThat(one.cautionAboveKg()).isEqualTo(other.cautionAboveKg()).hasValue(125);
  }

  @Test
  void an_unknown_breed_grows_as_a_modern_cross_with_less_trust() {
    GrowthClass unknown = GrowthClass.unknownBreed();
    GrowthClass modern = GrowthClass.named("modern-cross");
    assertThat(unknown.growth(1)).isEqualTo(modern.growth(1));
    assertThat(unknown.sigma()).isEqualTo(0.15).isGreaterThan(modern.sigma());
    assertThat(unknown.name()).contains("not known");
    assertThat(unknown.crossedWith(modern)).isEqualTo(unknown);
    assertThat(modern.crossedWith(unknown)).isEqualTo(unknown);
  }

  @Test
  void the_usual_eight_week_weight_carries_the_error_of_its_range() {
    KnownWeight weaner = GrowthClass.named("modern-cross").usualAtEightWeeks(DAY);
    assertThat(weaner.kg()).isEqualTo(18);
    // 4 kg either way holds eight in ten: 4 / 1.2816 / 18 [derived]
    assertThat(weaner.error()).isCloseTo(0.1734, within(0.0001));
  }

  @Test
  void every_class_can_be_forecast_from_its_usual_weaner_to_its_usual_slaughter() {
    assertThat(Table.named("growth-classes").rows()).hasSize(8);
    for (Table.Row row : Table.named("growth-classes").rows()) {
      GrowthClass c = GrowthClass.named(row.key());
      Growth growth = c.growth(1);
      assertThat(c.eightWeekKg().low()).isGreaterThanOrEqualTo(growth.lowestKg());
      assertThat(c.slaughterMostKg()).isLessThanOrEqualTo(growth.highestKg());
      assertThat(growth.daysBetween(c.eightWeekKg().low(), c.slaughterToKg())).isPositive();
      KnownWeight start = c.usualAtEightWeeks(DAY);
      assertThat(
              Forecast.of(c, 1, Forecast.Setting.UNKNOWN_DIET, 1, start, true)
                  .datesOf(c.slaughterFromKg())
                  .late())
          .isAfter(DAY);
    }
  }

  @Test
  void factors_are_multiplied_and_sex_counts_only_where_it_is_settled() {
    GrowthClass modern = GrowthClass.named("modern-cross");
    // 0.92 x 0.93 = 0.856: the usual smallholding [derived]
    assertThat(GrowthFactors.product(modern, "feed-to-appetite", "env-outdoors", "sex-gilts"))
        .isCloseTo(0.856, within(0.0005));
    assertThat(GrowthFactors.product(modern, "feed-self-feeder", "env-housed", "sex-barrows"))
        .isEqualTo(1.05);
    assertThat(
            GrowthFactors.product(
                GrowthClass.named("traditional"), "feed-self-feeder", "env-housed", "sex-barrows"))
        .isEqualTo(1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> GrowthFactors.product(modern, "env-housed", "env-housed", "sex-gilts"))
        .withMessageContaining("no feed factor");
  }

  @Test
  void every_product_of_the_table_is_within_the_bounds_of_the_model() {
    GrowthClass modern = GrowthClass.named("modern-cross");
    int products = 0;
    for (String feed : keys("feed")) {
      for (String environment : keys("environment")) {
        for (String sex : keys("sex")) {
          double factor = GrowthFactors.product(modern, feed, environment, sex);
          assertThat(modern.growth(factor).ratePerDay()).isPositive();
          products++;
        }
      }
    }
    assertThat(products).isEqualTo(6 * 4 * 5);
  }

  @Test
  void a_factor_that_no_pig_ever_reached_is_refused() {
    GrowthClass modern = GrowthClass.named("modern-cross");
    assertThatThrownBy(() -> modern.growth(1.16)).isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> modern.growth(0.1)).isInstanceOf(OutsideDomainException.class);
  }

  private static List<String> keys(String kind) {
    return Table.named("growth-factors").rows().stream()
        .filter(row -> row.text("kind").equals(kind))
        .map(Table.Row::key)
        .toList();
  }
}
