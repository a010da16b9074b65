package swineherd.figures;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/** What the law, and sense, ask of a weaner that is for sale. */
public final class Weaner {
  private Weaner() {}

  /**
   * Least age at weaning in days (table {@code weaning-law}).
   *
   * @param country null if unknown
   * @param specialHousing whether they go into emptied, cleaned and disinfected housing away from
   *     sows
   * @return nothing where no law is known or there is none
   */
  public static OptionalInt minimumWeaningDays(Country country, boolean specialHousing) {
    return Jurisdiction.row("weaning-law", country)
        .map(row -> row.maybe(specialHousing ? "special_housing_d" : "minimum_d"))
        .filter(OptionalDouble::isPresent)
        .map(days -> OptionalInt.of((int) days.getAsDouble()))
        .orElse(OptionalInt.empty());
  }

  /** Days of quarantine for arrivals (table {@code quarantine}): advised 30, never under 21. */
  public static DayRange quarantineDays() {
    Table table = Table.named("quarantine");
    return new DayRange(
        (int) table.row("minimum").number("days"), (int) table.row("default").number("days"));
  }
}
