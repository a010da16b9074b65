package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Heat;
import swineherd.figures.HutHeat;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * A summer that is too hot for pigs that live under a roof and cannot go out. There is one for each
 * such pen whose pigs would need wetting; only where it is known how warm the hottest month is.
 *
 * @param pen name of the pen
 * @param weight of the heaviest in summer, kg
 * @param hottest air on the hottest days, degC
 * @param copes air over which pigs of that weight eat less and pant, degC
 * @param air fresh air for each pig in hot weather, in words with both units
 * @param by first day of summer that finds them there; today if that is past
 */
public record HotHouse(
    String pen,
    double weight,
    double hottest,
    double copes,
    String air,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** Weights for which the upper critical temperature holds, kg. */
  private static final double LIGHTEST = 20;

  private static final double HEAVIEST = 120;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Double month = setup.place().hottestMonth();
    SkyOver sky = new SkyOver(setup.place());
    for (PenStays in : PenStays.of(setup, courses)) {
      Pen pen = in.pen();
      boolean house =
          pen.shelter().kind() == Shelter.Kind.BARN || pen.shelter().kind() == Shelter.Kind.HOOP;
      if (month == null || !house || !OpenAir.isRoofed(pen)) {
        continue;
      }
      LocalDate first =
          Stay.days(in.stays()).stream().filter(sky::isSummer).findFirst().orElse(null);
      double weight = 0;
      Grounds grounds = Grounds.of("place", "hottestMonth").and(in.path(), "ground");
      for (Stay stay : in.stays()) {
        double heaviest =
            stay.days().filter(sky::isSummer).mapToDouble(stay::weightOn).max().orElse(0);
        weight = Math.max(weight, heaviest);
        grounds.and(stay.grounds().list());
      }
      double reckoned = Math.max(LIGHTEST, Math.min(HEAVIEST, weight));
      if (first != null && Heat.needsWetting(month, reckoned)) {
        all.add(
            new HotHouse(
                pen.name(),
                weight,
                Heat.hottestDays(month).likely(),
                Heat.upperCritical(reckoned),
                HutHeat.hotVentilationWords(reckoned),
                first,
                grounds.list()));
      }
    }
    return all;
  }
}
