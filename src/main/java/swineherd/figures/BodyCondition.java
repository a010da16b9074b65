package swineherd.figures;

import java.util.Locale;
import swineherd.rulebook.Table;

/** Body condition from 1 (emaciated) to 5 (overfat), by the hand over hips and backbone. */
public final class BodyCondition {
  private BodyCondition() {}

  /** How the bones of hips and back show. */
  public enum Bones {
    SEEN,
    EASILY_FELT,
    FELT_WITHOUT_PRESSURE,
    FELT_WITH_FIRM_PALM,
    FELT_WITH_DIFFICULTY,
    NOT_FELT,
    DEEPLY_COVERED
  }

  /** How soon something must be done. */
  public enum Verdict {
    /** Emaciated: a vet the same day. */
    SAME_DAY,
    /** Thin: vet, worms and feed within the week. */
    THIS_WEEK,
    /** Leaner than the target of growers and finishers. */
    LEAN,
    ON_TARGET,
    /** Fatter than the target: feed. */
    FAT
  }

  /** Score, without unit, 1 to 5 in halves ({@code porcine-health-management-2019-condition}). */
  public static double score(Bones bones) {
    return Table.named("body-condition")
        .row(bones.name().toLowerCase(Locale.ROOT).replace('_', '-'))
        .number("score");
  }

  /**
   * A judgement for pigs raised for meat: growers at 3, finishers at 3 to 3.5.
   *
   * @param score 1 to 5
   * @throws OutsideDomainException outside 1 to 5
   */
  public static Verdict verdict(double score) {
    double s = OutsideDomainException.within("body condition score", score, 1, 5);
    if (s < 1.5) {
      return Verdict.SAME_DAY;
    }
    if (s <= 2) {
      return Verdict.THIS_WEEK;
    }
    if (s < 3) {
      return Verdict.LEAN;
    }
    return s <= 3.5 ? Verdict.ON_TARGET : Verdict.FAT;
  }
}
