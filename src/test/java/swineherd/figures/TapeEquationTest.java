package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.TapeEquation.Measures;
import swineherd.rulebook.Table;

class TapeEquationTest {
  private static final double INCH = 0.0254;

  static Stream<Arguments> published() {
    return Stream.of(
        // 10.1709 x 40 - 205.7492 = 201.09 lb
        Arguments.of("WT10 kansas-heart-girth [read]", "kansas", Measures.girth(40 * INCH), 91.21),
        Arguments.of("WT11 [derived]", "kansas", Measures.girth(1.016), 91.21),
        Arguments.of("WT14 tahp-2023-uganda [read]", "uganda-girth", Measures.girth(1.016), 77.97),
        Arguments.of(
            "WT15 lrrd-2014-uganda [read]", "uganda-light", Measures.of(0.65, 0.70), 21.42),
        Arguments.of(
            "WT16 lrrd-2014-uganda [read]",
            "uganda-heavy",
            Measures.of(0.90, 1.00, 0.60, 0.25),
            52.13),
        Arguments.of("WT17 plos-2023-tanzania [read]", "tanzania", Measures.girth(0.95), 63.52));
  }

  @ParameterizedTest(name = "{0}: {3} kg")
  @MethodSource("published")
  void an_equation_gives_what_its_published_coefficients_give(
      String id, String equation, Measures measures, double kg) {
    assertThat(TapeEquation.named(equation).kg(measures)).as(id).isCloseTo(kg, within(0.01));
  }

  /** [derived] from the published 50 and 273 lb. */
  @Test
  void WT12_the_kansas_girths_are_those_of_its_lightest_and_heaviest_pig() {
    TapeEquation kansas = TapeEquation.named("kansas");
    assertThat(kansas.girthM(kansas.minKg()) / INCH).isCloseTo(25.15, within(0.01));
    assertThat(kansas.girthM(kansas.maxKg()) / INCH).isCloseTo(47.07, within(0.01));
  }

  @Test
  void WT13_a_girth_of_48_inches_is_outside_the_kansas_pigs() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> TapeEquation.named("kansas").kg(Measures.girth(48 * INCH)))
        .withMessageContaining("modern United States crosses");
  }

  @Test
  void a_missing_measure_is_named() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TapeEquation.named("uganda-heavy").kg(Measures.of(0.9, 1.0)))
        .withMessageContaining("height");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> TapeEquation.named("uganda-light").girthM(30));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {4, 5, 6})
  void a_thicker_or_longer_pig_is_never_lighter_by_any_equation(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int compared = 0;
    for (Table.Row row : Table.named("tape-equations").rows()) {
      TapeEquation equation = TapeEquation.named(row.key());
      for (int i = 0; i < 500; i++) {
        Measures some = measures(random);
        Measures thicker =
            Measures.of(
                some.girthM() + random.nextDouble(0.05),
                some.lengthM().getAsDouble() + random.nextDouble(0.05),
                some.heightM().getAsDouble(),
                some.widthM().getAsDouble());
        try {
          assertThat(equation.kg(thicker)).isGreaterThanOrEqualTo(equation.kg(some));
          compared++;
        } catch (OutsideDomainException e) {
          assertThat(e).hasMessageContaining("live weight in kg");
        }
      }
    }
    assertThat(compared).isGreaterThan(500);
  }

  private static Measures measures(SplittableRandom random) {
    return Measures.of(
        random.nextDouble(0.5, 1.2),
        random.nextDouble(0.5, 1.2),
        random.nextDouble(0.3, 0.7),
        random.nextDouble(0.15, 0.35));
  }
}
