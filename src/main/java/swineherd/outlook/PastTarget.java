package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import swineherd.rulebook.Table;
import swineherd.setup.Setup;

/**
 * A group that is likely at its target long before the day set for slaughter. There is one for each
 * whose target was said.
 *
 * @param pigs name of the group
 * @param finish likely day on which they reach it
 * @param target kg
 * @param slaughterOn the day set
 * @param days from the one to the other
 * @param late whether that is longer than a day is worth moving for
 * @param week feed of all of them in the first week past the target, kg
 * @param feed feed of all of them in all those days, kg
 * @param cost what that feed costs, a sentence; empty if the price of feed was not said
 */
public record PastTarget(
    String pigs,
    LocalDate finish,
    double target,
    LocalDate slaughterOn,
    int days,
    boolean late,
    double week,
    double feed,
    String cost,
    List<String> grounds)
    implements Outlook {

  private static final int WEEK = 7;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      Course course = stay.course();
      if (course != null
          && stay.group().targetWeight() != null
          && course.slaughterOn() != null
          && course.finish() != null
          && course.finish().likely().isBefore(course.slaughterOn())) {
        all.add(of(setup, stay));
      }
    }
    return all;
  }

  private static PastTarget of(Setup setup, Stay stay) {
    Course course = stay.course();
    LocalDate reached = course.finish().likely();
    LocalDate from = reached.isBefore(setup.checkOn()) ? setup.checkOn() : reached;
    DailyFeed daily = DailyFeed.of(stay);
    double feed = stay.count() * daily.given(from, course.slaughterOn());
    Double price = setup.money().feed();
    int days = (int) ChronoUnit.DAYS.between(from, course.slaughterOn());
    return new PastTarget(
        course.pigs(),
        reached,
        course.target(),
        course.slaughterOn(),
        days,
        days >= Table.named("money-limits").row("past-target").number("value"),
        stay.count() * daily.given(from, from.plusDays(WEEK)),
        feed,
        price == null ? "" : "At your price of feed that is " + Prices.money(feed * price) + ".",
        new Grounds().and(course.grounds()).said("money.feed", price).list());
  }
}
