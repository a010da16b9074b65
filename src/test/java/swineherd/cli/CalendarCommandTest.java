package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.cli.Runs.Run;

/** What becomes a calendar, where it goes, and what is said beside it. */
class CalendarCommandTest {
  @TempDir Path folder;

  @Test
  void the_calendar_holds_the_days_of_the_winter() {
    Run run = run("calendar", "scenarios/totara-gully.yaml");
    assertThat(run.exit()).isZero();
    assertThat(run.out())
        .startsWith("BEGIN:VCALENDAR\r\n")
        .contains("DTSTART;VALUE=DATE:20270428\r\n", "DTSTART;VALUE=DATE:20270512\r\n");
    assertThat(run.err()).containsPattern("Not in it, for want of a day: \\d+ of the checklist");
  }

  @Test
  void the_calendar_goes_into_a_file() throws IOException {
    Path to = folder.resolve("pigs.ics");
    Run run = run("calendar", "scenarios/alder-bottom.yaml", "--out", to.toString());
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains(" days written to " + to);
    assertThat(Files.readString(to)).startsWith("BEGIN:VCALENDAR").contains("BEGIN:VALARM");
  }

  @Test
  void a_calendar_that_cannot_be_written_is_told_in_a_line() {
    String to = folder.resolve("no/pigs.ics").toString();
    Run run = run("calendar", "scenarios/alder-bottom.yaml", "--out", to);
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("cannot be written", "no such folder").hasLineCount(1);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void what_is_urgent_is_no_matter_for_a_calendar() throws IOException {
    Path file =
        Files.writeString(
            folder.resolve("pigs.yaml"),
            """
            checkOn: 2027-07-01
            pens: [{name: yard}]
            pigs: [{name: reds, pen: yard, count: 3, arrives: 2027-06-05, arrivalWeight: 16 kg}]
            signs: [{pigs: reds, sign: cannot-rise, since: 2027-06-30}]
            """);
    Run run = run("calendar", file.toString());
    assertThat(run.exit()).isZero();
    assertThat(run.err()).contains("Something is urgent", "call now", "for want of a day");
  }
}
