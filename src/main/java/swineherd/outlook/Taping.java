package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swineherd.figures.DateBand;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.TapeWeight;
import swineherd.figures.TapeWeight.PigType;
import swineherd.figures.TapeWeight.Taped;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * What a tape round one usual pig says: its weight, a second opinion from the girth alone, and when
 * the group will be finished now.
 *
 * @param girths readings of the heart girth, m, at least one
 * @param lengths readings of the length, m; may be empty
 * @param type what the pig is like
 * @param on the day
 * @param taped the weight
 * @param byGirth the weight from the girth alone, where the length is known too; null if no
 *     equation is good for such a pig, or the length is not known
 * @param pigs name of the group; null if no setup was given
 * @param before its growth without these readings; null without a setup, or if nothing was known
 * @param after its growth with them; null without a setup
 */
public record Taping(
    List<Double> girths,
    List<Double> lengths,
    PigType type,
    LocalDate on,
    Taped taped,
    Taped byGirth,
    String pigs,
    Course before,
    Course after) {
  public Taping {
    girths = List.copyOf(girths);
    lengths = List.copyOf(lengths);
  }

  /**
   * Without a setup.
   *
   * @throws OutsideDomainException if the tape was not made for such a pig
   */
  public static Taping of(List<Double> girths, List<Double> lengths, PigType type, LocalDate on) {
    return new Taping(
        girths,
        lengths,
        type,
        on,
        TapeWeight.of(girths, lengths, type),
        lengths.isEmpty() ? null : byGirth(girths, type),
        null,
        null,
        null);
  }

  /**
   * For a group, on the day of the check.
   *
   * @param type null to take it from the breed
   * @throws OutsideDomainException if the tape was not made for such a pig, or its weight is none
   *     that the growth curve of the breed is good for
   */
  public static Taping of(
      List<Double> girths, List<Double> lengths, PigType type, Setup setup, Group group) {
    PigType like = type == null ? DiaryWeight.type(group) : type;
    Taping alone = of(girths, lengths, like, setup.checkOn());
    List<DiaryEntry> diary = new ArrayList<>(setup.diary());
    diary.add(
        new DiaryEntry(
            setup.checkOn(),
            group.name(),
            null,
            DiaryEntry.Did.TAPED,
            null,
            girths,
            lengths,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null,
            null));
    Setup with =
        new Setup(
            setup.name(),
            setup.checkOn(),
            setup.units(),
            setup.keeper(),
            setup.place(),
            setup.pens(),
            setup.pigs(),
            setup.feed(),
            setup.money(),
            setup.signs(),
            diary);
    return new Taping(
        girths,
        lengths,
        like,
        alone.on,
        alone.taped,
        alone.byGirth,
        group.name(),
        course(setup, group).orElse(null),
        course(with, group).orElse(null));
  }

  /** Whether it is so far from what was weighed and expected that the forecast does not use it. */
  public boolean isDoubted() {
    return after != null
        && after.doubted().stream().anyMatch(w -> w.on().equals(on) && w.kg() == taped.kg());
  }

  /** When the target is reached, as it looked before; null if that was not known. */
  public DateBand finishBefore() {
    return before == null ? null : before.finish();
  }

  /** When the target is reached, as it looks now; null if the curve does not go so far. */
  public DateBand finishAfter() {
    return after == null ? null : after.finish();
  }

  private static Taped byGirth(List<Double> girths, PigType type) {
    try {
      return TapeWeight.of(girths, List.of(), type);
    } catch (OutsideDomainException e) {
      return null;
    }
  }

  private static Optional<Course> course(Setup setup, Group group) {
    return Course.find(Course.all(Course.of(setup)), group);
  }
}
