package swineherd.units;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What the readers of this package take, as regular expressions of the kind that schemas use
 * (ECMA-262, no flags). They hold for the shape alone: a 31 November has the shape of a date.
 */
public final class Patterns {
  private static final String NUMBER = "[-+−]?(?:\\d[\\d,]*(?:\\.\\d+)?|\\.\\d+)(?:\\s*/\\s*\\d+)?";
  private static final String ROUGHLY =
      "(?:"
          + either(
              List.of("about", "around", "roughly", "approximately", "approx", "circa", "ca"),
              "\\.?")
          + "|~|"
          + literal("some")
          + ")?\\s*";
  private static final String ONE =
      "(?:(?:"
          + literal("a ")
          + ")?(?:"
          + literal("half")
          + "|"
          + literal("quarter")
          + ")\\s(?:"
          + literal("of ")
          + ")?(?:[aA][nN]?\\s)?|[aA][nN]?\\s)";
  private static final String MONTH =
      "(?:"
          + either(
              List.of(
                  "jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov",
                  "dec"),
              "[A-Za-z]*")
          + ")\\.?";
  private static final String DAY = "\\d{1,2}(?:st|nd|rd|th|ST|ND|RD|TH)?";
  private static final String MONEY = "(?:[^\\d\\s.,+-]\\s*)?(?:\\d[\\d,]*(?:\\.\\d+)?|\\.\\d+)";

  private Patterns() {}

  /** A quantity, as {@link Quantity#parse} reads it. */
  public static String quantity(Dimension dimension) {
    String unit = "(?:" + units(dimension) + ")";
    String part = NUMBER + "\\s*" + unit;
    String sum = ROUGHLY + "(?:" + part + "|" + ONE + "\\s*" + unit + ")(?:\\s*" + part + ")*";
    if (dimension == Dimension.AREA) {
      String length = "(?:" + units(Dimension.LENGTH) + ")";
      // numbers in a row are kept apart, so that no long one is tried in all its splits
      String apart = "(?:\\s*" + length + "\\s*|\\s+)";
      String side = NUMBER + "(?:" + apart + NUMBER + ")*\\s*" + length + "?\\s*";
      String first = "(?:" + ONE + "\\s*" + length + "?\\s*(?:" + side + ")?|" + side + ")";
      sum += "|" + ROUGHLY + first + "(?:[xX×*]|[bB][yY])\\s*" + side;
    }
    return whole(sum);
  }

  /** A day with its year, as {@link Dates#parse} reads it. */
  public static String date() {
    return whole("\\d{4}-\\d{1,2}-\\d{1,2}|" + day(",?\\s+\\d{4}"));
  }

  /** A day of any year, as {@link Dates#parseDayOfYear} reads it. */
  public static String dayOfYear() {
    return whole("\\d{4}-\\d{1,2}-\\d{1,2}|" + day("(?:,?\\s+\\d{4})?"));
  }

  /** A latitude, as {@link Latitude#parse} reads it. */
  public static String latitude() {
    String side = either(List.of("n", "north", "s", "south"), "");
    return whole(
        "[-−]?\\d{1,2}(?:\\.\\d+)?\\s*(?:°|"
            + either(List.of("degrees", "deg"), "")
            + ")?\\s*(?:"
            + side
            + ")?");
  }

  /** Money, as {@link Price#parse} reads it. */
  public static String price() {
    return whole(MONEY + "(?:\\s*[^\\d\\s.,])?");
  }

  /** Money for a weight, as {@link Price#perKg} reads it. */
  public static String priceByWeight() {
    return whole(
        MONEY
            + "[^\\d\\s.,/]?\\s*(?:/|"
            + either(List.of("per", "for", "each", "an", "a"), "")
            + ")\\s*(?:"
            + NUMBER
            + ")?\\s*(?:"
            + units(Dimension.MASS)
            + ")(?:\\s+"
            + either(List.of("bags?", "sacks?", "bales?", "loads?"), "")
            + ")?");
  }

  /** One of these words in small or capital letters, as a whole. */
  public static String words(Iterable<String> words) {
    StringBuilder all = new StringBuilder();
    words.forEach(word -> all.append(all.length() == 0 ? "" : "|").append(literal(word)));
    return whole(all.toString());
  }

  private static String day(String year) {
    return DAY
        + "(?:\\s+"
        + literal("of")
        + ")?\\s+"
        + MONTH
        + year
        + "|"
        + MONTH
        + "\\s+"
        + DAY
        + year;
  }

  private static String whole(String pattern) {
    return "^\\s*(?:" + pattern + ")\\s*$";
  }

  /** The longest first, so that no unit hides a longer one. */
  private static String units(Dimension dimension) {
    return dimension.names().stream()
        .sorted(Comparator.comparing(String::length).reversed().thenComparing(n -> n))
        .map(Patterns::literal)
        .collect(Collectors.joining("|"));
  }

  private static String either(List<String> words, String after) {
    return words.stream()
        .map(w -> w.endsWith("?") ? literal(w.substring(0, w.length() - 1)) + "?" : literal(w))
        .collect(Collectors.joining("|", "(?:", ")" + after));
  }

  private static String literal(String text) {
    StringBuilder pattern = new StringBuilder();
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      char small = Character.toLowerCase(c);
      char big = Character.toUpperCase(c);
      if (small != big) {
        pattern.append('[').append(small).append(big).append(']');
      } else {
        pattern.append(
            switch (c) {
              case ' ' -> "\\s+";
              case '-', '_' -> "[-_\\s]+";
              case '²' -> "[²2]";
              case '³' -> "[³3]";
              case '\'' -> "['’]";
              case '"' -> "[\"”]";
              case '/', '.', '?', '*', '+', '(', ')', '|', '[', ']', '{', '}', '^', '$', '\\' ->
                  "\\" + c;
              default -> String.valueOf(c);
            });
      }
    }
    return pattern.toString();
  }
}
