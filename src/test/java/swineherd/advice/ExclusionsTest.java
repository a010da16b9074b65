package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;

/**
 * No list contradicts itself and none says a thing twice: on everything that was written by hand,
 * and on generated setups. The property is the expectation; which pairs contradict is the trade's
 * common sense, and stands with its reason in {@code rules/exclusions.yaml}.
 */
class ExclusionsTest {
  private static final int SETUPS = 80;

  /** Of the answers behind two items so many, at the least, are those of both. */
  private static final double NEARLY_ALL = 0.9;

  private static final YAMLMapper YAML =
      YAMLMapper.builder().enable(DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY).build();

  /**
   * Items of which no two may stand on one list: each of the one with each of the other, or any two
   * of a number. About the same pigs or pen, or about pigs and the pen they are in.
   */
  record Exclusion(List<String> one, List<String> other, List<String> among, String because) {
    Set<Pair> pairs() {
      Set<Pair> pairs = new TreeSet<>();
      for (String a : among == null ? one : among) {
        for (String b : among == null ? other : among) {
          if (!a.equals(b)) {
            pairs.add(Pair.of(a, b));
          }
        }
      }
      return pairs;
    }
  }

  /** Different things to do that rest on the same answers; an exclusion holds all the same. */
  record Companions(List<String> items, String because) {}

  record Pair(String one, String other) implements Comparable<Pair> {
    static Pair of(String a, String b) {
      return a.compareTo(b) < 0 ? new Pair(a, b) : new Pair(b, a);
    }

    @Override
    public int compareTo(Pair that) {
      return toString().compareTo(that.toString());
    }

    @Override
    public String toString() {
      return one + " and " + other;
    }
  }

  private final Map<Pair, String> excluded = new TreeMap<>();
  private final Set<Pair> companions = new HashSet<>();

  ExclusionsTest() throws IOException {
    for (Exclusion exclusion : exclusions()) {
      exclusion.pairs().forEach(pair -> excluded.put(pair, exclusion.because()));
    }
    for (Companions declared : companions()) {
      for (String a : declared.items()) {
        declared.items().forEach(b -> companions.add(Pair.of(a, b)));
      }
    }
  }

  private static List<Exclusion> exclusions() throws IOException {
    return YAML.readValue(Path.of("rules/exclusions.yaml").toFile(), new TypeReference<>() {});
  }

  private static List<Companions> companions() throws IOException {
    return YAML.readValue(Path.of("rules/companions.yaml").toFile(), new TypeReference<>() {});
  }

  @Test
  void every_item_that_is_declared_is_there_and_every_declaration_says_why() throws IOException {
    assertThat(excluded).hasSizeGreaterThan(100);
    for (Exclusion exclusion : exclusions()) {
      assertThat(exclusion.because()).isNotBlank();
      for (Pair pair : exclusion.pairs()) {
        assertThat(Rulebook.cards()).containsKeys(pair.one(), pair.other());
      }
    }
    for (Companions declared : companions()) {
      assertThat(declared.because()).isNotBlank();
      assertThat(Rulebook.cards()).containsKeys(declared.items().toArray(String[]::new));
    }
  }

  @TestFactory
  Stream<DynamicTest> what_was_written_by_hand() {
    return ManySetups.written().entrySet().stream()
        .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> check(e.getValue())));
  }

  @TestFactory
  Stream<DynamicTest> seeds_1_to_12() {
    return Stream.iterate(1, seed -> seed + 1)
        .limit(12)
        .map(
            seed ->
                DynamicTest.dynamicTest(
                    "seed " + seed,
                    () -> ManySetups.generated(seed).limit(SETUPS).forEach(this::check)));
  }

  private void check(SetupFile file) {
    Checklist checklist = Advisor.advise(file);
    Setup setup = file.setup();
    List<Item> items = checklist.items();
    Set<String> seen = new HashSet<>();
    for (Item item : items) {
      assertThat(seen.add(item.id() + " " + item.advice().about() + " " + partners(item)))
          .as(
              "%s stands twice about %s in\n%s",
              item.id(), item.advice().about(), ManySetups.told(file))
          .isTrue();
    }
    for (int i = 0; i < items.size(); i++) {
      for (Item other : items.subList(i + 1, items.size())) {
        Pair pair = Pair.of(items.get(i).id(), other.id());
        if (excluded.containsKey(pair) && together(items.get(i), other, setup)) {
          throw new AssertionError(
              pair
                  + " stand on one list, yet "
                  + excluded.get(pair)
                  + "\n"
                  + ManySetups.told(file));
        }
        if (!companions.contains(pair) && sameCause(items.get(i), other)) {
          throw new AssertionError(
              pair
                  + " say something of the same pigs or pen from the same answers: one cause, one"
                  + " item. If they are two things to do say so in rules/companions.yaml.\n"
                  + ManySetups.told(file));
        }
      }
    }
  }

  /** About the same pigs or pen, or pigs and the pen they are in, and not with different others. */
  private static boolean together(Item a, Item b, Setup setup) {
    String one = a.advice().about();
    String other = b.advice().about();
    boolean place = one.equals(other) || isPenOf(one, other, setup) || isPenOf(other, one, setup);
    return place
        && (partners(a).isEmpty()
            || partners(b).isEmpty()
            || partners(a).contains(partners(b))
            || partners(b).contains(partners(a)));
  }

  private static boolean isPenOf(String pen, String pigs, Setup setup) {
    return setup.pigs().stream().anyMatch(g -> g.name().equals(pigs) && pen.equals(g.pen()));
  }

  /** The other pigs that an item is about, in words; empty if there are none. */
  private static String partners(Item item) {
    for (String name : List.of("others", "residents")) {
      if (item.advice().values().get(name) instanceof Value.Words words) {
        return words.words();
      }
    }
    return "";
  }

  private static boolean sameCause(Item a, Item b) {
    if (a.id().equals(b.id())
        || !a.card().topic().equals(b.card().topic())
        || !a.advice().about().equals(b.advice().about())) {
      return false;
    }
    Set<String> one = paths(a);
    Set<String> both = new HashSet<>(paths(b));
    Set<String> all = new HashSet<>(one);
    all.addAll(both);
    both.retainAll(one);
    return !all.isEmpty() && both.size() >= NEARLY_ALL * all.size();
  }

  private static Set<String> paths(Item item) {
    Set<String> paths = new HashSet<>();
    item.because().forEach(b -> paths.add(b.path()));
    return paths;
  }
}
