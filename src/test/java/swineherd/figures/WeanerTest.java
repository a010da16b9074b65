package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;

class WeanerTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "B01 England (Welfare of Farmed Animals Regs 2007) [read], gb-eng, 28, 21",
    "B01 Northern Ireland (Welfare of Farmed Animals Regs 2012) [read], gb-nir, 28, 21",
    "EU (2008/120/EC) [memory], fr, 28, 21",
  })
  void the_law_sets_the_age_at_weaning(String check, String place, int usual, int special) {
    assertThat(Weaner.minimumWeaningDays(place, false)).hasValue(usual);
    assertThat(Weaner.minimumWeaningDays(place, true)).hasValue(special);
  }

  @Test
  void no_federal_age_in_the_united_states_and_none_for_an_unknown_place() {
    assertThat(Weaner.minimumWeaningDays("us", false)).isEmpty();
    assertThat(Weaner.minimumWeaningDays(null, false)).isEmpty();
  }

  @ParameterizedTest(name = "{0} (handbook, buying feeder pigs) [read]")
  @CsvSource({
    "B02 35 lb at 8 weeks, eight-weeks, low_kg, 35",
    "B02 45 lb at 8 weeks, eight-weeks, high_kg, 45",
    "60 lb at 12 weeks, twelve-weeks, low_kg, 60",
    "20 lb at 12 weeks is refused, refuse-twelve-weeks, high_kg, 20",
  })
  void a_weaner_weighs(String check, String row, String column, double pounds) {
    assertThat(Table.named("weaner-weights").row(row).number(column))
        .isCloseTo(pounds / 2.20462, within(0.1));
  }

  @Test
  void b03_quarantine_is_30_days_and_never_under_21() {
    // A judgement between 2 to 4 weeks (Michigan State [read]) and 30 to 60 days (Vet Times
    // [read]).
    assertThat(Weaner.quarantineDays()).isEqualTo(new DayRange(21, 30));
  }

  @Test
  void b04_the_british_standstill_is_20_days() {
    assertThat(Table.named("quarantine").row("standstill-gb").number("days")).isEqualTo(20);
  }
}
