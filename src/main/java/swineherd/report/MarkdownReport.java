package swineherd.report;

import java.util.List;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.Matters;
import swineherd.rulebook.Card;
import swineherd.setup.Problem;

/** A checklist as Markdown, to be printed or kept. */
public final class MarkdownReport {
  private final Checklist checklist;
  private final boolean all;
  private final boolean showRank;
  private final List<Matters.Matter> matters;
  private final Wording wording;
  private final Besides besides;

  /**
   * @param matters the unanswered questions that matter, the one that matters most first
   * @param all whether to list what is already in order
   * @param showRank whether to show how each item's rank comes about
   */
  public MarkdownReport(
      Checklist checklist, List<Matters.Matter> matters, boolean all, boolean showRank) {
    this.matters = matters;
    this.checklist = checklist;
    this.all = all;
    this.showRank = showRank;
    this.wording = new Wording(checklist.file().setup().units());
    this.besides = new Besides(checklist);
  }

  /** The whole report. */
  public String render() {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(escape(Overview.setup(checklist.file().setup()))).append("\n\n");
    out.append(Overview.verdict(checklist)).append("\n");
    int number = 1;
    for (Item item : checklist.items()) {
      item(out, number++, item);
    }
    if (all && !checklist.inOrder().isEmpty()) {
      out.append("\n## Already in order\n\n");
      checklist
          .inOrder()
          .forEach(
              o ->
                  out.append("- ")
                      .append(escape(wording.fill(o.card().heading(), o.advice())))
                      .append('\n'));
    }
    if (all && !checklist.tickedOff().isEmpty()) {
      out.append("\n## Ticked off in the diary\n\n");
      checklist
          .tickedOff()
          .forEach(
              off ->
                  out.append("- ").append(escape(TextReport.tickedOff(off, wording))).append('\n'));
    }
    if (!checklist.file().unusual().isEmpty()) {
      out.append("\n## Please look again\n\n");
      for (Problem problem : checklist.file().unusual()) {
        out.append("- ").append(escape(problem.at(checklist.file().file()))).append('\n');
      }
    }
    if (!matters.isEmpty()) {
      out.append("\n## Not yet known, and it matters\n\n");
      for (Matters.Matter matter : matters) {
        out.append("- ").append(escape(TextReport.open(matter))).append('\n');
      }
    }
    return out.append("\n").append(TextReport.FOOTER).append("\n").toString();
  }

  private void item(StringBuilder out, int number, Item item) {
    Card card = item.card();
    out.append("\n## ").append(number).append(". ");
    out.append(escape(wording.fill(besides.heading(item), item.advice()))).append("\n\n");
    line(out, "When", When.words(item, checklist.file().setup()));
    line(out, "Do", wording.fill(card.doIt(), item.advice()));
    line(out, "Because", wording.fill(card.why(), item.advice()));
    String said = Wording.said(TextReport.said(item));
    line(out, "You said", said.isEmpty() ? null : said);
    line(out, "Careful", wording.fill(card.caution(), item.advice()));
    line(out, "Have ready", wording.fill(card.ready(), item.advice()));
    line(out, "At risk", wording.fill(card.atRisk(), item.advice()));
    line(out, "Meat", wording.fill(card.meat(), item.advice()));
    line(out, "Call", besides.call(item));
    line(out, "Rests on", TextReport.rests(card));
    line(out, "Rank", showRank ? item.rank().sum() + " " + item.id() : null);
  }

  private static void line(StringBuilder out, String label, String text) {
    if (text != null) {
      out.append("- **").append(label).append(":** ").append(escape(text)).append('\n');
    }
  }

  /** What the keeper wrote must not become markup. */
  static String escape(String text) {
    return text.replaceAll("([\\\\`*_{}\\[\\]<>#|])", "\\\\$1");
  }
}
