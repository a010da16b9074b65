package swineherd.setup;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import swineherd.rulebook.Question;
import swineherd.rulebook.RecordReader;
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
   * @param file how the file is called in messages; a name that ends in .json is read as JSON, and
   *     so is standard input ({@code -}) that begins with a brace
   * @throws BadSetupException if something in it is wrong
   */
  public static SetupFile read(String file, String text, LocalDate today) {
    mustBeText(file, text);
    List<Problem> problems = new ArrayList<>();
    List<Problem> unusual = new ArrayList<>();
    Node root = Node.parse(text, isJson(file, text), problems);
    if (root == null || (root instanceof Node.Scalar scalar && scalar.text() == null)) {
      if (problems.isEmpty()) {
        problems.add(new Problem("", 0, 0, "the file is empty", "see scenarios/ for examples"));
      }
      throw new BadSetupException(file, problems);
    }
    AnswerReader reader = new AnswerReader(Rulebook.questions(), problems, unusual);
    Map<String, Object> tree = reader.read(root);
    complete(tree, reader.answers(), today);
    Setup setup = RecordReader.read(Setup.class, tree);
    SetupChecks.check(setup, reader.answers(), problems);
    if (!problems.isEmpty()) {
      problems.sort(Comparator.comparingInt(Problem::line).thenComparingInt(Problem::column));
      throw new BadSetupException(file, problems);
    }
    return new SetupFile(
        file, Since.applied(setup, tree), reader.answers(), tree, List.copyOf(unusual));
  }

  static SetupFile change(SetupFile file, Map<String, Object> changes) {
    Map<String, Object> tree = copy(file.tree());
    Map<String, Answer> answers = new LinkedHashMap<>(file.answers());
    changes.forEach(
        (path, value) -> {
          set(tree, path, value);
          if (value == null) {
            answers.remove(path);
          } else {
            Question question = Rulebook.questions().get(Question.keyOf(path));
            String key = value instanceof Boolean yes ? (yes ? "yes" : "no") : value.toString();
            answers.put(path, new Answer(path, question.label(), key, key, 0, 0));
          }
        });
    return made(file, tree, answers);
  }

  /**
   * A setup made of answers that were read before.
   *
   * @throws BadSetupException if they do not go with each other
   */
  static SetupFile made(SetupFile file, Map<String, Object> tree, Map<String, Answer> answers) {
    Setup setup = RecordReader.read(Setup.class, tree);
    List<Problem> problems = new ArrayList<>();
    SetupChecks.check(setup, answers, problems);
    if (!problems.isEmpty()) {
      throw new BadSetupException(file.file(), problems);
    }
    return new SetupFile(file.file(), Since.applied(setup, tree), answers, tree, file.unusual());
  }

  /** Adds a member to a list, read by the catalogue like those of the file. */
  @SuppressWarnings("unchecked") // the reader makes sections as maps of this kind
  static SetupFile add(SetupFile file, String list, Map<String, String> words) {
    Map<String, Object> tree = copy(file.tree());
    List<Object> members = (List<Object>) tree.computeIfAbsent(list, l -> new ArrayList<>());
    // the members that are there stand before it, empty, so that its path comes out right
    List<Node> items = new ArrayList<>();
    members.forEach(m -> items.add(new Node.Fields(0, 0, Map.of())));
    Map<String, Node.Field> fields = new LinkedHashMap<>();
    words.forEach(
        (name, said) -> fields.put(name, new Node.Field(0, 0, new Node.Scalar(0, 0, said))));
    items.add(new Node.Fields(0, 0, fields));
    List<Problem> problems = new ArrayList<>();
    List<Problem> unusual = new ArrayList<>(file.unusual());
    AnswerReader reader = new AnswerReader(Rulebook.questions(), problems, unusual);
    Node.Field member = new Node.Field(0, 0, new Node.Items(0, 0, items));
    Map<String, Object> read = reader.read(new Node.Fields(0, 0, Map.of(list, member)));
    members.add(((List<Object>) read.get(list)).get(members.size()));
    Map<String, Answer> answers = new LinkedHashMap<>(file.answers());
    answers.putAll(reader.answers());
    Setup setup = RecordReader.read(Setup.class, tree);
    SetupChecks.check(setup, answers, problems);
    if (!problems.isEmpty()) {
      throw new BadSetupException(file.file(), problems);
    }
    return new SetupFile(
        file.file(), Since.applied(setup, tree), answers, tree, List.copyOf(unusual));
  }

  static Map<String, Object> copy(Map<?, ?> fields) {
    Map<String, Object> copy = new LinkedHashMap<>();
    fields.forEach((name, value) -> copy.put((String) name, copyOf(value)));
    return copy;
  }

  private static Object copyOf(Object value) {
    if (value instanceof Map<?, ?> inner) {
      return copy(inner);
    }
    return value instanceof List<?> list
        ? new ArrayList<>(list.stream().map(SetupReader::copyOf).toList())
        : value;
  }

  /** Sets a value at a path whose list members are there; sections are made where they are not. */
  @SuppressWarnings("unchecked") // the reader makes sections as maps of this kind
  private static void set(Map<String, Object> tree, String path, Object value) {
    Map<String, Object> at = tree;
    String[] steps = path.split("\\.");
    for (int i = 0; i < steps.length - 1; i++) {
      int open = steps[i].indexOf('[');
      if (open < 0) {
        at = (Map<String, Object>) at.computeIfAbsent(steps[i], s -> new LinkedHashMap<>());
      } else {
        int index = Integer.parseInt(steps[i].substring(open + 1, steps[i].length() - 1));
        at = ((List<Map<String, Object>>) at.get(steps[i].substring(0, open))).get(index);
      }
    }
    String last = steps[steps.length - 1];
    if (value == null) {
      at.remove(last);
    } else {
      at.put(last, value);
    }
  }

  /** Fills in what is not a fact about the pigs: names, units to read, the day of the check. */
  private static void complete(
      Map<String, Object> tree, Map<String, Answer> answers, LocalDate today) {
    tree.putIfAbsent("checkOn", today.toString());
    tree.putIfAbsent("units", writesUs(answers) ? "us" : "metric");
    List<Map<String, Object>> pens = named(tree.get("pens"), "pen");
    List<Map<String, Object>> groups = named(tree.get("pigs"), "group");
    if (pens.size() == 1) {
      groups.forEach(group -> group.putIfAbsent("pen", pens.get(0).get("name")));
    }
  }

  /** The members of a list, each with a name. */
  @SuppressWarnings("unchecked") // the reader makes sections as maps of this kind
  private static List<Map<String, Object>> named(Object list, String word) {
    List<Map<String, Object>> members = list == null ? List.of() : (List<Map<String, Object>>) list;
    for (int i = 0; i < members.size(); i++) {
      members.get(i).putIfAbsent("name", word + " " + (i + 1));
    }
    return members;
  }

  private static boolean writesUs(Map<String, Answer> answers) {
    Answer country = answers.get("place.country");
    if (country != null) {
      return country.key().equals("united-states");
    }
    return answers.values().stream()
        .anyMatch(
            a -> {
              Dimension dimension =
                  Rulebook.questions().get(Question.keyOf(a.path())).kind().dimension();
              return dimension != null && dimension.isUs(a.said());
            });
  }

  /** Standard input has no name to go by; a setup in YAML does not begin with a brace. */
  static boolean isJson(String file, String text) {
    return file.toLowerCase(Locale.ROOT).endsWith(".json")
        || (file.equals("-") && text.stripLeading().startsWith("{"));
  }

  static void mustBeText(String file, String text) {
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i++, column++) {
      char c = text.charAt(i);
      if (c == '\n') {
        line++;
        column = 0;
      } else if (!Node.isText(c)) {
        String message = "the character U+%04X does not belong in text".formatted((int) c);
        throw new BadSetupException(
            file, List.of(new Problem("", line, column, message, "save it as text in UTF-8")));
      }
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
}
