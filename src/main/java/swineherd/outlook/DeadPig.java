package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Country;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Setup;

/**
 * A death that the diary tells of, so lately that the carcass may still lie there.
 *
 * @param pigs name of the group; empty if it was not said
 * @param on the day; null if it was not said
 * @param country for its law; null if it is not known
 */
public record DeadPig(String pigs, LocalDate on, Country country, List<String> grounds)
    implements Outlook {

  /** Carcasses go within a day or two; a week allows for a diary written late. Judgement. */
  private static final int LATELY = 7;

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      if (entry.did() == DiaryEntry.Did.DIED && isLately(entry.on(), setup.checkOn())) {
        all.add(
            new DeadPig(
                entry.pigs() == null ? "" : entry.pigs(),
                entry.on(),
                setup.place().country(),
                Grounds.of("diary[" + i + "]", "on", "did").and("place", "country").list()));
      }
    }
    return all;
  }

  private static boolean isLately(LocalDate on, LocalDate today) {
    return on == null || (!on.isAfter(today) && on.plusDays(LATELY).isAfter(today));
  }
}
