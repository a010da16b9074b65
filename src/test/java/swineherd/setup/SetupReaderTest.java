package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.units.UnitSystem;

class SetupReaderTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  @TempDir Path folder;

  private static SetupFile read(String text) {
    return SetupReader.read("test.yaml", text, TODAY);
  }

  private static List<String> problems(String text) {
    BadSetupException e = catchThrowableOfType(BadSetupException.class, () -> read(text));
    assertThat(e).as("a setup that should be refused").isNotNull();
    return e.problems().stream().map(p -> p.at("t")).toList();
  }

  @Test
  void a_setup_is_held_in_SI_with_the_words_kept() {
    SetupFile file =
        read(
            """
            name: Alder Bottom
            checkOn: 1 March 2027
            place: {country: usa, firstHardFrost: Oct 20, freezes: yes, latitude: 45 N}
            pens:
              - name: back lot
                area: 20 x 40 ft
                fence: {kind: electric, strands: 2, wireHeights: [8 in, 18 in]}
            pigs:
              - count: 3
                arrivalWeight: 40 lb
                arrives: April 24, 2027
                sex: males
                males: barrows
                trained: unknown
            """);
    Setup setup = file.setup();
    assertThat(setup.checkOn()).isEqualTo("2027-03-01");
    assertThat(setup.units()).isEqualTo(UnitSystem.US);
    assertThat(setup.place().country()).isEqualTo(Country.UNITED_STATES);
    assertThat(setup.place().firstHardFrost()).isEqualTo(MonthDay.of(10, 20));
    assertThat(setup.pens().get(0).area()).isEqualTo(74.322432);
    assertThat(setup.pens().get(0).fence().wireHeights()).containsExactly(0.2032, 0.4572);
    Group group = setup.pigs().get(0);
    assertThat(group.name()).isEqualTo("group 1");
    assertThat(group.pen()).as("the only pen there is").isEqualTo("back lot");
    assertThat(group.arrivalWeight()).isCloseTo(18.1436948, within(1e-9));
    assertThat(group.males()).isEqualTo(Group.Males.CASTRATED);
    assertThat(group.trained()).isNull();
    assertThat(file.answers().get("pigs[0].arrivalWeight").said()).isEqualTo("40 lb");
    assertThat(file.answers().get("pigs[0].arrivalWeight").line()).isEqualTo(10);
    assertThat(file.answers()).doesNotContainKey("pigs[0].trained");
    assertThat(file.unusual()).isEmpty();
  }

  @Test
  void the_same_setup_may_be_JSON() {
    Setup setup =
        SetupReader.read("a.json", "{\"pigs\":[{\"count\":2,\"born\":\"2027-02-01\"}]}", TODAY)
            .setup();
    assertThat(setup.pigs().get(0).count()).isEqualTo(2);
    assertThat(setup.checkOn()).isEqualTo(TODAY);
  }

  @Test
  void everything_wrong_is_told_together_in_the_order_of_the_lines() {
    assertThat(
            problems(
                """
                place: {country: Atlantis}
                pens:
                  - name: lot
                    areea: 20 x 40 ft
                    fence: {height: -3 ft}
                pigs:
                  - arrivalWeight: 5000 lb
                    count: 2.5
                    pen: yard
                    arrives: 10 August 2026
                    slaughterOn: 1 March 2026
                """))
        .satisfiesExactly(
            p -> assertThat(p).startsWith("t:1:18: place.country: \"Atlantis\" is not one"),
            p -> assertThat(p).startsWith("t:4:5: pens[0].areea").contains("did you mean area?"),
            p -> assertThat(p).startsWith("t:5:21: pens[0].fence.height").contains("0.05 to 4 m"),
            p ->
                assertThat(p)
                    .startsWith("t:7:20: pigs[0].arrivalWeight: \"5000 lb\" is not possible")
                    .contains("1 to 320 kg (2.2 to 705 lb)"),
            p -> assertThat(p).startsWith("t:8:12: pigs[0].count").contains("not a whole number"),
            p -> assertThat(p).startsWith("t:9:10: pigs[0].pen: no pen is called \"yard\""),
            p ->
                assertThat(p)
                    .startsWith("t:10:14: pigs[0].arrives: 10 August 2026 is after the slaughter"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pens: [{area: 400}] | has no unit; write it like 400 m2, 20 x 40 ft or 0.5 ac",
        "pens: [{area: 12 kg}] | has the unit \"kg\", which does not fit",
        "pens: [{area: -20 x 30 ft}] | is not possible",
        "pens: [{name: a}, {name: a}] | is also the name of pens[0]",
        "pens: {name: a} | is a list, even for one",
        "pens: [a] | is not a set of named answers",
        "pigs: [{born: 2027-02-30}] | there is no 2027-02-30",
        "pigs: [{born: 29 February 2027}] | there is no 29 February 2027",
        "pigs: [{born: 03/04/2027}] | could be two different days",
        "pigs: [{born: 2027-04-01, arrives: 2027-03-02}] | is after the arrival",
        "pigs: [{arrivalWeight: 40 kg, targetWeight: 30 kg}] | is less than the weight on arrival",
        "pigs: [{born: 2027-01-01, arrives: 2027-03-01, ageOnArrival: 8 months}] | does not agree",
        "pigs: [{count: many}] | is not a number",
        "pigs: [{count: 0}] | is not possible",
        "pigs: [{trained: perhaps}] | yes, no or unknown",
        "pigs: [{males: castrate}] | did you mean castrated?",
        "pigs: [{sex: gilts, males: entire}] | does not go with pigs[0].sex: gilts",
        "pigs: [{count: [1, 2]}] | takes one answer",
        "pigs: [{pen: lot}] | there are no pens in the file",
        "signs: [{pigs: reds, sign: panting}] | no group is called \"reds\"",
        "diary: [{on: 2027-03-02, did: weighed}] | is after the day of the check",
        "place: {latitude: 95 N} | is not possible",
        "place: {hardinessZone: 14c} | is not a zone",
        "pens: [{fence: {kind: electric, strands: 2, wireHeights: [8 in]}}] | 1 heights for 2 strands",
        "pens: [{fence: {kind: solid, strands: 2}}] | does not go with pens[0].fence.kind: solid",
        "name: a, name: b | ",
        "just words | a setup is a list of named answers",
      })
  void each_kind_of_bad_answer_says_what_is_accepted(String text, String says) {
    assertThat(problems(text)).isNotEmpty().allSatisfy(p -> assertThat(p).startsWith("t:1:"));
    if (says != null) {
      assertThat(problems(text)).anySatisfy(p -> assertThat(p).contains(says));
    }
  }

  @Test
  void a_name_written_twice_is_told_with_both_lines() {
    assertThat(problems("name: a\nplace: {}\nname: b\n"))
        .containsExactly("t:3:1: name: is written twice; first in line 1; keep one of them");
  }

  @Test
  void broken_YAML_has_its_line() {
    assertThat(problems("pens:\n  - name: a\n   area: [1\n"))
        .singleElement()
        .asString()
        .startsWith("t:3:")
        .contains("this is not YAML");
  }

  @ParameterizedTest
  @CsvSource({"''", "'# nothing yet'", "'---'", "'   '"})
  void an_empty_file_is_refused(String text) {
    assertThat(problems(text)).singleElement().asString().contains("the file is empty");
  }

  @Test
  void references_that_could_explode_are_refused_where_they_stand() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [lol]\n");
    for (int i = 1; i < 30; i++) {
      bomb.append("a%d: &a%d [*a%d, *a%d]%n".formatted(i, i, i - 1, i - 1));
    }
    assertThat(problems(bomb.toString()))
        .anySatisfy(p -> assertThat(p).startsWith("t:2:").contains("a reference"));
  }

  @Test
  void deep_nesting_is_refused() {
    assertThat(problems("a: " + "[".repeat(5000) + "]".repeat(5000)))
        .anySatisfy(p -> assertThat(p).contains("nested too deep"));
  }

  @Test
  void a_second_document_is_refused() {
    assertThat(problems("name: a\n---\nname: b\n"))
        .singleElement()
        .asString()
        .contains("second document");
  }

  @Test
  void what_is_unusual_is_asked_about_and_not_refused() {
    SetupFile file = read("pigs: [{count: 1, arrivalWeight: 200 kg}]");
    assertThat(file.unusual())
        .extracting(Problem::path)
        .containsExactlyInAnyOrder("pigs[0].count", "pigs[0].arrivalWeight");
  }

  @Test
  void files_that_are_none_are_told_so() throws IOException {
    assertThat(whole(folder)).contains("is a folder");
    assertThat(whole(folder.resolve("no.yaml"))).contains("there is no such file");
    Path latin = folder.resolve("latin.yaml");
    Files.write(latin, "name: Käthe".getBytes(StandardCharsets.ISO_8859_1));
    assertThat(whole(latin)).contains("not text in UTF-8");
    Path huge = folder.resolve("huge.yaml");
    Files.writeString(huge, "name: " + "a".repeat(SetupReader.MAX_BYTES));
    assertThat(whole(huge)).contains("longer than a setup can be");
  }

  private static String whole(Path path) {
    return catchThrowableOfType(BadSetupException.class, () -> SetupReader.read(path, TODAY))
        .getMessage();
  }
}
