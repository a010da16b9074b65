package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.Comparison;
import swineherd.compare.Comparison.Change;
import swineherd.compare.Comparison.Kind;
import swineherd.compare.Comparison.Respect;
import swineherd.rulebook.Referral;
import swineherd.setup.Differences.Difference;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/** What has changed between two checks, and nothing that has not. */
public final class RecheckReport {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Comparison comparison;
  private final String supposed;
  private final UnaryOperator<String> bold;
  private final Wording wording;

  /**
   * @param supposed what is only supposed, such as {@code weaners move to back field}; null if the
   *     later setup is as it is
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public RecheckReport(Comparison comparison, String supposed, UnaryOperator<String> bold) {
    this.comparison = comparison;
    this.supposed = supposed;
    this.bold = bold;
    this.wording = new Wording(comparison.later().file().setup().units());
  }

  /** For a terminal. */
  public String text() {
    Lines lines = new Lines();
    lines.add("", head());
    lines.add("", verdict());
    section(lines, "New", Kind.NEW);
    section(lines, "Changed", Kind.CHANGED);
    section(lines, "Cleared", Kind.CLEARED);
    return lines.gap().add("", TextReport.FOOTER).toString();
  }

  private void section(Lines lines, String heading, Kind kind) {
    List<Change> changes = comparison.of(kind);
    if (changes.isEmpty()) {
      return;
    }
    lines.gap().line(bold.apply(heading));
    for (Change change : changes) {
      Item item = change.item();
      String number = kind == Kind.CLEARED ? "  - " : "%2d  ".formatted(change.placeAfter());
      lines.add(number, wording.fill(item.card().heading(), item.advice()));
      if (kind == Kind.NEW) {
        lines.add(
            "    When     ", "             ", When.words(item, comparison.later().file().setup()));
        lines.add(
            "    Do       ", "             ", wording.fill(item.card().doIt(), item.advice()));
        if (item.card().caution() != null) {
          String caution = wording.fill(item.card().caution(), item.advice());
          lines.add("    Careful  ", "             ", caution);
        }
        if (item.referral() != Referral.NONE) {
          lines.add("    Call     ", "             ", item.referral().words());
        }
      }
      differs(change).forEach(d -> lines.add("    Now      ", "             ", d));
      if (!isPlain(change)) {
        lines.add("    Since    ", "             ", since(change));
      }
    }
  }

  /** As Markdown. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(MarkdownReport.escape(head())).append("\n\n");
    out.append(MarkdownReport.escape(verdict())).append('\n');
    for (Kind kind : List.of(Kind.NEW, Kind.CHANGED, Kind.CLEARED)) {
      if (!comparison.of(kind).isEmpty()) {
        out.append("\n## ").append(Wording.capital(key(kind))).append('\n');
      }
      for (Change change : comparison.of(kind)) {
        Item item = change.item();
        out.append("\n### ");
        if (kind != Kind.CLEARED) {
          out.append(change.placeAfter()).append(". ");
        }
        out.append(MarkdownReport.escape(wording.fill(item.card().heading(), item.advice())));
        out.append("\n\n");
        if (kind == Kind.NEW) {
          line(out, "When", When.words(item, comparison.later().file().setup()));
          line(out, "Do", wording.fill(item.card().doIt(), item.advice()));
          line(out, "Careful", wording.fill(item.card().caution(), item.advice()));
          line(out, "Call", item.referral() == Referral.NONE ? null : item.referral().words());
        }
        differs(change).forEach(d -> line(out, "Now", d));
        line(out, "Since", isPlain(change) ? null : since(change));
      }
    }
    return out.append("\n").append(TextReport.FOOTER).append("\n").toString();
  }

  private static void line(StringBuilder out, String label, String text) {
    if (text != null) {
      out.append("- **").append(label).append(":** ");
      out.append(MarkdownReport.escape(text)).append('\n');
    }
  }

  /** As JSON; fields are added, never renamed. */
  public String json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("name", comparison.later().file().setup().name());
    root.put("earlier", comparison.earlier().file().setup().checkOn().toString());
    root.put("later", comparison.later().file().setup().checkOn().toString());
    root.put("supposed", supposed);
    ArrayNode differences = root.putArray("differences");
    comparison.differences().forEach(d -> difference(differences.addObject(), d));
    for (Kind kind : Kind.values()) {
      ArrayNode changes = root.putArray(key(kind));
      for (Change change : comparison.of(kind)) {
        change(changes.addObject(), change);
      }
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void change(ObjectNode node, Change change) {
    Item item = change.item();
    node.put("id", item.id());
    node.put("about", item.advice().about());
    node.put("heading", wording.fill(item.card().heading(), item.advice()));
    node.put("rankBefore", change.placeBefore() == 0 ? null : change.placeBefore());
    node.put("rank", change.placeAfter() == 0 ? null : change.placeAfter());
    node.put("dueBefore", due(change.before()));
    node.put("dueOn", due(change.after()));
    node.put("referral", key(item.referral()));
    node.put("tickedOff", change.ticked());
    ArrayNode respects = node.putArray("respects");
    change.respects().forEach(r -> respects.add(key(r)));
    ArrayNode figures = node.putArray("figures");
    if (change.kind() == Kind.CHANGED) {
      Comparison.moved(change.before(), change.after())
          .forEach(
              (name, values) ->
                  figures
                      .addObject()
                      .put("name", name)
                      .put("before", wording.words(values.get(0)))
                      .put("after", wording.words(values.get(1))));
    }
    ArrayNode causes = node.putArray("causes");
    change.causes().forEach(d -> difference(causes.addObject(), d));
  }

  private static String due(Item item) {
    return item == null || item.due() == null ? null : item.due().toString();
  }

  private static void difference(ObjectNode node, Difference difference) {
    node.put("path", difference.path());
    node.put("label", difference.label());
    node.put("before", difference.before());
    node.put("after", difference.after());
  }

  private String head() {
    Setup later = comparison.later().file().setup();
    LocalDate from = comparison.earlier().file().setup().checkOn();
    String name = later.name() == null ? "Your pigs" : later.name();
    if (supposed != null) {
      return name
          + ", if "
          + supposed
          + " on "
          + Dates.words(later.checkOn())
          + ". Nothing is written down.";
    }
    return name
        + ": "
        + Dates.words(later.checkOn())
        + ", since the check of "
        + Dates.words(from)
        + ".";
  }

  private String verdict() {
    if (comparison.changes().isEmpty()) {
      return "Nothing has changed on the list of " + things(comparison.later()) + ".";
    }
    List<String> parts = new ArrayList<>();
    for (Kind kind : List.of(Kind.NEW, Kind.CHANGED, Kind.CLEARED)) {
      int count = comparison.of(kind).size();
      if (count > 0) {
        parts.add(Wording.number(count) + " " + key(kind));
      }
    }
    return Wording.capital(String.join(", ", parts))
        + "; the list now has "
        + things(comparison.later())
        + ".";
  }

  private static String things(Checklist checklist) {
    return Wording.counted(checklist.items().size(), "item", "items");
  }

  /** In what an item that is on both lists has changed, in words. */
  private List<String> differs(Change change) {
    List<String> all = new ArrayList<>();
    for (Respect respect : change.respects()) {
      switch (respect) {
        case PLACE ->
            all.add(
                (change.placeAfter() < change.placeBefore() ? "higher up: " : "further down: ")
                    + "place "
                    + change.placeAfter()
                    + ", was "
                    + change.placeBefore()
                    + ".");
        case DATE ->
            all.add(
                Wording.uncapital(When.words(change.after(), comparison.later().file().setup()))
                        .replaceFirst("^now", "due now")
                    + " It was: "
                    + Wording.uncapital(
                        When.words(change.before(), comparison.earlier().file().setup())));
        case FIGURE ->
            Comparison.moved(change.before(), change.after())
                .forEach(
                    (name, values) ->
                        all.add(
                            moved(
                                name, wording.words(values.get(0)), wording.words(values.get(1)))));
      }
    }
    return all;
  }

  /** Whole sentences stand for themselves. */
  private static String moved(String name, String before, String after) {
    return after.endsWith(".")
        ? after
        : spaced(name) + " " + after + ", was " + before + (before.endsWith(".") ? "" : ".");
  }

  /** {@code rodLength -> rod length}. */
  private static String spaced(String name) {
    return name.replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
  }

  /** What comes of the move one asked about, or a date that came nearer, needs no reason. */
  private boolean isPlain(Change change) {
    boolean date = change.respects().equals(List.of(Respect.DATE));
    return supposed != null || (date && change.causes().stream().allMatch(Difference::isTime));
  }

  private String since(Change change) {
    String causes =
        change.causes().stream().map(this::cause).distinct().collect(Collectors.joining("; "));
    if (change.ticked()) {
      return "it was ticked off in the diary.";
    }
    return causes.isEmpty() ? "several answers together." : causes + ".";
  }

  private String cause(Difference difference) {
    if (difference.isTime()) {
      return "time has passed";
    }
    String label = difference.label();
    if (difference.before() == null) {
      return label + ": " + difference.after();
    }
    return difference.after() == null
        ? label + " no longer: " + difference.before()
        : label + ": " + difference.after() + ", was " + difference.before();
  }

  private static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
