package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** The answer to "something looks wrong" as a keeper types and reads it. */
class SignsCommandTest {
  private static final String FILE = "scenarios/alder-bottom.yaml";

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = Swineherd.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(args);
  }

  private String first() {
    return out.toString().lines().findFirst().orElse("");
  }

  @Test
  void the_first_line_says_what_to_do_now() {
    assertThat(run("signs", FILE, "off feed", "--count", "1", "--temperature", "41.3 C")).isZero();
    assertThat(first()).isEqualTo("Call your vet now.");
    assertThat(err.toString()).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "missed a meal, missed a meal",
    "scouring, scour",
    "diamond marks on the skin, raised red diamonds",
    "limping, lame",
    "purple ears, purple ears",
    "Thin and Hairy, pot belly",
    "tail biting, bitten tail",
    "back sore after sun, sunburn",
    "swollen scrotum, swollen scrotum",
    "shivering, shivering",
  })
  void a_keepers_words_are_understood(String words, String says) {
    assertThat(run("signs", FILE, words, "--count", "1", "--on", "2027-06-20")).isZero();
    assertThat(out.toString().toLowerCase(java.util.Locale.ROOT)).contains(says);
  }

  @Test
  void words_without_quotes_are_taken_together() {
    assertThat(run("signs", FILE, "off", "feed", "blue", "ears", "--count", "1")).isZero();
    assertThat(out.toString()).contains("off feed and blue ears");
  }

  @Test
  void a_day_can_be_said_as_people_do() {
    assertThat(run("signs", FILE, "lame", "--count", "1", "--since", "yesterday")).isZero();
    assertThat(first()).isEqualTo("Call your vet this week.");
  }

  @Test
  void what_is_not_said_is_asked() {
    assertThat(run("signs", FILE, "lame")).isZero();
    assertThat(out.toString().replaceAll("\\s+", " "))
        .startsWith("Call your vet now. So soon because you did not say how many show it.")
        .contains("Not said: how many, taken as several", "How many of them? One: the vet");
  }

  @Test
  void an_unknown_word_is_told_with_what_is_known() {
    assertThat(run("signs", FILE, "qwerty")).isEqualTo(2);
    assertThat(err.toString())
        .contains("\"qwerty\" is not a sign that is known here. If it worries you, call the vet")
        .contains("missed-meal, off-feed")
        .startsWith("Pig down");
    assertThat(out.toString()).isEmpty();
  }

  @Test
  void a_misspelt_word_is_taken_and_said_to_be() {
    assertThat(run("signs", FILE, "scoring")).isZero();
    assertThat(out.toString()).contains("Read \"scoring\" as \"scouring\".");
    assertThat(first()).startsWith("Call your vet");
  }

  @Test
  void signs_are_found_in_a_sentence_and_the_rest_is_named() {
    assertThat(run("signs", FILE, "shes lame, blue ears and zzz")).isZero();
    assertThat(first()).startsWith("Tell the animal-health authority now");
    assertThat(out.toString()).containsIgnoringCase("lame").contains("Not understood: zzz.");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void one_unknown_word_does_not_hide_an_urgent_one() {
    assertThat(run("signs", FILE, "zzz", "fits")).isZero();
    assertThat(out.toString()).startsWith("Call your vet now");
  }

  @Test
  void what_is_said_not_to_be_is_no_sign() {
    run("signs", FILE, "lame not coughing");
    assertThat(out.toString())
        .contains("Left out, as you say it is not so: coughing.")
        .doesNotContain("sign: lame and coughing");
  }

  @Test
  void a_bare_temperature_that_can_only_be_one_scale_is_taken() {
    assertThat(run("signs", FILE, "lame", "--temperature", "41")).isZero();
    assertThat(run("signs", FILE, "lame", "--temperature", "105.8")).isZero();
  }

  @Test
  void a_bad_file_does_not_leave_anybody_without_an_answer() {
    assertThat(run("signs", "nowhere.yaml", "fits")).isEqualTo(2);
    assertThat(first()).isEqualTo("Call your vet now.");
    assertThat(err.toString()).contains("nowhere.yaml", "there is no such file");
  }

  @Test
  void a_bad_file_alone_is_told_after_whom_to_call() {
    assertThat(run("signs", "nowhere.yaml")).isEqualTo(2);
    assertThat(err.toString()).startsWith("Pig down").contains("nowhere.yaml");
  }

  @Test
  void without_a_file_it_answers_at_the_worst() {
    assertThat(run("signs", "blisters on snout")).isZero();
    assertThat(first()).startsWith("Tell the animal-health authority now");
    assertThat(out.toString()).contains("Without a file").contains("or your vet at once");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"--bogus", "--count", "--format=loud", "--on=never"})
  void a_wrong_option_is_told_after_whom_to_call(String option) {
    assertThat(run("signs", FILE, "lame", option)).isEqualTo(2);
    assertThat(err.toString().lines().findFirst()).contains(SignsCommand.CALL);
    assertThat(SignsCommand.CALL).hasSizeLessThanOrEqualTo(80).contains("call a vet now");
  }

  @Test
  void the_age_counts_where_nobody_said_it() {
    // table signs, scour: under 12 weeks or of unknown age this week, else watched for a day
    String[] scour = {"signs", "one pig scouring since today", "--temperature", "39.2 C"};
    assertThat(run(scour)).isZero();
    assertThat(first()).isEqualTo("Call your vet this week.");
    out.getBuffer().setLength(0);
    assertThat(run("signs", "one pig scouring since today", "--age", "20 weeks")).isZero();
    assertThat(first()).startsWith("No call yet");
  }

  @Test
  void people_are_sent_to_a_doctor_first() {
    assertThat(run("signs", FILE, "my hand is purple")).isZero();
    assertThat(first()).startsWith("A person: ring a doctor");
  }

  @Test
  void a_temperature_that_can_hardly_be_is_taken_again_and_counts() {
    assertThat(run("signs", FILE, "coughing", "--count", "1", "--temperature", "43.5 C")).isZero();
    assertThat(first()).isEqualTo("Call your vet now.");
    assertThat(out.toString()).contains("Read the thermometer again");
    assertThat(run("signs", FILE, "dull", "--count", "1", "--temperature", "35.5 C")).isZero();
    assertThat(run("signs", FILE, "dull", "--count", "1", "--temperature", "41 F")).isZero();
    assertThat(out.toString()).contains("Read 41 F as 41 C");
  }

  @Test
  void lesser_signs_beside_a_greater_call_name_no_later_day() {
    assertThat(run("signs", FILE, "several dead, coughing, one lame")).isZero();
    assertThat(first()).startsWith("Tell the animal-health authority now");
    assertThat(out.toString())
        .contains("Tell whoever you call of it too.")
        .doesNotContainIgnoringCase("vet today")
        .doesNotContainIgnoringCase("vet this week");
  }

  @Test
  void the_item_about_slaughter_comes_once_and_says_the_day(@TempDir Path folder)
      throws IOException {
    Path file = folder.resolve("two.yaml");
    String pigs = "checkOn: 2027-06-20\npigs: [{name: a, count: 3}, {name: b, count: 2%s}]\n";
    Files.writeString(file, pigs.formatted(""));
    assertThat(run("signs", file.toString(), "lame")).isZero();
    assertThat(out.toString()).doesNotContain("to slaughter before a vet has said it is fit");
    Files.writeString(file, pigs.formatted(", slaughterOn: 2027-07-01"));
    assertThat(run("signs", file.toString(), "lame")).isZero();
    assertThat(out.toString())
        .containsOnlyOnce("to slaughter before a vet has said it is fit")
        .contains("1 July")
        .doesNotContain("they go soon");
  }

  @Test
  void without_a_sign_it_asks_for_one() {
    assertThat(run("signs", FILE)).isEqualTo(2);
    assertThat(err.toString()).contains("Say what you see");
  }

  @Test
  void a_value_that_cannot_be_is_told_and_counts_as_not_said() {
    assertThat(run("signs", FILE, "lame", "--temperature", "60")).isEqualTo(2);
    assertThat(err.toString()).contains("temperature", "has no unit");
    assertThat(first()).startsWith("Call your vet now");
    assertThat(run("signs", FILE, "lame", "--count", "9")).isEqualTo(2);
    assertThat(err.toString()).contains("more pigs than the group has");
    assertThat(run("signs", FILE, "lame", "--group", "nobody")).isEqualTo(2);
    assertThat(err.toString()).contains("nobody");
    assertThat(run("signs", FILE, "lame", "--since", "whenever")).isEqualTo(2);
    assertThat(err.toString()).contains("is not a date");
  }

  @Test
  void the_file_stays_as_it_is_and_says_the_same(@TempDir Path folder) throws IOException {
    String before = Files.readString(Path.of(FILE));
    run(
        "signs",
        FILE,
        "coughing",
        "--count",
        "1",
        "--temperature",
        "40.3 C",
        "--since",
        "2027-03-01",
        "--format",
        "json");
    assertThat(Files.readString(Path.of(FILE))).isEqualTo(before);
    ObjectMapper json = new ObjectMapper();
    JsonNode typed = json.readTree(out.toString());
    Path file = folder.resolve("signs.yaml");
    Files.writeString(
        file,
        before + "\nsigns: [{sign: coughing, count: 1, temperature: 40.3 C, since: 2027-03-01}]\n");
    out.getBuffer().setLength(0);
    assertThat(run("check", file.toString(), "--format", "json")).isZero();
    JsonNode written = json.readTree(out.toString());
    assertThat(typed.at("/items/0/id").asText()).isEqualTo("health.today");
    assertThat(typed.at("/referral").asText()).isEqualTo("vet-today");
    assertThat(typed.at("/items/0/ready").asText()).isNotBlank();
    assertThat(written.at("/items").findValuesAsText("heading"))
        .contains(typed.at("/items/0/heading").asText());
  }

  @Test
  void markdown_begins_with_the_call_too() {
    assertThat(run("signs", FILE, "fits", "--count", "1", "--format", "markdown")).isZero();
    assertThat(first()).isEqualTo("**Call your vet now.**");
    assertThat(out.toString()).contains("- **Have ready:**", "- **Meat:**");
  }
}
