package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * How dangerous a hot hour is. Two measures are known: the temperature-humidity index, whose bands
 * were made for cattle, and the air temperature against the pig's weight. Pigs suffer sooner than
 * cattle in dry air, so the worse of the two counts. Table {@code rules/tables/thi-stages.csv}.
 */
public enum HeatStage {
  NONE(null),
  ALERT("alert"),
  DANGER("danger"),
  EMERGENCY("emergency");

  private final String key;

  HeatStage(String key) {
    this.key = key;
  }

  /** By the temperature-humidity index, {@link Heat#index}. */
  public static HeatStage ofIndex(double thi) {
    return worstReached("from-thi", thi);
  }

  /**
   * By air temperature and weight: alert where the body temperature begins to rise, danger 7
   * degrees over the upper critical temperature, emergency at the upper extreme ({@link
   * Warmth#upperExtreme}). The first two are derived from {@code huynh-2005}.
   *
   * @param air degC, -60 to 60
   * @param weight kg, 20 to 120
   * @param eased whether they have shade, a wallow and cool nights
   * @throws OutsideDomainException outside those
   */
  public static HeatStage ofWeight(double air, double weight, boolean eased) {
    OutsideDomainException.within("air temperature in degC", air, -60, 60);
    double over = air - Heat.upperCritical(weight, eased);
    if (air >= Warmth.upperExtreme(weight)) {
      return EMERGENCY;
    }
    return worstReached("over-upper-critical-c", over);
  }

  /** The worse of two stages. */
  public HeatStage or(HeatStage other) {
    return compareTo(other) >= 0 ? this : other;
  }

  private static HeatStage worstReached(String column, double value) {
    HeatStage worst = NONE;
    for (HeatStage stage : values()) {
      if (stage.key != null) {
        OptionalDouble from = Table.named("thi-stages").row(stage.key).maybe(column);
        if (from.isPresent() && value >= from.getAsDouble()) {
          worst = stage;
        }
      }
    }
    return worst;
  }
}
