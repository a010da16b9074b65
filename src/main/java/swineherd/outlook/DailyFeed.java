package swineherd.outlook;

import java.time.LocalDate;
import swineherd.figures.Feeding;
import swineherd.figures.IntakeCurve;
import swineherd.figures.Water;
import swineherd.setup.Feed;
import swineherd.setup.Group;

/** What a pig of a group eats and drinks in a day, at the weight it has then. */
public final class DailyFeed {
  /** Pigs drink no less in harder frost than at this temperature, degC. */
  private static final double COLDEST = -5;

  private final Stay stay;
  private final Feeding feeding;
  private final Feeding inHouse;

  private DailyFeed(Stay stay, Feeding feeding, Feeding inHouse) {
    this.stay = stay;
    this.feeding = feeding;
    this.inHouse = inHouse;
  }

  static DailyFeed of(Stay stay) {
    boolean housed = stay.course() != null && stay.course().housed();
    return new DailyFeed(stay, feeding(stay, housed), feeding(stay, true));
  }

  private static Feeding feeding(Stay stay, boolean housed) {
    return feeding(stay.growthClass().key(), stay.group(), stay.feed(), housed);
  }

  /**
   * How a group is fed, from what was said; what was not is as {@link Course} takes it.
   *
   * @param growthClass key of its class of growth, of a cross too
   * @param housed whether to reckon what they eat in a house, without what outdoors adds
   */
  public static Feeding feeding(String growthClass, Group group, Feed feed, boolean housed) {
    return Feeding.of(
        growthClass,
        curve(group),
        Course.isBelowAppetite(feed, group) ? "restricted" : "to-appetite",
        housed ? "housed" : "outdoors",
        feed.kind() == Feed.Kind.SELF_FEEDER ? "self-feeder" : "trough",
        "compound");
  }

  private static IntakeCurve curve(Group group) {
    if (group.sex() == Group.Sex.GILTS) {
      return IntakeCurve.GILT;
    }
    if (group.sex() != Group.Sex.MALES || group.males() == null) {
      return IntakeCurve.MIXED;
    }
    return group.males() == Group.Males.CASTRATED ? IntakeCurve.BARROW : IntakeCurve.BOAR;
  }

  /** Dry feed that one pig eats on a day, nothing of it wasted, kg. */
  double eatenOn(LocalDate day) {
    return feeding.eaten(stay.weightOn(day));
  }

  /** Feed to be given to one pig on a day, waste counted, kg. */
  double givenOn(LocalDate day) {
    return feeding.given(stay.weightOn(day));
  }

  /** Feed to be given to one pig from a day on, up to another without it, kg. */
  double given(LocalDate from, LocalDate to) {
    return from.isAfter(to) ? 0 : from.datesUntil(to).mapToDouble(this::givenOn).sum();
  }

  /** Feed given to one pig from the day it came to the day it goes, at most a year, kg. */
  double givenInAll() {
    LocalDate first = stay.first();
    LocalDate yearOn = first.plusYears(1);
    return given(first, stay.to().isAfter(yearOn) ? yearOn : stay.to());
  }

  /**
   * What one pig drinks on a day. The published need goes by the feed that housed pigs eat; what
   * outdoors adds is not in it.
   *
   * @param air highest air temperature, degC
   * @return L
   */
  double drinksOn(LocalDate day, double air) {
    double weight = stay.weightOn(day);
    return Water.need(weight, inHouse.eaten(weight), Math.max(COLDEST, air));
  }
}
