package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.setup.CheckJournal.Check;

class CheckJournalTest {
  private static final List<Check> CHECKS =
      List.of(
          new Check(LocalDate.of(2027, 3, 1), "name: Tor\n# Grüße \uD83D\uDC16\n"),
          new Check(LocalDate.of(2027, 5, 1), "name: \"Tor\"\r\n"),
          new Check(LocalDate.of(2028, 2, 29), "pigs:\n  - count: 2\n"));

  @TempDir Path folder;
  private Path setup;

  @BeforeEach
  void file() throws IOException {
    setup = Files.writeString(folder.resolve("pigs.yaml"), "name: Tor\n");
  }

  private void recordAll() throws IOException {
    for (Check check : CHECKS) {
      CheckJournal.of(setup).record(check);
    }
  }

  @Test
  void what_is_recorded_comes_back_as_it_was_and_in_order() throws IOException {
    assertThat(CheckJournal.of(setup).checks()).isEmpty();
    recordAll();
    CheckJournal journal = CheckJournal.of(setup);
    assertThat(journal.checks()).isEqualTo(CHECKS);
    assertThat(journal.damaged()).isZero();
    assertThat(journal.file()).hasFileName("pigs.yaml.checks");
    assertThat(setup).hasContent("name: Tor");
  }

  @Test
  void the_same_check_is_not_recorded_twice_in_a_row() throws IOException {
    recordAll();
    CheckJournal.of(setup).record(CHECKS.get(2));
    assertThat(CheckJournal.of(setup).checks()).hasSize(3);
    CheckJournal.of(setup).record(CHECKS.get(0));
    assertThat(CheckJournal.of(setup).checks()).hasSize(4);
  }

  @Test
  void the_last_check_is_that_of_the_latest_day_not_after_a_day() throws IOException {
    recordAll();
    CheckJournal journal = CheckJournal.of(setup);
    assertThat(journal.lastUntil(LocalDate.of(2027, 2, 28))).isEmpty();
    assertThat(journal.lastUntil(LocalDate.of(2027, 12, 31))).contains(CHECKS.get(1));
    assertThat(journal.lastUntil(LocalDate.of(2028, 2, 29))).contains(CHECKS.get(2));
  }

  @Test
  void cut_short_at_any_byte_it_keeps_every_whole_check_and_takes_the_next() throws IOException {
    recordAll();
    Path file = CheckJournal.of(setup).file();
    byte[] whole = Files.readAllBytes(file);
    int[] ends = IntStream.range(0, whole.length).filter(i -> whole[i] == '\n').toArray();
    Check next = new Check(LocalDate.of(2028, 3, 1), "name: Tor\n");
    for (int length = 0; length <= whole.length; length++) {
      int at = length;
      Files.write(file, Arrays.copyOf(whole, length));
      // a line is whole with its last byte, even if its line end is lost
      int kept = (int) Arrays.stream(ends).filter(end -> end <= at).count();
      assertThat(CheckJournal.of(setup).checks())
          .as("cut after %d bytes", length)
          .isEqualTo(CHECKS.subList(0, kept));
      CheckJournal.of(setup).record(next);
      CheckJournal after = CheckJournal.of(setup);
      assertThat(after.checks()).hasSize(kept + 1).endsWith(next);
      assertThat(Arrays.copyOf(Files.readAllBytes(file), length))
          .isEqualTo(Arrays.copyOf(whole, length));
    }
  }

  @Test
  void a_line_that_somebody_changed_is_passed_over() throws IOException {
    recordAll();
    Path file = CheckJournal.of(setup).file();
    Files.writeString(file, Files.readString(file).replace("2027-05-01", "2027-05-02"));
    CheckJournal journal = CheckJournal.of(setup);
    assertThat(journal.checks()).containsExactly(CHECKS.get(0), CHECKS.get(2));
    assertThat(journal.damaged()).isOne();
  }

  @Test
  void it_stands_beside_the_file_a_link_leads_to() throws IOException {
    Path other = Files.createDirectory(folder.resolve("other"));
    Path link = Files.createSymbolicLink(other.resolve("link.yaml"), setup);
    CheckJournal.of(link).record(CHECKS.get(0));
    assertThat(CheckJournal.of(setup).checks()).containsExactly(CHECKS.get(0));
  }
}
