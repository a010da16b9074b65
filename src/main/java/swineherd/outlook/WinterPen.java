package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import swineherd.figures.Band;
import swineherd.figures.Bedding;
import swineherd.figures.ColdSeason;
import swineherd.figures.Feeding;
import swineherd.figures.FirstFrost;
import swineherd.figures.Hut;
import swineherd.figures.IntakeCurve;
import swineherd.figures.LyingPlace;
import swineherd.figures.Water;
import swineherd.figures.Winter;
import swineherd.figures.WinterClass;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * What the pigs of a pen need in the next winter that finds any there, all groups in it together.
 * Amounts are for the whole pen. There is one for each pen in which that chance is at least one in
 * ten.
 *
 * @param pen name of the pen
 * @param count number of pigs
 * @param chance that they are there at the first hard frost, 0 to 1; of the likeliest group
 * @param begun whether they are there and the cold season has begun
 * @param frost the first hard frost
 * @param winterClass how hard the winter is; cold (C) where the nights are not known
 * @param weight of one of the lightest group at the frost, kg
 * @param heaviest of one of the heaviest group in the cold season, kg
 * @param bedArea room to lie, m2
 * @param fit how the floor of the shelter fits them; null if it is not known
 * @param bedDepth dry straw, m
 * @param bedReady whether the winter has begun and the bed is as deep as that
 * @param firstBed straw for the first filling, kg
 * @param straw straw to have in, the first filling and a reserve counted, kg
 * @param bales the same in small bales
 * @param strawMonthly of it used, without the reserve, kg a month; of a shorter stay all of it
 * @param waterThen water that they drink at the frost, L a day
 * @param waterLater water that they drink at their heaviest, L a day
 * @param strawBy, shelterBy, waterBy, repairsBy, bedBy days by which those are to be ready; not
 *     before today
 * @param testBy day by which all of it is to be tried out; not before today
 * @param assumed what was not said and how it was taken
 */
public record WinterPen(
    String pen,
    int count,
    double chance,
    boolean begun,
    FirstFrost frost,
    WinterClass winterClass,
    double weight,
    double heaviest,
    double bedArea,
    Hut.Fit fit,
    double bedDepth,
    boolean bedReady,
    Band firstBed,
    double straw,
    int bales,
    double strawMonthly,
    double waterThen,
    double waterLater,
    LocalDate strawBy,
    LocalDate shelterBy,
    LocalDate waterBy,
    LocalDate repairsBy,
    LocalDate bedBy,
    LocalDate testBy,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** Whether the winter is cold or harder. */
  public boolean cold() {
    return winterClass.atLeast(WinterClass.C);
  }

  /** Under this the winter is not reckoned with. */
  static final double UNLIKELY = 0.1;

  /** Degrees in the shade on a winter day; the water figure is level there. */
  private static final double WINTER_DAY = 0;

  private static final double MONTH = 30.4;

  /** A group in its winter. */
  record Winterer(Course course, WinterStay stay) {
    /** Days of the cold season that they are there, at least one. */
    double days() {
      LocalDate last = stay.season().end();
      if (course.end() != null && course.end().isBefore(last)) {
        last = course.end();
      }
      return Math.max(1, (double) ChronoUnit.DAYS.between(stay.firstDay(), last));
    }

    /** Weight at the end of the season, on the day set, or when they go by their course; kg. */
    double heaviest() {
      LocalDate last = stay.season().end();
      if (course.slaughterOn() != null && course.slaughterOn().isBefore(last)) {
        last = course.slaughterOn();
      }
      double grown = course.weightOn(last).likely();
      double most = course.slaughterOn() == null ? Math.min(grown, course.endWeight()) : grown;
      return Math.max(most, stay.weight().likely());
    }
  }

  /**
   * The groups of a pen that the next winter finds there; those of a later winter are left for
   * later.
   */
  static List<Winterer> winterers(String pen, List<Course> courses, List<WinterStay> stays) {
    Map<String, Course> byName =
        courses.stream().collect(Collectors.toMap(Course::pigs, c -> c, (a, b) -> a));
    List<WinterStay> here =
        stays.stream()
            .filter(s -> s.frostKnown() && pen.equals(s.pen()) && s.chance() >= UNLIKELY)
            .toList();
    Optional<ColdSeason> next =
        here.stream().map(WinterStay::season).min(Comparator.comparing(ColdSeason::start));
    return here.stream()
        .filter(s -> s.season().equals(next.orElseThrow()))
        .map(s -> new Winterer(byName.get(s.pigs()), s))
        .toList();
  }

  static WinterPen of(Setup setup, int index, List<Winterer> winterers, WinterClimate climate) {
    Pen pen = setup.pens().get(index);
    List<String> assumed = new ArrayList<>(climate.assumed());
    WinterClass winter = climate.winterClass();
    if (winter == null) {
      winter = WinterClass.C;
      assumed.add("winter taken as cold");
    }
    Grounds grounds =
        new Grounds()
            .and(climate.grounds())
            .said("pens[" + index + "].shelter.floorArea", pen.shelter().floorArea());
    int count = 0;
    double chance = 0;
    boolean begun = false;
    double lightest = Double.MAX_VALUE;
    double heaviest = 0;
    double bedArea = 0;
    double wear = 0;
    double worn = 0;
    double days = MONTH;
    double waterThen = 0;
    double waterLater = 0;
    for (Winterer group : winterers) {
      int pigs = group.course().count();
      double then = group.stay().weight().likely();
      double most = group.heaviest();
      count += pigs;
      chance = Math.max(chance, group.stay().chance());
      begun |= group.stay().begun();
      lightest = Math.min(lightest, then);
      heaviest = Math.max(heaviest, most);
      bedArea += Hut.bedArea(Hut.Season.WINTER, pigs, within(most, 5, 150));
      Band straw = Bedding.straw(Bedding.Season.WINTER, pigs, most - then);
      worn += straw.likely();
      wear += Bedding.order(straw);
      days = Math.max(days, group.days());
      waterThen += pigs * water(group.course(), then);
      waterLater += pigs * water(group.course(), most);
      grounds.and(group.stay().grounds());
      assumed.addAll(group.course().assumed());
    }
    FirstFrost frost = winterers.get(0).stay().frost();
    double depth = winter.bedDepth(Lodging.clipped(lightest));
    Band firstBed = Bedding.firstFill(bedArea, depth);
    // the straw of the trial includes the first bed
    double straw = Math.max(wear, firstBed.likely());
    return new WinterPen(
        pen.name(),
        count,
        chance,
        begun,
        frost,
        winter,
        lightest,
        heaviest,
        bedArea,
        fit(pen.shelter(), bedArea),
        depth,
        begun && isDeep(pen.shelter().bed(), depth),
        firstBed,
        straw,
        Bedding.bales(straw, Bedding.smallBale()),
        Math.max(worn, firstBed.likely()) * MONTH / days,
        waterThen,
        waterLater,
        by("buy-straw", winter, frost.early(), setup.checkOn()),
        by("site-shelter", winter, frost.early(), setup.checkOn()),
        by("water", winter, frost.early(), setup.checkOn()),
        by(Winter.REPAIRS, winter, frost.early(), setup.checkOn()),
        by("bed-and-sick-pen", winter, frost.early(), setup.checkOn()),
        by(Winter.TEST_RUN, winter, frost.early(), setup.checkOn()),
        List.copyOf(assumed),
        grounds.list());
  }

  private static Hut.Fit fit(Shelter shelter, double bedArea) {
    if (shelter.floorArea() == null || shelter.kind() == Shelter.Kind.NONE) {
      return null;
    }
    return Hut.fit(Hut.Season.WINTER, shelter.floorArea(), bedArea);
  }

  private static boolean isDeep(Shelter.Bed bed, double depth) {
    return bed == Shelter.Bed.DEEP_NEST
        || (bed == Shelter.Bed.STRAW
            && LyingPlace.Floor.ofDryStraw(depth) == LyingPlace.Floor.STRAW);
  }

  /** Drinking of one pig on a winter day, L, on all the feed it likes. */
  private static double water(Course course, double weight) {
    double kg = within(weight, 2.5, 140);
    double eaten = feeding(course).eaten(kg);
    return Water.need(kg, eaten, WINTER_DAY);
  }

  static Feeding feeding(Course course) {
    return Feeding.of(
        course.growthClass().key(),
        IntakeCurve.MIXED,
        "to-appetite",
        course.housed() ? "housed" : "outdoors",
        "trough",
        "compound");
  }

  static double within(double value, double least, double most) {
    return Math.max(least, Math.min(most, value));
  }

  /** The day by which a task is to be done, but not before today. */
  static LocalDate by(String task, WinterClass winter, LocalDate earlyFrost, LocalDate checkOn) {
    LocalDate due =
        Winter.readiness(winter, earlyFrost).stream()
            .filter(t -> t.key().equals(task))
            .findFirst()
            .orElseThrow()
            .due();
    return WinterStay.later(due, checkOn);
  }
}
