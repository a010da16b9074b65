package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.MeatSafety.Freezing;
import swineherd.figures.MeatSafety.Meat;
import swineherd.rulebook.Table;

class MeatSafetyTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "X01 SL03 whole cut 145 °F (USDA) [read], cooking, whole-cut, inside_f, inside_c, 145, 62.8",
    "SL03 mince 160 °F (USDA) [read], cooking, ground, inside_f, inside_c, 160, 71.1",
    "SL04 5 °F (former 9 CFR 318.10) [read], freezing, plus-5-f, coldest_f, coldest_c, 5, -15.0",
    "SL04 -10 °F [read], freezing, minus-10-f, coldest_f, coldest_c, -10, -23.3",
    "SL04 -20 °F [read], freezing, minus-20-f, coldest_f, coldest_c, -20, -28.9",
  })
  void published_fahrenheit_and_celsius_agree(
      String check, String table, String row, String f, String c, double inF, double inC) {
    assertThat(Table.named(table).row(row).number(f)).isEqualTo(inF);
    assertThat(Table.named(table).row(row).number(c)).isEqualTo(inC);
    assertThat((inF - 32) * 5 / 9).isCloseTo(inC, within(0.05));
  }

  @ParameterizedTest(name = "SL03 {0}: {1} °F is {2} °C (USDA Farmers' Bulletin 2265) [read]")
  @CsvSource({"day, 40, 4.4", "may-freeze, 28, -2.2", "night, 35, 1.7"})
  void hanging_temperatures_agree(String row, double inF, double inC) {
    assertThat(Table.named("chilling").row(row).number("limit")).isEqualTo(inC);
    assertThat((inF - 32) * 5 / 9).isCloseTo(inC, within(0.05));
  }

  @Test
  void pork_is_cooked_to_the_published_temperatures() {
    // USDA safe minimum temperatures [read]; game as mince [judgement].
    assertThat(MeatSafety.cookToC(Meat.WHOLE_CUT)).isEqualTo(62.8);
    assertThat(MeatSafety.cookToC(Meat.GROUND)).isEqualTo(71.1);
    assertThat(MeatSafety.cookToC(Meat.GAME)).isEqualTo(71.1);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "SL05 -18 °C counts as -15 (former 9 CFR 318.10) [read], WHOLE_CUT, -18, 10, 20, ADEQUATE",
    "SL06 and so 10 days are too few [read], WHOLE_CUT, -18, 10, 10, TOO_SHORT",
    "SL07 [read], WHOLE_CUT, -23.4, 10, 10, ADEQUATE",
    "SL08 thick meat takes 30 [read], WHOLE_CUT, -15, 20, 20, TOO_SHORT",
    "SL09 [read], WHOLE_CUT, -29, 20, 12, ADEQUATE",
    "SL10 no days suffice at -12 [read], WHOLE_CUT, -12, 5, 60, TOO_WARM",
    "SL11 wild boar stands frost [memory], GAME, -29, 5, 60, NOT_ACCEPTED",
    "thicker than 27 in [read], WHOLE_CUT, -29, 70, 60, TOO_THICK",
    "-20 °F converted is the row of -28.9 [derived], GROUND, -28.8889, 10, 6, ADEQUATE",
  })
  void freezing_counts_by_the_former_rule(
      String check, Meat meat, double celsius, double cm, double days, Freezing expected) {
    assertThat(MeatSafety.freezing(meat, celsius, cm, days)).isEqualTo(expected);
  }

  @Test
  void colder_or_thinner_never_needs_longer_seed_47() {
    Random random = new Random(47);
    for (int i = 0; i < 2000; i++) {
      double celsius = -15 - random.nextDouble() * 30;
      double cm = random.nextDouble() * 68;
      int days = MeatSafety.freezingDays(celsius, cm).orElseThrow();
      assertThat(MeatSafety.freezingDays(celsius - random.nextDouble() * 10, cm).orElseThrow())
          .isLessThanOrEqualTo(days);
      assertThat(MeatSafety.freezingDays(celsius, cm * random.nextDouble()).orElseThrow())
          .isLessThanOrEqualTo(days);
    }
  }

  @Test
  void impossible_values_are_refused() {
    assertThatThrownBy(() -> MeatSafety.freezing(Meat.GROUND, -20, -1, 5))
        .isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> MeatSafety.freezing(Meat.GROUND, -20, 5, -1))
        .isInstanceOf(OutsideDomainException.class);
  }

  /**
   * fsa-cooking [memory]: 70 C for two minutes; former 9 CFR 318.10 [read]: from 5 F (-15 C) down.
   */
  @Test
  void the_other_advice_and_the_warmest_freezing_that_counts() {
    assertThat(MeatSafety.cookForTwoMinutesC()).isEqualTo(70);
    assertThat(MeatSafety.warmestFreezingC()).isEqualTo(-15);
  }
}
