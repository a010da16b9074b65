package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * How pigs that stood without water get it back (table {@code water-outage}). Feed salt that does
 * no harm beside free water poisons once it is cut, and drinking their fill at once makes it worse.
 */
public final class WaterLost {
  private WaterLost() {}

  /** How the pigs look. */
  public enum Look {
    BRIGHT,
    /** Dull or off feed; also where nobody has looked, since that never counts as good news. */
    DULL_OR_UNSEEN,
    /** Blind, pressing the head, twitching, sitting like a dog, jerking or in fits. */
    NERVOUS
  }

  /** What to do, mildest first. */
  public enum Action {
    /** Give it back, let them drink in turns, stay and watch. */
    WATCH,
    /** Ask a vet the same day; give it back little by little until the answer. */
    IN_STEPS,
    /** A vet at once, before the water is opened; little by little while waiting. */
    VET_FIRST
  }

  /**
   * What to do when the water has failed: the vet first from 24 hours, from 12 in heat ({@code
   * aasv-salt-2023}: severe after more than 24 hours, sooner in heat), or with any nervous sign.
   * For the hours between watching and the vet no source has a rule: little by little is a
   * judgement, on the careful side.
   *
   * @param hours since they last could drink, 0 or more; null if unknown, which counts as long
   * @param air highest air temperature in that time, °C; null if unknown, which counts as hot
   * @param look how they look; null counts as unseen
   * @throws OutsideDomainException if hours are negative or a value is not a number
   */
  public static Action action(Double hours, Double air, Look look) {
    if (hours == null || look == Look.NERVOUS) {
      return Action.VET_FIRST;
    }
    double dry = OutsideDomainException.within("hours without water", hours, 0, 10_000);
    boolean hot =
        air == null
            || OutsideDomainException.within("air temperature in °C", air, -60, 60)
                > limit("heat-above");
    if (dry >= limit(hot ? "vet-from-in-heat" : "vet-from")) {
      return Action.VET_FIRST;
    }
    return look == Look.BRIGHT && dry < limit("watch-below") ? Action.WATCH : Action.IN_STEPS;
  }

  /**
   * The pace at which water may be given back while the vet is on the way: 0.5 % of live weight an
   * hour ({@code merck-salt}, from memory).
   *
   * @param weight live weight in kg, 5 to 140
   * @return L an hour for each pig
   * @throws OutsideDomainException for a weight outside 5 to 140 kg
   */
  public static double litresPerHour(double weight) {
    return limit("return-per-hour")
        * OutsideDomainException.within("live weight in kg", weight, 5, 140);
  }

  private static double limit(String key) {
    return Table.named("water-outage").row(key).number("value");
  }
}
