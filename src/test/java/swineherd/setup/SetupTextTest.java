package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.events.CommentEvent;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;

class SetupTextTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 6, 1);
  private static final String PIGS =
      """
      # ours
      name: "Long Field"   # as on the gate

      place:
        country: england
      pens:
        # the dry one
        - name: back field
          area: 0.5 ac     # paced out
          fence: {kind: electric, strands: 2}
      pigs:
      - name: weaners
        count: 3
        males: unknown     # not told
      """;

  private static SetupText yaml(String text) {
    return SetupText.of("pigs.yaml", text);
  }

  @Test
  void an_answer_is_changed_where_it_stands_and_nothing_else_is() {
    assertThat(yaml(PIGS).set("pens[0].area", "600 m2").text())
        .isEqualTo(PIGS.replace("0.5 ac", "600 m2"));
    assertThat(yaml(PIGS).set("pigs[0].males", "castrated").text())
        .isEqualTo(PIGS.replace("males: unknown ", "males: castrated "));
  }

  @Test
  void quotes_stay_as_they_were() {
    assertThat(yaml(PIGS).set("name", "The \"Old\" Field").text())
        .isEqualTo(PIGS.replace("\"Long Field\"", "\"The \\\"Old\\\" Field\""));
    assertThat(yaml("name: 'a'\n").set("name", "Tom's").text()).isEqualTo("name: 'Tom''s'\n");
  }

  @Test
  void a_new_answer_goes_where_its_question_stands_in_the_order_of_the_questions() {
    assertThat(yaml(PIGS).set("pigs[0].arrives", "24 April 2027").text())
        .isEqualTo(PIGS + "  arrives: 24 April 2027\n");
    assertThat(yaml(PIGS).set("pigs[0].pen", "back field").text())
        .isEqualTo(PIGS.replace("weaners\n", "weaners\n  pen: back field\n"));
    assertThat(yaml(PIGS).set("pens[0].ground", "grass").text())
        .isEqualTo(PIGS.replace("# paced out\n", "# paced out\n    ground: grass\n"));
    assertThat(yaml(PIGS).set("place.freezes", "yes").text())
        .isEqualTo(PIGS.replace("england\n", "england\n  freezes: yes\n"));
  }

  @Test
  void a_section_that_is_missing_is_made() {
    assertThat(yaml(PIGS).set("keeper.vet", "no").text())
        .isEqualTo(PIGS.replace("gate\n", "gate\nkeeper:\n  vet: no\n"));
    assertThat(yaml(PIGS).set("pens[0].shade.kind", "trees").text())
        .isEqualTo(PIGS.replace("strands: 2}\n", "strands: 2}\n    shade:\n      kind: trees\n"));
    assertThat(yaml(PIGS).set("feed.kind", "hand-fed").text())
        .isEqualTo(PIGS + "feed:\n  kind: hand-fed\n");
  }

  @Test
  void a_section_in_braces_stays_in_braces() {
    assertThat(yaml(PIGS).set("pens[0].fence.earthRods", "1").text())
        .isEqualTo(PIGS.replace("strands: 2}", "strands: 2, earthRods: 1}"));
    assertThat(yaml(PIGS).set("pens[0].fence.strands", "3").text())
        .isEqualTo(PIGS.replace("strands: 2}", "strands: 3}"));
    assertThat(yaml(PIGS).set("pens[0].fence.wireHeights", List.of("8 in", "18 in")).text())
        .isEqualTo(PIGS.replace("strands: 2}", "strands: 2, wireHeights: [8 in, 18 in]}"));
    assertThat(yaml(PIGS).takeAway("pens[0].fence.kind").text())
        .isEqualTo(PIGS.replace("{kind: electric, ", "{"));
  }

  @Test
  void a_list_grows_at_its_end() {
    assertThat(yaml(PIGS).set("pigs[1].name", "late ones").text())
        .isEqualTo(PIGS + "- name: late ones\n");
    assertThat(yaml(PIGS).set("pens[1].fence.kind", "solid").text())
        .isEqualTo(PIGS.replace("strands: 2}\n", "strands: 2}\n  - fence:\n      kind: solid\n"));
    Map<String, String> entry = new LinkedHashMap<>();
    entry.put("note", "calm: as ever # sic");
    entry.put("on", "2027-05-01");
    String diary = "diary:\n  - on: 2027-05-01\n    note: \"calm: as ever # sic\"\n";
    SetupText once = yaml(PIGS).append("diary", entry);
    assertThat(once.text()).isEqualTo(PIGS + diary);
    assertThat(once.append("diary", Map.of("on", "2027-05-02")).text())
        .isEqualTo(PIGS + diary + "  - on: 2027-05-02\n");
  }

  @Test
  void an_answer_goes_with_its_line_unless_a_comment_stands_in_it() {
    assertThat(yaml(PIGS).takeAway("pigs[0].count").text())
        .isEqualTo(PIGS.replace("  count: 3\n", ""));
    assertThat(yaml(PIGS).takeAway("pens[0].area").text())
        .isEqualTo(PIGS.replace("0.5 ac  ", "unknown  "));
    assertThat(yaml(PIGS).takeAway("pigs[0].name").text())
        .isEqualTo(PIGS.replace("name: weaners", "name: unknown"));
    assertThat(yaml(PIGS).takeAway("pigs[0].males").text()).isEqualTo(PIGS);
  }

  @Test
  void windows_line_ends_and_a_missing_last_one_stay() {
    String crlf = PIGS.replace("\n", "\r\n").stripTrailing();
    assertThat(yaml(crlf).set("pigs[0].arrives", "2027-04-24").text())
        .isEqualTo(crlf + "\r\n  arrives: 2027-04-24");
  }

  @Test
  void what_was_left_open_is_filled() {
    assertThat(yaml("keeper:   # me\npens: []\nfeed: unknown\n").set("keeper.vet", "yes").text())
        .isEqualTo("keeper:   # me\n  vet: yes\npens: []\nfeed: unknown\n");
    assertThat(yaml("pens: []\n").set("pens[0].name", "top").text())
        .isEqualTo("pens:\n  - name: top\n");
    assertThat(yaml("feed: unknown\nname: x").set("feed.kind", "hand-fed").text())
        .isEqualTo("feed:\n  kind: hand-fed\nname: x");
    assertThat(yaml("").set("name", "x").text()).isEqualTo("name: x\n");
    assertThat(yaml("# only this").set("pigs[0].count", "2").text())
        .isEqualTo("# only this\npigs:\n  - count: 2\n");
    assertThat(
            yaml("pigs:\n  - count:    # how many?\n    name: a\n")
                .set("pigs[0].count", "2")
                .text())
        .isEqualTo("pigs:\n  - count: 2    # how many?\n    name: a\n");
  }

  @Test
  void json_keeps_its_order_and_its_lines() {
    String json =
        "{\n  \"name\": \"Tor\",\n  \"pigs\": [\n    {\"name\": \"a\", \"count\": 2}\n  ]\n}\n";
    SetupText text = SetupText.of("pigs.json", json);
    assertThat(text.set("pigs[0].count", "3").text()).isEqualTo(json.replace("2", "3"));
    assertThat(text.set("units", "us").text())
        .isEqualTo(json.replace("\"Tor\",", "\"Tor\",\n  \"units\": \"us\","));
    assertThat(text.set("pigs[0].sex", "gilts").text())
        .isEqualTo(json.replace("2}", "2, \"sex\": \"gilts\"}"));
    assertThat(text.append("diary", Map.of("on", "2027-05-01")).text())
        .isEqualTo(json.replace("  ]\n}", "  ],\n  \"diary\": [{\"on\": \"2027-05-01\"}]\n}"));
    assertThat(text.append("pigs", Map.of("name", "b")).text())
        .isEqualTo(json.replace("2}\n", "2},\n    {\"name\": \"b\"}\n"));
    assertThat(text.takeAway("name").text()).isEqualTo(json.replace("\"name\": \"Tor\",\n  ", ""));
    assertThat(SetupText.of("new.json", "").set("name", "x").text())
        .isEqualTo("{\n  \"name\": \"x\"\n}\n");
  }

  @Test
  void a_place_that_cannot_be_changed_without_damage_is_refused() {
    String heights = "pens:\n- fence:\n    wireHeights:\n      - 8 in  # nose\n      - 18 in\n";
    assertThatThrownBy(() -> yaml(heights).set("pens[0].fence.wireHeights", "9 in"))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("pigs.yaml:4:7: pens[0].fence.wireHeights: holds a comment");
    assertThatThrownBy(() -> yaml(PIGS).set("pigs[4].count", "2"))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("nothing to add it to");
    assertThatThrownBy(() -> yaml(PIGS).set("pens[0].fence", "none"))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("is a section");
    assertThatThrownBy(() -> yaml(PIGS).set("name", "bell \u0007"))
        .isInstanceOf(BadSetupException.class);
  }

  @Test
  void an_answer_that_makes_no_sense_is_told_when_it_is_read() {
    SetupText moved = yaml(PIGS).set("pigs[0].pen", "frnt field");
    assertThatThrownBy(() -> moved.read(TODAY))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("no pen is called");
  }

  @Test
  void a_file_cut_short_at_any_byte_takes_an_entry_or_is_refused_and_never_damaged()
      throws IOException {
    String whole = Files.readString(Path.of("scenarios/bramble-shaw.yaml"));
    Map<String, String> entry = Map.of("on", "2027-06-15", "note", "calm");
    int taken = 0;
    for (int length = 0; length <= whole.length(); length++) {
      String cut = whole.substring(0, length);
      try {
        String text = yaml(cut).append("diary", entry).text();
        Map<String, String> left = flat(text);
        assertThat(left.values().remove("calm")).isTrue();
        assertThat(left.values().remove("2027-06-15")).isTrue();
        assertThat(left).as("cut after %d", length).isEqualTo(cut.isBlank() ? Map.of() : flat(cut));
        assertThat(comments(text)).containsAll(comments(cut));
        taken++;
      } catch (BadSetupException e) {
        assertThat(e.problems()).isNotEmpty();
      }
    }
    assertThat(taken).isGreaterThan(whole.length() / 2);
  }

  private static final List<String> SAID =
      List.of(
          "yes",
          "3",
          "45 lb",
          "24 April 2027",
          "a: b",
          "x # y",
          "- dash",
          "[1",
          "{",
          "'quoted'",
          "\"twice\"",
          "back\\slash",
          "@home",
          "%",
          "*",
          "&a",
          "!b",
          "|",
          ">",
          "a, b",
          "0x10",
          "1_000",
          "null and void",
          "Grüße 🐖 𝄞",
          "? maybe",
          "a,b]}",
          "-",
          "#",
          "1e3",
          "true",
          "8 x 8 ft",
          "`");

  static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      return files.filter(f -> f.toString().matches(".*[.](yaml|json)")).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0}, seeds 1 to 8, 25 edits each")
  @MethodSource("scenarios")
  void random_edits_mean_what_was_asked_and_lose_no_comment(Path file) throws IOException {
    String original = Files.readString(file);
    List<Question> questions = List.copyOf(Rulebook.questions().values());
    int refused = 0;
    for (int seed = 1; seed <= 8; seed++) {
      Random random = new Random(seed);
      SetupText text = SetupText.of(file.toString(), vary(original, seed));
      for (int i = 0; i < 25; i++) {
        Map<String, String> expected = flat(text.text());
        String path = questions.get(random.nextInt(questions.size())).path();
        path = path.replace("[]", "[" + random.nextInt(2) + "]");
        String said = SAID.get(random.nextInt(SAID.size()));
        SetupText edited;
        try {
          if (random.nextInt(4) == 0) {
            expected.remove(path);
            expected.keySet().removeIf(startsWith(path + "["));
            edited = text.takeAway(path);
          } else {
            expected.keySet().removeIf(startsWith(path + "["));
            expected.put(path, said);
            edited = text.set(path, said);
          }
        } catch (BadSetupException e) {
          refused++;
          continue;
        }
        assertThat(flat(edited.text()))
            .as("%s = %s in%n%s", path, said, text.text())
            .isEqualTo(expected);
        assertThat(comments(edited.text())).containsAll(comments(text.text()));
        assertThat(untouched(text.text(), edited.text()))
            .as("%s = %s%n%s%n---%n%s", path, said, text.text(), edited.text())
            .isTrue();
        text = edited;
      }
    }
    assertThat(refused).isLessThan(40); // mostly members of lists that are not begun yet
  }

  private static java.util.function.Predicate<String> startsWith(String prefix) {
    return path -> path.startsWith(prefix);
  }

  private static String vary(String text, int seed) {
    return seed % 4 == 0 ? text.replace("\n", "\r\n") : seed % 4 == 1 ? text.stripTrailing() : text;
  }

  /** At most one place of a few lines may differ. */
  private static boolean untouched(String before, String after) {
    List<String> a = before.lines().toList();
    List<String> b = after.lines().toList();
    int head = 0;
    while (head < Math.min(a.size(), b.size()) && a.get(head).equals(b.get(head))) {
      head++;
    }
    int tail = 0;
    while (tail < Math.min(a.size(), b.size()) - head
        && a.get(a.size() - 1 - tail).equals(b.get(b.size() - 1 - tail))) {
      tail++;
    }
    return a.size() - head - tail <= 2 && b.size() - head - tail <= 4;
  }

  private static List<String> comments(String text) {
    LoaderOptions options = new LoaderOptions();
    options.setProcessComments(true);
    List<String> comments = new ArrayList<>();
    new Yaml(options)
        .parse(new StringReader(text))
        .forEach(
            event -> {
              if (event instanceof CommentEvent comment) {
                comments.add(comment.getValue());
              }
            });
    return comments;
  }

  private static Map<String, String> flat(String text) {
    Map<String, String> flat = new TreeMap<>();
    org.yaml.snakeyaml.nodes.Node root = new Yaml().compose(new StringReader(text));
    if (root != null) {
      flatten("", root, flat);
    }
    return flat;
  }

  private static void flatten(
      String path, org.yaml.snakeyaml.nodes.Node node, Map<String, String> flat) {
    if (node instanceof MappingNode mapping) {
      mapping
          .getValue()
          .forEach(
              e -> {
                String name = ((ScalarNode) e.getKeyNode()).getValue();
                flatten(path.isEmpty() ? name : path + "." + name, e.getValueNode(), flat);
              });
    } else if (node instanceof SequenceNode list) {
      for (int i = 0; i < list.getValue().size(); i++) {
        flatten(path + "[" + i + "]", list.getValue().get(i), flat);
      }
    } else if (node instanceof ScalarNode scalar
        && !scalar.getValue().isEmpty()
        && !scalar.getValue().equals("unknown")) {
      flat.put(path, scalar.getValue());
    }
  }
}
