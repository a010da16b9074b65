package swineherd.report;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.Daylight;
import swineherd.figures.Hemisphere;
import swineherd.figures.Winter;
import swineherd.outlook.WinterClimate;
import swineherd.outlook.WinterPen;
import swineherd.outlook.WinterStay;
import swineherd.report.WinterView.There;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/** The winters of a place, and what they mean for its pigs, in sentences. */
final class WinterWords {
  /** From this chance on the rules ask for what a winter needs. */
  private static final double LIKELY = 0.5;

  private final Setup setup;
  private final WinterView view;

  WinterWords(Setup setup, WinterView view) {
    this.setup = setup;
    this.view = view;
  }

  /** What is known of the winters, and what could not be worked out; a line each. */
  List<String> place() {
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

  /** When each group goes, what a winter finds of it, and what its pen then needs; a line each. */
  List<String> groups() {
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
    boolean overdue = there.course().isOverdue();
    String goes =
        leaves(there)
            .map(l -> they + (overdue ? " should have gone " : " should go ") + l)
            .orElse("");
    if (stay == null || !stay.frostKnown()) {
      return goes.isEmpty() ? "nobody knows when " + they + " will go" : goes;
    }
    String weighs =
        Wording.capital(they)
            + (one ? " weighs " : " weigh ")
            + (there.course().foresees(stay.firstDay())
                ? Display.span(
                    stay.weight().low(),
                    stay.weight().likely(),
                    stay.weight().high(),
                    Dimension.MASS,
                    setup.units())
                : "at least " + amount(stay.weight().likely(), Dimension.MASS));
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
        + (overdue ? "; " + goes : "")
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
}
