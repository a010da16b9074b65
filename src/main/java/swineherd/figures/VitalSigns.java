package swineherd.figures;

import java.util.Locale;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * What a pig's temperature and breathing say about how soon the vet is needed (table {@code
 * vital-signs}). Taken at rest and out of the heat; a chase or a hot day raises both, so that a
 * doubtful value is taken again after 20 minutes.
 */
public final class VitalSigns {
  private VitalSigns() {}

  /** Kind of pig; each has its own normal values. */
  public enum Kind {
    /** Not yet weaned. */
    PIGLET,
    /** From weaner to slaughter pig. */
    GROWER,
    /** Gilt or young sow of breeding age. */
    GILT,
    SOW,
    /** Runs 1.7 degC cooler than a farm grower: a farm table would call a healthy one dying. */
    POT_BELLIED;

    private Table.Row row() {
      return Table.named("vital-signs").row(name().toLowerCase(Locale.ROOT).replace('_', '-'));
    }
  }

  /** Mildest first. */
  public enum Verdict {
    NORMAL,
    /** Outside the usual spread, no alarm: rest the pig 20 minutes, take it again, watch. */
    RETAKE,
    /** A vet the same day. */
    SAME_DAY,
    /** A vet now. */
    EMERGENCY
  }

  /** Mean rectal temperature of the kind at rest, degC. */
  public static double normal(Kind kind) {
    return kind.row().number("mean_c");
  }

  /**
   * Fever from 40.0 degC (same day) and 41.0 (emergency), chill below 38.0 in a grower: a
   * judgement.
   *
   * @param rectalC rectal temperature, degC
   * @throws OutsideDomainException outside 30 to 45 degC, where the thermometer is at fault
   */
  public static Verdict temperature(Kind kind, double rectalC) {
    double t = OutsideDomainException.within("rectal temperature in degC", rectalC, 30, 45);
    Table.Row row = kind.row();
    if (t >= row.number("fever_emergency_c") || t < row.number("cold_emergency_c")) {
      return Verdict.EMERGENCY;
    }
    if (t >= row.number("fever_same_day_c")) {
      return Verdict.SAME_DAY;
    }
    // A hair of tolerance, so that 39.6 counts as 39.3 + 0.3.
    return Math.abs(t - row.number("mean_c")) <= row.number("spread_c") + 1e-9
        ? Verdict.NORMAL
        : Verdict.RETAKE;
  }

  /**
   * Breathing at rest. In warm air a fast rate alone is a pig getting rid of heat: it is cooled and
   * counted again, unless it pants with open mouth or beyond the emergency rate.
   *
   * @param breathsPerMinute breaths a minute
   * @param openMouth breathes with open mouth
   * @param coolAir whether the air is cool
   * @throws OutsideDomainException if the rate is outside 1 to 300, or no normal rate is published
   *     for the kind and the rate is no emergency
   */
  public static Verdict breathing(
      Kind kind, double breathsPerMinute, boolean openMouth, boolean coolAir) {
    double rate = OutsideDomainException.within("breaths a minute", breathsPerMinute, 1, 300);
    Table.Row row = kind.row();
    if (openMouth || rate > row.number("breaths_emergency_over")) {
      return Verdict.EMERGENCY;
    }
    OptionalDouble low = row.maybe("breaths_low");
    if (low.isEmpty()) {
      throw new OutsideDomainException("no normal breathing rate is published for " + row.key());
    }
    if (coolAir && rate > row.number("breaths_abnormal_over")) {
      return Verdict.SAME_DAY;
    }
    return rate >= low.getAsDouble() && rate <= row.number("breaths_high")
        ? Verdict.NORMAL
        : Verdict.RETAKE;
  }
}
