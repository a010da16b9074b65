package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.List;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.units.Dimension;

/** What stands in a row of the sheet: a value, or why there is none. */
public sealed interface Figure {

  /**
   * A quantity, uncertain or not.
   *
   * @param band in the base unit of its dimension, for one {@code per}
   * @param dimension what kind of quantity
   * @param per what it is counted for
   */
  record Amount(Band band, Dimension dimension, Per per) implements Figure {}

  /**
   * A number in a unit that is the same for every keeper, or in none.
   *
   * @param band the number
   * @param unit the unit as it is written behind it; empty if there is none
   */
  record Plain(Band band, String unit) implements Figure {}

  /**
   * Money in the keeper's own.
   *
   * @param amount may be negative, for a loss
   * @param perKg whether it is for each kg, and so to be shown for each pound to some
   */
  record Price(double amount, boolean perKg) implements Figure {}

  /** A day that is not certain. */
  record Dates(DateBand dates) implements Figure {}

  /** A day. */
  record Day(LocalDate day) implements Figure {}

  /**
   * A whole number of things.
   *
   * @param count how many
   * @param one the word for one of them
   * @param many the word for several
   */
  record Count(int count, String one, String many) implements Figure {}

  /** A probability, 0 to 1. */
  record Chance(double chance) implements Figure {}

  /** A finding in words. */
  record Words(String words) implements Figure {}

  /**
   * No figure: answers are missing.
   *
   * @param paths where they would stand in the setup file, {@code pigs[0].arrives}
   */
  record Missing(List<String> paths) implements Figure {
    public Missing {
      paths = List.copyOf(paths);
    }
  }

  /**
   * No figure: what was asked lies outside what is known.
   *
   * @param why the limit that was passed, in words
   */
  record Beyond(String why) implements Figure {}

  /** What a quantity is counted for. */
  enum Per {
    /** The whole of it. */
    ALL,
    /** One day. */
    DAY,
    /** One hectare, or one acre to some. */
    HECTARE
  }

  /** A weight in kg. */
  static Figure kg(double kg) {
    return of(kg, Dimension.MASS);
  }

  /** A weight in kg. */
  static Figure kg(Band kg) {
    return of(kg, Dimension.MASS);
  }

  /** A weight in kg for each day. */
  static Figure kgADay(double kg) {
    return new Amount(Band.exactly(kg), Dimension.MASS, Per.DAY);
  }

  /** A time in days. */
  static Figure days(double days) {
    return of(days, Dimension.TIME);
  }

  /** An area in m2. */
  static Figure m2(double area) {
    return of(area, Dimension.AREA);
  }

  /** A length in m. */
  static Figure m(double length) {
    return of(length, Dimension.LENGTH);
  }

  /** A temperature in degC. */
  static Figure degC(double temperature) {
    return of(temperature, Dimension.TEMPERATURE);
  }

  /** A volume in L. */
  static Figure litres(double volume) {
    return of(volume, Dimension.VOLUME);
  }

  /** A share in percent. */
  static Figure percent(double share) {
    return of(share, Dimension.SHARE);
  }

  /** A quantity in the base unit of its dimension. */
  static Figure of(double value, Dimension dimension) {
    return of(Band.exactly(value), dimension);
  }

  /** A quantity in the base unit of its dimension. */
  static Figure of(Band value, Dimension dimension) {
    return new Amount(value, dimension, Per.ALL);
  }

  /** A number in a unit that is the same for every keeper; empty if it has none. */
  static Figure plain(double value, String unit) {
    return new Plain(Band.exactly(value), unit);
  }

  /** Money in the keeper's own. */
  static Figure money(double amount) {
    return new Price(amount, false);
  }

  /** Money for each kg. */
  static Figure moneyPerKg(double amount) {
    return new Price(amount, true);
  }

  /** A finding in words. */
  static Figure words(String words) {
    return new Words(words);
  }
}
