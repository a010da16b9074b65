package swineherd.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.outlook.SlaughterPlan;
import swineherd.outlook.SlaughterReadiness;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.outlook.sheet.Row;
import swineherd.units.Dates;

/**
 * Whether each group is ready for slaughter, the last weeks day by day, the items of the checklist
 * that belong to it, the meat, and the law there: a view of the checklist and the figures, with no
 * knowledge of its own.
 */
public final class SlaughterReport {
  private static final String LAW = "Who may slaughter, and the meat";

  private final SlaughterView view;
  private final SlaughterWords words;
  private final FigureWording figures;

  /** A checklist, and the figures of the same setup. */
  public SlaughterReport(Checklist checklist, FigureSheet sheet) {
    this.view = new SlaughterView(checklist, sheet);
    this.words = new SlaughterWords(view);
    this.figures = new FigureWording(sheet.setup().units());
  }

  /**
   * For a terminal of 80 columns.
   *
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public String text(UnaryOperator<String> bold) {
    StringBuilder out = new StringBuilder();
    out.append(new Lines().add("", Overview.setup(view.setup())));
    if (view.groups().isEmpty()) {
      out.append("\nNo pigs are there, or coming, that have not gone.\n");
    }
    for (SlaughterReadiness ready : view.groups()) {
      out.append('\n').append(bold.apply(SlaughterWords.verdict(ready))).append('\n');
      Lines lines = new Lines();
      lines.add("  ", SlaughterWords.days(ready));
      words.why(ready).forEach((name, why) -> lines.add("  %-12s".formatted(name), why));
      plan(lines, ready);
      items(lines, ready);
      meat(lines, ready);
      out.append(lines);
    }
    if (!view.law().isEmpty()) {
      Lines lines = new Lines();
      view.law().forEach(law -> lines.add("  ", law));
      out.append('\n').append(bold.apply(LAW)).append('\n').append(lines);
    }
    return out.append('\n').append(new Lines().add("", TextReport.FOOTER)).toString();
  }

  private void plan(Lines lines, SlaughterReadiness ready) {
    SlaughterPlan plan = view.plan(ready);
    if (plan.day() == null) {
      return;
    }
    lines.gap().add("  ", SlaughterWords.planHeading(plan));
    LocalDate before = null;
    for (SlaughterPlan.Step step : plan.steps()) {
      String day = step.on().equals(before) ? "" : Dates.words(step.on());
      lines.add("    %-18s  ".formatted(day), step.what());
      before = step.on();
    }
  }

  private void items(Lines lines, SlaughterReadiness ready) {
    List<Item> items = view.items(ready);
    if (items.isEmpty()) {
      return;
    }
    lines.gap().add("  ", "From the checklist, by its numbers");
    for (Item item : items) {
      lines.add("  %3d  ".formatted(view.place(item)), view.heading(item));
      lines.add("       ", view.doIt(item));
      careful(item).ifPresent(caution -> lines.add("       ", caution));
    }
  }

  private void meat(Lines lines, SlaughterReadiness ready) {
    List<Row> rows = view.rows(ready);
    if (!rows.isEmpty()) {
      lines.gap().add("  ", "Meat");
      FiguresReport report = new FiguresReport(view.sheet());
      rows.forEach(row -> report.row(lines, row));
    }
  }

  private Optional<String> careful(Item item) {
    return Optional.ofNullable(view.caution(item)).map(caution -> "Careful: " + caution);
  }

  /** As Markdown. */
  public String markdown() {
    StringBuilder out = new StringBuilder("# ");
    out.append(MarkdownReport.escape(Overview.setup(view.setup()))).append('\n');
    for (SlaughterReadiness ready : view.groups()) {
      out.append("\n## ").append(MarkdownReport.escape(SlaughterWords.verdict(ready)));
      out.append("\n\n").append(MarkdownReport.escape(SlaughterWords.days(ready))).append("\n\n");
      words
          .why(ready)
          .forEach(
              (name, why) ->
                  out.append("- **%s:** %s%n".formatted(name, MarkdownReport.escape(why))));
      plan(out, ready);
      items(out, ready);
      meat(out, ready);
    }
    if (!view.law().isEmpty()) {
      out.append("\n## ").append(LAW).append("\n\n");
      view.law().forEach(law -> out.append("- ").append(MarkdownReport.escape(law)).append('\n'));
    }
    return out.append('\n').append(TextReport.FOOTER).append('\n').toString();
  }

  private void plan(StringBuilder out, SlaughterReadiness ready) {
    SlaughterPlan plan = view.plan(ready);
    if (plan.day() == null) {
      return;
    }
    out.append("\n### ").append(SlaughterWords.planHeading(plan)).append("\n\n");
    for (SlaughterPlan.Step step : plan.steps()) {
      out.append("- [ ] **").append(Dates.words(step.on())).append("** ");
      out.append(MarkdownReport.escape(step.what())).append('\n');
    }
  }

  private void items(StringBuilder out, SlaughterReadiness ready) {
    List<Item> items = view.items(ready);
    if (items.isEmpty()) {
      return;
    }
    out.append("\n### From the checklist\n\n");
    for (Item item : items) {
      out.append("- **").append(MarkdownReport.escape(view.heading(item))).append("** ");
      out.append(MarkdownReport.escape(view.doIt(item)));
      careful(item).ifPresent(c -> out.append(' ').append(MarkdownReport.escape(c)));
      out.append('\n');
    }
  }

  private void meat(StringBuilder out, SlaughterReadiness ready) {
    List<Row> rows = view.rows(ready);
    if (rows.isEmpty()) {
      return;
    }
    out.append("\n### Meat\n\n");
    for (Row row : rows) {
      String note = figures.fill(row.note());
      out.append("- ").append(MarkdownReport.escape(figures.fill(row.name()))).append(": ");
      out.append(MarkdownReport.escape(figures.words(row.figure())));
      out.append(note.isEmpty() ? "" : "; " + MarkdownReport.escape(note)).append('\n');
    }
  }

  /** As JSON: SI units, ISO dates, names that stay. */
  public String json() {
    return new SlaughterJson(view).render();
  }
}
