package swineherd.setup;

import java.util.regex.Pattern;

/**
 * Finds an amount or a strength of a medicine in words. How much is given is a matter of label and
 * vet; whatever a keeper writes of it stays in his file and is never said again.
 */
public final class Amounts {
  private static final Pattern AMOUNT =
      Pattern.compile(
          "(?iu)(?:\\d[\\d.,/]*|\\b(?:half|a|an|one|two|three|four|five|six|ten))[\\s-]*(?:an?\\s+)?"
              + "(?:ml|cc|mcg|µg|ug|mg|kg|g|grams?|iu|i\\.u\\.|units?|%|per\\s?cent|ppm|doses?|shots?"
              + "|tablets?|pills?|bolus(?:es)?|drops?|capfuls?|spoon\\w*|teaspoon\\w*|l|litres?"
              + "|liters?|oz|ounces?|lb)(?![a-z])");

  private Amounts() {}

  /** Whether words tell how much, or how strong. */
  public static boolean isIn(String words) {
    return AMOUNT.matcher(words).find();
  }
}
