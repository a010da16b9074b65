package swineherd.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** Whole conversations, without a terminal. */
class ConversationTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final int ALWAYS = 10_000;

  @TempDir Path folder;

  /** People who begin. Every question that can come to them comes, as far as it goes. */
  enum Profile {
    US_FIRST_TIMER(
        "us", "usa", "45 n", "y", "october 5", "4 f", "60 by 80 ft", "electric", "three", "both"),
    UK("metric", "england", "53", "y", "10 november", "1 c", "half an acre", "both", "4", "males"),
    NEW_ZEALAND("metric", "nz", "41 s", "y", "20 may", "3 c", "400 m2", "solid", "2", "mixed"),
    ONE_PIG("us", "canada", "44 n", "y", "oct 1", "-5 f", "12 by 30 ft", "both", "one", "males"),
    SIXTY(
        "metric",
        "denmark",
        "56 n",
        "y",
        "1 nov",
        "minus 2 c",
        "1 ha",
        "electric",
        "sixty",
        "mixed");

    private final Map<String, String> answers = new HashMap<>();

    Profile(
        String units,
        String country,
        String latitude,
        String freezes,
        String frost,
        String coldest,
        String area,
        String fence,
        String count,
        String sex) {
      answers.put("units", units);
      answers.put("place.country", country);
      answers.put("place.latitude", latitude);
      answers.put("place.freezes", freezes);
      answers.put("place.firstHardFrost", frost);
      answers.put("place.coldestMonth", coldest);
      answers.put("pens.name", "hillside");
      answers.put("pens.area", area);
      answers.put("pens.ground", "moved pasture");
      answers.put("pens.fence.kind", fence);
      answers.put("pens.fence.solid", "dunno");
      answers.put("pens.fence.trainingPen", "no");
      answers.put("pens.shelter.kind", "three-sided");
      answers.put("pens.shade.kind", "trees");
      answers.put("pens.water.kind", "trough");
      answers.put("pens.water.frostProof", "n");
      answers.put("pigs.name", "weaners");
      answers.put("pigs.count", count);
      answers.put("pigs.breed", "commercial cross");
      answers.put("pigs.sex", sex);
      answers.put("pigs.males", "don't know");
      answers.put("pigs.arrives", "april 24");
      answers.put("pigs.arrivalWeight", "about 18 kg");
      answers.put("feed.kind", "1");
      answers.put("feed.scraps", "windfalls");
      answers.put("others", "");
      answers.put("menu", "");
    }
  }

  private Script converse(Path file, Map<String, String> answers, int most) throws IOException {
    Script script = new Script(answers, most);
    Conversation conversation = new Conversation(script, file, TODAY);
    assertThat(conversation.run()).isZero();
    return script;
  }

  private static SetupFile read(Path file) {
    return SetupReader.read(file, TODAY);
  }

  @ParameterizedTest
  @EnumSource(Profile.class)
  void the_first_round_has_at_most_25_questions_and_ends_with_the_list(Profile who)
      throws IOException {
    Path file = folder.resolve("pigs.yaml");
    Script script = converse(file, who.answers, ALWAYS);
    List<String> asked = new ArrayList<>(script.asked());
    assertThat(asked.remove(asked.size() - 1)).isEqualTo("menu");
    assertThat(asked).hasSizeBetween(20, 25).doesNotHaveDuplicates().startsWith("units");
    SetupFile setup = read(file);
    assertThat(setup.setup().pigs().get(0).arrives()).isEqualTo(LocalDate.of(2027, 4, 24));
    assertThat(script.shown()).contains(" 1  ", "things to do", "\n 7  ", "more    ");
    assertThat(script.shown().lines()).allMatch(l -> l.length() <= 80);
    String end = script.shown().substring(script.shown().indexOf("other pigs"));
    assertThat(end.substring(0, end.indexOf("What next")).lines())
        .as("the list and what may come next, on a small screen")
        .hasSizeLessThanOrEqualTo(24);
  }

  @Test
  void the_file_is_tidy_and_says_what_the_keys_mean() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    converse(file, Profile.US_FIRST_TIMER.answers, ALWAYS);
    assertThat(Files.readString(file))
        .startsWith("# What you said about your pigs.")
        .endsWith(
            """
            units: us  # pounds, feet, Fahrenheit
            place:
              country: united-states
              latitude: 45 N
              freezes: yes
              firstHardFrost: 5 October
              coldestMonth: 4 F
            pens:
              - name: hillside
                area: 60 x 80 ft
                ground: moved-pasture  # pasture, moved on before it is bare
                fence:
                  kind: electric  # electric wire or netting, nothing solid
                  trainingPen: no
                shelter:
                  kind: three-sided  # three-sided, back to the wind
                shade:
                  kind: trees  # full-grown trees
                water:
                  kind: trough  # a trough or tub
                  frostProof: no
            pigs:
              - name: weaners
                count: 3
                breed: commercial-cross
                sex: mixed  # both
                males: unknown  # Are the males castrated?
                arrives: 2027-04-24
                arrivalWeight: 18 kg
            feed:
              kind: self-feeder  # complete feed, always in front of them
              scraps: [garden]  # fruit, roots and greens straight from garden or field, never in a kitchen
            """);
  }

  /** At every question with two of them, at every third with the others. */
  @ParameterizedTest
  @EnumSource(Profile.class)
  void killed_at_a_question_and_gone_on_with_it_is_the_same_file(Profile who) throws IOException {
    Path whole = folder.resolve("whole.yaml");
    int lines = converse(whole, who.answers, ALWAYS).asked().size();
    boolean every = who == Profile.US_FIRST_TIMER || who == Profile.NEW_ZEALAND;
    Path file = folder.resolve("killed.yaml");
    for (int killedAt = every ? 0 : Math.floorMod(who.name().length(), 3);
        killedAt < lines;
        killedAt += every ? 1 : 3) {
      Files.deleteIfExists(file);
      Script killed = new Script(who.answers, killedAt);
      Conversation conversation = new Conversation(killed, file, TODAY);
      assertThat(catchThrowable(conversation::run)).isInstanceOf(Script.Killed.class);
      if (killedAt > 0) {
        assertThat(read(file).answers().size() + 3).isGreaterThanOrEqualTo(killedAt);
      }
      converse(file, withoutTheList(who), ALWAYS);
      assertThat(Files.readString(file)).isEqualTo(Files.readString(whole));
    }
  }

  /** Stops before the list, which takes a second to try out what is open and writes nothing. */
  private static Map<String, String> withoutTheList(Profile who) {
    Map<String, String> answers = new HashMap<>(who.answers);
    answers.put("others", "stop");
    return answers;
  }

  @Test
  void killed_after_each_single_answer_it_still_comes_to_the_end() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    int sittings = 0;
    while (sittings < 100) {
      Conversation one = new Conversation(new Script(Profile.UK.answers, 1), file, TODAY);
      Throwable end = catchThrowable(one::run);
      sittings++;
      if (read(file).answers().containsKey("feed.scraps")) {
        break;
      }
      assertThat(end).isInstanceOf(Script.Killed.class);
    }
    Path whole = folder.resolve("whole.yaml");
    converse(whole, Profile.UK.answers, ALWAYS);
    assertThat(Files.readString(file)).isEqualTo(Files.readString(whole));
  }

  // ------------------------------------------------------------------------------- typed lines

  private String type(Path file, String... lines) throws IOException {
    StringWriter out = new StringWriter();
    Talk talk =
        new PlainTalk(
            new BufferedReader(new StringReader(String.join("\n", lines) + "\n")),
            new PrintWriter(out));
    int code = new Conversation(talk, file, TODAY).run();
    return out + "exit " + code;
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("pigs.yaml"), text);
  }

  @Test
  void what_is_in_a_file_stays_as_it_was_with_its_comments() throws IOException {
    Path file =
        file(
            """
            # my own notes
            name: "The Orchard"   # grandmother's
            pens:
              - name: top   # by the oak

                area: 0.5 ac
            """);
    type(file, "us", "usa");
    assertThat(Files.readString(file))
        .isEqualTo(
            """
            # my own notes
            name: "The Orchard"   # grandmother's
            units: us  # pounds, feet, Fahrenheit
            place:
              country: united-states
            pens:
              - name: top   # by the oak

                area: 0.5 ac
            """);
  }

  @Test
  void every_scenario_is_gone_on_with_and_loses_nothing() throws IOException {
    try (Stream<Path> scenarios = Files.list(Path.of("scenarios"))) {
      for (Path scenario :
          scenarios.filter(f -> f.toString().matches(".*\\.(yaml|json)")).toList()) {
        Path file = folder.resolve(scenario.getFileName());
        Files.copy(scenario, file);
        String shown = type(file, "don't know", "stop", "stop");
        assertThat(shown).as(scenario + "\n" + shown).endsWith("exit 0");
        List<String> before = Files.readAllLines(scenario);
        List<String> after = new ArrayList<>(Files.readAllLines(file));
        if (scenario.toString().endsWith(".yaml")) {
          assertThat(after).containsSubsequence(before);
        }
        assertThat(read(file).answers().keySet())
            .containsAll(SetupReader.read(scenario, TODAY).answers().keySet());
      }
    }
  }

  @Test
  void back_goes_to_the_question_before_and_enter_keeps_what_is_there() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    String shown = type(file, "us", "usa", "back", "canada", "back", "", "45 n", "stop");
    assertThat(shown).contains("so far: united-states", "so far: canada").endsWith("exit 0");
    Setup setup = read(file).setup();
    assertThat(setup.place().country().key()).isEqualTo("canada");
    assertThat(setup.place().latitude()).isEqualTo(45);
  }

  @Test
  void a_bare_number_is_asked_about_and_a_no_lets_say_it_again() throws IOException {
    Path file = file("units: us\nplace: {country: canada, latitude: 45 N, freezes: no}\n");
    String shown = type(file, "4", "n", "4 c", "stop");
    assertThat(shown).contains("Is that 4 F?", "= 4 C, which is 39 F");
    assertThat(read(file).setup().place().coldestMonth()).isEqualTo(4);
  }

  @Test
  void an_answer_may_stand_in_the_place_of_a_yes_or_no() throws IOException {
    Path file = file("units: us\nplace: {country: canada, latitude: 45 N, freezes: no}\n");
    type(file, "4", "4 c", "stop");
    assertThat(read(file).setup().place().coldestMonth()).isEqualTo(4);
  }

  @Test
  void what_is_unusual_is_kept_only_if_it_is_right() throws IOException {
    Path file = file("units: metric\nplace: {country: canada, latitude: 45 N, freezes: no}\n");
    String shown = type(file, "24 c", "n", "stop");
    assertThat(shown).contains("That is unusual");
    assertThat(read(file).setup().place().coldestMonth()).isNull();
    type(file, "24 c", "y", "stop");
    assertThat(read(file).setup().place().coldestMonth()).isEqualTo(24);
  }

  @Test
  void what_is_impossible_is_refused_with_what_is_possible() throws IOException {
    Path file = file("units: metric\nplace: {country: canada, latitude: 45 N, freezes: no}\n");
    assertThat(type(file, "-90 c", "stop"))
        .contains("\"-90 C\" is not possible; from -50 to 25 C (-58 to 77 F) is.");
  }

  @Test
  void a_topic_is_gone_to_by_its_name_and_then_the_rest_goes_on() throws IOException {
    Path file = file("units: metric\n");
    String shown = type(file, "name", "Tor", "spain", "stop");
    assertThat(shown).contains("What do you call this place", "In which country");
    assertThat(read(file).setup().name()).isEqualTo("Tor");
    assertThat(read(file).setup().place().country().key()).isEqualTo("spain");
  }

  @Test
  void a_word_that_is_an_answer_is_no_topic() throws IOException {
    Path file = file("units: metric\npens:\n  - {name: a, fence: {kind: both}}\n");
    type(file, "go pens", "back", "stop");
    String shown = type(file, "go name", "\"feed\"", "stop");
    assertThat(shown).contains("= feed");
    assertThat(read(file).setup().name()).isEqualTo("feed");
  }

  @Test
  void an_answer_that_rules_out_another_takes_it_out_if_that_is_wanted() throws IOException {
    Path file =
        file("units: metric\npigs:\n  - name: a\n    sex: mixed\n    males: entire  # sold so\n");
    String shown = type(file, "go pigs", "3", "", "back", "back", "stop");
    assertThat(shown).contains("How many pigs?");
    String changed = type(file, "another group", "b", "stop");
    assertThat(changed).endsWith("exit 0");
    Draft draft = Draft.open(file, TODAY);
    Draft.Trial trial = draft.trial("pigs[0].sex", List.of("gilts"));
    assertThat(trial.text()).isNull();
    assertThat(trial.own("pigs[0].sex")).isNull();
    assertThat(trial.others()).containsExactly("pigs[0].males");
    draft.takeAway(trial.others());
    draft.keep(draft.trial("pigs[0].sex", List.of("gilts")));
    assertThat(Files.readString(file)).contains("males: unknown  # sold so", "sex: gilts");
  }

  @Test
  void a_pen_that_is_called_otherwise_keeps_its_pigs() throws IOException {
    Path file = file("pens:\n  - name: top\npigs:\n  - name: reds\n    pen: top\n");
    Draft draft = Draft.open(file, TODAY);
    draft.keep(draft.trial("pens[0].name", List.of("orchard")));
    assertThat(read(file).setup().pigs().get(0).pen()).isEqualTo("orchard");
  }

  @Test
  void a_second_group_may_stand_in_a_pen_that_is_new() throws IOException {
    Map<String, String> answers = new HashMap<>(Profile.UK.answers);
    answers.put("others", "gilts");
    answers.put("pigs.pen", "orchard");
    Path file = folder.resolve("pigs.yaml");
    converse(file, answers, ALWAYS);
    Setup setup = read(file).setup();
    assertThat(setup.pigs()).extracting("name").containsExactly("weaners", "gilts");
    assertThat(setup.pens()).extracting("name").containsExactly("hillside", "orchard");
    assertThat(setup.pigs().get(1).pen()).isEqualTo("orchard");
  }

  @Test
  void more_asks_what_would_move_the_list_most() throws IOException {
    Map<String, String> answers = new HashMap<>(Profile.US_FIRST_TIMER.answers);
    answers.put("menu", "more");
    Path file = folder.resolve("pigs.yaml");
    Script script = new Script(answers, 33);
    Throwable end = catchThrowable(() -> new Conversation(script, file, TODAY).run());
    assertThat(end).isInstanceOf(Script.Killed.class);
    List<String> asked = script.asked();
    List<String> more = asked.subList(asked.indexOf("menu") + 1, asked.size());
    assertThat(more).isNotEmpty().doesNotContain("pigs.pen", "name");
  }

  @Test
  void when_the_file_cannot_be_written_it_is_said_and_nothing_is_lost() throws IOException {
    Path file = folder.resolve("there/is/no/folder.yaml");
    String shown = type(file, "us").replaceAll("\\s+", " "); // the path may break the line
    assertThat(shown).contains("cannot be gone on with: the folder").endsWith("exit 1");
  }

  @Test
  void a_json_file_is_begun_and_gone_on_with_as_json() throws IOException {
    Path file = folder.resolve("pigs.json");
    type(file, "metric", "spain", "stop");
    type(file, "40 n", "don't know", "stop");
    assertThat(Files.readString(file)).startsWith("{").doesNotContain("#");
    Setup setup = read(file).setup();
    assertThat(setup.place().country().key()).isEqualTo("spain");
    assertThat(setup.place().latitude()).isEqualTo(40);
  }

  @Test
  void a_file_that_is_taken_away_meanwhile_is_not_begun_anew() throws IOException {
    Path file = file("units: us\n");
    Draft draft = Draft.open(file, TODAY);
    Files.delete(file);
    assertThat(catchThrowable(() -> draft.trial("place.country", List.of("canada"))))
        .isInstanceOf(IOException.class)
        .hasMessage("it is gone");
  }

  @Test
  void a_second_group_of_the_same_name_is_asked_for_again() throws IOException {
    Path file = file("pigs:\n  - name: reds\n");
    String shown = type(file, "another group", "reds", "blues", "stop");
    assertThat(shown).contains("is also the name of");
    assertThat(read(file).setup().pigs()).extracting("name").containsExactly("reds", "blues");
  }

  @Test
  void what_somebody_else_writes_meanwhile_is_kept() throws IOException {
    Path file = file("units: us\n");
    Draft draft = Draft.open(file, TODAY);
    Files.writeString(file, "# by hand\nunits: us\nname: Tor\n");
    draft.keep(draft.trial("place.country", List.of("canada")));
    assertThat(Files.readString(file))
        .isEqualTo("# by hand\nunits: us\nname: Tor\nplace:\n  country: canada\n");
  }

  @Test
  void a_sign_of_illness_can_be_told() throws IOException {
    Path file = file("units: us\npigs:\n  - {name: reds, count: 3}\n");
    type(file, "signs", "panting", "reds", "yesterday", "2", "stop");
    Setup setup = read(file).setup();
    assertThat(setup.signs()).hasSize(1);
    assertThat(setup.signs().get(0).since()).isEqualTo(LocalDate.of(2027, 2, 28));
    assertThat(setup.signs().get(0).count()).isEqualTo(2);
  }

  @Test
  void lines_that_end_with_something_not_understood_end_with_2() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    assertThat(type(file, "us", "narnia")).contains("Not understood").endsWith("exit 2");
    assertThat(type(folder.resolve("b.yaml"), "us", "usa")).endsWith("exit 0");
    assertThat(type(folder.resolve("c.yaml"))).contains("Nothing was answered").endsWith("exit 0");
    assertThat(Files.exists(folder.resolve("c.yaml"))).isFalse();
  }

  // ------------------------------------------------------------------------------- at random

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void random_answers_never_break_it_and_the_file_always_reads(long seed) throws IOException {
    SplittableRandom random = new SplittableRandom(seed);
    Path file = folder.resolve("random.yaml");
    RandomTalk talk = new RandomTalk(random, 250, file);
    int code = new Conversation(talk, file, TODAY).run();
    assertThat(code).isZero();
    assertThat(talk.reads).isGreaterThan(20);
    assertThat(talk.words.toString()).doesNotContain("Exception", "\u001b");
  }

  /** Somebody who types anything, right or wrong; the file is read after each line. */
  private static final class RandomTalk implements Talk {
    private static final List<String> SAID =
        List.of(
            "y",
            "n",
            "",
            "back",
            "?",
            "dunno",
            "skip",
            "more words than fit",
            "1",
            "2",
            "3",
            "5",
            "40",
            "12 by 30 ft",
            "half an acre",
            "35 lb",
            "8 weeks",
            "april 10",
            "-5 c",
            "us",
            "metric",
            "go fence",
            "feed",
            "another pen",
            "another group",
            "signs",
            "money",
            "a: b",
            "# x",
            "{",
            "[",
            "]",
            "'",
            "\"",
            "- ",
            "\\",
            "\t",
            "\u001b[2J",
            "\u0000",
            "🐖 農場",
            "a".repeat(300),
            "8 in, 18 in",
            "1e9 kg",
            "0/0 lb",
            "-1",
            "99999999999999999999",
            "none",
            "both",
            "100%",
            "1/2/3",
            "31 february",
            "yes",
            "20 x",
            "x",
            "null",
            "~");

    private final SplittableRandom random;
    private final Path file;
    private final StringBuilder words = new StringBuilder();
    private int left;
    private int reads;

    RandomTalk(SplittableRandom random, int lines, Path file) {
      this.random = random;
      this.left = lines;
      this.file = file;
    }

    @Override
    public String hear(String prompt, List<String> completions) {
      if (Files.exists(file)) {
        assertThat(read(file).setup()).isNotNull(); // throws if it does not read
        reads++;
      }
      if (left-- == 0) {
        return null;
      }
      if (random.nextInt(3) == 0 && !completions.isEmpty()) {
        String word = completions.get(random.nextInt(completions.size()));
        return word.equals("stop") ? "y" : word;
      }
      return prompt.startsWith("What next")
          ? random.nextBoolean() ? "pens" : "pigs"
          : SAID.get(random.nextInt(SAID.size()));
    }

    @Override
    public void say(String text) {
      words.append(text).append('\n');
    }

    @Override
    public boolean isPerson() {
      return true;
    }
  }
}
