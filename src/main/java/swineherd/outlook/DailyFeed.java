package swineherd.outlook;

import java.time.LocalDate;
import swineherd.figures.Feeding;
import swineherd.figures.IntakeCurve;
import swineherd.setup.Feed;
import swineherd.setup.Group;

/** What a pig of a group eats in a day, at the weight it has then. */
final class DailyFeed {
  private final Stay stay;
  private final Feeding feeding;

  private DailyFeed(Stay stay, Feeding feeding) {
    this.stay = stay;
    this.feeding = feeding;
  }

  /**
   * By breed, sex, place and way of feeding; what is not known is as for a full trough outdoors.
   */
  static DailyFeed of(Stay stay) {
    Feed.Kind kind = stay.feed().kind();
    boolean housed = stay.course() != null && stay.course().housed();
    return new DailyFeed(
        stay,
        Feeding.of(
            stay.growthClass().key(),
            curve(stay.group()),
            kind == Feed.Kind.RESTRICTED ? "restricted" : "to-appetite",
            housed ? "housed" : "outdoors",
            kind == Feed.Kind.SELF_FEEDER ? "self-feeder" : "trough",
            "compound"));
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
}
