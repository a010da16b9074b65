package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * How pigs that stood without water get it back. Water all at once after a long dry spell swells
 * the brain (salt poisoning) and kills.
 */
public final class WaterLost {
  private WaterLost() {}

  /** Mildest first. */
  public enum Action {
    /** Water back at once; stay and watch. */
    RESTORE,
    /** Water back by turns and in small lots; stay; the vet at any odd sign. */
    RESTORE_IN_STAGES,
    /** Ring the vet first; meanwhile only {@link #litresPerHour} for each pig. */
    VET_NOW_AND_RATION
  }

  /**
   * What to do, by table {@code water-lost}: under 12 hours water back; from 24 hours, or from 12
   * in heat, or with any nervous sign, the vet first. Some texts ration only after more than 24
   * hours; the earlier line is kept. Between 12 and 24 hours in cool air, where texts leave a gap,
   * in stages. A judgement within published bounds.
   *
   * @param hoursDry hours without water; null if unknown, which counts as long
   * @param airC warmest air of those hours, degC; null if unknown, which counts as hot
   * @param nervousSigns blind, wandering, head pressed or jerking back, sitting like a dog, fits
   * @throws OutsideDomainException if the hours are negative or no number, or the air is outside
   *     -60 to 60 degC
   */
  public static Action action(Double hoursDry, Double airC, boolean nervousSigns) {
    if (nervousSigns || hoursDry == null) {
      return Action.VET_NOW_AND_RATION;
    }
    double hours = OutsideDomainException.within("hours without water", hoursDry, 0, 1000);
    boolean hot =
        airC == null
            || OutsideDomainException.within("air temperature in degC", airC, -60, 60)
                > limit("hot-above");
    if (hours >= limit(hot ? "vet-from-hot" : "vet-from")) {
      return Action.VET_NOW_AND_RATION;
    }
    return hours < limit("bright-below") ? Action.RESTORE : Action.RESTORE_IN_STAGES;
  }

  /**
   * Water for one pig in each hour of a slow return: half a per cent of its weight ({@code
   * merck-veterinary-manual}, from memory; the vet may say otherwise).
   *
   * @param liveWeightKg live weight, kg
   * @return litres an hour
   * @throws OutsideDomainException outside 1 to 400 kg
   */
  public static double litresPerHour(double liveWeightKg) {
    double weight = OutsideDomainException.within("live weight in kg", liveWeightKg, 1, 400);
    return weight * limit("ration") / 100;
  }

  private static double limit(String key) {
    return Table.named("water-lost").row(key).number("value");
  }
}
