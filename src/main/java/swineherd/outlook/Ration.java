package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import swineherd.figures.Band;
import swineherd.figures.GrowthFactors;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Rations;
import swineherd.setup.Setup;

/**
 * A full ration of a group now, or when it comes, and what becomes of the pigs on grain alone.
 * There is one for each group that is still there or to come.
 *
 * @param pigs name of the group
 * @param weight of one pig, kg
 * @param feed complete feed for one pig, waste counted, kg a day
 * @param all for all of them, kg a day
 * @param protein the feed should have, %
 * @param fullGain on complete feed, kg a day
 * @param grainGain on grain alone: on maize, barley and oats, kg a day
 * @param likelyHarm how likely pigs of that weight suffer on less, 0 to 1; judgement
 * @param on the day it is reckoned for
 */
public record Ration(
    String pigs,
    double weight,
    double feed,
    double all,
    Band protein,
    double fullGain,
    Band grainGain,
    double likelyHarm,
    LocalDate on,
    List<String> grounds)
    implements Outlook {

  /** Up to here pigs are weaners, which starve soonest on poor feed, kg. */
  private static final double WEANER_TO = 25;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      try {
        all.add(of(stay));
      } catch (OutsideDomainException e) {
        all.add(
            new NotWorkedOut("ration", stay.group().name(), e.getMessage(), stay.grounds().list()));
      }
    }
    return all;
  }

  private static Ration of(Stay stay) {
    LocalDate day = stay.from();
    double weight = stay.weightOn(day);
    DailyFeed feed = DailyFeed.of(stay);
    boolean housed = stay.course() != null && stay.course().housed();
    double full =
        stay.growthClass()
            .growth(
                GrowthFactors.product(
                    stay.growthClass(),
                    "feed-to-appetite",
                    housed ? "env-housed" : "env-outdoors",
                    "sex-unknown"))
            .dailyGain(weight);
    return new Ration(
        stay.group().name(),
        weight,
        feed.givenOn(day),
        feed.givenOn(day) * stay.count(),
        Rations.protein(weight, stay.growthClass().key(), stay.hasEntireMales()),
        full,
        new Band(
            onGrain("maize", feed.eatenOn(day), full),
            onGrain("barley", feed.eatenOn(day), full),
            onGrain("oats", feed.eatenOn(day), full)),
        weight < WEANER_TO ? 0.6 : 0.35,
        day,
        stay.grounds().list());
  }

  private static double onGrain(String grain, double eaten, double full) {
    return full * Rations.pace(Rations.lysine(Map.of(grain, eaten)), full);
  }
}
