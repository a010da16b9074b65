package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Pasture;
import swineherd.rulebook.Table;
import swineherd.setup.Pen;
import swineherd.setup.Place;
import swineherd.setup.Setup;

/**
 * The wet months of pigs on wet clay, for which a hard place is laid in time. There is one for each
 * pen of earth, not a wet lot already, in which pigs are in those months.
 *
 * @param pen name of the pen
 * @param from first day of the wet months on which they are there
 * @param least m2 of hard or draining ground that they need at the very least
 * @param good m2 that are comfortable
 * @param by when to begin with it
 */
public record WetMonths(
    String pen, LocalDate from, double least, double good, LocalDate by, List<String> grounds)
    implements Outlook {

  private static final int HALF_A_YEAR = 6;

  static List<Outlook> of(Setup setup, List<Course> courses, List<Outlook> grass) {
    List<Outlook> all = new ArrayList<>();
    if (setup.place().soil() != Place.Soil.WET_CLAY) {
      return all;
    }
    List<Stay> stays = Stay.of(setup, courses);
    for (Outlook outlook : grass) {
      Grass ground = (Grass) outlook;
      Pen pen = setup.pen(ground.pen()).orElseThrow();
      LocalDate from = from(setup, Stay.in(ground.pen(), stays));
      if (from != null && pen.ground() != Pen.Ground.BARE_WET) {
        LocalDate by = from.minusDays((long) limit("wet-lead"));
        all.add(
            new WetMonths(
                ground.pen(),
                from,
                Pasture.sacrificeArea(ground.pigs()).low(),
                Pasture.sacrificeArea(ground.pigs()).likely(),
                by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
                new Grounds().and("place", "soil").and(ground.grounds()).list()));
      }
    }
    return all;
  }

  private static LocalDate from(Setup setup, List<Stay> stays) {
    return Stay.days(stays).stream().filter(day -> isWet(setup, day)).findFirst().orElse(null);
  }

  private static boolean isWet(Setup setup, LocalDate day) {
    int month =
        (new Climate(setup.place()).isSouthern() ? day.plusMonths(HALF_A_YEAR) : day)
            .getMonthValue();
    return month >= limit("wet-month-first") || month <= limit("wet-month-last");
  }

  private static double limit(String key) {
    return Table.named("ground-limits").row(key).number("value");
  }
}
