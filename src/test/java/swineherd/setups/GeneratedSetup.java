package swineherd.setups;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.time.LocalDate;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/**
 * A setup that was made at random, as a keeper would have written it.
 *
 * @param tree the answers as they stand in the file
 */
public record GeneratedSetup(ObjectNode tree) {
  private static final YAMLMapper YAML = new YAMLMapper();
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  /** The same with one answer changed; null takes it away. */
  public GeneratedSetup with(String path, String answer) {
    ObjectNode changed = tree.deepCopy();
    JsonNode at = changed;
    String[] steps = path.split("\\.");
    for (int i = 0; i < steps.length; i++) {
      int open = steps[i].indexOf('[');
      String name = open < 0 ? steps[i] : steps[i].substring(0, open);
      if (i == steps.length - 1 && open < 0) {
        if (answer == null) {
          ((ObjectNode) at).remove(name);
        } else {
          ((ObjectNode) at).put(name, answer);
        }
        break;
      }
      JsonNode next = at.get(name);
      if (next == null) {
        next = open < 0 ? ((ObjectNode) at).putObject(name) : ((ObjectNode) at).putArray(name);
      }
      if (open >= 0) {
        int index = Integer.parseInt(steps[i].substring(open + 1, steps[i].length() - 1));
        ArrayNode items = (ArrayNode) next;
        while (items.size() <= index) {
          items.addObject();
        }
        next = items.get(index);
      }
      at = next;
    }
    return new GeneratedSetup(changed);
  }

  /** What was answered there; null if nothing. */
  public String answer(String path) {
    JsonNode at = tree.at("/" + path.replace("[", "/").replace("]", "").replace(".", "/"));
    return at.isMissingNode() ? null : at.asText();
  }

  /** The text of the file. */
  public String yaml() {
    try {
      return YAML.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * The setup as it is read.
   *
   * @throws swineherd.setup.BadSetupException if it is none, which is a fault of the generator
   */
  public SetupFile read() {
    return SetupReader.read("generated.yaml", yaml(), TODAY);
  }

  @Override
  public String toString() {
    return yaml();
  }
}
