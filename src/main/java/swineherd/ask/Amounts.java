package swineherd.ask;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.Quantity;
import swineherd.units.UnitSystem;

/** Quantities in a conversation: which unit a bare number may have, and how one is read back. */
final class Amounts {
  private Amounts() {}

  /** The units in which a person of that system may think of such a quantity. */
  static List<String> candidates(Dimension dimension, UnitSystem units) {
    boolean us = units == UnitSystem.US;
    return switch (dimension) {
      case MASS -> us ? List.of("lb") : List.of("kg", "t");
      case LENGTH -> us ? List.of("ft", "in", "mi") : List.of("m", "cm", "km");
      case AREA -> us ? List.of("sq ft", "ac") : List.of("m2", "ha");
      case VOLUME -> us ? List.of("gal") : List.of("L");
      case TEMPERATURE -> us ? List.of("F") : List.of("C");
      case TIME -> List.of("d", "wk", "month", "year");
      case VOLTAGE -> List.of("V", "kV");
      case FLOW -> us ? List.of("cup/min", "gal/min") : List.of("L/min");
      default -> List.of(dimension.base());
    };
  }

  /** As it is written, and in the reader's usual unit where that says more. */
  static String words(String tidy, Dimension dimension, UnitSystem units) {
    String shown = Display.amount(Quantity.parse(tidy, dimension), dimension, units);
    String plain = named(tidy);
    return shown.equals(tidy) || shown.equals(plain) ? plain : plain + ", which is " + shown;
  }

  /** Units of time in words. */
  private static String named(String tidy) {
    return tidy.replaceAll("\\bwk\\b", "weeks")
        .replaceAll("\\bd$", "days")
        .replaceAll("\\bmonth$", "months")
        .replaceAll("\\byear$", "years")
        .replaceAll("\\bh$", "hours")
        .replaceAll("\\bac$", "acres")
        .replaceAll("^1 (week|day|month|year|hour|acre)s$", "1 $1");
  }

  static String number(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(4)).stripTrailingZeros().toPlainString();
  }
}
