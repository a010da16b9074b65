package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.figures.Withdrawal.Basis;
import swineherd.setup.SetupReader;

/** Withdrawals are those of the tables, which are checked against the law in WithdrawalTest. */
class TreatedTest {
  private static final String BARROWS =
      """
      checkOn: 2026-10-20
      place: {country: united-states}
      pigs:
        - {name: barrows, count: 2, slaughterOn: 2026-10-25}
      """;

  private static List<Treated> treated(String yaml) {
    return Outlooks.of(SetupReader.read("pigs.yaml", yaml, LocalDate.EPOCH).setup()).stream()
        .filter(Treated.class::isInstance)
        .map(Treated.class::cast)
        .toList();
  }

  private static Treated only(String yaml) {
    assertThat(treated(yaml)).hasSize(1);
    return treated(yaml).get(0);
  }

  @Test
  void an_injection_five_days_before_the_date_clears_on_8_november() {
    // 18 days (21 CFR 522.1192 [read]) end on 7 November; a day for safety [judgement].
    Treated given =
        only(
            BARROWS
                + "diary: [{on: 2026-10-20, pigs: barrows, did: treated, active: ivermectin,"
                + " route: injection}]");
    assertThat(given.clearOn()).isEqualTo(LocalDate.of(2026, 11, 8));
    assertThat(given.basis()).isEqualTo(Basis.TABLE);
    assertThat(given.late()).isEqualTo(14);
    assertThat(given.running()).isTrue();
    assertThat(given.grounds()).contains("diary[0].active", "pigs[0].slaughterOn");
  }

  /** Words are no days: until the vet's days are noted no end is known (judgement). */
  @Test
  void a_withdrawal_that_a_vet_only_spoke_of_has_no_end_until_its_days_are_noted() {
    String said =
        BARROWS + "diary:\n  - {on: 2026-10-20, pigs: barrows, did: vet-said, note: %s}\n";
    assertThat(only(said.formatted("withdrawal 30 days")))
        .satisfies(given -> assertThat(given.clearOn()).isNull())
        .satisfies(given -> assertThat(given.blocked()).isTrue());
    assertThat(treated(said.formatted("they look well"))).isEmpty();
    assertThat(
            only(
                said.formatted("withdrawal 30 days")
                    + "  - {on: 2026-10-20, pigs: barrows, did: treated, vetWithdrawal: 30 days}\n"))
        .satisfies(given -> assertThat(given.blocked()).isFalse());
  }

  @Test
  void several_days_of_one_active_are_one_course_with_its_last_day_and_longest_label() {
    Treated given =
        only(
            BARROWS
                + """
                diary:
                  - {on: 2026-09-28, pigs: barrows, did: treated, active: tylosin}
                  - {on: 2026-09-29, pigs: barrows, did: treated, active: Tylosin, withdrawal: 14 days}
                  - {on: 2026-09-30, pigs: barrows, did: treated, active: " tylosin"}
                """);
    // 30 September and 14 days (21 CFR 522.2640 [read]) are 14 October; a day for safety.
    assertThat(given.clearOn()).isEqualTo(LocalDate.of(2026, 10, 15));
    assertThat(given.late()).isZero();
    assertThat(given.mayReach()).isFalse();
    assertThat(given.running()).isFalse();
  }

  /** 18 days by injection and 5 in feed (21 CFR 522.1192, 558.300 [read]), each from its own. */
  @Test
  void one_active_by_two_ways_is_two_courses() {
    List<Treated> given =
        treated(
            BARROWS
                + """
                diary:
                  - {on: 2026-10-10, pigs: barrows, did: treated, active: ivermectin, route: injection}
                  - {on: 2026-10-18, pigs: barrows, did: treated, active: ivermectin, route: feed, withdrawal: 5 days}
                """);
    assertThat(given)
        .extracting(Treated::clearOn)
        .containsExactly(LocalDate.of(2026, 10, 29), LocalDate.of(2026, 10, 24));
    assertThat(given).extracting(Treated::given).contains("ivermectin by injection");
  }

  /**
   * 14 days (21 CFR 522.2640 [read]) and a day for safety from the last dose, whatever shorter days
   * stand beside a dose of which the way was not said.
   */
  @Test
  void a_dose_of_which_the_way_was_not_said_belongs_to_the_course_that_is_known() {
    Treated given =
        only(
            BARROWS
                + """
                diary:
                  - {on: 2026-10-10, pigs: barrows, did: treated, active: tylosin, route: injection, withdrawal: 14 days}
                  - {on: 2026-10-12, pigs: barrows, did: treated, active: tylosin}
                  - {on: 2026-10-13, pigs: barrows, did: treated, active: tylosin, vetWithdrawal: 0 days}
                """);
    assertThat(given.clearOn()).isEqualTo(LocalDate.of(2026, 10, 28));
  }

  /** The vet's days come later, in an entry of the same day. */
  @Test
  void days_of_the_vet_for_the_same_day_are_those_of_what_was_given_then() {
    for (String active : new String[] {"", ", active: ivermectin"}) {
      Treated given =
          only(
              (BARROWS
                      + """
                      diary:
                        - {on: 2026-10-10, pigs: barrows, did: treated, route: pour-on, offLabel: yes%s}
                        - {on: 2026-10-10, pigs: barrows, did: treated, vetWithdrawal: 40 days%s}
                      """)
                  .formatted(active, active));
      assertThat(given.clearOn()).isEqualTo(LocalDate.of(2026, 11, 20));
      assertThat(given.blocked()).isFalse();
    }
  }

  /** Days that a vet gave for one unnamed thing say nothing of another. */
  @Test
  void what_has_no_name_is_never_one_course_with_anything() {
    List<Treated> given =
        treated(
            BARROWS
                + """
                diary:
                  - {on: 2026-10-10, pigs: barrows, did: treated, vetWithdrawal: 10 days}
                  - {on: 2026-10-18, pigs: barrows, did: treated}
                """);
    assertThat(given).hasSize(2);
    assertThat(given.get(0).clearOn()).isEqualTo(LocalDate.of(2026, 10, 21));
    assertThat(given.get(1).clearOn()).isNull();
    assertThat(given).allMatch(Treated::blocked);
    assertThat(given)
        .extracting(Treated::toAsk)
        .containsExactly(null, "something that was not named");
  }

  @Test
  void a_pig_treated_alone_says_nothing_of_the_others() {
    Treated given =
        only(
            BARROWS
                + "diary: [{on: 2026-10-20, pigs: barrows, pig: '12', did: treated,"
                + " active: ivermectin, route: injection}]");
    assertThat(given.whom()).isEqualTo("pig 12 of barrows");
    assertThat(given.each()).contains("pig 12 may go from 8 November 2026", "the others any day");
  }

  @Test
  void only_one_of_several_is_the_latest_and_one_without_a_date_blocks() {
    List<Treated> given =
        treated(
            BARROWS
                + """
                diary:
                  - {on: 2026-10-01, pigs: barrows, did: treated, active: tylosin, withdrawal: 14 days}
                  - {on: 2026-10-12, pigs: barrows, did: treated, active: levamisole, withdrawal: 3 days}
                  - {on: 2026-10-13, pigs: barrows, did: treated}
                """);
    // 16 October both; the first of them is told.
    assertThat(given).extracting(Treated::latest).containsExactly(true, false, false);
    assertThat(given).allMatch(Treated::blocked);
    assertThat(given.get(2).basis()).isEqualTo(Basis.ASK_THE_VET);
  }

  @Test
  void a_worming_that_stands_in_the_diary_is_not_counted_twice() {
    String wormed = BARROWS.replace("count: 2", "count: 2, wormedOn: 2026-10-02");
    assertThat(treated(wormed)).extracting(Treated::noted).containsExactly(false);
    assertThat(
            treated(
                wormed
                    + "diary: [{on: 2026-10-02, pigs: barrows, did: treated, active: pyrantel}]"))
        .extracting(Treated::noted)
        .containsExactly(true);
    // a medicine against something else says nothing of it
    assertThat(
            treated(
                wormed + "diary: [{on: 2026-10-03, pigs: barrows, did: treated, active: tylosin}]"))
        .extracting(Treated::noted)
        .containsExactly(true, false);
  }

  @Test
  void a_worming_with_something_unnamed_may_reach_as_far_as_the_longest_label() {
    // Doramectin, 24 days (21 CFR 522.770 [read]), and the day for safety: 30 September clears on
    // 25 October, 1 October does not.
    assertThat(only(BARROWS.replace("count: 2", "wormedOn: 2026-09-30")).mayReach()).isFalse();
    assertThat(only(BARROWS.replace("count: 2", "wormedOn: 2026-10-01")).mayReach()).isTrue();
  }

  @Test
  void without_a_date_set_they_could_go_today() {
    String anyDay = BARROWS.replace(", slaughterOn: 2026-10-25", "");
    Treated given =
        only(
            anyDay
                + "diary: [{on: 2026-10-18, pigs: barrows, did: treated, active: fenbendazole,"
                + " route: feed, withdrawal: 4 days}]");
    assertThat(given.mayReach()).isTrue();
    assertThat(given.late()).isZero();
  }

  @Test
  void an_entry_that_names_no_group_is_of_every_group_and_one_of_another_group_is_not() {
    String two =
        BARROWS
            + """
              - {name: gilts, count: 3}
            diary:
              - {on: 2026-10-18, did: treated, active: ivermectin}
              - {on: 2026-10-18, pigs: gilts, did: treated, active: tylosin}
            """;
    assertThat(treated(two)).extracting(Treated::pigs).containsExactly("barrows", "gilts", "gilts");
  }

  @Test
  void pigs_that_have_gone_are_left_alone() {
    assertThat(
            treated(
                BARROWS.replace("2026-10-25", "2026-10-12")
                    + "diary: [{on: 2026-10-10, pigs: barrows, did: treated, active: tylosin}]"))
        .isEmpty();
  }
}
