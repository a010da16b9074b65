package swineherd.figures;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.Optional;
import swineherd.rulebook.Table;

/**
 * When young pigs can breed, and what follows if males and gilts stayed together. Earliest
 * plausible ages throughout, since a missed litter is the harm (table {@code puberty}).
 */
public final class Puberty {
  /** Length of pregnancy in days; universal in the literature. */
  public static final int GESTATION_DAYS = 114;

  private Puberty() {}

  /** How early a kind of pig matures. */
  public enum Maturity {
    ORDINARY,
    /** Pot-bellied, Kunekune, and any small or early kind not known better. */
    MINIATURE,
    /** Meishan and its crosses. */
    MEISHAN;

    /**
     * How early a breed matures; of a cross, as early as the earlier of its breeds. A breed that is
     * not known, null, is taken at its worst short of the Meishan: as miniature.
     *
     * @param crossedWith null if it is no cross
     */
    public static Maturity of(Breed breed, Breed crossedWith) {
      Maturity of = breed == null ? MINIATURE : of(breed);
      return crossedWith == null || of(crossedWith).compareTo(of) < 0 ? of : of(crossedWith);
    }

    private static Maturity of(Breed breed) {
      if (!breed.earlyMaturing()) {
        return ORDINARY;
      }
      return breed.growthClass().equals("meishan") ? MEISHAN : MINIATURE;
    }

    /** Age in days by which entire males leave the gilts. */
    public int separateByDays() {
      return (int) row().number("separate_by_d");
    }

    /** Earliest age in days at which a gilt can conceive, and her brothers can sire. */
    public int breedsFromDays() {
      return (int) row().number("conception_from_d");
    }

    private Table.Row row() {
      return Table.named("puberty").row(name().toLowerCase(Locale.ROOT));
    }
  }

  /** Day by which entire males must be away from gilts, of pigs born on a day. */
  public static LocalDate separateBy(Maturity maturity, LocalDate born) {
    return born.plusDays(maturity.separateByDays());
  }

  /**
   * Earliest day a gilt can have conceived.
   *
   * @param contactFrom first day with an entire male; null if from birth or unknown
   * @param contactUntil last day with one; null if it still goes on or is unknown
   * @return nothing if they were apart before she could
   */
  public static Optional<LocalDate> earliestConception(
      Maturity maturity, LocalDate born, LocalDate contactFrom, LocalDate contactUntil) {
    LocalDate able = born.plusDays(maturity.breedsFromDays());
    LocalDate earliest = contactFrom != null && contactFrom.isAfter(able) ? contactFrom : able;
    return contactUntil != null && contactUntil.isBefore(earliest)
        ? Optional.empty()
        : Optional.of(earliest);
  }

  /**
   * Chance, 0 to 1, that a gilt kept with young males of her age has come on heat by an age, and so
   * may be in pig: a normal distribution, derived from published means with and without a mature
   * boar (table {@code puberty}). It says nothing below {@link Maturity#breedsFromDays}: 0.
   *
   * @param ageDays age in days
   * @throws OutsideDomainException if it is negative or no number
   */
  public static double chanceOnHeat(Maturity maturity, double ageDays) {
    double age = OutsideDomainException.within("age in days", ageDays, 0, 5000);
    if (age < maturity.breedsFromDays()) {
      return 0;
    }
    Table.Row row = maturity.row();
    return Normal.cumulative((age - row.number("puberty_mean_d")) / row.number("puberty_sd_d"));
  }

  /** Likely day of farrowing after the day of conception. */
  public static LocalDate farrowing(LocalDate conception) {
    return conception.plusDays(GESTATION_DAYS);
  }

  /** Most days a gilt can be pregnant on the day of slaughter; 0 if none. */
  public static int daysPregnant(LocalDate earliestConception, LocalDate slaughter) {
    return (int) Math.max(0, ChronoUnit.DAYS.between(earliestConception, slaughter));
  }
}
