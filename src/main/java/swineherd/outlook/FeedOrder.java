package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.FeedBuying;
import swineherd.figures.FeedUse;
import swineherd.setup.Setup;
import swineherd.units.UnitSystem;

/**
 * Feed to buy from now, or from the first arrival, until the last pigs have gone: all groups
 * together. There is one where number, growth and end of every group are known.
 *
 * @param total what they get through, waste counted, kg
 * @param bags whole bags for that, with a reserve
 * @param bag what one bag holds, kg
 * @param atATime days of use to buy at a time
 * @param first for the first so many days, kg
 * @param most for the so many days in which they eat most, kg
 * @param keeps days the feed keeps where it stands
 * @param form of the feed in words
 * @param come whether some of the pigs are there
 * @param from first day of feeding
 * @param to last day
 */
public record FeedOrder(
    Band total,
    int bags,
    double bag,
    int atATime,
    double first,
    double most,
    int keeps,
    String form,
    boolean come,
    LocalDate from,
    LocalDate to,
    List<String> grounds)
    implements Outlook {

  private static final double BAG = 25;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    return AllFeed.of(setup, courses).map(use -> (Outlook) of(setup, use)).stream().toList();
  }

  private static FeedOrder of(Setup setup, AllFeed use) {
    FeedUse all = new FeedUse(0, 0, use.days(), use.total());
    double bag = bag(setup);
    int atATime = use.daysToBuy();
    return new FeedOrder(
        all.band(),
        FeedBuying.bags(all.withReserve(), bag),
        bag,
        atATime,
        use.sum(0, atATime),
        use.most(atATime),
        use.keepsAtWorst(),
        use.formWords(),
        !use.from().isAfter(setup.checkOn()),
        use.from(),
        use.from().plusDays(use.days()),
        use.grounds().list());
  }

  private static double bag(Setup setup) {
    if (setup.money().bag() != null) {
      return setup.money().bag();
    }
    return setup.units() == UnitSystem.US ? FeedBuying.BAG_50_LB : BAG;
  }
}
