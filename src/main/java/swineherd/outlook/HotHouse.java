package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
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
    for (int i = 0; i < setup.pens().size(); i++) {
      Pen pen = setup.pens().get(i);
      boolean house =
          pen.shelter().kind() == Shelter.Kind.BARN || pen.shelter().kind() == Shelter.Kind.HOOP;
      if (month == null || !house || !OpenAir.isRoofed(pen)) {
        continue;
      }
      LocalDate first = null;
      double weight = 0;
      Grounds grounds = Grounds.of("place", "hottestMonth").and("pens[" + i + "]", "ground");
      for (Stay stay : Stay.in(pen.name(), Stay.of(setup, courses))) {
        List<LocalDate> days =
            stay.from().datesUntil(stay.to().plusDays(1)).filter(sky::isSummer).toList();
        for (LocalDate day : days) {
          first = first == null || day.isBefore(first) ? day : first;
          weight = Math.max(weight, stay.weightOn(day));
        }
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
                Objects.requireNonNull(first),
                grounds.list()));
      }
    }
    return all;
  }
}
