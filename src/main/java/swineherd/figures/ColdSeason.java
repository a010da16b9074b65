package swineherd.figures;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import swineherd.units.Dates;

/**
 * The part of a year in which hard freezes must be reckoned with, from an early first one to its
 * mirror image on the far side of midwinter. That the season is even about midwinter is this
 * project's judgement: an estimate, for planning.
 *
 * @param start early date of the first hard freeze
 * @param end last day
 */
public record ColdSeason(LocalDate start, LocalDate end) {
  private static final long HALF_YEAR = 182;

  /**
   * The season that {@code on} falls into, or else the next one.
   *
   * @param meanFirstFreeze mean date of the first hard freeze (-2.2 degC, 28 degF)
   * @param spread standard deviation of that date in days, 0 to 40; {@link Winter#USUAL_SPREAD}
   * @throws OutsideDomainException if the date is not in the half year before midwinter (20
   *     January, or 20 July in the south), for then it is no first freeze; or the spread is outside
   *     that
   */
  public static ColdSeason currentOrNext(
      MonthDay meanFirstFreeze, double spread, Hemisphere hemisphere, LocalDate on) {
    for (int year = on.getYear() - 1; ; year++) {
      ColdSeason season = after(meanFirstFreeze.atYear(year), spread, hemisphere);
      if (!season.end.isBefore(on)) {
        return season;
      }
    }
  }

  private static ColdSeason after(LocalDate mean, double spread, Hemisphere hemisphere) {
    LocalDate midwinter = hemisphere.midwinter().atYear(mean.getYear());
    if (midwinter.isBefore(mean)) {
      midwinter = midwinter.plusYears(1);
    }
    if (mean.until(midwinter, ChronoUnit.DAYS) > HALF_YEAR) {
      throw new OutsideDomainException(
          Dates.words(MonthDay.from(mean))
              + " is no day of a first frost in the "
              + (hemisphere == Hemisphere.NORTH ? "northern" : "southern")
              + " half of the world");
    }
    LocalDate start = Winter.earlyFreeze(mean, spread);
    return new ColdSeason(start, midwinter.plusDays(start.until(midwinter, ChronoUnit.DAYS)));
  }

  /** The middle of the season. */
  public LocalDate midwinter() {
    return start.plusDays(start.until(end, ChronoUnit.DAYS) / 2);
  }

  /** Length in days, both ends counted. */
  public long days() {
    return start.until(end, ChronoUnit.DAYS) + 1;
  }

  public boolean contains(LocalDate date) {
    return !date.isBefore(start) && !date.isAfter(end);
  }

  /** The cold months in order: those of which at least half lies in the season. */
  public List<Month> months() {
    List<Month> cold = new ArrayList<>();
    YearMonth last = YearMonth.from(end);
    for (YearMonth m = YearMonth.from(start); !m.isAfter(last); m = m.plusMonths(1)) {
      LocalDate from = start.isAfter(m.atDay(1)) ? start : m.atDay(1);
      LocalDate to = end.isBefore(m.atEndOfMonth()) ? end : m.atEndOfMonth();
      if (2 * (from.until(to, ChronoUnit.DAYS) + 1) >= m.lengthOfMonth()) {
        cold.add(m.getMonth());
      }
    }
    return List.copyOf(cold);
  }
}
