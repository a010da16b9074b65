package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Transport;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * The room that a group needs on the journey home.
 *
 * @param pigs name of the group, which is still to come
 * @param crated whether they are small and few enough for crates, and no trailer was named; a
 *     trailer otherwise
 * @param crates number of crates, four pigs in each at most; 0 if they are not crated
 * @param each most pigs in one crate; 0 if they are not crated
 * @param floor floor of one crate, or of the trailer, m2, at which all can lie
 * @param length least inside length of a crate, m; 0 if they are not crated
 * @param height least inside height of a crate, m; 0 if they are not crated
 * @param hot whether it may be above 25 degC on the road, for which the floor is enlarged
 * @param arrives day of arrival; null if not known
 */
public record RideHome(
    String pigs,
    boolean crated,
    int crates,
    int each,
    double floor,
    double length,
    double height,
    boolean hot,
    LocalDate arrives,
    List<String> grounds)
    implements Outlook {

  /** Up to here people carry pigs in crates; judgement. */
  private static final double HEAVIEST_CRATED = 30;

  private static final int MOST_CRATED = 12;

  /** The lightest and the heaviest pig for which room on the road is known, kg. */
  private static final double LIGHTEST = 5;

  private static final double HEAVIEST = 150;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    for (Stay stay : Stay.of(setup, courses)) {
      if (whereabouts.isComing(stay.group())) {
        try {
          all.add(of(setup, stay));
        } catch (OutsideDomainException e) {
          all.add(
              new NotWorkedOut(
                  "room on the journey",
                  stay.group().name(),
                  e.getMessage(),
                  stay.grounds().list()));
        }
      }
    }
    return all;
  }

  private static RideHome of(Setup setup, Stay stay) {
    Group group = stay.group();
    double weight = Math.max(LIGHTEST, Math.min(HEAVIEST, stay.weightOn(stay.from())));
    boolean hot = Transport.isHot(new Weather(setup.place()).hotDay(stay.from()));
    boolean crated =
        weight <= HEAVIEST_CRATED
            && stay.count() <= MOST_CRATED
            && group.carriedIn() != Group.CarriedIn.TRAILER;
    int most = (int) Table.named("transport").row("crate-most").number("value");
    int crates = crated ? Transport.trips(stay.count(), most) : 0;
    int each = crated ? Transport.trips(stay.count(), crates) : 0;
    Transport.Crate crate = crated ? Transport.crate(each, weight, hot) : null;
    return new RideHome(
        group.name(),
        crated,
        crates,
        each,
        crated ? crate.floor() : stay.count() * Transport.floor(weight, hot),
        crated ? crate.length() : 0,
        crated ? crate.height() : 0,
        hot,
        group.arrives(),
        Grounds.of(stay.path(), "count", "arrivalWeight", "arrives")
            .and("place", "hottestMonth")
            .said(stay.path() + ".carriedIn", group.carriedIn())
            .list());
  }
}
