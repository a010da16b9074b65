package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.figures.Band;
import swineherd.figures.Daylight;
import swineherd.figures.Hemisphere;
import swineherd.figures.Winter;
import swineherd.outlook.WinterClimate;
import swineherd.outlook.WinterPen;
import swineherd.outlook.WinterStay;
import swineherd.report.WinterView.There;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/** The winter of a setup: who meets it, and what to have ready by which day. */
public final class WinterReport {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String WEEKS =
      "Days are counted back from a frost that comes as early as in one year of ten. How many weeks"
          + " each takes is our judgement; no source states any.";
  private static final String MORE =
      "Your answers behind each item, and what it rests on, are in the checklist: swineherd check.";

  /** From this chance on the rules ask for what a winter needs. */
  private static final double LIKELY = 0.5;

  private final Checklist checklist;
  private final Setup setup;
  private final WinterView view;
  private final Wording wording;

  public WinterReport(Checklist checklist) {
    this.checklist = checklist;
    this.setup = checklist.file().setup();
    this.view = WinterView.of(checklist);
    this.wording = new Wording(setup.units());
  }

  /** Items that are due on one day, or at once, or have no day. */
  private record Due(String title, List<Item> items) {}

  // ------------------------------------------------------------------------------ for reading

  /**
   * For a terminal of 80 columns.
   *
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public String text(UnaryOperator<String> bold) {
    Lines lines = new Lines();
    lines.add("", Overview.setup(setup));
    place().forEach(line -> lines.add("", line));
    lines.gap();
    groups().forEach(line -> lines.add("  ", line));
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
    if (!items().isEmpty()) {
      lines.add("", MORE);
    }
    return lines.add("", TextReport.FOOTER).toString();
  }

  /** To be printed or kept. */
  public String markdown() {
    StringBuilder out = new StringBuilder();
    out.append("# ").append(MarkdownReport.escape(Overview.setup(setup))).append("\n\n");
    place().forEach(line -> out.append(MarkdownReport.escape(line)).append("\n"));
    out.append("\n");
    groups().forEach(line -> out.append("- ").append(MarkdownReport.escape(line)).append("\n"));
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

  private List<Item> items() {
    List<Item> all = new ArrayList<>(view.dated());
    all.addAll(view.undated());
    return all;
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

  // -------------------------------------------------------------------------------- the place

  private List<String> place() {
    List<String> lines = new ArrayList<>();
    if (view.climate() != null) {
      lines.addAll(climate(view.climate()));
    }
    view.faults().forEach(why -> lines.add("Not worked out: " + why + "."));
    return lines;
  }

  private List<String> climate(WinterClimate climate) {
    return switch (climate.kind()) {
      case UNKNOWN ->
          List.of(
              "Nothing is known of the winters there: say when the first hard frost comes and how"
                  + " cold the nights get, or the hardiness zone.");
      case MILD -> List.of("The winters there are mild: no hard frost to make ready for.");
      case FREEZES -> winter(climate);
    };
  }

  private List<String> winter(WinterClimate climate) {
    List<String> lines = new ArrayList<>();
    String kind =
        climate.winterClass() == null
            ? "How cold the winters there are is not known."
            : "The winters there are "
                + Table.named("winter-classes").row(climate.winterClass().name()).text("words")
                + ": nights of "
                + degrees(climate.nights())
                + " in the coldest month, "
                + degrees(climate.worstNight())
                + " on the worst of the year.";
    LocalDate usual = climate.firstHardFrost().atYear(setup.checkOn().getYear());
    lines.add(
        kind
            + " The first hard frost comes about "
            + Dates.words(climate.firstHardFrost())
            + ", in one year of ten before "
            + Dates.words(MonthDay.from(Winter.earlyFreeze(usual, climate.spread())))
            + "."
            + shortestDay(climate).stream()
                .mapToObj(h -> " The shortest day has " + Math.round(h) + " hours of light.")
                .findFirst()
                .orElse(""));
    if (!climate.assumed().isEmpty()) {
      lines.add("Not said, and so taken: " + String.join("; ", climate.assumed()) + ".");
    }
    return lines;
  }

  private String degrees(double celsius) {
    return amount(celsius, Dimension.TEMPERATURE);
  }

  /** Hours; empty where the latitude is not known. */
  private OptionalDouble shortestDay(WinterClimate climate) {
    Double latitude = setup.place().latitude();
    Month month = climate.hemisphere() == Hemisphere.NORTH ? Month.DECEMBER : Month.JUNE;
    return latitude == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            Daylight.hours(latitude, LocalDate.of(setup.checkOn().getYear(), month, 21)));
  }

  // ------------------------------------------------------------------------------- the groups

  private List<String> groups() {
    List<String> lines = new ArrayList<>();
    boolean freezes = view.climate() != null && view.climate().kind() == WinterClimate.Kind.FREEZES;
    if (freezes && !view.groups().isEmpty() && !view.someStay() && allForeseen()) {
      lines.add("None of the pigs should be there when it freezes hard.");
    }
    for (There there : view.groups()) {
      String name = there.group().name() == null ? "A group" : there.group().name();
      String pen = there.group().pen() == null ? "" : ", in " + there.group().pen();
      lines.add(Wording.capital(name) + pen + ": " + group(there) + ".");
    }
    view.pens().forEach(needs -> lines.add(needs(needs)));
    if (view.groups().isEmpty()) {
      lines.add("No pigs are described yet.");
    }
    return lines;
  }

  /** A pen in numbers, for all of its pigs together. */
  private String needs(WinterView.Needs needs) {
    WinterPen pen = needs.pen();
    return Wording.capital(pen.pen())
        + " in winter, for "
        + Wording.counted(pen.count(), "pig", "pigs")
        + " of up to "
        + amount(pen.heaviest(), Dimension.MASS)
        + ": "
        + amount(pen.bedArea(), Dimension.AREA)
        + " to lie on, straw "
        + amount(pen.bedDepth(), Dimension.LENGTH)
        + " deep ("
        + amount(pen.straw(), Dimension.MASS)
        + " to have in, "
        + amount(pen.strawMonthly(), Dimension.MASS)
        + " a month), "
        + amount(pen.waterLater(), Dimension.VOLUME)
        + " of water a day"
        + (needs.stores() == null
            ? ""
            : ", " + amount(needs.stores().daily(), Dimension.MASS) + " of feed a day in the cold")
        + ".";
  }

  private String amount(double value, Dimension dimension) {
    return Display.amount(value, dimension, setup.units());
  }

  private boolean allForeseen() {
    return view.groups().stream().allMatch(g -> g.stay() != null || isGone(g));
  }

  private boolean isGone(There there) {
    LocalDate day = there.group().slaughterOn();
    return day != null && day.isBefore(setup.checkOn());
  }

  private String group(There there) {
    WinterStay stay = there.stay();
    boolean one = Objects.equals(there.group().count(), 1);
    String they = one ? "it" : "they";
    String theyAre = one ? "it is" : "they are";
    if (isGone(there)) {
      return "gone since " + Dates.words(there.group().slaughterOn());
    }
    if (there.course() == null) {
      return "nobody can say, since neither a day of arrival nor a weight is known";
    }
    String goes = leaves(there).map(l -> they + " should go " + l).orElse("");
    if (stay == null || !stay.frostKnown()) {
      return goes.isEmpty() ? "nobody knows when " + they + " will go" : goes;
    }
    String weighs =
        Wording.capital(they)
            + (one ? " weighs " : " weigh ")
            + Display.span(
                stay.weight().low(),
                stay.weight().likely(),
                stay.weight().high(),
                Dimension.MASS,
                setup.units());
    if (stay.begun()) {
      return theyAre
          + " there, and frost must be reckoned with until "
          + Dates.words(stay.season().end())
          + ". "
          + weighs
          + (goes.isEmpty() ? "" : "; " + goes);
    }
    if (stay.frost().usual().isBefore(stay.from())) {
      return they
          + (one ? " comes" : " come")
          + " into the winter on "
          + Dates.words(stay.from())
          + ". "
          + weighs
          + " then";
    }
    String chance =
        Wording.chance(stay.chance())
            + " that "
            + theyAre
            + " still there at the first hard frost, about "
            + Dates.words(stay.frost().usual());
    if (!there.stays()) {
      return chance + (goes.isEmpty() ? "" : ". " + Wording.capital(goes));
    }
    return chance
        + ". "
        + weighs
        + " then"
        + (stay.chance() < LIKELY
            ? ". Less than even, so that nothing is asked for yet: weigh on the way and look again"
            : "");
  }

  /** The day they go: set, or likely with its band. */
  private Optional<String> leaves(There there) {
    if (there.course().slaughterOn() != null) {
      return Optional.of("on " + Dates.words(there.course().slaughterOn()));
    }
    return Optional.ofNullable(there.course().finish())
        .map(
            f ->
                "about "
                    + Dates.words(f.likely())
                    + " ("
                    + Dates.words(f.early())
                    + " to "
                    + Dates.words(f.late())
                    + ")");
  }

  // ----------------------------------------------------------------------------- for programs

  /** As JSON; fields are added, never renamed. Numbers are in SI units. */
  public String json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("checkedOn", setup.checkOn().toString());
    root.put("name", setup.name());
    climate(root.putObject("winter"));
    ArrayNode groups = root.putArray("groups");
    view.groups().forEach(there -> group(groups.addObject(), there));
    root.put("someStay", view.someStay());
    ArrayNode pens = root.putArray("pens");
    view.pens().forEach(needs -> needs(pens.addObject(), needs));
    ArrayNode items = root.putArray("items");
    JsonReport report = new JsonReport(checklist, List.of());
    for (Item item : items()) {
      ObjectNode node = items.addObject();
      report.item(node, checklist.items().indexOf(item) + 1, item);
      if (item.due() != null) {
        view.weeksBefore(item.due()).ifPresent(weeks -> node.put("weeksBefore", weeks));
      }
    }
    ArrayNode inOrder = root.putArray("inOrder");
    for (Checklist.InOrder entry : view.inOrder()) {
      inOrder
          .addObject()
          .put("id", entry.card().id())
          .put("about", entry.advice().about())
          .put("heading", wording.fill(entry.card().heading(), entry.advice()));
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void climate(ObjectNode node) {
    WinterClimate climate = view.climate();
    view.faults().forEach(node.putArray("notWorkedOut")::add);
    if (climate == null) {
      return;
    }
    node.put("kind", climate.kind().name().toLowerCase(Locale.ROOT));
    node.put("class", climate.winterClass() == null ? null : climate.winterClass().name());
    node.put("nights", climate.nights());
    node.put("worstNight", climate.worstNight());
    if (climate.kind() == WinterClimate.Kind.FREEZES) {
      // as in a setup file: the day and month, of no year
      node.put("firstHardFrost", Dates.words(climate.firstHardFrost()));
      node.put("frostSpread", climate.spread());
      node.put("dateTaken", climate.dateTaken());
    }
    ArrayNode assumed = node.putArray("assumed");
    climate.assumed().forEach(assumed::add);
  }

  /** Areas in m2, lengths in m, masses in kg, water in L a day. */
  private static void needs(ObjectNode node, WinterView.Needs needs) {
    WinterPen pen = needs.pen();
    node.put("pen", pen.pen())
        .put("count", pen.count())
        .put("chance", pen.chance())
        .put("heaviest", pen.heaviest())
        .put("bedArea", pen.bedArea())
        .put("bedDepth", pen.bedDepth())
        .put("straw", pen.straw())
        .put("strawMonthly", pen.strawMonthly())
        .put("waterAtFrost", pen.waterThen())
        .put("waterLater", pen.waterLater());
    if (needs.stores() != null) {
      node.put("feedDaily", needs.stores().daily())
          .put("feedDays", needs.stores().days())
          .put("feedReserve", needs.stores().reserve());
    }
  }

  private void group(ObjectNode node, There there) {
    node.put("pigs", there.group().name());
    node.put("pen", there.group().pen());
    WinterStay stay = there.stay();
    if (stay == null || !stay.frostKnown()) {
      return;
    }
    node.put("chance", stay.chance());
    node.put("begun", stay.begun());
    node.put("stays", there.stays());
    node.put("frost", stay.frost().usual().toString());
    node.put("earlyFrost", stay.frost().early().toString());
    node.put("frostEnds", stay.season().end().toString());
    Band weight = stay.weight();
    node.putObject("weight")
        .put("low", weight.low())
        .put("likely", weight.likely())
        .put("high", weight.high())
        .put("unit", Dimension.MASS.base());
  }
}
