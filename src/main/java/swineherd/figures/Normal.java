package swineherd.figures;

/** The normal distribution, as far as the bands need it. */
final class Normal {
  /** Deviations from the middle to the 90th percentile: eight in ten cases lie within them. */
  static final double Z80 = 1.2816;

  private Normal() {}

  /**
   * Chance that a standard normal value is at most {@code z}; right to 1e-7 (Abramowitz and Stegun,
   * Handbook of Mathematical Functions, 26.2.17).
   */
  static double cumulative(double z) {
    double t = 1 / (1 + 0.2316419 * Math.abs(z));
    double series =
        t
            * (0.319381530
                + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
    double tail = Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * series;
    return z < 0 ? tail : 1 - tail;
  }
}
