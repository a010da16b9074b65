package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * How far pigs warm a closed hut by their own heat. It shows why a low roof and a full hut keep
 * pigs warm and a big tall shed does not; {@link LyingPlace} reckons with less, for safety.
 */
public final class HutHeat {
  /** Heat at maintenance, W per kg^0.75: cigr-2002. */
  private static final double MAINTENANCE = 5.09;

  /** Share of the heat that warms air and does not evaporate water, in cold; derived. */
  private static final double SENSIBLE = 0.7;

  /** Heat that a cubic metre of air carries off, Wh/(m3 K). */
  private static final double AIR = 0.33;

  private HutHeat() {}

  /** What walls and roof are made of; a row each in {@code rules/tables/hut-walls.csv}. */
  public enum Wall {
    METAL("metal"),
    PLYWOOD("plywood"),
    FOAM_LINED("foam-lined");

    private final String key;

    Wall(String key) {
      this.key = key;
    }

    /** Heat let through, W/(m2 K). */
    public double transmittance() {
      return Table.named("hut-walls").row(key).number("u-w-m2k");
    }
  }

  /**
   * Heat one growing pig gives off, in W ({@code cigr-2002}).
   *
   * @param weight kg, 20 to 120
   * @param feedLevel energy eaten as a multiple of maintenance, 1 to 4; growing pigs eat about 3
   * @throws OutsideDomainException outside those
   */
  public static double perPig(double weight, double feedLevel) {
    OutsideDomainException.within("live weight in kg", weight, 20, 120);
    OutsideDomainException.within("multiple of maintenance", feedLevel, 1, 4);
    double maintenance = MAINTENANCE * Math.pow(weight, 0.75);
    double kept = 0.47 + 0.003 * weight;
    return maintenance + (1 - kept) * (feedLevel - 1) * maintenance;
  }

  /**
   * Degrees that the air in a closed hut is warmer than outside, for pigs on three times
   * maintenance.
   *
   * @param pigs 1 or more
   * @param weight of one pig, kg, 20 to 120
   * @param surface area of walls and roof, m2, over 0 to 1000
   * @param air changed for each pig, m3/h, 0 to 500; least in {@link #winterVentilation}
   * @throws OutsideDomainException outside those
   */
  public static double gain(int pigs, double weight, double surface, Wall wall, double air) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    OutsideDomainException.within("walls and roof in m2", surface, 0.1, 1000);
    OutsideDomainException.within("air a pig in m3/h", air, 0, 500);
    double heat = pigs * SENSIBLE * perPig(weight, 3);
    return heat / (wall.transmittance() * surface + AIR * pigs * air);
  }

  /**
   * Air for each pig in a closed room in hot weather, in words with both units ({@code mwps-8}).
   *
   * @param weight kg, 14 and more; over 100 kg as at 100
   * @throws OutsideDomainException below that
   */
  public static String hotVentilationWords(double weight) {
    return Steps.last("ventilation", "from-kg", weight).text("hot-words");
  }

  /**
   * Least air for each pig in a closed room in winter, m3/h ({@code mwps-8}).
   *
   * @param weight kg, 14 to 100
   * @throws OutsideDomainException outside that
   */
  public static double winterVentilation(double weight) {
    OutsideDomainException.within("live weight in kg", weight, 14, 100);
    return Steps.last("ventilation", "from-kg", weight).number("winter-m3-h");
  }
}
