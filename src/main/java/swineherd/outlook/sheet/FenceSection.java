package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.m;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.FencePower;
import swineherd.outlook.EarthNeed;
import swineherd.outlook.EnergizerNeed;
import swineherd.outlook.FarEnd;
import swineherd.outlook.SolidFence;
import swineherd.outlook.Training;
import swineherd.outlook.Voltage;
import swineherd.outlook.Wires;
import swineherd.setup.Fence;
import swineherd.setup.Pen;
import swineherd.units.Dimension;

/** The fence of a pen: wire heights, energizer, earth, volts, battery and panel, solid part. */
final class FenceSection {
  private final Pen pen;
  private final Worked worked;
  private final Rows rows;

  private FenceSection(Pen pen, Worked worked) {
    this.pen = pen;
    this.worked = worked;
    this.rows = new Rows("fence", "Fence", pen.name());
  }

  /** Empty where no pigs will be in the pen, or nobody said what the fence is. */
  static Section of(Pen pen, PenPigs pigs, Double latitude, Worked worked) {
    FenceSection section = new FenceSection(pen, worked);
    Fence.Kind kind = pen.fence().kind();
    if (kind == Fence.Kind.ELECTRIC || kind == Fence.Kind.BOTH) {
      section.live(pigs, latitude);
    }
    if (kind == Fence.Kind.SOLID || kind == Fence.Kind.BOTH) {
      worked.first(SolidFence.class, f -> f.pen().equals(pen.name())).ifPresent(section::solid);
    }
    worked.all(Training.class, t -> t.pen().equals(pen.name())).forEach(section::training);
    return section.rows.section();
  }

  private void live(PenPigs pigs, Double latitude) {
    worked.first(Wires.class, w -> w.pen().equals(pen.name())).ifPresent(this::wires);
    Optional<EnergizerNeed> energizer =
        worked.first(EnergizerNeed.class, e -> e.pen().equals(pen.name()));
    energizer.ifPresent(this::energizer);
    worked.first(EarthNeed.class, e -> e.pen().equals(pen.name())).ifPresent(this::earth);
    worked.first(Voltage.class, v -> v.pen().equals(pen.name())).ifPresent(this::volts);
    worked.first(FarEnd.class, f -> f.pen().equals(pen.name())).ifPresent(this::farEnd);
    energizer.ifPresent(e -> power(e, pigs, latitude));
  }

  private void wires(Wires wires) {
    rows.assuming(wires.assumed());
    heights("wires-now", "Live wires for pigs of {weight}", wires.kg(), wires.heights(), null);
    if (wires.laterKg() != null) {
      heights(
          "wires-later",
          "Set anew when they weigh {weight}",
          wires.laterKg(),
          wires.laterHeights(),
          wires.laterOn());
    }
  }

  private void heights(String key, String name, double weight, List<Double> heights, LocalDate on) {
    rows.add(
        key,
        name,
        row -> {
          row.with("weight", Figure.kg(weight))
              .rests("extension-hog-fence", "smallholder-press-weaners");
          List<String> words = new ArrayList<>();
          for (int i = 0; i < heights.size(); i++) {
            row.with("h" + i, m(heights.get(i)));
            words.add("{h" + i + "}");
          }
          row.note("at " + String.join(", ", words) + " above the ground");
          if (on != null) {
            row.with("on", new Figure.Day(on)).note("likely on {on}");
          }
          return new Figure.Count(heights.size(), "wire", "wires");
        });
  }

  private void energizer(EnergizerNeed need) {
    rows.assuming(need.assumed());
    rows.add(
        "energizer",
        "Output of the energizer",
        row -> {
          Double has = pen.fence().output();
          if (has != null) {
            row.with("has", Figure.of(has, Dimension.ENERGY)).note("yours gives {has}");
          }
          row.with("most", Figure.of(need.most(), Dimension.ENERGY));
          row.note(
              need.splitOrClear()
                  ? "the most a standard allows: split the fence or clear it"
                  : "never more than {most}");
          return Figure.of(need.joules(), Dimension.ENERGY);
        });
  }

  private void earth(EarthNeed need) {
    rows.assuming(need.assumed());
    rows.add(
        "earth",
        "Earth rods",
        row -> {
          row.with("length", m(need.rodLength())).note("each {length} long");
          if (pen.fence().earthRods() != null) {
            row.note("you have " + pen.fence().earthRods());
          }
          return new Figure.Count(need.rods(), "rod", "rods");
        });
  }

  private void volts(Voltage voltage) {
    rows.add(
        "volts",
        "Volts to keep at the far end",
        row -> {
          row.with("least", Figure.of(voltage.least(), Dimension.VOLTAGE));
          row.note("act below {least}");
          if (voltage.volts() != null) {
            row.with("has", Figure.of(voltage.volts(), Dimension.VOLTAGE)).note("yours has {has}");
          }
          return Figure.of(voltage.aim(), Dimension.VOLTAGE);
        });
  }

  private void farEnd(FarEnd end) {
    rows.assuming(end.assumed());
    rows.add(
        "far-end",
        "Volts to expect there",
        row -> {
          row.with("length", m(end.length()));
          row.with("touched", Figure.of(end.touched(), Dimension.VOLTAGE));
          row.note("{touched} with a pig on it; " + (end.holds() ? "it holds" : "too little"));
          row.note("over {length}");
          return Figure.of(end.open(), Dimension.VOLTAGE);
        });
    if (end.reach() > 0) {
      rows.add("reach", "Longest fence of this wire that holds", row -> m(end.reach()));
    }
  }

  /** For the output the fence needs; mains power needs neither. */
  private void power(EnergizerNeed need, PenPigs pigs, Double latitude) {
    rows.add(
        "battery",
        "Battery of 12 volts, if it runs on one",
        row -> {
          Band days = FencePower.reserveDays();
          double amperes = FencePower.current(need.joules());
          double usable = FencePower.usable("lead-acid");
          row.with("from", Figure.days(days.low())).with("to", Figure.days(days.high()));
          row.rests("energizer-catalogue-panel");
          row.note("lead-acid, for {from} to {to} without charging; more in the cold");
          return new Figure.Plain(
              new Band(
                  FencePower.battery(amperes, days.low(), usable),
                  FencePower.battery(amperes, days.likely(), usable),
                  FencePower.battery(amperes, days.high(), usable)),
              "Ah");
        });
    if (pigs == null || latitude == null) {
      return;
    }
    rows.add(
        "panel",
        "Solar panel that keeps it charged",
        row -> {
          Band sun = darkest(pigs, latitude);
          row.rests("energizer-catalogue-panel");
          row.note("in the darkest month they are there");
          double amperes = FencePower.current(need.joules());
          return new Figure.Plain(
              new Band(
                  FencePower.panel(amperes, sun.high()),
                  FencePower.panel(amperes, sun.likely()),
                  FencePower.panel(amperes, sun.low())),
              "W");
        });
  }

  /** Peak sun hours of the darkest month in which the pigs are there, a year at the most. */
  private static Band darkest(PenPigs pigs, double latitude) {
    YearMonth month = YearMonth.from(pigs.first().day());
    YearMonth last = pigs.last() == null ? month.plusMonths(11) : YearMonth.from(pigs.last());
    Band darkest = FencePower.leastPeakSun(latitude, month.getMonth());
    for (int i = 1; i < 12 && month.plusMonths(i).compareTo(last) <= 0; i++) {
      Band sun = FencePower.leastPeakSun(latitude, month.plusMonths(i).getMonth());
      if (sun.likely() < darkest.likely()) {
        darkest = sun;
      }
    }
    return darkest;
  }

  private void solid(SolidFence fence) {
    rows.assuming(fence.assumed());
    rows.add(
        "solid-height",
        "Height of the solid fence",
        row -> {
          row.with("new", m(fence.firstWeeks())).note("{new} where pigs are new or are loaded");
          if (pen.fence().height() != null) {
            row.with("has", m(pen.fence().height())).note("yours has {has}");
          }
          return m(fence.height());
        });
    rows.add("solid-gap", "Widest gap low down", row -> m(fence.gap()));
  }

  private void training(Training training) {
    rows.assuming(training.assumed());
    rows.add(
        "training",
        "Training to the wire, " + training.pigs(),
        row -> {
          row.with("area", Figure.m2(training.area()));
          row.with("nose", Figure.of(training.nose(), Dimension.LENGTH));
          row.note("in a pen of {area} or more, the wire at {nose}");
          if (training.earliest() != null) {
            row.with("earliest", new Figure.Day(training.earliest()));
            row.with("latest", new Figure.Day(training.latest()));
            row.note("turned out between {earliest} and {latest}");
          }
          return Figure.of(training.days(), Dimension.TIME);
        });
  }
}
