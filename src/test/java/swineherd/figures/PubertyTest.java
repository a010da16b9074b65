package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Puberty.Maturity;

class PubertyTest {
  private static final LocalDate BORN = LocalDate.of(2025, 3, 1);

  @ParameterizedTest(name = "T14 {0}: apart by {1} d [judgement]")
  @CsvSource({"ORDINARY, 112", "MEISHAN, 56", "MINIATURE, 56"})
  void males_leave_the_gilts_in_time(Maturity maturity, long days) {
    assertThat(Puberty.separateBy(maturity, BORN)).isEqualTo(BORN.plusDays(days));
  }

  @Test
  void never_separated_the_first_litter_comes_in_november() {
    // T15 [judgement] worked example: 150 d (Pennsylvania: most boars fertile by 5 months [read])
    // and
    // 114 d of pregnancy (universal).
    LocalDate conceived =
        Puberty.earliestConception(Maturity.ORDINARY, BORN, null, null).orElseThrow();
    assertThat(conceived).isEqualTo(LocalDate.of(2025, 7, 29));
    assertThat(Puberty.farrowing(conceived)).isEqualTo(LocalDate.of(2025, 11, 20));
    assertThat(Puberty.daysPregnant(conceived, LocalDate.of(2025, 9, 13))).isEqualTo(46);
  }

  @ParameterizedTest(name = "{0} from {1} d [judgement]")
  @CsvSource({"MINIATURE, 90", "MEISHAN, 70"})
  void early_kinds_conceive_earlier(Maturity maturity, long days) {
    assertThat(Puberty.earliestConception(maturity, BORN, null, null))
        .hasValue(BORN.plusDays(days));
  }

  @Test
  void a_later_contact_makes_a_later_conception() {
    LocalDate met = BORN.plusDays(200);
    assertThat(Puberty.earliestConception(Maturity.ORDINARY, BORN, met, null)).hasValue(met);
    LocalDate young = BORN.plusDays(20);
    assertThat(Puberty.earliestConception(Maturity.ORDINARY, BORN, young, null))
        .hasValue(BORN.plusDays(150));
  }

  @Test
  void parted_the_day_before_she_could_conceive_there_is_no_litter() {
    assertThat(Puberty.earliestConception(Maturity.ORDINARY, BORN, null, BORN.plusDays(149)))
        .isEmpty();
    assertThat(Puberty.earliestConception(Maturity.ORDINARY, BORN, null, BORN.plusDays(150)))
        .isPresent();
  }

  @Test
  void a_gilt_slaughtered_before_she_can_conceive_is_not_pregnant() {
    assertThat(Puberty.daysPregnant(BORN.plusDays(150), BORN.plusDays(140))).isZero();
  }

  @ParameterizedTest(name = "{0} d: {1} ({2})")
  @CsvSource({
    "149, 0.0, before the earliest plausible age of 150 d [judgement]",
    "192.5, 0.5, midway between 182 d with a mature boar and 203 d without [derived]",
    "172.5, 0.1, 190 to 230 d taken as eight in ten: 20 d to either side [derived]",
    "212.5, 0.9, the same [derived]",
  })
  void few_gilts_are_on_heat_early_and_most_are_late(double age, double chance, String why) {
    assertThat(Puberty.chanceOnHeat(Maturity.ORDINARY, age)).isCloseTo(chance, within(0.002));
  }

  @ParameterizedTest(name = "{0} x {1}: {2}")
  @CsvSource({
    "landrace, , ORDINARY",
    "kunekune, , MINIATURE",
    "meishan, , MEISHAN",
    "liangshan, , MEISHAN",
    "landrace, pot-bellied, MINIATURE",
    "pot-bellied, meishan, MEISHAN",
    "meishan, landrace, MEISHAN",
    ", , MINIATURE",
    ", meishan, MEISHAN",
  })
  void a_cross_matures_as_early_as_its_earlier_breed_and_an_unknown_one_early(
      String breed, String crossedWith, Maturity expected) {
    assertThat(Maturity.of(named(breed), named(crossedWith))).isEqualTo(expected);
  }

  private static Breed named(String key) {
    return key == null ? null : Breed.named(key);
  }
}
