package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Parasites;
import swineherd.figures.Parasites.Input;
import swineherd.figures.Parasites.NextTest;
import swineherd.figures.Withdrawal;
import swineherd.figures.Withdrawal.Region;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * When the dung of a group should next be tested for worm eggs, and whether anything could still be
 * given before slaughter. There is one for each group that is still to live.
 *
 * @param pigs name of the group
 * @param since what it is counted from
 * @param from day it is counted from: the later of the last dose and the last clean count, or else
 *     the arrival; null if none is known
 * @param interval days to the next count, never under six weeks
 * @param due day of the next count; null if there is nothing to count from
 * @param soon whether it is due within two weeks, or within four where no dose and no clean count
 *     is known; false if there is nothing to count from
 * @param untreated worm eggs were found, and no dose is known to have followed
 * @param longest longest withdrawal of anything usual against worms there, days
 * @param leaves the day set for slaughter, or else the early end of the forecast; null if there is
 *     neither
 * @param lastDose last day for such a dose before {@code leaves}; null if that is
 * @param slaughterOn day set for slaughter; null if there is none
 * @param lateForDose the day of the count, or today if that is past, is in the last six weeks, and
 *     a dose on it with the longest withdrawal would outlast the day set for slaughter
 * @param near the day set for slaughter is so near that worms picked up today will not show
 * @param assumed what was not known and how it was taken
 * @param checkOn day of the check
 */
public record WormTest(
    String pigs,
    Since since,
    LocalDate from,
    int interval,
    LocalDate due,
    boolean soon,
    boolean untreated,
    int longest,
    LocalDate leaves,
    LocalDate lastDose,
    LocalDate slaughterOn,
    boolean lateForDose,
    boolean near,
    List<String> assumed,
    LocalDate checkOn,
    List<String> grounds)
    implements Outlook {

  /** What the interval is counted from. */
  public enum Since {
    DOSE("their last worming"),
    CLEAN_COUNT("their last clean count"),
    ARRIVAL("the day they came"),
    UNKNOWN("a day that is not known");

    private final String words;

    Since(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }

  private static final Map<Input, String> TAKEN =
      Map.of(
          Input.AREA, "the ground as crowded",
          Input.GROUND, "the ground as bare and wet",
          Input.REST, "the ground as never rested",
          Input.WASHING, "the floor as not washed between batches",
          Input.HISTORY, "their past as without a clean count or a breeder's record",
          Input.AGE, "their age as under 16 weeks",
          Input.SEASON, "the season as warm");

  /**
   * What the longest withdrawal means, as it ends a sentence: the last day for such a dose, or if
   * that is past, what still fits.
   */
  public String lastDoseWords() {
    if (lastDose == null) {
      return "for it the last dose falls that long before they go; others are shorter";
    }
    if (!lastDose.isBefore(checkOn)) {
      return "for it the last dose falls by " + Dates.words(lastDose) + "; others are shorter";
    }
    long left = ChronoUnit.DAYS.between(checkOn, leaves);
    String days = left == 1 ? "the one day" : "the " + left + " days";
    return "that is too long now. Only one shorter than "
        + (left > 0 ? days + " left before they go" : "the days left before they go")
        + " still fits: ask the vet which";
  }

  /** When the count is or was due, as it ends a sentence; to be used where that is known. */
  public String dueWords() {
    return due.isBefore(checkOn)
        ? "it was due about " + Dates.words(due) + ", so this week"
        : "it is due about " + Dates.words(due);
  }

  /** What was not known and how it was taken, in a sentence; empty if all was known. */
  public String taken() {
    return assumed.isEmpty()
        ? ""
        : "Not known, and taken at its worst: " + String.join(", ", assumed) + ".";
  }

  /** Day of the count, or today if that is past; null if there is nothing to count from. */
  public LocalDate testOn() {
    return due != null && due.isBefore(checkOn) ? checkOn : due;
  }

  /** A week from the check, by which to act on eggs that were found. */
  public LocalDate actBy() {
    return checkOn.plusDays(7);
  }

  /** Whether the count would fall after the day set for slaughter. */
  public boolean afterSlaughter() {
    return due != null && slaughterOn != null && due.isAfter(slaughterOn);
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Worms worms = new Worms(setup, i);
      LocalDate slaughterOn = worms.group().slaughterOn();
      if (slaughterOn != null && slaughterOn.isBefore(setup.checkOn())) {
        continue;
      }
      try {
        all.add(of(setup, worms, i, courses));
      } catch (OutsideDomainException e) {
        all.add(
            new NotWorkedOut(
                "worms", worms.group().name(), e.getMessage(), worms.ofGround().list()));
      }
    }
    return all;
  }

  private static WormTest of(Setup setup, Worms worms, int index, List<Course> courses) {
    LocalDate checkOn = setup.checkOn();
    LocalDate slaughterOn = worms.group().slaughterOn();
    Since since = since(worms);
    LocalDate from =
        switch (since) {
          case DOSE -> worms.lastDose();
          case CLEAN_COUNT -> worms.lastClean();
          case ARRIVAL -> worms.group().arrives();
          case UNKNOWN -> null;
        };
    NextTest next = Parasites.nextTest(worms.keeping(from == null ? checkOn : from));
    LocalDate due = from == null ? null : Parasites.dungTestOn(from, next);
    int lead = Parasites.days(since == Since.ARRIVAL ? "notice-without-dose" : "notice");
    int longest = Withdrawal.longestForWorms(Region.of(setup.place().country()));
    LocalDate leaves = Leaving.of(worms.group(), courses).earliest();
    LocalDate lastDose = leaves == null ? null : Withdrawal.latestLastDose(leaves, longest);
    LocalDate test = due == null || due.isBefore(checkOn) ? checkOn : due;
    return new WormTest(
        worms.group().name(),
        since,
        from,
        Math.max(next.days(), Parasites.days("dung-test-roundworm")),
        due,
        due != null && !due.isAfter(checkOn.plusDays(lead)),
        worms.untreated(),
        longest,
        leaves,
        lastDose,
        slaughterOn,
        slaughterOn != null
            && test.isAfter(lastDose)
            && test.plusDays(Parasites.days("dung-test-roundworm")).isAfter(slaughterOn),
        slaughterOn != null && Parasites.dungTestOn(checkOn, next).isAfter(slaughterOn),
        next.assumed().stream().sorted().map(TAKEN::get).toList(),
        checkOn,
        worms
            .ofPigs()
            .and("pigs[" + index + "]", "slaughterOn")
            .and(worms.ofGround().list())
            .list());
  }

  private static Since since(Worms worms) {
    LocalDate dose = worms.lastDose();
    LocalDate clean = worms.lastClean();
    if (dose != null && (clean == null || dose.isAfter(clean))) {
      return Since.DOSE;
    }
    if (clean != null) {
      return Since.CLEAN_COUNT;
    }
    return worms.group().arrives() == null ? Since.UNKNOWN : Since.ARRIVAL;
  }
}
