package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Card;
import swineherd.rulebook.Consequence;
import swineherd.rulebook.Evidence;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Stage;

/** The order of a checklist, as the class comment of {@link Rank} promises it. */
class RankTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  private static Rank rank(
      Consequence consequence, double likelihood, Referral referral, Stage stage, LocalDate due) {
    Card card =
        new Card(
            "shed.measure",
            Card.Kind.ITEM,
            "h",
            null,
            "d",
            "w",
            null,
            null,
            null,
            null,
            referral,
            stage,
            consequence,
            likelihood,
            Evidence.JUDGEMENT,
            null,
            null,
            null,
            null,
            null,
            null);
    return Rank.of(card, Advice.of("shed.measure", ""), due, TODAY);
  }

  private static Rank rank(Consequence consequence, double likelihood, LocalDate due) {
    return rank(consequence, likelihood, Referral.NONE, Stage.WHILE_GROWING, due);
  }

  @ParameterizedTest(name = "due in {0} days counts {1}")
  @CsvSource({"-30, 2", "0, 2", "14, 1.5", "42, 1.25", "126, 1.1"})
  void how_soon_falls_from_two_towards_one(int days, double soon) {
    assertThat(rank(Consequence.MONEY, 1, TODAY.plusDays(days)).soon())
        .isCloseTo(soon, within(1e-9));
  }

  @Test
  void without_a_day_it_counts_as_six_weeks_off_and_for_now_as_today() {
    assertThat(rank(Consequence.MONEY, 1, null).soon()).isCloseTo(1.25, within(1e-9));
    assertThat(rank(Consequence.MONEY, 1, Referral.NONE, Stage.NOW, null).soon()).isEqualTo(2);
  }

  @Test
  void consequences_stand_in_the_order_somebody_would_put_them() {
    List<Rank> ranks = new ArrayList<>();
    for (Consequence consequence : Consequence.values()) {
      ranks.add(rank(consequence, 0.5, null));
    }
    assertThat(ranks).isSortedAccordingTo(Rank.HIGHEST_FIRST);
    assertThat(Consequence.values())
        .containsExactly(
            Consequence.PEOPLE,
            Consequence.ANIMALS,
            Consequence.LAW,
            Consequence.MEAT,
            Consequence.MONEY,
            Consequence.COMFORT);
  }

  @Test
  void what_is_likelier_or_sooner_stands_before() {
    assertThat(rank(Consequence.MEAT, 0.6, null).score())
        .isGreaterThan(rank(Consequence.MEAT, 0.5, null).score());
    assertThat(rank(Consequence.MEAT, 0.5, TODAY.plusDays(3)).score())
        .isGreaterThan(rank(Consequence.MEAT, 0.5, TODAY.plusDays(30)).score());
  }

  @Test
  void an_emergency_stands_before_everything() {
    Rank emergency = rank(Consequence.COMFORT, 0.01, Referral.VET_NOW, Stage.WHILE_GROWING, null);
    Rank worst = rank(Consequence.PEOPLE, 1, TODAY);
    assertThat(Rank.HIGHEST_FIRST.compare(emergency, worst)).isNegative();
  }

  @Test
  void the_likelihood_a_rule_gives_goes_before_the_cards() {
    Card card =
        new Card(
            "shed.measure",
            Card.Kind.ITEM,
            "h",
            null,
            "d",
            "w",
            null,
            null,
            null,
            null,
            Referral.NONE,
            Stage.NOW,
            Consequence.LAW,
            0.9,
            Evidence.JUDGEMENT,
            null,
            null,
            null,
            null,
            null,
            null);
    Rank rank = Rank.of(card, Advice.of("shed.measure", "").likely(0.2), null, TODAY);
    assertThat(rank.score()).isEqualTo(40 * 0.2 * 2);
    assertThat(rank.sum()).isEqualTo("40 x 0.20 x 2.00 = 16.0");
  }
}
