package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

class WeanerTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "B01 England (Welfare of Farmed Animals Regs 2007) [read], ENGLAND, 28, 21",
    "B01 Northern Ireland (Welfare of Farmed Animals Regs 2012) [read], NORTHERN_IRELAND, 28, 21",
    "EU (2008/120/EC) [memory], FRANCE, 28, 21",
  })
  void the_law_sets_the_age_at_weaning(String check, Country country, int usual, int special) {
    assertThat(Weaner.minimumWeaningDays(country, false)).hasValue(usual);
    assertThat(Weaner.minimumWeaningDays(country, true)).hasValue(special);
  }

  @Test
  void no_federal_age_in_the_united_states_and_none_for_an_unknown_place() {
    assertThat(Weaner.minimumWeaningDays(Country.UNITED_STATES, false)).isEmpty();
    assertThat(Weaner.minimumWeaningDays(null, false)).isEmpty();
  }

  @Test
  void b02_a_usual_weaner_of_eight_weeks_lies_within_a_handbook_for_buyers() {
    // 35-45 lb at 8 weeks: handbook of small animals, buying weaned pigs [read].
    double usual = Table.named("growth-classes").row("modern-cross").number("eight_week_kg");
    assertThat(usual * 2.20462).isBetween(35.0, 45.0);
  }

  @Test
  void b03_quarantine_is_30_days_and_never_under_21() {
    // A judgement between 2 to 4 weeks (Michigan State [read]) and 30 to 60 days (Vet Times
    // [read]).
    assertThat(Weaner.quarantineDays()).isEqualTo(new DayRange(21, 30));
  }

  @Test
  void b04_the_english_standstill_is_shorter_than_the_quarantine() {
    // 20 d: trading standards, keeping pigs [read].
    double standstill = Table.named("standstill").row("england-pigs").number("clearDays");
    assertThat(standstill).isEqualTo(20).isLessThan(Weaner.quarantineDays().low());
  }
}
