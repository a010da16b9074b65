package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.compare.FollowUps;
import swineherd.figures.Triage;
import swineherd.report.SignsReport;
import swineherd.rulebook.Card;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.setups.Setups;

/**
 * Signs of illness in whole setups: what they mean together, and that nothing lowers a referral.
 */
class SignsTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  private static final String FOUR_PIGS =
      """
      checkOn: 2027-06-20
      place: {country: %s, latitude: 52 N}
      pens:
        - {name: yard, water: {kind: trough, frostProof: %s}}
      pigs:
        - {name: four, pen: yard, count: 4, breed: duroc, born: 2026-12-20, arrives: %s}
      feed: {scraps: [%s]}
      """;

  private static SetupFile setup(String country, String frostProof, String arrives, String scraps) {
    return SetupReader.read(
        "signs.yaml", FOUR_PIGS.formatted(country, frostProof, arrives, scraps), TODAY);
  }

  private static SetupFile setup() {
    return setup("england", "yes", "2027-02-20", "garden");
  }

  private static SetupFile with(SetupFile setup, String sign, String count, String temperature) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("sign", sign);
    words.put("pigs", setup.setup().pigs().get(0).name());
    words.put("since", setup.setup().checkOn().toString());
    words.put("count", count);
    words.put("temperature", temperature);
    words.values().removeIf(v -> v == null);
    return setup.and("signs", words);
  }

  private static Referral referral(SetupFile setup) {
    return FollowUps.referral(Advisor.advise(setup));
  }

  /** Sources: the table signs and the cards; levels are a judgement, concerns standard teaching. */
  @ParameterizedTest(name = "{0} ({1}, {2}) -> {3} [{4}]")
  @CsvSource({
    "off-feed, 1, 41.3 C, VET_NOW, 'V03 judgement; alone it once gave nothing'",
    "off-feed, 1, 37.5 C, VET_NOW, 'V05 judgement'",
    "off-feed, 1, 40.2 C, VET_TODAY, 'V02 judgement'",
    "off-feed, 3, 40.2 C, AUTHORITY_NOW, 'several off feed with fever, memory'",
    "off-feed, 3, 39.3 C, VET_TODAY, 'several off feed without fever, memory'",
    "lame, 1, 41.0 C, VET_NOW, 'V03 judgement'",
    "diamonds, 1, 40.9 C, VET_TODAY, 'V08 read'",
    "diamonds, 1, 41.3 C, VET_NOW, 'V03 judgement'",
    "blue-ears, 1, 40.0 C, AUTHORITY_NOW, 'with fever, read'",
    "blue-ears, 1, 39.3 C, VET_NOW, 'one without fever, memory'",
    "sudden-death+high-fever, 1, 41.2 C, AUTHORITY_NOW, 'V09 read'",
    "sudden-death+bloody-scour, 1, 39.3 C, AUTHORITY_NOW, 'swine fever, read'",
    "coughing+fever, 1, 40.3 C, VET_TODAY, 'cough with fever, memory'",
    "fits+fever, 1, 40.3 C, VET_NOW, 'meningitis, memory'",
    "pale+dull, 1, 39.3 C, VET_NOW, 'pale and weak, memory'",
    "hernia+off-feed, 1, 39.3 C, VET_NOW, 'hernia and ill, memory'",
    "abortion+fever, 1, 40.5 C, AUTHORITY_NOW, 'abortion with fever, memory'",
    "rectal-prolapse+prolapse-torn, 1, 39.3 C, VET_NOW, 'bitten prolapse, memory'",
    "watery-scour, 4, 39.3 C, AUTHORITY_NOW, 'PED in England, memory'",
    "missed-meal, 1, 39.3 C, NONE, 'one meal missed, bright, memory'",
    "missed-meal, 3, 40.2 C, AUTHORITY_NOW, 'several off feed with fever, memory'",
    "coughing, 1, 39.3 C, VET_THIS_WEEK, 'few cough and eat, memory'",
    "coughing+panting, 1, 39.3 C, VET_TODAY, 'open mouth in the warm season, Queensland read'",
    "coughing+cannot-breathe, 1, 39.3 C, VET_NOW, 'gets no breath, memory'",
    "bloody-scour+dull, 1, 39.3 C, VET_TODAY, 'scour with blood, memory'",
    "bloody-scour+cannot-rise, 1, 39.3 C, VET_NOW, 'and weak, memory'",
    "scour, 1, 39.3 C, NONE, 'soft dung, bright, memory'",
    "scour+dull, 1, 39.3 C, VET_TODAY, 'soft dung and dull, memory'",
    "lame, 3, 39.3 C, VET_NOW, 'several lame, blisters to be looked for, read'",
    "lame+blisters, 1, 39.3 C, AUTHORITY_NOW, 'V07 read'",
    "lame-no-weight+blisters, 1, 39.3 C, AUTHORITY_NOW, 'V07 read'",
    "trembling, 4, 39.3 C, VET_NOW, 'trembling in many, memory'",
    "tail-bitten+tail-swollen, 1, 39.3 C, VET_NOW, 'infection climbing, memory'",
    "black-dung+cannot-rise, 1, 39.3 C, VET_NOW, 'bleeding ulcer, memory'",
    "hernia, 1, 39.3 C, VET_THIS_WEEK, 'hernia that goes back, memory'",
    "hernia+hernia-hard, 1, 39.3 C, VET_NOW, 'caught gut, memory'",
    "sore-back+cannot-rise, 1, 39.3 C, VET_NOW, 'Iowa State says same day; the stricter counts'",
    "sudden-death+blue-ears, 1, 39.3 C, AUTHORITY_NOW, 'trading standards after Defra, read'",
    "sudden-death+abortion, 1, 39.3 C, AUTHORITY_NOW, 'trading standards after Defra, read'",
    "sudden-death+head-tilt, 1, 39.3 C, AUTHORITY_NOW, 'trading standards after Defra, read'",
    "sudden-death+bleeding-dead, 1, 39.3 C, AUTHORITY_NOW, 'anthrax, memory'",
    "vomiting, 1, 39.3 C, NONE, 'once and bright, memory'",
    "vomiting+swollen-belly, 1, 39.3 C, VET_NOW, 'twist or block, memory'",
  })
  void signs_together(String signs, String count, String temperature, Referral level, String mark) {
    SetupFile setup = setup();
    for (String sign : signs.split("\\+")) {
      setup = with(setup, sign, count, temperature);
    }
    assertThat(referral(setup)).isEqualTo(level);
  }

  @Test
  void one_item_for_one_cause() {
    SetupFile setup = with(setup(), "off-feed", "1", "41.3 C");
    setup = with(setup, "coughing", "1", null);
    setup = with(setup, "diamonds", "1", null);
    assertThat(FollowUps.signItems(Advisor.advise(setup)))
        .extracting(Item::id)
        .filteredOn(id -> id.startsWith("health."))
        .containsExactly("health.now");
    setup = with(setup, "blisters", "1", null);
    assertThat(FollowUps.signItems(Advisor.advise(setup)).get(0).id()).isEqualTo("health.blisters");
  }

  @Test
  void scraps_make_a_fever_a_suspicion() {
    assertThat(referral(with(setup("germany", "yes", "2027-02-20", "garden"), "fever", "1", null)))
        .isEqualTo(Referral.VET_TODAY);
    assertThat(referral(with(setup("germany", "yes", "2027-02-20", "meat"), "fever", "1", null)))
        .isEqualTo(Referral.AUTHORITY_NOW);
  }

  @Test
  void where_ped_is_not_reported_watery_scour_is_for_the_vet() {
    SetupFile setup = setup("germany", "yes", "2027-02-20", "garden");
    assertThat(referral(with(setup, "watery-scour", "4", "39.3 C"))).isEqualTo(Referral.VET_TODAY);
    assertThat(referral(with(setup.with("place.country", null), "watery-scour", "4", "39.3 C")))
        .isEqualTo(Referral.AUTHORITY_NOW);
  }

  @Test
  void deaths_in_two_groups_are_several() {
    SetupFile setup =
        SetupReader.read(
            "signs.yaml",
            """
            checkOn: 2027-06-20
            pigs: [{name: a, count: 3}, {name: b, count: 3}]
            signs:
              - {pigs: a, sign: sudden-death, count: 1, since: 2027-06-20}
              - {pigs: b, sign: sudden-death, count: 1, since: 2027-06-20}
            """,
            TODAY);
    assertThat(referral(setup)).isEqualTo(Referral.AUTHORITY_NOW);
  }

  /** Two deaths within two days, or one and fever: to be reported (trading standards, read). */
  @Test
  void a_death_of_the_diary_counts_beside_signs() {
    SetupFile dead =
        setup().and("diary", Map.of("on", "2027-06-19", "pigs", "four", "did", "died"));
    assertThat(referral(with(dead, "lame", "1", "39.3 C"))).isEqualTo(Referral.VET_TODAY);
    assertThat(referral(with(dead, "off-feed", "1", "41.0 C"))).isEqualTo(Referral.AUTHORITY_NOW);
    assertThat(referral(with(dead, "sudden-death", "1", "39.3 C")))
        .isEqualTo(Referral.AUTHORITY_NOW);
    SetupFile today =
        setup().and("diary", Map.of("on", "2027-06-20", "pigs", "four", "did", "died"));
    Checklist same = Advisor.advise(with(today, "sudden-death", "1", "39.3 C"));
    assertThat(FollowUps.signItems(same)).extracting(Item::id).containsOnlyOnce("diary.died");
    assertThat(FollowUps.referral(same)).isEqualTo(Referral.VET_TODAY);
  }

  @Test
  void a_sign_of_which_nobody_said_what_calls_the_vet_now() {
    SetupFile setup = setup().and("signs", Map.of("pigs", "four", "count", "1"));
    assertThat(referral(setup)).isEqualTo(Referral.VET_NOW);
  }

  @Test
  void fast_breathing_counts_by_its_number() {
    // V-breaths, judgement: over 50 in cool air the same day, over 80 an emergency
    SetupFile winter = setup().with("checkOn", "2027-01-20");
    assertThat(referral(winter.and("signs", breaths("45")))).isEqualTo(Referral.NONE);
    assertThat(referral(winter.and("signs", breaths("60")))).isEqualTo(Referral.VET_TODAY);
    assertThat(referral(winter.and("signs", breaths("90")))).isEqualTo(Referral.VET_NOW);
  }

  private static Map<String, String> breaths(String number) {
    return Map.of(
        "sign",
        "wound",
        "pigs",
        "four",
        "count",
        "1",
        "since",
        "2027-01-20",
        "breaths",
        number,
        "temperature",
        "39.3 C");
  }

  // ------------------------------------------------------------------------- properties

  /** Signs that must be reported whatever else is said, with the number that makes them so. */
  @ParameterizedTest(name = "{0}, seed 20270620")
  @CsvSource({
    "blisters, 1",
    "several-lame, 2",
    "several-dead, 2",
    "bleeding-dead, 1",
    "bitten, 1",
    "sudden-death, 2",
    "blue-ears, 2",
    "abortion, 2",
    "sudden-death,",
    "blue-ears,",
  })
  void what_is_to_be_reported_is_whatever_else_is_said(String sign, String count) {
    SplittableRandom random = new SplittableRandom(20270620);
    List<SetupFile> setups = Setups.from(20270620).limit(12).map(g -> g.read()).toList();
    for (SetupFile setup : setups) {
      Integer there = setup.setup().pigs().get(0).count();
      if (there != null && there < (count == null ? 2 : Integer.parseInt(count))) {
        continue;
      }
      SetupFile seen = with(setup, sign, count, null);
      for (int more = random.nextInt(4); more > 0; more--) {
        seen = random(seen, random);
      }
      Checklist checklist = Advisor.advise(seen);
      assertThat(FollowUps.referral(checklist))
          .as("%s", seen.setup().signs())
          .isEqualTo(Referral.AUTHORITY_NOW);
      assertThat(checklist.items().get(0).referral())
          .as("first of the list: %s", seen.setup().signs())
          .isEqualTo(Referral.AUTHORITY_NOW);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void another_sign_never_lowers_a_referral(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (SetupFile setup : Setups.from(seed).limit(25).map(g -> g.read()).toList()) {
      SetupFile seen = random(setup, random);
      Referral before = referral(seen);
      for (int more = 0; more < 4; more++) {
        seen = random(seen, random);
        Referral after = referral(seen);
        assertThat(after).as("%s", seen.setup().signs()).isGreaterThanOrEqualTo(before);
        before = after;
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12})
  void not_saying_how_many_since_when_or_what_never_lowers_it(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (SetupFile setup : Setups.from(seed).limit(25).map(g -> g.read()).toList()) {
      SetupFile seen = random(random(setup, random), random);
      Referral known = referral(seen);
      for (String answer : List.of("count", "since")) {
        assertThat(referral(seen.with("signs[0]." + answer, null)))
            .as("without %s: %s", answer, seen.setup().signs())
            .isGreaterThanOrEqualTo(known);
      }
      assertThat(referral(seen))
          .as("no count of breaths against a normal one: %s", seen.setup().signs())
          .isGreaterThanOrEqualTo(referral(seen.with("signs[0].breaths", 30)));
      for (int i = 0; i < seen.setup().pigs().size(); i++) {
        SetupFile ageless =
            seen.with("pigs[" + i + "].born", null).with("pigs[" + i + "].ageOnArrival", null);
        assertThat(referral(ageless))
            .as("without the age: %s", seen.setup().signs())
            .isGreaterThanOrEqualTo(known);
      }
      SetupFile normal = seen.with("signs[0].temperature", 39.3);
      assertThat(referral(seen.with("signs[0].temperature", null)))
          .as("no temperature against a normal one: %s", seen.setup().signs())
          .isGreaterThanOrEqualTo(referral(normal));
      assertThat(referral(seen.with("signs[0].sign", null)))
          .as("without the sign: %s", seen.setup().signs())
          .isGreaterThanOrEqualTo(Referral.VET_NOW);
    }
  }

  @Test
  void no_sign_is_without_an_item_and_none_below_its_level() {
    for (Triage sign : Triage.all()) {
      SetupFile setup = with(setup(), sign.key(), "1", "39.3 C");
      assertThat(FollowUps.signItems(Advisor.advise(setup))).as(sign.key()).isNotEmpty();
      assertThat(referral(setup))
          .as(sign.key())
          .isGreaterThanOrEqualTo(sign.level(new Triage.Circumstances(false, 0L, true, false)));
    }
  }

  private static SetupFile random(SetupFile setup, SplittableRandom random) {
    List<Triage> all = Triage.all();
    String sign = all.get(random.nextInt(all.size())).key();
    Integer there = setup.setup().pigs().get(0).count();
    int most = there == null ? 4 : there;
    String count =
        random.nextInt(3) == 0 ? null : String.valueOf(1 + random.nextInt(Math.min(4, most)));
    String temperature =
        switch (random.nextInt(4)) {
          case 0 -> null;
          case 1 -> "39.3 C";
          default -> "%.1f C".formatted(36.5 + random.nextDouble(6));
        };
    SetupFile more = with(setup, sign, count, temperature);
    String path = "signs[" + (more.setup().signs().size() - 1) + "].since";
    return switch (random.nextInt(3)) {
      case 0 -> more.with(path, null);
      case 1 -> more.with(path, more.setup().checkOn().minusDays(3).toString());
      default -> more;
    };
  }

  /** Beside a sooner call the items about signs name no call of their own. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22})
  void no_lesser_item_names_a_later_call(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (SetupFile setup : Setups.from(seed).limit(25).map(g -> g.read()).toList()) {
      SetupFile seen = random(random(random(setup, random), random), random);
      Checklist checklist = Advisor.advise(seen);
      if (FollowUps.referral(checklist).compareTo(Referral.VET_NOW) < 0) {
        continue;
      }
      String text =
          new SignsReport(checklist, List.of(), SignsReport.Beside.NOTHING)
              .text(s -> s)
              .replaceAll("\\s+", " ");
      assertThat(text)
          .as("%s", seen.setup().signs())
          .doesNotContain("Call Call your vet today", "Call Call your vet this week")
          .doesNotContain(". Call the vet today.", ". Call the vet this week.");
    }
  }

  // ------------------------------------------------------------------------- rules as written

  @Test
  void signs_named_in_rules_are_signs() throws IOException {
    Set<String> keys = new HashSet<>(Rulebook.questions().get("signs.sign").choices().keySet());
    Pattern named = Pattern.compile("contains \"([a-z-]+)\"");
    Set<String> seen = new HashSet<>();
    for (String topic : List.of("health", "sun", "water")) {
      Matcher found = named.matcher(Files.readString(Path.of("rules", topic, topic + ".drl")));
      while (found.find()) {
        assertThat(keys).as(topic + ".drl").contains(found.group(1));
        seen.add(found.group(1));
      }
    }
    assertThat(seen).hasSizeGreaterThan(20);
  }

  @Test
  void every_item_about_illness_says_what_to_have_ready_and_what_it_means_for_meat() {
    List<Card> cards = new ArrayList<>(Rulebook.cards().values());
    cards.removeIf(c -> !c.topic().equals("health"));
    assertThat(cards).hasSizeGreaterThan(15);
    for (Card card : cards) {
      assertThat(card.ready()).as(card.id()).isNotBlank();
      assertThat(card.caution()).as(card.id()).isNotBlank();
      if (card.referral() == Referral.AUTHORITY_NOW) {
        assertThat(card.atRisk()).as(card.id()).isNotBlank();
        assertThat(card.meat()).as(card.id()).isNotBlank();
      }
    }
  }
}
