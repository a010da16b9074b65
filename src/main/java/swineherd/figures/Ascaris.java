package swineherd.figures;

import java.util.OptionalInt;

/** How soon eggs of the large roundworm in dung become able to infect. */
public final class Ascaris {
  /** degC; at or below it eggs wait and do not develop. */
  public static final double NO_DEVELOPMENT_C = 14.5;

  private static final double COLDEST_FITTED_C = 16;

  /** degC; the warmest for which times are published. */
  public static final double WARMEST_C = 33;

  private static final int SHORTEST_DAYS = 12;

  private Ascaris() {}

  /**
   * Earliest plausible number of days from dung to infective egg: 200 / (T - 14.5), never under 12.
   * A judgement on the safe side of the published times: none below 14.5 degC ({@code
   * parasites-vectors-2016-ascaris-organic}), 11-12 weeks at 17 ({@code
   * saskatchewan-ascaris-barn}), 4-6 weeks on summer pasture ({@code ijp-1997-continuous-pasture}),
   * 13-18 days at 30-33 ({@code upenn-ascarids}). Fitted from 16 degC; between 14.5 and 16 the days
   * at 16 are given, as colder eggs cannot be sooner. At 17 it gives 80 days, inside the 77-84
   * published and not before them.
   *
   * @param meanC mean temperature of soil or bedding over the time, degC
   * @return nothing if no egg develops
   * @throws OutsideDomainException above 33 or below -40 degC
   */
  public static OptionalInt daysToInfective(double meanC) {
    double t =
        OutsideDomainException.within("soil or bedding temperature in degC", meanC, -40, WARMEST_C);
    if (t <= NO_DEVELOPMENT_C) {
      return OptionalInt.empty();
    }
    long days = Math.round(200 / (Math.max(t, COLDEST_FITTED_C) - NO_DEVELOPMENT_C));
    return OptionalInt.of((int) Math.max(SHORTEST_DAYS, days));
  }
}
