package swineherd.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * Boar taint: how likely the meat of a male smells when it is heated, and what waiting or a vaccine
 * does about it.
 *
 * <p>No figure here ever says that an entire male is free of taint: 8 in 100 boars of 75 kg were
 * over the usual androstenone limit (table {@code taint-surveys}). Weight and age predict it badly;
 * a heated trim of fat decides.
 */
public final class Taint {
  private Taint() {}

  /** What a pig is, as far as taint goes. */
  public enum Sex {
    /** A male with a testis, also a hidden one; a male not known to be castrated counts here. */
    ENTIRE,
    /** Castrated before puberty, or for so long that {@link #clearedOn} has passed. */
    CASTRATE,
    FEMALE
  }

  /** Likelihood of taint, lowest first. {@link #NONE} is never given to an entire male. */
  public enum RiskClass {
    NONE,
    LOW,
    MODERATE,
    HIGH,
    VERY_HIGH;

    /** The key of this class in tables and texts: {@code very-high}. */
    public String key() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private RiskClass raised() {
      return switch (this) {
        case NONE -> LOW;
        case LOW -> MODERATE;
        case MODERATE -> HIGH;
        case HIGH, VERY_HIGH -> VERY_HIGH;
      };
    }
  }

  /**
   * @param riskClass the class
   * @param atLeast whether the age or the weight was unknown, so that the class may be higher
   */
  public record Risk(RiskClass riskClass, boolean atLeast) {}

  /**
   * A pig at slaughter.
   *
   * @param ageDays age in days; null if unknown
   * @param liveWeightKg live weight in kg; null if unknown
   * @param earlyMaturing Meishan, pot-bellied, Kunekune or their crosses
   * @param hotDirtyLying lies hot, wet or in dung
   * @param maturedOrMated used for mating, or grown to a mature boar
   */
  public record Pig(
      Sex sex,
      Double ageDays,
      Double liveWeightKg,
      boolean earlyMaturing,
      boolean hotDirtyLying,
      boolean maturedOrMated) {}

  /**
   * The class of a pig: of an entire male the worse of its age class and its weight class (table
   * {@code taint-classes}), raised once for an early breed or a hot dirty bed. Females and early
   * castrates have none, or a low one from filth alone.
   *
   * <p>A judgement between published surveys.
   *
   * @throws OutsideDomainException if an age or weight is negative or no number
   * @throws IllegalArgumentException if neither age nor weight of an entire male is known, unless
   *     it has matured
   */
  public static Risk risk(Pig pig) {
    if (pig.sex() != Sex.ENTIRE) {
      return new Risk(pig.hotDirtyLying() ? RiskClass.LOW : RiskClass.NONE, false);
    }
    if (pig.maturedOrMated()) {
      return new Risk(RiskClass.VERY_HIGH, false);
    }
    if (pig.ageDays() == null && pig.liveWeightKg() == null) {
      throw new IllegalArgumentException("the age or the live weight of the pig must be known");
    }
    RiskClass worst = RiskClass.LOW;
    if (pig.ageDays() != null) {
      worst =
          reached(
              "from_age_d", OutsideDomainException.within("age in days", pig.ageDays(), 0, 5000));
    }
    if (pig.liveWeightKg() != null) {
      double weight =
          OutsideDomainException.within("live weight in kg", pig.liveWeightKg(), 0, 500);
      RiskClass byWeight = reached("from_weight_kg", weight);
      worst = byWeight.compareTo(worst) > 0 ? byWeight : worst;
    }
    if (pig.earlyMaturing() || pig.hotDirtyLying()) {
      worst = worst.raised();
    }
    boolean mayBeWorse = pig.ageDays() == null || pig.liveWeightKg() == null;
    return new Risk(worst, mayBeWorse && worst != RiskClass.VERY_HIGH);
  }

  private static RiskClass reached(String column, double value) {
    RiskClass reached = RiskClass.LOW;
    for (RiskClass c : RiskClass.values()) {
      if (c != RiskClass.NONE) {
        OptionalDouble from = Table.named("taint-classes").row(c.key()).maybe(column);
        if (from.isPresent() && value >= from.getAsDouble()) {
          reached = c;
        }
      }
    }
    return reached;
  }

  /**
   * The survey that stands behind a class: shares of entire males over the limits, in per cent,
   * with its source (a row of {@code taint-surveys}). Nothing for classes without one.
   */
  public static Optional<Table.Row> survey(RiskClass riskClass) {
    if (riskClass == RiskClass.NONE) {
      return Optional.empty();
    }
    String survey = Table.named("taint-classes").row(riskClass.key()).text("survey");
    return survey.isEmpty()
        ? Optional.empty()
        : Optional.of(Table.named("taint-surveys").row(survey));
  }

  /**
   * The survey of a class, or of the class beside it where it has none: what is published nearest.
   *
   * @throws IllegalArgumentException for {@link RiskClass#NONE}
   */
  public static Table.Row nearestSurvey(RiskClass riskClass) {
    return survey(riskClass)
        .or(() -> survey(riskClass == RiskClass.LOW ? RiskClass.MODERATE : RiskClass.HIGH))
        .filter(survey -> riskClass != RiskClass.NONE)
        .orElseThrow(() -> new IllegalArgumentException("no survey of pigs without testes"));
  }

  /**
   * Chance, 0 to 1, that the carcass of an entire male of a class is over one of the limits:
   * derived from the survey of the class where it has one, otherwise a judgement.
   *
   * @return 0 for {@link RiskClass#NONE}
   */
  public static double chance(RiskClass riskClass) {
    return riskClass == RiskClass.NONE
        ? 0
        : Table.named("taint-classes").row(riskClass.key()).number("chance");
  }

  /** What a laboratory's two numbers mean. */
  public enum FatReading {
    /** Under both of the stricter limits; about 2 in 100 still disliked such meat. */
    UNDER_LIMITS,
    /** Over a stricter limit and under the usual ones. */
    POSSIBLE,
    TAINTED
  }

  /**
   * Reads a laboratory's result by table {@code taint-limits}.
   *
   * @param androstenonePpm micrograms in a gram of fat
   * @param skatolePpm micrograms in a gram of fat
   * @throws OutsideDomainException if one is negative or no number
   */
  public static FatReading reading(double androstenonePpm, double skatolePpm) {
    Table.Row androstenone = Table.named("taint-limits").row("androstenone");
    Table.Row skatole = Table.named("taint-limits").row("skatole");
    double a = OutsideDomainException.within("androstenone in ppm", androstenonePpm, 0, 100);
    double s = OutsideDomainException.within("skatole in ppm", skatolePpm, 0, 100);
    if (a >= androstenone.number("tainted_ppm") || s >= skatole.number("tainted_ppm")) {
      return FatReading.TAINTED;
    }
    return a >= androstenone.number("possible_ppm") || s >= skatole.number("possible_ppm")
        ? FatReading.POSSIBLE
        : FatReading.UNDER_LIMITS;
  }

  /**
   * First day on which the fat of a late-castrated male can be expected to have cleared; a trim is
   * heated and smelled before the carcass is trusted all the same. The weakest figure of this
   * class: published half-lives run from 4 to 14 days, so the long end of what the trade waits is
   * taken. Withdrawal of the medicines used counts apart.
   *
   * @param mature whether he was a mature or used boar
   */
  public static LocalDate clearedOn(LocalDate castrated, boolean mature) {
    return castrated.plusDays(clearingDays(mature));
  }

  /**
   * Days of waiting after a late castration.
   *
   * @param mature whether he was a mature or used boar
   */
  public static int clearingDays(boolean mature) {
    return (int) days(mature ? "clearing-mature" : "clearing-young");
  }

  /** Age in days below which a castrated male had not yet stored anything; a judgement. */
  public static int castratedBeforePuberty() {
    return (int) days("castrated-before-puberty");
  }

  /**
   * Days before slaughter by which something must have been begun if a young entire male is to be
   * vaccinated twice or to clear after castration: the longer of the two.
   */
  public static int vetLeadDays() {
    return (int)
        Math.max(days("vaccine-gap") + days("vaccine-second-latest"), days("clearing-young"));
  }

  /** Days before their arrival on which the breeder should have been asked; a judgement. */
  public static int askTheBreederDays() {
    return (int) days("ask-the-breeder");
  }

  /**
   * Days on which pigs should go after the second injection, and the day it has worn off.
   *
   * @param from first day the label means
   * @param to last day the label means
   * @param until last day of any effect; after it he counts as entire
   */
  public record Protected(LocalDate from, LocalDate to, LocalDate until) {}

  /** The days that follow from the second injection. */
  public static Protected protectedAfter(LocalDate second) {
    return new Protected(
        second.plusDays(days("vaccine-second-latest")),
        second.plusDays(days("vaccine-second-earliest")),
        second.plusDays(days("vaccine-lasts")));
  }

  /** First day from which the second injection keeps a male from smelling and from breeding. */
  public static LocalDate worksFrom(LocalDate second) {
    return second.plusDays(days("vaccine-clear"));
  }

  /** Fewest and most days from the second injection to slaughter, as the label means it. */
  public static Band secondBeforeSlaughter() {
    double least = days("vaccine-second-latest");
    double most = days("vaccine-second-earliest");
    return new Band(least, (least + most) / 2, most);
  }

  /** What two injections already given are worth on the day of slaughter. */
  public enum Protection {
    /** Given as the label says. */
    AS_LABELLED,
    /** Outside the label's 4 to 6 weeks, though the effect may be there: ask the vet. */
    ASK_THE_VET,
    /** Too young, too close together, too late, or worn off: counts as an entire male. */
    NONE
  }

  /**
   * @param first day of the first injection
   * @param second day of the second injection
   */
  public static Protection protection(
      LocalDate born, LocalDate first, LocalDate second, LocalDate slaughter) {
    long before = ChronoUnit.DAYS.between(second, slaughter);
    if (ChronoUnit.DAYS.between(born, first) < days("vaccine-first-age")
        || ChronoUnit.DAYS.between(first, second) < days("vaccine-gap")
        || before < days("vaccine-clear")
        || before > days("vaccine-lasts")) {
      return Protection.NONE;
    }
    return before >= days("vaccine-second-latest") && before <= days("vaccine-second-earliest")
        ? Protection.AS_LABELLED
        : Protection.ASK_THE_VET;
  }

  /**
   * The same where the day of the first injection is not known: it is taken to have been as close
   * before the second as the label allows, and the age likewise if the birth is not known.
   *
   * @param born null if not known
   */
  public static Protection protection(LocalDate born, LocalDate second, LocalDate slaughter) {
    LocalDate first = second.minusDays(days("vaccine-gap"));
    return protection(
        born == null ? first.minusDays(days("vaccine-first-age")) : born, first, second, slaughter);
  }

  private static long days(String key) {
    return (long) Table.named("taint-days").row(key).number("days");
  }
}
