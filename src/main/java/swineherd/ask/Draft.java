package swineherd.ask;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Answer;
import swineherd.setup.BadSetupException;
import swineherd.setup.Problem;
import swineherd.setup.SafeFile;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.setup.SetupText;

/**
 * The setup file while it is written, one answer at a time. Every answer is on the disk before the
 * next is asked, and what stands on the disk is read again before each: whoever edits the file
 * meanwhile loses nothing.
 */
final class Draft {
  private static final String HEADER =
      """
      # What you said about your pigs. Change it with ./swineherd ask, or by hand; ./swineherd check
      # makes the list of it. What is left out or unknown is never taken for good news.
      """;

  private final Path path;
  private final LocalDate today;
  private SafeFile disk;
  private SetupText text;
  private SetupFile file;
  private Set<String> unknown;

  private Draft(Path path, LocalDate today) {
    this.path = path;
    this.today = today;
  }

  /**
   * Opens a setup file, or begins one.
   *
   * @throws IOException if it cannot be read
   * @throws BadSetupException if something in it is wrong
   */
  static Draft open(Path path, LocalDate today) throws IOException {
    Draft draft = new Draft(path, today);
    draft.reload();
    return draft;
  }

  private void reload() throws IOException {
    disk = SafeFile.read(path);
    boolean begins = disk.text().isBlank() && !path.toString().endsWith(".json");
    take(SetupText.of(path.toString(), begins ? HEADER : disk.text()));
  }

  private void take(SetupText now) {
    text = now;
    file = read(now);
    unknown = now.unknown();
  }

  /** A file without an answer is a setup of which nothing is known. */
  private SetupFile read(SetupText now) {
    boolean empty = now.text().lines().allMatch(l -> l.isBlank() || l.strip().startsWith("#"));
    return empty ? SetupReader.read(path.toString(), "{}", today) : now.read(today);
  }

  Path path() {
    return path;
  }

  SetupFile file() {
    return file;
  }

  /** Whether it is on the disk. */
  boolean exists() {
    return disk.exists();
  }

  /** What was answered there; null if nothing was. */
  String said(String at) {
    Answer answer = file.answers().get(at);
    return answer != null ? answer.said() : unknown.contains(at) ? "unknown" : null;
  }

  /** The key of a choice that was answered there; null if nothing was. */
  String key(String at) {
    Answer answer = file.answers().get(at);
    return answer == null ? null : answer.key();
  }

  /**
   * Looks what would become of the file with an answer given; nothing is written.
   *
   * @param at where: {@code pens[0].area}
   * @param written the answer as it is to stand there; several only for a list
   * @throws IOException if the file cannot be read any more
   */
  Trial trial(String at, List<String> written) throws IOException {
    if (exists()) {
      SafeFile now = SafeFile.read(path);
      if (!now.exists()) {
        throw new IOException("it is gone");
      }
      if (!now.text().equals(disk.text())) {
        reload();
      }
    }
    Question question = Rulebook.questions().get(Question.keyOf(at));
    try {
      SetupText changed = set(text, question, at, written);
      for (Map.Entry<String, String> other : alsoCalled(at, written.get(0)).entrySet()) {
        changed = changed.set(other.getKey(), other.getValue());
      }
      changed = Remarks.put(text, changed, question, at, said(at), String.join(", ", written));
      return new Trial(changed, read(changed), List.of());
    } catch (BadSetupException e) {
      return new Trial(null, file, e.problems());
    }
  }

  private static SetupText set(SetupText text, Question question, String at, List<String> written) {
    return question.list() && !written.equals(List.of("unknown"))
        ? text.set(at, written)
        : text.set(at, written.get(0));
  }

  /** Where the old name of a pen or a group stands, with the new one. */
  private Map<String, String> alsoCalled(String at, String name) {
    String list = at.startsWith("pens[") ? ".pen" : at.startsWith("pigs[") ? ".pigs" : null;
    Answer old = file.answers().get(at);
    if (list == null || old == null || !at.endsWith("].name")) {
      return Map.of();
    }
    Map<String, String> others = new LinkedHashMap<>();
    for (Answer answer : file.answers().values()) {
      if (answer.path().endsWith(list) && answer.key().equals(old.key())) {
        others.put(answer.path(), name);
      }
    }
    return others;
  }

  /**
   * Writes what was tried out.
   *
   * @throws IOException if it cannot be written; the file is as it was then
   */
  void keep(Trial trial) throws IOException {
    disk = disk.write(trial.text().text());
    take(trial.text());
  }

  /**
   * Takes answers away.
   *
   * @throws IOException if it cannot be written; the file is as it was then
   */
  void takeAway(List<String> paths) throws IOException {
    SetupText changed = text;
    for (String at : paths) {
      changed = Remarks.without(changed, file.answers().get(at)).takeAway(at);
    }
    disk = disk.write(changed.text());
    take(changed);
  }

  /**
   * What an answer would make of the file.
   *
   * @param text the text with it; null if it cannot be
   * @param file the setup with it
   * @param problems what stands in its way
   */
  record Trial(SetupText text, SetupFile file, List<Problem> problems) {
    /** What is unusual about the answer; null if nothing is. */
    Problem unusual(String at) {
      return file.unusual().stream().filter(p -> isAt(p, at)).findFirst().orElse(null);
    }

    /** The problem with the answer itself; null if it is others it does not go with. */
    Problem own(String at) {
      return problems.stream().filter(p -> isAt(p, at)).findFirst().orElse(null);
    }

    /** Paths of the other answers it does not go with. */
    List<String> others() {
      return new ArrayList<>(problems.stream().map(Problem::path).distinct().toList());
    }

    private static boolean isAt(Problem problem, String at) {
      return problem.path().equals(at)
          || problem.path().startsWith(at + "[")
          || problem.path().isEmpty();
    }
  }
}
