package swineherd.figures;

import java.time.LocalDate;
import swineherd.rulebook.Table;

/**
 * How long ground must stand without pigs and pig manure before worm eggs in it are few. A
 * judgement from how long eggs were found alive (tables {@code worms}, {@code parasite-days}).
 */
public final class GroundRest {
  private GroundRest() {}

  /** What a rest of the ground is worth. */
  public enum Worth {
    /** Under a year: next to nothing against roundworm and whipworm. */
    TOO_SHORT,
    /** A year and more: helps against strongyle worms only. */
    STRONGYLES_ONLY,
    /** Two years and more: the least worth calling a rest. */
    FAIR,
    /** Five years and more: also after a heavy infestation. */
    GOOD
  }

  /**
   * @param days days without pigs and without pig manure; infinite if there never were any
   * @throws OutsideDomainException if negative or no number
   */
  public static Worth worth(double days) {
    double d = OutsideDomainException.within("rest in days", days, 0, Double.POSITIVE_INFINITY);
    if (d < span("rest-helps-strongyles")) {
      return Worth.TOO_SHORT;
    }
    if (d < span("rest-minimum")) {
      return Worth.STRONGYLES_ONLY;
    }
    return d < span("rest-after-heavy") ? Worth.FAIR : Worth.GOOD;
  }

  /** Days ground should be without pigs: two years (730), five after a heavy infestation. */
  public static int daysNeeded(boolean heavilyInfested) {
    return (int) span(heavilyInfested ? "rest-after-heavy" : "rest-minimum");
  }

  /** Day from which ground may take pigs again, {@link #daysNeeded} after the last. */
  public static LocalDate restUntil(LocalDate lastPigs, boolean heavilyInfested) {
    return lastPigs.plusDays(daysNeeded(heavilyInfested));
  }

  private static double span(String key) {
    return Table.named("parasite-days").row(key).number("days");
  }
}
