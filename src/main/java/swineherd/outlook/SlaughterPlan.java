package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import swineherd.figures.SlaughterDay;
import swineherd.rulebook.Table;
import swineherd.setup.Group;

/**
 * The last weeks day by day, from the table {@code slaughter-days}, for the day set, or, where that
 * cannot be or none is set, for the first that can.
 *
 * @param pigs name of the group
 * @param day the day of slaughter it leads to; null if none can be told yet, or if heat or illness
 *     stands before the day that is set
 * @param set whether that is the day the keeper set
 * @param steps what to do on which day, the first first, none before the day of the check
 */
public record SlaughterPlan(String pigs, LocalDate day, boolean set, List<Step> steps) {
  public SlaughterPlan {
    steps = List.copyOf(steps);
  }

  /** Judgement: booking, papers and the forecast take a week. */
  private static final int GET_READY_DAYS = 7;

  /**
   * One thing to do.
   *
   * @param on the day
   * @param key short name that stays the same: {@code weigh}
   * @param what in words
   */
  public record Step(LocalDate on, String key, String what) {}

  /** The plan for a group. */
  public static SlaughterPlan of(SlaughterReadiness readiness, Group group) {
    boolean set = readiness.day() != null && !readiness.isTooSoon();
    LocalDate day = set ? readiness.day() : firstThatFits(readiness);
    if (day == null || (set && isOff(readiness))) {
      return new SlaughterPlan(group.name(), null, false, List.of());
    }
    List<Step> steps = new ArrayList<>();
    if (readiness.bookBy() != null && group.slaughterAt() != Group.SlaughterAt.HOME) {
      steps.add(
          new Step(readiness.bookBy(), "book", "Have the day booked by now; ask two places."));
    }
    boolean home = group.slaughterAt() == Group.SlaughterAt.HOME;
    for (Table.Row row : Table.named("slaughter-days").rows()) {
      LocalDate on = day.minusDays((long) row.number("days_before"));
      String at = row.text("at");
      boolean here = at.equals("any") || at.equals(home ? "home" : "abattoir");
      boolean done = row.key().equals("weigh") && readiness.near() && readiness.weighBy() == null;
      if (here && !done && !on.isBefore(readiness.today())) {
        steps.add(new Step(on, row.key(), row.text("what")));
      }
    }
    SlaughterDay.FeedOff off = readiness.feedOff(day);
    LocalDate eve = off.earliest().toLocalDate();
    if (!eve.isBefore(readiness.today())) {
      steps.add(
          new Step(
              eve,
              "feed-off",
              "Last feed between "
                  + off.earliest().toLocalTime()
                  + " and "
                  + off.latest().toLocalTime()
                  + " for a kill at 8 in the morning, earlier or later with it. Water stays."));
    }
    steps.sort(Comparator.comparing(Step::on));
    return new SlaughterPlan(group.name(), day, set, steps);
  }

  /** Whether no pig is made ready for that day: the forecast, or a vet's word, stands before it. */
  private static boolean isOff(SlaughterReadiness readiness) {
    return readiness.tooHot() || (readiness.ill() && readiness.daysLeft() <= GET_READY_DAYS);
  }

  /** Not before a week from now, to get ready in. */
  private static LocalDate firstThatFits(SlaughterReadiness readiness) {
    LocalDate soonest = readiness.today().plusDays(GET_READY_DAYS);
    LocalDate ready = readiness.readyOn();
    return ready != null && ready.isBefore(soonest) ? soonest : ready;
  }
}
