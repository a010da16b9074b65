package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.DateBand;
import swineherd.figures.Forecast;
import swineherd.figures.GrowthClass;
import swineherd.figures.GrowthFactors;
import swineherd.figures.KnownWeight;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Reweighing;
import swineherd.figures.Weighing;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Feed;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;
import swineherd.units.Dates;

/**
 * How a group will grow, from its arrival to its slaughter. There is one for each group whose day
 * of arrival is known, or a weight in the diary; what else is not known is assumed, and {@link
 * #assumed} says so.
 *
 * @param pigs name of the group
 * @param pen name of the pen; null if not said
 * @param count number of pigs; 1 is reckoned with where it was not said
 * @param arrives day of arrival; where it was not said, of the first weight in the diary
 * @param born day of birth, or what follows from the age; null if neither is known
 * @param growthClass how the breed grows
 * @param housed whether they live indoors on a floor; what is not known counts as outdoors
 * @param weighings what each weight in the diary said, in the order of their days
 * @param doubted weights so far from what was to be expected that they are not used: no later one
 *     agrees with them
 * @param forecast from the last weight that is known
 * @param target live weight at which they should go, kg
 * @param finish when the mean of the group reaches it; null if the curve does not go so far
 * @param slaughterOn the day set for slaughter; null if there is none
 * @param today day of the check
 * @param assumed what was not said and how it was taken
 */
public record Course(
    String pigs,
    String pen,
    int count,
    LocalDate arrives,
    LocalDate born,
    GrowthClass growthClass,
    boolean housed,
    List<Reweighing> weighings,
    List<KnownWeight> doubted,
    Forecast forecast,
    double target,
    DateBand finish,
    LocalDate slaughterOn,
    LocalDate today,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final int EIGHT_WEEKS = 56;

  /**
   * Standard deviations from which a weight is taken for a slip until a second agrees; judgement.
   */
  private static final double DOUBTED_FROM = 4;

  /**
   * The last day they are likely to be there: the day set for slaughter, or the likely finish, or
   * today if that is past and they are still there; null if nothing is known of either.
   */
  public LocalDate end() {
    if (slaughterOn != null) {
      return slaughterOn;
    }
    if (finish == null) {
      return null;
    }
    return isOverdue() ? today : finish.likely();
  }

  /** Whether no day is set for slaughter, and they should likely have gone before today. */
  public boolean isOverdue() {
    return slaughterOn == null && finish != null && finish.likely().isBefore(today);
  }

  /**
   * Live weight of the mean of the group on a day, kg, reckoned from the last weight known then;
   * before the first that weight. Where the curve does not go so far, see {@link #foresees}, it is
   * the weight at its end, which they have at the least.
   */
  public Band weightOn(LocalDate day) {
    Forecast then = knownOn(day);
    return day.isAfter(then.start().on()) ? then.leastOn(day) : Band.exactly(then.start().kg());
  }

  /** Whether the curve goes as far as a day; if not, they then weigh more than it can tell. */
  public boolean foresees(LocalDate day) {
    Forecast then = knownOn(day);
    return !day.isAfter(then.start().on()) || then.reaches(day);
  }

  /**
   * Chance that the mean of the group has not reached the target by a day, 0 to 1, reckoned from
   * the last weight known. 1 on the day of that weight and before, and for a target beyond what the
   * curve is good for, since nobody knows when they reach it.
   */
  public double notReachedBy(LocalDate day) {
    boolean canTell = day.isAfter(forecast.start().on()) && target <= forecast.growth().highestKg();
    return canTell ? forecast.chanceNotReached(target, day) : 1;
  }

  /**
   * Chance that pigs that go once they have the target are still there on a day, 0 to 1, since they
   * are there today. Once the late end of the finish is past it is something else that keeps them,
   * nobody knows how long, and they must be reckoned with: 1.
   */
  public double stillThereOn(LocalDate day) {
    boolean kept = finish != null && finish.late().isBefore(today);
    return kept || !day.isAfter(today) ? 1 : notReachedBy(day) / notReachedBy(today);
  }

  /** The forecast as it stood on a day, with the weights known by then. */
  private Forecast knownOn(LocalDate day) {
    for (Reweighing weighing : weighings) {
      if (weighing.later().on().isAfter(day)) {
        return weighing.before();
      }
    }
    return forecast;
  }

  /**
   * Likely weight at the {@link #end}, kg, which is what the pens must be fit for: on the day set
   * for slaughter, or else the target, or what they weigh today if they should have gone. Where the
   * curve does not go so far it is no less than the target.
   */
  public double endWeight() {
    if (slaughterOn == null && !isOverdue()) {
      return target;
    }
    double then = weightOn(end()).likely();
    return foresees(end()) ? then : Math.max(then, target);
  }

  /** Age on a day, in days; -1 if the birth is not known. */
  public long ageOn(LocalDate day) {
    return born == null ? -1 : ChronoUnit.DAYS.between(born, day);
  }

  /** Those of some outlooks that are courses. */
  public static List<Course> all(List<Outlook> outlooks) {
    return outlooks.stream().filter(Course.class::isInstance).map(Course.class::cast).toList();
  }

  /** The course of a group among those of all; empty if it has none. */
  public static Optional<Course> find(List<Course> courses, Group group) {
    return courses.stream().filter(c -> c.pigs().equals(group.name())).findFirst();
  }

  /** The courses of all groups that have one, and what could not be worked out. */
  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      List<KnownWeight> weights = weights(setup, group);
      all.addAll(refused(setup, group));
      if (group.arrives() == null && weights.isEmpty()) {
        continue;
      }
      String path = "pigs[" + i + "].";
      Grounds grounds =
          new Grounds()
              .said(path + "breed", group.breed())
              .said(path + "arrives", group.arrives())
              .said(path + "arrivalWeight", group.arrivalWeight())
              .said(path + "targetWeight", group.targetWeight())
              .said(path + "sex", group.sex())
              .said(path + "slaughterOn", group.slaughterOn())
              .said("feed.kind", setup.feed().kind());
      for (int j = 0; j < setup.diary().size(); j++) {
        if (isWeight(setup.diary().get(j), group)) {
          DiaryEntry entry = setup.diary().get(j);
          String row = "diary[" + j + "].";
          grounds.said(row + "weight", entry.weight());
          if (entry.weight() == null) {
            grounds.and("diary[" + j + "]", "girth");
            grounds.said(row + "length", entry.length().isEmpty() ? null : entry.length());
          }
        }
      }
      try {
        Course course = of(setup, group, weights, grounds);
        all.add(course);
        for (KnownWeight doubted : course.doubted()) {
          String why =
              "the weight of "
                  + Dates.words(doubted.on())
                  + " is far outside what was to be expected and is not used until a second agrees;"
                  + " check the scale, and if it is right ask your vet";
          all.add(new NotWorkedOut("weight in the diary", group.name(), why, grounds.list()));
        }
      } catch (OutsideDomainException e) {
        all.add(new NotWorkedOut("growth", group.name(), e.getMessage(), grounds.list()));
      }
    }
    return all;
  }

  private static Course of(Setup setup, Group group, List<KnownWeight> weights, Grounds grounds) {
    List<String> assumed = new ArrayList<>();
    GrowthClass growthClass = growthClass(group, assumed);
    LocalDate born = born(group);
    boolean arrivalKnown = group.arrives() != null;
    KnownWeight start = arrivalKnown ? start(group, growthClass, born, assumed) : weights.get(0);
    boolean housed = housed(setup, group);
    Forecast forecast =
        Forecast.of(
            growthClass,
            factor(setup.feed(), group, growthClass, housed, assumed),
            setting(setup.feed()),
            group.countOrOne(),
            start,
            arrivalKnown);
    List<Reweighing> weighings = new ArrayList<>();
    List<KnownWeight> doubted = new ArrayList<>();
    for (KnownWeight weight : weights) {
      if (Math.abs(forecast.deviations(weight)) > DOUBTED_FROM) {
        boolean agrees =
            !doubted.isEmpty()
                && Math.abs(forecast.from(doubted.get(doubted.size() - 1)).deviations(weight))
                    <= DOUBTED_FROM;
        if (!agrees) {
          doubted.add(weight);
          continue;
        }
        doubted.clear();
      }
      long days = ChronoUnit.DAYS.between(forecast.start().on(), weight.on());
      if (days > forecast.checkDays()) {
        weighings.add(forecast.reweighed(weight));
        forecast = weighings.get(weighings.size() - 1).after();
      } else if (days >= 0 && weight.error() < forecast.start().error()) {
        // weighed more exactly before they have begun to grow
        forecast =
            new Forecast(forecast.growth(), forecast.sigma(), weight, forecast.checkDays() - days);
      }
    }
    double target = target(group, growthClass, assumed);
    return new Course(
        group.name(),
        group.pen(),
        group.countOrOne(),
        arrivalKnown ? group.arrives() : start.on(),
        born,
        growthClass,
        housed,
        List.copyOf(weighings),
        List.copyOf(doubted),
        forecast,
        target,
        finish(forecast, target),
        group.slaughterOn(),
        setup.checkOn(),
        List.copyOf(assumed),
        grounds.list());
  }

  private static DateBand finish(Forecast forecast, double target) {
    try {
      return forecast.datesOf(target);
    } catch (OutsideDomainException e) {
      return null;
    }
  }

  private static GrowthClass growthClass(Group group, List<String> assumed) {
    if (group.breed() == null) {
      assumed.add("breed taken as a modern cross");
      return GrowthClass.unknownBreed();
    }
    GrowthClass of = GrowthClass.ofBreed(group.breed());
    return group.crossedWith() == null
        ? of
        : of.crossedWith(GrowthClass.ofBreed(group.crossedWith()));
  }

  private static LocalDate born(Group group) {
    if (group.born() != null) {
      return group.born();
    }
    return group.arrives() == null || group.ageOnArrival() == null
        ? null
        : group.arrives().minusDays(Math.round(group.ageOnArrival()));
  }

  private static KnownWeight start(
      Group group, GrowthClass growthClass, LocalDate born, List<String> assumed) {
    if (group.arrivalWeight() != null) {
      Weighing.Means by =
          group.weighedBy() == null
              ? Weighing.Means.GUESS
              : Weighing.Means.valueOf(group.weighedBy().name());
      return KnownWeight.of(new Weighing(group.arrives(), group.arrivalWeight(), by));
    }
    LocalDate eightWeeks = born == null ? group.arrives() : born.plusDays(EIGHT_WEEKS);
    assumed.add("weight on arrival taken as usual for the breed");
    return growthClass.usualAtEightWeeks(
        eightWeeks.isAfter(group.arrives()) ? group.arrives() : eightWeeks);
  }

  /**
   * The weights that the diary gives for a group, by their day; of two for one day the one that was
   * written later, which corrects the other; no tape beyond its use.
   */
  private static List<KnownWeight> weights(Setup setup, Group group) {
    return setup.diary().stream()
        .filter(e -> isWeight(e, group))
        .flatMap(e -> DiaryWeight.maybe(e, group).stream())
        .collect(Collectors.toMap(KnownWeight::on, w -> w, (wrong, right) -> right, TreeMap::new))
        .values()
        .stream()
        .toList();
  }

  /** The tapes of a group that were not made for such a pig, and so give no weight. */
  private static List<Outlook> refused(Setup setup, Group group) {
    List<Outlook> all = new ArrayList<>();
    for (int j = 0; j < setup.diary().size(); j++) {
      DiaryEntry entry = setup.diary().get(j);
      if (isWeight(entry, group)) {
        try {
          DiaryWeight.of(entry, group);
        } catch (OutsideDomainException e) {
          List<String> grounds = Grounds.of("diary[" + j + "]", "girth", "length").list();
          all.add(new NotWorkedOut("weight by tape", group.name(), e.getMessage(), grounds));
        }
      }
    }
    return all;
  }

  private static boolean isWeight(DiaryEntry entry, Group group) {
    return entry.on() != null && DiaryWeight.isOf(entry, group);
  }

  private static double target(Group group, GrowthClass growthClass, List<String> assumed) {
    if (group.targetWeight() != null) {
      return group.targetWeight();
    }
    assumed.add("target weight taken as usual for the breed");
    return growthClass.usualSlaughterKg();
  }

  private static double factor(
      Feed feed, Group group, GrowthClass growthClass, boolean housed, List<String> assumed) {
    return GrowthFactors.product(
        growthClass,
        feedKey(feed, group, assumed),
        housed ? "env-housed" : "env-outdoors",
        sexKey(group));
  }

  /**
   * Where the feed was not said it is complete feed: to appetite; but below it for lard pigs, since
   * fed to appetite they put on fat instead of meat ({@code charlton-2022}), and the slower course
   * is the careful one where winter is near.
   */
  private static String feedKey(Feed feed, Group group, List<String> assumed) {
    if (feed.kind() == null && isBelowAppetite(feed, group)) {
      assumed.add("feed taken as complete, below appetite as lard pigs should be fed");
      return "feed-restricted";
    }
    if (feed.kind() == null) {
      assumed.add("feed taken as complete, to appetite");
      return "feed-to-appetite";
    }
    return switch (feed.kind()) {
      case SELF_FEEDER -> "feed-self-feeder";
      case HAND_FED -> "feed-to-appetite";
      case RESTRICTED -> "feed-restricted";
      case HOME_MIX -> "feed-home-mix";
      case GRAIN_OR_SCRAPS -> "feed-no-protein";
      case FORAGING -> "feed-free-range";
    };
  }

  /** Whether they get less than they would eat: as said, or because they are lard pigs. */
  public static boolean isBelowAppetite(Feed feed, Group group) {
    return feed.kind() == Feed.Kind.RESTRICTED || (feed.kind() == null && isLard(group));
  }

  /** Bred for lard, and not crossed with anything leaner. */
  static boolean isLard(Group group) {
    return group.breed() != null
        && Breed.named(group.breed()).type() == Breed.Type.LARD
        && (group.crossedWith() == null
            || Breed.named(group.crossedWith()).type() == Breed.Type.LARD);
  }

  private static Forecast.Setting setting(Feed feed) {
    if (feed.kind() == null) {
      return Forecast.Setting.UNKNOWN_DIET;
    }
    return switch (feed.kind()) {
      case SELF_FEEDER, HAND_FED, RESTRICTED -> Forecast.Setting.DESCRIBED;
      case HOME_MIX, GRAIN_OR_SCRAPS, FORAGING -> Forecast.Setting.UNKNOWN_DIET;
    };
  }

  /** Indoors on a floor, in a barn or hoop; everything else, and what is not known, is outdoors. */
  private static boolean housed(Setup setup, Group group) {
    Pen pen = setup.pen(group.pen()).orElse(null);
    if (pen == null) {
      return false;
    }
    Shelter.Kind shelter = pen.shelter().kind();
    return (shelter == Shelter.Kind.BARN || shelter == Shelter.Kind.HOOP)
        && pen.ground() != null
        && !pen.ground().isEarth();
  }

  private static String sexKey(Group group) {
    if (group.sex() == Group.Sex.GILTS) {
      return "sex-gilts";
    }
    if (group.sex() == null || group.males() == null) {
      return "sex-unknown";
    }
    if (group.sex() == Group.Sex.MIXED) {
      return "sex-mixed";
    }
    return group.males() == Group.Males.CASTRATED ? "sex-barrows" : "sex-boars";
  }
}
