package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.setup.SetupReader;

class CourseTest {
  private static final LocalDate ARRIVAL = LocalDate.of(2027, 4, 24);

  /** Three modern gilts, 18 kg by guess, hand-fed outdoors, to 110 kg. */
  private static final String GILTS =
      """
      checkOn: 2027-06-30
      feed: {kind: hand-fed}
      pigs:
        - name: gilts
          count: 3
          breed: modern-cross
          sex: gilts
          arrives: 2027-04-24
          arrivalWeight: 18 kg
          weighedBy: guess
          targetWeight: 110 kg
      """;

  private static Course course(String yaml) {
    List<Outlook> all = Outlooks.of(SetupReader.read("pigs.yaml", yaml, ARRIVAL).setup());
    return (Course) all.stream().filter(Course.class::isInstance).findFirst().orElseThrow();
  }

  /**
   * Worked example [derived]: 114.4 days on the published Gompertz curve at 0.86 of the full rate,
   * eight in ten within 95.4 to 137.1, and four days of standstill after the purchase. The factors
   * multiply to 0.92 x 0.93 = 0.8556, which the example rounds to 0.86: half a day.
   */
  @Test
  void three_gilts_are_finished_when_the_worked_example_says() {
    DateBand finish = course(GILTS).finish();
    assertThat(finish.early().toEpochDay() - ARRIVAL.toEpochDay()).isCloseTo(100, within(1L));
    assertThat(finish.likely().toEpochDay() - ARRIVAL.toEpochDay()).isCloseTo(119, within(1L));
    assertThat(finish.late().toEpochDay() - ARRIVAL.toEpochDay()).isCloseTo(142, within(1L));
    assertThat(course(GILTS).end()).isEqualTo(finish.likely());
    assertThat(course(GILTS).endWeight()).isEqualTo(110);
  }

  /** Pigs that should have gone are still there: the end is today, at what they weigh today. */
  @Test
  void after_the_likely_finish_the_end_is_today() {
    DateBand finish = course(GILTS).finish();
    Course onTheDay = course(GILTS.replace("2027-06-30", finish.likely().toString()));
    assertThat(onTheDay.isOverdue()).isFalse();
    LocalDate later = finish.likely().plusWeeks(3);
    Course overdue = course(GILTS.replace("2027-06-30", later.toString()));
    assertThat(overdue.isOverdue()).isTrue();
    assertThat(overdue.end()).isEqualTo(later);
    // three weeks at 0.8 to 1 kg a day, as pigs of that weight gain; judgement
    assertThat(overdue.endWeight())
        .isEqualTo(overdue.weightOn(later).likely())
        .isBetween(126.0, 132.0);
    assertThat(course(GILTS + "    slaughterOn: 2027-12-20\n").isOverdue()).isFalse();
  }

  /** The curve of a modern cross is used up to 0.75 x 230 kg = 172.5 kg; worked example. */
  @Test
  void where_the_curve_ends_they_weigh_at_least_what_stands_there() {
    Course late = course(GILTS.replace("2027-06-30", "2028-03-01"));
    LocalDate day = LocalDate.of(2028, 3, 1);
    assertThat(late.foresees(day)).isFalse();
    assertThat(late.weightOn(day).likely()).isCloseTo(172.5, within(1e-9));
    assertThat(late.endWeight()).isCloseTo(172.5, within(1e-9));
    Course heavier = course(GILTS.replace("110 kg", "200 kg") + "    slaughterOn: 2028-03-01\n");
    assertThat(heavier.endWeight()).isEqualTo(200);
  }

  /** Those that are there today are those that are not finished; past the late end nobody knows. */
  @Test
  void the_chance_that_they_are_still_there_counts_from_today() {
    DateBand finish = course(GILTS).finish();
    LocalDate frost = finish.likely().plusDays(20);
    double inJune = course(GILTS).stillThereOn(frost);
    // in June one group in 10000 or fewer is finished already
    assertThat(inJune).isCloseTo(course(GILTS).notReachedBy(frost), within(1e-4));
    Course overdue = course(GILTS.replace("2027-06-30", finish.likely().plusDays(5).toString()));
    assertThat(overdue.stillThereOn(frost)).isGreaterThan(inJune).isLessThan(1);
    Course kept = course(GILTS.replace("2027-06-30", finish.late().plusDays(1).toString()));
    assertThat(kept.stillThereOn(frost.plusYears(1))).isEqualTo(1);
  }

  /** The day that is set counts, and the weight they will have then. */
  @Test
  void a_day_set_for_slaughter_is_the_end() {
    Course set = course(GILTS + "    slaughterOn: 2027-07-25\n");
    assertThat(set.end()).isEqualTo(LocalDate.of(2027, 7, 25));
    assertThat(set.finish()).isEqualTo(course(GILTS).finish());
    assertThat(set.endWeight()).isEqualTo(set.weightOn(set.end()).likely()).isBetween(80.0, 90.0);
  }

  /**
   * Worked example [derived]: taped at 40 kg on day 42 of growth, which is 46 days after they were
   * bought, the rate falls from 0.010836 to 0.009507 and 90.8 days are left instead of 79.7. Both
   * weights are by tape there.
   */
  @Test
  void a_weight_in_the_diary_moves_the_date_and_leaves_the_past_as_it_was() {
    String byTape = GILTS.replace("guess", "tape");
    Course taped =
        course(
            byTape
                + """
                diary:
                  - {on: 2027-06-09, pigs: gilts, did: taped, weight: 40 kg}
                """);
    LocalDate day = LocalDate.of(2027, 6, 9);
    assertThat(taped.weighings()).hasSize(1);
    assertThat(taped.weighings().get(0).rateRatio()).isCloseTo(0.009507 / 0.010836, within(0.005));
    assertThat(taped.finish().likely().toEpochDay() - day.toEpochDay()).isCloseTo(91, within(1L));
    assertThat(taped.weightOn(day)).isEqualTo(Band.exactly(40));
    assertThat(taped.weightOn(day.minusDays(1)))
        .isEqualTo(course(byTape).weightOn(day.minusDays(1)));
  }

  @Test
  void the_later_of_two_weights_for_one_day_corrects_the_other() {
    String row = "  - {on: 2027-06-09, pigs: gilts, did: weighed, weight: %s kg}\n";
    Course twice = course(GILTS + "diary:\n" + row.formatted("38") + row.formatted("40"));
    Course once = course(GILTS + "diary:\n" + row.formatted("40"));
    assertThat(twice.forecast()).isEqualTo(once.forecast());
    assertThat(twice.weighings()).hasSize(1);
  }

  @Test
  void a_weight_that_cannot_be_is_not_used_until_a_second_agrees() {
    String row = "  - {on: 2027-06-%s, pigs: gilts, did: weighed, weight: %s kg}\n";
    String first = GILTS + "diary:\n" + row.formatted("09", "160");
    Course slip = course(first);
    assertThat(slip.doubted()).hasSize(1);
    assertThat(slip.forecast()).isEqualTo(course(GILTS).forecast());
    assertThat(course(first + row.formatted("12", "42")).weighings()).hasSize(1);
    Course agreed = course(first + row.formatted("12", "161"));
    assertThat(agreed.doubted()).isEmpty();
    assertThat(agreed.forecast().start().kg()).isEqualTo(161);
  }

  @Test
  void weighed_on_the_day_they_came_the_guess_is_forgotten() {
    Course weighed =
        course(
            GILTS
                + """
                diary:
                  - {on: 2027-04-24, pigs: gilts, did: weighed, weight: 16 kg}
                """);
    assertThat(weighed.weighings()).isEmpty();
    assertThat(weighed.weightOn(ARRIVAL)).isEqualTo(Band.exactly(16));
    assertThat(weighed.forecast().checkDays()).isEqualTo(4);
  }

  /**
   * Worked by hand [derived]: 230 exp(-ln(230/80) exp(-0.0126 x 1 x 0.93 x 1.05 x 35)) = 115.8 kg,
   * from the published curve and factors, without a standstill since nobody has just bought them.
   */
  @Test
  void where_the_arrival_was_not_said_the_course_begins_with_the_first_weight() {
    Course there =
        course(
            """
            checkOn: 2026-11-10
            feed: {kind: self-feeder}
            pigs: [{name: barrows, count: 3, sex: males, males: castrated}]
            diary: [{on: 2026-11-10, pigs: barrows, did: weighed, weight: 80 kg}]
            """);
    assertThat(there.arrives()).isEqualTo(LocalDate.of(2026, 11, 10));
    assertThat(there.weightOn(LocalDate.of(2026, 12, 15)).likely()).isCloseTo(115.8, within(0.1));
    assertThat(there.grounds()).contains("diary[0].weight");
  }

  /**
   * Keepers reckon 0.5 to 0.8 lb a day for lard pigs (common practice, no source); from 30 lb in
   * 173 days that makes 116 to 168 lb, 53 to 76 kg.
   */
  @Test
  void lard_pigs_whose_feed_was_not_said_grow_as_keepers_reckon() {
    Course lard =
        course(
            """
            checkOn: 2026-03-15
            pigs:
              - name: barrows
                count: 3
                breed: mangalitsa
                sex: males
                males: castrated
                arrives: 2026-04-25
                arrivalWeight: 30 lb
                targetWeight: 250 lb
            """);
    assertThat(lard.weightOn(LocalDate.of(2026, 10, 15)).likely()).isBetween(53.0, 76.0);
    assertThat(lard.assumed()).anyMatch(a -> a.contains("below appetite"));
  }

  /** Girth squared times length over 400 (tape-rule [read], WT04): 40 by 45 in are 180 lb. */
  @Test
  void a_tape_in_the_diary_is_a_weight_with_the_error_of_its_readings() {
    String row = "diary: [{on: 2027-06-30, pigs: gilts, did: taped, girth: %s, length: 45 in}]";
    Course once = course(GILTS + row.formatted("40 in"));
    Course thrice = course(GILTS + row.formatted("[40 in, 40 in, 40 in]"));
    assertThat(once.weighings()).hasSize(1);
    assertThat(once.weighings().get(0).later().kg()).isCloseTo(180 * 0.45359237, within(0.02));
    // one reading 10 %, three 5 %: common practice, no source
    assertThat(once.weighings().get(0).later().error()).isCloseTo(0.10, within(1e-9));
    assertThat(thrice.weighings().get(0).later().error()).isCloseTo(0.05, within(1e-9));
    assertThat(once.grounds()).contains("diary[0].girth", "diary[0].length");
    assertThat(thrice.finish().likely()).isBefore(once.finish().likely());
  }

  @Test
  void a_tape_that_was_not_made_for_such_a_pig_is_told_and_changes_nothing() {
    String yaml = GILTS + "diary: [{on: 2027-06-30, pigs: gilts, did: taped, girth: 150 cm}]";
    assertThat(course(yaml).finish()).isEqualTo(course(GILTS).finish());
    assertThat(Outlooks.of(SetupReader.read("pigs.yaml", yaml, ARRIVAL).setup()))
        .filteredOn(NotWorkedOut.class::isInstance)
        .extracting(o -> ((NotWorkedOut) o).figure())
        .contains("weight by tape");
  }

  @Test
  void a_weight_that_was_written_counts_before_the_readings_beside_it() {
    Course course =
        course(
            GILTS
                + "diary: [{on: 2027-06-30, pigs: gilts, did: taped, weight: 60 kg,"
                + " girth: 40 in, length: 45 in}]");
    assertThat(course.weighings().get(0).later().kg()).isEqualTo(60);
    assertThat(course.weighings().get(0).later().error()).isEqualTo(0.05);
  }
}
