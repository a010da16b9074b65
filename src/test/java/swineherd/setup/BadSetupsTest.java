package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swineherd.rulebook.Rulebook;

/**
 * One file for each way a setup can be bad, {@code src/test/resources/bad}, and every line that is
 * told of it. What the formats allow is in YAML 1.1 and in RFC 8259 [memory]; the wording is ours.
 */
class BadSetupsTest {
  private static final Path BAD = Path.of("src/test/resources/bad");
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  /** The lines told of each file, after its name; a file that is accepted has none. */
  private static final String EXPECTED =
      """
      alias-as-key.yaml:2:3: this is not YAML: a name before a colon must be a plain word
      alias-bomb.yaml:2:13: keeper[0]: a reference to another place (*); write it out
      binary.yaml: is not text in UTF-8; save it as UTF-8
      cut-short.json:1:49: this is not JSON: Unexpected end-of-input: was expecting closing quote for a string value
      deep.json:1:22: pens[0][0][0][0][0][0][0][0][0][0][0][0]: the file is nested too deep or too long
      deep.yaml:1:19: pens[0][0][0][0][0][0][0][0][0][0][0][0]: the file is nested too deep or too long
      duplicated-name.yaml:3:11: pens[1].name: "lot" is also the name of pens[0]; give each its own name
      duplicated-name.yaml:7:11: pigs[1].name: "reds" is also the name of pigs[0]; give each its own name
      empty.yaml: the file is empty; see scenarios/ for examples
      escape-codes.yaml:1:7: name: holds a character that cannot be shown; plain text
      escape-codes.yaml:2:1:  [2Jpens: is not something that can be answered; one of: {top}
      escape-codes.yaml:3:18: place.country: holds a character that cannot be shown; plain text
      impossible-value.yaml:1:19: place.latitude: "91 N" is not possible; from -60 to 70 is
      impossible-value.yaml:1:39: place.coldestMonth: "-80 C" is not possible; from -50 to 25 C (-58 to 77 F) is
      impossible-value.yaml:3:11: pens[0].area: "-20 x 30 ft" is not possible: a side is more than nothing; write it like 400 m2, 20 x 40 ft or 0.5 ac
      impossible-value.yaml:4:37: pens[0].water.drinkers: "-1" is not possible; from 0 to 50 is
      impossible-value.yaml:4:47: pens[0].water.flow: "400 L/min" is not possible; from 0 to 30 L/min is
      impossible-value.yaml:6:12: pigs[0].count: "0" is not possible; from 1 to 500 is
      impossible-value.yaml:7:20: pigs[0].arrivalWeight: "5000 lb" is not possible; from 1 to 320 kg (2.2 to 705 lb) is
      latin-1.yaml: is not text in UTF-8; save it as UTF-8
      list-as-key.yaml:1:4: this is not YAML: a name before a colon must be a plain word
      list-at-top.json:1:1: a setup is a list of named answers
      list-at-top.yaml:1:1: a setup is a list of named answers
      long-string.yaml:1:7: name: is longer than 200 characters; a shorter answer
      long-string.yaml:3:11: pens[0].area: is longer than 200 characters; a shorter answer
      long-string.yaml:4:1: {b80}...: is not something that can be answered; one of: {top}
      no-such-day.yaml:1:10: checkOn: there is no 2027-02-29; write it like 2027-04-24 or 24 April 2027
      no-such-day.yaml:2:39: place.firstHardFrost: there is no 31 November; write it like 20 October or Oct 20
      no-such-day.yaml:4:12: pigs[0].born: there is no 31 June 2027; write it like 2027-04-24 or 24 April 2027
      no-such-day.yaml:4:35: pigs[0].arrives: there is no 2027-13-01; write it like 2027-04-24 or 24 April 2027
      not-json.json:3:32: this is not JSON: Unexpected character ('}' (code 125)): was expecting double-quote to start field name
      not-yaml.yaml:5:1: this is not YAML: found unexpected end of stream, while scanning a quoted scalar from line 3
      nul.json:1:10: name: holds a character that cannot be shown; plain text
      nul.yaml:1:12: the character U+0000 does not belong in text; save it as text in UTF-8
      number-keys.yaml:1:1: 1: is not something that can be answered; one of: {top}
      number-keys.yaml:2:1: 2.5: is not something that can be answered; one of: {top}
      number-keys.yaml:3:1: true: is not something that can be answered; one of: {top}
      number-keys.yaml:5:5: pens[0].3: is not something that can be answered; one of: {pen}
      only-comments.yaml: the file is empty; see scenarios/ for examples
      slaughter-before-arrival.yaml:4:14: pigs[0].arrives: 10 August 2027 is after the slaughter, 1 March 2027
      tabs.yaml:2:1: this is not YAML: a tab cannot begin a line; indent with spaces
      tags.yaml:1:7: name: takes one answer; write it on the same line
      tags.yaml:2:1: pigs: is a list, even for one; begin each with "- name: ..."
      two-documents.yaml:3:1: a second document begins here; one setup for each file
      undefined-pen.yaml:7:10: pigs[0].pen: no pen is called "hillsdie"; one of: hillside, yard
      undefined-pen.yaml:9:12: signs[0].pigs: no group is called "blues"; one of: reds
      unknown-key.yaml:2:3: place.contry: is not something that can be answered; did you mean country?
      unknown-key.yaml:5:5: pens[0].feeder: is not something that can be answered; one of: {pen}
      unknown-key.yaml:7:5: pigs[0].cuont: is not something that can be answered; did you mean count?
      utf-16.yaml: is not text in UTF-8; save it as UTF-8
      utf-16be-unmarked.yaml:1:1: the character U+0000 does not belong in text; save it as text in UTF-8
      written-twice.yaml:3:1: name: is written twice; first in line 1; keep one of them
      wrong-shape.yaml:1:1: pens: is a list, even for one; begin each with "- name: ..."
      wrong-shape.yaml:2:1: pigs: is a list, even for one; begin each with "- name: ..."
      wrong-shape.yaml:3:1: place: is a set of named answers, not a list or a word; one of: {place}
      wrong-shape.yaml:4:1: feed: is a set of named answers, not a list or a word; one of: {feed}
      wrong-shape.yaml:5:7: name: takes one answer; write it on the same line
      wrong-unit.yaml:2:11: pens[0].area: "12 kg" has the unit "kg", which does not fit; write it like 400 m2, 20 x 40 ft or 0.5 ac
      wrong-unit.yaml:3:41: pens[0].fence.endVoltage: "4 joules" has the unit "joules", which does not fit; write it like 4000 V or 4 kV
      wrong-unit.yaml:5:20: pigs[0].arrivalWeight: "20" has no unit; write it like 14 kg or 30 lb
      wrong-unit.yaml:6:19: pigs[0].ageOnArrival: "8 pounds" has the unit "pounds", which does not fit; write it like 7 days, 6 weeks or 2 years
      """
          .replace("{b80}", "b".repeat(80))
          .replace("{top}", names("", ""))
          .replace("{pen}", names("pens", "."))
          .replace("{place}", names("place", "."))
          .replace("{feed}", names("feed", "."));

  /**
   * Names that may stand in a section, from the catalogue, so that a new question changes no line.
   */
  private static String names(String section, String dot) {
    String prefix = section + dot;
    return Rulebook.questions().keySet().stream()
        .filter(key -> key.startsWith(prefix))
        .map(key -> key.substring(prefix.length()).split("\\.")[0])
        .collect(Collectors.toCollection(TreeSet::new))
        .stream()
        .collect(Collectors.joining(", "));
  }

  static List<Path> files() throws IOException {
    try (Stream<Path> files = Files.list(BAD)) {
      return files.sorted().toList();
    }
  }

  private static Map<String, List<String>> expected() {
    return EXPECTED
        .lines()
        .collect(
            Collectors.groupingBy(
                line -> line.substring(0, line.indexOf(':')), TreeMap::new, Collectors.toList()));
  }

  private static List<String> problems(Path file) {
    try {
      SetupReader.read(file, TODAY);
      return List.of();
    } catch (BadSetupException e) {
      String name = String.valueOf(file.getFileName());
      return e.problems().stream().map(p -> p.at(name)).toList();
    }
  }

  @ParameterizedTest
  @MethodSource("files")
  void every_problem_is_told_at_its_place_with_what_is_accepted(Path file) {
    String name = String.valueOf(file.getFileName());
    assertThat(problems(file)).containsExactlyElementsOf(expected().getOrDefault(name, List.of()));
  }

  @Test
  void what_only_looks_bad_is_accepted() throws IOException {
    assertThat(files())
        .extracting(f -> String.valueOf(f.getFileName()))
        .filteredOn(name -> !expected().containsKey(name))
        .containsExactly("bom.yaml", "crlf.yaml", "other-scripts.yaml");
    Setup marked = SetupReader.read(BAD.resolve("bom.yaml"), TODAY).setup();
    Setup windows = SetupReader.read(BAD.resolve("crlf.yaml"), TODAY).setup();
    assertThat(marked).isEqualTo(windows);
    assertThat(marked.name()).isEqualTo("Alder Bottom");
    Setup other = SetupReader.read(BAD.resolve("other-scripts.yaml"), TODAY).setup();
    assertThat(other.name()).isEqualTo("Käthe’s \uD83D\uDC16 農場");
    assertThat(other.pigs().get(0).name()).isEqualTo("поросята");
    assertThat(other.pigs().get(0).pen()).isEqualTo("Übermüller–Æ");
  }

  @Test
  void a_file_just_as_long_as_a_setup_can_be_is_read_and_one_byte_more_is_not(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("huge.yaml");
    String comment = "# " + "a".repeat(SetupReader.MAX_BYTES - 11) + "\n";
    Files.writeString(file, comment + "name: a\n", StandardCharsets.UTF_8);
    assertThat(Files.size(file)).isEqualTo(SetupReader.MAX_BYTES);
    assertThat(problems(file)).isEmpty();
    Files.writeString(file, "#" + comment + "name: a\n", StandardCharsets.UTF_8);
    assertThat(problems(file))
        .containsExactly("huge.yaml: is longer than a setup can be; at most 1 MiB");
  }

  @Test
  void a_note_over_several_lines_becomes_one() {
    SetupFile file =
        SetupReader.read("t.yaml", "diary:\n  - note: |\n      # fed\n\n      - late\n", TODAY);
    assertThat(file.setup().diary().get(0).note()).isEqualTo("# fed - late");
    assertThat(file.answers().get("diary[0].note").said()).isEqualTo("# fed - late");
  }

  @Test
  void the_exception_holds_all_lines_as_its_message() {
    BadSetupException e =
        catchThrowableOfType(
            BadSetupException.class, () -> SetupReader.read("t", "a: 1\nb: 2\n", TODAY));
    assertThat(e.getMessage().lines()).hasSize(2).allMatch(l -> l.startsWith("t:"));
    assertThat(e.file()).isEqualTo("t");
  }
}
