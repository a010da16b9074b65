package swineherd.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import swineherd.rulebook.Table;

/**
 * Live weight without a scale, from a tape round the chest and along the back.
 *
 * <p>Heart girth is read snug round the chest just behind the front legs; length runs along the
 * back from between the ears to the root of the tail. The pig stands square on its usual feed and
 * water, never after a journey or a fast. The formula suits ordinary meat pigs; for pregnant,
 * stunted, very fat or pot-bellied pigs use a scale. No dose and no withdrawal period rests on such
 * a weight.
 */
public final class TapeWeight {
  /**
   * kg per cubic metre: the exact metric form of inches squared times inches over 400 in pounds.
   */
  static final double FACTOR = 0.45359237 / (400 * 0.0254 * 0.0254 * 0.0254);

  /** The light-pig addition, its upper end and the stretch it fades over: 7 lb, 150 lb, 20 lb. */
  private static final double ADDITION = 7 * 0.45359237;

  private static final double NO_ADDITION_FROM = 150 * 0.45359237;
  private static final double FADE = 20 * 0.45359237;

  private static final int READINGS_OF_A_CAREFUL_TAPE = 3;

  private TapeWeight() {}

  /** What the pig is like, as far as a tape cares. */
  public enum PigType {
    /** Modern meat crosses, fed to appetite. */
    MODERN,
    /** Traditional meat pigs kept outdoors, lean for their length. */
    LEAN_OUTDOOR,
    /** Lard breeds, and any very fat pig. */
    LARD,
    /** Pot-bellied pigs and their crosses. */
    POT_BELLIED;

    private static final Set<String> ROUND = Set.of("pot-bellied", "kunekune");

    /** The type of a breed: which equation from girth alone may be used for it, if any. */
    public static PigType of(Breed breed) {
      if (ROUND.contains(breed.growthClass())) {
        return POT_BELLIED;
      }
      if (breed.type() == Breed.Type.LARD) {
        return LARD;
      }
      return breed.growthClass().equals("traditional") ? LEAN_OUTDOOR : MODERN;
    }

    /** Whether such pigs are so round that no tape was made for them: a scale is better. */
    public boolean needsScale() {
      return this == LARD || this == POT_BELLIED;
    }
  }

  /**
   * One measuring of one pig.
   *
   * @param girthM heart girth in metres, above zero
   * @param lengthM length from between the ears to the root of the tail in metres, above zero
   */
  public record Reading(double girthM, double lengthM) {
    /**
     * @throws OutsideDomainException if a measure is not between 0.2 and 2.5 m, which no pig within
     *     the formula's weights comes near
     */
    public Reading {
      plausible("heart girth in m", girthM);
      plausible("length in m", lengthM);
    }
  }

  /**
   * A weight from girth alone.
   *
   * @param kg live weight in kg
   * @param equations rows of the table {@code tape-equations} it came from, to be named with it
   */
  public record FromGirth(double kg, List<String> equations) {}

  /**
   * Live weight in kg from girth and length, with the light-pig addition.
   *
   * <p>Girth squared times length over 400 in inches and pounds (tape-rule). Under 150 lb some
   * keepers add 6 or 7 lb and some nothing (tape-rule-light, tape-rule); a step at 150 lb would
   * make a growing pig lose weight, so the addition fades out between 130 and 150 lb (our
   * judgement).
   *
   * <p>Example: 1.016 m round and 1.143 m long gives 81.6 kg.
   *
   * @throws OutsideDomainException if the weight is not within 20 to 140 kg
   */
  public static double kg(Reading reading) {
    double kg = withLightPigAddition(plain(reading, FACTOR));
    return OutsideDomainException.within(
        "live weight by tape in kg", kg, limit("tape-lightest"), limit("tape-heaviest"));
  }

  /** Without the addition; {@code factor} in kg per cubic metre. */
  static double plain(Reading reading, double factor) {
    return factor * reading.girthM * reading.girthM * reading.lengthM;
  }

  /** Strictly increasing in {@code plainKg}: the addition falls by 0.35 kg per kg. */
  static double withLightPigAddition(double plainKg) {
    double part = Math.min(1, Math.max(0, (NO_ADDITION_FROM - plainKg) / FADE));
    return plainKg + ADDITION * part;
  }

  /**
   * Live weight from girth alone, a second opinion: the Kansas State equation for modern crosses
   * (kansas-heart-girth); its mean with the Ugandan girth equation (tahp-2023-uganda) for lean
   * outdoor pigs, which is our judgement. The same girth of 1.016 m is 91 kg on one and 78 kg on
   * the other, so an equation fits only the pigs it was made on.
   *
   * @param girthM heart girth in metres
   * @throws OutsideDomainException for lard and pot-bellied pigs, for which no equation is known,
   *     and outside the weights an equation was made on
   */
  public static FromGirth fromGirth(double girthM, PigType type) {
    List<String> equations =
        switch (type) {
          case MODERN -> List.of("kansas");
          case LEAN_OUTDOOR -> List.of("kansas", "uganda-girth");
          case LARD, POT_BELLIED ->
              throw new OutsideDomainException(
                  "no equation from girth is known for lard and pot-bellied pigs: use a scale");
        };
    TapeEquation.Measures girth = TapeEquation.Measures.girth(girthM);
    double sum = 0;
    for (String equation : equations) {
      sum += TapeEquation.named(equation).kg(girth);
    }
    return new FromGirth(sum / equations.size(), equations);
  }

  /**
   * Relative error of a weight from girth and length, as one standard deviation, a share of it.
   * Girth counts twice because it is squared.
   *
   * @param girthErrorM standard deviation of the girth in metres
   * @param lengthErrorM standard deviation of the length in metres
   * @param shape spread of body shape between pigs of the same girth and length, a share; 0 for the
   *     measuring part alone
   */
  public static double relativeError(
      Reading reading, double girthErrorM, double lengthErrorM, double shape) {
    double girthPart = 2 * girthErrorM / reading.girthM;
    double lengthPart = lengthErrorM / reading.lengthM;
    return Math.sqrt(girthPart * girthPart + lengthPart * lengthPart + shape * shape);
  }

  /**
   * Several measurings of one pig made within the hour, as a band in kg that holds the true weight
   * eight times in ten. The middle is the weight from the mean girth and the mean length.
   *
   * <p>The error is the usual one of a tape (0.05 from three readings on, 0.10 with fewer), or more
   * if the readings themselves lie further apart than that allows.
   *
   * @throws IllegalArgumentException if there is no reading
   * @throws OutsideDomainException as {@link #kg}
   */
  public static Band combined(List<Reading> readings) {
    if (readings.isEmpty()) {
      throw new IllegalArgumentException("a weight by tape needs at least one reading");
    }
    int n = readings.size();
    double[] girths = readings.stream().mapToDouble(Reading::girthM).toArray();
    double[] lengths = readings.stream().mapToDouble(Reading::lengthM).toArray();
    Reading mean = new Reading(mean(girths), mean(lengths));
    String usual = n >= READINGS_OF_A_CAREFUL_TAPE ? "tape" : "tape-once";
    double error = usualError(usual);
    if (n > 1) {
      double seen =
          relativeError(mean, errorOfMean(girths), errorOfMean(lengths), limit("tape-shape"));
      error = Math.max(error, seen);
    }
    double kg = kg(mean);
    double reach = Math.min(1, Normal.Z80 * error) * kg;
    return new Band(kg - reach, kg, kg + reach);
  }

  /**
   * A weight by tape, with how far it can be out.
   *
   * @param kg live weight in kg
   * @param error standard deviation as a share of the weight
   * @param equations rows of {@code tape-equations}, where girth alone was measured; empty where
   *     girth and length were
   */
  public record Taped(double kg, double error, List<String> equations) {
    /** The weight in kg as a band that holds the true one eight times in ten. */
    public Band band() {
      double reach = Math.min(1, Normal.Z80 * error) * kg;
      return new Band(kg - reach, kg, kg + reach);
    }
  }

  /**
   * The weight of one pig from whatever was measured within the hour: girths and lengths as {@link
   * #combined}; girths alone by {@link #fromGirth}, however often no surer than one reading of both
   * (our judgement: the same girth is 91 kg on one pig and 72 on another). For lard and pot-bellied
   * pigs, for which the formula was not made, it counts for no more than a guess by eye (our
   * judgement).
   *
   * @param girthsM heart girths in m, at least one
   * @param lengthsM lengths in m; none, or one for each girth, or any number, whose mean counts
   * @throws IllegalArgumentException if there is no girth
   * @throws OutsideDomainException as {@link #kg} and {@link #fromGirth}
   */
  public static Taped of(List<Double> girthsM, List<Double> lengthsM, PigType type) {
    if (girthsM.isEmpty()) {
      throw new IllegalArgumentException("a weight by tape needs at least one girth");
    }
    if (lengthsM.isEmpty()) {
      double[] girths = girthsM.stream().mapToDouble(g -> g).toArray();
      double mean = mean(girths);
      FromGirth alone = fromGirth(plausible("heart girth in m", mean), type);
      double seen = girths.length < 2 ? 0 : 2 * errorOfMean(girths) / mean;
      return new Taped(alone.kg, Math.max(usualError("girth-alone"), seen), alone.equations);
    }
    double length = mean(lengthsM.stream().mapToDouble(l -> l).toArray());
    boolean paired = lengthsM.size() == girthsM.size();
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < girthsM.size(); i++) {
      readings.add(new Reading(girthsM.get(i), paired ? lengthsM.get(i) : length));
    }
    Band band = combined(readings);
    double error = (band.high() / band.likely() - 1) / Normal.Z80;
    return new Taped(
        band.likely(), type.needsScale() ? Math.max(error, usualError("guess")) : error, List.of());
  }

  private static double usualError(String means) {
    return Table.named("weighing").row(means).number("error");
  }

  private static double mean(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum / values.length;
  }

  private static double errorOfMean(double[] values) {
    double mean = mean(values);
    double squares = 0;
    for (double value : values) {
      squares += (value - mean) * (value - mean);
    }
    return Math.sqrt(squares / (values.length - 1) / values.length);
  }

  private static double plausible(String measure, double metres) {
    return OutsideDomainException.within(measure, metres, 0.2, 2.5);
  }

  private static double limit(String key) {
    return Table.named("weight-limits").row(key).number("limit");
  }
}
