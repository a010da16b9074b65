package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.Remedies;
import swineherd.compare.Remedy;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.units.Dates;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** What would take an item off the list, for a terminal of 80 columns and as JSON. */
public final class RemedyReport {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final int MOST_SHOWN = 8;
  private static final int MOST_ELSE = 4;
  private static final int MOST_WORSE = 3;

  private final Checklist checklist;
  private final Remedies.Found found;
  private final List<Item> sameId;
  private final UnitSystem units;
  private final Wording wording;

  /**
   * @param sameId the items of that id on the list; the first is the one that was looked into
   */
  public RemedyReport(Checklist checklist, Remedies.Found found, List<Item> sameId) {
    this.checklist = checklist;
    this.found = found;
    this.sameId = sameId;
    this.units = checklist.file().setup().units();
    this.wording = new Wording(units);
  }

  /** The report for a terminal. */
  public String text() {
    Lines lines = new Lines();
    lines.add("", Overview.setup(checklist.file().setup()));
    lines.add("", "What would take this off the list:");
    lines.add("    ", heading(found.item()));
    List<Remedy> worthIt = found.remedies().stream().filter(Remedy::worthIt).toList();
    List<Remedy> changes = worthIt.stream().filter(RemedyReport::canChange).toList();
    List<Remedy> answers = worthIt.stream().filter(r -> !canChange(r)).toList();
    int number = 1;
    for (Remedy remedy : changes.stream().limit(MOST_SHOWN).toList()) {
      lines.gap();
      remedy(lines, "%2d  ".formatted(number++), remedy);
    }
    if (changes.size() > MOST_SHOWN) {
      lines.gap().add("", more(changes.size() - MOST_SHOWN, "could be changed as well."));
    }
    if (!answers.isEmpty()) {
      lines.gap().add("", "It also goes if it turns out so; this can only be found out:");
      answers.forEach(r -> lines.add("    ", "      ", changes(r)));
    }
    if (worthIt.isEmpty()) {
      nothing(lines);
    }
    worse(lines);
    if (!found.complete()) {
      lines.gap().add("", "There was no time to try out everything; this is what was found.");
    }
    if (sameId.size() > 1) {
      String others = names(sameId.subList(1, sameId.size()));
      lines.gap().add("", "It stands on the list about " + others + " too; say --about.");
    }
    return lines.gap().add("", TextReport.FOOTER).toString();
  }

  /** What is not worth it, by what it would put in the place of the item. */
  private void worse(Lines lines) {
    List<Remedy> worse = found.remedies().stream().filter(r -> !r.worthIt()).toList();
    if (worse.isEmpty()) {
      return;
    }
    lines
        .gap()
        .add("", more(worse.size(), "would only put something as bad or worse in its place."));
    worse.stream()
        .filter(r -> !r.added().isEmpty())
        .limit(MOST_WORSE)
        .forEach(r -> lines.add("    ", "      ", changes(r) + " -> " + heading(r.added().get(0))));
  }

  private void nothing(Lines lines) {
    lines.gap().add("", "No change of one answer or two was found that clears it for the better.");
    if (found.nearest() != null) {
      lines.add(
          "",
          "Nearest comes this, after which it weighs %.0f instead of %.0f:"
              .formatted(found.nearestScore(), found.item().rank().score()));
      lines.add("    ", "      ", changes(found.nearest()));
    } else {
      lines.add("", "It is there to be done, as it says.");
    }
  }

  private static String more(int count, String rest) {
    return Wording.capital(Wording.counted(count, "more thing", "more things")) + " " + rest;
  }

  private void remedy(Lines lines, String lead, Remedy remedy) {
    lines.add(lead, changes(remedy));
    if (remedy.changes().stream().anyMatch(c -> c.said() != null)) {
      String said =
          remedy.changes().stream()
              .map(c -> c.said() == null ? "not known" : c.said())
              .collect(Collectors.joining("; "));
      lines.add("    Now      ", "             ", said);
    }
    if (remedy.inTime() != null) {
      lines.add(
          "    Then     ",
          "             ",
          Wording.capital(Wording.chance(remedy.inTime()))
              + " such groups have their weight in time.");
    }
    if (remedy.changes().stream().anyMatch(c -> c.bound() == Remedy.Bound.ANY)) {
      return; // what comes of it hangs on the answer
    }
    items(lines, "    Adds     ", remedy.added());
    items(lines, "    Clears   ", remedy.cleared());
  }

  private void items(Lines lines, String lead, List<Item> items) {
    String indent = "             ";
    for (Item item : items) {
      lines.add(item.equals(items.get(0)) ? lead : indent, indent, heading(item));
    }
  }

  private String heading(Item item) {
    return wording.fill(item.card().heading(), item.advice());
  }

  private static boolean canChange(Remedy remedy) {
    return remedy.changes().stream().allMatch(Remedy.Change::canChange);
  }

  private String changes(Remedy remedy) {
    return remedy.changes().stream().map(this::change).collect(Collectors.joining("; and "));
  }

  private String change(Remedy.Change change) {
    Question question = Rulebook.questions().get(change.question().question());
    String about = change.question().about();
    String label =
        Wording.capital(question.label()) + (about.isEmpty() ? "" : " (" + about + ")") + ": ";
    String words = words(question, change.answer());
    boolean day = question.kind() == Question.Kind.DATE;
    return label
        + switch (change.bound()) {
          case EXACTLY -> words + orElse(question, change.orElse());
          case AT_LEAST -> day ? words + " or later" : words + " or more";
          case AT_MOST -> day ? "by " + words : words + " or less";
          case BETWEEN -> between(question, change);
          case ANY -> "say it; whatever the answer is, this goes.";
        }
        + (change.answers().size() > 1 && day ? ", at the same age" : "");
  }

  private String between(Question question, Remedy.Change change) {
    String one = words(question, change.answer());
    String other = words(question, change.to());
    boolean rising =
        question.kind() == Question.Kind.DATE
            ? ((String) change.answer()).compareTo((String) change.to()) < 0
            : ((Number) change.answer()).doubleValue() < ((Number) change.to()).doubleValue();
    return rising ? one + " to " + other : other + " to " + one;
  }

  private String orElse(Question question, List<Object> others) {
    if (others.isEmpty()) {
      return "";
    }
    String shown =
        others.stream()
            .limit(MOST_ELSE)
            .map(value -> words(question, value))
            .collect(Collectors.joining("; or "));
    int rest = others.size() - MOST_ELSE;
    return "; or " + shown + (rest > 0 ? "; or one of " + Wording.number(rest) + " more" : "");
  }

  private String words(Question question, Object value) {
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof List<?> several && question.kind().dimension() != null) {
      List<Double> amounts = several.stream().map(v -> ((Number) v).doubleValue()).toList();
      return Display.amounts(amounts, question.kind().dimension(), units);
    }
    if (value instanceof List<?> several) {
      return several.stream()
          .map(v -> question.choices().getOrDefault(v, String.valueOf(v)))
          .collect(Collectors.joining(", "));
    }
    return switch (question.kind()) {
      case CHOICE -> question.choices().get(value);
      case DATE -> Dates.words(LocalDate.parse((String) value));
      case DAY_OF_YEAR -> Dates.words(MonthDay.parse((String) value));
      default ->
          question.kind().dimension() == null
              ? String.valueOf(value)
              : Display.amount(((Number) value).doubleValue(), question.kind().dimension(), units);
    };
  }

  /** The report as JSON; answers are in SI units, whatever the keeper reads. */
  public String json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", checklist.file().setup().checkOn().toString());
    root.put("id", found.item().id());
    root.put("about", found.item().advice().about());
    root.put("heading", heading(found.item()));
    root.put("onTheList", true);
    ArrayNode remedies = root.putArray("remedies");
    found.remedies().forEach(remedy -> remedy(remedies.addObject(), remedy));
    if (found.nearest() != null) {
      ObjectNode nearest = root.putObject("nearest");
      remedy(nearest, found.nearest());
      nearest.put("score", found.nearestScore());
    }
    root.put("complete", found.complete());
    return write(root);
  }

  private void remedy(ObjectNode node, Remedy remedy) {
    ArrayNode changes = node.putArray("changes");
    for (Remedy.Change change : remedy.changes()) {
      ObjectNode each = changes.addObject();
      each.put("path", change.question().path());
      each.put("about", change.question().about());
      each.put("said", change.said());
      each.put("words", change(change));
      each.put("bound", change.bound().name().toLowerCase(Locale.ROOT).replace('_', '-'));
      each.set("answers", JSON.valueToTree(change.answers()));
      each.set("to", JSON.valueToTree(change.to()));
      each.set("orElse", JSON.valueToTree(change.orElse()));
      each.put("canChange", change.canChange());
    }
    items(node.putArray("adds"), remedy.added());
    items(node.putArray("clears"), remedy.cleared());
    node.put("worthIt", remedy.worthIt());
    node.put("inTime", remedy.inTime());
  }

  private void items(ArrayNode node, List<Item> items) {
    for (Item item : items) {
      node.addObject()
          .put("id", item.id())
          .put("about", item.advice().about())
          .put("heading", heading(item));
    }
  }

  /** What is said of an item that need not be cleared. */
  public static String notOnTheList(String id) {
    return new Lines()
        .add("", id + " is not on the list of this setup: there is nothing to clear.")
        .toString();
  }

  /** The same as JSON. */
  public static String notOnTheListAsJson(String id) {
    ObjectNode root = JSON.createObjectNode();
    root.put("id", id);
    root.put("onTheList", false);
    root.putArray("remedies");
    return write(root);
  }

  private static String write(ObjectNode root) {
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The names of what items are about: {@code reds, blacks and gilts}. */
  public static String names(List<Item> items) {
    List<String> names = items.stream().map(i -> i.advice().about()).toList();
    return names.size() == 1
        ? names.get(0)
        : String.join(", ", names.subList(0, names.size() - 1))
            + " and "
            + names.get(names.size() - 1);
  }
}
