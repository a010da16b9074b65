package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;

/**
 * What makes a setup better never makes its list worse: an improved answer adds no item that rests
 * on it, or is of a topic that does, unless a worse item of the topic goes in exchange (a fence
 * that is no fence becomes a weak one). The property is the expectation; which answer is the better
 * one is common practice.
 */
class BetterIsNeverWorseTest {
  private static final int SETUPS = 250;
  private static final int TRIED_EACH = 6;

  /** How a question is answered better. */
  private interface Better {
    /** The better answer in SI units, or nothing if it is as good as it gets. */
    Optional<Object> than(String answer);
  }

  private static final Map<String, Better> BETTER = new TreeMap<>();

  /** Items that an improvement may bring by itself, and why. */
  private static final Map<String, String> MAY_COME =
      Map.ofEntries(
          Map.entry("pens.shelter.floorArea -> winter.bed-too-large", "a hut can be too large"),
          Map.entry("pens.fence.output -> electric.battery", "more output empties it sooner"),
          Map.entry("pens.fence.output -> electric.panel", "the same"),
          Map.entry("pens.fence.output -> fence.more-rods", "more output needs more earth"),
          Map.entry("pens.fence.strands -> fence.walk-wires", "the new ones were not measured"),
          Map.entry("pigs.booked -> winter.rebook", "only what is booked can be moved"),
          Map.entry("keeper.vet -> arrival.box", "the vet comes first"),
          Map.entry("keeper.vet -> arrival.vaccination", "there is somebody to ask"),
          Map.entry("pigs.wormedOn -> parasites.dung-test", "sooner wormed is sooner tested"),
          Map.entry("pigs.wormedOn -> parasites.leave-them", "the same"),
          Map.entry("pens.feederLength -> tails.rooting-law", "of two causes one is left"),
          Map.entry(
              "place.animals -> fence.behind-wire", "wild pigs had asked for a second fence"));

  static {
    for (String yes :
        List.of(
            "keeper.vet",
            "keeper.escapePlan",
            "keeper.registered",
            "place.loadingPlace",
            "pens.steamed",
            "pens.fence.returnWire",
            "pens.fence.signs",
            "pens.fence.trainingPen",
            "pens.shelter.insulated",
            "pens.shelter.anchored",
            "pens.shade.wallow",
            "pens.water.frostProof",
            "pigs.trained",
            "pigs.wormedAtSource",
            "pigs.booked",
            "feed.premix",
            "feed.breederFeed")) {
      is(yes, true);
    }
    for (String no :
        List.of(
            "keeper.children",
            "keeper.atRisk",
            "keeper.heartDevice",
            "place.publicAccess",
            "pens.wormsKnown",
            "pens.pigsBefore",
            "pens.shelter.heatLamp",
            "pens.water.pipeInSun",
            "pigs.mated",
            "feed.oneFeedToTheEnd")) {
      is(no, false);
    }
    is("pigs.males", "castrated");
    is("pigs.dungCount", "clean");
    is("pigs.raised", "outdoors");
    is("pigs.source", "breeder");
    is("pigs.carriedIn", "trailer");
    is("pens.shelter.air", "fresh");
    is("pens.fence.footGuard", "buried");
    is("pens.fence.growth", "clean");
    is("pens.fence.gate", "firm");
    is("feed.madeFor", "pigs");
    is("feed.storage", "good");
    for (String none :
        List.of("pens.fence.hazards", "pens.shelter.fireRisks", "pens.plants", "place.animals")) {
      is(none, List.of("none-of-these"));
    }
    is("feed.scraps", List.of("none"));
    // slats can have no bed; another floor is another house
    BETTER.put(
        "pens.shelter.bed",
        answer ->
            answer.equals("slats") || answer.equals("deep-nest")
                ? Optional.empty()
                : Optional.of("deep-nest"));
    more("pens.area", 2, 1e6);
    more("pens.restedFor", 3, 1e4);
    more("pens.wellDistance", 4, 1e4);
    more("pens.openWaterDistance", 4, 1e4);
    more("pens.shade.area", 2, 1e5);
    more("pens.shelter.floorArea", 1.3, 1e4);
    more("pens.fence.height", 1.3, 1.5);
    more("pens.fence.strands", 2, 4);
    more("pens.fence.output", 2, 4);
    more("pens.fence.loadVoltage", 1.5, 7_000);
    more("pens.fence.endVoltage", 1.5, 7_500);
    more("pens.fence.earthRods", 2, 12);
    more("pens.fence.battery", 2, 500);
    more("pens.fence.panel", 2, 500);
    more("pens.water.drinkers", 2, 20);
    more("pens.water.flow", 1.5, 1e9);
    more("pens.water.volume", 2, 1e4);
    more("pens.feederLength", 2, 20);
    less("pens.fence.gap", 0.5);
    less("pens.fence.length", 0.5);
    less("pens.slope", 0.5);
    less("pens.water.solids", 0.5);
    less("pens.water.sulfate", 0.5);
    less("pens.water.nitrate", 0.5);
    less("feed.scrapsShare", 0.5);
  }

  private static void is(String question, Object best) {
    BETTER.put(
        question,
        answer -> answer.equals(String.valueOf(best)) ? Optional.empty() : Optional.of(best));
  }

  private static void more(String question, double factor, double enough) {
    boolean whole = Rulebook.questions().get(question).kind() == Question.Kind.COUNT;
    BETTER.put(
        question,
        answer -> {
          double now = Double.parseDouble(answer);
          double then = Math.min(now * factor, enough);
          return then <= now
              ? Optional.empty()
              : Optional.of(whole ? (Object) (int) Math.round(then) : (Object) then);
        });
  }

  private static void less(String question, double factor) {
    BETTER.put(question, answer -> Optional.of(Double.parseDouble(answer) * factor));
  }

  private final Map<String, Integer> tried = new TreeMap<>();
  private final List<String> worse = new ArrayList<>();

  @Test
  void on_everything_written_and_on_seed_20270501() {
    Stream.concat(
            ManySetups.written().values().stream(), ManySetups.generated(20270501).limit(SETUPS))
        .forEach(this::tryOut);
    assertThat(worse).isEmpty();
    assertThat(tried).as("tried at all").containsKeys(BETTER.keySet().toArray(String[]::new));
    assertThat(tried).containsKey("pigs.wormedOn");
  }

  @Test
  void exceptions_name_questions_and_cards_that_are_there() {
    for (String exception : MAY_COME.keySet()) {
      assertThat(Rulebook.questions()).containsKey(exception.split(" -> ")[0]);
      assertThat(Rulebook.cards()).containsKey(exception.split(" -> ")[1]);
    }
  }

  /** Tries some improvements of a setup, those first that were tried least so far. */
  private void tryOut(SetupFile file) {
    Map<String, Object> changes = new LinkedHashMap<>();
    file.answers()
        .forEach(
            (path, answer) -> {
              Better better = BETTER.get(Question.keyOf(path));
              if (better != null
                  && !(Question.keyOf(path).equals("pens.area") && groundNotSaid(file, path))) {
                better.than(answer.key()).ifPresent(value -> changes.put(path, value));
              }
            });
    sooner(file, changes);
    Checklist before = Advisor.advise(file);
    changes.entrySet().stream()
        .sorted(Comparator.comparing(c -> tried.getOrDefault(Question.keyOf(c.getKey()), 0)))
        .limit(TRIED_EACH)
        .forEach(
            change -> {
              try {
                SetupFile better = file.with(change.getKey(), change.getValue());
                tried.merge(Question.keyOf(change.getKey()), 1, Integer::sum);
                compare(before, Advisor.advise(better), change.getKey(), change.getValue());
              } catch (BadSetupException e) {
                // it does not go with the other answers
              }
            });
  }

  /** What was done earlier, where it lies in the past: worming by a fortnight. */
  private static void sooner(SetupFile file, Map<String, Object> changes) {
    for (int i = 0; i < file.setup().pigs().size(); i++) {
      if (file.setup().pigs().get(i).wormedOn() != null) {
        changes.put(
            "pigs[" + i + "].wormedOn",
            file.setup().pigs().get(i).wormedOn().minusDays(14).toString());
      }
    }
  }

  /** Without the ground the area alone tells a yard from a pasture, which are judged otherwise. */
  private static boolean groundNotSaid(SetupFile file, String path) {
    return !file.answers().containsKey(path.replace(".area", ".ground"));
  }

  private void compare(Checklist before, Checklist after, String path, Object value) {
    Map<String, Item> then = byKey(after);
    Map<String, Item> gone = byKey(before);
    Set<String> stayed = Set.copyOf(gone.keySet());
    gone.keySet().removeAll(then.keySet());
    then.keySet().removeAll(stayed);
    Set<String> touched =
        before.items().stream()
            .filter(i -> restsOn(i, path))
            .map(i -> i.card().topic())
            .collect(Collectors.toSet());
    for (Item added : then.values()) {
      if (!restsOn(added, path) && !touched.contains(added.card().topic())) {
        continue;
      }
      boolean lesser =
          gone.values().stream()
              .anyMatch(g -> g.card().topic().equals(added.card().topic()) && atLeast(g, added));
      if (!lesser && !MAY_COME.containsKey(Question.keyOf(path) + " -> " + added.id())) {
        worse.add(
            "%s -> %s made %s brought %s %s; gone %s; in %s"
                .formatted(
                    Question.keyOf(path),
                    path,
                    value,
                    added.id(),
                    added.rank(),
                    gone.keySet(),
                    ManySetups.told(before.file())));
      }
    }
  }

  private static boolean atLeast(Item gone, Item added) {
    return Rank.HIGHEST_FIRST.compare(gone.rank(), added.rank()) <= 0;
  }

  private static boolean restsOn(Item item, String path) {
    return item.because().stream().anyMatch(b -> b.path().equals(path));
  }

  private static Map<String, Item> byKey(Checklist checklist) {
    Map<String, Item> all = new TreeMap<>();
    checklist.items().forEach(i -> all.put(i.id() + " " + i.advice().about(), i));
    return all;
  }
}
