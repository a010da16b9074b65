package swineherd.figures;

import swineherd.rulebook.Table;

/**
 * Wind chill, for pigs and people out in the open: loading, hauling, feeding, pens without a roof.
 * It stands for a bare human face at night. Not for a draught-free shelter, where {@link
 * LyingPlace} holds, and it never freezes water that the air does not.
 *
 * <p>Both forms are published; each returns the air temperature outside its own domain, as its
 * publisher does.
 */
public final class WindChill {
  private WindChill() {}

  /**
   * Wind chill in degC ({@code eccc-wind-chill}), for at most 10 degC and more than 4.8 km/h;
   * otherwise {@code air}.
   *
   * @param air degC
   * @param wind km/h, 10 m over ground, 0 to 400
   * @throws OutsideDomainException if either is not a number or the wind is outside that
   */
  public static double celsius(double air, double wind) {
    check(air, wind);
    if (air > 10 || wind <= 4.8) {
      return air;
    }
    double v = Math.pow(wind, 0.16);
    return 13.12 + 0.6215 * air - 11.37 * v + 0.3965 * air * v;
  }

  /**
   * Wind chill in degF ({@code nws-wind-chill}), for at most 50 degF and at least 3 mph; otherwise
   * {@code air}.
   *
   * @param air degF
   * @param wind miles an hour, 10 m (33 ft) over ground, 0 to 250
   * @throws OutsideDomainException if either is not a number or the wind is outside that
   */
  public static double fahrenheit(double air, double wind) {
    check(air, wind);
    if (air > 50 || wind < 3) {
      return air;
    }
    double v = Math.pow(wind, 0.16);
    return 35.74 + 0.6215 * air - 35.75 * v + 0.4275 * air * v;
  }

  private static void check(double air, double wind) {
    OutsideDomainException.within("air temperature", air, -150, 150);
    OutsideDomainException.within("wind speed", wind, 0, 400);
  }

  /** What a wind chill calls for, mildest first; {@code rules/tables/wind-chill-stages.csv}. */
  public enum Stage {
    NONE(null),
    SMALL_PIGS_IN("small-pigs-in"),
    CAUTION("caution"),
    SKIN_FREEZES("skin-freezes");

    private final String key;

    Stage(String key) {
      this.key = key;
    }

    /**
     * @param windChill degC
     */
    public static Stage of(double windChill) {
      Stage worst = NONE;
      for (Stage stage : values()) {
        if (stage.key != null
            && windChill <= Table.named("wind-chill-stages").row(stage.key).number("at-most-c")) {
          worst = stage;
        }
      }
      return worst;
    }
  }
}
