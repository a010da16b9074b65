package swineherd.setup;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The text of a setup file, changed at one answer and otherwise as the person wrote it: comments,
 * order, blank lines, quotes and line ends stay.
 *
 * <pre>{@code
 * SetupText text = SetupText.of("pigs.yaml", written).set("pigs[0].arrives", "24 April 2027");
 * text.read(today); // throws if it does not go with the other answers
 * }</pre>
 *
 * Every change is read back; if it does not mean what was asked for, and nothing else, it is
 * refused. Whether the answers make sense is a matter of {@link #read}.
 */
public final class SetupText {
  private static final Pattern STEP = Pattern.compile("(\\w+)|\\[(\\d+)]");

  private final String file;
  private final String text;
  private final boolean json;

  private SetupText(String file, String text, boolean json) {
    this.file = file;
    this.text = text;
    this.json = json;
  }

  /**
   * @param file how the file is called in messages; its ending tells YAML from JSON as in {@link
   *     SetupReader#read(String, String, LocalDate)}
   * @param text as written; may be empty, for a file that is only begun
   * @throws BadSetupException if it is not YAML or JSON
   */
  public static SetupText of(String file, String text) {
    boolean json = SetupReader.isJson(file, text);
    SetupText begun = new SetupText(file, json && text.isBlank() ? "{\n}\n" : text, json);
    begun.meaning();
    return begun;
  }

  /** The text as it stands now. */
  public String text() {
    return text;
  }

  /** The same answers with other comments; as it is, if those would change an answer. */
  public SetupText remarked(String changed) {
    SetupText other = with(changed);
    try {
      return Objects.equals(meaning(), other.meaning()) ? other : this;
    } catch (BadSetupException e) {
      return this;
    }
  }

  /** The paths of all answers that are written down as unknown. */
  public Set<String> unknown() {
    Set<String> paths = new TreeSet<>();
    Meaning.unknown(meaning(), "", paths);
    return paths;
  }

  /**
   * Reads it as a setup.
   *
   * @throws BadSetupException if something in it is wrong
   */
  public SetupFile read(LocalDate today) {
    return SetupReader.read(file, text, today);
  }

  /**
   * Gives or changes an answer. Sections that are not there are made, in the order of the
   * questions; so is the next member of a list.
   *
   * @param path {@code pigs[0].arrives}
   * @param said the answer as a person writes it
   * @throws BadSetupException if the place cannot be changed without damage
   */
  public SetupText set(String path, String said) {
    return put(path, oneLine(said));
  }

  /** Gives or changes an answer of several parts; see {@link #set(String, String)}. */
  public SetupText set(String path, List<String> said) {
    return put(path, said.stream().map(SetupText::oneLine).toList());
  }

  /**
   * Adds a member at the end of a list.
   *
   * @param list {@code diary}
   * @param answers what is said, by the path below the member: {@code fence.kind}
   * @throws BadSetupException if the place cannot be changed without damage
   */
  public SetupText append(String list, Map<String, String> answers) {
    Map<String, Object> member = new LinkedHashMap<>();
    List<String> order = Edit.order(list);
    answers.entrySet().stream()
        .sorted(Comparator.comparingInt(e -> Edit.position(order, e.getKey())))
        .forEach(e -> Meaning.put(member, steps(e.getKey()), oneLine(e.getValue())));
    Object now = Meaning.at(meaning(), steps(list));
    return put(list + "[" + (now instanceof List<?> members ? members.size() : 0) + "]", member);
  }

  /**
   * Takes an answer, a section or a member of a list away. An answer with a comment beside it
   * becomes {@code unknown}, so that the comment can stay.
   *
   * @throws BadSetupException if the place cannot be changed without damage
   */
  public SetupText takeAway(String path) {
    List<Object> steps = steps(path);
    if (Meaning.at(meaning(), steps) == null) {
      return this;
    }
    Object expected = Meaning.copy(meaning());
    Meaning.remove(expected, steps);
    return with(new Edit(file, text, json, path, steps).remove()).orRefuse(expected, path);
  }

  private SetupText put(String path, Object value) {
    List<Object> steps = steps(path);
    Object before = meaning();
    if (value.equals(Meaning.at(before, steps))) {
      return this;
    }
    Object expected = Meaning.copy(before);
    if (!Meaning.put(expected, steps, value)) {
      throw refuse(path, "there is nothing to add it to", "one after the last of the list");
    }
    return with(new Edit(file, text, json, path, steps).put(value)).orRefuse(expected, path);
  }

  private SetupText orRefuse(Object expected, String path) {
    Object now;
    try {
      now = meaning();
    } catch (BadSetupException e) {
      now = null;
    }
    if (!Objects.equals(Meaning.known(expected), Meaning.known(now))) {
      throw refuse(path, "cannot be changed here without damage", "change it by hand");
    }
    return this;
  }

  private Object meaning() {
    List<Problem> problems = new ArrayList<>();
    SetupReader.mustBeText(file, text);
    Node root = Node.parse(text, json, problems);
    if (!problems.isEmpty()) {
      throw new BadSetupException(file, problems);
    }
    Object meaning = Meaning.of(root);
    return meaning instanceof Map ? meaning : new LinkedHashMap<>();
  }

  private SetupText with(String changed) {
    return new SetupText(file, changed, json);
  }

  private BadSetupException refuse(String path, String message, String accepted) {
    return new BadSetupException(file, List.of(new Problem(path, 0, 0, message, accepted)));
  }

  private static String oneLine(String said) {
    return said.strip().replaceAll("\\s+", " ");
  }

  /** The names and numbers of a path. */
  private static List<Object> steps(String path) {
    List<Object> steps = new ArrayList<>();
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      steps.add(step.group(1) != null ? step.group(1) : Integer.valueOf(step.group(2)));
    }
    return steps;
  }
}
