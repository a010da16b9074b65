package swineherd.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.rulebook.Referral;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/** The winter of a setup: who meets it, and what to have ready by which day. */
public final class WinterReport {
  private static final String WEEKS =
      "Days are counted back from a frost that comes as early as in one year of ten. How many weeks"
          + " each takes is our judgement; no source states any.";
  private static final String MORE =
      "Your answers behind each item, and what it rests on, are in the checklist: swineherd check.";

  private final Checklist checklist;
  private final Setup setup;
  private final WinterView view;
  private final WinterWords words;
  private final Wording wording;

  public WinterReport(Checklist checklist) {
    this.checklist = checklist;
    this.setup = checklist.file().setup();
    this.view = WinterView.of(checklist);
    this.words = new WinterWords(setup, view);
    this.wording = new Wording(setup.units());
  }

  /** Items that are due on one day, or at once, or have no day. */
  private record Due(String title, List<Item> items) {}

  /**
   * For a terminal of 80 columns.
   *
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public String text(UnaryOperator<String> bold) {
    Lines lines = new Lines();
    lines.add("", Overview.setup(setup));
    words.place().forEach(line -> lines.add("", line));
    lines.gap();
    words.groups().forEach(line -> lines.add("  ", line));
    if (view.someStay()) {
      lines.gap().add("", WEEKS);
    }
    for (Due due : byDay()) {
      lines.gap().line(bold.apply(due.title()));
      for (Item item : due.items()) {
        lines.add("  * ", wording.fill(item.card().heading(), item.advice()));
        lines.add("      ", wording.fill(item.card().doIt(), item.advice()));
        careful(item).ifPresent(caution -> lines.add("      ", "Careful: " + caution));
      }
    }
    if (!view.inOrder().isEmpty()) {
      lines.gap().line(bold.apply("In order, as far as told"));
      inOrder().forEach(line -> lines.add("  ", line));
    }
    lines.gap();
    if (!view.items().isEmpty()) {
      lines.add("", MORE);
    }
    return lines.add("", TextReport.FOOTER).toString();
  }

  /** To be printed or kept. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(MarkdownReport.escape(Overview.setup(setup))).append("\n\n");
    words.place().forEach(line -> out.append(MarkdownReport.escape(line)).append("\n"));
    out.append("\n");
    words
        .groups()
        .forEach(line -> out.append("- ").append(MarkdownReport.escape(line)).append("\n"));
    if (view.someStay()) {
      out.append("\n").append(WEEKS).append("\n");
    }
    for (Due due : byDay()) {
      out.append("\n## ").append(MarkdownReport.escape(due.title())).append("\n\n");
      for (Item item : due.items()) {
        out.append("- [ ] **")
            .append(MarkdownReport.escape(wording.fill(item.card().heading(), item.advice())))
            .append("** ")
            .append(MarkdownReport.escape(wording.fill(item.card().doIt(), item.advice())));
        careful(item)
            .ifPresent(
                caution -> out.append(" *Careful:* ").append(MarkdownReport.escape(caution)));
        out.append("\n");
      }
    }
    if (!view.inOrder().isEmpty()) {
      out.append("\n## In order, as far as told\n\n");
      inOrder().forEach(l -> out.append("- ").append(MarkdownReport.escape(l)).append("\n"));
    }
    return out.append("\n").append(TextReport.FOOTER).append("\n").toString();
  }

  private List<Due> byDay() {
    List<Due> all = new ArrayList<>();
    List<Item> now = new ArrayList<>();
    for (Item item : view.dated()) {
      if (!item.due().isAfter(setup.checkOn())) {
        now.add(item);
        continue;
      }
      String title = title(item.due());
      if (all.isEmpty() || !all.get(all.size() - 1).title().equals(title)) {
        all.add(new Due(title, new ArrayList<>()));
      }
      all.get(all.size() - 1).items().add(item);
    }
    if (!now.isEmpty()) {
      all.add(0, new Due("Now", now));
    }
    if (!view.undated().isEmpty()) {
      all.add(new Due("Without a day", view.undated()));
    }
    return all;
  }

  private String title(LocalDate due) {
    String weeks =
        view.weeksBefore(due)
            .map(w -> ", " + Wording.counted(w.intValue(), "week", "weeks") + " before the frost")
            .orElse("");
    return "By " + Dates.words(due) + weeks;
  }

  private Optional<String> careful(Item item) {
    String caution = wording.fill(item.card().caution(), item.advice());
    if (item.referral() == Referral.NONE) {
      return Optional.ofNullable(caution);
    }
    return Optional.of((caution == null ? "" : caution + " ") + item.referral().words());
  }

  private List<String> inOrder() {
    return view.inOrder().stream().map(o -> wording.fill(o.card().heading(), o.advice())).toList();
  }

  /** As JSON; fields are added, never renamed. Numbers are in SI units. */
  public String json() {
    return new WinterJson(checklist, view).render();
  }
}
