package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Feed for one pig over a stretch of days, waste counted.
 *
 * @param fromKg live weight in kg on the first morning
 * @param toKg live weight in kg on the morning after the last day
 * @param days whole days
 * @param kg feed in kg
 */
public record FeedUse(double fromKg, double toKg, int days, double kg) {

  /** Live weight put on, kg; negative if the pig lost weight. */
  public double gain() {
    return toKg - fromKg;
  }

  /** Feed in kg a day; 0 for a stretch of no days. */
  public double perDay() {
    return days == 0 ? 0 : kg / days;
  }

  /**
   * Feed conversion: kg feed for each kg of gain.
   *
   * @throws OutsideDomainException if nothing was gained
   */
  public double conversion() {
    if (!(gain() > 0)) {
      throw new OutsideDomainException("feed conversion needs a gain, not " + gain() + " kg");
    }
    return kg / gain();
  }

  /**
   * What the feed may come to, kg: what breed, weather and waste can change is mostly upwards.
   *
   * @return a tenth less to a quarter more (rows band-below, band-above of {@code feed-factors}; a
   *     judgement, not percentiles of a study)
   */
  public Band band() {
    Table factors = Table.named("feed-factors");
    return new Band(
        kg * (1 - factors.row("band-below").number("value")),
        kg,
        kg * (1 + factors.row("band-above").number("value")));
  }

  /** The feed with the reserve that a keeper should plan for, kg. */
  public double withReserve() {
    return kg * (1 + Table.named("feed-factors").row("reserve").number("value"));
  }
}
