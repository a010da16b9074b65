package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.figures.VitalSigns.Kind;
import swineherd.figures.VitalSigns.Verdict;
import swineherd.rulebook.Table;

class VitalSignsTest {
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "V01 slaughter pig 39.3 (Acta Vet. Scand. 57) [read],           GROWER,      39.3, NORMAL",
    "the same + 0.3 [read],                                         GROWER,      39.6, NORMAL",
    "V02 40.0 same day [judgement],                                 GROWER,      40.0, SAME_DAY",
    "V03 41.0 emergency [judgement],                                GROWER,      41.0, EMERGENCY",
    "V04 pot-bellied 37.6 (JAVMA 1999) [read],                      POT_BELLIED, 37.6, NORMAL",
    "V05 the same in a farm grower: chill or shock [judgement],     GROWER,      37.6, EMERGENCY",
    "grower 38.0 is not under 38.0 [judgement],                     GROWER,      38.0, RETAKE",
    "gilt 38.8 (Acta Vet. Scand. 57) [read],                        GILT,        38.8, NORMAL",
    "sow 38.3 (Acta Vet. Scand. 57) [read],                         SOW,         38.3, NORMAL",
    "piglet 39.5 (Acta Vet. Scand. 57) [read],                      PIGLET,      39.5, NORMAL",
    "erysipelas over 41.7 (trade press) [read],                     GROWER,      41.7, EMERGENCY",
    "pot-bellied 39.6: top of the range seen (JAVMA 1999) [read],   POT_BELLIED, 39.6, RETAKE",
    "pot-bellied 35.0: below the range seen (JAVMA 1999) [read],    POT_BELLIED, 35.0, EMERGENCY",
  })
  void a_temperature_reads_by_kind(String check, Kind kind, double celsius, Verdict expected) {
    assertThat(VitalSigns.temperature(kind, celsius)).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0} °C is {1} °F")
  @CsvSource({"40.0, 104.0", "41.0, 105.8", "38.0, 100.4", "39.3, 102.7"})
  void limits_in_fahrenheit_as_published(double celsius, double fahrenheit) {
    // V01-V03; the Celsius-Fahrenheit conversion is exact.
    assertThat(celsius * 9 / 5 + 32).isCloseTo(fahrenheit, within(0.05));
    assertThat(
            Table.named("vital-signs").row("grower").cells().values().stream()
                .anyMatch(cell -> cell.equals(Double.toString(celsius))))
        .isTrue();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "grower 30 (textbooks 25-40) [memory], GROWER, 30, false, true, NORMAL",
    "grower 51 in cool air [judgement], GROWER, 51, false, true, SAME_DAY",
    "grower 51 in heat: cool and count again [judgement], GROWER, 51, false, false, RETAKE",
    "grower 81 in heat [judgement], GROWER, 81, false, false, EMERGENCY",
    "open mouth at any rate [judgement], GROWER, 30, true, true, EMERGENCY",
    "sow 15 (textbooks 13-18) [memory], SOW, 15, false, true, NORMAL",
    "sow 45 in cool air [judgement], SOW, 45, false, true, SAME_DAY",
    "pot-bellied panting [judgement], POT_BELLIED, 90, false, true, EMERGENCY",
  })
  void breathing_reads_by_kind(
      String check, Kind kind, double rate, boolean open, boolean cool, Verdict expected) {
    assertThat(VitalSigns.breathing(kind, rate, open, cool)).isEqualTo(expected);
  }

  @Test
  void no_breathing_verdict_where_no_rate_is_published() {
    assertThatThrownBy(() -> VitalSigns.breathing(Kind.POT_BELLIED, 30, false, true))
        .isInstanceOf(OutsideDomainException.class);
  }

  @ParameterizedTest(name = "{0} °C is the thermometer's fault")
  @CsvSource({"29.9", "45.1", "102.5", "NaN"})
  void a_reading_no_pig_has_is_refused(double celsius) {
    assertThatThrownBy(() -> VitalSigns.temperature(Kind.GROWER, celsius))
        .isInstanceOf(OutsideDomainException.class);
  }

  @ParameterizedTest(name = "{0}, seed 45")
  @EnumSource(Kind.class)
  void further_from_the_mean_is_never_a_milder_verdict(Kind kind) {
    double mean =
        Table.named("vital-signs")
            .row(kind.name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .number("mean_c");
    Random random = new Random(45);
    for (int i = 0; i < 500; i++) {
      double up = random.nextDouble() * 3;
      double more = up + random.nextDouble();
      assertThat(VitalSigns.temperature(kind, mean + more))
          .isGreaterThanOrEqualTo(VitalSigns.temperature(kind, mean + up));
      assertThat(VitalSigns.temperature(kind, mean - more))
          .isGreaterThanOrEqualTo(VitalSigns.temperature(kind, mean - up));
    }
  }
}
