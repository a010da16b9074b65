package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Where pigs lie at night, as far as it warms or chills them. Pigs lie for more than eight tenths
 * of the day, so the lying place decides, not the pen.
 *
 * @param floor what they lie on
 * @param airSpeed at a lying pig, m/s; {@link Shelter#airSpeed} where nobody measured it
 * @param wetPigs whether they lie down with wet or muddy coats
 * @param closedHut whether it is a closed, low hut that holds the heat of their bodies
 */
public record LyingPlace(Floor floor, double airSpeed, boolean wetPigs, boolean closedHut) {
  private static final double COLDEST_AIR = -60;
  private static final double HOTTEST_AIR = 50;

  /**
   * @throws OutsideDomainException if the air speed is not 0 to 30 m/s
   */
  public LyingPlace {
    OutsideDomainException.within("air speed in m/s", airSpeed, 0, 30);
  }

  /** Dry pigs on a floor in one of the usual kinds of shelter. */
  public static LyingPlace dry(Floor floor, Shelter shelter) {
    return new LyingPlace(floor, shelter.airSpeed(), false, shelter == Shelter.CLOSED_HUT);
  }

  /** What pigs lie on; a row each in {@code rules/tables/floor-terms.csv}. */
  public enum Floor {
    FULL_SLATS("full-slats"),
    WET("wet"),
    DAMP_STRAW("damp-straw"),
    BARE_DRY("bare-dry"),
    THIN_STRAW("thin-straw"),
    STRAW("straw"),
    DEEP_NEST("deep-nest");

    private final String key;

    Floor(String key) {
      this.key = key;
    }

    /** Key in the table. */
    public String key() {
      return key;
    }

    /** Degrees that the floor adds to the air temperature; negative where it chills. */
    public double term() {
      return row().number("degrees-c");
    }

    /**
     * The floor that a depth of dry straw makes, the poorer one between two.
     *
     * @param depth m of dry straw where they lie, 0 or more
     * @throws OutsideDomainException if it is negative or over 3 m
     */
    public static Floor ofDryStraw(double depth) {
      OutsideDomainException.within("depth of straw in m", depth, 0, 3);
      Floor best = BARE_DRY;
      for (Floor floor : values()) {
        if (depth >= floor.row().maybe("dry-straw-from-m").orElse(Double.MAX_VALUE)) {
          best = floor;
        }
      }
      return best;
    }

    private Table.Row row() {
      return Table.named("floor-terms").row(key);
    }
  }

  /** The usual kinds of shelter, calmest first; a row each in {@code rules/tables/draughts.csv}. */
  public enum Shelter {
    CLOSED_HUT("closed-hut"),
    THREE_SIDED("three-sided"),
    OPEN_FRONT("open-front"),
    NO_SHELTER("no-shelter");

    private final String key;

    Shelter(String key) {
      this.key = key;
    }

    /** Key in the table. */
    public String key() {
      return key;
    }

    /** Air speed at a lying pig, m/s: this project's judgement. */
    public double airSpeed() {
      return row().number("air-speed-m-s");
    }

    private double term() {
      return row().number("degrees-c");
    }

    private Table.Row row() {
      return Table.named("draughts").row(key);
    }
  }

  /**
   * Degrees that moving air takes from what a pig in a group feels, 0 or less: straight lines
   * between the four points of {@code mount-1975}, level outside them.
   *
   * @param airSpeed at a lying pig, m/s, 0 or more
   * @throws OutsideDomainException if it is negative or over 30 m/s
   */
  public static double draughtTerm(double airSpeed) {
    OutsideDomainException.within("air speed in m/s", airSpeed, 0, 30);
    Shelter calmer = Shelter.CLOSED_HUT;
    for (Shelter shelter : Shelter.values()) {
      if (airSpeed <= shelter.airSpeed()) {
        if (shelter == calmer) {
          return shelter.term();
        }
        double share = (airSpeed - calmer.airSpeed()) / (shelter.airSpeed() - calmer.airSpeed());
        return calmer.term() + share * (shelter.term() - calmer.term());
      }
      calmer = shelter;
    }
    return calmer.term();
  }

  /**
   * The effective temperature: the still air over a dry bare floor that would feel as cold, in
   * degC. An estimate; that a deep nest halves the draught, and the terms for wet coats and the
   * closed hut, are this project's judgement.
   *
   * <p>A pig alone is charged at least what {@code close-1981} measured on single pigs of 20 to 32
   * kg, which is more than {@code mount-1975} gives for wind over 0.25 m/s: where the two differ,
   * the colder stands.
   *
   * @param air temperature in degC, -60 to 50; the mean of the day for feed, the lowest of the
   *     night for danger
   * @param pigs that lie together, 1 or more
   * @throws OutsideDomainException outside those
   */
  public double effectiveTemperature(double air, int pigs) {
    OutsideDomainException.within("air temperature in degC", air, COLDEST_AIR, HOTTEST_AIR);
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    double felt = floor == Floor.DEEP_NEST ? Warmth.term("deep-nest-draught") : 1;
    double draught =
        pigs == 1 ? Math.min(draughtTerm(airSpeed), loneDraught()) : draughtTerm(airSpeed);
    return air
        + floor.term()
        + draught * felt
        + (wetPigs ? Warmth.term("wet-coat") : 0)
        + (keepsBodyHeat(pigs) ? Warmth.term("closed-hut") : 0);
  }

  /** A hut warms up only if it is free of draught and enough pigs lie in it. */
  private boolean keepsBodyHeat(int pigs) {
    return closedHut
        && airSpeed <= Shelter.CLOSED_HUT.airSpeed()
        && pigs >= Table.named("cold-terms").row("closed-hut").number("from-pigs");
  }

  private double loneDraught() {
    double still = Warmth.term("lone-draught-still");
    double wind = Math.min(airSpeed, Warmth.term("lone-draught-most"));
    return -Warmth.term("lone-draught") * Math.max(0, wind - still);
  }
}
