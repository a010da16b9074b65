package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.figures.Band;
import swineherd.figures.Carcass;
import swineherd.outlook.HaulToSlaughter;
import swineherd.outlook.MeatYield;
import swineherd.outlook.Outlook;
import swineherd.outlook.SlaughterPlan;
import swineherd.outlook.SlaughterReadiness;
import swineherd.outlook.SlaughterReadiness.Verdict;
import swineherd.outlook.TaintRisk;
import swineherd.outlook.Treated;
import swineherd.outlook.sheet.Figure;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.outlook.sheet.Row;
import swineherd.rulebook.Stage;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/**
 * Whether each group is ready for slaughter, the last weeks day by day, the items of the checklist
 * that belong to it, and the meat: a view of the checklist and the figures, with no knowledge of
 * its own.
 */
public final class SlaughterReport {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Set<String> TOPICS = Set.of("slaughter", "treatment", "taint");
  private static final Set<String> IN_THE_PLAN = Set.of("book-by", "feed-off");

  private static final String IN_FEED =
      "there is one in the feed; its days begin with the last day they get it";

  private final Checklist checklist;
  private final FigureSheet sheet;
  private final Wording wording;
  private final FigureWording figures;

  /** A checklist, and the figures of the same setup. */
  public SlaughterReport(Checklist checklist, FigureSheet sheet) {
    this.checklist = checklist;
    this.sheet = sheet;
    this.wording = new Wording(sheet.setup().units());
    this.figures = new FigureWording(sheet.setup().units());
  }

  /**
   * For a terminal of 80 columns.
   *
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public String text(UnaryOperator<String> bold) {
    StringBuilder out = new StringBuilder();
    out.append(new Lines().add("", Overview.setup(sheet.setup())));
    List<SlaughterReadiness> all = all(SlaughterReadiness.class);
    if (all.isEmpty()) {
      out.append("\nNo pigs are there, or coming, that have not gone.\n");
    }
    for (SlaughterReadiness ready : all) {
      out.append('\n').append(bold.apply(verdict(ready))).append('\n');
      Lines lines = new Lines();
      lines.add("  ", days(ready));
      why(ready).forEach((name, words) -> lines.add("  %-12s".formatted(name), words));
      plan(lines, ready);
      items(lines, ready);
      meat(lines, ready);
      out.append(lines);
    }
    return out.append('\n').append(new Lines().add("", TextReport.FOOTER)).toString();
  }

  /** As Markdown. */
  public String markdown() {
    StringBuilder out = new StringBuilder("# ");
    out.append(MarkdownReport.escape(Overview.setup(sheet.setup()))).append('\n');
    for (SlaughterReadiness ready : all(SlaughterReadiness.class)) {
      out.append("\n## ").append(MarkdownReport.escape(verdict(ready))).append("\n\n");
      out.append(MarkdownReport.escape(days(ready))).append("\n\n");
      why(ready)
          .forEach(
              (name, words) ->
                  out.append("- **%s:** %s%n".formatted(name, MarkdownReport.escape(words))));
      SlaughterPlan plan = plan(ready);
      if (plan.day() != null) {
        out.append("\n### ").append(planHeading(plan)).append("\n\n");
        for (SlaughterPlan.Step step : plan.steps()) {
          out.append("- [ ] **").append(Dates.words(step.on())).append("** ");
          out.append(MarkdownReport.escape(step.what())).append('\n');
        }
      }
      List<Item> items = items(ready);
      if (!items.isEmpty()) {
        out.append("\n### From the checklist\n\n");
        for (Item item : items) {
          out.append("- **").append(MarkdownReport.escape(heading(item))).append("** ");
          out.append(MarkdownReport.escape(wording.fill(item.card().doIt(), item.advice())));
          caution(item).ifPresent(c -> out.append(' ').append(MarkdownReport.escape(c)));
          out.append('\n');
        }
      }
      List<Row> rows = rows(ready);
      if (!rows.isEmpty()) {
        out.append("\n### Meat\n\n");
        for (Row row : rows) {
          String note = figures.fill(row.note());
          out.append("- ").append(MarkdownReport.escape(figures.fill(row.name()))).append(": ");
          out.append(MarkdownReport.escape(figures.words(row.figure())));
          out.append(note.isEmpty() ? "" : "; " + MarkdownReport.escape(note)).append('\n');
        }
      }
    }
    return out.append('\n').append(TextReport.FOOTER).append('\n').toString();
  }

  /** As JSON: SI units, ISO dates, names that stay. */
  public String json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", sheet.setup().checkOn().toString());
    root.put("name", sheet.setup().name());
    ArrayNode groups = root.putArray("groups");
    for (SlaughterReadiness ready : all(SlaughterReadiness.class)) {
      group(groups.addObject(), ready);
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void group(ObjectNode node, SlaughterReadiness ready) {
    node.put("pigs", ready.pigs());
    node.put("verdict", ready.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    day(node, "day", ready.day());
    day(node, "earliest", ready.blocked() ? null : ready.earliest());
    day(node, "readyOn", ready.readyOn());
    day(node, "finishLikely", ready.finish() == null ? null : ready.finish().likely());
    day(node, "withdrawalOver", ready.clearOn());
    node.put("withdrawalUnknown", ready.blocked());
    day(node, "standstillOver", ready.leaveOn());
    day(node, "castrationClear", ready.castrationClearOn());
    day(node, "vaccineFrom", ready.vaccineFrom());
    day(node, "vaccineUntil", ready.vaccineUntil());
    day(node, "tooHeavyFrom", ready.tooHeavyFrom());
    day(node, "bookBy", ready.bookBy());
    node.put("ill", ready.ill());
    node.put("tooHot", ready.tooHot());
    band(node, "weightKg", ready.weight());
    node.put("targetKg", ready.target());
    ObjectNode why = node.putObject("why");
    why(ready).forEach((name, words) -> why.put(name.toLowerCase(Locale.ROOT), words));
    SlaughterPlan plan = plan(ready);
    day(node, "planFor", plan.day());
    ArrayNode days = node.putArray("days");
    for (SlaughterPlan.Step step : plan.steps()) {
      days.addObject()
          .put("on", step.on().toString())
          .put("key", step.key())
          .put("what", step.what());
    }
    ArrayNode items = node.putArray("items");
    for (Item item : items(ready)) {
      items
          .addObject()
          .put("rank", checklist.items().indexOf(item) + 1)
          .put("id", item.id())
          .put("heading", heading(item))
          .put("dueOn", item.due() == null ? null : item.due().toString())
          .put("do", wording.fill(item.card().doIt(), item.advice()))
          .put("caution", wording.fill(item.card().caution(), item.advice()));
    }
    of(MeatYield.class, y -> y.pigs().equals(ready.pigs()))
        .ifPresent(yield -> meat(node.putObject("meat"), yield));
  }

  private static void meat(ObjectNode node, MeatYield yield) {
    node.put("liveKgEach", yield.live());
    band(node, "hangingKgEach", yield.hanging());
    band(node, "meatKg", yield.meat());
    band(node, "freezerL", yield.freezer());
    band(node, "freezesKgADay", yield.freezesADay());
    ObjectNode cuts = node.putObject("cutsKgEach");
    Carcass.cutsKg(yield.hanging().likely()).forEach(cuts::put);
  }

  private static void day(ObjectNode node, String name, LocalDate day) {
    node.put(name, day == null ? null : day.toString());
  }

  private static void band(ObjectNode node, String name, Band band) {
    if (band == null) {
      node.putNull(name);
    } else {
      node.putObject(name)
          .put("low", band.low())
          .put("likely", band.likely())
          .put("high", band.high());
    }
  }

  // ------------------------------------------------------------------------------- words

  private static String verdict(SlaughterReadiness ready) {
    String words =
        switch (ready.verdict()) {
          case READY -> ready.day() == null ? "ready" : "ready for that day";
          case NOT_YET -> "not yet";
          case TOO_LATE -> "too late";
          case WEIGHT_NOT_KNOWN -> "nothing noted forbids it; their weight is not known";
        };
    return Wording.capital(ready.pigs()) + ": " + words + ".";
  }

  private static String days(SlaughterReadiness ready) {
    StringBuilder words = new StringBuilder();
    words.append(
        ready.day() == null
            ? "No day is set. "
            : "The day set is " + Dates.words(ready.day()) + ". ");
    if (ready.blocked()) {
      return words
          .append("No earliest day can be told until the days of a medicine are known.")
          .toString();
    }
    words.append("The earliest that nothing noted forbids is ");
    words.append(today(ready, ready.earliest()));
    LocalDate fits = ready.readyOn();
    if (fits != null && !fits.equals(ready.earliest()) && ready.verdict() != Verdict.TOO_LATE) {
      words.append("; with their weight likely ").append(Dates.words(fits));
    }
    return words.append('.').toString();
  }

  private static String today(SlaughterReadiness ready, LocalDate day) {
    return day.equals(ready.today()) ? "today" : Dates.words(day);
  }

  /** Each thing that it hangs on, the first first. */
  private Map<String, String> why(SlaughterReadiness ready) {
    Map<String, String> why = new LinkedHashMap<>();
    why.put("Medicines", medicines(ready));
    if (ready.ill()) {
      why.put("Health", "something is noted: none goes before a vet has said it is fit");
    }
    if (ready.leaveOn() != null) {
      why.put(
          "Standstill",
          "no pig may leave before "
              + Dates.words(ready.leaveOn())
              + "; ask whether straight to slaughter is exempt");
    }
    if (ready.careUntil() != null) {
      why.put("Own care", "by the law there not at home before " + Dates.words(ready.careUntil()));
    }
    taint(ready).ifPresent(words -> why.put("Taint", words));
    why.put("Weight", weight(ready));
    weather(ready).ifPresent(words -> why.put("Weather", words));
    why.put("Place", place(ready));
    return why;
  }

  private String medicines(SlaughterReadiness ready) {
    List<Treated> given =
        all(Treated.class).stream().filter(t -> t.pigs().equals(ready.pigs())).toList();
    boolean inFeed = sheet.setup().feed().madeFor() == Feed.MadeFor.MEDICATED;
    if (given.isEmpty() && inFeed) {
      return IN_FEED;
    }
    if (given.isEmpty()) {
      return "none noted; if any was given, its withdrawal counts";
    }
    StringBuilder words = new StringBuilder();
    for (Treated each : given) {
      words.append(words.isEmpty() ? "" : "; ").append(each.activeWords()).append(": ");
      if (each.clearOn() == null) {
        words.append(
            each.mayReach() ? "no date can be told, see below" : "no date noted, and long ago");
      } else {
        words
            .append(each.clearOn().isAfter(ready.today()) ? "they may go from " : "over since ")
            .append(Dates.words(each.clearOn()));
      }
    }
    return words + (inFeed ? "; " + IN_FEED : "");
  }

  private Optional<String> taint(SlaughterReadiness ready) {
    if (ready.castrationClearOn() != null) {
      return Optional.of("castrated late; not before " + Dates.words(ready.castrationClearOn()));
    }
    if (ready.vaccineFrom() != null) {
      return Optional.of(
          "vaccinated: from "
              + Dates.words(ready.vaccineFrom())
              + ", and the effect lasts until about "
              + Dates.words(ready.vaccineUntil()));
    }
    return of(TaintRisk.class, t -> t.pigs().equals(ready.pigs()))
        .map(
            risk ->
                (risk.males() == null ? "males not known; if entire, " : "males not castrated, ")
                    + "the risk is "
                    + risk.className());
  }

  private String weight(SlaughterReadiness ready) {
    if (ready.weight() == null) {
      return "not known; say when they came and what they weighed, or tape one";
    }
    Band kg = ready.weight();
    String then =
        Display.band(kg.low(), kg.likely(), kg.high(), Dimension.MASS, sheet.setup().units());
    String when = ready.day() == null ? " today" : " on " + Dates.words(ready.day());
    String target = mass(ready.target());
    String words = then + when + "; target " + target;
    if (ready.isHeavy()) {
      return words + ": over " + mass(ready.tooHeavyOver()) + ", kept too long";
    }
    if (ready.finish() == null) {
      return words + ", farther off than their growth is known";
    }
    if (!ready.isLight()) {
      return words
          + (ready.tooHeavyFrom() == null
              ? ""
              : ", too heavy from about " + Dates.words(ready.tooHeavyFrom()));
    }
    return words + ", likely reached " + figures.words(new Figure.Dates(ready.finish()));
  }

  private String mass(double kg) {
    return Display.amount(kg, Dimension.MASS, sheet.setup().units());
  }

  private Optional<String> weather(SlaughterReadiness ready) {
    return of(HaulToSlaughter.class, h -> h.pigs().equals(ready.pigs()))
        .filter(h -> h.haul() != null)
        .map(
            h ->
                Display.amount(h.air(), Dimension.TEMPERATURE, sheet.setup().units())
                    + " forecast: "
                    + switch (h.haul()) {
                      case FIT -> "fit for the road";
                      case COLD -> "dry straw, no wind";
                      case EARLY -> "load before eight in the morning";
                      case POSTPONE -> "do not load them";
                    });
  }

  private String place(SlaughterReadiness ready) {
    Group group = group(ready);
    if (group.slaughterAt() == Group.SlaughterAt.HOME) {
      return "at home, by a trained slaughterer";
    }
    if (Boolean.TRUE.equals(group.booked())) {
      return ready.day() == null || ready.verdict() == Verdict.READY
          ? "booked"
          : "booked; if the day moves, tell them now";
    }
    return ready.bookBy() == null
        ? "not booked"
        : "not booked; book by " + today(ready, ready.bookBy());
  }

  private SlaughterPlan plan(SlaughterReadiness ready) {
    return SlaughterPlan.of(ready, group(ready));
  }

  private Group group(SlaughterReadiness ready) {
    return sheet.setup().group(ready.pigs()).orElseThrow();
  }

  private static String planHeading(SlaughterPlan plan) {
    return "Day by day to "
        + Dates.words(plan.day())
        + (plan.set() ? "" : ", the first day that fits");
  }

  private void plan(Lines lines, SlaughterReadiness ready) {
    SlaughterPlan plan = plan(ready);
    if (plan.day() == null) {
      return;
    }
    lines.gap().add("  ", planHeading(plan));
    LocalDate before = null;
    for (SlaughterPlan.Step step : plan.steps()) {
      String day = step.on().equals(before) ? "" : Dates.words(step.on());
      lines.add("    %-18s  ".formatted(day), step.what());
      before = step.on();
    }
  }

  private void items(Lines lines, SlaughterReadiness ready) {
    List<Item> items = items(ready);
    if (items.isEmpty()) {
      return;
    }
    lines.gap().add("  ", "From the checklist, by its numbers");
    for (Item item : items) {
      lines.add("  %3d  ".formatted(checklist.items().indexOf(item) + 1), heading(item));
      lines.add("       ", wording.fill(item.card().doIt(), item.advice()));
      caution(item).ifPresent(caution -> lines.add("       ", caution));
    }
  }

  private void meat(Lines lines, SlaughterReadiness ready) {
    List<Row> rows = rows(ready);
    if (!rows.isEmpty()) {
      lines.gap().add("  ", "Meat");
      FiguresReport report = new FiguresReport(sheet);
      rows.forEach(row -> report.row(lines, row));
    }
  }

  private String heading(Item item) {
    return wording.fill(item.card().heading(), item.advice());
  }

  private Optional<String> caution(Item item) {
    return Optional.ofNullable(wording.fill(item.card().caution(), item.advice()))
        .map(words -> "Careful: " + words);
  }

  /** The items of that stage, and of the topics it hangs on, about these pigs. */
  private List<Item> items(SlaughterReadiness ready) {
    return checklist.items().stream()
        .filter(
            item ->
                item.card().stage() == Stage.BEFORE_SLAUGHTER
                    || TOPICS.contains(item.card().topic())
                    || item.id().equals("feed.medicated"))
        .filter(
            item -> item.advice().about().equals(ready.pigs()) || item.advice().about().isEmpty())
        .toList();
  }

  private List<Row> rows(SlaughterReadiness ready) {
    return sheet.sections().stream()
        .filter(s -> s.key().equals("slaughter") && s.about().equals(ready.pigs()))
        .flatMap(s -> s.rows().stream())
        .filter(row -> !IN_THE_PLAN.contains(row.key()))
        .toList();
  }

  private <T extends Outlook> List<T> all(Class<T> type) {
    return checklist.outlooks().stream().filter(type::isInstance).map(type::cast).toList();
  }

  private <T extends Outlook> Optional<T> of(Class<T> type, Predicate<T> which) {
    return all(type).stream().filter(which).findFirst();
  }
}
