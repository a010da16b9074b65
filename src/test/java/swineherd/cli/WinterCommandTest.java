package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static swineherd.cli.Runs.run;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.cli.Runs.Run;

/** Stories of winters as keepers meet them. */
class WinterCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;

  private String text(String... args) {
    Run run = run(args);
    assertThat(run.exit()).as(run.err()).isZero();
    return run.words();
  }

  private JsonNode json(String command, String file, String... more) {
    List<String> args = new ArrayList<>(List.of(command, file, "--format", "json"));
    args.addAll(List.of(more));
    Run run = run(args.toArray(String[]::new));
    assertThat(run.exit()).as(run.err()).isZero();
    try {
      return JSON.readTree(run.out());
    } catch (JsonProcessingException e) {
      throw new AssertionError(run.out(), e);
    }
  }

  private String file(String yaml) throws IOException {
    return Files.writeString(folder.resolve("pigs.yaml"), yaml).toString();
  }

  /** Three Tamworth in a three-sided shed with water that freezes. */
  private String reds(String checkOn, String place, String pigs) throws IOException {
    return file(
        """
        checkOn: %s
        units: metric
        place: {%s}
        pens:
          - name: yard
            ground: moved-pasture
            shelter: {kind: three-sided, floorArea: 5 m2, bed: straw}
            water: {kind: nipple, frostProof: "no"}
        pigs: [{name: reds, pen: yard, count: 3, breed: tamworth, sex: gilts, %s}]
        feed: {kind: hand-fed}
        """
            .formatted(checkOn, place, pigs));
  }

  private static Map<String, JsonNode> byId(JsonNode items) {
    Map<String, JsonNode> byId = new HashMap<>();
    items.forEach(i -> byId.put(i.get("id").asText() + " " + i.get("about").asText(), i));
    return byId;
  }

  static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  // ------------------------------------------------------------------------- for every setup

  @ParameterizedTest
  @MethodSource("scenarios")
  void every_item_stands_on_the_checklist_in_the_same_words(Path scenario) {
    Map<String, JsonNode> check = byId(json("check", scenario.toString()).get("items"));
    LocalDate before = LocalDate.MIN;
    for (JsonNode item : json("winter", scenario.toString()).get("items")) {
      JsonNode same = check.get(item.get("id").asText() + " " + item.get("about").asText());
      same.fieldNames().forEachRemaining(f -> assertThat(item.get(f)).as(f).isEqualTo(same.get(f)));
      if (!item.get("dueOn").isNull()) {
        LocalDate due = LocalDate.parse(item.get("dueOn").asText());
        assertThat(due).isAfterOrEqualTo(before);
        before = due;
      }
    }
    check.values().stream()
        .filter(i -> i.get("topic").asText().equals("winter"))
        .forEach(
            i ->
                assertThat(byId(json("winter", scenario.toString()).get("items")))
                    .containsKey(i.get("id").asText() + " " + i.get("about").asText()));
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void fits_a_terminal_and_names_every_group(Path scenario) {
    Run run = run("winter", scenario.toString());
    assertThat(run.exit()).isZero();
    assertThat(run.out().lines()).allMatch(l -> l.length() <= 80);
    assertThat(run.err()).isEmpty();
    for (JsonNode group : json("winter", scenario.toString()).get("groups")) {
      assertThat(text("winter", scenario.toString()))
          .containsIgnoringCase(group.get("pigs").asText());
      assertThat(text("winter", scenario.toString(), "--format", "markdown"))
          .startsWith("# ")
          .containsIgnoringCase(group.get("pigs").asText());
    }
  }

  // ---------------------------------------------------------------------------------- stories

  @Test
  void cold_continental_in_the_middle_of_the_winter_all_of_it_is_due_now() {
    JsonNode winter = json("winter", "scenarios/long-slough.yaml", "--on", "2028-01-15");
    assertThat(winter.at("/winter/class").asText()).isEqualTo("E");
    assertThat(winter.at("/groups/0/begun").asBoolean()).isTrue();
    Map<String, JsonNode> items = byId(winter.get("items"));
    assertThat(items)
        .containsKeys(
            "winter.water-now bluff",
            "winter.straw bluff",
            "winter.feed-reserve bluff",
            "fence.return-wire-frost bluff",
            "winter.every-morning bluff");
    items.values().stream()
        .filter(i -> !i.get("dueOn").isNull())
        .filter(i -> !i.get("id").asText().equals("winter.leave-in-frost"))
        .forEach(i -> assertThat(i.get("dueOn").asText()).isEqualTo("2028-01-15"));
    // what is to be tried out before the winter is past
    assertThat(items).doesNotContainKey("winter.way-in ");
    assertThat(text("winter", "scenarios/long-slough.yaml", "--on", "2028-01-15"))
        .contains("they are there, and frost must be reckoned with until 28 May 2028")
        .contains("Now * Get them water that does not freeze, today.");
  }

  /** Scotland: cool, wet, dark. No return wire, no snow load, a week of feed (judgement). */
  @Test
  void maritime_and_mild_is_a_winter_of_mud_and_little_frost() throws IOException {
    String file =
        reds(
            "2027-07-01",
            "country: scotland, latitude: 56 N, firstHardFrost: 5 November, coldestMonth: 1 C,"
                + " maritime: 'yes', soil: wet-clay",
            "arrives: 2027-06-20, arrivalWeight: 12 kg, targetWeight: 95 kg");
    JsonNode winter = json("winter", file);
    assertThat(winter.at("/winter/class").asText()).isEqualTo("B");
    assertThat(byId(winter.get("items")))
        .containsKeys("winter.mud yard", "winter.straw yard", "winter.water yard")
        .doesNotContainKeys("fence.return-wire-frost yard", "winter.way-in ")
        .hasEntrySatisfying(
            "winter.feed-reserve yard",
            i -> assertThat(i.get("heading").asText()).contains("seven days"));
    // 56 degrees: about seven hours (Cooper 1969 [memory]: 7.2 h at 55)
    assertThat(text("winter", file)).contains("The shortest day has 7 hours of light");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "country: australia, latitude: 28 S, freezes: 'no'",
        "country: united-states, latitude: 28 N, hardinessZone: 9b",
        "country: ireland, latitude: 52 N, freezes: 'no', maritime: 'yes'"
      })
  void subtropical_or_without_frost_there_is_none(String place) throws IOException {
    String file =
        reds(
            "2027-07-01", place, "arrives: 2027-06-05, arrivalWeight: 16 kg, targetWeight: 100 kg");
    JsonNode winter = json("winter", file);
    assertThat(winter.at("/winter/kind").asText()).isEqualTo("mild");
    assertThat(winter.get("items")).isEmpty();
    assertThat(text("winter", file))
        .contains("The winters there are mild: no hard frost to make ready for.")
        .contains("no more than a dry bed, a roof against rain")
        .doesNotContain("counted back");
  }

  @Test
  void the_south_makes_ready_in_autumn_which_is_april() {
    JsonNode winter = json("winter", "scenarios/totara-gully.yaml");
    assertThat(winter.at("/groups/0/frost").asText()).isEqualTo("2027-05-25");
    // KC07 by analogy: ten days of spread put the early date 13 days before [derived]
    assertThat(winter.at("/groups/0/earlyFrost").asText()).isEqualTo("2027-05-12");
    assertThat(text("winter", "scenarios/totara-gully.yaml"))
        .contains("By 28 April 2027, two weeks before the frost");
  }

  @Test
  void at_the_end_of_the_year_the_frost_is_that_of_january() throws IOException {
    String file =
        reds(
            "2027-12-05",
            "country: england, latitude: 50 N, firstHardFrost: 10 January, coldestMonth: 3 C",
            "arrives: 2027-10-20, arrivalWeight: 14 kg, targetWeight: 95 kg");
    JsonNode winter = json("winter", file);
    assertThat(winter.at("/groups/0/frost").asText()).isEqualTo("2028-01-10");
    assertThat(winter.at("/groups/0/earlyFrost").asText()).isEqualTo("2027-12-28");
    assertThat(winter.at("/groups/0/begun").asBoolean()).isFalse();
    // feed in store three weeks before, judgement
    assertThat(byId(winter.get("items")).get("winter.feed-reserve yard").get("dueOn").asText())
        .isEqualTo("2027-12-07");
  }

  @Test
  void a_leap_day_is_a_day() throws IOException {
    String pigs = "arrives: 2028-02-29, arrivalWeight: 14 kg, targetWeight: 95 kg";
    String north =
        reds(
            "2028-02-29",
            "country: united-states, firstHardFrost: 20 October, coldestMonth: -8 C",
            pigs);
    assertThat(json("winter", north).at("/groups/0/begun").asBoolean()).isTrue();
    assertThat(text("winter", north)).contains("Checked 29 February 2028");
    // the same pigs a year later, on the last day of the shorter month
    assertThat(run("winter", north, "--on", "2029-02-28").exit()).isZero();
    // high in the southern hills the first frost of a common year is on 28 February
    String south =
        reds(
            "2028-12-01",
            "country: new-zealand, firstHardFrost: 29 February, coldestMonth: -6 C",
            pigs.replace("2028-02-29", "2028-11-20"));
    assertThat(json("winter", south).at("/groups/0/frost").asText()).isEqualTo("2029-02-28");
  }

  @Test
  void who_is_gone_before_the_frost_is_asked_for_nothing() throws IOException {
    String file =
        reds(
            "2027-07-01",
            "country: united-states, firstHardFrost: 10 October, coldestMonth: -9 C",
            "arrives: 2027-06-05, arrivalWeight: 16 kg, targetWeight: 45 kg");
    JsonNode winter = json("winter", file);
    assertThat(winter.get("someStay").asBoolean()).isFalse();
    assertThat(winter.get("items")).isEmpty();
    assertThat(text("winter", file))
        .contains("None of the pigs should be there when it freezes hard.")
        .contains("Yard stands empty in winter: buy no more feed than they eat, drain its water")
        .doesNotContain("counted back");
  }

  @Test
  void the_ways_out_are_told_with_their_dates() throws IOException {
    String file =
        reds(
            "2027-03-01",
            "country: united-states, firstHardFrost: 10 October, coldestMonth: -9 C",
            "arrives: 2027-04-24, arrivalWeight: 14 kg, targetWeight: 110 kg");
    String mangalitsa = Files.readString(Path.of(file)).replace("tamworth", "mangalitsa");
    assertThat(text("winter", file(mangalitsa)))
        // another breed class, a lighter target, an earlier arrival
        .containsPattern("a modern cross, .* is likely at 110 kg by \\d+ (August|September) 2027")
        .containsPattern("set a lighter target: eight in ten have \\d+ kg before the frost")
        .containsPattern("such pigs have to come by \\d+ [A-Z][a-z]+ 202[67]");
  }

  @Test
  void a_day_to_come_by_that_is_past_is_said_to_be() throws IOException {
    String place = "country: united-states, firstHardFrost: 10 October, coldestMonth: -9 C";
    String pigs = "arrives: 2027-07-20, arrivalWeight: 14 kg, targetWeight: 110 kg";
    assertThat(text("winter", reds("2027-03-01", place, pigs)))
        .containsPattern("have to come by \\d+ [A-Z][a-z]+ 2027\\.");
    assertThat(text("winter", reds("2027-07-01", place, pigs)))
        .containsPattern("have to come by \\d+ [A-Z][a-z]+ 2027, which is past\\.");
  }

  @Test
  void a_chance_under_even_is_told_and_nothing_is_asked_for_yet() throws IOException {
    String file =
        reds(
            "2027-07-01",
            "country: united-states, firstHardFrost: 17 November, coldestMonth: -3 C",
            "arrives: 2027-06-05, arrivalWeight: 16 kg, targetWeight: 100 kg");
    JsonNode winter = json("winter", file);
    assertThat(winter.at("/groups/0/chance").asDouble()).isBetween(0.1, 0.5);
    assertThat(byId(winter.get("items")).keySet()).containsExactly("winter.still-there reds");
    assertThat(text("winter", file)).contains("Less than even, so that nothing is asked for yet");
  }

  @Test
  void nothing_known_of_the_winter_is_said_so() {
    assertThat(text("winter", "scenarios/rush-end.yaml"))
        .contains("Nothing is known of the winters there", "or the hardiness zone");
  }

  @Test
  void answers_that_contradict_each_other_are_told() throws IOException {
    String file =
        reds(
            "2027-07-01",
            "latitude: 40 S, firstHardFrost: 10 October",
            "arrives: 2027-06-05, arrivalWeight: 16 kg");
    assertThat(text("winter", file))
        .contains("10 October is no day of a first frost in the southern half of the world");
    assertThat(json("winter", file).at("/winter/notWorkedOut/0").asText()).contains("10 October");
  }

  // --------------------------------------------------------------------------- hardiness zone

  /**
   * USDA zones by their mean lowest night, mid-points 5a -27.5, 7a -16.4, 8b -8.1 degC [read]; the
   * coldest month lies 15, 13 and 11 degrees above ([derived] from station normals, good to 3).
   */
  @ParameterizedTest(name = "zone {0}: worst night {1}, coldest month {2} degC, class {3}")
  @CsvSource({
    "5a, -27.5, -12.5, D",
    "zone 7, -16.4, -3.4, C",
    "8B, -8.1, 2.9, B",
    "3 a, -38.6, -23.6, E"
  })
  void a_zone_does_for_the_numbers(String zone, double worst, double month, String winterClass)
      throws IOException {
    String file =
        reds(
            "2027-07-01",
            "country: united-states, hardinessZone: " + zone,
            "arrives: 2027-06-15, arrivalWeight: 12 kg, targetWeight: 110 kg");
    JsonNode winter = json("winter", file).get("winter");
    assertThat(winter.get("worstNight").asDouble()).isCloseTo(worst, within(0.06));
    assertThat(winter.get("nights").asDouble()).isCloseTo(month, within(0.1));
    assertThat(winter.get("class").asText()).isEqualTo(winterClass);
    assertThat(winter.get("dateTaken").asBoolean()).isTrue();
    assertThat(winter.get("assumed")).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0a", "14", "5c", "five", "-20 F"})
  void what_is_no_zone_is_refused_at_its_place(String zone) throws IOException {
    String file = file("place: {hardinessZone: \"" + zone + "\"}\n");
    Run run = run("winter", file);
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("pigs.yaml:1:").contains("not a zone; 1a to 13b");
    assertThat(run.out()).isEmpty();
  }
}
