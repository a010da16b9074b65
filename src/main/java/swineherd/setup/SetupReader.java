package swineherd.setup;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.deser.std.StdScalarDeserializer;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.units.Dimension;

/**
 * Reads a setup file, YAML or JSON.
 *
 * <pre>{@code
 * SetupFile file = SetupReader.read(Path.of("scenarios/alder-bottom.yaml"), LocalDate.now());
 * file.setup().pigs().get(0).count();
 * }</pre>
 *
 * Everything wrong with a file is reported together. Nothing is guessed: what was not answered is
 * null, except for names, the units to read and the day of the check.
 */
public final class SetupReader {
  static final int MAX_BYTES = 1 << 20;

  private static final ObjectMapper MAPPER =
      new ObjectMapper()
          .registerModule(
              new SimpleModule()
                  .addDeserializer(LocalDate.class, from(LocalDate.class, LocalDate::parse))
                  .addDeserializer(MonthDay.class, from(MonthDay.class, MonthDay::parse)));

  private SetupReader() {}

  /**
   * @param path a file; or {@code -} for standard input
   * @param today the day of the check where the file names none
   * @throws BadSetupException if it cannot be read or something in it is wrong
   */
  public static SetupFile read(Path path, LocalDate today) {
    String file = path.toString();
    return read(file, text(file, path), today);
  }

  /**
   * Reads the text of a setup file.
   *
   * @param file how the file is called in messages; a name that ends in .json is read as JSON
   * @throws BadSetupException if something in it is wrong
   */
  public static SetupFile read(String file, String text, LocalDate today) {
    List<Problem> problems = new ArrayList<>();
    List<Problem> unusual = new ArrayList<>();
    Node root = Node.parse(text, file.toLowerCase(Locale.ROOT).endsWith(".json"), problems);
    if (root == null || (root instanceof Node.Scalar scalar && scalar.text() == null)) {
      if (problems.isEmpty()) {
        problems.add(new Problem("", 0, 0, "the file is empty", "see scenarios/ for examples"));
      }
      throw new BadSetupException(file, problems);
    }
    AnswerReader reader = new AnswerReader(Rulebook.questions(), problems, unusual);
    ObjectNode tree = reader.read(root);
    complete(tree, reader.answers(), today);
    Setup setup = bind(tree);
    SetupChecks.check(setup, reader.answers(), problems);
    if (!problems.isEmpty()) {
      problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
      throw new BadSetupException(file, problems);
    }
    return new SetupFile(file, setup, reader.answers(), List.copyOf(unusual));
  }

  /** Fills in what is not a fact about the pigs: names, units to read, the day of the check. */
  private static void complete(ObjectNode tree, Map<String, Answer> answers, LocalDate today) {
    if (!tree.has("checkOn")) {
      tree.put("checkOn", today.toString());
    }
    if (!tree.has("units")) {
      tree.put("units", writesUs(tree, answers) ? "us" : "metric");
    }
    name(tree.get("pens"), "pen");
    name(tree.get("pigs"), "group");
    if (tree.get("pens") instanceof ArrayNode pens
        && pens.size() == 1
        && tree.get("pigs") instanceof ArrayNode groups) {
      for (JsonNode group : groups) {
        if (!group.has("pen")) {
          ((ObjectNode) group).set("pen", pens.get(0).get("name"));
        }
      }
    }
  }

  private static void name(JsonNode list, String word) {
    if (list instanceof ArrayNode items) {
      for (int i = 0; i < items.size(); i++) {
        if (!items.get(i).has("name")) {
          ((ObjectNode) items.get(i)).put("name", word + " " + (i + 1));
        }
      }
    }
  }

  private static boolean writesUs(ObjectNode tree, Map<String, Answer> answers) {
    String country = tree.path("place").path("country").asText("");
    if (!country.isEmpty()) {
      return country.equals("united-states");
    }
    return answers.values().stream()
        .anyMatch(
            a -> {
              Dimension dimension =
                  Rulebook.questions().get(Question.keyOf(a.path())).kind().dimension();
              return dimension != null && dimension.isUs(a.said());
            });
  }

  private static Setup bind(ObjectNode tree) {
    try {
      return MAPPER.treeToValue(tree, Setup.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("questions and records do not agree", e);
    }
  }

  private static String text(String file, Path path) {
    try (InputStream in = file.equals("-") ? System.in : open(file, path)) {
      byte[] bytes = in.readNBytes(MAX_BYTES + 1);
      if (bytes.length > MAX_BYTES) {
        throw whole(file, "is longer than a setup can be", "at most 1 MiB");
      }
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw whole(file, "is not text in UTF-8", "save it as UTF-8");
    } catch (IOException e) {
      throw whole(file, "cannot be read: " + e.getMessage(), null);
    }
  }

  private static InputStream open(String file, Path path) throws IOException {
    if (Files.isDirectory(path)) {
      throw whole(file, "is a folder", "a setup file, such as " + path.resolve("my-pigs.yaml"));
    }
    if (!Files.exists(path)) {
      throw whole(file, "there is no such file", null);
    }
    if (!Files.isReadable(path)) {
      throw whole(file, "may not be read", null);
    }
    return Files.newInputStream(path);
  }

  private static BadSetupException whole(String file, String message, String accepted) {
    return new BadSetupException(file, List.of(new Problem("", 0, 0, message, accepted)));
  }

  private static <T> StdScalarDeserializer<T> from(Class<T> type, Function<CharSequence, T> parse) {
    return new StdScalarDeserializer<>(type) {
      private static final long serialVersionUID = 1L;

      @Override
      public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
        return parse.apply(parser.getText());
      }
    };
  }
}
