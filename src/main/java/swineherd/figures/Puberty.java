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

    private Table.Row row() {
      return Table.named("puberty").row(name().toLowerCase(Locale.ROOT));
    }
  }

  /** Day by which entire males must be away from gilts. */
  public static LocalDate separateBy(Maturity maturity, LocalDate born) {
    return born.plusDays((long) maturity.row().number("separate_by_d"));
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
    LocalDate able = born.plusDays((long) maturity.row().number("conception_from_d"));
    LocalDate earliest = contactFrom != null && contactFrom.isAfter(able) ? contactFrom : able;
    return contactUntil != null && contactUntil.isBefore(earliest)
        ? Optional.empty()
        : Optional.of(earliest);
  }

  /** Day of farrowing after a conception. */
  public static LocalDate farrowing(LocalDate conception) {
    return conception.plusDays(GESTATION_DAYS);
  }

  /** Most days a gilt can be pregnant on the day of slaughter; 0 if none. */
  public static int daysPregnant(LocalDate earliestConception, LocalDate slaughter) {
    return (int) Math.max(0, ChronoUnit.DAYS.between(earliestConception, slaughter));
  }
}
