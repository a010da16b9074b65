package swineherd.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.TickedOff;
import swineherd.advice.Unanswered;
import swineherd.compare.Matters;
import swineherd.rulebook.Card;
import swineherd.rulebook.Evidence;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Source;
import swineherd.setup.Problem;
import swineherd.units.Dates;

/** A checklist for a terminal of 80 columns. Colour adds nothing that is not also said in words. */
public final class TextReport {
  static final String FOOTER =
      "Advice, not law or medicine: your law, the label and your vet come first.";

  private static final int MOST_OPEN = 5;

  /** A question that would move the scores by less is not worth a keeper's evening. */
  private static final double LEAST_MOVE = 20;

  private final Checklist checklist;
  private final boolean all;
  private final boolean showRank;
  private final UnaryOperator<String> bold;
  private final Wording wording;
  private final Besides besides;

  /**
   * @param all whether to list what is already in order
   * @param showRank whether to show how each item's rank comes about
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public TextReport(
      Checklist checklist, boolean all, boolean showRank, UnaryOperator<String> bold) {
    this.checklist = checklist;
    this.all = all;
    this.showRank = showRank;
    this.bold = bold;
    this.wording = new Wording(checklist.file().setup().units());
    this.besides = new Besides(checklist);
  }

  /** The checklist itself. */
  public String render() {
    Lines lines = new Lines();
    lines.add("", Overview.setup(checklist.file().setup()));
    lines.add("", Overview.verdict(checklist));
    int number = 1;
    for (Item item : checklist.items()) {
      lines.gap();
      item(lines, number++, item);
    }
    inOrder(lines);
    tickedOff(lines);
    unusual(lines);
    StringBuilder out = new StringBuilder();
    for (String line : lines.toString().split("\n", -1)) {
      out.append(line.matches(" ?\\d+  \\S.*") ? bold.apply(line) : line).append('\n');
    }
    return out.deleteCharAt(out.length() - 1).toString();
  }

  /** What is not known and matters, and the last line; it may be printed after the rest. */
  public String renderOpen(Matters.Tried tried) {
    Lines lines = new Lines();
    List<Matters.Matter> telling =
        tried.all().stream().filter(m -> m.by() >= LEAST_MOVE).limit(MOST_OPEN).toList();
    if (!telling.isEmpty()) {
      lines.gap().add("", "Not yet known, and it matters");
      telling.forEach(matter -> lines.add("    ", open(matter)));
    }
    if (!tried.untried().isEmpty()) {
      lines.add(
          "    ",
          Wording.capital(
                  Wording.counted(tried.untried().size(), "more question", "more questions"))
              + " on which less rests were not tried out; check --matters tries all.");
    }
    return lines.gap().add("", FOOTER).toString();
  }

  /** The questions alone, all that matter, with the items that hang on each. */
  public String renderMatters(Matters.Tried tried) {
    Lines lines = new Lines();
    lines.add("", Overview.setup(checklist.file().setup()));
    lines.add("", Overview.questions(checklist, tried));
    int number = 1;
    for (Matters.Matter matter : tried.questions()) {
      lines.gap();
      lines.add("%2d  ".formatted(number++), open(matter));
      lines.add("    ", Rulebook.questions().get(matter.question().question()).ask());
      lines.add("    ", String.join(", ", matter.items()));
    }
    if (!tried.pairs().isEmpty()) {
      lines.gap().add("", "Only both answers together");
      for (Matters.Matter matter : tried.pairs()) {
        lines.add("    ", open(matter));
        lines.add("      ", String.join(", ", matter.items()));
      }
    }
    if (!tried.untried().isEmpty() || !tried.allPairs()) {
      lines.gap().add("", "There was no time to try out everything; this is what was found.");
    }
    return lines.gap().add("", FOOTER).toString();
  }

  static String open(Matters.Matter matter) {
    String items = Wording.counted(matter.moves(), "item hangs", "items hang");
    if (matter.with() == null) {
      return Wording.capital(label(matter.question())) + ": " + items + " on it.";
    }
    return Wording.capital(label(matter.question()))
        + ", and "
        + label(matter.with())
        + ": "
        + items
        + " on both together.";
  }

  private static String label(Unanswered question) {
    String about = question.about();
    return Rulebook.questions().get(question.question()).label()
        + (about.isEmpty() ? "" : " (" + about + ")");
  }

  void item(Lines lines, int number, Item item) {
    Card card = item.card();
    lines.add("%2d  ".formatted(number), wording.fill(besides.heading(item), item.advice()));
    lines.add("    When     ", "             ", When.words(item, checklist.file().setup()));
    lines.add("    Do       ", "             ", wording.fill(card.doIt(), item.advice()));
    lines.add("    Because  ", "             ", wording.fill(card.why(), item.advice()));
    String said = Wording.said(said(item));
    if (!said.isEmpty()) {
      lines.add("    Said     ", "             ", said);
    }
    if (card.caution() != null) {
      lines.add("    Careful  ", "             ", wording.fill(card.caution(), item.advice()));
    }
    more(lines, "    Ready    ", wording.fill(card.ready(), item.advice()));
    more(lines, "    At risk  ", wording.fill(card.atRisk(), item.advice()));
    more(lines, "    Meat     ", wording.fill(card.meat(), item.advice()));
    more(lines, "    Call     ", besides.call(item));
    lines.add("    Rests on ", "             ", restsBriefly(card));
    if (showRank) {
      lines.add(
          "    Rank     ",
          "             ",
          item.rank().sum()
              + " ("
              + card.consequence().words()
              + " x likelihood x how soon)  "
              + item.id());
    }
  }

  private static void more(Lines lines, String label, String text) {
    if (text != null) {
      lines.add(label, "             ", text);
    }
  }

  /** The answers, by their labels; equal labels of two groups are told once each. */
  static Map<String, String> said(Item item) {
    Map<String, String> said = new LinkedHashMap<>();
    for (Item.Because because : item.because()) {
      String words = because.said() == null ? "not known" : because.said();
      said.merge(because.label(), words, (a, b) -> a.equals(b) ? a : a + " and " + b);
    }
    return said;
  }

  /** A source by its key; one that a keeper wrote out stays as it is. */
  static String source(String key) {
    Source source = Rulebook.sources().get(key);
    return source == null ? key : source.line();
  }

  /** What a card rests on, its sources in full. */
  static String rests(Card card) {
    return rests(card, TextReport::source, "; ");
  }

  /** The same with no more of each source than body and year: the page of the rule has the rest. */
  private static String restsBriefly(Card card) {
    return rests(
        card,
        key -> Rulebook.sources().containsKey(key) ? Rulebook.sources().get(key).brief() : key,
        ", ");
  }

  private static String rests(Card card, UnaryOperator<String> source, String between) {
    String sources =
        card.sources().stream().map(source).distinct().collect(Collectors.joining(between));
    String line =
        Wording.capital(card.evidence().words()) + (sources.isEmpty() ? "." : ": " + sources + ".");
    if (card.evidence() == Evidence.LAW) {
      line += " Laws change: check the current text.";
    }
    return card.rests() == null ? line : line + " " + card.rests();
  }

  private void inOrder(Lines lines) {
    if (checklist.inOrder().isEmpty()) {
      return;
    }
    lines.gap();
    if (all) {
      lines.add("", "Already in order");
      checklist
          .inOrder()
          .forEach(o -> lines.add("    ", wording.fill(o.card().heading(), o.advice())));
    } else {
      Set<String> open =
          checklist.items().stream().map(i -> i.card().topic()).collect(Collectors.toSet());
      String topics =
          checklist.inOrder().stream()
              .map(o -> o.card().topic())
              .distinct()
              .filter(topic -> !open.contains(topic))
              .collect(Collectors.joining(", "));
      lines.add(
          "",
          topics.isEmpty()
              ? "Say --all to see what is in order."
              : "In order, as far as told: " + topics + " (say --all to see what).");
    }
  }

  private void tickedOff(Lines lines) {
    if (checklist.tickedOff().isEmpty()) {
      return;
    }
    if (all) {
      lines.gap().add("", "Ticked off in the diary");
      checklist.tickedOff().forEach(off -> lines.add("    ", tickedOff(off, wording)));
    } else {
      int count = checklist.tickedOff().size();
      lines.add(
          "",
          Wording.capital(Wording.counted(count, "item is", "items are"))
              + " ticked off in the diary (say --all to see "
              + (count == 1 ? "it)." : "them)."));
    }
  }

  /** {@code 12 May 2027: Put up shade. On the list again from 12 May 2028.} */
  static String tickedOff(TickedOff off, Wording wording) {
    return Dates.words(off.on())
        + ": "
        + wording.fill(off.item().card().heading(), off.item().advice())
        + " On the list again from "
        + Dates.words(off.again())
        + ".";
  }

  private void unusual(Lines lines) {
    if (!checklist.file().unusual().isEmpty()) {
      lines.gap().add("", "Please look again");
      for (Problem problem : checklist.file().unusual()) {
        lines.add("    ", problem.at(checklist.file().file()));
      }
    }
  }
}
