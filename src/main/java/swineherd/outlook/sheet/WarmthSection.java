package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.degC;
import static swineherd.outlook.sheet.Figure.kg;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import swineherd.figures.Band;
import swineherd.figures.Bedding;
import swineherd.figures.ColdSeason;
import swineherd.figures.Hut;
import swineherd.figures.LyingPlace;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Warmth;
import swineherd.figures.WinterClass;
import swineherd.outlook.Climate;
import swineherd.outlook.Course;
import swineherd.outlook.sheet.PenPigs.Moment;
import swineherd.setup.Shelter;
import swineherd.units.Dimension;

/** How cold the pigs of a pen may get, what they will feel in winter, and the bed for it. */
final class WarmthSection {
  private final PenPigs pen;
  private final Climate climate;
  private final Rows rows;

  private WarmthSection(PenPigs pen, Climate climate) {
    this.pen = pen;
    this.climate = climate;
    this.rows = pen.rows("warmth", "Warmth and bedding");
  }

  static Section of(PenPigs pen, Climate climate) {
    WarmthSection section = new WarmthSection(pen, climate);
    section.write();
    return section.rows.section();
  }

  private void write() {
    Moment first = pen.first();
    lines("now", "now", first);
    lines("end", "at the end", pen.fullest());
    winter();
    if (pen.pen().shelter().bed() != Shelter.Bed.SLATS) {
      bedding();
    }
  }

  private Warmth.FeedLevel level() {
    boolean below =
        pen.groups().stream().anyMatch(p -> Course.isBelowAppetite(pen.setup().feed(), p.group()));
    return below ? Warmth.FeedLevel.RESTRICTED : Warmth.FeedLevel.FULL;
  }

  private double lowerCritical(Moment moment) {
    return Warmth.lowerCritical(moment.lightest(), moment.pigs(), level());
  }

  private void lines(String key, String when, Moment moment) {
    rows.add(
        "critical-" + key,
        "Burn feed for warmth below, " + when,
        row -> {
          row.with("weight", kg(moment.lightest())).rests("nrc-2012", "holmes-close-1977");
          row.note("at {weight}, as it feels on a dry bare floor in still air");
          return degC(lowerCritical(moment));
        });
    rows.add(
        "extreme-" + key,
        "Come to harm below, " + when,
        row -> {
          row.rests("fass-guide");
          return degC(Warmth.lowerExtreme(moment.lightest()));
        });
  }

  private void winter() {
    if (climate.hemisphere().isEmpty()) {
      rows.lacks("winter", "Winter", "place.latitude");
      return;
    }
    if (climate.frostKnown()) {
      rows.add(
          "frost",
          "Hard frost to be reckoned with",
          row -> {
            ColdSeason frost = climate.coldSeason(pen.first().day());
            row.with("from", new Figure.Day(frost.start())).with("to", new Figure.Day(frost.end()));
            row.note("from {from} to {to}");
            return Figure.words(there(frost) ? "while they are there" : "not while they are there");
          });
    }
    rows.add(
        "winter",
        "In the coldest three months",
        row ->
            Figure.words(inTheCold() == null ? "they are not there" : "some are there: see below"));
    OptionalDouble coldest;
    try {
      coldest = climate.coldestMonth();
    } catch (OutsideDomainException e) {
      rows.add("cold-week", "An ordinary cold week", row -> new Figure.Beyond(e.getMessage()));
      return;
    }
    if (coldest.isEmpty()) {
      rows.lacks("cold-week", "An ordinary cold week", "place.coldestMonth");
      return;
    }
    rows.add(
        "winter-class",
        "Winter here",
        row -> {
          row.with("minimum", degC(coldest.getAsDouble()));
          row.note("by nights of {minimum} in the coldest month");
          return Figure.words(
              switch (WinterClass.of(coldest.getAsDouble())) {
                case A -> "mild";
                case B -> "cool";
                case C -> "cold";
                case D -> "hard";
                case E -> "severe";
              });
        });
    nights(coldest.getAsDouble());
  }

  private boolean there(ColdSeason season) {
    return pen.groups().stream().anyMatch(p -> p.thereBetween(season.start(), season.end()));
  }

  /** The pigs of the pen when the cold begins, or when they come into it. */
  private Moment inTheCold() {
    ColdSeason cold = climate.winter(pen.first().day());
    LocalDate day = pen.first().day().isAfter(cold.start()) ? pen.first().day() : cold.start();
    Moment moment = pen.on(day);
    return there(cold) && moment.pigs() > 0 ? moment : null;
  }

  private void nights(double coldestMonth) {
    LyingPlace place = lyingPlace();
    if (place == null) {
      rows.add(
          "cold-week",
          "What they feel in a cold week",
          row ->
              inTheCold() == null
                  ? null
                  : new Figure.Missing(List.of(pen.path("shelter.kind"), pen.path("shelter.bed"))));
      return;
    }
    rows.add(
        "cold-week",
        "What they feel in a cold week",
        row -> {
          Moment moment = inTheCold();
          if (moment == null) {
            return null;
          }
          Warmth.Nights nights = nights(place, moment, coldestMonth);
          row.with("weight", kg(moment.lightest())).with("harm", degC(nights.lowerExtreme()));
          row.rests("mount-1975", "close-1981", "fass-guide");
          row.note(
              "at {weight}; "
                  + (nights.suitable() ? "above" : "below")
                  + " {harm}, where they come to harm");
          return degC(nights.coldWeek());
        });
    rows.add(
        "worst-night",
        "What they feel in the worst night",
        row -> {
          Moment moment = inTheCold();
          if (moment == null) {
            return null;
          }
          Warmth.Nights nights = nights(place, moment, coldestMonth);
          row.note(
              nights.planNeeded() ? "have a place ready for such nights" : "this place will do");
          return degC(nights.worst());
        });
    rows.add(
        "extra-feed",
        "More feed in the coldest month",
        row -> {
          Moment moment = inTheCold();
          if (moment == null) {
            return null;
          }
          double felt = place.effectiveTemperature(climate.coldestDayMean(), moment.pigs());
          double cold = Warmth.degreesOfCold(lowerCritical(moment), felt);
          row.rests("verstegen-1974", "nrc-1981");
          row.with("felt", degC(felt)).note("each; it feels like {felt} over the day");
          Band extra = Warmth.extraFeed(moment.lightest(), cold);
          double ration = ration(moment);
          return new Figure.Amount(Warmth.eatable(extra, ration), Dimension.MASS, Figure.Per.DAY);
        });
  }

  private Warmth.Nights nights(LyingPlace place, Moment moment, double coldestMonth) {
    return Warmth.nights(
        place, moment.pigs(), moment.lightest(), coldestMonth, climate.worstNight().orElseThrow());
  }

  private static double ration(Moment moment) {
    Pigs pigs = moment.present().get(0).pigs();
    return FeedCourse.feeding(
            pigs.course(), pigs.group(), pigs.setup().feed(), pigs.course().housed())
        .given(moment.lightest());
  }

  /** Where they lie at night; null if shelter or bed is not known. */
  private LyingPlace lyingPlace() {
    Shelter shelter = pen.pen().shelter();
    if (shelter.kind() == null || shelter.bed() == null) {
      return null;
    }
    LyingPlace.Floor floor =
        switch (shelter.bed()) {
          case SLATS -> LyingPlace.Floor.FULL_SLATS;
          case WET -> LyingPlace.Floor.WET;
          case BARE -> LyingPlace.Floor.BARE_DRY;
          case THIN_STRAW -> LyingPlace.Floor.THIN_STRAW;
          case STRAW -> LyingPlace.Floor.STRAW;
          case DEEP_NEST -> LyingPlace.Floor.DEEP_NEST;
        };
    LyingPlace.Shelter kind =
        switch (shelter.kind()) {
          case CLOSED_HUT -> LyingPlace.Shelter.CLOSED_HUT;
          // a barn keeps the wind off as a hut does, but does not fill with the pigs' own heat
          case THREE_SIDED, BARN, HOOP -> LyingPlace.Shelter.THREE_SIDED;
          case OPEN_FRONT -> LyingPlace.Shelter.OPEN_FRONT;
          case NONE -> LyingPlace.Shelter.NO_SHELTER;
        };
    return LyingPlace.dry(floor, kind);
  }

  private void bedding() {
    rows.add(
        "straw",
        "Straw for deep beds, in all",
        row -> {
          Band straw = straw();
          row.rests("isu-hoops");
          row.with("order", kg(Bedding.order(straw)));
          row.with("bale", kg(Bedding.smallBale()));
          row.with(
              "bales",
              new Figure.Count(
                  Bedding.bales(Bedding.order(straw), Bedding.smallBale()), "bale", "bales"));
          row.note("order {order}: {bales} of {bale}");
          return kg(straw);
        });
    Double floor = pen.pen().shelter().floorArea();
    rows.add(
        "first-bed",
        "Straw for the first winter bed",
        row -> {
          OptionalDouble coldest = climate.coldestMonth();
          if (coldest.isEmpty() || climate.hemisphere().isEmpty() || inTheCold() == null) {
            return null;
          }
          Moment moment = inTheCold();
          double depth = WinterClass.of(coldest.getAsDouble()).bedDepth(moment.lightest());
          double area =
              floor == null ? moment.sum(kg -> Hut.bedArea(Hut.Season.WINTER, 1, kg)) : floor;
          row.with("depth", Figure.m(depth)).with("area", Figure.m2(area));
          row.note("{depth} deep on {area}");
          return kg(Bedding.firstFill(area, depth));
        });
  }

  /** By the gain of each group in and out of the cold; all of it as warm where none is known. */
  Band straw() {
    double warm = 0;
    double cold = 0;
    for (Pigs pigs : pen.groups()) {
      LocalDate last = pigs.last();
      double whole = pigs.endWeight() - pigs.weightOn(pigs.now());
      double inCold = 0;
      if (last != null && climate.hemisphere().isPresent()) {
        ColdSeason season = climate.winter(pigs.now());
        LocalDate from = pigs.now().isAfter(season.start()) ? pigs.now() : season.start();
        LocalDate to = last.isBefore(season.end()) ? last : season.end();
        if (from.isBefore(to)) {
          inCold = pigs.weightOn(to) - pigs.weightOn(from);
        }
      }
      cold += pigs.count() * Math.max(0, inCold);
      warm += pigs.count() * Math.max(0, whole - inCold);
    }
    Band inWinter = Bedding.straw(Bedding.Season.WINTER, 1, 1).times(cold);
    Band inSummer = Bedding.straw(Bedding.Season.SUMMER, 1, 1).times(warm);
    return new Band(
        inWinter.low() + inSummer.low(),
        inWinter.likely() + inSummer.likely(),
        inWinter.high() + inSummer.high());
  }

  /** Straw for the pigs of a pen, kg: what is to be ordered. */
  static double strawToOrder(PenPigs pen, Climate climate) {
    if (pen.pen().shelter().bed() == Shelter.Bed.SLATS) {
      return 0;
    }
    return Bedding.order(new WarmthSection(pen, climate).straw());
  }
}
