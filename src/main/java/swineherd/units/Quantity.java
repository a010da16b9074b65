package swineherd.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a quantity as a person writes it: {@code 30 lb}, {@code 20 x 40 ft}, {@code 5 ft 6 in}. */
public final class Quantity {
  private static final String NUMBER = "[-+−]?(?:\\d[\\d,]*(?:\\.\\d+)?|\\.\\d+)(?:\\s*/\\s*\\d+)?";
  private static final Pattern PART =
      Pattern.compile("(" + NUMBER + ")\\s*([^\\d\\s.,+−-][^\\d.,+−]*)?");
  private static final Pattern SIDES = Pattern.compile("(.*\\S)\\s*(?:[x×*]|by)\\s*(\\S.*)");
  private static final Pattern SQUARE = Pattern.compile("(m|ft|yd)2(?![\\da-z])");
  private static final Pattern CUBE = Pattern.compile("(m|ft)3(?![\\da-z])");
  private static final Pattern ROUGHLY =
      Pattern.compile("^(?:about|around|roughly|approximately|approx\\.?|circa|ca\\.?|~|some)\\s*");
  private static final Pattern HALF = Pattern.compile("^(?:a )?half (?:of )?(?:an? )?");
  private static final Pattern QUARTER = Pattern.compile("^(?:a )?quarter (?:of )?(?:an? )?");
  private static final Pattern ONE = Pattern.compile("^an? ");

  private Quantity() {}

  /**
   * The quantity in the dimension's own unit ({@link Dimension#base()}).
   *
   * @throws UnreadableException if it is not a quantity of that dimension; the message says why and
   *     what would be accepted
   */
  public static double parse(String written, Dimension dimension) {
    String text = plain(written);
    if (dimension == Dimension.AREA) {
      Matcher sides = SIDES.matcher(text);
      if (sides.matches()) {
        return sides(written, sides.group(1), sides.group(2));
      }
    }
    return sum(written, text, dimension, null);
  }

  /**
   * The same quantity in its plainest form: {@code about 12 by 30 feet} is {@code 12 x 30 ft}.
   *
   * @throws UnreadableException as {@link #parse} does
   */
  public static String tidy(String written, Dimension dimension) {
    parse(written, dimension);
    String text = plain(written);
    Matcher sides = SIDES.matcher(text);
    if (dimension == Dimension.AREA && sides.matches()) {
      return tidyParts(written, sides.group(1), Dimension.LENGTH)
          + " x "
          + tidyParts(written, sides.group(2), Dimension.LENGTH);
    }
    return tidyParts(written, text, dimension);
  }

  private static String tidyParts(String written, String text, Dimension dimension) {
    StringBuilder tidy = new StringBuilder();
    Matcher part = PART.matcher(text);
    while (part.find()) {
      double number = number(written, part.group(1), dimension);
      tidy.append(tidy.length() == 0 ? "" : " ").append(tidy(number));
      if (part.group(2) != null && !part.group(2).isBlank()) {
        tidy.append(' ').append(dimension.symbolFor(part.group(2)));
      }
    }
    return tidy.toString();
  }

  private static String tidy(double number) {
    return BigDecimal.valueOf(number)
        .round(new MathContext(6))
        .stripTrailingZeros()
        .toPlainString();
  }

  private static String plain(String written) {
    String text = written.strip().toLowerCase(Locale.ROOT).replace('’', '\'').replace('”', '"');
    text = SQUARE.matcher(CUBE.matcher(text).replaceAll("$1³")).replaceAll("$1²");
    text = ROUGHLY.matcher(text).replaceFirst("");
    text = HALF.matcher(text).replaceFirst("0.5 ");
    text = QUARTER.matcher(text).replaceFirst("0.25 ");
    return ONE.matcher(text).replaceFirst("1 ");
  }

  private static double sides(String written, String first, String second) {
    Matcher last = Pattern.compile(".*?([a-z'\"]+)$").matcher(second);
    String unit = last.matches() ? last.group(1) : null;
    double one;
    double other;
    try {
      one = sum(written, first, Dimension.LENGTH, unit);
      other = sum(written, second, Dimension.LENGTH, null);
    } catch (UnreadableException e) {
      throw unreadable(written, Dimension.AREA, "cannot be read as two sides");
    }
    if (!(one > 0 && other > 0)) {
      // two sides below nothing would make an area above it
      throw unreadable(written, Dimension.AREA, "is not possible: a side is more than nothing");
    }
    return one * other;
  }

  /** One or more parts that add up, such as 5 ft 6 in; {@code unit} is for a part without one. */
  private static double sum(String written, String text, Dimension dimension, String unit) {
    Matcher part = PART.matcher(text);
    double sum = 0;
    int end = 0;
    while (part.find()) {
      if (!text.substring(end, part.start()).isBlank()) {
        break;
      }
      String name = part.group(2) == null ? unit : part.group(2).strip();
      if (name == null || name.isEmpty()) {
        throw unreadable(written, dimension, "has no unit");
      }
      String symbol = dimension.symbolFor(name);
      if (symbol == null) {
        throw unreadable(written, dimension, "has the unit \"" + name + "\", which does not fit");
      }
      boolean following = end > 0;
      double number = number(written, part.group(1), dimension);
      sum += dimension.toBase(number, symbol);
      end = part.end();
      if (following && (number < 0 || dimension == Dimension.TEMPERATURE)) {
        throw unreadable(written, dimension, "cannot be read");
      }
    }
    if (end == 0 || !text.substring(end).isBlank()) {
      throw unreadable(written, dimension, "cannot be read");
    }
    return sum;
  }

  private static double number(String written, String digits, Dimension dimension) {
    String plain = digits.replace('−', '-').replaceAll("\\s", "");
    String[] fraction = plain.split("/");
    String whole = fraction[0];
    if (whole.matches("[-+]?\\d{1,3}(,\\d{3})+(\\.\\d+)?")) {
      whole = whole.replace(",", "");
    } else if (whole.matches("[-+]?\\d+,\\d+")) {
      whole = whole.replace(',', '.');
    }
    try {
      double value = Double.parseDouble(whole);
      double parts = fraction.length > 1 ? Double.parseDouble(fraction[1]) : 1;
      if (parts == 0 || !Double.isFinite(value)) {
        throw unreadable(written, dimension, "is not a number");
      }
      return value / parts;
    } catch (NumberFormatException e) {
      throw unreadable(written, dimension, "is not a number");
    }
  }

  private static UnreadableException unreadable(String written, Dimension dimension, String why) {
    return new UnreadableException(
        "\"" + written.strip() + "\" " + why, "write it like " + dimension.example());
  }
}
