package swineherd.figures;

/**
 * What an electric fence must keep to so that it hurts nobody: iec-60335-2-76 with its annex BB,
 * and practice where that leaves it open. Limits: {@code fence-safety.csv}. The law of the place,
 * the standard as it stands now and the label come first.
 */
public final class FenceSafety {
  private FenceSafety() {}

  /**
   * Whether an impulse is within the standard: at most 5 J into 500 ohm.
   *
   * @param joules output energy, 0 or more
   * @throws OutsideDomainException if it is negative or above 100,000
   */
  public static boolean energyAllowed(double joules) {
    return notNegative("output energy in J", joules) <= FenceNumbers.safety("energy");
  }

  /**
   * Whether the rhythm is within the standard: impulses at least 1 s apart and at most 10 ms long
   * (the length cited from memory).
   *
   * @param interval between impulses in s
   * @param length of an impulse in s
   * @throws OutsideDomainException if one is negative or above 100,000
   */
  public static boolean rhythmAllowed(double interval, double length) {
    return notNegative("interval in s", interval) >= FenceNumbers.safety("interval")
        && notNegative("impulse in s", length) <= FenceNumbers.safety("impulse");
  }

  /**
   * Whether wires of two different energizers, the neighbour's too, are far enough apart that
   * nobody touches both: 2.5 m. An older leaflet says 2 m; the larger is used.
   *
   * @param metres between the nearest wires
   * @throws OutsideDomainException if it is negative or above 100,000
   */
  public static boolean fencesFarEnough(double metres) {
    return notNegative("distance in m", metres) >= FenceNumbers.safety("fences-apart");
  }

  /**
   * Whether a live wire is far enough from barbed wire, which is never live itself: 15 cm.
   *
   * @param metres between them
   * @throws OutsideDomainException if it is negative or above 100,000
   */
  public static boolean clearOfBarbedWire(double metres) {
    return notNegative("distance in m", metres) >= FenceNumbers.safety("barbed-apart");
  }

  /**
   * Whether the fence's earth is far enough from any other earth, of the house, the mains or a
   * telephone: 10 m.
   *
   * @param metres between the nearest rods
   * @throws OutsideDomainException if it is negative or above 100,000
   */
  public static boolean earthFarEnough(double metres) {
    return notNegative("distance in m", metres) >= FenceNumbers.safety("earth-apart");
  }

  /**
   * Least distance in m to a power line above. Fences cross under it, at right angles, and are no
   * higher than {@link #heightNearPowerLine} there.
   *
   * @param volts of the power line, 1 to 1,000,000 V
   * @throws OutsideDomainException if they lie outside
   */
  public static double powerLineClearance(double volts) {
    OutsideDomainException.within("power line in V", volts, 1, 1_000_000);
    if (volts <= 1_000) {
      return FenceNumbers.safety("power-line-1kv");
    }
    return FenceNumbers.safety(volts <= 33_000 ? "power-line-33kv" : "power-line-over");
  }

  /** Highest fence in m near a power line. */
  public static double heightNearPowerLine() {
    return FenceNumbers.safety("height-near-line");
  }

  /**
   * Whether a warning sign is large enough: 100 by 200 mm, letters of 25 mm. It is also yellow on
   * both sides with black text or sign.
   *
   * @param oneSide m
   * @param otherSide m
   * @param letters height of the letters in m
   * @throws OutsideDomainException if one is negative or above 100,000
   */
  public static boolean signLargeEnough(double oneSide, double otherSide, double letters) {
    double shorter = notNegative("sign in m", Math.min(oneSide, otherSide));
    double longer = notNegative("sign in m", Math.max(oneSide, otherSide));
    return shorter >= FenceNumbers.safety("sign-short")
        && longer >= FenceNumbers.safety("sign-long")
        && notNegative("letters in m", letters) >= FenceNumbers.safety("sign-text");
  }

  /**
   * Signs along a public road or path, one at each end: 50 m apart, by judgement, because trade
   * codes and countries say 50 to 100 m. Gates, corners and crossings need theirs besides.
   *
   * @param metres of fence along it, 0 to 20,000
   * @throws OutsideDomainException if it lies outside
   */
  public static int signs(double metres) {
    OutsideDomainException.within("fence along the road in m", metres, 0, 20_000);
    return (int) Math.ceil(metres / FenceNumbers.safety("signs-apart")) + 1;
  }

  private static double notNegative(String quantity, double value) {
    return OutsideDomainException.within(quantity, value, 0, 100_000);
  }
}
