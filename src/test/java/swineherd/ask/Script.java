package swineherd.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;

/** A person who answers each question as it was laid down, whenever it is asked. */
final class Script implements Talk {
  private final Map<String, String> answers;
  private final int most;
  private final List<String> asked = new ArrayList<>();
  private final StringBuilder shown = new StringBuilder();
  private String last = "";

  /**
   * @param answers what is typed, by the key of the question; nothing is typed at others
   * @param most after how many lines the process is killed
   */
  Script(Map<String, String> answers, int most) {
    this.answers = answers;
    this.most = most;
  }

  /** The keys of the questions in the order in which they were asked. */
  List<String> asked() {
    return asked;
  }

  String shown() {
    return shown.toString();
  }

  @Override
  public String hear(String prompt, List<String> words) {
    if (asked.size() == most) {
      throw new Killed();
    }
    shown.append(prompt);
    if (prompt.contains("(y or n)")) {
      return "y";
    }
    String key = prompt.equals("> ") ? key() : prompt.startsWith("What next") ? "menu" : "others";
    asked.add(key);
    String typed = answers.getOrDefault(key, "");
    shown.append(typed).append('\n');
    return typed;
  }

  private String key() {
    String words = last.replaceAll("\\s+", " ");
    return Rulebook.questions().values().stream()
        .filter(q -> words.startsWith(q.ask().replaceAll("\\s+", " ")))
        .map(Question::key)
        .filter(k -> !k.startsWith("diary"))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no question: " + words));
  }

  @Override
  public void say(String text) {
    shown.append(text).append('\n');
    if (!text.startsWith("  ")) {
      last = text;
    }
  }

  @Override
  public boolean isPerson() {
    return true;
  }

  /** As when the plug is pulled. */
  static final class Killed extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }
}
