package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Setup;

/**
 * Feed for the first week after arrival, before anything is changed. There is one for each group
 * that is to come or has come within a week.
 *
 * @param pigs name of the group
 * @param kg for all of them, waste counted
 * @param arrives the first day
 */
public record FirstWeek(String pigs, double kg, LocalDate arrives, List<String> grounds)
    implements Outlook {

  private static final int WEEK = 7;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      LocalDate arrives = stay.group().arrives();
      if (arrives != null
          && stay.course() != null
          && !arrives.plusDays(WEEK).isBefore(setup.checkOn())) {
        DailyFeed feed = DailyFeed.of(stay);
        double kg =
            arrives
                .datesUntil(arrives.plusDays(WEEK))
                .mapToDouble(day -> stay.count() * feed.givenOn(day))
                .sum();
        all.add(
            new FirstWeek(
                stay.group().name(),
                kg,
                arrives,
                stay.grounds().and(stay.path(), "arrives").list()));
      }
    }
    return all;
  }
}
