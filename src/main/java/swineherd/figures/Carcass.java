package swineherd.figures;

import java.util.LinkedHashMap;
import java.util.Map;
import swineherd.rulebook.Table;

/**
 * From the live pig to wrapped meat: hanging weight, the cooler's shrink, meat, cuts.
 *
 * <p>The defaults are trade practice inside ranges that universities publish (tables {@code
 * dressing} and {@code meat-yield}). Skin and head change the hanging weight, not the meat: ask the
 * processor which hanging weight he bills.
 */
public final class Carcass {
  private static final double LIGHTEST_LIVE = 25;
  private static final double HEAVIEST_LIVE = 180;

  private Carcass() {}

  /** What is left on the carcass when it is weighed. */
  public enum Style {
    HEAD_ON_SKIN_ON("head-on-skin-on"),
    HEAD_OFF_SKIN_ON("head-off-skin-on"),
    /** Skinned, head off. */
    SKINNED("skinned");

    private final String key;

    Style(String key) {
      this.key = key;
    }
  }

  /** What is counted as meat. */
  public enum Cutting {
    BONE_IN("bone-in"),
    BONELESS("boneless"),
    /** Head, feet, backfat and organs as well. */
    EVERYTHING("everything");

    private final String key;

    Cutting(String key) {
      this.key = key;
    }
  }

  /**
   * Hanging weight as a percentage of live weight. A carcass chilled or skinned differently from
   * the style given is another number.
   *
   * @param pasturedOrUnfasted raised on pasture, or killed with a full gut
   * @param veryFat a very fat pig
   */
  public static Band dressingPercent(Style style, boolean pasturedOrUnfasted, boolean veryFat) {
    Band percent = band("dressing", style.key);
    if (pasturedOrUnfasted) {
      percent = sum(percent, band("dressing", "pastured-or-unfasted"));
    }
    if (veryFat) {
      percent = sum(percent, band("dressing", "very-fat"));
    }
    return percent;
  }

  /**
   * Hot carcass weight in kg.
   *
   * @param liveKg live weight in kg, as the pig stands at home on its usual feed
   * @param dressingPercent percentage of live weight, 50 to 90
   * @throws OutsideDomainException if the weight is not within 25 to 180 kg, or a percentage not
   *     within 50 to 90
   */
  public static Band hangingKg(double liveKg, Band dressingPercent) {
    live(liveKg);
    percent(dressingPercent.low());
    percent(dressingPercent.high());
    return dressingPercent.times(liveKg / 100);
  }

  /**
   * Weight in kg after the cooler, 1.5 to 3 % less.
   *
   * @param hanging hot carcass weight in kg
   */
  public static Band coldKg(Band hanging) {
    Band shrink = band("dressing", "cooler-shrink");
    return new Band(
        hanging.low() * (1 - shrink.high() / 100),
        hanging.likely() * (1 - shrink.likely() / 100),
        hanging.high() * (1 - shrink.low() / 100));
  }

  /**
   * Wrapped meat as a percentage of the hanging weight.
   *
   * @param lardBreed a lard breed: four points less
   */
  public static Band meatPercent(Cutting cutting, boolean lardBreed) {
    Band percent = band("meat-yield", cutting.key);
    return lardBreed ? sum(percent, band("meat-yield", "lard")) : percent;
  }

  /**
   * Wrapped meat in kg: low end from the low ends, so the band is rather too wide than too narrow.
   *
   * @param hanging hot carcass weight in kg
   * @param meatPercent percentage of it, from {@link #meatPercent}
   */
  public static Band meatKg(Band hanging, Band meatPercent) {
    return new Band(
        hanging.low() * meatPercent.low() / 100,
        hanging.likely() * meatPercent.likely() / 100,
        hanging.high() * meatPercent.high() / 100);
  }

  /**
   * What one weight is of another, in percent: carcass of live is the dressing percentage, meat of
   * carcass the cutting yield.
   *
   * @param part weight, in the same unit as {@code whole}
   * @param whole weight above 0, not less than {@code part}
   * @throws OutsideDomainException if the part is more than the whole, or one is not a weight
   */
  public static double percentOf(double part, double whole) {
    OutsideDomainException.within("whole weight", whole, Double.MIN_NORMAL, Double.MAX_VALUE);
    OutsideDomainException.within("part of it", part, 0, whole);
    return 100 * part / whole;
  }

  /**
   * Live weight in kg that a hanging weight implies.
   *
   * @param hangingKg hot carcass weight in kg
   * @param dressingPercent percentage of live weight, 50 to 90
   * @throws OutsideDomainException if the live weight is not within 25 to 180 kg
   */
  public static double liveKg(double hangingKg, double dressingPercent) {
    return live(hangingKg / percent(dressingPercent) * 100);
  }

  /**
   * Cuts in kg by the row of the table {@code cuts} they are described in; together the hanging
   * weight.
   *
   * @param hangingKg carcass weight in kg, 0 or more
   */
  public static Map<String, Double> cutsKg(double hangingKg) {
    OutsideDomainException.within("hanging weight in kg", hangingKg, 0, HEAVIEST_LIVE);
    Map<String, Double> cuts = new LinkedHashMap<>();
    for (Table.Row cut : Table.named("cuts").rows()) {
      cut.maybe("share").ifPresent(share -> cuts.put(cut.key(), hangingKg * share / 100));
    }
    return cuts;
  }

  /** Live weight past which a lard pig fed to appetite puts on mostly fat, kg (charlton-2022). */
  public static double lardWeight() {
    return limit("lard-weight");
  }

  private static double live(double kg) {
    return OutsideDomainException.within("live weight in kg", kg, LIGHTEST_LIVE, HEAVIEST_LIVE);
  }

  private static double percent(double dressing) {
    return OutsideDomainException.within("dressing percentage", dressing, 50, 90);
  }

  private static Band band(String table, String key) {
    Table.Row row = Table.named(table).row(key);
    return new Band(row.number("low"), row.number("likely"), row.number("high"));
  }

  private static Band sum(Band a, Band b) {
    return new Band(a.low() + b.low(), a.likely() + b.likely(), a.high() + b.high());
  }

  private static double limit(String key) {
    return Table.named("weight-limits").row(key).number("limit");
  }
}
