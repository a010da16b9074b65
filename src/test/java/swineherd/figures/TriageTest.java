package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import swineherd.figures.Triage.Circumstances;
import swineherd.rulebook.Referral;

/**
 * How soon one sign calls for somebody. The signs and what they may mean are standard veterinary
 * teaching [memory]; where an institution was read it is named. How soon is a judgement throughout,
 * made once and set down here a second time: emergency -> vet now, same day -> vet today, one to
 * three days -> this week, watch -> none; a duty to report -> authority now.
 */
class TriageTest {
  private static final Circumstances ONE = new Circumstances(false, 0L, true, false);
  private static final Circumstances MORE = new Circumstances(true, 0L, true, false);

  @ParameterizedTest(name = "{0}: one pig {1}, several {2} [{3}]")
  @CsvSource({
    "missed-meal, NONE, VET_TODAY, memory",
    "off-feed, VET_TODAY, VET_TODAY, memory",
    "fever, VET_TODAY, VET_TODAY, 'V02, judgement'",
    "high-fever, VET_NOW, AUTHORITY_NOW, 'V03, judgement'",
    "chill, VET_NOW, VET_NOW, 'V05, judgement'",
    "diamonds, VET_TODAY, VET_TODAY, 'V08, Cooperative Extension on erysipelas, read'",
    "blue-ears, VET_NOW, AUTHORITY_NOW, 'trading standards after Defra on swine fever, read'",
    "sudden-death, VET_TODAY, AUTHORITY_NOW, memory",
    "several-dead, AUTHORITY_NOW, AUTHORITY_NOW, 'V09, trading standards after Defra, read'",
    "bleeding-dead, AUTHORITY_NOW, AUTHORITY_NOW, memory",
    "blisters, AUTHORITY_NOW, AUTHORITY_NOW, 'V07, USDA and AASV on vesicular disease, read'",
    "several-lame, AUTHORITY_NOW, AUTHORITY_NOW, 'USDA on vesicular disease, read'",
    "coughing, VET_THIS_WEEK, VET_TODAY, memory",
    "thumps, VET_TODAY, VET_TODAY, memory",
    "scour, NONE, NONE, memory",
    "bloody-scour, VET_TODAY, VET_TODAY, memory",
    "watery-scour, VET_TODAY, VET_TODAY, memory",
    "vomiting, NONE, VET_TODAY, memory",
    "swollen-belly, VET_NOW, VET_NOW, memory",
    "no-dung, VET_NOW, VET_NOW, memory",
    "lame, VET_THIS_WEEK, VET_NOW, memory",
    "lame-no-weight, VET_TODAY, VET_NOW, memory",
    "cannot-rise, VET_NOW, VET_NOW, memory",
    "hind-weak, VET_NOW, VET_NOW, memory",
    "rectal-prolapse, VET_TODAY, VET_TODAY, 'Cooperative Extension on prolapse, read'",
    "prolapse-torn, VET_NOW, VET_NOW, memory",
    "vaginal-prolapse, VET_NOW, VET_NOW, memory",
    "fits, VET_NOW, VET_NOW, 'AASV and Iowa State on salt poisoning, read'",
    "head-tilt, VET_TODAY, VET_NOW, memory",
    "trembling, VET_TODAY, VET_NOW, memory",
    "wound, NONE, NONE, memory",
    "deep-wound, VET_NOW, VET_NOW, memory",
    "lump, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "hernia, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "hernia-hard, VET_NOW, VET_NOW, memory",
    "tail-bitten, VET_TODAY, VET_TODAY, memory",
    "tail-swollen, VET_NOW, VET_NOW, memory",
    "pale, VET_TODAY, VET_TODAY, memory",
    "black-dung, VET_TODAY, VET_TODAY, memory",
    "itching, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "sore-back, VET_THIS_WEEK, VET_THIS_WEEK, 'Iowa State on sunburn, read'",
    "pot-belly, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "thin, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "skin-and-bone, VET_TODAY, VET_TODAY, 'body condition 1, judgement'",
    "sneezing, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "nosebleed, VET_TODAY, VET_TODAY, memory",
    "red-urine, VET_TODAY, VET_TODAY, memory",
    "yellow-skin, VET_TODAY, VET_TODAY, memory",
    "farrowing-stuck, VET_NOW, VET_NOW, memory",
    "abortion, VET_TODAY, AUTHORITY_NOW, memory",
    "bitten, AUTHORITY_NOW, AUTHORITY_NOW, memory",
    "poison, VET_NOW, VET_NOW, memory",
    "cannot-breathe, VET_NOW, VET_NOW, 'open mouth, memory'",
    "heat-stroke, VET_NOW, VET_NOW, memory",
    "worms-seen, VET_THIS_WEEK, VET_THIS_WEEK, memory",
    "maggots, VET_TODAY, VET_TODAY, judgement",
    "drooling, VET_TODAY, VET_NOW, judgement",
  })
  void the_level_of_a_sign(String sign, Referral one, Referral several, String mark) {
    assertThat(Triage.of(sign).level(ONE)).isEqualTo(one);
    assertThat(Triage.of(sign).level(MORE)).isEqualTo(several);
  }

  @ParameterizedTest(name = "{0} after {1} days: {2} [memory]")
  @CsvSource({
    "scour, 0, NONE",
    "scour, 1, VET_TODAY", // longer than 24 hours
    "missed-meal, 1, VET_TODAY", // off feed for 24 hours
    "vomiting, 1, VET_TODAY",
    "wound, 1, NONE",
    "wound, 2, VET_THIS_WEEK", // not better in 24 to 48 hours
    "lame, 2, VET_THIS_WEEK",
    "lame, 3, VET_TODAY",
  })
  void what_lasts_calls_for_more(String sign, long days, Referral level) {
    assertThat(Triage.of(sign).level(new Circumstances(false, days, true, false))).isEqualTo(level);
  }

  @Test
  void not_knowing_never_lowers_a_level() {
    for (Triage sign : Triage.all()) {
      for (boolean several : new boolean[] {false, true}) {
        for (boolean young : new boolean[] {false, true}) {
          Referral known = sign.level(new Circumstances(several, 0L, true, young));
          for (Referral unknown :
              List.of(
                  sign.level(new Circumstances(true, 0L, true, young)),
                  sign.level(new Circumstances(several, null, true, young)),
                  sign.level(new Circumstances(several, 0L, false, young)),
                  sign.level(new Circumstances(several, 0L, true, true)))) {
            assertThat(unknown).as(sign.key()).isGreaterThanOrEqualTo(known);
          }
          assertThat(sign.level(new Circumstances(several, null, true, young)))
              .as(sign.key() + " since an unknown day")
              .isEqualTo(sign.level(new Circumstances(several, 1000L, true, young)));
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Referral.class)
  void every_level_is_used_but_to_ask_the_vet_some_day(Referral level) {
    assertThat(Triage.all().stream().anyMatch(s -> s.level(ONE) == level))
        .isEqualTo(level != Referral.ASK_VET);
  }

  @Test
  void every_sign_says_what_it_may_be_and_what_to_do() {
    Set<String> keys = new HashSet<>();
    Triage.all().forEach(s -> keys.add(s.key()));
    for (Triage sign : Triage.all()) {
      assertThat(sign.name()).as(sign.key()).isNotBlank();
      assertThat(sign.concerns()).as(sign.key()).isNotBlank().doesNotEndWith(".");
      assertThat(sign.meanwhile()).as(sign.key()).matches("(?s).*[.?]");
      assertThat(keys).as("asked for by " + sign.key()).containsAll(sign.ask());
    }
    assertThat(keys).hasSizeGreaterThan(50);
  }

  @Test
  void no_word_names_two_signs() {
    Set<String> words = new HashSet<>();
    for (Triage sign : Triage.all()) {
      Set<String> own = new HashSet<>(Set.of(sign.key(), sign.name()));
      own.addAll(sign.also());
      Set<String> plain = new HashSet<>();
      own.forEach(w -> plain.add(w.toLowerCase(Locale.ROOT).replace('-', ' ')));
      for (String word : plain) {
        assertThat(words.add(word)).as(word).isTrue();
      }
    }
  }
}
