package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.WaterLost.Action;
import swineherd.setup.SetupReader;

class WaterOutTest {
  private static WaterOut out(String day, String place, String sign) {
    String yaml =
        """
        checkOn: %s
        place: {%s}
        pigs:
          - {name: growers, count: 3, arrives: 2026-11-01, arrivalWeight: 18 kg}
        diary:
          - {on: %s, pigs: growers, did: weighed, weight: 60 kg}
        signs:
          - {pigs: growers, sign: no-water, %s}
        """
            .formatted(day, place, day, sign);
    return (WaterOut)
        Outlooks.of(SetupReader.read("pigs.yaml", yaml, LocalDate.of(2027, 1, 1)).setup()).stream()
            .filter(WaterOut.class::isInstance)
            .findFirst()
            .orElseThrow();
  }

  /** Hours as in J. Swine Health Prod. 31(6) [read]; heat, and what is not known: judgement. */
  @ParameterizedTest(name = "{0}, {1}: {2} gives {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "2027-01-10 | latitude: 50 N | dryFor: 30 h, look: bright | VET_FIRST",
        "2027-01-10 | latitude: 50 N | dryFor: 16 h, look: bright | IN_STEPS",
        "2027-01-10 | latitude: 50 N | dryFor: 6 h, look: bright | WATCH",
        "2027-01-10 | latitude: 50 N | dryFor: 6 h | IN_STEPS",
        "2027-01-10 | latitude: 50 N | look: bright | VET_FIRST",
        "2027-01-10 | latitude: 50 N | dryFor: 1 h, look: nervous | VET_FIRST",
        "2027-01-10 | latitude: 35 S | dryFor: 16 h, look: bright | VET_FIRST",
        "2027-01-10 | country: elsewhere | dryFor: 16 h, look: bright | VET_FIRST",
        "2027-07-10 | 'latitude: 50 N, hottestMonth: 18 C' | dryFor: 16 h, look: bright | IN_STEPS",
      })
  void the_hours_the_season_and_their_looks_decide(
      String day, String place, String sign, Action action) {
    assertThat(out(day, place, sign).action()).isEqualTo(action);
  }

  /** 0.30 L an hour at 60 kg: Merck Veterinary Manual [memory]. */
  @Test
  void a_pig_of_60_kg_gets_300_ml_an_hour() {
    WaterOut out = out("2027-01-10", "latitude: 50 N", "dryFor: 30 h");
    assertThat(out.weight()).isCloseTo(60, within(0.01));
    assertThat(out.each()).isCloseTo(0.30, within(0.001));
    assertThat(out.hours()).isEqualTo(30);
  }
}
