package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swineherd.setup.Differences.Difference;

class DifferencesTest {
  private static final LocalDate MAY = LocalDate.of(2027, 5, 1);

  private static SetupFile read(String text, LocalDate day) {
    return SetupReader.read("p.yaml", text, day);
  }

  @Test
  void pens_groups_signs_and_entries_are_the_same_wherever_they_stand() {
    SetupFile a =
        read("pens: [{name: a, area: 9 m2}, {name: b}]\ndiary: [{note: x}, {note: y}]\n", MAY);
    SetupFile b =
        read("diary: [{note: y}, {note: x}]\npens: [{name: b}, {name: a, area: 9 m2}]\n", MAY);
    assertThat(Differences.between(a, b).all()).isEmpty();
  }

  @Test
  void each_answer_is_one_and_so_is_a_whole_pen_or_entry() {
    SetupFile a = read("pens: [{name: a, area: 9 m2, slope: 2 %}]\nname: x\n", MAY);
    SetupFile b =
        read(
            """
            pens: [{name: new, area: 5 m2}, {name: a, area: 12 m2}]
            name: x
            diary: [{on: 2027-05-02, did: fed, note: hay}]
            """,
            MAY.plusDays(1));
    List<Difference> all = Differences.between(a, b).all();
    assertThat(all).hasSize(5);
    assertThat(all.get(0).isTime()).isTrue();
    assertThat(all)
        .contains(new Difference("pens[1].area", "area of the pen", "9 m2", "12 m2"))
        .contains(new Difference("pens[0]", "pen", null, "new, 5 m2"))
        .contains(new Difference("diary[0]", "diary", null, "2027-05-02, fed, hay"));
  }

  @Test
  void with_none_it_is_the_earlier_setup_and_with_all_the_later_one() throws IOException {
    List<SetupFile> all;
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      all =
          files
              .filter(f -> f.toString().matches(".*[.](yaml|json)"))
              .sorted()
              .map(f -> SetupReader.read(f, MAY))
              .toList();
    }
    for (SetupFile earlier : all) {
      for (SetupFile later : all) {
        Differences between = Differences.between(earlier, later);
        assertThat(between.with(List.of()).setup()).isEqualTo(earlier.setup());
        assertThat(between.with(between.all()).setup()).isEqualTo(later.setup());
      }
    }
  }
}
