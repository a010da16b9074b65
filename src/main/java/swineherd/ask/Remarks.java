package swineherd.ask;

import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Answer;
import swineherd.setup.SetupText;

/**
 * Comments beside answers: what a choice means, and the question where the answer is unknown. Only
 * comments of ours are ever changed.
 */
final class Remarks {
  private static final int LONGEST_LINE = 100;

  private Remarks() {}

  /** The text with a comment beside an answer that was just put there. */
  static SetupText put(
      SetupText before, SetupText after, Question question, String at, String was, String said) {
    String[] old = before.text().split("\n", -1);
    String[] now = after.text().split("\n", -1);
    String name = at.substring(at.lastIndexOf('.') + 1);
    for (int i = 0; i < now.length; i++) {
      boolean fresh = i >= old.length || !old[i].equals(now[i]);
      if (fresh && now[i].strip().matches("(?:- )?" + name + ": .*")) {
        now[i] = beside(now[i], was == null ? null : remark(question, was), remark(question, said));
        return same(after, String.join("\n", now));
      }
    }
    return after;
  }

  /** The text without our comment beside an answer. */
  static SetupText without(SetupText text, Answer answer) {
    String[] lines = text.text().split("\n", -1);
    if (answer == null || answer.line() < 1 || answer.line() > lines.length) {
      return text;
    }
    Question question = Rulebook.questions().get(Question.keyOf(answer.path()));
    int line = answer.line() - 1;
    lines[line] = beside(lines[line], remark(question, answer.said()), null);
    return same(text, String.join("\n", lines));
  }

  private static String beside(String line, String old, String remark) {
    boolean windows = line.endsWith("\r");
    String bare = windows ? line.substring(0, line.length() - 1) : line;
    if (old != null && bare.endsWith("# " + old)) {
      bare = bare.substring(0, bare.length() - old.length() - 2).stripTrailing();
    }
    boolean room = remark != null && !bare.contains("#");
    String with = room ? bare + "  # " + remark : bare;
    return (with.length() <= LONGEST_LINE ? with : bare) + (windows ? "\r" : "");
  }

  /** The changed text, if it still says the same. */
  private static SetupText same(SetupText text, String changed) {
    if (changed.equals(text.text()) || text.text().stripLeading().startsWith("{")) {
      return text;
    }
    return text.remarked(changed);
  }

  private static String remark(Question question, String said) {
    if (said.equals("unknown")) {
      return question.ask();
    }
    String words = question.choices().get(said);
    return words == null || Choosing.normal(words).equals(Choosing.normal(said)) ? null : words;
  }
}
