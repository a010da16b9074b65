package swineherd.advice;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/**
 * The examples beside the rules, {@code rules/TOPIC/TOPIC.examples.yaml}: for each rule a setup
 * where it fires, and the same setup with one thing changed, where it stays silent.
 */
final class Examples {
  static final Path RULES = Path.of("rules");
  static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  private static final YAMLMapper YAML = new YAMLMapper();

  /** A whole examples file; {@code base} is what every example begins with. */
  record File(JsonNode base, List<Example> examples) {}

  /**
   * One example.
   *
   * @param rule name of the rule
   * @param fires answers that make it fire on top of the base, by their path
   * @param says words that must stand in its item
   * @param about the group or pen it must be about; null if that does not matter
   * @param silent why it stays silent, and the answers changed for that; null takes an answer away
   */
  record Example(
      String rule,
      Map<String, JsonNode> fires,
      List<String> says,
      String about,
      Map<String, Map<String, JsonNode>> silent) {}

  private Examples() {}

  static List<Path> files() throws IOException {
    try (Stream<Path> found = Files.walk(RULES)) {
      return found.filter(f -> f.toString().endsWith(".examples.yaml")).sorted().toList();
    }
  }

  static File read(Path file) throws IOException {
    return YAML.readValue(file.toFile(), File.class);
  }

  /** The setup of an example with further changes. */
  static SetupFile setup(File file, Example example, Map<String, JsonNode> changes) {
    return read(tree(file, example, changes));
  }

  /** The answers of an example with further changes, as they stand in the file. */
  static ObjectNode tree(File file, Example example, Map<String, JsonNode> changes) {
    ObjectNode tree = file.base().deepCopy();
    if (example.fires() != null) {
      example.fires().forEach((path, value) -> set(tree, path, value.deepCopy()));
    }
    changes.forEach((path, value) -> set(tree, path, value.deepCopy()));
    return tree;
  }

  static SetupFile read(JsonNode tree) {
    try {
      return SetupReader.read("example.yaml", YAML.writeValueAsString(tree), TODAY);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Sets or removes what stands at a path such as {@code pens[0].fence.kind}. */
  static void set(JsonNode tree, String path, JsonNode value) {
    JsonNode at = tree;
    List<String> steps = new ArrayList<>(List.of(path.split("[.\\[]")));
    for (int i = 0; i < steps.size(); i++) {
      String step = steps.get(i).replace("]", "");
      boolean last = i == steps.size() - 1;
      boolean nextIsIndex = !last && steps.get(i + 1).endsWith("]");
      if (at instanceof ArrayNode items) {
        int index = Integer.parseInt(step);
        while (items.size() <= index) {
          items.addObject();
        }
        if (last && value.isNull()) {
          items.remove(index);
        } else if (last) {
          items.set(index, value);
        }
        at = items.get(index);
      } else {
        ObjectNode fields = (ObjectNode) at;
        if (last && value.isNull()) {
          fields.remove(step);
        } else if (last) {
          fields.set(step, value);
        } else if (!fields.has(step) || !fields.get(step).isContainerNode()) {
          fields.set(step, nextIsIndex ? fields.arrayNode() : fields.objectNode());
        }
        at = fields.get(step);
      }
    }
  }
}
