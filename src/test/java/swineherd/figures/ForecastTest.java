package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ForecastTest {
  private static final LocalDate DAY = LocalDate.of(2027, 4, 24);

  /** Three guessed gilts of 18 kg, hand-fed outdoors: the first worked example [derived]. */
  private static Forecast threeGilts() {
    return Forecast.of(
        GrowthClass.named("modern-cross"),
        0.86,
        Forecast.Setting.DESCRIBED,
        3,
        known(Weighing.Means.GUESS, DAY, 18),
        false);
  }

  /**
   * Worked by hand with the lognormal approximation D exp(+-1.2816 sqrt(sigma^2 + (dt0/D)^2)). The
   * forecast adds the two errors without that approximation, so its ends may differ from it by a
   * little in the shorter cases.
   */
  @ParameterizedTest(
      name = "{0}: {1} x {2}, {3} pigs of {4} kg to {5} kg: {6}, {7}, {8} d [derived]")
  @CsvSource({
    "U03, modern-cross, 0.86, 3, 18, 110, 95.4, 114.4, 137.1, 0.3",
    "U04, traditional, 0.80, 2, 14, 100, 130.7, 167.2, 214.0, 0.4",
    "example 3, lard, 0.86, 2, 12, 130, 223, 299.7, 403, 0.6",
    "example 4, small-lard, 0.86, 2, 6, 60, 165, 234.5, 334, 0.6",
  })
  void the_band_is_that_of_the_worked_examples(
      String id,
      String key,
      double factor,
      int pigs,
      double start,
      double target,
      double early,
      double likely,
      double late,
      double tolerance) {
    Forecast forecast =
        Forecast.of(
            GrowthClass.named(key),
            factor,
            Forecast.Setting.DESCRIBED,
            pigs,
            known(Weighing.Means.GUESS, DAY, start),
            false);
    Band days = forecast.daysTo(target);
    assertThat(days.low()).as(id).isCloseTo(early, within(tolerance));
    assertThat(days.likely()).as(id).isCloseTo(likely, within(0.1));
    assertThat(days.high()).as(id).isCloseTo(late, within(tolerance));
  }

  @Test
  void sigma_is_that_of_the_first_worked_example() {
    // sqrt(0.08^2 + 0.10^2 + 0.08^2/3) [derived]
    assertThat(threeGilts().sigma()).isCloseTo(0.1361, within(0.00005));
  }

  @Test
  void dates_are_the_days_counted_from_the_start() {
    // 95.4, 114.4 and 137.1 days, each to the end of the day [derived]
    assertThat(threeGilts().datesOf(110))
        .isEqualTo(new DateBand(DAY.plusDays(96), DAY.plusDays(115), DAY.plusDays(138)));
  }

  @Test
  void a_purchase_costs_four_days() {
    // common practice, no source: 3 to 7 days of little or no gain
    Forecast bought =
        Forecast.of(
            GrowthClass.named("modern-cross"),
            0.86,
            Forecast.Setting.DESCRIBED,
            3,
            known(Weighing.Means.GUESS, DAY, 18),
            true);
    assertThat(bought.daysTo(110).likely())
        .isCloseTo(threeGilts().daysTo(110).likely() + 4, within(1e-6));
    assertThat(bought.weightOn(DAY.plusDays(4)).likely()).isEqualTo(18);
    assertThat(bought.weightOn(DAY.plusDays(34)))
        .isEqualTo(threeGilts().weightOn(DAY.plusDays(30)));
    assertThat(bought.chanceNotReached(110, DAY.plusDays(124)))
        .isEqualTo(threeGilts().chanceNotReached(110, DAY.plusDays(120)));
  }

  @Test
  void on_the_first_day_the_weight_is_as_sure_as_the_weighing() {
    Band today = threeGilts().weightOn(DAY);
    assertThat(today.likely()).isEqualTo(18);
    // 18 kg times 1 -+ 1.2816 x 0.12, within 2 % as the error is taken along the curve [derived]
    assertThat(today.low()).isCloseTo(15.23, Percentage.withPercentage(2));
    assertThat(today.high()).isCloseTo(20.77, Percentage.withPercentage(2));
  }

  /**
   * The model's own words, drawn at random: a rate whose logarithm is normal, a start weight that
   * is normal. Eight in ten must fall inside. This checks the way the two errors are added.
   */
  @ParameterizedTest(name = "{0} of {1} kg, error {2}, to {3} kg, seed 7")
  @CsvSource({
    "modern-cross, 18, 0.12, 110",
    "modern-cross, 18, 0.12, 25",
    "modern-cross, 40, 0.03, 45",
    "traditional, 14, 0.05, 80",
    "small-lard, 6, 0.12, 60",
    "pot-bellied, 4, 0.34, 30",
  })
  void eight_in_ten_simulated_pigs_fall_inside(
      String key, double start, double error, double target) {
    Forecast forecast =
        Forecast.of(
            GrowthClass.named(key),
            0.86,
            Forecast.Setting.DESCRIBED,
            1,
            new KnownWeight(DAY, start, error),
            false);
    Band days = forecast.daysTo(target);
    int middle = (int) Math.ceil(days.likely());
    Band weight = forecast.weightOn(DAY.plusDays(middle));
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(7);
    int pigs = 40_000;
    int inTime = 0;
    int inWeight = 0;
    int notReached = 0;
    LocalDate asked = DAY.plusDays((long) (days.likely() * 1.2));
    double askedDays = (long) (days.likely() * 1.2);
    for (int i = 0; i < pigs; i++) {
      Growth pig =
          forecast
              .growth()
              .withRate(
                  forecast.growth().ratePerDay()
                      * Math.exp(forecast.sigma() * random.nextGaussian()));
      // the error of the start weight is taken along the curve, as days of growth
      double weighed =
          forecast
              .growth()
              .curve(
                  start,
                  random.nextGaussian() * error * start / forecast.growth().dailyGain(start));
      double taken = pig.curveDays(weighed, target);
      inTime += taken >= days.low() && taken <= days.high() ? 1 : 0;
      double reached = pig.curve(weighed, middle);
      inWeight += reached >= weight.low() && reached <= weight.high() ? 1 : 0;
      notReached += taken > askedDays ? 1 : 0;
    }
    assertThat(inTime / (double) pigs).isCloseTo(0.80, within(0.025));
    assertThat(inWeight / (double) pigs).isCloseTo(0.80, within(0.025));
    assertThat(notReached / (double) pigs)
        .isCloseTo(forecast.chanceNotReached(target, asked), within(0.02));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13})
  void dates_weights_and_chances_agree_and_stay_in_order(long seed) {
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    String[] keys = {"modern-cross", "improved", "traditional", "lard", "meishan", "small-lard"};
    int compared = 0;
    for (int i = 0; i < 400; i++) {
      Forecast forecast = any(random, keys[random.nextInt(keys.length)]);
      double from = forecast.start().kg();
      double target = random.nextDouble(from * 1.2, forecast.growth().highestKg() * 0.9);
      double heavier = random.nextDouble(target, forecast.growth().highestKg() * 0.9);
      if (forecast.growth().curveDays(from, heavier) > Growth.LONGEST_DAYS) {
        continue;
      }
      Band days = forecast.daysTo(target);
      Band later = forecast.daysTo(heavier);
      assertThat(later.low()).isGreaterThanOrEqualTo(days.low());
      assertThat(later.likely()).isGreaterThanOrEqualTo(days.likely());
      assertThat(later.high()).isGreaterThanOrEqualTo(days.high());

      // on the late date one in ten is still lighter; on the early one, nine in ten
      DateBand dates = forecast.datesOf(target);
      assertThat(forecast.weightOn(dates.likely()).likely()).isGreaterThanOrEqualTo(target);
      assertThat(forecast.weightOn(dates.likely().minusDays(1)).likely()).isLessThan(target);
      assertThat(forecast.weightOn(dates.early()).high()).isGreaterThanOrEqualTo(target);
      assertThat(forecast.chanceNotReached(target, dates.late())).isBetween(0.0, 0.1001);
      assertThat(forecast.chanceNotReached(target, dates.late().minusDays(1)))
          .isGreaterThan(0.0999);
      assertThat(forecast.chanceNotReached(target, dates.early())).isLessThan(0.9001);
      assertThat(forecast.chanceNotReached(target, dates.early().minusDays(1)))
          .isGreaterThan(0.8999);
      assertThat(forecast.chanceNotReached(heavier, dates.likely()))
          .isGreaterThanOrEqualTo(forecast.chanceNotReached(target, dates.likely()));

      // more days, never lighter
      LocalDate day = DAY.plusDays(random.nextInt(1 + (int) days.likely()));
      Band then = forecast.weightOn(day);
      Band next = forecast.weightOn(day.plusDays(1));
      assertThat(next.low()).isGreaterThanOrEqualTo(then.low());
      assertThat(next.likely()).isGreaterThanOrEqualTo(then.likely());
      assertThat(next.high()).isGreaterThanOrEqualTo(then.high());
      compared++;
    }
    assertThat(compared).isGreaterThan(200);
  }

  @Test
  void the_low_weight_of_a_date_has_that_date_as_its_late_date() {
    Forecast forecast = threeGilts();
    LocalDate date = DAY.plusDays(100);
    Band weight = forecast.weightOn(date);
    assertThat(forecast.daysTo(weight.low()).high()).isCloseTo(100, within(1e-6));
    assertThat(forecast.daysTo(weight.likely()).likely()).isCloseTo(100, within(1e-6));
    assertThat(forecast.daysTo(weight.high()).low()).isCloseTo(100, within(1e-6));
    assertThat(forecast.chanceNotReached(weight.low(), date)).isCloseTo(0.1, within(1e-4));
    assertThat(forecast.chanceNotReached(weight.high(), date)).isCloseTo(0.9, within(1e-4));
  }

  @Test
  void long_after_the_late_date_nobody_is_left_and_on_the_first_day_everybody_is() {
    assertThat(threeGilts().chanceNotReached(110, DAY.plusDays(500))).isLessThan(1e-6);
    assertThat(threeGilts().chanceNotReached(110, DAY)).isGreaterThan(1 - 1e-6);
  }

  @Test
  void a_weight_that_is_passed_takes_no_days() {
    Band days = threeGilts().daysTo(16);
    assertThat(days.low()).isZero();
    assertThat(days.likely()).isZero();
    // guessed at 18 kg they may in truth be lighter than 16
    assertThat(days.high()).isBetween(1.0, 7.0);
  }

  @Test
  void the_upper_end_is_cut_off_where_the_curve_ends() {
    Band weight = threeGilts().weightOn(DAY.plusDays(170));
    assertThat(weight.high()).isEqualTo(172.5);
    assertThat(weight.likely()).isLessThan(172.5);
  }

  @Test
  void it_refuses_what_it_cannot_know() {
    Forecast forecast = threeGilts();
    assertThatThrownBy(() -> forecast.weightOn(DAY.minusDays(1)))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> forecast.chanceNotReached(110, DAY.minusDays(1)))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> forecast.daysTo(180)).isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> forecast.weightOn(DAY.plusDays(400)))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(
            () -> Forecast.sigma(GrowthClass.unknownBreed(), Forecast.Setting.MEASURED, 0))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> known(Weighing.Means.SCALE, DAY, 0))
        .isInstanceOf(OutsideDomainException.class);
  }

  @Test
  void less_is_known_of_one_pig_than_of_many_and_of_an_unknown_diet_than_of_a_weighed_one() {
    GrowthClass modern = GrowthClass.named("modern-cross");
    double[] sigmas = {
      Forecast.sigma(modern, Forecast.Setting.MEASURED, 10),
      Forecast.sigma(modern, Forecast.Setting.MEASURED, 1),
      Forecast.sigma(modern, Forecast.Setting.DESCRIBED, 1),
      Forecast.sigma(modern, Forecast.Setting.UNKNOWN_DIET, 1)
    };
    assertThat(Arrays.stream(sigmas).boxed().toList()).isSorted().doesNotHaveDuplicates();
  }

  static KnownWeight known(Weighing.Means by, LocalDate on, double kg) {
    return KnownWeight.of(new Weighing(on, kg, by));
  }

  static Forecast any(RandomGenerator random, String key) {
    GrowthClass growthClass = GrowthClass.named(key);
    double start =
        random.nextDouble(growthClass.eightWeekKg().low(), growthClass.eightWeekKg().high());
    return Forecast.of(
        growthClass,
        random.nextDouble(0.6, 1.1),
        oneOf(random, List.of(Forecast.Setting.values())),
        random.nextInt(1, 12),
        known(
            oneOf(random, List.of(Weighing.Means.values())),
            DAY,
            Math.max(start, growthClass.lowestKg())),
        random.nextBoolean());
  }

  private static <T> T oneOf(RandomGenerator random, List<T> choices) {
    return choices.get(random.nextInt(choices.size()));
  }
}
