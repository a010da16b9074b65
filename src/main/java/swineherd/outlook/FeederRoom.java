package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.FeederSpace;
import swineherd.setup.Feed;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * Room at the trough or feeder for the pigs of a pen at their heaviest. There is one for each pen
 * in which pigs are or will be.
 *
 * @param pen name of the pen
 * @param length of trough, or of feeder front where feed is always there, m
 * @param place width of one eating place, m
 * @param weight of the heaviest, kg
 * @param come whether pigs are there already; taken so where the day is not known
 * @param by when it should be ready
 */
public record FeederRoom(
    String pen,
    double length,
    double place,
    double weight,
    boolean come,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    PenStays.of(setup, courses).forEach(in -> all.add(of(setup, in.pen(), in.stays())));
    return all;
  }

  private static FeederRoom of(Setup setup, Pen pen, List<Stay> stays) {
    int count = stays.stream().mapToInt(Stay::count).sum();
    double weight = stays.stream().mapToDouble(s -> s.weightOn(s.to())).max().orElseThrow();
    boolean always = setup.feed().kind() == Feed.Kind.SELF_FEEDER;
    Grounds grounds = Grounds.of("feed", "kind");
    stays.forEach(s -> grounds.and(s.grounds().list()));
    return new FeederRoom(
        pen.name(),
        always ? FeederSpace.hopper(count, weight) : FeederSpace.trough(count, weight),
        FeederSpace.placeWidth(weight),
        weight,
        !Stay.first(stays).isAfter(setup.checkOn()),
        Stay.readyBy(stays, setup.checkOn()),
        grounds.list());
  }
}
