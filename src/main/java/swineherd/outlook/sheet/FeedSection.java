package swineherd.outlook.sheet;

import static swineherd.outlook.sheet.Figure.kg;

import java.util.function.DoubleFunction;
import swineherd.figures.Band;
import swineherd.figures.FeedUse;
import swineherd.figures.FeederSpace;
import swineherd.figures.Rations;
import swineherd.outlook.Extras;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.units.Dimension;

/** What a group eats, phase by phase and in all, and the room to eat it in. */
final class FeedSection {
  private final Pigs pigs;
  private final FeedCourse feed;
  private final Rows rows;

  private FeedSection(Pigs pigs) {
    this.pigs = pigs;
    this.feed = pigs.feed();
    this.rows = pigs.rows("feed", "Feed");
  }

  static Section of(Pigs pigs, Worked worked) {
    FeedSection section = new FeedSection(pigs);
    if (pigs.course() != null) {
      section.write();
      worked.first(Extras.class, e -> e.pigs().equals(pigs.name())).ifPresent(section::besides);
    }
    return section.rows.section();
  }

  private void write() {
    if (feed == null) {
      rows.add("total", "In all", row -> new Figure.Beyond(pigs.refused()));
    } else {
      total();
      feed.eachByPhase().forEach(this::phase);
      last();
    }
    protein("now", "now", true);
    protein("end", "the last days", false);
    room();
    assumptions();
  }

  /** What they get besides, and what the ration then lacks. */
  private void besides(Extras extras) {
    rows.add(
        "extras",
        "At most besides, of all they eat",
        row -> {
          row.with("weight", kg(extras.weight())).note("at {weight}");
          if (extras.tooLight() != null) {
            row.note("too light yet for " + extras.tooLight());
          }
          if (extras.limits() != null) {
            row.note("then short of " + extras.lacks());
          }
          return Figure.words(extras.limits() == null ? "nothing yet" : extras.limits());
        });
  }

  private void total() {
    FeedUse each = feed.eachInAll();
    int count = pigs.count();
    rows.add(
        "total",
        count == 1 ? "In all, for one pig" : "In all, for {count}",
        row -> {
          row.with("count", new Figure.Count(count, "pig", "pigs"));
          row.with("each", kg(each.kg())).with("planned", kg(count * each.withReserve()));
          row.with("waste", Figure.percent(100 * feed.feeding().waste()));
          row.rests("nrc-2012");
          row.note(count == 1 ? "plan for {planned}" : "{each} each; plan for {planned}");
          row.note("{waste} of it wasted; cold comes on top");
          return kg(each.band().times(count));
        });
    double left = feed.kgFrom(pigs.setup().checkOn());
    if (pigs.setup().checkOn().isAfter(feed.from()) && left > 0) {
      rows.add("left", "Of that still to be fed", row -> kg(left));
    }
    if (each.gain() > 0) {
      rows.add(
          "conversion",
          "Feed conversion",
          row -> {
            row.note("feed for each weight gained");
            return Figure.plain(each.conversion(), "");
          });
    }
  }

  private void phase(FeedUse phase) {
    rows.add(
        "phase",
        "{from} to {to}, {days}",
        row -> {
          row.with("from", kg(phase.fromKg())).with("to", kg(phase.toKg()));
          row.with("days", Figure.days(phase.days()));
          row.with("daily", Figure.kgADay(phase.perDay()));
          row.note("{daily} each");
          return kg(pigs.count() * phase.kg());
        });
  }

  private void last() {
    rows.add(
        "last-day",
        "A day at the end, all together",
        row ->
            feed.daily().length == 0 ? null : Figure.kgADay(feed.daily()[feed.daily().length - 1]));
  }

  private void protein(String key, String when, boolean now) {
    rows.add(
        "protein-" + key,
        "Protein in the feed, " + when,
        row -> {
          double weight = now ? pigs.weightOn(pigs.now()) : pigs.endWeight();
          row.with("weight", kg(weight)).note("at {weight}");
          row.rests("ahdb-alternative-diets", "nrc-2012");
          Group.Males males = pigs.group().males();
          boolean entire = males != null && males != Group.Males.CASTRATED;
          Band protein = Rations.protein(weight, pigs.course().growthClass().key(), entire);
          Double said = pigs.setup().feed().protein();
          if (said != null) {
            String against =
                said < protein.low() ? "less" : said > protein.high() ? "more" : "right";
            row.with("said", Figure.percent(said)).note("yours, {said}, is " + against);
          }
          return Figure.of(protein, Dimension.SHARE);
        });
    rows.add(
        "lysine-" + key,
        "Lysine in the feed, " + when,
        row -> {
          double weight = now ? pigs.weightOn(pigs.now()) : pigs.endWeight();
          row.rests("nrc-2012");
          return Figure.plain(Rations.diet(weight).lysine(), "%");
        });
  }

  private void room() {
    double weight = pigs.endWeight();
    int count = pigs.count();
    Feed.Kind kind = pigs.setup().feed().kind();
    if (kind != Feed.Kind.SELF_FEEDER) {
      length("trough", "Trough, all eating at once", kg -> FeederSpace.trough(count, kg), weight);
    }
    if (kind == null || kind == Feed.Kind.SELF_FEEDER) {
      length("hopper", "Hopper front", kg -> FeederSpace.hopper(count, kg), weight);
      rows.add(
          "hopper-places",
          "Places at a hopper",
          row -> new Figure.Count(FeederSpace.hopperPlaces(count), "place", "places"));
    }
  }

  private void length(String key, String name, DoubleFunction<Double> need, double weight) {
    rows.add(
        key,
        name,
        row -> {
          row.rests("stockmanship-standards", "petherick-baxter-1981");
          row.with("weight", kg(weight)).note("at {weight}");
          return Figure.m(need.apply(weight));
        });
  }

  private void assumptions() {
    Feed.Kind kind = pigs.setup().feed().kind();
    if (kind == Feed.Kind.GRAIN_OR_SCRAPS || kind == Feed.Kind.FORAGING) {
      rows.assuming("amounts are of complete feed; what else they find or are given replaces some");
    }
  }
}
