package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.cli.Runs.Run;

class NoteCommandTest {
  private static final String PIGS =
      """
      # ours
      name: Tor
      checkOn: 2027-07-10
      place: {country: united-states, latitude: 45 N}
      pens:
        - {name: yard, fence: {kind: solid}}
        - {name: back field, fence: {kind: electric}}   # the far one
      pigs:
        - name: weaners
          pen: yard
          count: 4
          arrives: 2027-05-01
          arrivalWeight: 45 lb
          trained: no
        - name: late ones
          pen: yard
          count: 2
      """;

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void write() throws IOException {
    file = Files.writeString(folder.resolve("pigs.yaml"), PIGS);
  }

  private Run note(String... words) {
    String[] args = new String[words.length + 2];
    args[0] = "note";
    args[1] = file.toString();
    System.arraycopy(words, 0, args, 2, words.length);
    return Runs.run(args);
  }

  private void isAdded(String entry) {
    assertThat(file).hasContent(PIGS + "diary:\n" + entry);
  }

  private void isRefused(Run run, String why) {
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains(why).doesNotContain("Exception", "\tat ");
    assertThat(file).hasContent(PIGS);
  }

  @Test
  void a_weight_is_added_and_what_was_expected_is_told() {
    Run run = note("weighed", "weaners", "120", "lb", "--on", "5 July 2027");
    assertThat(run.exit()).isZero();
    isAdded("  - on: 2027-07-05\n    pigs: weaners\n    did: weighed\n    weight: 120 lb\n");
    assertThat(run.words())
        .contains("5 July 2027, weaners weighed 120 lb each.")
        .contains("was to be expected")
        .contains("They should reach");
  }

  @Test
  void a_weight_that_cannot_be_is_written_with_a_plain_doubt() {
    Run run = note("weighed", "weaners", "20", "lb", "--on", "2027-07-05");
    assertThat(run.exit()).isZero();
    assertThat(run.words()).contains("far outside what was to be expected", "Check the scale");
    assertThat(Runs.run("slaughter", file.toString()).out()).doesNotContain("Weight not known");
  }

  @Test
  void a_second_weight_for_one_day_is_said_to_replace_the_first() {
    assertThat(note("weighed", "weaners", "100", "lb", "--on", "2027-07-05").words())
        .doesNotContain("replaces");
    assertThat(note("weighed", "weaners", "105", "lb", "--on", "2027-07-05").words())
        .contains("It replaces the weight that was noted before for that day.");
  }

  @Test
  void a_treatment_tells_the_first_day_they_may_go() {
    Run run =
        note(
            "treated",
            "weaners",
            "--active",
            "ivermectin",
            "--route",
            "injection",
            "--withdrawal",
            "18 days",
            "--on",
            "2027-07-01");
    isAdded(
        """
          - on: 2027-07-01
            pigs: weaners
            did: treated
            active: ivermectin
            route: injection
            withdrawal: 18 days
        """);
    // 18 days by injection, 21 CFR 522.1192 [read]; and the day for safety
    assertThat(run.words()).contains("may go to slaughter from 20 July 2027, not before");
  }

  @Test
  void of_a_treatment_without_a_known_withdrawal_none_may_go() {
    assertThat(note("treated", "weaners", "--on", "2027-07-01").words())
        .contains("No day for slaughter can be told", "none of them may go");
  }

  @Test
  void a_move_may_name_group_and_pen_in_several_words() {
    Run run = note("moved", "late", "ones", "back", "field", "--on", "2027-07-10");
    isAdded("  - on: 2027-07-10\n    pigs: late ones\n    did: moved\n    pen: back field\n");
    assertThat(run.words()).contains("late ones moved to back field.").contains("New on the list:");
  }

  @Test
  void a_death_tells_how_many_are_left_and_whom_to_call() {
    Run run = note("died", "weaners", "--on", "2027-07-10", "--note", "found at dawn");
    isAdded("  - on: 2027-07-10\n    pigs: weaners\n    did: died\n    note: found at dawn\n");
    assertThat(run.words())
        .contains("one of weaners died.")
        .contains("Weaners are reckoned as three from now on.")
        .contains("Ask the vet today why a pig of weaners died.");
  }

  @Test
  void free_words_are_kept_as_they_are() {
    note("vet-said", "weaners", "rest: no more than 2 days # and water", "--on", "2027-07-10");
    isAdded(
        """
          - on: 2027-07-10
            pigs: weaners
            did: vet-said
            note: "rest: no more than 2 days # and water"
        """);
  }

  @Test
  void an_item_that_is_done_leaves_the_list_until_it_is_due_again() {
    assertThat(note("done", "arrival.watch", "--on", "2027-07-10").words())
        .contains("arrival.watch done for late ones. Look at late ones twice a day")
        .contains("Off the list until 11 July 2027.");
    isAdded(
        """
          - on: 2027-07-10
            pigs: late ones
            did: done
            item: arrival.watch
        """);
    Run check = Runs.run("check", file.toString(), "--show-rank");
    assertThat(check.out()).doesNotContain("arrival.watch");
    assertThat(check.words()).contains("One item is ticked off in the diary");
    assertThat(Runs.run("check", file.toString(), "--all").words())
        .contains("Ticked off in the diary 10 July 2027: Look at late ones twice a day");
    assertThat(Runs.run("check", file.toString(), "--show-rank", "--on", "2027-07-11").out())
        .contains("arrival.watch");
  }

  @Test
  void what_was_done_before_they_come_does_not_make_them_be_there() {
    Run run = note("done", "arrival.crate", "--on", "2027-07-10");
    assertThat(run.out()).doesNotContain("Off the list:");
  }

  @Test
  void what_asks_for_an_answer_stays_until_it_is_given() {
    Run run = note("done", "taint.look", "weaners", "--on", "2027-07-10");
    assertThat(run.words()).contains("until the answer it asks for stands in the file");
    assertThat(Runs.run("check", file.toString(), "--show-rank").out()).contains("taint.look");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "weighed weeners 45 lb | \"weeners\" is no group; say which pigs; one of: weaners, late ones",
        "weighed weaners | Say the weight",
        "weighed weaners 45 | has no unit",
        "weighed weaners 9000 lb | weight:",
        "moved weaners front | No pen is called \"front\"; one of: yard, back field",
        "died weaners --count 9 | at most 4",
        "died weaners some | is no group",
        "vet-said weaners rest --pig 12 | --pig goes with treated",
        "treated weaners zorblax | name the medicine with --active",
        "done fence.trian-first | did you mean fence.train-first?",
        "done nothing.there | No item is called",
        "sold weaners | nothing that can be noted",
        "weighed weaners 45 lb --on 2027-07-11 | the file has checkOn",
        "weighed weaners 45 lb --on whenever | --on:",
        "weighed weaners 45 lb --active ivermectin | does not go with",
        "treated weaners --route nose | route:",
        "vet-said weaners | Say words",
        "weighed weaners 45 lb --on 2027-04-20 | is before weaners arrive, 1 May 2027",
        "died weaners --on 2027-04-20 | is before weaners arrive",
        "moved weaners yard --on 2027-04-20 | is before weaners arrive",
        "treated weaners --active ivermectin/3/ml | the name alone, without amount or strength",
        "treated weaners --active tylosin/20/% | the name alone",
        "weighed weaners 45 lb --pig 12 | --pig goes with treated",
      })
  void what_cannot_be_right_is_told_and_not_written(String typed, String why) {
    Run run =
        note(
            Stream.of((typed.contains("--on") ? typed : typed + " --on 2027-07-10").split(" "))
                .map(word -> word.replace('/', ' '))
                .toArray(String[]::new));
    isRefused(run, why);
    assertThat(run.err()).doesNotContain("3 ml", "20 %");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "ivermectin 3 ml",
        "3ml ivermectin",
        "tylosin 20%",
        "penicillin, 2 cc",
        "ivermectin one shot",
        "a dose of tylosin",
        "ivermectin 1 ml per 33 kg",
        "oxytetracycline 200 mg/mL",
        "penicillin 300,000 units",
        "half a tablet of it",
      })
  void an_amount_is_no_part_of_the_name(String active) {
    Run run = note("treated", "weaners", "--active", active, "--on", "2027-07-10");
    isRefused(run, "the name alone");
    assertThat(run.err()).doesNotContain(active);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "vitamin B12",
        "E. coli vaccine",
        "PCV2 vaccine",
        "oxytetracycline long-acting",
        "penicillin G procaine",
        "a vaccine against erysipelas",
      })
  void a_name_may_have_figures(String active) {
    assertThat(note("treated", "weaners", "--active", active, "--on", "2027-07-10").exit())
        .isZero();
  }

  private String treated(String... more) {
    List<String> words = new ArrayList<>(List.of("treated", "weaners", "--on", "2027-07-05"));
    words.addAll(List.of(more));
    Run run = note(words.toArray(String[]::new));
    assertThat(run.exit()).as(run.err()).isZero();
    return run.words();
  }

  /** On no label for pigs: 18 days by injection, 5 in feed (21 CFR 522.1192, 558.300 [read]). */
  @Test
  void nought_days_are_doubted_and_the_longer_days_of_the_table_count() {
    assertThat(treated("--active=ivermectin", "--route=injection", "--withdrawal=0 days"))
        .contains("may go to slaughter from 24 July 2027")
        .contains("Read the pack again: labels print 18 days by injection, 5 days in feed.")
        .contains("18 days are counted");
    // a vaccine may have none: the day after, for safety [judgement]
    assertThat(treated("--active=erysipelas vaccine", "--withdrawal=0 days"))
        .contains("from 6 July 2027")
        .contains("Read again what the label says of pig meat")
        .contains("Something else they were given holds them until 24 July 2027");
  }

  @Test
  void no_day_is_told_while_the_end_of_anything_is_not_known() {
    assertThat(treated()).contains("only the vet can give the days");
    assertThat(treated("--active=ivermectin", "--route=injection", "--withdrawal=18 days"))
        .contains("the end of something else they were given is not known")
        .doesNotContain("24 July", "may go to slaughter from");
  }

  @Test
  void one_pig_alone_is_told_apart_from_the_others() {
    assertThat(
            treated("--pig=12", "--active=ivermectin", "--route=injection", "--withdrawal=18 days"))
        .contains("pig 12 of weaners treated with ivermectin")
        .contains("pig 12 of weaners may go to slaughter from 24 July 2027")
        .contains("the others any day", "only if every tag can be read");
  }

  @Test
  void the_days_of_a_vet_are_counted_only_as_days() {
    Run run = note("vet-said", "weaners", "tylosin, withdrawal 14 days", "--on", "2027-07-05");
    assertThat(run.words()).contains("Words are not counted", "--vet-withdrawal");
    assertThat(note("vet-said", "weaners", "rest and water", "--on", "2027-07-05").out())
        .doesNotContain("--vet-withdrawal");
  }

  @Test
  void an_amount_that_the_vet_gave_is_kept_and_not_repeated() {
    Run run = note("vet-said", "weaners", "3 ml every morning", "--on", "2027-07-05");
    assertThat(run.out()).doesNotContain("3 ml");
    assertThat(file).content().contains("note: 3 ml every morning");
  }

  @Test
  void a_shorter_correction_does_not_replace_longer_days() {
    treated("--active=tylosin", "--route=injection", "--withdrawal=140 days");
    assertThat(treated("--active=tylosin", "--route=injection", "--withdrawal=14 days"))
        .contains("Longer days stand for it", "140", "change them in the file");
  }

  @Test
  void a_misspelt_name_is_asked_about() {
    assertThat(treated("--active=ivermektin", "--route=injection", "--withdrawal=18 days"))
        .contains("Did you mean ivermectin?");
    assertThat(treated("--active=somethingelse", "--withdrawal=18 days"))
        .contains("the days noted could not be tested");
  }

  @Test
  void what_the_seller_gave_may_be_noted_and_nothing_of_pigs_that_have_gone() throws IOException {
    assertThat(note("treated", "weaners", "--active=tylosin", "--on=2027-04-28").exit()).isZero();
    Files.writeString(file, PIGS.replace("trained: no", "slaughterOn: 2027-07-01"));
    assertThat(note("treated", "weaners", "--active=tylosin", "--on=2027-07-02").err())
        .contains("gone since 1 July 2027", "change slaughterOn");
  }

  @Test
  void a_file_that_is_wrong_already_or_not_there_is_told_as_check_does() throws IOException {
    Files.writeString(file, PIGS + "pigz: 1\n");
    Run run = note("died", "weaners");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("pigs.yaml:18:1: pigz");
    Files.delete(file);
    assertThat(note("died", "weaners").err()).contains("there is no such file");
  }

  /** Girth squared times length over 400 (tape-rule [read]): 40 by 45 in are 180 lb, WT04. */
  @Test
  void a_tape_may_be_noted_by_its_girth_and_length() {
    Run run =
        note("taped", "weaners", "--girth", "40 in", "--length", "45 in", "--on", "2027-07-05");
    assertThat(run.err()).isEmpty();
    isAdded(
        "  - on: 2027-07-05\n    pigs: weaners\n    did: taped\n    girth: 40 in\n    length: 45 in\n");
    assertThat(run.words()).contains("weaners taped, 180 lb each");
    isRefusedAfter(note("taped", "weaners", "120 lb", "--girth", "40 in"), "not both");
  }

  private void isRefusedAfter(Run run, String why) {
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains(why);
  }

  /** Off the label no date is told before the vet has given the days. */
  @Test
  void a_treatment_off_the_label_is_noted_as_one() {
    Run run =
        note(
            "treated",
            "weaners",
            "--active=ivermectin",
            "--route=injection",
            "--withdrawal=18 days",
            "--off-label",
            "--vet-withdrawal=40 days",
            "--on=2027-07-05");
    assertThat(run.err()).isEmpty();
    assertThat(file).content().contains("offLabel: yes", "vetWithdrawal: 40 days");
  }
}
