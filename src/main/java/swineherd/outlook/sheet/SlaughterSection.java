package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import swineherd.figures.Band;
import swineherd.figures.Carcass;
import swineherd.figures.Freezer;
import swineherd.figures.HeavierPig;
import swineherd.figures.MeatSafety;
import swineherd.figures.SlaughterDay;
import swineherd.figures.Transport;
import swineherd.outlook.MeatYield;
import swineherd.rulebook.Table;
import swineherd.setup.Pen;
import swineherd.units.Dimension;

/** From the live pig to the freezer: when to book and to take the feed away, what it will give. */
final class SlaughterSection {
  private static final int MORNING = 8;
  private static final double HEAVIER = 20;

  /** The meat of more pigs is nothing for the freezers of a household. */
  private static final int MOST_FROZEN = 24;

  private static final double THIN_CM = 15;
  private static final double THICK_CM = 30;

  /** Feed for each weight gained to 110 kg, of an ordinary modern pig (nrc-2012). */
  private static final double USUAL_CONVERSION = 2.8;

  private final Pigs pigs;
  private final Rows rows;

  private SlaughterSection(Pigs pigs) {
    this.pigs = pigs;
    this.rows = pigs.rows("slaughter", "Slaughter and meat");
  }

  static Section of(Pigs pigs) {
    SlaughterSection section = new SlaughterSection(pigs);
    if (pigs.course() != null) {
      section.write();
    }
    return section.rows.section();
  }

  private void write() {
    LocalDate day = pigs.last();
    if (day != null) {
      days(day);
    }
    rows.assuming("carcass scalded, head off; usual cuts with the bone in");
    rows.add("live", "Live weight of one", row -> kg(pigs.endWeight()));
    rows.add(
        "hanging",
        "Hanging weight of one",
        row -> {
          row.rests("wisconsin-hog-yield", "kentucky-asc-179");
          row.with("cold", kg(Carcass.coldKg(hanging(pigs)))).note("{cold} out of the cooler");
          return kg(hanging(pigs));
        });
    rows.add(
        "meat",
        "Meat of one, wrapped",
        row -> {
          row.rests("attra-hog-yield", "usda-fb-2265", "wsda-yield");
          return kg(meat(pigs));
        });
    cuts();
    rows.add(
        "meat-all",
        "Meat of all",
        row -> pigs.count() == 1 ? null : kg(meat(pigs).times(pigs.count())));
    rows.add(
        "freezer",
        "Freezer room for {what}",
        row -> {
          boolean one = pigs.count() > MOST_FROZEN;
          row.with("what", Figure.words(one ? "the meat of one" : "all of it"));
          Band litres = Freezer.litres(meat(pigs).likely() * (one ? 1 : pigs.count()));
          double freezes = Freezer.freezesKgADay(litres.likely()).likely();
          row.with("freezes", Figure.kgADay(freezes)).rests("usda-home-freezing");
          row.note("one of that size freezes {freezes}: let the butcher freeze it");
          return Figure.of(litres, Dimension.CAPACITY);
        });
    cooking();
    heavier();
    road();
  }

  /** Germs and worms in the muscle show from outside on no pig. */
  private void cooking() {
    rows.add(
        "cook",
        "Cook mince and sausage to, inside",
        row -> {
          row.rests("usda-pork-cooking", "fsa-cooking");
          row.with("whole", Figure.degC(MeatSafety.cookToC(MeatSafety.Meat.WHOLE_CUT)));
          row.with("two", Figure.degC(MeatSafety.cookForTwoMinutesC()));
          row.note("whole cuts {whole} and three minutes' rest");
          row.note("the United Kingdom asks for {two} over two minutes of everything");
          return Figure.degC(MeatSafety.cookToC(MeatSafety.Meat.GROUND));
        });
    rows.add(
        "trichinella",
        "Freezing kills Trichinella at",
        row -> {
          double cold = MeatSafety.warmestFreezingC();
          row.rests("former-cfr-9-318-10");
          row.with("thin", Figure.days(MeatSafety.freezingDays(cold, THIN_CM).orElseThrow()));
          row.with("thick", Figure.days(MeatSafety.freezingDays(cold, THICK_CM).orElseThrow()));
          row.note("or colder all through: {thin} up to 15 cm (6 in) thick, {thick} for more");
          row.note("not in a pig that may have eaten game or rats: cook that");
          return Figure.degC(cold);
        });
  }

  /** What keeping them longer changes; the review holds for modern lean pigs. */
  private void heavier() {
    double kg = pigs.endWeight();
    if (!pigs.course().growthClass().key().equals("modern-cross")) {
      return;
    }
    rows.add(
        "heavier",
        "Fatter, if kept to {heavier}",
        row -> {
          double more = kg + HEAVIER;
          row.with("heavier", kg(more)).rests("tas-2017");
          double conversion =
              100
                  * (HeavierPig.feedConversion(USUAL_CONVERSION, more)
                          / HeavierPig.feedConversion(USUAL_CONVERSION, kg)
                      - 1);
          row.with("feed", Figure.percent(conversion));
          row.note("more backfat, and {feed} more feed for each weight gained over the whole time");
          return Figure.plain(HeavierPig.change("backfat", kg, more), "mm");
        });
  }

  private void days(LocalDate day) {
    rows.add(
        "book-by",
        "Book by",
        row -> {
          LocalDate by = SlaughterDay.bookBy(day, pigs.setup().place().country());
          row.with("day", new Figure.Day(day));
          row.note(
              Boolean.TRUE.equals(pigs.group().booked())
                  ? "it is booked"
                  : "for {day}; better on the day they are bought");
          return new Figure.Day(by);
        });
    rows.add(
        "feed-off",
        "Last feed, for {day} at 8 in the morning",
        row -> {
          row.with("day", new Figure.Day(day)).rests("ontario-05-065", "animals-2020-fasting");
          LocalDateTime kill = day.atTime(MORNING, 0);
          SlaughterDay.FeedOff off = SlaughterDay.feedOff(kill, kill);
          row.with("before", new Figure.Day(off.earliest().toLocalDate()));
          row.note("waiting and road counted; water until they are loaded");
          row.note("on {before}");
          return Figure.words(
              "from " + off.earliest().toLocalTime() + " to " + off.latest().toLocalTime());
        });
    rows.add(
        "best-before",
        "Eat roasts frozen then by",
        row -> {
          row.with("bacon", new Figure.Day(Freezer.bestBefore(day, "bacon")));
          row.with("sausage", new Figure.Day(Freezer.bestBefore(day, "sausage")));
          row.rests("us-cold-storage");
          row.note("bacon by {bacon}, raw sausage by {sausage}: for taste, it stays safe");
          return new Figure.Day(Freezer.bestBefore(day, "roasts"));
        });
  }

  private void cuts() {
    rows.add(
        "cuts",
        "Cuts of one, before boning and trimming",
        row -> {
          row.rests("extension-cut-chart", "nppc-cuts");
          for (Map.Entry<String, Double> cut : Carcass.cutsKg(hanging(pigs).likely()).entrySet()) {
            String placeholder = cut.getKey().replace("-", "");
            row.with(placeholder, kg(cut.getValue()));
            row.note(Table.named("cuts").row(cut.getKey()).text("what") + " {" + placeholder + "}");
          }
          return kg(hanging(pigs).likely());
        });
  }

  private void road() {
    rows.add(
        "trailer",
        "Floor of the trailer for all",
        row -> {
          double weight = pigs.endWeight();
          row.rests("efsa-2022-transport", "whiting-brandt-2002");
          row.with("hot", Figure.m2(pigs.count() * Transport.floor(weight, true)));
          row.with("least", Figure.m2(pigs.count() * Transport.hardLine(weight)));
          row.note("{hot} in the heat, never less than {least}");
          return Figure.m2(pigs.count() * Transport.floor(weight, false));
        });
  }

  /**
   * Hot carcass of one pig, kg.
   *
   * @throws swineherd.figures.OutsideDomainException if they go too light or too heavy
   */
  static Band hanging(Pigs pigs) {
    return MeatYield.hanging(pigs.endWeight(), pen(pigs));
  }

  /**
   * Wrapped meat of one pig, kg.
   *
   * @throws swineherd.figures.OutsideDomainException if they go too light or too heavy
   */
  static Band meat(Pigs pigs) {
    return MeatYield.meat(pigs.endWeight(), pigs.group(), pen(pigs));
  }

  private static Pen pen(Pigs pigs) {
    return pigs.setup().pen(pigs.group().pen()).orElse(null);
  }
}
