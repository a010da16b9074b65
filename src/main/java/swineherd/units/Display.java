package swineherd.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;

/** Writes quantities in the keeper's units, no more exact than a keeper can use. */
public final class Display {
  private static final double FOOT = 0.3048;
  private static final double ACRE = 4046.8564224;
  private static final Set<String> WHOLE = Set.of("C", "F", "d", "wk");
  private static final double POUND = 0.45359237;

  private Display() {}

  /** One quantity, given in the dimension's base unit: {@code 14 kg}, {@code 20 in}. */
  public static String amount(double value, Dimension dimension, UnitSystem units) {
    String symbol = symbol(value, dimension, units);
    double shown = dimension.fromBase(value, symbol);
    return number(shown, symbol, 3) + unit(symbol, shown);
  }

  /** Several quantities in one unit, in the order given: {@code 12, 25 and 40 cm}. */
  public static String amounts(List<Double> values, Dimension dimension, UnitSystem units) {
    String symbol = symbol(values.get(0), dimension, units);
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < values.size(); i++) {
      double shown = dimension.fromBase(values.get(i), symbol);
      boolean last = i == values.size() - 1;
      words.append(i == 0 ? "" : last ? " and " : ", ");
      words.append(number(shown, symbol, 3)).append(last ? unit(symbol, shown) : "");
    }
    return words.toString();
  }

  /** An uncertain quantity: {@code about 16 weeks (14 to 20)}. */
  public static String band(
      double low, double likely, double high, Dimension dimension, UnitSystem units) {
    return (low == high ? "" : "about ") + span(low, likely, high, dimension, units);
  }

  /** The same as it stands in a table: {@code 16 weeks (14 to 20)}. */
  public static String span(
      double low, double likely, double high, Dimension dimension, UnitSystem units) {
    if (low == high) {
      return amount(likely, dimension, units);
    }
    String symbol = symbol(likely, dimension, units);
    double shown = dimension.fromBase(likely, symbol);
    return number(shown, symbol, 2)
        + unit(symbol, shown)
        + " ("
        + number(dimension.fromBase(low, symbol), symbol, 2)
        + " to "
        + number(dimension.fromBase(high, symbol), symbol, 2)
        + ")";
  }

  /**
   * A quantity rounded to what one would build or buy, in the unit it is shown in: 46 to 50 or 45.
   *
   * @param value in the dimension's base unit
   * @param up whether to round up
   */
  public static double round(double value, Dimension dimension, UnitSystem units, boolean up) {
    String symbol = symbol(value, dimension, units);
    double shown = dimension.fromBase(value, symbol);
    double size = Math.abs(shown);
    double step = size < 1 ? 0.1 : size < 10 ? 0.5 : size < 20 ? 1 : size < 100 ? 5 : 0;
    if (step == 0) {
      step = Math.pow(10, Math.floor(Math.log10(size)) - 1);
    }
    if (WHOLE.contains(symbol) || symbol.equals("in") || symbol.equals("cm")) {
      step = Math.max(1, step);
    }
    double steps = shown / step;
    // what lies on a step but for the last bits stays there
    double whole = up ? Math.ceil(steps - 1e-9) : Math.floor(steps + 1e-9);
    return dimension.toBase(whole * step, symbol);
  }

  /** The unit a value of that size is shown in. */
  private static String symbol(double value, Dimension dimension, UnitSystem units) {
    boolean us = units == UnitSystem.US;
    double size = Math.abs(value);
    return switch (dimension) {
      case MASS -> us ? (size < POUND / 2 ? "oz" : "lb") : (size < 0.1 ? "g" : "kg");
      case LENGTH -> {
        if (us) {
          yield size < 3 * FOOT ? "in" : size < 5280 * FOOT ? "ft" : "mi";
        }
        yield size < 1 ? "cm" : size < 1000 ? "m" : "km";
      }
      case AREA -> us ? (size < ACRE / 2 ? "sq ft" : "ac") : (size < 10_000 ? "m2" : "ha");
      case VOLUME -> us ? (size < 1 ? "fl oz" : "gal") : (size < 1 ? "ml" : "L");
      case CAPACITY -> us ? "cu ft" : "L";
      case FLOW -> us ? "cup/min" : "L/min";
      case TEMPERATURE -> us ? "F" : "C";
      case TIME -> size <= 60 ? "d" : size <= 400 ? "wk" : size < 720 ? "month" : "year";
      default -> dimension.base();
    };
  }

  private static String unit(String symbol, double shown) {
    boolean one = Math.abs(shown - 1) < 0.005;
    return switch (symbol) {
      case "d" -> one ? " day" : " days";
      case "wk" -> one ? " week" : " weeks";
      case "month" -> one ? " month" : " months";
      case "year" -> one ? " year" : " years";
      case "ac" -> one ? " acre" : " acres";
      case "mi" -> one ? " mile" : " miles";
      case "cup/min" -> one ? " cup/min" : " cups/min";
      default -> " " + symbol;
    };
  }

  /** Whole from ten up, {@code digits} significant digits below and never more than one decimal. */
  private static String number(double value, String symbol, int digits) {
    boolean small = symbol.equals("cm") || symbol.equals("in");
    if (WHOLE.contains(symbol) || (small && Math.abs(value) >= 1)) {
      return Long.toString(Math.round(value));
    }
    if (value == 0) {
      return "0";
    }
    BigDecimal rounded =
        new BigDecimal(value)
            .round(new MathContext(Math.abs(value) < 10 ? 2 : digits, RoundingMode.HALF_UP));
    if (Math.abs(value) >= 10) {
      rounded = rounded.setScale(0, RoundingMode.HALF_UP);
    }
    return rounded.stripTrailingZeros().toPlainString();
  }
}
