package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.time.Month;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Plant.Grade;

class PlantTest {
  private static Plant plant(String name) {
    return Plant.called(name).orElseThrow();
  }

  // MV01: new cases up to 10 days after removal, Iowa State University, pigweed poisoning [read]
  @Test
  void pigs_off_pigweed_on_20_August_are_watched_until_30_August() {
    assertThat(plant("pigweed").watchUntil(LocalDate.of(2027, 8, 20)))
        .contains(LocalDate.of(2027, 8, 30));
    assertThat(plant("bracken").watchUntil(LocalDate.of(2027, 8, 20))).isEmpty();
  }

  @ParameterizedTest(name = "MV02: {0} weeks on bracken: {1} (over 6 weeks, disease guide [read])")
  @CsvSource({"0, AMBER", "5, AMBER", "6, AMBER", "7, RED"})
  void weeks_on_bracken_turn_from_a_warning_to_danger(int weeks, Signal signal) {
    assertThat(plant("bracken").exposure(7.0 * weeks)).isEqualTo(signal);
  }

  @ParameterizedTest(name = "{0} is grade {1} ({2})")
  @CsvSource({
    "yew, A, Washington State University selected poisonous plants [read]",
    "cocklebur, A, Cornell list for swine [read]",
    "Conium, A, AHVLA 2013 [read]",
    "pigweed, B, Iowa State University [read]",
    "bracken, B, Porcine Health Management 7:2 [read]",
    "kale, C, Cornell list for swine [read]",
    "acorns, C, University of Illinois [read]",
    "jimsonweed, A, A to B in the table: the graver counts [judgement]"
  })
  void a_plant_has_a_grade(String name, Grade grade, String source) {
    assertThat(plant(name).grade()).isEqualTo(grade);
  }

  @Test
  void little_of_the_gravest_kills() {
    assertThat(plant("water hemlock").exposure(0)).isEqualTo(Signal.RED);
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> plant("yew").exposure(-1));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"Fat hen", " LAMBSQUARTERS ", "chenopodium", "fat-hen"})
  void a_plant_is_found_by_any_of_its_names(String name) {
    assertThat(plant(name).key()).isEqualTo("fat-hen");
  }

  @ParameterizedTest(name = "\"{0}\"")
  @ValueSource(strings = {"grass", "", "hen"})
  void a_plant_that_is_not_known_is_not_guessed(String name) {
    assertThat(Plant.called(name)).isEmpty();
  }

  // pigweed: late summer to autumn, Iowa State University [read]
  @Test
  void seasons_are_half_a_year_off_in_the_south() {
    assertThat(plant("pigweed").isSeason(Month.AUGUST, false)).isTrue();
    assertThat(plant("pigweed").isSeason(Month.FEBRUARY, false)).isFalse();
    assertThat(plant("pigweed").isSeason(Month.FEBRUARY, true)).isTrue();
    assertThat(plant("pigweed").isSeason(Month.AUGUST, true)).isFalse();
    assertThat(plant("bracken").isSeason(Month.JANUARY, true)).isTrue();
  }

  @Test
  void no_name_stands_for_two_plants() {
    Map<String, String> seen = new HashMap<>();
    for (Plant plant : Plant.all()) {
      Stream.concat(Stream.of(plant.key(), plant.name()), plant.alsoCalled().stream())
          .map(name -> name.toLowerCase(Locale.ROOT))
          .distinct()
          .forEach(name -> assertThat(seen.put(name, plant.key())).as(name).isNull());
    }
    assertThat(seen).hasSizeGreaterThan(40);
  }

  @Test
  void the_table_says_what_to_look_for_and_never_what_to_treat_with() {
    assertThat(Plant.all())
        .isNotEmpty()
        .allSatisfy(
            plant -> {
              assertThat(plant.parts()).isNotBlank();
              assertThat(plant.shows() + plant.note())
                  .doesNotContainPattern("(?i)\\b(mg|ml|dose|inject|drench|antidote|treat\\w*)\\b");
            });
  }
}
