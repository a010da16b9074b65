package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.WeanerPurchase.Offer;
import swineherd.figures.WeanerPurchase.Price;

class WeanerPurchaseTest {
  private static final GrowthClass MODERN = GrowthClass.named("modern-cross");

  @ParameterizedTest(name = "{0}: {1} weeks, {2} kg is {3}")
  @CsvSource({
    "BU03 [derived], 8, 9, LIGHT",
    "lower end of the class, 8, 14, USUAL",
    "35 lb at 8 weeks [read], 8, 15.9, USUAL",
    "45 lb at 8 weeks [read], 8, 20.4, USUAL",
    "60 lb at 12 weeks [read], 12, 27.2, USUAL",
    "60 lb but said to be 8 weeks, 8, 27.2, HEAVY",
    // 30 to 40 lb at 6 weeks [read]; the heavy end is more than pigs outdoors weigh
    "30 lb at 6 weeks [read], 6, 13.6, USUAL",
    "40 lb at 6 weeks [read], 6, 18.1, HEAVY",
    "six to eight weeks raising-small-animals [read], 5.9, 15, TOO_YOUNG",
  })
  void an_offered_pig_is_judged_by_age_and_weight(String id, double age, double kg, Offer offer) {
    assertThat(WeanerPurchase.offer(age, kg, MODERN)).as(id).isEqualTo(offer);
  }

  /** Worked from the Gompertz curve of each class, rounded to a kilogram [derived]. */
  @ParameterizedTest(name = "{0} at {1} weeks: {2} kg")
  @CsvSource({
    "modern-cross, 8, 18",
    "modern-cross, 12, 35",
    "modern-cross, 16, 57",
    "improved, 12, 31",
    "traditional, 12, 24",
    "traditional, 16, 38",
    "lard, 12, 16",
    "small-lard, 16, 15",
  })
  void the_usual_weight_grows_with_age(String growthClass, double age, double kg) {
    Band usual = WeanerPurchase.usualKg(age, GrowthClass.named(growthClass));
    assertThat(usual.likely()).isCloseTo(kg, within(0.5));
  }

  @Test
  void at_eight_weeks_the_range_is_that_of_the_class() {
    Band usual = WeanerPurchase.usualKg(8, MODERN);
    assertThat(usual.low()).isCloseTo(14, within(1e-9));
    assertThat(usual.high()).isCloseTo(22, within(1e-9));
  }

  @Test
  void a_pig_too_young_is_refused_however_heavy() {
    assertThat(WeanerPurchase.offer(4, 20, MODERN)).isEqualTo(Offer.TOO_YOUNG);
  }

  /** Shares of cash cost in published budgets; the limits of 15, 25 and 30 % are our judgement. */
  @ParameterizedTest(name = "{0} of {1} is {2} ({3})")
  @CsvSource({
    "50, 249.50, USUAL, farm-uk-2018 [read]",
    "60.50, 295.80, USUAL, farm-scotland-2011 [read]",
    "85, 366, USUAL, farm-us-2010 [read]",
    "11, 624.67, LOW, farm-us-2020 [read] gave 33 for three",
    "28, 100, HIGH, judgement",
    "30, 100, HIGH, judgement",
    "31, 100, VERY_HIGH, judgement",
  })
  void a_price_is_judged_by_its_share(double price, double cost, Price judged, String source) {
    assertThat(WeanerPurchase.price(price, cost)).as(source).isEqualTo(judged);
  }

  @Test
  void figures_outside_what_they_hold_for_are_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WeanerPurchase.offer(-1, 10, MODERN));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WeanerPurchase.price(120, 100));
  }
}
