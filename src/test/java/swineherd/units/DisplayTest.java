package swineherd.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
  @ParameterizedTest(name = "{0} {1} for {2} is {3}")
  @CsvSource({
    "14.2, MASS, METRIC, 14 kg",
    "0.05, MASS, METRIC, 50 g",
    "8.24, MASS, METRIC, 8.2 kg",
    "13.6077711, MASS, US, 30 lb",
    "0.137, LENGTH, METRIC, 14 cm",
    "0.2032, LENGTH, US, 8 in",
    "1.8, LENGTH, METRIC, 1.8 m",
    "1.8288, LENGTH, US, 6 ft",
    "2500, LENGTH, METRIC, 2.5 km",
    "74.3, AREA, METRIC, 74 m2",
    "74.322432, AREA, US, 800 sq ft",
    "20000, AREA, METRIC, 2 ha",
    "4046.8564224, AREA, US, 1 acre",
    "-0.4, TEMPERATURE, METRIC, 0 C",
    "-5, TEMPERATURE, US, 23 F",
    "1, TIME, METRIC, 1 day",
    "7, TIME, METRIC, 7 days",
    "115, TIME, METRIC, 16 weeks",
    "548, TIME, METRIC, 18 months",
    "730.5, TIME, METRIC, 2 years",
    "4000, VOLTAGE, METRIC, 4000 V",
    "0.7, FLOW, METRIC, 0.7 L/min",
    "16, SHARE, US, 16 %",
    "189.27, VOLUME, US, 50 gal",
    "346, CAPACITY, METRIC, 346 L",
    "346, CAPACITY, US, 12 cu ft",
  })
  void an_amount_is_no_more_exact_than_a_keeper_can_use(
      double value, Dimension dimension, UnitSystem units, String shown) {
    assertThat(Display.amount(value, dimension, units)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({
    "95.4, 114.4, 137.1, TIME, METRIC, about 16 weeks (14 to 20)",
    "3, 7, 14, TIME, METRIC, about 7 days (3 to 14)",
    "250, 278, 350, MASS, METRIC, about 280 kg (250 to 350)",
    "7, 7, 7, TIME, METRIC, 7 days",
    "0.094, 0.15, 0.2, LENGTH, METRIC, about 15 cm (9 to 20)",
  })
  void a_band_shows_its_middle_and_its_ends(
      double low, double likely, double high, Dimension dimension, UnitSystem units, String shown) {
    assertThat(Display.band(low, likely, high, dimension, units)).isEqualTo(shown);
  }

  @Test
  void several_amounts_share_the_unit_of_the_first() {
    List<Double> heights = List.of(0.10, 0.254, 1.2);
    assertThat(Display.amounts(heights, Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("10, 25 and 120 cm");
    assertThat(Display.amounts(heights, Dimension.LENGTH, UnitSystem.US))
        .isEqualTo("4, 10 and 47 in");
    assertThat(Display.amounts(List.of(0.2), Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("20 cm");
  }
}
