package swineherd.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PriceTest {
  @ParameterizedTest
  @CsvSource({
    "90, 90",
    "0, 0",
    "12.50, 12.5",
    "'12,50', 12.5",
    "'1,250.50', 1250.5",
    "$45, 45",
    "45 €, 45",
  })
  void money_is_a_plain_number(String written, double expected) {
    assertThat(Price.parse(written)).isEqualTo(expected);
  }

  // A pound is 0.45359237 kg and a short ton 2000 of them: NIST SP 811 (2008), appendix B [memory].
  @ParameterizedTest
  @CsvSource({
    "0.60 per kg, 0.60",
    "0.6/kg, 0.60",
    "15 per 25 kg, 0.60",
    "15 for 25kg bag, 0.60",
    "15 per 25 kg bag, 0.60",
    "330 a tonne, 0.33",
    "330 / t, 0.33",
    "0.55 per lb, 1.2125424",
    "18 per 50 lb, 0.7936641",
    "290 per short ton, 0.3196703",
    "$0.55/lb, 1.2125424",
  })
  void a_price_by_weight_is_money_for_each_kg(String written, double expected) {
    assertThat(Price.perKg(written)).isCloseTo(expected, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(strings = {"-5", "free", "1e9", "12 per kg", "5 5", "NaN", ""})
  void what_is_no_money_is_refused(String written) {
    assertThatExceptionOfType(UnreadableException.class).isThrownBy(() -> Price.parse(written));
  }

  @ParameterizedTest
  @CsvSource({
    "0.60, names no weight",
    "15 per bag, names no weight",
    "15 per 25, names no weight",
    "15 per 3 m, names no weight",
    "-1 per kg, is not a price",
    "15 per 0 kg, is not a price",
    "kg, names no weight",
  })
  void a_price_by_weight_without_its_weight_says_so(String written, String why) {
    assertThatExceptionOfType(UnreadableException.class)
        .isThrownBy(() -> Price.perKg(written))
        .withMessageContaining(why)
        .satisfies(e -> assertThat(e.accepted()).contains("per lb"));
  }
}
