package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** Law as published bodies tell it; each row of the table names them. */
class SlaughterLawTest {
  private static SlaughterLaw law(String country, String state) {
    return SlaughterLaw.of(
        Country.valueOf(country.toUpperCase(Locale.ROOT).replace('-', '_')), state);
  }

  /** LW04: meat killed at home is for sale nowhere of these. */
  @ParameterizedTest(name = "LW04 {0}: {3}")
  @CsvSource({
    "england, , never sold, FSA guide 2020 [read]",
    "wales, , never sold, FSA guide 2020 [read]",
    "united-states, Ohio, never sold, 9 CFR 303.1 [read]",
    "australia, Victoria, not sold, statement of the regulator 2021 [read]",
    "new-zealand, , neither sold, homekill as summarised [read]",
  })
  void meat_killed_at_home_is_not_for_sale(
      String country, String state, String says, String source) {
    assertThat(law(country, state).meat()).as(source).contains(says);
  }

  @ParameterizedTest(name = "{0} {1}: {2}")
  @CsvSource({
    // 9 CFR 303.1(a)(1) [read]: owner, household, nonpaying guests, employees
    "united-states, , guests who do not pay",
    // O. Reg. 31/05 [read], family from a second page
    "canada, Ontario, producer and his immediate family",
    "canada, ON, producer and his immediate family",
    "australia, New South Wales, own use only",
    "ireland, , private use at home",
    "germany, , private use at home",
  })
  void the_law_of_the_state_comes_before_that_of_the_country(
      String country, String state, String says) {
    assertThat(law(country, state).meat()).contains(says);
  }

  /** New Zealand: day-to-day carer for at least 28 days (homekill as summarised [read]). */
  @Test
  void in_new_zealand_the_keeper_must_have_cared_for_them_for_28_days() {
    assertThat(law("new-zealand", null).careDays()).isEqualTo(28);
    assertThat(law("england", null).careDays()).isZero();
  }

  @Test
  void where_the_country_or_its_law_is_not_known_no_law_is_told() {
    for (SlaughterLaw law :
        new SlaughterLaw[] {
          SlaughterLaw.of(null, null), law("norway", null), law("canada", null)
        }) {
      assertThat(law.known()).isFalse();
      assertThat(law.sources()).isEmpty();
      assertThat(law.who()).startsWith("ask the food authority");
      assertThat(law.meat()).contains("own household alone");
      assertThat(law.sale()).contains("only meat slaughtered under inspection");
    }
    assertThat(SlaughterLaw.of(null, "Ontario").known()).isFalse();
  }

  @ParameterizedTest(name = "the move to slaughter, {0}: {1}; {2}")
  @CsvSource({
    "england, herd mark, Defra pages and trading standards [read]",
    "northern-ireland, tag or tattoo, NISR 2012/67 article 8 [read]",
    "france, tag or tattoo, summary of the Union's law on registers [read]",
    "canada, within 7 days, Canadian pig reporting [read]",
    "united-states, official identification, 9 CFR 71.19 [read]",
    "australia, vendor declaration, New South Wales pages [read]",
    "norway, ask the abattoir, no law known here",
    "elsewhere, ask the abattoir, no law known here",
  })
  void the_move_to_slaughter_is_told_as_the_law_there_has_it(
      String country, String says, String source) {
    assertThat(
            SlaughterLaw.move(Country.valueOf(country.toUpperCase(Locale.ROOT).replace('-', '_'))))
        .as(source)
        .contains(says);
    assertThat(SlaughterLaw.move(null)).contains("ask the abattoir");
  }

  @ParameterizedTest
  @EnumSource(Country.class)
  void a_law_that_is_told_names_whose_text_it_is(Country country) {
    SlaughterLaw law = SlaughterLaw.of(country, null);
    assertThat(law.known()).isEqualTo(!law.sources().isEmpty());
    assertThat(law.who()).isNotBlank();
    assertThat(law.sale()).isNotBlank();
  }

  /** How a pig is killed is told nowhere. */
  @Test
  void no_row_tells_how_it_is_done() {
    for (Table.Row row : Table.named("slaughter-law").rows()) {
      assertThat(row.cells().values().toString())
          .doesNotContainPattern("(?i)caliber|calibre|rifle|bolt|shot|aim|forehead|knife|bleed");
    }
  }
}
