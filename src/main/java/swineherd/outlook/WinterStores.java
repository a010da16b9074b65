package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Winter;
import swineherd.setup.Setup;

/**
 * Feed to have in store for days on which none can be fetched. There is one for each {@link
 * WinterPen} whose winter asks for a store.
 *
 * @param pen name of the pen
 * @param chance that pigs are there at the first hard frost, 0 to 1
 * @param days to be fed from it; this project's judgement, by the class of the winter
 * @param daily feed to be given to all of them together on a cold day at their heaviest, waste and
 *     what they eat against the cold counted, kg
 * @param reserve feed for all those days, kg
 * @param by day by which to have it, not before the day of the check
 */
public record WinterStores(
    String pen,
    double chance,
    int days,
    double daily,
    double reserve,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /**
   * The store of a pen.
   *
   * @param extra more feed for each pig in the cold, kg a day
   */
  static Optional<WinterStores> of(
      Setup setup, WinterPen pen, List<WinterPen.Winterer> winterers, double extra) {
    int days = pen.winterClass().feedReserveDays();
    if (days == 0) {
      return Optional.empty();
    }
    double daily = 0;
    for (WinterPen.Winterer group : winterers) {
      Course course = group.course();
      double each =
          DailyFeed.feeding(
                  course.growthClass().key(),
                  setup.group(course.pigs()).orElseThrow(),
                  setup.feed(),
                  course.housed())
              .given(WinterPen.within(group.heaviest(), 2.5, 140));
      daily += course.count() * (each + extra);
    }
    return Optional.of(
        new WinterStores(
            pen.pen(),
            pen.chance(),
            days,
            daily,
            days * daily,
            WinterPen.by(
                Winter.FEED_STORE, pen.winterClass(), pen.frost().early(), setup.checkOn()),
            new Grounds().and(pen.grounds()).said("feed.kind", setup.feed().kind()).list()));
  }
}
