package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class PenUseTest {
  private static PenUse use(String checkOn, String more) {
    return Setups.one(
        PenUse.class,
        """
        checkOn: %s
        pens: [{name: field}, {name: empty}]
        pigs:
          - {name: old, pen: field, arrives: 2027-03-01, arrivalWeight: 20 kg, targetWeight: 100 kg}
          - {name: new, pen: field, arrives: 2027-04-24, arrivalWeight: 12 kg, targetWeight: 110 kg}
        %s
        """
            .formatted(checkOn, more));
  }

  @Test
  void a_pen_must_hold_the_smallest_now_and_the_heaviest_at_the_end() {
    PenUse use = use("2027-03-01", "");
    assertThat(use.pen()).isEqualTo("field");
    assertThat(use.lightest()).isEqualTo(12);
    assertThat(use.heaviest()).isEqualTo(110);
  }

  @Test
  void it_must_stand_a_week_before_the_first_come_or_today_if_they_are_there() {
    assertThat(use("2027-02-01", "").readyBy()).isEqualTo(LocalDate.of(2027, 2, 22));
    assertThat(use("2027-02-27", "").readyBy()).isEqualTo(LocalDate.of(2027, 2, 27));
    assertThat(use("2027-03-10", "").readyBy()).isEqualTo(LocalDate.of(2027, 3, 10));
    assertThat(use("2027-02-01", "").there()).isFalse();
    assertThat(use("2027-03-10", "").there()).isTrue();
  }

  @Test
  void they_have_settled_when_the_last_have_been_there_two_weeks() {
    assertThat(use("2027-05-07", "").settled()).isFalse();
    assertThat(use("2027-05-08", "").settled()).isTrue();
  }

  /** That a road makes harm 1.3 times as likely is judgement. */
  @Test
  void a_road_beside_it_makes_harm_more_likely_but_never_certain() {
    PenUse road = use("2027-03-01", "place: {publicAccess: yes}");
    assertThat(road.likely(0.5)).isCloseTo(0.65, within(1e-9));
    assertThat(road.likely(0.9)).isEqualTo(0.95);
    assertThat(use("2027-03-01", "place: {publicAccess: no}").likely(0.5)).isEqualTo(0.5);
    assertThat(use("2027-03-01", "").likely(0.5)).isEqualTo(0.5);
  }

  /** Pigs that were weighed are there even if nobody said when they came. */
  @Test
  void pigs_in_the_diary_are_there_and_pigs_slaughtered_are_not() {
    String weighed =
        """
        checkOn: 2027-03-01
        pens: [{name: field}]
        pigs: [{name: pigs}]
        diary: [{on: 2027-02-20, pigs: pigs, did: weighed, weight: 60 kg}]
        """;
    assertThat(Setups.one(PenUse.class, weighed).there()).isTrue();
    assertThat(
            Setups.all(
                PenUse.class,
                weighed.replace("{name: pigs}", "{name: pigs, slaughterOn: 2027-02-25}")))
        .isEmpty();
  }
}
