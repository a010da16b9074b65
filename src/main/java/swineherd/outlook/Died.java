package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import swineherd.rulebook.Table;
import swineherd.setup.Country;
import swineherd.setup.DiaryEntry;
import swineherd.setup.DiaryEntry.Did;
import swineherd.setup.Setup;

/**
 * Deaths of the last days in one group, as the diary has them.
 *
 * @param pigs name of the group; empty if it was not said and there are several
 * @param on day of the last of them; null if one has no day, which counts as today
 * @param count how many of the group, one where it was not said
 * @param together how many of the whole place died within two days of each other, at most
 * @param country where; null if not said
 * @param checkOn day of the check
 */
public record Died(
    String pigs,
    LocalDate on,
    int count,
    int together,
    Country country,
    LocalDate checkOn,
    List<String> grounds)
    implements Outlook {

  /** Whether two or more died so close together that no accident explains it. */
  public boolean several() {
    return together > 1;
  }

  /** The group as words of a sentence. */
  public String pigsWords() {
    return pigs.isEmpty() ? "the pigs" : pigs;
  }

  static List<Died> of(Setup setup) {
    Table table = Table.named("diary");
    LocalDate since =
        setup.checkOn().minusDays((long) table.row("death-counts-for").number("value"));
    Map<String, List<Integer>> byGroup = new LinkedHashMap<>();
    List<DiaryEntry> all = new ArrayList<>();
    for (int i = 0; i < setup.diary().size(); i++) {
      DiaryEntry entry = setup.diary().get(i);
      boolean recent = entry.on() == null || !entry.on().isBefore(since);
      if (entry.did() == Did.DIED && recent) {
        all.add(entry);
        byGroup.computeIfAbsent(group(setup, entry), g -> new ArrayList<>()).add(i);
      }
    }
    int together =
        together(all, setup.checkOn(), (int) table.row("deaths-together").number("value"));
    List<Died> died = new ArrayList<>();
    byGroup.forEach((pigs, entries) -> died.add(of(setup, pigs, entries, together)));
    return died;
  }

  private static Died of(Setup setup, String pigs, List<Integer> entries, int together) {
    Grounds grounds = new Grounds();
    LocalDate last = null;
    boolean dated = true;
    int count = 0;
    for (int i : entries) {
      DiaryEntry entry = setup.diary().get(i);
      grounds.and("diary[" + i + "]", "did", "on", "count");
      count += entry.countOrOne();
      dated &= entry.on() != null;
      last = last == null || (dated && entry.on().isAfter(last)) ? entry.on() : last;
    }
    return new Died(
        pigs,
        dated ? last : null,
        count,
        together,
        setup.place().country(),
        setup.checkOn(),
        grounds.list());
  }

  /** The most that died within so many days; a death without a day counts as of today. */
  private static int together(List<DiaryEntry> deaths, LocalDate today, int days) {
    int most = 0;
    for (DiaryEntry one : deaths) {
      LocalDate from = one.on() == null ? today : one.on();
      int within = 0;
      for (DiaryEntry other : deaths) {
        LocalDate on = other.on() == null ? today : other.on();
        long after = ChronoUnit.DAYS.between(from, on);
        within += after >= 0 && after <= days ? other.countOrOne() : 0;
      }
      most = Math.max(most, within);
    }
    return most;
  }

  private static String group(Setup setup, DiaryEntry entry) {
    if (entry.pigs() != null) {
      return entry.pigs();
    }
    return setup.pigs().size() == 1 ? setup.pigs().get(0).name() : "";
  }
}
