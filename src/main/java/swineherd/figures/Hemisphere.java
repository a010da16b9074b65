package swineherd.figures;

import java.time.Month;
import java.time.MonthDay;

/** North or south of the equator, which turns the seasons round. */
public enum Hemisphere {
  NORTH(MonthDay.of(Month.JANUARY, 20)),
  SOUTH(MonthDay.of(Month.JULY, 20));

  private final MonthDay midwinter;

  Hemisphere(MonthDay midwinter) {
    this.midwinter = midwinter;
  }

  /**
   * @param latitude degrees, south negative, -90 to 90; the equator counts as north
   * @throws OutsideDomainException outside that
   */
  public static Hemisphere of(double latitude) {
    return OutsideDomainException.within("latitude in degrees", latitude, -90, 90) < 0
        ? SOUTH
        : NORTH;
  }

  /** The middle of the cold season, a month after the shortest day. Common practice. */
  public MonthDay midwinter() {
    return midwinter;
  }
}
