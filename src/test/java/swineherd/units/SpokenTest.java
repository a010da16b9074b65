package swineherd.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SpokenTest {
  @ParameterizedTest
  @CsvSource({
    "two dozen, 24",
    "a dozen, 12",
    "half a dozen, 6",
    "a couple of pigs, 2 pigs",
    "a pair, 2",
    "thirty-five pounds, 35 pounds",
    "twelve by thirty ft, 12 by 30 ft",
    "two hundred and forty sq ft, 240 sq ft",
    "a hundred, 100",
    "minus twenty c, -20 c",
    "minus 20 c, -20 c",
    "20 below, -20",
    "20 degrees below zero c, -20 c",
    "5 1/2 ft, 5.5 ft",
    "5½ ft, 5.5 ft",
    "five and a half feet, 5.5 feet",
    "5-1/2 ft, 5.5 ft",
    "20 degrees F, 20 f",
    "1/2 acre, 1/2 acre",
    "half an acre, half an acre",
    "an acre and a half, 1.5 acre",
    "2 acres and a half, 2.5 acres",
    "30 lb, 30 lb",
    "8 in, 8 in",
  })
  void numbers_that_are_said_become_digits(String said, String digits) {
    assertThat(Spoken.digits(said)).isEqualTo(digits);
  }

  @ParameterizedTest
  @CsvSource({
    "about 12 by 30 feet, AREA, 12 x 30 ft",
    "12' x 30', AREA, 12 ft x 30 ft",
    "half an acre, AREA, 0.5 ac",
    "about 35 pounds, MASS, 35 lb",
    "5 foot 6 inches, LENGTH, 5 ft 6 in",
    "0.50 kilos, MASS, 0.5 kg",
    "−4 °F, TEMPERATURE, -4 F",
    "eight weeks, TIME, 8 wk",
    "2 joules, ENERGY, 2 J",
    "16%, SHARE, 16 %",
    "1/3 ac, AREA, 0.333333 ac",
  })
  void a_quantity_has_a_plainest_form(String written, Dimension dimension, String tidy) {
    assertThat(Quantity.tidy(Spoken.digits(written), dimension)).isEqualTo(tidy);
  }

  /** Whatever the reader takes, its pattern takes: an editor must not mark what is right. */
  @Test
  void a_quantity_that_can_be_read_has_the_shape_of_one_seed_7() {
    SplittableRandom random = new SplittableRandom(7);
    List<String> parts =
        List.of(
            "about ",
            "~",
            "some ",
            "half an ",
            "a quarter of an ",
            "a ",
            "3",
            "0.5",
            "1,000",
            "1/2",
            "-4",
            "−4",
            " ",
            " x ",
            " by ",
            "12",
            "°",
            "2",
            "²");
    List<Dimension> all = List.of(Dimension.values());
    int read = 0;
    for (int i = 0; i < 200_000; i++) {
      Dimension dimension = all.get(random.nextInt(all.size()));
      List<String> names = new ArrayList<>(dimension.names());
      names.addAll(Dimension.LENGTH.names());
      StringBuilder text = new StringBuilder();
      for (int j = 0; j < 1 + random.nextInt(6); j++) {
        text.append(
            random.nextBoolean()
                ? parts.get(random.nextInt(parts.size()))
                : names.get(random.nextInt(names.size())));
      }
      if (isRead(text.toString(), dimension)) {
        read++;
        assertThat(text.toString()).matches(Patterns.quantity(dimension));
        assertThat(text.toString().toUpperCase(Locale.ROOT)).matches(Patterns.quantity(dimension));
        String tidy = Quantity.tidy(text.toString(), dimension);
        double value = Quantity.parse(text.toString(), dimension);
        assertThat(Quantity.parse(tidy, dimension))
            .as(text + " as " + tidy)
            .isCloseTo(value, within(1e-4 * (1 + Math.abs(value))));
      }
    }
    assertThat(read).isGreaterThan(2_000);
  }

  /** An editor tries the patterns at every key stroke. */
  @Test
  void what_has_not_the_shape_is_told_apart_at_once() {
    for (String text :
        List.of("1".repeat(200) + "!", "1 ".repeat(100) + "!", "1 ft ".repeat(60) + "!")) {
      for (Dimension dimension : Dimension.values()) {
        long start = System.nanoTime();
        assertThat(text).doesNotMatch(Patterns.quantity(dimension));
        assertThat(text).doesNotMatch(Patterns.priceByWeight());
        assertThat(System.nanoTime() - start).as(text).isLessThan(500_000_000L);
      }
    }
  }

  private static boolean isRead(String text, Dimension dimension) {
    try {
      Quantity.parse(text, dimension);
      return true;
    } catch (UnreadableException e) {
      return false;
    }
  }
}
