package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swineherd.figures.Carcass;
import swineherd.figures.FeedIntake;
import swineherd.setup.Setup;

/**
 * The weight past which a pig bred for lard puts on little but fat, if it eats all it wants. There
 * is one for each group of such a breed that is to grow past it.
 *
 * @param pigs name of the group
 * @param weight that weight, kg live
 * @param on first day they are likely to weigh it; null if their growth is not known, or if they go
 *     before
 * @param target weight they are to reach, kg live
 * @param perGain feed for each weight gained, waste counted
 */
public record LardFeed(
    String pigs, double weight, LocalDate on, double target, double perGain, List<String> grounds)
    implements Outlook {

  /** How many times its weight in feed a gain takes, in words: {@code 5.4}. */
  public String perGainWords() {
    return String.format(Locale.ROOT, "%.1f", perGain);
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      double target = stay.course() != null ? stay.course().target() : stay.weightOn(stay.to());
      double weight = Carcass.lardWeight();
      if (Course.isLard(stay.group()) && target > weight) {
        String growthClass = stay.growthClass().key();
        all.add(
            new LardFeed(
                stay.group().name(),
                weight,
                stay.reach(weight),
                target,
                FeedIntake.ruleOfThumb(growthClass, 1),
                Grounds.of(stay.path(), "breed", "targetWeight").list()));
      }
    }
    return all;
  }
}
