package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Swill.Scraps;
import swineherd.figures.Swill.Verdict;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

class SwillTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "K01 vegan peelings in the UK (Regulation 1069/2009) [read], ENGLAND, , KITCHEN_PLANT, FORBIDDEN",
    "K02 carrots from the garden in the UK [read], NORTHERN_IRELAND, , GARDEN, ALLOWED",
    "K03 meat scraps in Canada (Health of Animals Regs s. 112) [read], CANADA, , ANIMAL, FORBIDDEN",
    "K05 meat scraps in a State not listed (9 CFR 166) [read], UNITED_STATES, Ohio, ANIMAL, CHECK",
    "State unknown [read], UNITED_STATES, , ANIMAL, CHECK",
    "Iowa forbade garbage (9 CFR 166.15) [read], UNITED_STATES, Iowa, ANIMAL, FORBIDDEN",
    "the same by its postal code, UNITED_STATES, NY, ANIMAL, FORBIDDEN",
    "Queensland [read], AUSTRALIA, qld, ANIMAL, FORBIDDEN",
    "EU member: catering waste (Regulation 1069/2009) [read], FRANCE, , KITCHEN_PLANT, FORBIDDEN",
    "Australia: mammal matter [read], AUSTRALIA, Tasmania, ANIMAL, FORBIDDEN",
    "place unknown: as if forbidden [judgement], , , ANIMAL, FORBIDDEN",
    "place unknown: garden is the safe class [judgement], , , GARDEN, ALLOWED",
    "place without a row [judgement], ELSEWHERE, , KITCHEN_PLANT, CHECK",
  })
  void scraps_are(String check, Country country, String state, Scraps scraps, Verdict expected) {
    assertThat(Swill.verdict(country, state, scraps)).isEqualTo(expected);
  }

  @Test
  void k04_a_united_states_licence_asks_for_212_fahrenheit_for_30_minutes() {
    // 9 CFR 166 [read]; 212 °F is 100 °C exactly.
    assertThat(Swill.law(Country.UNITED_STATES, null).number("heat_c"))
        .isEqualTo((212.0 - 32) * 5 / 9);
    assertThat(Swill.law(Country.UNITED_STATES, null).number("heat_min")).isEqualTo(30);
  }

  @Test
  void twenty_states_stood_on_the_federal_list() {
    // 9 CFR 166.15 before 2019 [read].
    Set<String> listed =
        Table.named("swill-law").rows().stream()
            .filter(row -> row.key().startsWith("united-states-"))
            .map(row -> row.text("code"))
            .collect(Collectors.toSet());
    assertThat(listed)
        .containsExactlyInAnyOrder(
            "al", "de", "ga", "id", "il", "in", "ia", "ks", "ky", "la", "ms", "ne", "ny", "nd",
            "or", "sc", "sd", "tn", "va", "wi");
  }

  @Test
  void in_no_country_is_meat_allowed_or_a_cell_no_verdict() {
    for (Country country : Country.values()) {
      for (Scraps scraps : Scraps.values()) {
        assertThat(Swill.verdict(country, null, scraps)).isNotNull();
      }
      assertThat(Swill.verdict(country, null, Scraps.ANIMAL)).isNotEqualTo(Verdict.ALLOWED);
    }
    for (Table.Row row : Table.named("swill-law").rows()) {
      for (Scraps scraps : Scraps.values()) {
        assertThat(row.text(scraps.name().toLowerCase(Locale.ROOT)))
            .isIn("allowed", "check", "forbidden");
      }
    }
  }
}
