package swineherd.figures;

import java.util.function.DoubleUnaryOperator;

/**
 * Courses of weights for the feed tests, written out here so that they hang on no other figure:
 * Gompertz curves W(t) = A exp(-ln(A/W0) exp(-bt)), fitted to gilts in Shull, thesis, University of
 * Illinois (2013) (A 230 kg, b 0.0126 a day [read]) and slowed to 0.86 of it for hand-fed pigs
 * outdoors (common practice).
 */
final class Courses {
  static final double HOME = 0.86;

  private Courses() {}

  /** Mornings from one weight to the first at or above another. */
  static double[] gompertz(double a, double b, double fromKg, double toKg) {
    DoubleUnaryOperator weight = t -> a * Math.exp(-Math.log(a / fromKg) * Math.exp(-b * t));
    double days = Math.log(Math.log(a / fromKg) / Math.log(a / toKg)) / b;
    return FeedIntake.mornings(weight, (int) Math.ceil(days));
  }

  static double[] modern(double pace, double fromKg, double toKg) {
    return gompertz(230, 0.0126 * pace, fromKg, toKg);
  }
}
