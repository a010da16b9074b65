package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoverTest {
  @ParameterizedTest(name = "{0}: {1} of 50, {2} %, {3} (75 %: Animals 10:1046 [read])")
  @CsvSource({
    "PA08, 38, 76, GREEN",
    "just below, 37, 74, AMBER",
    "half, 25, 50, AMBER",
    "below half: judgement, 24, 48, RED"
  })
  void cover_below_three_quarters_means_move(String id, int hits, double percent, Signal signal) {
    Cover cover = new Cover(hits, 50);
    assertThat(cover.percent()).isCloseTo(percent, within(1e-9));
    assertThat(cover.signal()).isEqualTo(signal);
  }

  @ParameterizedTest(name = "{0} of {1}: {2} to {3} %, Newcombe 1998 table I, method 3 [memory]")
  @CsvSource({
    "81, 263, 25.53, 36.62",
    "15, 148, 6.24, 16.05",
    "0, 20, 0, 16.11",
    "1, 29, 0.61, 17.18"
  })
  void the_interval_is_the_score_interval(int hits, int steps, double low, double high) {
    Band band = new Cover(hits, steps).band();
    assertThat(band.low()).isCloseTo(low, within(0.005));
    assertThat(band.high()).isCloseTo(high, within(0.005));
  }

  // derived by the normal approximation: +-13 points at 70 %; the score interval is a little
  // narrower there, and stays honest at 0 and 100 %, where the approximation says +-0
  @Test
  void fifty_steps_tell_cover_to_about_13_points() {
    Band band = new Cover(35, 50).band();
    assertThat((band.high() - band.low()) / 2).isCloseTo(13, within(1.0));
    assertThat(new Cover(50, 50).band().low()).isLessThan(95);
  }

  // judgement: a third
  @Test
  void a_third_rooted_up_means_move() {
    assertThat(Cover.isRootedUp(33)).isFalse();
    assertThat(Cover.isRootedUp(100 / 3.0)).isTrue();
  }

  @Test
  void a_count_that_cannot_be_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> new Cover(51, 50));
    assertThatExceptionOfType(OutsideDomainException.class).isThrownBy(() -> new Cover(0, 0));
  }
}
