package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swineherd.cli.Runs.Run;

/** The view before slaughter from end to end, as stories. */
class SlaughterCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Wormed five days before the day that is booked. */
  private static final String BOOKED_TOO_EARLY =
      """
      checkOn: 2026-10-20
      units: us
      place: {country: united-states, state: Tennessee}
      pigs:
        - {name: barrows, count: 2, sex: males, males: castrated, slaughterOn: 2026-10-25,
           booked: yes}
      diary:
        - {on: 2026-10-20, pigs: barrows, did: weighed, weight: 250 lb}
        - {on: 2026-10-20, pigs: barrows, did: treated, active: ivermectin, route: injection%s}
      """;

  @TempDir Path folder;

  private static Run run(String... args) {
    return Runs.run(Stream.concat(Stream.of("slaughter"), Stream.of(args)).toArray(String[]::new));
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("pigs.yaml"), text).toString();
  }

  private String text(String yaml) throws IOException {
    Run run = run(file(yaml));
    assertThat(run.exit()).as(run.err()).isZero();
    assertThat(run.out().lines()).allMatch(l -> l.codePointCount(0, l.length()) <= 80);
    return run.out().replaceAll("\\s+", " ");
  }

  private JsonNode group(String yaml) throws IOException {
    Run run = run("--format=json", file(yaml));
    assertThat(run.exit()).as(run.err()).isZero();
    return JSON.readTree(run.out()).at("/groups/0");
  }

  /** 18 days by injection (21 CFR 522.1192 [read]) and a day for safety. */
  @Test
  void treated_and_booked_too_early() throws IOException {
    String out = text(BOOKED_TOO_EARLY.formatted(""));
    assertThat(out)
        .contains("Barrows: not yet.", "The day set is 25 October 2026")
        .contains("earliest that nothing noted forbids is 8 November 2026")
        .contains("Day by day to 8 November 2026, the first day that fits")
        .contains("1 Do not send barrows before 8 November 2026")
        .contains("cu ft")
        .doesNotContain("last feed for barrows the evening before");
  }

  /** The longer wins. */
  @Test
  void a_label_shorter_than_the_table() throws IOException {
    JsonNode group = group(BOOKED_TOO_EARLY.formatted(", withdrawal: 5 days"));
    assertThat(group.get("earliest").asText()).isEqualTo("2026-11-08");
    assertThat(items(group)).contains("treatment.postpone", "treatment.label-shorter");
  }

  @Test
  void an_unknown_product_has_no_date_and_no_plan() throws IOException {
    String yaml = BOOKED_TOO_EARLY.formatted("").replace("ivermectin", "something new");
    JsonNode group = group(yaml);
    assertThat(group.get("earliest").isNull()).isTrue();
    assertThat(group.get("readyOn").isNull()).isTrue();
    assertThat(group.get("withdrawalUnknown").asBoolean()).isTrue();
    assertThat(group.get("days")).isEmpty();
    assertThat(items(group)).contains("treatment.find-label");
    assertThat(text(yaml))
        .contains("No earliest day can be told", "no date can be told, see below");
  }

  /** A second course clears later: 28 days (21 CFR 522.1660 [read]) from 21 October. */
  @Test
  void two_treatments() throws IOException {
    JsonNode group =
        group(
            BOOKED_TOO_EARLY.formatted("").replace("2026-10-20\nunits", "2026-10-21\nunits")
                + "  - {on: 2026-10-21, pigs: barrows, did: treated,"
                + " active: oxytetracycline long-acting, route: injection}\n");
    assertThat(group.get("earliest").asText()).isEqualTo("2026-11-19");
    assertThat(group.at("/why/medicines").asText()).contains("ivermectin", "oxytetracycline");
  }

  /** Slaughter tomorrow at 33 degC. */
  @Test
  void a_hot_day_tomorrow() throws IOException {
    String yaml =
        """
        checkOn: 2028-01-13
        place: {country: australia, state: Victoria, latitude: 37 S}
        pigs:
          - {name: gilts, count: 1, sex: gilts, slaughterOn: 2028-01-14, booked: yes,
             forecast: 33 C, targetWeight: 110 kg}
        diary:
          - {on: 2028-01-10, pigs: gilts, did: taped, weight: 110 kg}
        """;
    JsonNode group = group(yaml);
    assertThat(group.get("verdict").asText()).isEqualTo("not-yet");
    assertThat(group.get("tooHot").asBoolean()).isTrue();
    assertThat(items(group)).contains("slaughter.too-hot").doesNotContain("slaughter.last-days");
    assertThat(text(yaml)).contains("33 C forecast: do not load them");
    assertThat(text(yaml.replace("33 C", "20 C"))).contains("Gilts: ready for that day.");
  }

  /** Entire, old and heavy: the risk is high at the least, and they are kept too long. */
  @Test
  void entire_boars_that_are_heavy() throws IOException {
    String yaml =
        """
        checkOn: 2027-10-01
        place: {country: england}
        pigs:
          - {name: boars, count: 2, breed: commercial-cross, sex: males, males: entire,
             born: 2027-02-01, arrives: 2027-04-01, arrivalWeight: 18 kg, slaughterOn: 2027-10-15, booked: yes}
        diary:
          - {on: 2027-09-30, pigs: boars, did: weighed, weight: 130 kg}
        """;
    JsonNode group = group(yaml);
    assertThat(group.get("verdict").asText()).isEqualTo("too-late");
    assertThat(items(group)).contains("slaughter.too-heavy", "taint.smell-a-trim");
    assertThat(group.at("/why/taint").asText()).contains("not castrated", "high");
  }

  /** Nobody takes feed away from pigs that are not loaded. */
  @Test
  void heat_or_illness_stand_before_the_day_and_no_plan_leads_to_it() throws IOException {
    String soon =
        BOOKED_TOO_EARLY
            .formatted("")
            .replaceAll("  - .*treated.*\n", "")
            .replace("booked: yes", "booked: yes, forecast: 68 F");
    assertThat(group(soon).get("days")).isNotEmpty();
    assertThat(group(soon.replace("68 F", "95 F")).get("days")).isEmpty();
    assertThat(group(soon + "signs: [{pigs: barrows, sign: lame}]\n").get("days")).isEmpty();
  }

  /** 18 days by injection (21 CFR 522.1192 [read]) for the one; nothing was given to the other. */
  @Test
  void one_pig_was_treated_alone() throws IOException {
    JsonNode group = group(BOOKED_TOO_EARLY.formatted(", pig: 12"));
    assertThat(group.get("earliest").asText()).isEqualTo("2026-11-08");
    assertThat(group.at("/why/medicines").asText())
        .contains("pig 12 may go from 8 November 2026, the others any day");
  }

  /** Federal law of the United States, 9 CFR 303.1 [read], in short; elsewhere nothing of it. */
  @Test
  void who_may_slaughter_and_what_may_be_sold_is_told_though_nobody_said_what_is_planned()
      throws IOException {
    assertThat(text(BOOKED_TOO_EARLY.formatted("")))
        .contains("never sold, bartered or given to a food bank")
        .contains("Cook mince and sausage to,", "Freezing kills Trichinella at");
    String there = "country: united-states, state: Tennessee";
    assertThat(text(BOOKED_TOO_EARLY.formatted("").replace(there, "country: unknown")))
        .contains("ask the food authority", "No law of your place is known here")
        .doesNotContain("food bank");
  }

  @Test
  void treated_pigs_that_are_sold_alive() throws IOException {
    String yaml =
        BOOKED_TOO_EARLY.formatted("").replace("booked: yes", "booked: yes, meatFor: sold-live");
    assertThat(items(group(yaml)))
        .contains("treatment.postpone", "slaughter.tell-the-buyer", "slaughter.sale");
  }

  @Test
  void slaughter_at_home_tells_the_law_of_the_place_and_no_way_of_killing() throws IOException {
    String yaml =
        BOOKED_TOO_EARLY
            .formatted("")
            .replace("booked: yes", "slaughterAt: home, meatFor: sold")
            .replace("2026-10-25", "2026-12-05")
            .replace("united-states, state: Tennessee", "new-zealand");
    String out = text(yaml);
    assertThat(out)
        .contains("looked after the pig from day to day for at least 28 days")
        .contains("If nobody trained can come, do not kill at home")
        .contains("Do not sell or give away the meat")
        .doesNotContain("custom slaughterer", "council")
        .doesNotContainPattern("(?i)calib|rifle|forehead|knife|bleed");
  }

  @Test
  void the_day_of_the_check_can_be_another() throws IOException {
    String file = file(BOOKED_TOO_EARLY.formatted("").replace("2026-10-25", "2026-11-08"));
    assertThat(run(file, "--on", "2026-11-07").out())
        .contains("Checked 7 November 2026", "Day by day to 8 November 2026");
  }

  @Test
  void markdown_has_boxes_to_tick() throws IOException {
    Run run = run("--format=markdown", file(BOOKED_TOO_EARLY.formatted("")));
    assertThat(run.out()).contains("## Barrows: not yet.", "- [ ] **", "### Meat");
  }

  static Stream<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList().stream();
    }
  }

  /** It is a view: whatever it tells of the checklist stands there under that number. */
  @ParameterizedTest
  @MethodSource("scenarios")
  void every_item_stands_in_the_checklist_under_its_number(Path scenario) throws IOException {
    JsonNode view = JSON.readTree(run("--format=json", scenario.toString()).out());
    String list = Runs.run("check", "--format=json", scenario.toString()).out();
    JsonNode checklist = JSON.readTree(list).get("items");
    assertThat(view.get("groups")).isNotEmpty();
    for (JsonNode group : view.get("groups")) {
      for (JsonNode item : group.get("items")) {
        JsonNode there = checklist.get(item.get("rank").asInt() - 1);
        assertThat(there.get("id")).isEqualTo(item.get("id"));
        assertThat(there.get("heading")).isEqualTo(item.get("heading"));
      }
    }
    assertThat(run(scenario.toString()).out().lines())
        .allMatch(l -> l.codePointCount(0, l.length()) <= 80)
        .noneMatch(l -> l.contains("{") || l.contains("null"));
  }

  @Test
  void a_setup_without_pigs_or_with_faults() throws IOException {
    assertThat(run(file("place: {country: england}\n")).out()).contains("No pigs are there");
    Run bad = run(file("pigs: [{count: minus}]\n"));
    assertThat(bad.exit()).isEqualTo(2);
    assertThat(bad.out()).isEmpty();
  }

  private static List<String> items(JsonNode group) {
    return StreamSupport.stream(group.get("items").spliterator(), false)
        .map(item -> item.get("id").asText())
        .toList();
  }

  /** The curve of a modern cross is used up to 0.75 x 230 kg = 172.5 kg, 380 lb; worked example. */
  @Test
  void pigs_kept_beyond_their_curve_are_too_late_and_weigh_at_least_its_end() {
    String page =
        run("scenarios/alder-bottom.yaml", "--on", "2027-11-15").out().replaceAll("\\s+", " ");
    assertThat(page)
        .contains("Weaners: too late.")
        .contains("at least 380 lb today; target 270 lb: over 297 lb, kept too long")
        .contains("Let weaners go: they are kept too long");
  }
}
