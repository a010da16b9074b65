package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.OptionalDouble;
import swineherd.figures.Band;
import swineherd.figures.Heat;
import swineherd.setup.Setup;

/**
 * The heat that pigs of a pen meet in the hottest months. There is one for each pen under the open
 * sky in which pigs will be in that time.
 *
 * @param pen name of the pen
 * @param known whether the temperature of the hottest month is known; if not, the temperatures and
 *     what is needed are null
 * @param hottest air temperature on the hottest days, degC
 * @param weight of the heaviest pigs in that time, kg
 * @param copes air temperature over which pigs of that weight eat less and pant, degC
 * @param shade whether pigs of any colour need shade
 * @param wetting whether they need water or mud on the skin besides
 * @param wallow wallow for all of them, m2
 * @param heaviest weight of the heaviest pigs in any summer they meet, kg
 * @param lightTo weight that they should not be over in so hot a summer, kg; null where they are
 *     not, or it is not so hot
 * @param by when it should be ready
 */
public record SummerHeat(
    String pen,
    boolean known,
    Band hottest,
    double weight,
    Double copes,
    Boolean shade,
    Boolean wetting,
    Band wallow,
    double heaviest,
    Double lightTo,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  private static final int LEAD_DAYS = 14;

  /** Weights for which the upper critical temperature holds, kg. */
  private static final double LIGHTEST = 20;

  private static final double HEAVIEST = 120;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (List<OpenAir> pigs : OpenAir.byPen(OpenAir.of(setup, courses))) {
      List<Summer> summers = Summer.of(pigs, new SkyOver(setup.place()));
      if (!summers.isEmpty()) {
        all.add(of(setup, pigs, summers));
      }
    }
    return all;
  }

  private static SummerHeat of(Setup setup, List<OpenAir> pigs, List<Summer> summers) {
    String pen = pigs.get(0).pen().name();
    Grounds grounds = Grounds.of("place", "hottestMonth");
    for (OpenAir each : pigs) {
      String stay = each.stay().group().slaughterOn() == null ? "targetWeight" : "slaughterOn";
      grounds.and(each.stay().path(), "count", "arrives", stay);
    }
    Double month = setup.place().hottestMonth();
    Band wallow = Heat.wallow(pigs.stream().mapToInt(p -> p.stay().count()).sum());
    double heaviest = summers.stream().mapToDouble(Summer::weight).max().orElseThrow();
    if (month == null) {
      Summer first = summers.get(0);
      return new SummerHeat(
          pen,
          false,
          null,
          first.weight,
          null,
          null,
          null,
          wallow,
          heaviest,
          null,
          by(first, setup),
          grounds.list());
    }
    // the first summer in which they need to get wet; the last if there is none
    Summer summer =
        summers.stream()
            .filter(s -> needsWetting(month, s.weight))
            .findFirst()
            .orElse(summers.get(summers.size() - 1));
    return new SummerHeat(
        pen,
        true,
        Heat.hottestDays(month),
        summer.weight,
        Heat.upperCritical(reckoned(summer.weight)),
        Heat.SummerClass.of(month).requirements().contains("shade-for-all"),
        needsWetting(month, summer.weight),
        wallow,
        heaviest,
        lightTo(month, heaviest),
        by(summer, setup),
        grounds.list());
  }

  private static Double lightTo(double month, double heaviest) {
    OptionalDouble limit = Heat.SummerClass.of(month).lightTo();
    return limit.isPresent() && heaviest > limit.getAsDouble() ? limit.getAsDouble() : null;
  }

  private static LocalDate by(Summer summer, Setup setup) {
    LocalDate lead = summer.first.minusDays(LEAD_DAYS);
    return lead.isBefore(setup.checkOn()) ? setup.checkOn() : lead;
  }

  /**
   * Lighter pigs stand more heat than the lightest measured, heavier ones less than the heaviest.
   */
  private static double reckoned(double weight) {
    return Math.max(LIGHTEST, Math.min(HEAVIEST, weight));
  }

  /** By the class of the summer or by the weight, whichever asks for it. */
  private static boolean needsWetting(double month, double weight) {
    List<String> required = Heat.SummerClass.of(month).requirements();
    return required.contains("wallow")
        || (required.contains("wet-patch-over-50-kg") && weight > 50)
        || Heat.needsWetting(month, reckoned(weight));
  }

  /**
   * One of the summers they meet.
   *
   * @param first first day they are there in it
   * @param weight of the heaviest in it, kg
   */
  private record Summer(LocalDate first, double weight) {
    static List<Summer> of(List<OpenAir> pigs, SkyOver sky) {
      NavigableSet<LocalDate> days = OpenAir.days(pigs, sky::isSummer);
      List<Summer> summers = new ArrayList<>();
      LocalDate first = null;
      double weight = 0;
      for (LocalDate day : days) {
        first = first == null ? day : first;
        for (OpenAir each : pigs) {
          weight = each.stay().isThereOn(day) ? Math.max(weight, each.weightOn(day)) : weight;
        }
        if (!days.contains(day.plusDays(1))) {
          summers.add(new Summer(first, weight));
          first = null;
          weight = 0;
        }
      }
      return summers;
    }
  }
}
