package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;
import static swineherd.outlook.sheet.Figure.litres;

import java.util.function.Function;
import swineherd.figures.Band;
import swineherd.figures.Feeding;
import swineherd.figures.Heat;
import swineherd.figures.Water;
import swineherd.outlook.Climate;
import swineherd.outlook.sheet.PenPigs.Moment;
import swineherd.units.Dimension;

/** Water for the pigs of a pen: now, at the end, on a hot day and when it freezes. */
final class WaterSection {
  private static final double MILD = 20;
  private static final double HOTTEST = 40;
  private static final double COLDEST = -5;

  private final PenPigs pen;
  private final Climate climate;
  private final Rows rows;

  private WaterSection(PenPigs pen, Climate climate) {
    this.pen = pen;
    this.climate = climate;
    this.rows = pen.rows("water", "Water");
  }

  static Section of(PenPigs pen, Climate climate) {
    WaterSection section = new WaterSection(pen, climate);
    section.write();
    return section.rows.section();
  }

  private void write() {
    Moment first = pen.first();
    aDay("now", "A day, now", row -> first, MILD);
    atTheEnd("end", "A day, at the end", MILD);
    Double hottest = climate.place().hottestMonth();
    if (hottest != null) {
      double air = Math.min(HOTTEST, Heat.hottestDays(hottest).likely());
      atTheEnd("hot", "A day at {air}, at the end", air);
    }
    drinkers();
    if (Boolean.TRUE.equals(climate.place().freezes())
        || climate.place().firstHardFrost() != null) {
      rows.add(
          "frozen",
          "To carry in frost, at the end",
          row -> {
            row.note("a day; warm, twice a day or more, if nothing else runs");
            return litres(need(pen.peak(moment -> need(moment, COLDEST)), COLDEST));
          });
    }
  }

  private void atTheEnd(String key, String name, double air) {
    aDay(key, name, row -> pen.peak(moment -> need(moment, air)), air);
  }

  private double need(Moment moment, double air) {
    double sum = 0;
    for (PenPigs.Present present : moment.present()) {
      sum += present.count() * each(present, air);
    }
    return sum;
  }

  /** The published need goes by the feed that housed pigs eat; what outdoors adds is not in it. */
  private static double each(PenPigs.Present present, double air) {
    Pigs pigs = present.pigs();
    Feeding housed = FeedCourse.feeding(pigs.course(), pigs.group(), pigs.setup().feed(), true);
    return Water.need(present.kg(), housed.eaten(present.kg()), air);
  }

  private void aDay(String key, String name, Function<Rows.Draft, Moment> when, double air) {
    rows.add(
        key,
        name,
        row -> {
          row.with("air", Figure.degC(air));
          Moment moment = when.apply(row);
          row.with("weight", kg(moment.heaviest()));
          double need = need(moment, air);
          row.with("each", litres(need / moment.pigs()));
          row.rests("mount-1971", "aasv-water-2023");
          row.note("to lay on, half as much again as they drink: {each} each at {weight}");
          return litres(Water.supply(need));
        });
  }

  private void drinkers() {
    rows.add(
        "drinkers",
        "Nipple drinkers",
        row -> {
          row.rests("sac-1998", "defra-pb7950");
          Moment fullest = pen.peak(m -> Water.drinkers(m.pigs(), m.heaviest()));
          int needed = Water.drinkers(fullest.pigs(), fullest.heaviest());
          Integer has = pen.pen().water().drinkers();
          if (has != null) {
            row.note("you have " + has);
          }
          return new Figure.Count(needed, "drinker", "drinkers");
        });
    flow("flow-now", "Flow of one, now", pen.first().lightest());
    flow("flow-end", "Flow of one, at the end", pen.peak(Moment::heaviest).heaviest());
  }

  private void flow(String key, String name, double weight) {
    rows.add(
        key,
        name,
        row -> {
          row.with("weight", kg(weight)).note("at {weight}");
          row.rests("defra-pb7950", "sac-1998", "us-pork-water");
          Band flow = Water.flow(weight);
          Double has = pen.pen().water().flow();
          if (has != null) {
            row.with("has", Figure.of(has, Dimension.FLOW)).note("yours gives {has}");
          }
          return Figure.of(flow, Dimension.FLOW);
        });
  }
}
