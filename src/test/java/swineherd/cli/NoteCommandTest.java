package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
        .contains("none of them may go to slaughter");
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
        "treated weaners --on 2027-04-20 | is before weaners arrive",
      })
  void what_cannot_be_right_is_told_and_not_written(String typed, String why) {
    Run run =
        note((typed.contains("--on") ? typed : typed + " --on 2027-07-10").strip().split(" "));
    isRefused(run, why);
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
