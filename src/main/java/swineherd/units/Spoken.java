package swineherd.units;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Turns numbers as people say them into digits: {@code two dozen}, {@code minus twenty c}. */
public final class Spoken {
  private static final Map<String, Integer> SMALL = new HashMap<>();
  private static final Pattern MIXED = Pattern.compile("(\\d+)(?:\\s+|-|\\s+and\\s+)(\\d)/(\\d+)");
  private static final Pattern AND_A_HALF = Pattern.compile("\\b(\\d+)\\s+and\\s+a\\s+half\\b");
  private static final Pattern AND_A_HALF_OF =
      Pattern.compile("\\b(\\d+|an?)\\s+([a-z]+)\\s+and\\s+a\\s+half\\b");
  private static final Pattern MINUS = Pattern.compile("\\b(?:minus|negative)\\s+(?=[\\d.])");
  private static final Pattern BELOW =
      Pattern.compile(
          "^(\\d+(?:\\.\\d+)?)\\s*(c|f|celsius|fahrenheit)?\\s*below(?:\\s+(?:zero|0)\\b)?\\s*");
  private static final Pattern DEGREES =
      Pattern.compile("(?<=\\d)\\s*(?:degrees?|deg\\b\\.?|°)\\s*");

  static {
    List<String> units =
        List.of(
            "zero",
            "one",
            "two",
            "three",
            "four",
            "five",
            "six",
            "seven",
            "eight",
            "nine",
            "ten",
            "eleven",
            "twelve",
            "thirteen",
            "fourteen",
            "fifteen",
            "sixteen",
            "seventeen",
            "eighteen",
            "nineteen");
    List<String> tens =
        List.of("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety");
    units.forEach(word -> SMALL.put(word, units.indexOf(word)));
    tens.forEach(word -> SMALL.put(word, 20 + 10 * tens.indexOf(word)));
  }

  private Spoken() {}

  /**
   * The text in small letters with digits for number words; what is no number stays. Only for
   * answers that are numbers: in a name, one is a word.
   */
  public static String digits(String said) {
    String text =
        said.strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("[−–—]", "-")
            .replace("½", " 1/2")
            .replace("¼", " 1/4")
            .replace("¾", " 3/4")
            .replaceAll("\\s+", " ")
            .strip();
    text =
        text.replaceAll("\\bhalf a dozen\\b", "6")
            .replaceAll("\\ba (?:couple|pair)(?: of)?\\b", "2")
            .replaceAll("\\ba (?=dozen|hundred|thousand)", "1 ")
            .replaceAll("\\b(hundred|thousand) and (?=[a-z])", "$1 ")
            .replaceAll("(?<=[a-z])-(?=[a-z])", " ");
    text = numbers(text);
    text = AND_A_HALF.matcher(text).replaceAll("$1.5");
    text =
        AND_A_HALF_OF
            .matcher(text)
            .replaceAll(m -> ("an".startsWith(m.group(1)) ? "1" : m.group(1)) + ".5 " + m.group(2));
    text = mixed(text);
    text = DEGREES.matcher(text).replaceAll(" ").strip();
    Matcher below = BELOW.matcher(text);
    if (below.find()) {
      String unit = below.group(2) == null ? "" : " " + below.group(2);
      text = "-" + below.group(1) + unit + " " + text.substring(below.end());
    }
    return MINUS.matcher(text).replaceAll("-").strip();
  }

  private static String mixed(String text) {
    return MIXED
        .matcher(text)
        .replaceAll(
            m -> {
              int parts = Integer.parseInt(m.group(3));
              int whole = Integer.parseInt(m.group(1));
              return parts == 0
                  ? Matcher.quoteReplacement(m.group())
                  : String.valueOf(whole + Double.parseDouble(m.group(2)) / parts);
            });
  }

  /** Words in a row that make one number become it: two hundred and forty, thirty-five. */
  private static String numbers(String text) {
    StringBuilder out = new StringBuilder();
    int sum = -1;
    for (String token : text.split(" ")) {
      Integer small = SMALL.get(token);
      boolean digits = token.matches("\\d{1,4}");
      if (small != null && sum >= 0 && canFollow(sum, small)) {
        sum += small;
      } else if (small != null) {
        flush(out, sum);
        sum = small;
      } else if (sum >= 0 && token.equals("hundred")) {
        sum *= 100;
      } else if (sum >= 0 && token.equals("thousand")) {
        sum *= 1000;
      } else if (sum >= 0 && token.equals("dozen")) {
        sum *= 12;
      } else if (digits) {
        flush(out, sum);
        sum = Integer.parseInt(token);
      } else {
        flush(out, sum);
        sum = -1;
        out.append(out.length() == 0 ? "" : " ").append(token);
      }
    }
    flush(out, sum);
    return out.toString();
  }

  private static boolean canFollow(int sum, int small) {
    boolean afterTens = sum % 10 == 0 && sum % 100 >= 20 && small < 10;
    boolean afterHundreds = sum >= 100 && sum % 100 == 0 && small < 100;
    return small > 0 && (afterTens || afterHundreds);
  }

  private static void flush(StringBuilder out, int number) {
    if (number >= 0) {
      out.append(out.length() == 0 ? "" : " ").append(number);
    }
  }
}
