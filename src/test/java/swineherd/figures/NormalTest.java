package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalTest {
  @ParameterizedTest(name = "{0} deviations: {1} (any table of the normal distribution [memory])")
  @CsvSource({
    "0, 0.5",
    "1, 0.8413447",
    "-1, 0.1586553",
    "1.96, 0.9750021",
    "-2.575829, 0.0050000",
    "1.2816, 0.9000085",
    "3, 0.9986501",
    "-8, 0",
    "8, 1"
  })
  void it_is_the_tables(double z, double chance) {
    assertThat(Normal.cumulative(z)).isCloseTo(chance, within(2e-7));
  }
}
