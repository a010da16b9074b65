package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.WindChill.Stage;

class WindChillTest {
  @ParameterizedTest(name = "{0}: {1} degF, {2} mph, {3} degF, {4} on the NWS chart [read]")
  @CsvSource({"KC01, 0, 15, -19.4, -19", "KC02, 30, 10, 21.2, 21"})
  void in_fahrenheit(String id, double air, double wind, double expected, long chart) {
    assertThat(WindChill.fahrenheit(air, wind)).isCloseTo(expected, within(0.05));
    assertThat(Math.round(WindChill.fahrenheit(air, wind))).isEqualTo(chart);
  }

  // The whole chart of the National Weather Service, 2001 [memory]: degF; wind 5, 10 ... 60 mph
  @ParameterizedTest(name = "NWS chart, row of {0} degF [memory]")
  @CsvSource({
    "40, 36 34 32 30 29 28 28 27 26 26 25 25",
    "35, 31 27 25 24 23 22 21 20 19 19 18 17",
    "30, 25 21 19 17 16 15 14 13 12 12 11 10",
    "25, 19 15 13 11 9 8 7 6 5 4 4 3",
    "20, 13 9 6 4 3 1 0 -1 -2 -3 -3 -4",
    "15, 7 3 0 -2 -4 -5 -7 -8 -9 -10 -11 -11",
    "10, 1 -4 -7 -9 -11 -12 -14 -15 -16 -17 -18 -19",
    "5, -5 -10 -13 -15 -17 -19 -21 -22 -23 -24 -25 -26",
    "0, -11 -16 -19 -22 -24 -26 -27 -29 -30 -31 -32 -33",
    "-5, -16 -22 -26 -29 -31 -33 -34 -36 -37 -38 -39 -40",
    "-10, -22 -28 -32 -35 -37 -39 -41 -43 -44 -45 -46 -48",
    "-15, -28 -35 -39 -42 -44 -46 -48 -50 -51 -52 -54 -55",
    "-20, -34 -41 -45 -48 -51 -53 -55 -57 -58 -60 -61 -62",
    "-25, -40 -47 -51 -55 -58 -60 -62 -64 -65 -67 -68 -69",
    "-30, -46 -53 -58 -61 -64 -67 -69 -71 -72 -74 -75 -76",
    "-35, -52 -59 -64 -68 -71 -73 -76 -78 -79 -81 -82 -84",
    "-40, -57 -66 -71 -74 -78 -80 -82 -84 -86 -88 -89 -91",
    "-45, -63 -72 -77 -81 -84 -87 -89 -91 -93 -95 -97 -98"
  })
  void the_whole_chart(double air, String row) {
    String[] cells = row.split(" ");
    assertThat(cells).hasSize(12);
    for (int i = 0; i < cells.length; i++) {
      int wind = 5 * (i + 1);
      assertThat(Math.round(WindChill.fahrenheit(air, wind)))
          .as("%s degF, %s mph", air, wind)
          .isEqualTo(Long.parseLong(cells[i]));
    }
  }

  @ParameterizedTest(name = "{0}: {1} degC, {2} km/h, {3} degC, Environment Canada 2001 [derived]")
  @CsvSource({
    "KC03, -10, 20, -17.9",
    "KC04, -20, 30, -32.6",
    "KC06, -10, 80, -24.0",
    "table, 5, 10, 2.7",
    "table, 0, 50, -8.1",
    "table, -30, 50, -49.0"
  })
  void in_celsius(String id, double air, double wind, double expected) {
    assertThat(WindChill.celsius(air, wind)).isCloseTo(expected, within(0.05));
  }

  @ParameterizedTest(name = "{0}: {1} degC, {2} km/h is outside the domain [read]")
  @CsvSource({"KC05, 12, 30", "too calm, -10, 4.8", "still, -10, 0"})
  void outside_its_domain_it_is_the_air_temperature(String id, double air, double wind) {
    assertThat(WindChill.celsius(air, wind)).isEqualTo(air);
  }

  @Test
  void the_american_form_holds_to_50_degrees_and_from_3_miles() {
    assertThat(WindChill.fahrenheit(51, 30)).isEqualTo(51);
    assertThat(WindChill.fahrenheit(20, 2.9)).isEqualTo(20);
    assertThat(WindChill.fahrenheit(50, 30)).isLessThan(50);
    assertThat(WindChill.fahrenheit(20, 3)).isLessThan(20);
  }

  // frostbite in 30 minutes at -28 degC, -18 degF [read]; the other two lines are judgement
  @ParameterizedTest(name = "{0} degC: {1}")
  @CsvSource({
    "-9.9, NONE",
    "-10, SMALL_PIGS_IN",
    "-18, CAUTION",
    "-27.9, CAUTION",
    "-28, SKIN_FREEZES",
    "-60, SKIN_FREEZES"
  })
  void stages(double windChill, Stage stage) {
    assertThat(Stage.of(windChill)).isEqualTo(stage);
  }

  @Test
  void refuses_what_is_not_a_number_or_a_wind() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WindChill.celsius(Double.NaN, 20));
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WindChill.fahrenheit(20, -1))
        .withMessageContaining("wind");
  }

  @ParameterizedTest(name = "1000 draws with the fixed seed {0}")
  @ValueSource(longs = {51, 52})
  void more_wind_is_never_warmer_and_both_forms_agree(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 1000; i++) {
      double air = random.nextDouble(-50, 20);
      double calm = random.nextDouble(0, 100);
      double windy = random.nextDouble(calm, 120);
      double chill = WindChill.celsius(air, windy);
      assertThat(chill).isLessThanOrEqualTo(WindChill.celsius(air, calm));
      assertThat(chill).isLessThanOrEqualTo(air);
      if (windy > 5) {
        // each form's coefficients are rounded to two to four places
        double other = (WindChill.fahrenheit(air * 1.8 + 32, windy / 1.609344) - 32) / 1.8;
        assertThat(chill).isCloseTo(other, within(0.1));
      }
    }
  }
}
