package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static swineherd.figures.ForecastTest.known;

import java.time.LocalDate;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReweighingTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 24);

  private static Forecast gilts(Weighing.Means method) {
    return Forecast.of(
        GrowthClass.named("modern-cross"),
        0.86,
        Forecast.Setting.DESCRIBED,
        3,
        known(method, DAY, 18),
        false);
  }

  private static KnownWeight taped(int day, double kg) {
    return known(Weighing.Means.TAPE, DAY.plusDays(day), kg);
  }

  @Test
  void U05_a_taped_weight_changes_the_rate_as_worked_by_hand() {
    // both weights with the tape's 5 %; [derived], 1 %
    Reweighing taped = gilts(Weighing.Means.TAPE).reweighed(taped(42, 40));
    assertThat(taped.observedRate().orElseThrow())
        .isCloseTo(0.008953, Percentage.withPercentage(1));
    assertThat(taped.after().growth().ratePerDay())
        .isCloseTo(0.009507, Percentage.withPercentage(1));
    assertThat(taped.after().sigma()).isCloseTo(0.0763, Percentage.withPercentage(1));
    // 90.8 days left instead of 79.7 [derived]
    assertThat(taped.after().daysTo(110).likely()).isCloseTo(90.8, within(0.3));
    assertThat(taped.before().growth().daysBetween(40, 110)).isCloseTo(79.7, within(0.1));
    assertThat(taped.lagging()).isFalse();
    assertThat(taped.rateRatio()).isCloseTo(0.877, within(0.002));
  }

  /**
   * By hand [derived, the rule itself judgement]: the spread grows by the disagreement over 1.2816,
   * the edge of the eight in ten of a normal curve (tables of the normal distribution [memory]).
   */
  @Test
  void a_weight_far_outside_its_band_does_not_leave_the_band_narrow() {
    Reweighing far = gilts(Weighing.Means.SCALE).reweighed(taped(42, 28));
    Reweighing near = gilts(Weighing.Means.SCALE).reweighed(taped(42, 44));
    assertThat(far.after().sigma()).isGreaterThan(far.before().sigma());
    assertThat(near.after().sigma()).isLessThan(near.before().sigma());
  }

  @Test
  void a_guess_at_the_start_lets_a_later_weight_count_for_less() {
    Reweighing guessed = gilts(Weighing.Means.GUESS).reweighed(taped(42, 40));
    Reweighing taped = gilts(Weighing.Means.TAPE).reweighed(taped(42, 40));
    assertThat(guessed.after().sigma()).isGreaterThan(taped.after().sigma());
    assertThat(guessed.after().growth().ratePerDay())
        .isBetween(taped.after().growth().ratePerDay(), guessed.before().growth().ratePerDay());
  }

  @Test
  void the_check_after_a_purchase_is_no_fault_of_the_pigs() {
    Forecast bought =
        Forecast.of(
            GrowthClass.named("modern-cross"),
            0.86,
            Forecast.Setting.DESCRIBED,
            3,
            known(Weighing.Means.SCALE, DAY, 18),
            true);
    double expected = bought.weightOn(DAY.plusDays(42)).likely();
    assertThat(bought.reweighed(taped(42, expected)).rateRatio()).isCloseTo(1, within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22, 23})
  void the_expected_weight_leaves_the_date_and_narrows_the_band(long seed) {
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    int compared = 0;
    for (int i = 0; i < 300; i++) {
      Forecast forecast = ForecastTest.any(random, "modern-cross");
      int days = random.nextInt(30, 60);
      KnownWeight expected =
          known(
              Weighing.Means.SCALE,
              DAY.plusDays(days),
              forecast.weightOn(DAY.plusDays(days)).likely());
      Reweighing reweighing = forecast.reweighed(expected);
      if (reweighing.observedRate().isEmpty()) {
        continue;
      }
      Band before = forecast.daysTo(110);
      Band after = reweighing.after().daysTo(110);
      assertThat(after.likely() + days).isCloseTo(before.likely(), within(1e-6));
      assertThat(after.high() - after.low()).isLessThan(before.high() - before.low());
      assertThat(reweighing.rateRatio()).isCloseTo(1, within(1e-9));
      assertThat(reweighing.lagging()).isFalse();
      compared++;
    }
    assertThat(compared).isGreaterThan(200);
  }

  @Test
  void a_heavier_weight_never_makes_the_date_later() {
    double last = Double.MAX_VALUE;
    for (double kg = 30; kg <= 60; kg += 0.5) {
      double days =
          gilts(Weighing.Means.SCALE).reweighed(taped(42, kg)).after().daysTo(110).likely();
      assertThat(days).isLessThan(last);
      last = days;
    }
  }

  @Test
  void several_weighings_are_taken_one_after_another_and_come_to_the_true_rate() {
    // pigs that truly grow at 0.85 of the expected rate, weighed on a scale each four weeks
    Forecast forecast = gilts(Weighing.Means.SCALE);
    Growth truth = forecast.growth().withRate(0.85 * forecast.growth().ratePerDay());
    double off = 1;
    for (int day = 28; day <= 112; day += 28) {
      forecast =
          forecast
              .reweighed(known(Weighing.Means.SCALE, DAY.plusDays(day), truth.weightAfter(18, day)))
              .after();
      double nowOff = forecast.growth().ratePerDay() / truth.ratePerDay() - 1;
      assertThat(nowOff).isBetween(0.0, off);
      off = nowOff;
    }
    assertThat(off).isLessThan(0.03);
    // however often they are weighed, the time ahead is not known better than this
    assertThat(forecast.sigma()).isGreaterThanOrEqualTo(0.05);
  }

  @Test
  void two_weights_close_together_say_nothing_about_the_rate() {
    Reweighing soon = gilts(Weighing.Means.TAPE).reweighed(taped(13, 24));
    assertThat(soon.observedRate()).isEmpty();
    assertThat(soon.after()).isEqualTo(soon.before());
    assertThat(soon.lagging()).isFalse();
  }

  @Test
  void a_scale_replaces_a_guess_at_once() {
    KnownWeight weighed = known(Weighing.Means.SCALE, DAY.plusDays(3), 14);
    Reweighing soon = gilts(Weighing.Means.GUESS).reweighed(weighed);
    assertThat(soon.observedRate()).isEmpty();
    assertThat(soon.after().start()).isEqualTo(weighed);
    assertThat(soon.after().growth()).isEqualTo(soon.before().growth());
    assertThat(soon.lighter()).isTrue();
  }

  @Test
  void pigs_far_behind_are_said_to_lag() {
    // a third of the expected gain
    Reweighing poor = gilts(Weighing.Means.SCALE).reweighed(taped(42, 27));
    assertThat(poor.rateRatio()).isLessThan(0.80);
    assertThat(poor.lagging()).isTrue();
  }

  @Test
  void pigs_that_stand_still_lag_although_the_gain_is_too_small_for_a_rate() {
    Reweighing still = gilts(Weighing.Means.SCALE).reweighed(taped(42, 18.5));
    assertThat(still.observedRate()).isEmpty();
    assertThat(still.lagging()).isTrue();
    assertThat(still.after().start().kg()).isEqualTo(18.5);
    assertThat(still.after().datesOf(110).likely()).isAfter(still.before().datesOf(110).likely());
  }

  @Test
  void a_weight_from_before_the_start_is_refused() {
    assertThatThrownBy(() -> gilts(Weighing.Means.SCALE).reweighed(taped(-1, 20)))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> gilts(Weighing.Means.SCALE).reweighed(taped(0, 20)))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> gilts(Weighing.Means.SCALE).reweighed(taped(200, 200)))
        .isInstanceOf(OutsideDomainException.class);
  }
}
