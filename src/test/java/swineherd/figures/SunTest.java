package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Sun.Skin;
import swineherd.figures.Sun.SunNeed;
import swineherd.figures.Sun.UvBand;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

class SunTest {
  @ParameterizedTest(name = "{0}: {1} degrees, day {2}, {3} DU: {4}, Madronich 2007 [derived]")
  @CsvSource({"KV01, 50, 172, 325, 8.6, 0.1", "KV02, 51.5, 172, 300, 9.24, 0.02"})
  void clear_sky_index(
      String id, double latitude, int day, double ozone, double index, double tolerance) {
    assertThat(Sun.uvIndex(latitude, LocalDate.ofYearDay(2027, day), ozone))
        .isCloseTo(index, within(tolerance));
  }

  // worked from the published formula at 325 DU [derived]
  @ParameterizedTest(name = "{0} degrees north: 15 Jan {1} ... 15 Sep {7} [derived]")
  @CsvSource({
    "30, 3.6, 7.9, 9.7, 10.8, 11.1, 10.3, 8.4",
    "40, 1.9, 5.9, 7.9, 9.6, 10.2, 8.7, 6.4",
    "45, 1.3, 4.8, 6.9, 8.7, 9.5, 7.8, 5.4",
    "50, 0.7, 3.8, 5.8, 7.8, 8.6, 6.7, 4.3",
    "55, 0.3, 2.9, 4.8, 6.7, 7.7, 5.7, 3.4",
    "60, 0.1, 2.1, 3.8, 5.7, 6.7, 4.6, 2.5"
  })
  void through_the_year(
      double latitude,
      double january,
      double march,
      double april,
      double may,
      double june,
      double august,
      double september) {
    String[] days = {"01-15", "03-21", "04-15", "05-15", "06-21", "08-15", "09-15"};
    double[] expected = {january, march, april, may, june, august, september};
    for (int i = 0; i < days.length; i++) {
      assertThat(Sun.uvIndex(latitude, LocalDate.parse("2027-" + days[i])))
          .as(days[i])
          .isCloseTo(expected[i], within(0.06));
    }
  }

  // WHO: 0-2 low, 3-5 moderate, 6-7 high, 8-10 very high, 11 and over extreme [read]
  @ParameterizedTest(name = "{0}: index {1} is {2}, WHO [read]")
  @CsvSource({
    "WHO, 0, LOW",
    "WHO, 2, LOW",
    "WHO, 3, MODERATE",
    "WHO, 5, MODERATE",
    "WHO, 6, HIGH",
    "WHO, 7, HIGH",
    "WHO, 8, VERY_HIGH",
    "WHO, 10, VERY_HIGH",
    "WHO, 11, EXTREME",
    "WHO, 16, EXTREME",
    "KV03, 6.4, HIGH",
    "rounded, 2.4, LOW",
    "rounded, 2.5, MODERATE",
    "rounded, 10.5, EXTREME"
  })
  void bands(String id, double index, UvBand band) {
    assertThat(UvBand.of(index)).isEqualTo(band);
  }

  @ParameterizedTest(name = "{0} skin at {1}: {2}, judgement")
  @CsvSource({
    "PALE, 2.9, NONE",
    "PALE, 3, SHADE",
    "PALE, 6, SHADE_OR_INDOORS",
    "MIXED, 2.9, NONE",
    "MIXED, 3, SHADE",
    "MIXED, 9, SHADE",
    "PIGMENTED, 11, NONE"
  })
  void what_skin_needs(Skin skin, double index, SunNeed need) {
    assertThat(skin.need(index)).isEqualTo(need);
  }

  // the formula of Madronich 2007 [memory] worked at 41.7 degrees, the south of Canada: 2.6 on 1
  // November and 3.8 on 28 February; a country that reaches further south has no dark months
  @ParameterizedTest(name = "{0} on {1}: dark {2}, judgement on Madronich 2007 [derived]")
  @CsvSource({
    "CANADA, 2026-11-01, true",
    "CANADA, 2027-02-28, true",
    "CANADA, 2027-03-01, false",
    "CANADA, 2026-10-31, false",
    "ENGLAND, 2027-01-10, true",
    "UNITED_STATES, 2027-01-10, false",
    "SPAIN, 2027-01-10, false",
    "NEW_ZEALAND, 2027-07-10, false",
    "ELSEWHERE, 2027-01-10, false",
    ", 2027-01-10, false"
  })
  void months_without_strong_sun(Country country, LocalDate day, boolean dark) {
    assertThat(Sun.isDark(country, day)).isEqualTo(dark);
  }

  @Test
  void dark_months_lie_under_four_in_the_south_of_the_country() {
    for (Table.Row row : Table.named("dark-months").rows()) {
      for (String edge : List.of("2026-11-01", "2027-02-28")) {
        assertThat(Sun.uvIndex(row.number("southernmost"), LocalDate.parse(edge)))
            .as(row.key() + " on " + edge)
            .isLessThan(4);
      }
    }
  }

  // Iowa State [read]: only white skin burns
  @Test
  void a_cross_counts_as_the_paler_of_its_parents() {
    assertThat(Skin.PIGMENTED.paler(Skin.PALE)).isEqualTo(Skin.PALE);
    assertThat(Skin.MIXED.paler(Skin.PIGMENTED)).isEqualTo(Skin.MIXED);
    assertThat(Skin.MIXED.burns()).isTrue();
    assertThat(Skin.PIGMENTED.burns()).isFalse();
  }

  @Test
  void mud_halves_the_likelihood_of_burning() {
    for (Skin skin : Skin.values()) {
      assertThat(skin.likelyToBurn(true)).isEqualTo(skin.likelyToBurn(false) / 2);
    }
  }

  // KA04, worked example E [derived]: six pigs to 100 kg
  @Test
  void shade_for_six_finishers() {
    assertThat(6 * Sun.shade(100)).isCloseTo(7.40, within(0.02));
  }

  // MWPS-8 [memory]: 4 sq ft to 100 lb, 6 over
  @ParameterizedTest(name = "{0} kg: {1} m2, not under the handbook [memory]")
  @CsvSource({"10, 0.37", "20, 0.42", "50, 0.78", "80, 1.06", "100, 1.23", "120, 1.39"})
  void shade_is_the_larger_of_lying_room_and_handbook(double weight, double area) {
    assertThat(Sun.shade(weight)).isCloseTo(area, within(0.01));
  }

  @Test
  void refuses_what_is_not_on_earth() {
    LocalDate day = LocalDate.of(2027, 6, 21);
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Sun.uvIndex(91, day))
        .withMessageContaining("latitude");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Sun.uvIndex(50, day, 0))
        .withMessageContaining("ozone");
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> UvBand.of(Double.NaN));
  }

  // Half a year is 182.5 days; the odd half day moves the sun by at most 0.2 degrees, and an index
  // by at most 12 for a radian: 0.05.
  @ParameterizedTest(name = "500 draws with the fixed seed {0}")
  @ValueSource(longs = {91, 92})
  void north_and_south_are_half_a_year_apart(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 500; i++) {
      double latitude = random.nextDouble(-90, 90);
      int day = random.nextInt(1, 183);
      double here = Sun.uvIndex(latitude, LocalDate.ofYearDay(2027, day));
      double there = Sun.uvIndex(-latitude, LocalDate.ofYearDay(2027, day + 182));
      assertThat(here).isCloseTo(there, within(0.05)).isBetween(0.0, 12.0);
    }
  }

  @ParameterizedTest(name = "{0} degrees north")
  @ValueSource(doubles = {25, 33, 42, 51, 58, 64})
  void farther_from_the_equator_the_strong_season_is_never_longer(double latitude) {
    LocalDate day = LocalDate.of(2027, 1, 1);
    for (int i = 0; i < 365; i += 3) {
      LocalDate date = day.plusDays(i);
      assertThat(Sun.uvIndex(latitude + 5, date)).isLessThanOrEqualTo(Sun.uvIndex(latitude, date));
    }
  }
}
