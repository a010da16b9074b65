package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.figures.Hut.Fit;
import swineherd.figures.Hut.Season;
import swineherd.units.Dimension;

/** The sizing rule is judgement on published lying areas; see SpaceTest for those (KA01, KA02). */
class HutTest {
  // KA03 [derived]: five pigs to 110 kg in winter
  @Test
  void five_finishers_want_a_winter_bed_of_half_a_hundred_square_feet() {
    double area = Hut.bedArea(Season.WINTER, 5, 110);
    assertThat(area).isCloseTo(4.62, within(0.01));
    assertThat(Dimension.AREA.fromBase(area, "sq ft")).isCloseTo(49.7, within(0.1));
    // a floor of 2.4 x 1.9 m, rounded from it, falls 0.06 m2 short
    assertThat(Hut.fit(Season.WINTER, 2.4 * 1.9, 5, 110)).isEqualTo(Fit.TOO_SMALL);
    assertThat(Hut.fit(Season.WINTER, 4.7, 5, 110)).isEqualTo(Fit.FITS);
  }

  @Test
  void a_winter_bed_is_too_large_from_twice_that_and_a_summer_bed_never() {
    assertThat(Hut.largestWinterBed(5, 110)).isCloseTo(9.24, within(0.02));
    assertThat(Hut.fit(Season.WINTER, 9.3, 5, 110)).isEqualTo(Fit.TOO_LARGE);
    assertThat(Hut.fit(Season.SUMMER, 9.3, 5, 110)).isEqualTo(Fit.FITS);
    assertThat(Hut.fit(Season.SUMMER, 4.7, 5, 110)).isEqualTo(Fit.TOO_SMALL);
  }

  @Test
  void a_hut_for_finishers_is_too_large_for_the_weaners_they_were() {
    assertThat(Hut.fit(Season.WINTER, 4.62, 5, 14)).isEqualTo(Fit.TOO_LARGE);
  }

  @ParameterizedTest(name = "{0}, 500 draws with the fixed seed 21")
  @EnumSource
  void more_or_heavier_pigs_never_need_a_smaller_bed(Season season) {
    SplittableRandom random = new SplittableRandom(21);
    for (int i = 0; i < 500; i++) {
      int pigs = random.nextInt(1, 20);
      double light = random.nextDouble(5, 150);
      double heavy = random.nextDouble(light, 150);
      double area = Hut.bedArea(season, pigs, light);
      assertThat(Hut.bedArea(season, pigs + 1, light)).isGreaterThan(area);
      assertThat(Hut.bedArea(season, pigs, heavy)).isGreaterThanOrEqualTo(area);
    }
  }
}
