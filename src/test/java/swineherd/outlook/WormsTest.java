package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.outlook.WormTest.Since;
import swineherd.setup.SetupReader;

/**
 * Worked examples [judgement]: intervals by hand from the factor table, which is anchored in the
 * prepatent period of the roundworm (56 d) and in what labels and handbooks print.
 */
class WormsTest {
  /** Two gilts of 8 weeks on 400 m2 each that never had pigs: 56 x 1.30 x 0.90 = 65.5. */
  private static final String GILTS =
      """
      checkOn: 2027-06-01
      place: {country: england, latitude: 52 N, hottestMonth: 22 C}
      pens:
        - {name: orchard, area: 800 m2, ground: moved-pasture, pigsBefore: no}
      pigs:
        - {name: gilts, count: 2, ageOnArrival: 8 weeks, arrives: 2027-04-10, wormedAtSource: yes}
      """;

  private static <T extends Outlook> T only(Class<T> type, String yaml) {
    return Outlooks.of(SetupReader.read("pigs.yaml", yaml, LocalDate.EPOCH).setup()).stream()
        .filter(type::isInstance)
        .map(type::cast)
        .findFirst()
        .orElseThrow();
  }

  private static WormTest test(String yaml) {
    return only(WormTest.class, yaml);
  }

  private static WormGround ground(String yaml) {
    return only(WormGround.class, yaml);
  }

  @Test
  void the_next_count_is_reckoned_from_the_arrival() {
    WormTest test = test(GILTS);
    assertThat(test.since()).isEqualTo(Since.ARRIVAL);
    assertThat(test.interval()).isEqualTo(66);
    assertThat(test.due()).isEqualTo(LocalDate.of(2027, 6, 15));
    assertThat(test.soon()).isTrue();
    assertThat(test.taken()).isEmpty();
  }

  @Test
  void a_later_dose_or_clean_count_puts_it_off() {
    String dosed = GILTS.replace("count: 2", "count: 2, wormedOn: 2027-05-01");
    assertThat(test(dosed).since()).isEqualTo(Since.DOSE);
    assertThat(test(dosed).from()).isEqualTo(LocalDate.of(2027, 5, 1));
    String counted = dosed.replace("count: 2", "count: 2, dungCount: clean, countedOn: 2027-05-28");
    assertThat(test(counted).since()).isEqualTo(Since.CLEAN_COUNT);
    // 56 x 1.30 x 1.20 x 0.90 (under 16 weeks) = 78.6
    assertThat(test(counted).due()).isEqualTo(LocalDate.of(2027, 5, 28).plusDays(79));
  }

  @Test
  void a_dose_in_the_diary_counts_if_it_is_against_worms() {
    String diary = "diary: [{on: 2027-05-20, pigs: gilts, did: treated, active: %s}]";
    assertThat(test(GILTS + diary.formatted("fenbendazole")).from())
        .isEqualTo(LocalDate.of(2027, 5, 20));
    assertThat(test(GILTS + diary.formatted("tylosin")).since()).isEqualTo(Since.ARRIVAL);
  }

  @Test
  void what_is_not_known_is_named_with_how_it_was_taken() {
    assertThat(test("checkOn: 2027-06-01\npigs: [{arrives: 2027-05-01}]").taken())
        .isEqualTo(
            "Not known, and taken at its worst: the ground as crowded, the ground as bare and wet,"
                + " the ground as never rested, their past as without a clean count or a breeder's"
                + " record, their age as under 16 weeks, the season as warm.");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "a winter in the north is cold all the way [judgement], 2027-11-25, 52 N, 20 November, 75",
    "a summer is not, 2027-05-25, 52 N, 20 November, 66",
    "November is summer in the south, 2027-11-25, 37 S, 10 June, 66",
    "and June is winter there, 2027-06-10, 37 S, 10 June, 75",
  })
  void cold_ground_puts_it_off(
      String why, String arrives, String latitude, String frost, int days) {
    // 56 x 1.30 x 0.90 = 65.5, and x 1.15 = 75.3 where no egg develops (under 14.5 degC, Parasites
    // and Vectors 9:80 [read])
    String yaml =
        GILTS
            .replace("2027-06-01", arrives)
            .replace("2027-04-10", arrives)
            .replace("country: england, latitude: 52 N", "latitude: " + latitude + ", freezes: yes")
            .replace("hottestMonth: 22 C", "firstHardFrost: " + frost);
    assertThat(test(yaml).interval()).isEqualTo(days);
  }

  @Test
  void the_last_day_for_a_dose_leaves_room_for_the_longest_withdrawal() {
    // 77 days (doramectin, UK data sheet [memory]) and a day for safety before 1 October
    WormTest english = test(GILTS.replace("count: 2", "count: 2, slaughterOn: 2027-10-01"));
    assertThat(english.lastDose()).isEqualTo(LocalDate.of(2027, 7, 15));
    // 24 days (21 CFR 522.770 [read]) in the United States
    WormTest american =
        test(
            GILTS
                .replace("england", "united-states")
                .replace("count: 2", "count: 2, slaughterOn: 2027-10-01"));
    assertThat(american.lastDose()).isEqualTo(LocalDate.of(2027, 9, 6));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "in time for every withdrawal, england, 2027-10-01, false, false",
    "too late for the longest but more than six weeks to go, england, 2027-07-30, false, false",
    "the last six weeks, england, 2027-07-20, true, false",
    "in the United States 24 days are enough, united-states, 2027-07-20, false, false",
    "due after they have gone, england, 2027-06-10, true, true",
  })
  void near_slaughter_there_is_no_room_for_a_dose(
      String why, String country, String slaughter, boolean late, boolean after) {
    WormTest test =
        test(
            GILTS
                .replace("england", country)
                .replace("count: 2", "count: 2, slaughterOn: " + slaughter));
    assertThat(test.lateForDose()).isEqualTo(late);
    assertThat(test.afterSlaughter()).isEqualTo(after);
  }

  @Test
  void eggs_found_are_untreated_until_a_dose_follows() {
    String found =
        GILTS.replace("count: 2", "count: 2, dungCount: positive, countedOn: 2027-05-20");
    assertThat(test(found).untreated()).isTrue();
    assertThat(test(found.replace("count: 2", "count: 2, wormedOn: 2027-05-10")).untreated())
        .isTrue();
    assertThat(test(found.replace("count: 2", "count: 2, wormedOn: 2027-05-20")).untreated())
        .isFalse();
  }

  @Test
  void nothing_to_count_from_gives_no_day() {
    WormTest test = test(GILTS.replace("arrives: 2027-04-10, ", ""));
    assertThat(test.since()).isEqualTo(Since.UNKNOWN);
    assertThat(test.due()).isNull();
    assertThat(test.soon()).isFalse();
  }

  @Test
  void ground_is_overloaded_only_if_it_is_so_at_best() {
    // 56 x 0.90 x 0.85 x 0.80 x 0.90 x 0.90 = 27.8, under 0.8 x 35 = 28
    String lot =
        GILTS
            .replace("800 m2, ground: moved-pasture, pigsBefore: no", AREA + REST)
            .replace(", wormedAtSource: yes", "");
    assertThat(ground(lot).overloaded()).isTrue();
    assertThat(ground(lot).areaPerPig()).isEqualTo(150);
    String unknown = lot.replace(REST, "");
    assertThat(ground(unknown).overloaded()).isFalse();
    assertThat(ground(unknown).perhapsOverloaded()).isTrue();
    assertThat(ground(unknown).missing()).isEqualTo("when pigs or pig manure were last there");
    assertThat(ground(GILTS).perhapsOverloaded()).isFalse();
  }

  private static final String AREA = "300 m2, ground: bare-dry";
  private static final String REST = ", pigsBefore: yes, restedFor: 30 days";

  @Test
  void two_groups_share_the_area_of_a_pen() {
    String both = GILTS + "  - {name: boars, pen: orchard, count: 6, arrives: 2027-04-10}\n";
    assertThat(ground(both).areaPerPig()).isEqualTo(100);
    assertThat(ground(both.replace("count: 6, ", "")).areaPerPig()).isNull();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "afternoons of 22 degC: 27 days [judgement] but two weeks at most, 22 C, 14",
    "afternoons of 31 degC: 200 / 16.5 = 12 days (13-18 at 30-33 [read]), 31 C, 12",
    "hotter than any published time: as at 33, 40 C, 12",
    "too cold for eggs all summer: two weeks, 14 C, 14",
    "unknown: as at 33, unknown, 12",
  })
  void dung_is_taken_up_before_its_eggs_can_infect(String why, String hottest, int days) {
    assertThat(ground(GILTS.replace("22 C", hottest)).dungEvery()).isEqualTo(days);
  }

  @Test
  void what_belongs_to_the_arrival_is_due_then_or_now() {
    WormArrival coming =
        only(WormArrival.class, GILTS.replace("arrives: 2027-04-10", "arrives: 2027-07-01"));
    assertThat(coming.by()).isEqualTo(LocalDate.of(2027, 7, 1));
    WormArrival justCome =
        only(WormArrival.class, GILTS.replace("arrives: 2027-04-10", "arrives: 2027-05-25"));
    assertThat(justCome.by()).isEqualTo(LocalDate.of(2027, 6, 1));
  }
}
