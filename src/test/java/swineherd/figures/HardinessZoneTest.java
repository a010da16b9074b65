package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.HardinessZone.Half;

class HardinessZoneTest {
  @ParameterizedTest(name = "{0}: zone {1} is {2} to {3} degF, USDA map [read]")
  @CsvSource({
    "KZ01, 5a, -20, -15",
    "KZ02, 3a, -40, -35",
    "KZ03, 8b, 15, 20",
    "map, 4a, -30, -25",
    "map, 5b, -15, -10",
    "map, 6a, -10, -5",
    "map, 7a, 0, 5",
    "map, 8a, 10, 15",
    "map, 9a, 20, 25",
    "map, 10a, 30, 35"
  })
  void edges_of_a_zone(String id, String zone, double low, double high) {
    Band band = HardinessZone.parse(zone).extremeMinimum();
    assertThat(band.low() * 1.8 + 32).isCloseTo(low, within(1e-9));
    assertThat(band.high() * 1.8 + 32).isCloseTo(high, within(1e-9));
  }

  /**
   * The legend of the map, zones 1a to 13b in halves of 5 degF: USDA Plant Hardiness Zone Map, 2012
   * and 2023; zones 3 to 10 [read], the halves of 1, 2 and 11 to 13 [memory].
   */
  @Test
  void all_twenty_six_halves_follow_the_legend_of_the_map() {
    int[] legend = {
      -60, -55, -50, -45, -40, -35, -30, -25, -20, -15, -10, -5, 0, 5, 10, 15, 20, 25, 30, 35, 40,
      45, 50, 55, 60, 65, 70
    };
    List<String> zones = new ArrayList<>();
    for (int number = 1; number <= 13; number++) {
      zones.add(number + "a");
      zones.add(number + "b");
    }
    for (int i = 0; i < zones.size(); i++) {
      Band band = HardinessZone.parse(zones.get(i)).extremeMinimum();
      assertThat(band.low() * 1.8 + 32).as(zones.get(i)).isCloseTo(legend[i], within(1e-9));
      assertThat(band.high() * 1.8 + 32).as(zones.get(i)).isCloseTo(legend[i + 1], within(1e-9));
    }
  }

  @ParameterizedTest(name = "{0}: middle of zone {1} is {2} degC, USDA map [read]")
  @CsvSource({
    "KZ01, 5a, -27.5",
    "KX06, 3a, -38.6",
    "KZ03, 8b, -8.1",
    "map, 5b, -24.7",
    "map, 7a, -16.4",
    "map, 9a, -5.3"
  })
  void middle_of_a_zone(String id, String zone, double middle) {
    assertThat(HardinessZone.parse(zone).extremeMinimum().likely()).isCloseTo(middle, within(0.1));
  }

  @Test
  void every_zone_is_found_again_from_its_middle_and_from_its_lower_edge() {
    for (int number = 1; number <= 13; number++) {
      for (Half half : Half.values()) {
        HardinessZone zone = new HardinessZone(number, half);
        assertThat(HardinessZone.of(zone.extremeMinimum().likely())).isEqualTo(zone);
        assertThat(HardinessZone.of(zone.extremeMinimum().low())).isEqualTo(zone);
        assertThat(HardinessZone.parse(zone.toString())).isEqualTo(zone);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"5A", " zone 5a ", "5 a", "5", "Zone 5"})
  void reads_what_people_write_and_takes_the_colder_half(String written) {
    assertThat(HardinessZone.parse(written)).isEqualTo(new HardinessZone(5, Half.A));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "0a", "14a", "5c", "a5", "-5", "5aa"})
  void refuses_what_is_no_zone(String written) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HardinessZone.parse(written));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-52, 22, Double.NaN})
  void refuses_minima_of_no_zone(double minimum) {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> HardinessZone.of(minimum))
        .withMessageContaining("degC");
  }

  // first freeze early to mid October in zone 5, two weeks later a hard one; common practice, no
  // source
  @Test
  void a_zone_gives_a_rough_date_in_the_eastern_united_states() {
    assertThat(HardinessZone.parse("5a").firstHardFreezeEastUnitedStates())
        .hasValueSatisfying(
            day -> assertThat(day).isBetween(MonthDay.of(10, 15), MonthDay.of(10, 29)));
    assertThat(HardinessZone.parse("10a").firstHardFreezeEastUnitedStates()).isEmpty();
    assertThat(HardinessZone.parse("2b").firstHardFreezeEastUnitedStates()).isEmpty();
  }
}
