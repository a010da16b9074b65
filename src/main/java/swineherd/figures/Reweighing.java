package swineherd.figures;

import java.util.OptionalDouble;

/**
 * What a later weight says: the rate that was seen is joined with the rate that was expected, each
 * counting by how exact it is, and the forecast starts again from the later weight.
 *
 * @param before the forecast until then
 * @param after the forecast from then on
 * @param later the weight
 * @param observedRate rate between the two weights, 1/day; empty if they say nothing about it yet
 * @param lagging whether growth is so slow that feed, protein, water, worms, heat, cold and illness
 *     should be looked into
 */
public record Reweighing(
    Forecast before,
    Forecast after,
    KnownWeight later,
    OptionalDouble observedRate,
    boolean lagging) {

  /** The new rate over the old one: 1 is as expected. */
  public double rateRatio() {
    return after.growth().ratePerDay() / before.growth().ratePerDay();
  }

  /** Whether the later weight is the lower one: a matter for a vet unless a guess was wrong. */
  public boolean lighter() {
    return later.kg() < before.start().kg();
  }

  /**
   * The weights say something about the rate only if they are at least 14 days apart and the gain
   * is at least three weighing errors. If they do not, the rate is left as it was; the forecast
   * still starts from the later weight if that is the more exact one, or if the pigs lag.
   *
   * @throws OutsideDomainException if the weight is not after the start, or outside what the curve
   *     is used for
   */
  static Reweighing of(Forecast before, KnownWeight later) {
    Growth growth = before.growth();
    KnownWeight first = before.start();
    growth.inRange("later weight in kg", later.kg());
    double days =
        OutsideDomainException.within(
            "days of growth between two weighings",
            before.daysUntil(later.on()),
            1,
            Growth.LONGEST_DAYS);
    double lagging = GrowthFactors.likely("lagging-below");
    boolean longEnough = days >= GrowthFactors.likely("reweigh-after");
    double gain = later.kg() - first.kg();

    if (longEnough && gain >= GrowthFactors.likely("reweigh-gain") * later.error() * later.kg()) {
      double observed = growth.curveDays(first.kg(), later.kg()) * growth.ratePerDay() / days;
      double observedSigma =
          Math.hypot(
                  first.error() / growth.logToGo(first.kg()),
                  later.error() / growth.logToGo(later.kg()))
              / (observed * days);
      double trustBefore = 1 / (before.sigma() * before.sigma());
      double trustObserved = 1 / (observedSigma * observedSigma);
      double logRate =
          (Math.log(growth.ratePerDay()) * trustBefore + Math.log(observed) * trustObserved)
              / (trustBefore + trustObserved);
      Growth learned = growth.withRate(Math.exp(logRate));
      // Two rates that disagree by more than their errors say that the errors were too small: the
      // error grows as in a Birge ratio, from the edge of the eight in ten on (judgement).
      double apart =
          Math.abs(Math.log(observed / growth.ratePerDay()))
              / Math.hypot(before.sigma(), observedSigma);
      double wider = Math.max(1, apart / Normal.Z80);
      // However often pigs are weighed, feed and season ahead are not known better than this.
      double sigma =
          Math.max(
              wider * Math.sqrt(1 / (trustBefore + trustObserved)),
              Math.min(before.sigma(), GrowthFactors.likely("setting-measured")));
      return new Reweighing(
          before,
          new Forecast(learned, sigma, later, 0),
          later,
          OptionalDouble.of(observed),
          learned.ratePerDay() < lagging * growth.ratePerDay());
    }

    double slow = growth.withRate(lagging * growth.ratePerDay()).curve(first.kg(), days);
    boolean lags = longEnough && later.kg() < slow * (1 - Math.hypot(first.error(), later.error()));
    boolean afresh = lags || later.error() < first.error();
    return new Reweighing(
        before,
        afresh ? new Forecast(growth, before.sigma(), later, 0) : before,
        later,
        OptionalDouble.empty(),
        lags);
  }
}
