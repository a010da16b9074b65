package swineherd.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {
  // Factors: NIST SP 811 (2008), appendix B; [memory]. The rest is arithmetic on them.
  @ParameterizedTest
  @CsvSource({
    "30 lb, MASS, 13.6077711",
    "14 kg, MASS, 14",
    "14kg, MASS, 14",
    "2 st 4 lb, MASS, 14.51495584",
    "about 35 pounds, MASS, 15.87573295",
    "'1,000 kg', MASS, 1000",
    "'0,5 kg', MASS, 0.5",
    "1 tonne, MASS, 1000",
    "5 ft 6 in, LENGTH, 1.6764",
    "10', LENGTH, 3.048",
    "18\", LENGTH, 0.4572",
    "120 m, LENGTH, 120",
    "20 x 40 ft, AREA, 74.322432",
    "20x40ft, AREA, 74.322432",
    "12 by 30 ft, AREA, 33.4450944",
    "6 m x 8 m, AREA, 48",
    "20 ft × 6 m, AREA, 36.576",
    "0.5 ac, AREA, 2023.4282112",
    "half an acre, AREA, 2023.4282112",
    "1/4 acre, AREA, 1011.7141056",
    "an acre, AREA, 4046.8564224",
    "400 m2, AREA, 400",
    "400 sq ft, AREA, 37.161216",
    "-18 C, TEMPERATURE, -18",
    "23 F, TEMPERATURE, -5",
    "−4 °F, TEMPERATURE, -20",
    "6 weeks, TIME, 42",
    "2 years, TIME, 730.5",
    "2 joules, ENERGY, 2",
    "4.2 kV, VOLTAGE, 4200",
    "0.7 L/min, FLOW, 0.7",
    "2 cups/min, FLOW, 0.473176473",
    "16%, SHARE, 16",
    "50 gal, VOLUME, 189.2705892",
    "-20 ft, LENGTH, -6.096",
  })
  void is_read_as_people_write_it(String written, Dimension dimension, double expected) {
    assertThat(Quantity.parse(written, dimension)).isCloseTo(expected, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "14, MASS, has no unit",
    "20 x 40, AREA, two sides",
    "14 m, MASS, does not fit",
    "heavy, MASS, cannot be read",
    "'', MASS, cannot be read",
    "kg 14, MASS, cannot be read",
    "14 kg or so, MASS, does not fit",
    "1/0 kg, MASS, not a number",
    "20 kg x 4 m, AREA, two sides",
    "'1,00,0 kg', MASS, not a number",
  })
  void what_cannot_be_read_says_why(String written, Dimension dimension, String why) {
    assertThatExceptionOfType(UnreadableException.class)
        .isThrownBy(() -> Quantity.parse(written, dimension))
        .withMessageContaining(why)
        .extracting(UnreadableException::accepted)
        .asString()
        .contains(dimension.example());
  }

  @Test
  void there_and_back_loses_nothing() {
    for (Dimension dimension : Dimension.values()) {
      for (String symbol : dimension.symbols()) {
        for (double value : new double[] {0.1, 1, 37.5, 1234.5}) {
          assertThat(dimension.fromBase(dimension.toBase(value, symbol), symbol))
              .as("%s %s", value, symbol)
              .isCloseTo(value, within(1e-9 * value));
        }
      }
    }
  }
}
