package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Bedding.Season;

class BeddingTest {
  // Iowa State, three years in deep-bedded hoops, 16 to 118 kg [read]: straw for each pig
  @ParameterizedTest(name = "{0}: {1}, {2} kg of straw, Iowa State [read]")
  @CsvSource({"KB01, WINTER, 112", "hoops, SUMMER, 92"})
  void straw_for_each_kilogram_of_gain(String id, Season season, double straw) {
    double gain = 118 - 16;
    assertThat(Bedding.straw(season, 1, 1).likely()).isCloseTo(straw / gain, within(0.005));
  }

  // KB02, worked example D [derived]: five from 40 to 110 kg over winter
  @Test
  void five_pigs_over_winter_take_twenty_seven_bales() {
    Band straw = Bedding.straw(Season.WINTER, 5, 70);
    assertThat(straw.likely()).isCloseTo(385, within(0.5));
    assertThat(Bedding.order(straw)).isCloseTo(481, within(1.0));
    assertThat(Bedding.bales(Bedding.order(straw), Bedding.smallBale())).isEqualTo(27);
  }

  // KB03, worked example C [derived]: a bed of 4.62 m2, 30 cm deep
  @Test
  void the_first_fill_of_a_hut_for_five_is_four_bales() {
    Band fill = Bedding.firstFill(Hut.bedArea(Hut.Season.WINTER, 5, 110), 0.30);
    assertThat(fill.likely()).isCloseTo(69.3, within(0.2));
    assertThat(Bedding.bales(fill.likely(), Bedding.smallBale())).isEqualTo(4);
  }

  @Test
  void an_exact_number_of_bales_is_not_one_more() {
    assertThat(Bedding.bales(5 * 1.1 * 18, 5 * 1.1)).isEqualTo(18);
    assertThat(Bedding.bales(0, 18)).isZero();
    assertThat(Bedding.bales(0.1, 18)).isEqualTo(1);
  }

  @Test
  void refuses_negative_amounts() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Bedding.straw(Season.WINTER, 5, -1))
        .withMessageContaining("gain in kg");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Bedding.bales(10, 0))
        .withMessageContaining("bale");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Bedding.firstFill(4, Double.NaN))
        .withMessageContaining("straw");
  }

  @ParameterizedTest(name = "500 draws with the fixed seed {0}")
  @ValueSource(longs = {61, 62})
  void colder_never_takes_less_bedding(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 500; i++) {
      double weight = random.nextDouble(10, 130);
      double mild = random.nextDouble(-30, 12);
      double cold = random.nextDouble(-40, mild);
      assertThat(WinterClass.of(cold).bedDepth(weight))
          .isGreaterThanOrEqualTo(WinterClass.of(mild).bedDepth(weight));
      double gain = random.nextDouble(0, 120);
      int pigs = random.nextInt(1, 20);
      Band winter = Bedding.straw(Season.WINTER, pigs, gain);
      Band summer = Bedding.straw(Season.SUMMER, pigs, gain);
      assertThat(winter.low()).isGreaterThanOrEqualTo(summer.low());
      assertThat(winter.likely()).isGreaterThanOrEqualTo(summer.likely());
      assertThat(winter.high()).isGreaterThanOrEqualTo(summer.high());
    }
  }
}
