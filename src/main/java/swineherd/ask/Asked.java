package swineherd.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Setup;

/**
 * A question asked of one pen, one group or the whole.
 *
 * @param question the question
 * @param path where its answer stands: {@code pens[0].area}
 */
record Asked(Question question, String path) {
  /** Kept day by day with a command of its own. */
  private static final String DIARY = "diary";

  /** Every question in the order of the catalogue; there is a first pen and a first group. */
  static List<Asked> all(Setup setup) {
    List<Asked> all = new ArrayList<>();
    List<Question> members = new ArrayList<>();
    String list = "";
    for (Question question : Rulebook.questions().values()) {
      String in = list(question);
      if (!in.equals(list)) {
        spread(list, members, setup, all);
        members.clear();
        list = in;
      }
      members.add(question);
    }
    spread(list, members, setup, all);
    return all;
  }

  private static void spread(String list, List<Question> questions, Setup setup, List<Asked> all) {
    if (list.equals(DIARY)) {
      return;
    }
    for (int i = 0; i < (list.isEmpty() ? 1 : size(list, setup)); i++) {
      for (Question question : questions) {
        all.add(new Asked(question, question.path().replace("[]", "[" + i + "]")));
      }
    }
  }

  private static String list(Question question) {
    int open = question.path().indexOf("[]");
    return open < 0 ? "" : question.path().substring(0, open);
  }

  private static int size(String list, Setup setup) {
    return switch (list) {
      case "pens" -> Math.max(1, setup.pens().size());
      case "pigs" -> Math.max(1, setup.pigs().size());
      case "signs" -> setup.signs().size();
      default -> 0;
    };
  }

  /** The words by which a person can go to some questions: fence, feed, pigs ... */
  static Set<String> topics() {
    Set<String> topics = new LinkedHashSet<>();
    for (Question question : Rulebook.questions().values()) {
      topics.addAll(topics(question));
    }
    topics.removeAll(List.of(DIARY, "checkOn"));
    return topics;
  }

  /** The topics that are more than one question. */
  static Set<String> sections() {
    Set<String> sections = topics();
    sections.removeAll(Rulebook.questions().keySet());
    return sections;
  }

  /** The sections it is in; an answer outside all of them is a topic of its own. */
  private static List<String> topics(Question question) {
    List<String> steps = Arrays.asList(question.path().replace("[]", "").split("\\."));
    return steps.size() == 1 ? steps : steps.subList(0, steps.size() - 1);
  }

  static Asked at(String path) {
    return new Asked(Rulebook.questions().get(Question.keyOf(path)), path);
  }

  boolean isOf(String topic) {
    return topics(question).contains(topic);
  }

  /** The innermost section: fence for {@code pens[0].fence.kind}; empty at the top. */
  String section() {
    String[] steps = question.path().replace("[]", "").split("\\.");
    return steps.length < 2 ? "" : steps[steps.length - 2];
  }

  /** The pen or group it is asked of; empty for the whole. */
  String about(Setup setup) {
    int open = path.indexOf('[');
    if (open < 0) {
      return "";
    }
    int index = index();
    return switch (path.substring(0, open)) {
      case "pens" -> index < setup.pens().size() ? setup.pens().get(index).name() : "";
      case "pigs" -> index < setup.pigs().size() ? setup.pigs().get(index).name() : "";
      default -> "";
    };
  }

  /** The number of the pen or group, from 0; -1 for the whole. */
  int index() {
    int open = path.indexOf('[');
    return open < 0 ? -1 : Integer.parseInt(path.substring(open + 1, path.indexOf(']')));
  }

  /** Whether it is to be asked: what it hangs on is known, and there is a choice at all. */
  boolean applies(Draft draft) {
    for (Map.Entry<String, List<String>> when : question.when().entrySet()) {
      String key = draft.key(when.getKey().replace("[]", "[" + index() + "]"));
      if (key == null || !when.getValue().contains(key)) {
        return false;
      }
    }
    // with one pen there is no need to ask which
    boolean onePen = draft.file().setup().pens().size() < 2;
    return !(question.path().equals("pigs[].pen") && index() == 0 && onePen);
  }
}
