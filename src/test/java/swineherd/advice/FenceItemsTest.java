package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swineherd.setup.SetupReader;

/** However much or little is said of a fence, no cause of trouble is told twice. */
class FenceItemsTest {
  private static final long SEED = 20270301;

  /** Items of which only one may come for a pen. */
  private static final List<Set<String>> ONE_OF =
      List.of(
          Set.of("fence.find-out", "fence.walk-wires", "fence.walk-solid"),
          Set.of("fence.train-first", "fence.train-in-pen", "fence.trained"),
          Set.of("fence.set-wires", "fence.walk-wires", "fence.wires-suit", "fence.find-out"),
          Set.of(
              "fence.voltage-unsafe",
              "fence.voltage-low",
              "fence.voltage-too-high",
              "fence.voltage-good",
              "fence.measure-voltage"),
          Set.of("fence.measure-voltage", "fence.weak-at-far-end"),
          Set.of("fence.stronger-energizer", "fence.split-or-clear"),
          Set.of("fence.return-wire-dry", "fence.return-wire-frost"),
          Set.of("fence.too-light", "fence.barbed", "fence.guard-foot", "fence.none-yet"),
          Set.of("fence.solid-holds", "fence.close-gaps"),
          Set.of("fence.solid-holds", "fence.walk-solid"));

  private static final List<List<String>> LIVE =
      List.of(
          List.of("strands: 1", "strands: 2", "strands: 3"),
          List.of("conductor: netting", "conductor: poly-3", "conductor: steel-1.6"),
          List.of("length: 60 m", "length: 400 m", "length: 3 km"),
          List.of("growth: clean", "growth: medium", "growth: heavy"),
          List.of("output: 0.2 J", "output: 2 J", "output: 9 J"),
          List.of("openVoltage: 8 kV, loadVoltage: 3 kV", "openVoltage: 9 kV, loadVoltage: 6 kV"),
          List.of("endVoltage: 0 V", "endVoltage: 2.5 kV", "endVoltage: 6 kV"),
          List.of("earthRods: 0", "earthRods: 3"),
          List.of("returnWire: yes", "returnWire: no"),
          List.of("signs: yes", "signs: no"));

  private static final List<List<String>> SOLID =
      List.of(
          List.of("solid: barbed", "solid: poultry-wire", "solid: woven-wire", "solid: boards"),
          List.of("height: 50 cm", "height: 1.1 m"),
          List.of("gap: 5 cm", "gap: 20 cm"),
          List.of("footGuard: none", "footGuard: buried"));

  static Stream<String> seed_20270301() {
    Random random = new Random(SEED);
    return IntStream.range(0, 150).mapToObj(i -> setup(random));
  }

  private static String setup(Random random) {
    String kind = pick(random, List.of("electric", "solid", "both", "none", "unknown"));
    StringBuilder fence = new StringBuilder("kind: " + kind);
    if (kind.equals("electric") || kind.equals("both")) {
      LIVE.forEach(choices -> maybe(random, choices, fence));
    }
    if (kind.equals("solid") || kind.equals("both")) {
      SOLID.forEach(choices -> maybe(random, choices, fence));
    }
    if (kind.equals("electric")) {
      maybe(random, List.of("trainingPen: yes", "trainingPen: no"), fence);
    }
    StringBuilder place = new StringBuilder("country: canada");
    maybe(random, List.of("soil: sand", "soil: loam"), place);
    maybe(random, List.of("coldestMonth: -12 C", "coldestMonth: 4 C", "freezes: yes"), place);
    maybe(random, List.of("publicAccess: yes", "publicAccess: no"), place);
    StringBuilder pigs = new StringBuilder("name: pigs");
    maybe(random, List.of("arrives: 2027-01-05", "arrives: 2027-09-20"), pigs);
    maybe(random, List.of("arrivalWeight: 6 kg", "arrivalWeight: 60 kg"), pigs);
    maybe(random, List.of("trained: yes", "trained: no"), pigs);
    return """
        checkOn: 2027-03-01
        place: {%s}
        pens: [{name: field, area: 900 m2, fence: {%s}}]
        pigs: [{%s}]
        """
        .formatted(place, fence, pigs);
  }

  private static void maybe(Random random, List<String> choices, StringBuilder answers) {
    if (random.nextInt(3) > 0) {
      answers.append(", ").append(pick(random, choices));
    }
  }

  private static String pick(Random random, List<String> choices) {
    return choices.get(random.nextInt(choices.size()));
  }

  @ParameterizedTest
  @MethodSource("seed_20270301")
  void one_cause_is_told_once(String yaml) {
    Checklist checklist = Advisor.advise(SetupReader.read("fence.yaml", yaml, Examples.TODAY));
    List<String> told =
        Stream.concat(
                checklist.items().stream().map(Item::id),
                checklist.inOrder().stream().map(o -> o.card().id()))
            .filter(id -> id.startsWith("fence."))
            .toList();
    assertThat(told).as(yaml).isNotEmpty().doesNotHaveDuplicates();
    for (Set<String> rivals : ONE_OF) {
      assertThat(told.stream().filter(rivals::contains).collect(Collectors.toSet()))
          .as(yaml)
          .hasSizeLessThanOrEqualTo(1);
    }
  }
}
