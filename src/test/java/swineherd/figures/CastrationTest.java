package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.figures.Castration.Demands;
import swineherd.setup.Country;

class CastrationTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "T11 EU after the first week (2008/120/EC) [read], FRANCE, 8, true, true, true",
    "T11 EU within it (2008/120/EC; EFSA J. 91) [read], FRANCE, 7, false, false, false",
    "T12 Canada over 10 d (NFACC code 4.5) [read], CANADA, 11, true, true, true",
    "T12 Canada at 10 d: pain relief at any age [read], CANADA, 10, false, true, false",
    "Canada on the first day [read], CANADA, 0, false, true, false",
    "Northern Ireland at 8 d (act of 1972) [read], NORTHERN_IRELAND, 8, true, true, true",
    "England at 7 d (PB7950) [read], ENGLAND, 7, false, false, false",
    "England at 8 d (PB7950) [read], ENGLAND, 8, true, true, true",
    "Germany at any age [memory], GERMANY, 1, true, true, true",
    "Australia over 21 d [memory], AUSTRALIA, 22, true, false, true",
    "United States: no federal rule [memory], UNITED_STATES, 60, false, false, false",
  })
  void the_law_of_the_place_asks_for_its_least(
      String check, Country country, double age, boolean vet, boolean relief, boolean anaesthetic) {
    assertThat(Castration.demands(country, age))
        .isEqualTo(new Demands(true, vet, relief, anaesthetic));
  }

  @Test
  void an_unknown_place_asks_for_everything() {
    Demands all = new Demands(false, true, true, true);
    assertThat(Castration.demands(null, 1)).isEqualTo(all);
    assertThat(Castration.demands(Country.ELSEWHERE, 1)).isEqualTo(all);
  }

  @ParameterizedTest(name = "{0}: {1} ({2})")
  @CsvSource(
      delimiter = '|',
      value = {
        "FRANCE | more than 7 days old | 2008/120/EC [read]",
        "ENGLAND | more than 7 days old | PB7950 [read]",
        "NORTHERN_IRELAND | 8 days old or more | act of 1972 [read]",
        "CANADA | over 10 days | NFACC code 4.5 [read]",
        "AUSTRALIA | more than 21 days old | model code [memory]",
        "GERMANY | any age | [memory]",
      })
  void the_words_of_a_place_name_its_age(Country country, String age, String source) {
    assertThat(Castration.words(country)).contains(age);
  }

  @ParameterizedTest
  @EnumSource(Country.class)
  void a_place_is_told_its_own_law_or_none(Country country) {
    String words = Castration.words(country);
    boolean known = Castration.demands(country, 60).lawKnown();
    assertThat(words.equals(Castration.words(null))).isEqualTo(!known);
    assertThat(Castration.words(null)).doesNotContainIgnoringCase("law");
    if (country != Country.ENGLAND && country != Country.WALES && country != Country.SCOTLAND) {
      assertThat(words).doesNotContain("England");
    }
  }

  @Test
  void an_impossible_age_is_refused() {
    assertThatThrownBy(() -> Castration.demands(Country.CANADA, -1))
        .isInstanceOf(OutsideDomainException.class);
  }
}
