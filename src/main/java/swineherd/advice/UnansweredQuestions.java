package swineherd.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Answer;
import swineherd.setup.SetupFile;

/**
 * Finds the questions that apply to a setup and were not answered. Prices are left out: no advice
 * hangs on them, and the budget says itself which it lacks.
 */
public final class UnansweredQuestions {
  private final SetupFile file;
  private final boolean answeredToo;

  private UnansweredQuestions(SetupFile file, boolean answeredToo) {
    this.file = file;
    this.answeredToo = answeredToo;
  }

  static List<Unanswered> of(SetupFile file) {
    return list(file, false);
  }

  /** Every question that applies, answered or not, where its answer stands or would stand. */
  public static List<Unanswered> all(SetupFile file) {
    return list(file, true);
  }

  private static List<Unanswered> list(SetupFile file, boolean answeredToo) {
    UnansweredQuestions questions = new UnansweredQuestions(file, answeredToo);
    List<Unanswered> open = new ArrayList<>();
    for (Question question : Rulebook.questions().values()) {
      String path = question.path();
      if (path.startsWith("pens[]")) {
        for (int i = 0; i < file.setup().pens().size(); i++) {
          questions.add(question, i, file.setup().pens().get(i).name(), open);
        }
      } else if (path.startsWith("pigs[]")) {
        for (int i = 0; i < file.setup().pigs().size(); i++) {
          questions.add(question, i, file.setup().pigs().get(i).name(), open);
        }
      } else if (path.startsWith("signs[]")) {
        for (int i = 0; i < file.setup().signs().size(); i++) {
          String pigs = file.setup().signs().get(i).pigs();
          questions.add(question, i, pigs == null ? "" : pigs, open);
        }
      } else if (!path.contains("[]") && (answeredToo || !path.startsWith("money."))) {
        questions.add(question, -1, "", open);
      }
    }
    return List.copyOf(open);
  }

  private void add(Question question, int index, String about, List<Unanswered> open) {
    String path = at(question.path(), index);
    if ((!answeredToo && file.answers().containsKey(path)) || !applies(question, index)) {
      return;
    }
    open.add(new Unanswered(question.key(), about, path));
  }

  /**
   * A question applies unless an answer it hangs on is known and rules it out, or was not given
   * because it does not apply itself.
   */
  private boolean applies(Question question, int index) {
    for (Map.Entry<String, List<String>> when : question.when().entrySet()) {
      Answer other = file.answers().get(at(when.getKey(), index));
      boolean ruledOut =
          other == null
              ? !applies(Rulebook.questions().get(Question.keyOf(when.getKey())), index)
              : !when.getValue().contains(other.key().toLowerCase(Locale.ROOT));
      if (ruledOut) {
        return false;
      }
    }
    return true;
  }

  private static String at(String path, int index) {
    return path.replace("[]", "[" + index + "]");
  }
}
