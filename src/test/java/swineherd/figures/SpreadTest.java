package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpreadTest {
  @ParameterizedTest(name = "{0}: at {1} kg, {2} kg and {3} % (Animals 11:2088, 2021 [read])")
  @CsvSource({"U01, 110, 11.95, 10.4", "U02, 25, 3.90, 16.9"})
  void pigs_of_one_age_differ_as_published(String id, double kg, double sd, double cv) {
    assertThat(Spread.deviationKg(kg)).as(id).isCloseTo(sd, within(0.01));
    assertThat(Spread.variationPercent(kg)).as(id).isCloseTo(cv, within(0.1));
  }

  @Test
  void the_two_published_formulas_tell_the_same_story() {
    for (double kg = 10; kg <= 130; kg += 5) {
      assertThat(Spread.deviationKg(kg) / kg * 100)
          .isCloseTo(Spread.variationPercent(kg), within(2.0));
    }
  }

  @Test
  void well_run_units_are_within_reach_of_it() {
    // Prairie Swine Centre [read]: 12 to 15 % leaving the nursery (about 25 kg), 10 to 12 % at
    // first
    // sale (about 110 kg). The meta-analysis is of ordinary herds and lies at or above that.
    assertThat(Spread.variationPercent(25)).isBetween(12.0, 18.0);
    assertThat(Spread.variationPercent(110)).isBetween(10.0, 12.0);
  }

  @Test
  void eight_in_ten_pigs_lie_in_the_band_about_the_mean() {
    // 110 +- 1.2816 x 11.95 [derived]
    Band pigs = Spread.pigsKg(110);
    assertThat(pigs.low()).isCloseTo(94.7, within(0.05));
    assertThat(pigs.high()).isCloseTo(125.3, within(0.05));
  }

  @Test
  void it_refuses_pigs_heavier_than_market() {
    assertThatThrownBy(() -> Spread.deviationKg(131)).isInstanceOf(OutsideDomainException.class);
    assertThatThrownBy(() -> Spread.variationPercent(1)).isInstanceOf(OutsideDomainException.class);
  }
}
