package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Pigs known to be, or perhaps to be, entire males, that will be big enough to hurt a grown person.
 * Males whose second vaccination against taint is done or planned are as quiet as castrated ones
 * after it, and left out.
 *
 * @param pigs name of the group
 * @param pen name of their pen; null if not said
 * @param weight when they go, kg
 * @param from first day on which they weigh 50 kg; today if that is past or growth is not known
 */
public record Boar(String pigs, String pen, double weight, LocalDate from, List<String> grounds)
    implements Outlook {

  /** Judgement: from that weight on a boar knocks a person over. */
  private static final double BIG = 50;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      double weight = stay.weightOn(stay.to());
      if (isBoar(stay) && weight >= BIG) {
        LocalDate from = stay.reach(BIG);
        all.add(
            new Boar(
                stay.group().name(),
                stay.group().pen(),
                weight,
                from == null ? setup.checkOn() : from,
                stay.grounds().and(stay.path(), "sex", "males").list()));
      }
    }
    return all;
  }

  private static boolean isBoar(Stay stay) {
    boolean quiet =
        stay.group().males() == Group.Males.VACCINATED && stay.group().secondVaccine() != null;
    return stay.hasEntireMales() && !quiet;
  }
}
