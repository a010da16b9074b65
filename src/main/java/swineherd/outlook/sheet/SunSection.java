package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.degC;
import static swineherd.outlook.sheet.Figure.kg;

import swineherd.figures.Heat;
import swineherd.figures.HeatStage;
import swineherd.figures.OutsideDomainException;
import swineherd.outlook.ShadeRoom;
import swineherd.outlook.StrongSun;
import swineherd.outlook.SummerHeat;
import swineherd.units.Dimension;

/** Sun and heat in a pen: strong sun, shade, the hottest days, wallow. */
final class SunSection {
  /** Damp of the air at which the index is shown, per cent: an ordinary and a sultry afternoon. */
  private static final double ORDINARY = 50;

  private static final double SULTRY = 75;

  private final Rows rows;

  private SunSection(String pen) {
    this.rows = new Rows("sun", "Sun and heat", pen);
  }

  /** Empty where none of it was worked out: under a roof, or away in the summer. */
  static Section of(String pen, Worked worked) {
    SunSection section = new SunSection(pen);
    worked.first(StrongSun.class, s -> s.pen().equals(pen)).ifPresent(section::sun);
    worked.first(ShadeRoom.class, s -> s.pen().equals(pen)).ifPresent(section::shade);
    worked.first(SummerHeat.class, s -> s.pen().equals(pen) && s.known()).ifPresent(section::heat);
    return section.rows.section();
  }

  private void sun(StrongSun sun) {
    rows.add(
        "uv",
        "Highest UV index while they are there",
        row -> {
          row.with("from", new Figure.Day(sun.from())).with("until", new Figure.Day(sun.until()));
          row.rests("who-uvi").note("strong from {from} to {until}; some of them burn");
          return Figure.plain(sun.index(), "");
        });
  }

  private void shade(ShadeRoom shade) {
    rows.assuming(shade.assumed());
    rows.add(
        "shade",
        "Shade at noon, for all of them",
        row -> {
          row.with("weight", kg(shade.weight())).note("at {weight}");
          if (shade.there() > 0) {
            row.with("there", Figure.m2(shade.there())).note("there is {there}");
          }
          return Figure.m2(shade.area());
        });
  }

  private void heat(SummerHeat heat) {
    rows.add(
        "hottest",
        "Air on the hottest days",
        row -> Figure.of(heat.hottest(), Dimension.TEMPERATURE));
    if (heat.copes() != null) {
      rows.add(
          "upper-critical",
          "Eat less and pant above",
          row -> {
            row.with("weight", kg(heat.weight())).note("at {weight}").rests("huynh-2005");
            return degC(heat.copes());
          });
    }
    rows.add(
        "stage",
        "Those days, without shade and wallow",
        row -> {
          row.with("ordinary", index(heat, ORDINARY)).with("sultry", index(heat, SULTRY));
          row.rests("ams-feedlot-thi", "nwscc-1976");
          row.note("heat index {ordinary} at half damp air, {sultry} at three quarters");
          return Figure.words(words(stage(heat)));
        });
    rows.add(
        "wallow",
        "Wallow for all of them",
        row -> {
          row.with("by", new Figure.Day(heat.by())).note("ready by {by}");
          return Figure.of(heat.wallow(), Dimension.AREA);
        });
  }

  private static Figure index(SummerHeat heat, double damp) {
    return Figure.plain(Heat.index(heat.hottest().likely(), damp), "");
  }

  /** The worse of both measures; by the index alone where the weight is outside what is known. */
  private static HeatStage stage(SummerHeat heat) {
    double air = heat.hottest().likely();
    HeatStage byIndex = HeatStage.ofIndex(Heat.index(air, ORDINARY));
    try {
      return byIndex.or(HeatStage.ofWeight(air, heat.weight(), false));
    } catch (OutsideDomainException e) {
      return byIndex;
    }
  }

  private static String words(HeatStage stage) {
    return switch (stage) {
      case NONE -> "no stage of heat";
      case ALERT -> "alert";
      case DANGER -> "danger";
      case EMERGENCY -> "emergency";
    };
  }
}
