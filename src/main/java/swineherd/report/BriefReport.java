package swineherd.report;

import java.util.Locale;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.rulebook.Referral;

/**
 * The whole checklist for the barn door: of each item its place, what, by when, and whom to call.
 */
public final class BriefReport {
  private final Checklist checklist;
  private final Wording wording;

  public BriefReport(Checklist checklist) {
    this.checklist = checklist;
    this.wording = new Wording(checklist.file().setup().units());
  }

  /** For a terminal of 80 columns. */
  public String text() {
    Lines lines = new Lines();
    lines.add("", Overview.setup(checklist.file().setup()));
    lines.add("", Overview.verdict(checklist)).gap();
    int number = 1;
    for (Item item : checklist.items()) {
      String call = call(item);
      lines.add(
          "%2d  ".formatted(number++), line(item) + (call.isEmpty() ? "" : " [" + call + "]"));
    }
    return lines.gap().add("", TextReport.FOOTER).toString();
  }

  /** A list of boxes to tick. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(MarkdownReport.escape(Overview.setup(checklist.file().setup())));
    out.append("\n\n").append(Overview.verdict(checklist)).append("\n\n");
    int number = 1;
    for (Item item : checklist.items()) {
      String call = call(item);
      out.append("- [ ] ").append(number++).append(". ").append(MarkdownReport.escape(line(item)));
      out.append(call.isEmpty() ? "" : " **" + call + "**").append('\n');
    }
    return out.append('\n').append(TextReport.FOOTER).append('\n').toString();
  }

  private String line(Item item) {
    return wording.fill(item.card().heading(), item.advice())
        + " "
        + When.briefly(item, checklist.file().setup());
  }

  /** {@code vet today}; empty if nobody is to be called. */
  private static String call(Item item) {
    return item.referral() == Referral.NONE
        ? ""
        : item.referral().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
