package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;
import static swineherd.outlook.sheet.Figure.m2;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.FeedUse;
import swineherd.figures.GroundRest;
import swineherd.figures.Nutrients;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Pasture;
import swineherd.figures.Rations;
import swineherd.figures.Signal;
import swineherd.outlook.sheet.PenPigs.Moment;
import swineherd.setup.Place;
import swineherd.units.Dimension;

/** What pigs outdoors do to the ground: how long it stays green, and what they leave in it. */
final class GroundSection {
  private final PenPigs pen;
  private final Place.Soil soil;
  private final Double area;
  private final Rows rows;

  private GroundSection(PenPigs pen) {
    this.pen = pen;
    this.soil = pen.setup().place().soil();
    this.area = pen.pen().area();
    this.rows = pen.rows("ground", "Ground and pasture");
  }

  /** The table; without a row where the pigs do not live on earth. */
  static Section of(PenPigs pen) {
    GroundSection section = new GroundSection(pen);
    if (pen.pen().ground() == null || pen.pen().ground().isEarth()) {
      section.write();
    }
    return section.rows.section();
  }

  private void write() {
    if (soil == null) {
      rows.assuming("soil taken as one that drains");
    }
    pasture();
    nutrients();
    LocalDate last = pen.last();
    if (last != null) {
      rows.add(
          "rest",
          "Fit for pigs again, as far as worms go",
          row -> {
            row.note(
                "two years without pigs or their dung after these leave; five if worms were bad");
            row.rests("rvs-1979-trichuris-plots", "parasitology-1999-egg-survival");
            return new Figure.Day(
                GroundRest.restUntil(last, Boolean.TRUE.equals(pen.pen().wormsKnown())));
          });
    }
  }

  /** Pig-days on this pen from now to the last day. */
  private double pigDays() {
    double sum = 0;
    for (Pigs pigs : pen.groups()) {
      if (pigs.last() == null) {
        throw new OutsideDomainException("no last day can be given for " + pigs.name());
      }
      double days = Math.max(1, ChronoUnit.DAYS.between(pigs.now(), pigs.last()));
      sum += Pasture.pigDays(pigs.count(), days, meanWeight(pigs));
    }
    return sum;
  }

  private static double meanWeight(Pigs pigs) {
    return (pigs.weightOn(pigs.now()) + pigs.endWeight()) / 2;
  }

  private void pasture() {
    rows.add(
        "grass-lives",
        "On so much the grass lives",
        row -> {
          row.rests("bermudagrass-2020", "fescue-2020", "umn-bu-07736");
          return m2(Pasture.areaNeeded(pigDays(), soil));
        });
    rows.add(
        "sacrifice",
        "Hard ground for wet weeks",
        row -> Figure.of(Pasture.sacrificeArea(pen.peak(Moment::pigs).pigs()), Dimension.AREA));
    if (area == null) {
      rows.lacks("bare", "Bare after", pen.path("area"));
      return;
    }
    rows.add(
        "load",
        "Your {area}",
        row -> {
          row.with("area", m2(area));
          Signal signal = Pasture.signal(pigDays(), area, soil);
          return Figure.words(
              switch (signal) {
                case GREEN -> "the grass should live";
                case AMBER -> "the grass will suffer";
                case RED -> "the ground will be bare";
              });
        });
    rows.add(
        "bare",
        "Bare after",
        row -> {
          double usedUpADay = 0;
          for (Pigs pigs : pen.groups()) {
            usedUpADay += 1 / Pasture.daysUntilBare(pigs.count(), meanWeight(pigs), area, soil);
          }
          double days = 1 / usedUpADay;
          LocalDate last = pen.last();
          LocalDate first = pen.first().day();
          if (last != null && first.plusDays((long) days).isAfter(last)) {
            row.note("they are gone before that");
          }
          row.note("without moving, counted from whole grass");
          return Figure.days(Math.floor(days));
        });
  }

  private void nutrients() {
    rows.add(
        "nitrogen",
        "Nitrogen they leave",
        row -> {
          row.rests("arc-1981", "nrc-2012");
          return kg(nitrogen());
        });
    rows.add(
        "phosphorus",
        "Phosphorus they leave",
        row -> {
          row.rests("arc-1981", "nrc-2012");
          double phosphorus = phosphorus();
          row.with("phosphate", kg(Nutrients.asPhosphate(phosphorus)));
          row.note("as phosphate {phosphate}");
          return kg(phosphorus);
        });
    if (area == null) {
      return;
    }
    rows.add(
        "nitrogen-load",
        "Nitrogen on your {area}",
        row -> {
          row.with("area", m2(area)).rests("eu-91-676");
          double load = Nutrients.load(nitrogen(), area);
          row.with("limit", m2(Nutrients.areaForNitrogen(nitrogen())));
          row.note(
              "against the limit of the nitrate law of the European Union: "
                  + SpaceSection.words(Nutrients.signal(load, false))
                  + ", {limit} would carry it");
          return new Figure.Amount(Band.exactly(load), Dimension.MASS, Figure.Per.HECTARE);
        });
  }

  private double nitrogen() {
    double sum = 0;
    for (Pigs pigs : pen.groups()) {
      Double protein = pigs.setup().feed().protein();
      FeedUse each = feed(pigs);
      double of =
          protein != null
              ? protein
              : Rations.protein(meanWeight(pigs), pigs.course().growthClass().key(), false)
                  .likely();
      sum += pigs.count() * Nutrients.nitrogen(each.kg(), of, Math.max(0, each.gain()));
    }
    return sum;
  }

  private double phosphorus() {
    double sum = 0;
    for (Pigs pigs : pen.groups()) {
      FeedUse each = feed(pigs);
      double share = Rations.diet(meanWeight(pigs)).phosphorus();
      sum += pigs.count() * Nutrients.phosphorus(each.kg(), share, Math.max(0, each.gain()));
    }
    return sum;
  }

  private static FeedUse feed(Pigs pigs) {
    if (pigs.feed() == null) {
      throw new OutsideDomainException(pigs.refused());
    }
    return pigs.feed().eachInAll();
  }

  /** The pens whose figures this table is about. */
  static List<Section> all(List<PenPigs> pens) {
    return pens.stream().map(GroundSection::of).filter(s -> !s.rows().isEmpty()).toList();
  }
}
