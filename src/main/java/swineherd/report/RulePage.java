package swineherd.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import swineherd.rulebook.Card;
import swineherd.rulebook.Question;
import swineherd.rulebook.Referral;
import swineherd.rulebook.RuleExample;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;

/** The page of one rule: what it says, when it applies, what it rests on, an example each way. */
public final class RulePage {
  private final RuleInfo rule;
  private final Card card;

  /** What the braces in the texts mean. */
  public static final String BRACES =
      "What stands in { } is worked out for each setup; {about} is the group or the pen.";

  /**
   * @param rule what is known of it
   * @param card what it says; null for a rule that only concludes something for others
   */
  public RulePage(RuleInfo rule, Card card) {
    this.rule = rule;
    this.card = card;
  }

  /** The page for a terminal. */
  public String text() {
    Lines lines = new Lines();
    lines.add("", rule.id() + (card == null ? "" : ": " + card.heading()));
    section(lines, "It says", says());
    section(lines, "It applies when all of this is so", conditions(rule));
    section(lines, "Answers it looks at by itself", looksAt());
    section(lines, "It rests on", card == null ? List.of() : List.of(TextReport.rests(card)));
    section(lines, "Its rank", rank());
    section(lines, "For example it applies with", fires());
    section(lines, "and not when", silent());
    section(
        lines,
        "Both on top of this setup",
        Rulebook.example(rule).map(RulePage::base).orElse(List.of()));
    if (card != null && !card.placeholders().isEmpty()) {
      lines.gap().add("", BRACES);
    }
    lines.gap().add("", "It stands in " + rule.file() + ", line " + rule.line() + ".");
    return lines.toString();
  }

  /** The page as a section of a Markdown document. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("\n### ").append(rule.id()).append("\n\n");
    if (card != null) {
      out.append("**").append(MarkdownReport.escape(plain(card.heading()))).append("**\n\n");
    }
    list(out, "It says", says());
    list(out, "It applies when all of this is so", conditions(rule));
    list(out, "Answers it looks at by itself", looksAt());
    list(out, "It rests on", card == null ? List.of() : List.of(TextReport.rests(card)));
    list(out, "Its rank", rank());
    list(out, "For example it applies with", fires());
    list(out, "and not when", silent());
    return out.toString();
  }

  /** A line of a list that leads to the section, as such links are made of headings. */
  public String link() {
    String anchor = rule.id().toLowerCase(Locale.ROOT).replace(".", "");
    String heading = card == null ? "" : " " + MarkdownReport.escape(plain(card.heading()));
    return "- [" + rule.id() + "](#" + anchor + ")" + heading;
  }

  /** A text of a card in one line. */
  public static String plain(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  /** What the questions are called whose answers the conditions name; the rest is worked out. */
  private List<String> looksAt() {
    Set<String> labels = new LinkedHashSet<>();
    rule.reads()
        .forEach(
            reads ->
                reads.questions().stream()
                    .filter(q -> !q.endsWith(".name") && !q.endsWith("s.pen"))
                    .forEach(q -> labels.add(Rulebook.questions().get(q).label())));
    return labels.isEmpty() ? List.of() : List.of(String.join(", ", labels));
  }

  private List<String> says() {
    List<String> says = new ArrayList<>();
    if (card == null) {
      return List.of("Nothing itself: other rules build on what it concludes.");
    }
    add(says, "Do: ", card.doIt());
    add(says, "Because: ", card.why());
    add(says, "Careful: ", card.caution());
    add(says, "Have ready: ", card.ready());
    add(says, "At risk: ", card.atRisk());
    add(says, "Meat: ", card.meat());
    if (card.referral() != Referral.NONE) {
      says.add("Call: " + card.referral().words());
    }
    if (card.kind() == Card.Kind.IN_ORDER) {
      says.add("It is shown among what is already in order.");
    }
    if (!card.covers().isEmpty()) {
      says.add(
          "Signs told with it, which need no item of their own: "
              + String.join(", ", card.covers()));
    }
    if (!card.standsFor().isEmpty()) {
      says.add(
          "Once the answer is known, one of these may apply: "
              + String.join(", ", card.standsFor()));
    }
    return says;
  }

  private static void add(List<String> says, String label, String text) {
    if (text != null) {
      says.add(label + text.strip());
    }
  }

  /** The comments above the patterns, which say them in plain words. */
  static List<String> conditions(RuleInfo rule) {
    List<String> conditions = new ArrayList<>();
    StringBuilder comment = new StringBuilder();
    for (String line : rule.when().lines().map(String::strip).toList()) {
      if (line.startsWith("//")) {
        comment.append(comment.isEmpty() ? "" : " ").append(line.substring(2).strip());
      } else if (!comment.isEmpty()) {
        conditions.add(comment.toString());
        comment.setLength(0);
      }
    }
    return conditions.isEmpty() ? List.of("always") : conditions;
  }

  private List<String> rank() {
    if (card == null || card.kind() == Card.Kind.IN_ORDER) {
      return List.of();
    }
    return List.of(
        "%d, because %s if nothing is done."
            .formatted(card.consequence().weight(), card.consequence().words()),
        "Times %.2f for how likely that is, unless the setup tells it better."
            .formatted(card.likelihood()),
        "Times 1 to 2 for how soon it is due: 2 today, 1 far ahead; to be done: %s."
            .formatted(card.stage().words()));
  }

  private List<String> fires() {
    return Rulebook.example(rule)
        .map(
            e ->
                e.fires() instanceof Map<?, ?> changes
                    ? changes.entrySet().stream().map(RulePage::named).toList()
                    : List.of("the setup all examples of the topic begin with"))
        .orElse(List.of());
  }

  private List<String> silent() {
    List<String> silent = new ArrayList<>();
    Rulebook.example(rule)
        .map(RuleExample::silent)
        .ifPresent(
            near ->
                near.forEach(
                    (why, changes) ->
                        silent.add(
                            why + " (" + String.join("; ", answers((Map<?, ?>) changes)) + ")")));
    return silent;
  }

  /** The answers that all examples of the topic begin with, a line for each section or member. */
  private static List<String> base(RuleExample example) {
    List<String> base = new ArrayList<>();
    ((Map<?, ?>) example.base())
        .forEach(
            (section, value) -> {
              if (value instanceof List<?> members) {
                for (int i = 0; i < members.size(); i++) {
                  base.add(section + "[" + i + "]: " + value(members.get(i)));
                }
              } else {
                base.add(section + ": " + value(value));
              }
            });
    return base;
  }

  private static List<String> answers(Map<?, ?> changes) {
    return changes.entrySet().stream()
        .map(c -> c.getKey() + ": " + value(c.getValue()))
        .collect(Collectors.toList());
  }

  /** An answer with the name of its question, and the path where it stands. */
  private static String named(Map.Entry<?, ?> change) {
    String path = String.valueOf(change.getKey());
    Question question = Rulebook.questions().get(Question.keyOf(path));
    String value = value(change.getValue());
    return question == null || question.path().equals(path)
        ? path + ": " + value
        : question.label() + ": " + value + " (" + path + ")";
  }

  /** A value as it stands in a setup file. */
  private static String value(Object value) {
    if (value == null) {
      return "not known";
    }
    if (value instanceof Map<?, ?> fields) {
      return "{" + String.join(", ", answers(fields)) + "}";
    }
    if (value instanceof List<?> members) {
      return members.stream().map(RulePage::value).collect(Collectors.joining(", ", "[", "]"));
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    return value instanceof Double number && number == Math.rint(number)
        ? String.valueOf(number.longValue())
        : String.valueOf(value);
  }

  private static void section(Lines lines, String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      lines.gap().add("", heading);
      entries.forEach(e -> lines.add("  - ", e));
    }
  }

  private static void list(StringBuilder out, String heading, List<String> entries) {
    if (!entries.isEmpty()) {
      out.append(heading).append(":\n\n");
      entries.forEach(e -> out.append("- ").append(MarkdownReport.escape(e)).append('\n'));
      out.append('\n');
    }
  }
}
