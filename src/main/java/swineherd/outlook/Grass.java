package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Pasture;
import swineherd.figures.Signal;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * What pigs do to the earth they live on. There is one for each pen on earth, or of a size that
 * only earth has, in which pigs are or will be and whose area and pigs are counted.
 *
 * @param pen name of the pen
 * @param lot whether it is a permanent lot, of which no grass is expected
 * @param wet whether that lot is wet
 * @param dirtLot whether so little of it falls to each pig that it becomes a lot whatever is done
 * @param pigs most of them at once
 * @param area m2
 * @param each m2 for each pig
 * @param load green where grass lives through the season, red where it goes
 * @param times what they ask of it, in times of what grass lives through
 * @param needed m2 on which grass lives through
 * @param carries pigs for whose time there the area is enough
 * @param bare day on which the ground is bare, counted from the day they come to it whole; null
 *     where it lives longer than they stay
 * @param days until then from the day they come
 * @param standing m2 of dry ground that the least lot has for so many pigs
 * @param good m2 of a comfortable lot for so many pigs
 * @param came first day on which pigs are there, not before the day of the check
 * @param by the day on which it is bare, or else the day they come; not before the day of the check
 */
public record Grass(
    String pen,
    boolean lot,
    boolean wet,
    boolean dirtLot,
    int pigs,
    double area,
    double each,
    Signal load,
    double times,
    double needed,
    int carries,
    LocalDate bare,
    int days,
    double standing,
    double good,
    LocalDate came,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /**
   * How likely the grass goes where it is overloaded, and where it is loaded heavily: judgement.
   */
  private static final double GOES = 0.7;

  private static final double SUFFERS = 0.35;

  /** What becomes of it, in words. */
  public String lasts() {
    String how = dirtLot && load == Signal.RED ? "a dirt lot" : "bare";
    return bare == null ? "worn thin" : how + " by " + Dates.words(bare);
  }

  /** How likely the grass suffers if nothing is done, 0 to 1. */
  public double likely() {
    return load == Signal.RED ? GOES : SUFFERS;
  }

  /**
   * Floors under a roof are smaller than this for each pig, m2: what is larger is taken as earth.
   */
  private static final double LARGEST_FLOOR = 10;

  private static final double LIGHTEST = 10;
  private static final int A_YEAR = 365;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (PenStays in : PenStays.of(setup, courses)) {
      if (in.counted() && in.pen().area() != null && isEarth(in.pen(), in.stays())) {
        all.add(of(setup, in.pen(), in.path(), in.stays()));
      }
    }
    return all;
  }

  private static boolean isEarth(Pen pen, List<Stay> stays) {
    return pen.ground() == null
        ? pen.area() >= LARGEST_FLOOR * most(stays)
        : pen.ground().isEarth();
  }

  private static int most(List<Stay> stays) {
    return stays.stream()
        .mapToInt(
            s -> stays.stream().filter(o -> o.isThereOn(s.from())).mapToInt(Stay::count).sum())
        .max()
        .orElse(0);
  }

  private static Grass of(Setup setup, Pen pen, String path, List<Stay> stays) {
    double pigDays = 0;
    int all = 0;
    Grounds grounds = Grounds.of(path, "area", "ground");
    LocalDate came = null;
    for (Stay stay : stays) {
      pigDays += Pasture.pigDays(stay.count(), days(stay), meanWeight(stay));
      all += stay.count();
      came = came == null || first(stay).isBefore(came) ? first(stay) : came;
      grounds.and(stay.grounds().list()).and(stay.path(), "arrives", "slaughterOn");
    }
    int pigs = most(stays);
    double needed = Pasture.areaNeeded(pigDays, setup.place().soil());
    LocalDate bare = bare(setup, pen, stays, came);
    LocalDate by = bare == null ? came : bare;
    return new Grass(
        pen.name(),
        pen.ground() == Pen.Ground.BARE_DRY || pen.ground() == Pen.Ground.BARE_WET,
        pen.ground() == Pen.Ground.BARE_WET,
        Pasture.isDirtLot(pen.area() / pigs),
        pigs,
        pen.area(),
        pen.area() / pigs,
        Pasture.signal(pigDays, pen.area(), setup.place().soil()),
        needed / pen.area(),
        needed,
        (int) (all * pen.area() / needed),
        bare,
        bare == null ? 0 : (int) ChronoUnit.DAYS.between(came, bare),
        Pasture.sacrificeArea(pigs).low(),
        Pasture.sacrificeArea(pigs).likely(),
        came.isBefore(setup.checkOn()) ? setup.checkOn() : came,
        by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
        grounds.and("place", "soil").list());
  }

  /** The day on which the pig-days so far have used the grass up, on ground that was whole. */
  private static LocalDate bare(Setup setup, Pen pen, List<Stay> stays, LocalDate came) {
    double used = 0;
    for (LocalDate day = came; day.isBefore(came.plusDays(A_YEAR)); day = day.plusDays(1)) {
      boolean someone = false;
      for (Stay stay : stays) {
        if (!day.isBefore(first(stay)) && !day.isAfter(stay.to())) {
          someone = true;
          used +=
              1
                  / Pasture.daysUntilBare(
                      stay.count(),
                      Math.max(LIGHTEST, stay.weightOn(day)),
                      pen.area(),
                      setup.place().soil());
        }
      }
      if (someone && used >= 1) {
        return day;
      }
    }
    return null;
  }

  private static LocalDate first(Stay stay) {
    LocalDate arrives = stay.group().arrives();
    return arrives == null ? stay.from() : arrives;
  }

  private static double days(Stay stay) {
    return Math.max(1, Math.min(A_YEAR, ChronoUnit.DAYS.between(first(stay), stay.to())));
  }

  private static double meanWeight(Stay stay) {
    return Math.max(
        LIGHTEST,
        first(stay)
            .datesUntil(stay.to().plusDays(1))
            .limit(A_YEAR)
            .mapToDouble(stay::weightOn)
            .average()
            .orElse(LIGHTEST));
  }
}
