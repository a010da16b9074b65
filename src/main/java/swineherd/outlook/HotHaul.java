package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Transport;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * A journey in the warm months on which it may be too hot for pigs of that weight. There is one for
 * each group that is to come, and for each that goes to be slaughtered elsewhere within three
 * months; only where it is known how warm the hottest month is.
 *
 * @param pigs name of the group
 * @param home whether they come; they go otherwise
 * @param on day of the journey
 * @param weight on that day, kg
 * @param early air temperature of the day over which they are loaded at dawn, degC
 * @param limit air temperature over which they are not on the road, degC
 * @param hottest air temperature on the hottest days at that time, degC
 * @param floor room for all of them in the heat, m2
 * @param ordinary whether an ordinary day of that month is already so warm
 */
public record HotHaul(
    String pigs,
    boolean home,
    LocalDate on,
    double weight,
    double early,
    double limit,
    double hottest,
    double floor,
    boolean ordinary,
    List<String> grounds)
    implements Outlook {

  private static final int SOON_DAYS = 90;

  /** The lightest and the heaviest pig for which room on the road is known, kg. */
  private static final double LIGHTEST = 5;

  private static final double HEAVIEST = 150;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    if (setup.place().hottestMonth() == null) {
      return all;
    }
    Whereabouts whereabouts = new Whereabouts(setup);
    for (Stay stay : Stay.of(setup, courses)) {
      boolean leaves =
          (stay.course() != null || stay.group().slaughterOn() != null)
              && stay.group().slaughterAt() != Group.SlaughterAt.HOME;
      try {
        if (stay.group().arrives() != null && whereabouts.isComing(stay.group())) {
          add(of(setup, stay, true), all);
        }
        if (leaves && ChronoUnit.DAYS.between(setup.checkOn(), stay.to()) <= SOON_DAYS) {
          add(of(setup, stay, false), all);
        }
      } catch (OutsideDomainException e) {
        all.add(
            new NotWorkedOut(
                "heat on the road",
                stay.group().name(),
                e.getMessage(),
                List.of("place.hottestMonth")));
      }
    }
    return all;
  }

  private static void add(HotHaul haul, List<Outlook> all) {
    if (haul.hottest > haul.early) {
      all.add(haul);
    }
  }

  private static HotHaul of(Setup setup, Stay stay, boolean home) {
    Weather weather = new Weather(setup.place());
    LocalDate on = home ? stay.from() : stay.to();
    double weight = Math.max(LIGHTEST, Math.min(HEAVIEST, stay.weightOn(on)));
    double early = Transport.earlyAbove(weight);
    return new HotHaul(
        stay.group().name(),
        home,
        on,
        weight,
        early,
        Transport.hottest(weight),
        weather.hotDay(on),
        stay.count() * Transport.floor(weight, true),
        weather.ordinaryDay(on) > early,
        Grounds.of("place", "hottestMonth")
            .and(stay.path(), "count", "arrivalWeight", home ? "arrives" : "slaughterOn")
            .list());
  }
}
