package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.GroundRest;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Setup;

/**
 * A move that the diary tells of, of the last few days; one that is only planned is {@link
 * OnTheMove}.
 *
 * @param pigs name of the group
 * @param on the day
 * @param rest days that the ground they left should be without pigs, for its worms
 */
public record JustMoved(String pigs, LocalDate on, int rest, List<String> grounds)
    implements Outlook {

  /** So long it shows whether all of them have found what they need; judgement. */
  private static final int LATELY = 3;

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      boolean lately =
          entry.did() == DiaryEntry.Did.MOVED
              && entry.on() != null
              && !entry.isPlanned()
              && entry.on().plusDays(LATELY).isAfter(setup.checkOn());
      if (lately && entry.pigs() != null) {
        all.add(
            new JustMoved(
                entry.pigs(),
                entry.on(),
                GroundRest.daysNeeded(false),
                Grounds.of("diary[" + i + "]", "on", "did").list()));
      }
    }
    return all;
  }
}
