package swineherd.figures;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import swineherd.rulebook.Table;

/**
 * Standstill: after pigs arrive, animals may not leave the holding for some clear days, the day of
 * arrival not counted. Exemptions exist, straight to slaughter among those to ask about. Rules
 * change: the authority's word comes first.
 */
public final class Standstill {
  private Standstill() {}

  /**
   * First day on which animals may leave, every arrival starting the clock again.
   *
   * @param arrivals the days on which pigs arrived or will arrive
   * @param rule row of {@code standstill}: {@code england-pigs}, {@code england-others}
   * @return empty if nothing arrives
   * @throws IllegalArgumentException if there is no such rule
   */
  public static Optional<LocalDate> earliestMove(List<LocalDate> arrivals, String rule) {
    long clearDays = (long) Table.named("standstill").row(rule).number("clearDays");
    return arrivals.stream().max(LocalDate::compareTo).map(day -> day.plusDays(clearDays + 1));
  }

  /**
   * Whether a planned move, a show or a slaughter, falls into a standstill. Arrivals after the move
   * do not touch it.
   *
   * @param move the planned day
   * @throws IllegalArgumentException if there is no such rule
   */
  public static boolean forbids(LocalDate move, List<LocalDate> arrivals, String rule) {
    List<LocalDate> before = arrivals.stream().filter(day -> !day.isAfter(move)).toList();
    return earliestMove(before, rule).map(move::isBefore).orElse(false);
  }
}
