package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.WeanerPurchase.Offer;
import swineherd.figures.WeanerPurchase.Price;
import swineherd.rulebook.Table;

class WeanerPurchaseTest {
  /** Usual weight of a modern cross at eight weeks. */
  private static final Band MODERN_AT_8_WEEKS = new Band(14, 18, 22);

  @ParameterizedTest(name = "{0}: {1} weeks, {2} kg is {3}")
  @CsvSource({
    "BU03 [derived], 8, 9, LIGHT",
    "kept within range, 8, 14, USUAL",
    // published: 40 lb at 8 weeks [read]
    "40 lb farm page [read], 8, 18.1, USUAL",
    "60 lb at 12 weeks is not one of 8, 8, 27.2, HEAVY",
    "six to eight weeks raising-small-animals [read], 6, 15, USUAL",
    "six to eight weeks raising-small-animals [read], 5.9, 15, TOO_YOUNG",
  })
  void an_offered_pig_is_judged_by_age_and_weight(String id, double age, double kg, Offer offer) {
    assertThat(WeanerPurchase.offer(age, kg, MODERN_AT_8_WEEKS)).as(id).isEqualTo(offer);
  }

  @Test
  void a_pig_too_young_is_refused_however_heavy() {
    assertThat(WeanerPurchase.offer(4, 20, MODERN_AT_8_WEEKS)).isEqualTo(Offer.TOO_YOUNG);
  }

  /** One smallholders' page and one handbook [read] say at least two, never one. */
  @ParameterizedTest(name = "BU02: {0} planned, too few: {1}")
  @CsvSource({"1, true", "2, false", "5, false"})
  void one_pig_is_too_few(int pigs, boolean tooFew) {
    assertThat(WeanerPurchase.tooFew(pigs)).isEqualTo(tooFew);
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

  /** The published shares are rounded and add up to 99.9 %. */
  @Test
  void BU01_most_fights_are_over_after_two_days_mixing_fights_study_read() {
    assertThat(WeanerPurchase.fightsToCome(0)).isCloseTo(99.9, within(0.05));
    assertThat(WeanerPurchase.fightsToCome(2)).isCloseTo(8.6 + 4.4 + 1.1, within(0.05));
    assertThat(WeanerPurchase.fightsToCome(5)).isZero();
    assertThat(Table.named("mixing-fights").rows()).hasSize(5);
  }

  @Test
  void figures_outside_what_they_hold_for_are_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WeanerPurchase.offer(-1, 10, MODERN_AT_8_WEEKS));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WeanerPurchase.price(120, 100));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WeanerPurchase.fightsToCome(6));
  }
}
