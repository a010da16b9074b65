package swineherd.figures;

import java.time.LocalDate;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * Sun on pigs' skin, and the shade they need. The UV index is estimated for noon under a clear sky
 * at sea level ({@code madronich-2007}); a closed cloud halves it, snow sends most of it back.
 * Spring ozone makes March and April 10 to 15 percent weaker at 50 to 60 degrees than shown.
 *
 * <p>Latitudes in degrees, south negative, -90 to 90; {@link OutsideDomainException} outside that.
 */
public final class Sun {
  /** Thickness of the ozone layer taken for every place and day, Dobson units. */
  public static final double USUAL_OZONE = 325;

  /** From this UV index pale skin needs shade: the lower edge of {@link UvBand#MODERATE}. */
  public static final double STRONG = 3;

  private static final double HEAVY_FROM = 45.4;

  private Sun() {}

  /** Clear-sky UV index at solar noon with {@link #USUAL_OZONE}; 0 in the polar night. */
  public static double uvIndex(double latitude, LocalDate date) {
    return uvIndex(latitude, date, USUAL_OZONE);
  }

  /**
   * Clear-sky UV index at solar noon.
   *
   * @param ozone Dobson units, 200 to 500
   * @throws OutsideDomainException outside that
   */
  public static double uvIndex(double latitude, LocalDate date, double ozone) {
    OutsideDomainException.within("ozone in Dobson units", ozone, 200, 500);
    double mu = Math.sin(Math.toRadians(Daylight.noonHeight(latitude, date)));
    return mu <= 0 ? 0 : 12.5 * Math.pow(mu, 2.42) * Math.pow(ozone / 300, -1.23);
  }

  /** Bands of the rounded UV index ({@code who-uvi}). */
  public enum UvBand {
    LOW("low"),
    MODERATE("moderate"),
    HIGH("high"),
    VERY_HIGH("very-high"),
    EXTREME("extreme");

    private final String key;

    UvBand(String key) {
      this.key = key;
    }

    /**
     * The band as it is published, of the index rounded to a whole number.
     *
     * @param uvIndex 0 to 30
     * @throws OutsideDomainException outside that
     */
    public static UvBand of(double uvIndex) {
      long rounded = Math.round(OutsideDomainException.within("UV index", uvIndex, 0, 30));
      UvBand found = LOW;
      for (UvBand band : values()) {
        if (rounded >= Table.named("uv-bands").row(band.key).number("from")) {
          found = band;
        }
      }
      return found;
    }
  }

  /**
   * Whether the day lies in months without strong sun anywhere in that country; for places whose
   * latitude is not known. Table {@code rules/tables/dark-months.csv}.
   *
   * @param country null where it is not known, and then no month is dark
   */
  public static boolean isDark(Country country, LocalDate date) {
    Table months = Table.named("dark-months");
    if (country == null || !months.has(country.key())) {
      return false;
    }
    Table.Row row = months.row(country.key());
    int month = date.getMonthValue();
    return month >= row.number("from-month") || month <= row.number("to-month");
  }

  /** A pig's skin as the sun finds it; a row each in {@code rules/tables/skin-classes.csv}. */
  public enum Skin {
    PALE("pale"),
    MIXED("mixed"),
    PIGMENTED("pigmented");

    private final String key;

    Skin(String key) {
      this.key = key;
    }

    /** The skin in the keeper's words. */
    public String words() {
      return Table.named("skin-classes").row(key).text("words");
    }

    /** Whether the sun burns it, all or in part. */
    public boolean burns() {
      return Table.named("skin-classes").row(key).maybe("shade-from-uvi").isPresent();
    }

    /**
     * How likely some pigs of a group burn in a season of strong sun without shade, 0 to 1; this
     * project's judgement.
     *
     * @param mud whether they can wallow, which holds the sun off for hours ({@code fawc-1996})
     */
    public double likelyToBurn(boolean mud) {
      return Table.named("skin-classes").row(key).number(mud ? "burns-muddy" : "burns-bare");
    }

    /** The one of two that burns sooner. */
    public Skin paler(Skin other) {
      return compareTo(other) <= 0 ? this : other;
    }

    /**
     * What this skin needs under a UV index; this project's judgement. Dark skin needs shade too,
     * but for heat.
     *
     * @param uvIndex 0 to 30
     * @throws OutsideDomainException outside that
     */
    public SunNeed need(double uvIndex) {
      OutsideDomainException.within("UV index", uvIndex, 0, 30);
      if (reaches(uvIndex, "indoors-from-uvi")) {
        return SunNeed.SHADE_OR_INDOORS;
      }
      return reaches(uvIndex, "shade-from-uvi") ? SunNeed.SHADE : SunNeed.NONE;
    }

    private boolean reaches(double uvIndex, String column) {
      OptionalDouble from = Table.named("skin-classes").row(key).maybe(column);
      return from.isPresent() && uvIndex >= from.getAsDouble();
    }
  }

  /** What skin needs against sunburn. */
  public enum SunNeed {
    NONE,
    /** Shade or fresh mud; most of all in the first ten days out of a house. */
    SHADE,
    /** Shade or fresh mud; where there is neither, indoors until there is. */
    SHADE_OR_INDOORS
  }

  /**
   * Shade at noon for each pig, m2: room to lie apart flat on the side ({@link Hut.Season#SUMMER}),
   * and never less than {@code mwps-8}.
   *
   * @param weight kg, 5 to 150
   * @throws OutsideDomainException outside that
   */
  public static double shade(double weight) {
    String least = weight > HEAVY_FROM ? "shade-over-45" : "shade-to-45";
    return Math.max(
        Hut.bedArea(Hut.Season.SUMMER, 1, weight),
        Table.named("summer-ground").row(least).number("value"));
  }
}
