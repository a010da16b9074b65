package swineherd.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.outlook.Deadline;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** Remedies against the engine itself, asked again; not examples from a publication. */
class RemediesTest {
  private static final long PATIENCE = 600_000;

  private static final String SMALL =
      """
      checkOn: 2027-03-01
      place:
        {country: england, latitude: 52 N, freezes: yes, firstHardFrost: 1 November,
         coldestMonth: 1 C, hottestMonth: 22 C, soil: loam}
      pens:
        - name: yard
          area: 2 m2
          ground: bedded-concrete
          pigsBefore: no
          fence: {kind: solid, solid: boards, height: 60 cm, gap: 3 cm, footGuard: hard-floor}
          shelter: {kind: barn, floorArea: 2 m2, bed: straw}
          shade: {kind: barn, area: 6 m2}
          water: {kind: nipple, drinkers: 1, flow: 0.5 L/min}
      pigs:
        - {name: reds, pen: yard, count: 4, breed: tamworth, sex: gilts, arrives: 2027-07-01,
           ageOnArrival: 9 weeks, arrivalWeight: 16 kg, targetWeight: 85 kg, trained: yes}
      feed: {kind: self-feeder, protein: 16 %, form: pellets, madeFor: pigs}
      """;

  private static SetupFile read(String text) {
    return SetupReader.read("test.yaml", text, LocalDate.of(2027, 3, 1));
  }

  private static Item item(Checklist checklist, String id) {
    return checklist.items().stream().filter(i -> i.id().equals(id)).findFirst().orElseThrow();
  }

  private static Remedies.Found found(Checklist checklist, String id) {
    return Remedies.of(checklist, KnowledgeBase.shipped(), item(checklist, id), PATIENCE);
  }

  private static Remedy.Change change(Remedies.Found found, String path) {
    return found.remedies().stream()
        .filter(r -> r.changes().size() == 1)
        .map(r -> r.changes().get(0))
        .filter(c -> c.question().path().equals(path))
        .findFirst()
        .orElseThrow();
  }

  private static boolean stands(SetupFile file, Item item) {
    return Advisor.advise(file).items().stream()
        .anyMatch(i -> Trials.key(i).equals(Trials.key(item)));
  }

  private static boolean canBe(SetupFile file, String path, Object answer) {
    try {
      return file.with(path, answer) != null;
    } catch (BadSetupException e) {
      return false;
    }
  }

  /** The first and the last item of every scenario. */
  @TestFactory
  List<DynamicTest> every_remedy_clears_its_item() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList()) {
        Checklist checklist = Advisor.advise(SetupReader.read(file, LocalDate.of(2027, 3, 1)));
        List<Item> items = checklist.items();
        for (int i : new TreeSet<>(List.of(0, items.size() - 1))) {
          Item item = items.get(i);
          tests.add(
              DynamicTest.dynamicTest(
                  file.getFileName() + " " + Trials.key(item), () -> clears(checklist, item)));
        }
      }
    }
    assertThat(tests).hasSizeGreaterThan(15);
    return tests;
  }

  private static void clears(Checklist checklist, Item item) {
    Remedies.Found found = Remedies.of(checklist, KnowledgeBase.shipped(), item, PATIENCE);
    assertThat(found.complete()).isTrue();
    for (Remedy remedy : found.remedies()) {
      SetupFile changed = checklist.file().with(remedy.answers());
      Set<String> after = new TreeSet<>();
      Advisor.advise(changed).items().forEach(i -> after.add(Trials.key(i)));
      assertThat(after).as("%s", remedy.answers()).doesNotContain(Trials.key(item));
      remedy.added().forEach(i -> assertThat(after).contains(Trials.key(i)));
      remedy.cleared().forEach(i -> assertThat(after).doesNotContain(Trials.key(i)));
      for (Remedy.Change change : remedy.changes()) {
        for (Object other : change.orElse()) {
          assertThat(stands(checklist.file().with(change.question().path(), other), item))
              .as("%s: %s", change.question().path(), other)
              .isFalse();
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"space.below-law-uk", "water.more-drinkers", "fence.raise-solid"})
  void choices_as_found_by_trying_out_each(String id) {
    Checklist base = Advisor.advise(read(SMALL));
    Item item = item(base, id);
    Map<String, Set<Object>> expected = new TreeMap<>();
    for (Question question : Rulebook.questions().values()) {
      String path = question.path().replace("[]", "[0]");
      if (question.kind() != Question.Kind.CHOICE
          || question.list()
          || question.change() == Question.Change.NEVER
          || path.matches("(signs|diary|pigs\\[0].(males|crossedWith)|.*dungCount|units).*")) {
        continue;
      }
      for (String key : question.choices().keySet()) {
        if (canBe(base.file(), path, key) && !stands(base.file().with(path, key), item)) {
          expected.computeIfAbsent(path, p -> new TreeSet<>()).add(key);
        }
      }
    }
    Map<String, Set<Object>> found = new TreeMap<>();
    for (Remedy remedy : found(base, id).remedies()) {
      Remedy.Change change = remedy.changes().get(0);
      if (remedy.changes().size() == 1 && expected.containsKey(change.question().path())) {
        Set<Object> values = found.computeIfAbsent(change.question().path(), p -> new TreeSet<>());
        values.add(change.answer());
        values.addAll(change.orElse());
      }
    }
    // of choices that clear it only the better ones are named beside the best
    assertThat(found.keySet()).isEqualTo(expected.keySet());
    found.forEach((path, values) -> assertThat(expected.get(path)).containsAll(values));
  }

  @Test
  void a_pen_is_made_no_larger_than_it_has_to_be() {
    Checklist base = Advisor.advise(read(SMALL));
    Item item = item(base, "space.below-law-uk");
    int least = 2;
    while (stands(base.file().with("pens[0].area", (double) least), item)) {
      least++;
    }
    Remedy.Change area = change(found(base, "space.below-law-uk"), "pens[0].area");
    assertThat(area.bound()).isEqualTo(Remedy.Bound.AT_LEAST);
    // found among whole square metres by trying each; the remedy goes in half ones below ten
    assertThat((double) area.answer()).isBetween(least - 1.0, (double) least);
    assertThat(stands(base.file().with("pens[0].area", (double) area.answer() - 0.5), item))
        .isTrue();
  }

  @Test
  void a_number_of_drinkers_is_the_least_that_does() {
    Checklist base = Advisor.advise(read(SMALL));
    Item item = item(base, "water.more-drinkers");
    Remedy.Change drinkers = change(found(base, item.id()), "pens[0].water.drinkers");
    assertThat(drinkers.bound()).isEqualTo(Remedy.Bound.AT_LEAST);
    int least = (int) drinkers.answer();
    assertThat(stands(base.file().with("pens[0].water.drinkers", least), item)).isFalse();
    assertThat(stands(base.file().with("pens[0].water.drinkers", least - 1), item)).isTrue();
  }

  @Test
  void a_day_later_than_the_last_does_not_do() {
    Checklist base = Advisor.advise(read(SMALL));
    Item item =
        base.items().stream()
            .filter(i -> i.id().startsWith("winter."))
            .filter(i -> i.advice().about().equals("reds"))
            .findFirst()
            .orElseThrow();
    Remedy.Change arrives = change(found(base, item.id()), "pigs[0].arrives");
    assertThat(arrives.bound()).isEqualTo(Remedy.Bound.AT_MOST);
    LocalDate last = LocalDate.parse((String) arrives.answer());
    SetupFile file = base.file();
    assertThat(stands(file.with("pigs[0].arrives", last.toString()), item)).isFalse();
    assertThat(stands(file.with("pigs[0].arrives", last.plusDays(1).toString()), item)).isTrue();
    // the figure works the same day out by another way
    LocalDate latest =
        base.outlooks().stream()
            .filter(Deadline.class::isInstance)
            .map(Deadline.class::cast)
            .findFirst()
            .orElseThrow()
            .latestArrival();
    assertThat(last).isEqualTo(latest);
  }

  @Test
  void two_answers_are_changed_where_one_does_not_do() {
    Checklist base =
        Advisor.advise(
            read(
                """
                pens: [{name: lot, water: {kind: nipple, drinkers: 1, flow: 0.1 L/min}}]
                pigs: [{name: reds, pen: lot, count: 3, arrives: 2027-04-01, ageOnArrival: 8 weeks,
                        arrivalWeight: 16 kg, targetWeight: 80 kg}]
                """));
    for (Item item : base.items()) {
      for (Remedy remedy : Remedies.of(base, KnowledgeBase.shipped(), item, PATIENCE).remedies()) {
        if (remedy.changes().size() == 2) {
          for (Remedy.Change change : remedy.changes()) {
            assertThat(stands(base.file().with(change.answers()), item)).isTrue();
          }
          return;
        }
      }
    }
    throw new AssertionError("no item needs two");
  }

  @Test
  void what_no_act_of_the_keeper_makes_so_is_not_offered() {
    assertThat(List.of("pigs.trained", "pigs.arrivalWeight", "pens.ground"))
        .extracting(key -> Rulebook.questions().get(key).change())
        .containsOnly(Question.Change.NEVER);
  }

  @Test
  void what_cannot_be_decided_any_more_is_not_offered() {
    Checklist base =
        Advisor.advise(read(SMALL.replace("checkOn: 2027-03-01", "checkOn: 2027-08-01")));
    for (Item item : base.items().subList(0, 2)) {
      assertThat(Remedies.of(base, KnowledgeBase.shipped(), item, PATIENCE).remedies())
          .flatExtracting(Remedy::changes)
          .filteredOn(Remedy.Change::canChange)
          .extracting(c -> c.question().question())
          .doesNotContain("pigs.breed", "pigs.arrives", "pigs.sex", "place.country");
    }
  }
}
