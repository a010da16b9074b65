package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GrowthTest {
  @ParameterizedTest(name = "{0}: {1} kg at the start weighs {3} kg after {2} days")
  @CsvSource({
    // worked by hand from the formula [derived]
    "G01, 22.11, 94, 112.35, 0.0126",
    "G02, 22.11, 94, 114.72, 0.012915",
  })
  void weight_follows_the_formula(String id, double start, double days, double kg, double rate) {
    assertThat(Growth.of(230, rate).weightAfter(start, days)).as(id).isCloseTo(kg, within(0.05));
  }

  @ParameterizedTest(name = "{0}: {3} to {4} kg takes {5} days")
  @CsvSource({
    // worked by hand from the formula [derived]
    "G03, 230, 0.010836, 18, 110, 114.39",
    "G04, 230, 0.0126, 18, 110, 98.38",
    "G05, 225, 0.00736, 14, 100, 167.25",
    "G06, 190, 0.006622, 12, 130, 299.75",
    "G07, 115, 0.00645, 6, 60, 234.54",
  })
  void days_follow_the_formula(
      String id, double asymptote, double rate, double from, double to, double days) {
    assertThat(Growth.of(asymptote, rate).daysBetween(from, to))
        .as(id)
        .isCloseTo(days, within(0.05));
  }

  @Test
  void G08_gain_at_40_kg_follows_the_formula() {
    // [derived]
    assertThat(Growth.of(230, 0.0126).dailyGain(40)).isCloseTo(0.8816, within(0.0005));
  }

  @ParameterizedTest(name = "{0}: {5}")
  @CsvSource({
    "G09, 230, 0.0126, 84.61, 1.0661, worked by hand [derived]",
    "G10, 229, 0.00738, 84.2, 0.622, 'Nero di Parma castrates, Ital. J. Anim. Sci. [read]'",
    "G11, 221.3, 0.00799, 81.4, 0.650, 'Nero di Parma females, Ital. J. Anim. Sci. [read]'",
  })
  void fastest_gain_is_what_was_published_with_the_curve(
      String id, double asymptote, double rate, double kg, double gain, String source) {
    Growth growth = Growth.of(asymptote, rate);
    assertThat(growth.fastestAtKg()).as(source).isCloseTo(kg, within(0.1));
    // the published values are rounded to whole grams
    assertThat(growth.fastestGain()).as(source).isCloseTo(gain, within(0.001));
    assertThat(growth.dailyGain(growth.fastestAtKg()))
        .isCloseTo(growth.fastestGain(), within(1e-9));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void days_and_weight_undo_each_other_and_both_rise(long seed) {
    RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(seed);
    for (int i = 0; i < 500; i++) {
      Growth growth = Growth.of(random.nextDouble(70, 250), random.nextDouble(0.003, 0.014));
      double start = random.nextDouble(5, growth.highestKg() * 0.8);
      double target = random.nextDouble(start, growth.highestKg());
      double heavier = random.nextDouble(target, growth.highestKg());
      if (growth.curveDays(start, heavier) > Growth.LONGEST_DAYS) {
        continue;
      }
      double days = growth.daysBetween(start, target);
      assertThat(growth.weightAfter(start, days)).isCloseTo(target, within(1e-6));
      assertThat(growth.daysBetween(start, heavier)).isGreaterThanOrEqualTo(days);
      assertThat(growth.weightAfter(start, days))
          .isGreaterThanOrEqualTo(growth.weightAfter(start, days * 0.9));
    }
  }

  @Test
  void gain_is_the_slope_of_the_weight() {
    Growth growth = Growth.of(230, 0.0126);
    double over = growth.weightAfter(40, 0.01) - 40;
    assertThat(over / 0.01).isCloseTo(growth.dailyGain(40), within(1e-4));
  }

  @Test
  void it_refuses_what_the_curves_were_never_fitted_to() {
    Growth growth = Growth.of(230, 0.0126);
    assertThatThrownBy(() -> growth.weightAfter(4, 50))
        .isInstanceOf(OutsideDomainException.class)
        .hasMessage("start weight in kg of 4.0 is outside 5.0 to 172.5");
    assertThatThrownBy(() -> growth.weightAfter(20, 401))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> growth.weightAfter(20, -1)).isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> growth.weightAfter(20, 300))
        .isInstanceOf(OutsideDomainException.class)
        .hasMessageContaining("weight reached");
    assertThatThrownBy(() -> growth.daysBetween(20, 180))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> growth.daysBetween(40, 39)).isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> growth.dailyGain(Double.NaN))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> Growth.of(230, 0.002).daysBetween(20, 110))
        .isInstanceOf(OutsideDomainException.class)
        .hasMessageContaining("days to that weight");
  }

  @Test
  void a_curve_that_cannot_be_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Growth.of(230, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> Growth.of(6, 0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> Growth.of(Double.NaN, 0.01));
  }
}
