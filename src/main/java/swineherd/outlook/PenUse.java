package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.rulebook.Table;

/**
 * When a pen has to hold pigs, and of what size. There is one for each pen in which pigs are or
 * will be.
 *
 * @param pen name of the pen
 * @param there whether pigs are in it on the day of the check
 * @param settled whether all of them have been in it for two weeks
 * @param readyBy day by which its fence must stand: today if they are there, else a week before
 *     they come; null if nobody said when
 * @param until last day they are likely to be there; null if nobody can say
 * @param lightest live weight of the lightest group now or on arrival, kg
 * @param heaviest live weight of the heaviest group when it goes, kg
 * @param road whether a road, a path or a neighbour's land is known to lie beside it
 */
public record PenUse(
    String pen,
    boolean there,
    boolean settled,
    LocalDate readyBy,
    LocalDate until,
    double lightest,
    double heaviest,
    boolean road,
    List<String> grounds)
    implements Outlook {

  /** A road alone makes nothing more likely than this. */
  private static final double NEARLY_CERTAIN = 0.95;

  static PenUse of(Occupants pigs) {
    Table build = Table.named("fence-build");
    boolean road = Boolean.TRUE.equals(pigs.setup().place().publicAccess());
    Grounds grounds = new Grounds();
    if (road) {
      grounds.and("place", "publicAccess");
    }
    return new PenUse(
        pigs.pen().name(),
        pigs.anyThere(),
        pigs.allThereFor((int) build.row("first-weeks").number("value")),
        pigs.readyBy((int) build.row("lead-days").number("value")),
        pigs.until(),
        pigs.lightest().kgNow(),
        pigs.heaviestEnd(),
        road,
        grounds.list());
  }

  /**
   * How likely harm is if pigs get out, 0 to 1: more so where a road lies beside the pen.
   *
   * @param chance that of harm where none does, 0 to 1
   */
  public double likely(double chance) {
    double times = Table.named("fence-build").row("road-times").number("value");
    return road ? Math.max(chance, Math.min(NEARLY_CERTAIN, times * chance)) : chance;
  }
}
