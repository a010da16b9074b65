package swineherd.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.advice.Unanswered;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

class MattersTest {
  private static SetupFile read(String text) {
    return SetupReader.read("test.yaml", text, LocalDate.of(2027, 3, 1));
  }

  @Test
  void a_question_that_decides_an_item_matters_and_says_which() {
    Checklist checklist =
        Advisor.advise(
            read(
                """
                pens: [{name: lot, fence: {kind: electric}}]
                pigs: [{name: reds, count: 3}]
                """));
    assertThat(Matters.of(checklist, KnowledgeBase.shipped(), 60_000).questions())
        .filteredOn(m -> m.question().path().equals("pigs[0].trained"))
        .singleElement()
        .satisfies(
            m -> {
              assertThat(m.items()).contains("fence.train-first");
              assertThat(m.moves()).isEqualTo(m.items().size());
              assertThat(m.by()).isPositive();
            });
  }

  @Test
  void a_question_that_moves_nothing_is_left_out() {
    Checklist checklist = Advisor.advise(read("pigs: [{name: reds, count: 3}]"));
    assertThat(Matters.of(checklist, KnowledgeBase.shipped(), 60_000).questions())
        .extracting(m -> m.question().path())
        .doesNotContain("units", "checkOn", "name");
  }

  @Test
  void the_one_that_moves_the_list_farthest_comes_first() {
    Checklist checklist = Advisor.advise(read("pens: [{name: a}]\npigs: [{name: b, count: 2}]"));
    List<Matters.Matter> matters =
        Matters.of(checklist, KnowledgeBase.shipped(), 60_000).questions();
    assertThat(matters).isNotEmpty().isSortedAccordingTo((a, b) -> Double.compare(b.by(), a.by()));
  }

  @Test
  void what_there_was_no_time_for_is_named_and_not_passed_over() {
    Checklist checklist = Advisor.advise(read("pigs: [{name: reds, count: 3}]"));
    Matters.Tried tried = Matters.of(checklist, KnowledgeBase.shipped(), -1);
    assertThat(tried.questions()).isEmpty();
    assertThat(tried.untried())
        .extracting(Unanswered::path)
        .contains("place.country", "pigs[0].arrives", "feed.kind");
  }

  /** Far more answered than open, so that every pair can be tried. */
  static Stream<Arguments> small() {
    return Stream.of(
        Arguments.of(
            "a fence and its pigs",
            """
            checkOn: 2027-03-01
            keeper: {firstTime: no, children: no, atRisk: no, vet: yes, registered: yes}
            place:
              {country: england, latitude: 52 N, freezes: no, coldestMonth: 2 C, hottestMonth: 22 C,
               hardinessZone: 8b, maritime: no, soil: loam, publicAccess: no}
            pigs:
              - {name: reds, count: 3, breed: tamworth, sex: gilts, skin: pigmented, raised: outdoors,
                 arrives: 2027-05-01, ageOnArrival: 8 weeks, arrivalWeight: 15 kg, weighedBy: scale,
                 source: breeder, weanedAt: 6 weeks, wormedAtSource: yes, dungCount: none,
                 targetWeight: 80 kg, booked: no}
            feed:
              {kind: hand-fed, protein: 16 %, form: pellets, madeFor: pigs, oneFeedToTheEnd: no,
               breederFeed: yes, storage: good, scraps: [none]}
            """),
        Arguments.of(
            "pigs that are there and a pen half described",
            """
            checkOn: 2027-08-01
            keeper: {firstTime: no, children: no, atRisk: no, vet: yes, registered: yes}
            place:
              {country: new-zealand, latitude: 40 S, freezes: no, coldestMonth: 3 C,
               hottestMonth: 23 C, hardinessZone: 9a, maritime: yes, soil: loam, publicAccess: no}
            pens:
              - {name: yard, area: 60 m2, ground: bedded-concrete, pigsBefore: no, steamed: yes,
                 wormsKnown: no, plants: [none-of-these], slope: 0 %, wellDistance: 200 m,
                 openWaterDistance: 200 m,
                 fence: {kind: solid, solid: sheet, height: 1.2 m, gap: 2 cm, footGuard: hard-floor},
                 shelter: {bed: straw}, shade: {wallow: no}}
            pigs:
              - {name: gilts, pen: yard, count: 4, breed: large-white, sex: gilts, raised: indoors,
                 ageOnArrival: 8 weeks, arrivalWeight: 18 kg, weighedBy: scale, source: breeder,
                 weanedAt: 5 weeks, trained: no, wormedAtSource: yes, dungCount: none,
                 targetWeight: 100 kg, booked: no}
            feed:
              {kind: self-feeder, protein: 17 %, form: pellets, madeFor: pigs, oneFeedToTheEnd: no,
               breederFeed: yes, storage: good, scraps: [none]}
            """));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("small")
  void as_found_by_trying_out_every_answer_one_by_one(String name, String text) {
    Checklist base = Advisor.advise(read(text));
    Map<String, Double> before = scores(base.file(), Map.of());
    Map<String, Set<String>> expected = new TreeMap<>();
    for (Unanswered question : base.unanswered()) {
      Set<String> moved = new TreeSet<>();
      for (Object answer : PlausibleAnswers.to(question, base.file())) {
        Map<String, Double> after = scores(base.file(), Map.of(question.path(), answer));
        if (after != null) {
          Set<String> keys = new TreeSet<>(before.keySet());
          keys.addAll(after.keySet());
          for (String key : keys) {
            if (Math.abs(before.getOrDefault(key, 0.0) - after.getOrDefault(key, 0.0)) >= 1) {
              moved.add(key.split(" ")[0]);
            }
          }
        }
      }
      if (!moved.isEmpty()) {
        expected.put(question.path(), moved);
      }
    }
    Map<String, Set<String>> found = new TreeMap<>();
    Matters.of(base, KnowledgeBase.shipped(), 60_000)
        .questions()
        .forEach(m -> found.put(m.question().path(), m.items()));
    assertThat(found).isNotEmpty().isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("small")
  void pairs_as_found_by_trying_out_every_two_answers(String name, String text) {
    Checklist base = Advisor.advise(read(text));
    Map<String, Set<String>> expected = new TreeMap<>();
    List<Unanswered> open = base.unanswered();
    Set<String> before = scores(base.file(), Map.of()).keySet();
    Map<String, Set<String>> alone = new HashMap<>();
    for (int i = 0; i < open.size(); i++) {
      for (Unanswered other : open.subList(i + 1, open.size())) {
        Set<String> items = new TreeSet<>();
        for (Object a : PlausibleAnswers.to(open.get(i), base.file())) {
          for (Object b : PlausibleAnswers.to(other, base.file())) {
            Set<String> one = keys(alone, base.file(), open.get(i).path(), a);
            Set<String> two = keys(alone, base.file(), other.path(), b);
            Map<String, Double> both =
                scores(base.file(), Map.of(open.get(i).path(), a, other.path(), b));
            if (one == null || two == null || both == null) {
              continue;
            }
            both.keySet().stream()
                .filter(k -> !before.contains(k) && !one.contains(k) && !two.contains(k))
                .forEach(k -> items.add(k.split(" ")[0]));
            before.stream()
                .filter(k -> !both.containsKey(k) && one.contains(k) && two.contains(k))
                .forEach(k -> items.add(k.split(" ")[0]));
          }
        }
        if (!items.isEmpty()) {
          String key = Stream.of(open.get(i).path(), other.path()).sorted().toList().toString();
          expected.put(key, items);
        }
      }
    }
    Map<String, Set<String>> found = new TreeMap<>();
    Matters.withPairs(base, KnowledgeBase.shipped(), 600_000)
        .pairs()
        .forEach(
            m -> found.put(List.of(m.question().path(), m.with().path()).toString(), m.items()));
    assertThat(found).isEqualTo(expected);
  }

  private static Set<String> keys(
      Map<String, Set<String>> cache, SetupFile file, String path, Object answer) {
    return cache.computeIfAbsent(
        path + " " + answer,
        k -> {
          Map<String, Double> scores = scores(file, Map.of(path, answer));
          return scores == null ? null : scores.keySet();
        });
  }

  private static Map<String, Double> scores(SetupFile file, Map<String, Object> answers) {
    SetupFile changed = file;
    try {
      for (Map.Entry<String, Object> answer : answers.entrySet()) {
        changed = changed.with(answer.getKey(), answer.getValue());
      }
    } catch (BadSetupException e) {
      return null;
    }
    Map<String, Double> scores = new TreeMap<>();
    Advisor.advise(changed)
        .items()
        .forEach(i -> scores.put(i.id() + " " + i.advice().about(), i.rank().score()));
    return scores;
  }

  @Test
  void an_answer_given_changes_the_copy_and_not_the_setup() {
    SetupFile file = read("pens: [{name: lot}]\npigs: [{name: reds, count: 3}]");
    SetupFile changed = file.with("pens[0].fence.kind", "electric");
    assertThat(changed.setup().pens().get(0).fence().kind()).isNotNull();
    assertThat(changed.answers()).containsKey("pens[0].fence.kind");
    assertThat(file.setup().pens().get(0).fence().kind()).isNull();
    assertThat(changed.with("pens[0].fence.kind", null).setup()).isEqualTo(file.setup());
  }
}
