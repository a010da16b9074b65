package swineherd.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/**
 * How cold the nights are from the first hard frost to midwinter and back: a wave of a year through
 * the two points that are known. On the usual day of the first hard frost such a night is -2.2 degC
 * by the meaning of the word ({@code nws-frost}), and at midwinter it is coldest. That the air
 * follows a wave in between is this project's judgement; it stays within 3 degrees of station
 * normals, on the cold side.
 *
 * @param usualFrost usual day of the first hard frost of that winter
 * @param midwinter the coldest time, at most half a year later
 * @param coldest degC of such a night at midwinter: of an ordinary cold week, or the worst of the
 *     year
 */
public record WinterNights(LocalDate usualFrost, LocalDate midwinter, double coldest) {
  private static final double HARD_FROST = -2.2;
  private static final double YEAR = 365.25;

  /** Nearer to midwinter than this the two points say too little about the wave. */
  private static final double NEAREST = 30;

  /**
   * @throws OutsideDomainException if midwinter is not 0 to 183 days after the frost, or the
   *     temperature not -75 to 30 degC
   */
  public WinterNights {
    OutsideDomainException.within(
        "days from the first hard frost to midwinter",
        (double) ChronoUnit.DAYS.between(usualFrost, midwinter),
        0,
        183);
    OutsideDomainException.within("coldest night in degC", coldest, -75, 30);
  }

  /**
   * Nights of an ordinary cold week.
   *
   * @param spread standard deviation of the day of the first hard frost, in days, 0 to 40
   * @param monthlyMinimum mean daily minimum of the coldest month, degC
   * @throws OutsideDomainException outside those
   */
  public static WinterNights ofColdWeeks(ColdSeason season, double spread, double monthlyMinimum) {
    return of(season, spread, monthlyMinimum - Warmth.term("cold-week"));
  }

  /**
   * The worst nights.
   *
   * @param spread standard deviation of the day of the first hard frost, in days, 0 to 40
   * @param worstNight mean lowest temperature of the year, degC
   * @throws OutsideDomainException outside those
   */
  public static WinterNights ofWorst(ColdSeason season, double spread, double worstNight) {
    return of(season, spread, worstNight);
  }

  private static WinterNights of(ColdSeason season, double spread, double coldest) {
    return new WinterNights(
        Winter.usualFreeze(season.start(), spread), season.midwinter(), coldest);
  }

  /**
   * Air temperature of such a night, degC. Where the winter is so mild that midwinter is no colder
   * than a hard frost, always that of the frost.
   *
   * @param day within half a year of midwinter
   */
  public double on(LocalDate day) {
    double edge = wave(Math.max(NEAREST, daysToMidwinter(usualFrost)));
    double share = (wave(daysToMidwinter(day)) - edge) / (1 - edge);
    return HARD_FROST + share * Math.min(0, coldest - HARD_FROST);
  }

  private double daysToMidwinter(LocalDate day) {
    return (double) ChronoUnit.DAYS.between(day, midwinter);
  }

  private static double wave(double days) {
    return Math.cos(2 * Math.PI * days / YEAR);
  }
}
