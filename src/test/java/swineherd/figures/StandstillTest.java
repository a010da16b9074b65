package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StandstillTest {
  private static final LocalDate FIRST = LocalDate.of(2025, 5, 1);
  private static final LocalDate SECOND = LocalDate.of(2025, 5, 10);

  /** 20 and 6 clear days, the day of arrival not counted. */
  @ParameterizedTest(name = "LW01 england-trading-standards [read]: {0} from {1}")
  @CsvSource({"england-pigs, 2025-05-22", "england-others, 2025-05-08"})
  void animals_may_leave_after_the_clear_days(String rule, LocalDate earliest) {
    assertThat(Standstill.earliestMove(List.of(FIRST), rule)).contains(earliest);
  }

  @Test
  void LW02_a_second_batch_starts_the_clock_again_derived() {
    assertThat(Standstill.earliestMove(List.of(SECOND, FIRST), "england-pigs"))
        .contains(LocalDate.of(2025, 5, 31));
  }

  @Test
  void a_move_is_forbidden_until_the_last_arrival_before_it_is_over() {
    List<LocalDate> both = List.of(FIRST, SECOND);
    assertThat(Standstill.forbids(LocalDate.of(2025, 5, 30), both, "england-pigs")).isTrue();
    assertThat(Standstill.forbids(LocalDate.of(2025, 5, 31), both, "england-pigs")).isFalse();
  }

  @Test
  void pigs_that_arrive_after_a_move_do_not_touch_it() {
    List<LocalDate> arrivals = List.of(FIRST, LocalDate.of(2025, 6, 1));
    assertThat(Standstill.forbids(LocalDate.of(2025, 5, 25), arrivals, "england-pigs")).isFalse();
  }

  @Test
  void without_arrivals_nothing_stands_still() {
    assertThat(Standstill.earliestMove(List.of(), "england-pigs")).isEmpty();
    assertThat(Standstill.forbids(FIRST, List.of(), "england-pigs")).isFalse();
  }

  @Test
  void a_country_without_a_rule_here_is_named_not_guessed() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Standstill.earliestMove(List.of(FIRST), "wales-pigs"))
        .withMessageContaining("wales-pigs");
  }
}
