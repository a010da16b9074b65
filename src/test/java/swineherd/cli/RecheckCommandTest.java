package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.cli.Runs.Run;
import swineherd.setup.SetupText;

/** A batch over its year, with the clock moved by the day of the check in the file. */
class RecheckCommandTest {
  @TempDir Path folder;

  private Path copy(String scenario) throws IOException {
    return Files.copy(Path.of("scenarios", scenario), folder.resolve(scenario));
  }

  private static void change(Path file, String path, String said) throws IOException {
    Files.writeString(
        file, SetupText.of(file.toString(), Files.readString(file)).set(path, said).text());
  }

  private static Run recheck(Path file, String... more) {
    return Runs.run(
        Stream.concat(Stream.of("recheck", file.toString()), Stream.of(more))
            .toArray(String[]::new));
  }

  private static Run note(Path file, String words) {
    return Runs.run(
        Stream.concat(Stream.of("note", file.toString()), Stream.of(words.split(" ")))
            .toArray(String[]::new));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void the_first_check_is_json_where_json_was_asked_for() throws IOException {
    assertThat(recheck(copy("alder-bottom.yaml"), "--format", "json").out().strip())
        .isEqualTo("{\"on\": \"2027-03-01\", \"recorded\": true, \"firstCheck\": true}");
  }

  @Test
  void from_the_plan_to_the_cold_season_only_news_is_told_with_its_cause() throws IOException {
    Path file = copy("alder-bottom.yaml");
    change(file, "pens[1].name", "back field");
    change(file, "pens[1].fence.kind", "electric");
    change(file, "pens[1].area", "40 x 40 m");
    Run first = recheck(file);
    assertThat(first.exit()).isZero();
    assertThat(first.out()).startsWith("No check of it was recorded yet.");
    assertThat(recheck(file).words()).contains("Nothing has changed");

    // an answer came; it alone is the cause
    change(file, "pigs[0].males", "castrated");
    assertThat(recheck(file).words())
        .contains("Alder Bottom: 1 March 2027, since the check of 1 March 2027.")
        .contains(
            "Ask the breeder in writing whether the males of weaners are castrated. Since the males: castrated.");

    // they came
    change(file, "checkOn", "2027-04-26");
    Run came = recheck(file);
    assertThat(came.words())
        .contains("26 April 2027, since the check of 1 March 2027")
        .contains("Have a crate ready for weaners before you fetch them. Since time has passed.")
        .contains("Now due now. It was: by 17 April 2027, before the pigs come.");

    // weighed, far below what was to be expected
    change(file, "checkOn", "2027-06-26");
    assertThat(note(file, "weighed weaners 64 lb --on 2027-06-25").exit()).isZero();
    assertThat(recheck(file).words())
        .contains("Find out why weaners grow so slowly.")
        .contains("Since diary: 2027-06-25, weaners, weighed, 64 lb.");

    // what a move would bring is told, and neither written nor recorded
    String before = Files.readString(file);
    Run supposed = recheck(file, "--move", "back field", "--on", "2027-07-01");
    assertThat(supposed.exit()).as(supposed.err()).isZero();
    assertThat(supposed.words())
        .contains("if weaners move to back field on 1 July 2027. Nothing is written down.")
        .contains("Walk the way to back field first")
        .contains("Say how the pigs in back field drink.");
    assertThat(file).hasContent(before);
    assertThat(recheck(file).words()).contains("Nothing has changed");

    // moved: the old pen is theirs no more, and its items are gone
    change(file, "checkOn", "2027-07-02");
    assertThat(note(file, "moved weaners back field --on 2027-07-01").exit()).isZero();
    assertThat(recheck(file).words())
        .contains("Since diary: 2027-07-01, weaners, moved, back field.");

    // winter is near
    change(file, "checkOn", "2027-11-01");
    Run winter = recheck(file);
    assertThat(winter.exit()).isZero();
    assertThat(winter.words()).contains("1 November 2027, since the check of 2 July 2027");
    assertThat(names(folder)).containsExactly("alder-bottom.yaml", "alder-bottom.yaml.checks");
    assertThat(Files.readString(file)).contains("# nothing solid behind it", "# the advertisement");
  }

  @Test
  void in_the_south_the_sun_is_strong_in_december() throws IOException {
    Path file = copy("alder-bottom.yaml");
    change(file, "place.latitude", "37 S");
    change(file, "place.country", "australia");
    change(file, "pigs[0].arrives", "2027-07-01");
    change(file, "checkOn", "2027-07-05");
    recheck(file);
    change(file, "checkOn", "2027-12-01");
    assertThat(recheck(file).words()).contains("New").contains("shade in hillside");
  }

  @Test
  void leap_day_and_years_end_are_days_like_others() throws IOException {
    Path file = copy("bramble-shaw.yaml");
    for (String day :
        List.of("2027-12-31", "2028-01-01", "2028-02-28", "2028-02-29", "2028-03-01")) {
      change(file, "checkOn", day);
      Run run = recheck(file);
      assertThat(run.exit()).as(run.err()).isZero();
      assertThat(Files.readString(folder.resolve("bramble-shaw.yaml.checks"))).contains("\"" + day);
    }
    // so heavy that no curve goes so far
    assertThat(note(file, "weighed gilts 300 lb --on 2028-02-29").exit()).isZero();
    assertThat(note(file, "weighed gilts 300 lb --on 2027-02-29").err()).contains("there is no");
  }

  @Test
  void two_files_are_compared_and_nothing_is_recorded() throws IOException {
    Path earlier = copy("alder-bottom.yaml");
    Path later = folder.resolve("later.yaml");
    Files.copy(earlier, later);
    change(later, "pens[0].shade.kind", "cloth");
    change(later, "pens[0].shade.area", "100 sq ft");
    Run run = recheck(earlier, later.toString());
    assertThat(run.words())
        .contains("Put up shade in hillside")
        .contains("Since shade: cloth, was none")
        .doesNotContain("time has passed");
    assertThat(names(folder)).containsExactly("alder-bottom.yaml", "later.yaml");
  }

  @Test
  void json_gives_each_change_with_its_causes() throws IOException {
    Path file = copy("alder-bottom.yaml");
    Runs.run("check", file.toString(), "--record");
    change(file, "pigs[0].males", "castrated");
    JsonNode root = new ObjectMapper().readTree(recheck(file, "--format", "json").out());
    JsonNode cleared = root.path("cleared").get(0);
    assertThat(cleared.path("id").asText()).isEqualTo("taint.ask-breeder");
    assertThat(cleared.path("causes").get(0).path("path").asText()).isEqualTo("pigs[0].males");
    assertThat(root.path("differences")).hasSize(1);
    assertThat(root.path("new")).isEmpty();
    Files.delete(folder.resolve("alder-bottom.yaml.checks"));
    recheck(file);
    assertThat(recheck(file, "--format", "markdown").out()).startsWith("# Alder Bottom");
  }

  @Test
  void check_alone_writes_nothing() throws IOException {
    Path file = copy("alder-bottom.yaml");
    assertThat(Runs.run("check", file.toString()).exit()).isZero();
    assertThat(names(folder)).containsExactly("alder-bottom.yaml");
  }

  @Test
  void a_move_can_be_asked_about_at_every_stage() throws IOException {
    Path file = copy("galah-rise.yaml");
    for (String day :
        List.of("2027-06-02", "2027-09-01", "2027-12-31", "2028-02-29", "2028-06-01")) {
      Run run = recheck(file, "--move", "growers=weaner yard", "--on", day);
      assertThat(run.exit()).as(run.err()).isZero();
      assertThat(run.words()).contains("if growers move to weaner yard on ");
    }
    assertThat(names(folder)).containsExactly("galah-rise.yaml");
  }

  @Test
  void what_cannot_be_asked_is_told() throws IOException {
    Path file = copy("galah-rise.yaml");
    assertThat(recheck(file, "--move", "top").err()).contains("There are several groups");
    assertThat(recheck(file, "--move", "growers=shed").err())
        .contains("No pen is called \"shed\"; one of: top, weaner yard.");
    assertThat(recheck(file, "--move", "gowers=top").err()).contains("one of: growers, weaners");
    assertThat(recheck(file, file.toString(), "--move", "growers=top").exit()).isEqualTo(2);
    assertThat(recheck(Path.of("-")).exit()).isEqualTo(2);
    recheck(file);
    assertThat(recheck(file, "--on", LocalDate.of(2027, 6, 1).toString()).err())
        .contains("of a later day");
    Files.writeString(
        folder.resolve("galah-rise.yaml.checks"),
        "{\"half",
        java.nio.file.StandardOpenOption.APPEND);
    Run damaged = recheck(file);
    assertThat(damaged.exit()).isZero();
    assertThat(damaged.err()).contains("1 damaged; passed over");
  }
}
