package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Swill.Scraps;
import swineherd.figures.Swill.Verdict;
import swineherd.rulebook.Table;

class SwillTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "K01 vegan peelings in the UK (Regulation 1069/2009) [read], gb, KITCHEN_PLANT, FORBIDDEN",
    "K02 carrots from the garden in the UK [read], gb-eng, GARDEN, ALLOWED",
    "K03 meat scraps in Canada (Health of Animals Regs s. 112) [read], ca, ANIMAL, FORBIDDEN",
    "K05 meat scraps in a State not listed (9 CFR 166) [read], us-zz, ANIMAL, CHECK",
    "State unknown [read], us, ANIMAL, CHECK",
    "Iowa forbade garbage (9 CFR 166.15) [read], us-ia, ANIMAL, FORBIDDEN",
    "EU member: catering waste (Regulation 1069/2009) [read], fr, KITCHEN_PLANT, FORBIDDEN",
    "Australia: mammal matter [read], au-tas, ANIMAL, FORBIDDEN",
    "place unknown: as if forbidden [judgement], , ANIMAL, FORBIDDEN",
    "place unknown: garden is the safe class [judgement], , GARDEN, ALLOWED",
    "place without a row [judgement], zz, KITCHEN_PLANT, CHECK",
  })
  void scraps_are(String check, String place, Scraps scraps, Verdict expected) {
    assertThat(Swill.verdict(place, scraps)).isEqualTo(expected);
  }

  @Test
  void k04_a_united_states_licence_asks_for_212_fahrenheit_for_30_minutes() {
    // 9 CFR 166 [read]; 212 °F is 100 °C exactly.
    assertThat(Swill.law("us").number("heat_c")).isEqualTo((212.0 - 32) * 5 / 9);
    assertThat(Swill.law("us").number("heat_min")).isEqualTo(30);
  }

  @Test
  void twenty_states_stood_on_the_federal_list() {
    // 9 CFR 166.15 before 2019 [read].
    Set<String> listed =
        Table.named("swill-law").rows().stream()
            .map(Table.Row::key)
            .filter(key -> key.startsWith("us-"))
            .map(key -> key.substring(3))
            .collect(Collectors.toSet());
    assertThat(listed)
        .containsExactlyInAnyOrder(
            "al", "de", "ga", "id", "il", "in", "ia", "ks", "ky", "la", "ms", "ne", "ny", "nd",
            "or", "sc", "sd", "tn", "va", "wi");
  }

  @Test
  void every_cell_of_the_table_is_a_verdict_and_meat_is_nowhere_allowed() {
    for (Table.Row row : Table.named("swill-law").rows()) {
      for (Scraps scraps : Scraps.values()) {
        assertThat(Swill.verdict(row.key(), scraps)).isNotNull();
      }
      assertThat(Swill.verdict(row.key(), Scraps.ANIMAL)).isNotEqualTo(Verdict.ALLOWED);
    }
  }
}
