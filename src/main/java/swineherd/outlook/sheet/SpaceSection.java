package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;
import static swineherd.outlook.sheet.Figure.m2;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import swineherd.figures.FloorArea;
import swineherd.figures.Hut;
import swineherd.figures.Signal;
import swineherd.figures.Space;
import swineherd.outlook.sheet.PenPigs.Moment;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** Room to lie, to live and to shelter in, when they come and when they go. */
final class SpaceSection {
  private final PenPigs pen;
  private final Country country;
  private final Moment first;
  private final Moment fullest;
  private final Rows rows;

  private SpaceSection(PenPigs pen) {
    this.pen = pen;
    this.country = pen.setup().place().country();
    this.first = pen.first();
    this.fullest = pen.fullest();
    this.rows = pen.rows("space", "Room");
  }

  static Section of(PenPigs pen) {
    SpaceSection section = new SpaceSection(pen);
    section.write();
    return section.rows.section();
  }

  private void write() {
    both("lying", "To lie flat, all of them", "efsa-2005", this::lying);
    law();
    code();
    if (housed()) {
      floor();
    }
    both("bed-winter", "Bed in the cold", "ekkel-2003", m -> bed(Hut.Season.WINTER, m));
    both("bed-summer", "Bed in the heat", "pastorelli-2006", m -> bed(Hut.Season.SUMMER, m));
    hut();
    if (fullest.pigs() == 1) {
      rows.add(
          "alone",
          "Least pen for a pig alone",
          row -> {
            Space.SinglePen single = Space.single(fullest.heaviest());
            row.rests("uk-2000-1870").with("side", Figure.m(single.shortestSide()));
            row.note("no side under {side}; it should at least see other pigs");
            return m2(single.area());
          });
    }
  }

  private boolean housed() {
    return pen.groups().stream().anyMatch(p -> p.course().housed());
  }

  /** One row for the first day, and one for the day on which they need most. */
  private void both(String key, String name, String source, ToDoubleFunction<Moment> area) {
    at(key + "-now", name + ", now", source, row -> first, area);
    at(key + "-end", name + ", at the end", source, row -> pen.peak(area), area);
  }

  private void at(
      String key,
      String name,
      String source,
      Function<Rows.Draft, Moment> when,
      ToDoubleFunction<Moment> area) {
    rows.add(
        key,
        name,
        row -> {
          Moment moment = when.apply(row);
          row.with("weight", kg(moment.heaviest())).note("at {weight}").rests(source);
          return m2(area.applyAsDouble(moment));
        });
  }

  /** What all of them need when they need most, from what each needs by its weight. */
  private double most(DoubleUnaryOperator each) {
    return pen.peak(moment -> moment.sum(each)).sum(each);
  }

  private double lying(Moment moment) {
    return moment.sum(kg -> Space.pen(country, 1, 1, kg).roomy());
  }

  private static double bed(Hut.Season season, Moment moment) {
    return moment.sum(kg -> Hut.bedArea(season, 1, kg));
  }

  private void law() {
    rows.add(
        "law",
        "By law, at the end",
        row -> {
          row.with("weight", kg(fullest.heaviest()));
          if (country == null) {
            return new Figure.Missing(List.of("place.country"));
          }
          OptionalDouble each = FloorArea.law(country, fullest.heaviest());
          if (each.isEmpty()) {
            return null;
          }
          row.rests(lawSource()).with("each", m2(each.getAsDouble()));
          row.note("{each} each at {weight}, if kept on a floor; check the current text");
          return m2(most(kg -> FloorArea.law(country, kg).orElse(0)));
        });
  }

  private String lawSource() {
    String rule = country.isEuropeanUnion() ? "eu" : country.key();
    return Table.named("floor-area-law").rows().stream()
        .filter(row -> row.text("rule").equals(rule))
        .findFirst()
        .orElseThrow()
        .text("source");
  }

  private void code() {
    rows.add(
        "code",
        "By the country's code, at the end",
        row -> {
          row.with("weight", kg(fullest.heaviest())).note("at {weight}, if kept on a floor");
          OptionalDouble each = FloorArea.code(country, fullest.heaviest());
          return each.isEmpty() ? null : m2(most(kg -> FloorArea.code(country, kg).orElse(0)));
        });
  }

  /** What to build, and how the pen they have stands. */
  private void floor() {
    rows.add(
        "build",
        "Pen to build",
        row -> {
          row.note("bed, dung and feed apart");
          return m2(most(kg -> Space.targetArea(country, 1, kg)));
        });
    Double area = pen.pen().area();
    if (area == null) {
      rows.lacks("yours", "Your pen", pen.path("area"));
      return;
    }
    rows.add(
        "yours",
        "Your pen, {area}, at the end",
        row -> {
          row.with("area", m2(area));
          Space.Pen each = Space.pen(country, fullest.pigs(), area, fullest.heaviest());
          row.with("each", m2(each.each())).note("{each} each");
          return Figure.words(
              switch (each.signal()) {
                case GREEN -> "room enough";
                case AMBER -> "tight";
                case RED -> each.breaksLaw() ? "less than the law asks" : "too small";
              });
        });
    rows.add(
        "crowded",
        "It grows too small at",
        row -> {
          row.rests("nfacc-2014");
          double each = area / fullest.pigs();
          double weight = Space.crowdedFrom(each);
          OptionalDouble law = FloorArea.weightLimit(country, each);
          return kg(Math.min(weight, law.orElse(weight)));
        });
  }

  /** How the shelter that is there fits them in the cold, when it may be too large as well. */
  private void hut() {
    Double floor = pen.pen().shelter().floorArea();
    if (floor == null) {
      rows.lacks("hut", "Your shelter", pen.path("shelter.floorArea"));
      return;
    }
    rows.add(
        "hut",
        "Your shelter, {floor}, at the end",
        row -> {
          row.with("floor", m2(floor));
          double winter = bed(Hut.Season.WINTER, fullest);
          double largest = fullest.sum(kg -> Hut.largestWinterBed(1, kg));
          double summer = bed(Hut.Season.SUMMER, fullest);
          String cold =
              floor < winter ? "too small" : floor > largest ? "too large to keep warm" : "right";
          String hot = floor < summer ? "too small" : "right";
          return Figure.words("in the cold " + cold + ", in the heat " + hot);
        });
  }

  /** Words for a signal about ground. */
  static String words(Signal signal) {
    return switch (signal) {
      case GREEN -> "within it";
      case AMBER -> "near the limit";
      case RED -> "over it";
    };
  }
}
