package swineherd.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Words for signs as keepers use them: common practice, no source. */
class SignsHeardTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 6, 20);

  private static SignsHeard.Result hear(String text) {
    return SignsHeard.hear(List.of(text), TODAY);
  }

  private static List<String> signs(String text) {
    return hear(text).signs().stream().map(SignsHeard.Told::sign).toList();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "trouble breathing, thumps",
    "can't breathe, cannot-breathe",
    "diarea, scour",
    "has the runs, scour",
    "diarrhoea, scour",
    "blood in poo, bloody-scour",
    "bloody shit, bloody-scour",
    "won't get up, cannot-rise",
    "down, cannot-rise",
    "off her legs, hind-weak",
    "red diamond patches, diamonds",
    "off his tucker, off-feed",
    "stopped eating, off-feed",
    "crook, dull",
    "pig isnt himself, dull",
    "off colour, dull",
    "lame on back leg, lame",
    "both lame, several-lame",
    "on three legs, lame-no-weight",
    "ears gone purple, blue-ears",
    "one ear blue, blue-ears",
    "bum hanging out, rectal-prolapse",
    "balls swollen, swollen-scrotum",
    "throwing up, vomiting",
    "not pooping, no-dung",
    "tail is all chewed up, tail-bitten",
    "fly strike, maggots",
    "worms in poo, worms-seen",
    "heat stroke, heat-stroke",
    "hooves falling off, blisters",
    "dead pig with blood from nose, bleeding-dead",
    "ate rat bait, poison",
    "drunk, head-tilt",
    "'lame, but bears weight', lame",
  })
  void words_of_keepers_name_signs(String words, String sign) {
    assertThat(signs(words)).containsExactly(sign);
    assertThat(hear(words).unknown()).isEmpty();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({"breathng hard, thumps", "blod in dung, bloody-scour", "lethargc, dull"})
  void a_word_close_to_one_is_taken_and_told(String words, String sign) {
    assertThat(signs(words)).containsExactly(sign);
    assertThat(hear(words).notes()).singleElement().asString().startsWith("Read \"");
  }

  @Test
  void a_word_close_to_two_counts_as_both_and_says_so() {
    assertThat(signs("sheezing")).containsExactlyInAnyOrder("sneezing", "coughing");
    assertThat(hear("sheezing").notes())
        .containsExactly(
            "\"sheezing\" may be \"sneezing\" or \"wheezing\"; all of that counts until you say"
                + " which.");
  }

  @Test
  void what_is_like_nothing_is_kept_for_the_vet() {
    assertThat(hear("lame and qwerty").unknown()).containsExactly("qwerty");
    assertThat(hear("won't blorp").unknown()).containsExactly("wont blorp");
  }

  @Test
  void what_is_said_not_to_be_is_left_out_aloud() {
    SignsHeard.Result heard = hear("no cough or sneeze, still eating, but dull");
    assertThat(heard.signs()).extracting(SignsHeard.Told::sign).containsExactly("dull");
    assertThat(heard.notes()).containsExactly("Left out, as you say it is not so: cough, sneeze.");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "not very lame, lame",
    "won't stop coughing, coughing",
    "not only lame, lame",
    "'not sure, lame', lame"
  })
  void what_is_not_clearly_denied_counts(String words, String sign) {
    assertThat(signs(words)).containsExactly(sign);
  }

  @Test
  void numbers_count_what_follows() {
    assertThat(hear("one dead and three off feed").signs())
        .containsExactly(
            new SignsHeard.Told("sudden-death", 1), new SignsHeard.Told("off-feed", 3));
    assertThat(hear("4 of 60 pigs coughing").signs())
        .containsExactly(new SignsHeard.Told("coughing", 4));
    assertThat(hear("lame, one pig").signs()).containsExactly(new SignsHeard.Told("lame", 1));
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {"coughing", "one ear blue", "on three legs", "several coughing", "tail bitten"})
  void a_number_that_counts_no_pigs_is_none(String words) {
    assertThat(hear(words).signs())
        .singleElement()
        .satisfies(told -> assertThat(told.count()).isNull());
  }

  @Test
  void how_many_died_says_nothing_of_the_living() {
    assertThat(hear("one dead, coughing").signs())
        .containsExactly(
            new SignsHeard.Told("sudden-death", 1), new SignsHeard.Told("coughing", null));
  }

  @Test
  void day_and_temperature_in_a_sentence_are_taken() {
    SignsHeard.Result heard =
        hear("one pig off feed since yesterday, temp 105, 60 breaths a minute");
    assertThat(heard.since()).isEqualTo(TODAY.minusDays(1));
    assertThat(heard.temperature()).isEqualTo("105");
    assertThat(heard.breaths()).isEqualTo("60");
    assertThat(hear("coughing 41.5").temperature()).isEqualTo("41.5");
    assertThat(hear("one at 39.3 C and one at 106 F").temperature()).isEqualTo("106 F");
    assertThat(hear("lame for 3 days").since()).isEqualTo(TODAY.minusDays(3));
    assertThat(hear("scouring 24 hours").since()).isEqualTo(TODAY.minusDays(1));
    assertThat(hear("a pig of 41.5 kg is lame").temperature()).isNull();
  }

  @Test
  void people_and_births_are_noticed() {
    assertThat(hear("I have a fever").people()).isTrue();
    assertThat(hear("my child is coughing").people()).isTrue();
    assertThat(hear("i have a pig with fever").people()).isFalse();
    assertThat(hear("sow wont nurse").breeding()).isTrue();
  }

  @Test
  void days_are_said_as_people_do() {
    assertThat(SignsHeard.day("3 days ago", TODAY)).isEqualTo("2027-06-17");
    assertThat(SignsHeard.day("this morning", TODAY)).isEqualTo("2027-06-20");
    assertThat(SignsHeard.day("last night", TODAY)).isEqualTo("2027-06-19");
    assertThat(SignsHeard.day("2027-06-01", TODAY)).isEqualTo("2027-06-01");
    assertThat(SignsHeard.day("whenever", TODAY)).isEqualTo("whenever");
  }
}
