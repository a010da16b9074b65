package swineherd.units;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads prices. Money is a plain number in whatever money the keeper thinks in; a currency sign is
 * allowed and says nothing. A price by weight names its weight, since kilograms and pounds would
 * else be confused.
 */
public final class Price {
  private static final double MOST = 1e6;
  private static final Pattern PLAIN = Pattern.compile("\\d+(?:[.,]\\d+)?|\\.\\d+");
  private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:,\\d{3})+(?:\\.\\d+)?");
  private static final Pattern BY_WEIGHT =
      Pattern.compile("(\\S+?)\\s*(?:/|\\b(?:per|for|each|an?)\\b)\\s*(\\S.*)");
  private static final Pattern CONTAINER = Pattern.compile("\\s+(?:bags?|sacks?|bales?|loads?)$");
  private static final Pattern SIGN = Pattern.compile("^\\p{Sc}\\s*|\\s*\\p{Sc}$");

  private Price() {}

  /**
   * Money: {@code 90}, {@code 1,250.50}.
   *
   * @return 0 or more
   * @throws UnreadableException if it is not a number from 0 to a million
   */
  public static double parse(String written) {
    String accepted = "a plain number in your own money, such as 45 or 12.50";
    return number(written, written, accepted);
  }

  /**
   * A price by weight: {@code 0.55 per lb}, {@code 15 per 25 kg}, {@code 330 / t}.
   *
   * @return money for each kg, 0 or more
   * @throws UnreadableException if it names no weight, or is not a number from 0 to a million
   */
  public static double perKg(String written) {
    String accepted = "say of how much: 0.60 per kg, 0.55 per lb, 15 per 25 kg";
    String text = written.strip().toLowerCase(Locale.ROOT);
    Matcher parts = BY_WEIGHT.matcher(text);
    if (!parts.matches()) {
      throw new UnreadableException("\"" + written.strip() + "\" names no weight", accepted);
    }
    double money = number(written, parts.group(1), accepted);
    String weight = CONTAINER.matcher(parts.group(2)).replaceFirst("");
    String counted = Character.isDigit(weight.charAt(0)) ? weight : "1 " + weight;
    double kg;
    try {
      kg = Quantity.parse(counted, Dimension.MASS);
    } catch (UnreadableException e) {
      throw new UnreadableException("\"" + written.strip() + "\" names no weight", accepted);
    }
    if (!(kg > 0 && money / kg <= MOST)) {
      throw new UnreadableException("\"" + written.strip() + "\" is not a price", accepted);
    }
    return money / kg;
  }

  private static double number(String written, String text, String accepted) {
    String plain = SIGN.matcher(text.strip()).replaceAll("");
    double money = Double.NaN;
    if (GROUPED.matcher(plain).matches()) {
      money = Double.parseDouble(plain.replace(",", ""));
    } else if (PLAIN.matcher(plain).matches()) {
      money = Double.parseDouble(plain.replace(',', '.'));
    }
    if (!(money <= MOST)) {
      throw new UnreadableException("\"" + written.strip() + "\" is not a price", accepted);
    }
    return money;
  }
}
