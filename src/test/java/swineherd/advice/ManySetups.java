package swineherd.advice;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.setups.GeneratedSetup;
import swineherd.setups.Setups;

/**
 * Setups on which properties of the whole rule base are tried: those that were written by hand, and
 * as many as one likes that a seed makes of them. Children of two examples are the sharper ones:
 * each takes every answer from the one parent or the other, so that rules meet that were never
 * thought of together.
 */
final class ManySetups {
  private ManySetups() {}

  /** What was answered, a line each, to find a fault by. */
  static String told(SetupFile file) {
    return file.answers().values().stream()
        .map(answer -> answer.path() + ": " + answer.said())
        .collect(Collectors.joining("\n"));
  }

  /** Every scenario, case and example that is a sound setup, by its name. */
  static Map<String, SetupFile> written() {
    Map<String, SetupFile> all = new LinkedHashMap<>();
    try {
      for (Path folder : List.of(Path.of("scenarios"), Path.of("src/test/resources/cases"))) {
        try (Stream<Path> files = Files.list(folder)) {
          for (Path file : files.sorted().toList()) {
            String name = file.getFileName().toString();
            if (name.matches("(?!expectations).*\\.(yaml|json)") && !name.equals("b08.yaml")) {
              all.put(name, SetupReader.read(file, Examples.TODAY));
            }
          }
        }
      }
      for (Path path : Examples.files()) {
        Examples.File file = Examples.read(path);
        for (Examples.Example example : file.examples()) {
          String name = "example of " + example.rule();
          while (all.containsKey(name)) {
            name += "'";
          }
          all.put(name, Examples.setup(file, example, Map.of()));
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return all;
  }

  /** Setups made at random of the answers keepers give, then children of examples, without end. */
  static Stream<SetupFile> generated(long seed) {
    Iterator<GeneratedSetup> plain = Setups.from(seed).iterator();
    List<ObjectNode> parents = parents();
    SplittableRandom random = new SplittableRandom(seed);
    return Stream.iterate(0, i -> i + 1)
        .map(i -> i % 4 == 0 ? plain.next().read() : child(parents, random));
  }

  private static SetupFile child(List<ObjectNode> parents, SplittableRandom random) {
    while (true) {
      ObjectNode one = parents.get(random.nextInt(parents.size()));
      ObjectNode other = parents.get(random.nextInt(parents.size()));
      JsonNode child = cross(one, other, random).orElseThrow();
      try {
        return Examples.read(child);
      } catch (BadSetupException e) {
        // the answers do not go with each other; the next two may suit
      }
    }
  }

  private static Optional<JsonNode> cross(JsonNode one, JsonNode other, SplittableRandom random) {
    if (one instanceof ObjectNode fields && other instanceof ObjectNode) {
      ObjectNode child = fields.objectNode();
      TreeSet<String> names = new TreeSet<>();
      one.fieldNames().forEachRemaining(names::add);
      other.fieldNames().forEachRemaining(names::add);
      for (String name : names) {
        cross(one.get(name), other.get(name), random).ifPresent(value -> child.set(name, value));
      }
      return Optional.of(child);
    }
    if (one instanceof ArrayNode members && isMembers(one) && isMembers(other)) {
      ArrayNode child = members.arrayNode();
      for (int i = 0; i < Math.max(one.size(), other.size()); i++) {
        cross(one.get(i), other.get(i), random).ifPresent(child::add);
      }
      return Optional.of(child);
    }
    // what only one of them says is kept for the most part, or little would be said at all
    if (one == null || other == null) {
      return random.nextInt(5) == 0 ? Optional.empty() : Optional.of(one == null ? other : one);
    }
    return Optional.of(random.nextBoolean() ? one : other);
  }

  private static boolean isMembers(JsonNode node) {
    return node instanceof ArrayNode && node.size() > 0 && node.get(0).isObject();
  }

  /** Every example, its pens and groups named alike, so that a name of one holds in the other. */
  private static List<ObjectNode> parents() {
    List<ObjectNode> parents = new ArrayList<>();
    try {
      for (Path path : Examples.files()) {
        Examples.File file = Examples.read(path);
        for (Examples.Example example : file.examples()) {
          ObjectNode tree = Examples.tree(file, example, Map.of());
          Map<String, String> names = new TreeMap<>();
          for (String list : List.of("pens", "pigs")) {
            for (int i = 0; i < tree.path(list).size(); i++) {
              ObjectNode member = (ObjectNode) tree.path(list).get(i);
              String name = list + " " + i;
              names.put(list + member.path("name").asText(), name);
              member.put("name", name);
            }
          }
          for (JsonNode group : tree.path("pigs")) {
            rename((ObjectNode) group, "pen", names.getOrDefault("pens" + pen(group), "pens 0"));
          }
          for (String list : List.of("signs", "diary")) {
            for (JsonNode entry : tree.path(list)) {
              rename((ObjectNode) entry, "pigs", names.get("pigs" + entry.path("pigs").asText()));
              rename((ObjectNode) entry, "pen", names.get("pens" + pen(entry)));
            }
          }
          parents.add(tree);
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return parents;
  }

  private static String pen(JsonNode member) {
    return member.path("pen").asText();
  }

  private static void rename(ObjectNode member, String field, String name) {
    if (member.has(field) && name != null) {
      member.set(field, TextNode.valueOf(name));
    }
  }
}
