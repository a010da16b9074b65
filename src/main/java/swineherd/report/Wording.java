package swineherd.report;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.advice.Advice;
import swineherd.advice.Value;
import swineherd.units.Dates;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** Fills the placeholders of a card in the keeper's units. */
final class Wording {
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]\\w*)\\}");
  private static final List<String> NUMBERS =
      List.of(
          "no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
          "eleven", "twelve");

  private final UnitSystem units;

  Wording(UnitSystem units) {
    this.units = units;
  }

  /** The text with its placeholders filled; null stays null. */
  String fill(String text, Advice advice) {
    if (text == null) {
      return null;
    }
    Matcher found = PLACEHOLDER.matcher(text);
    StringBuilder filled = new StringBuilder();
    while (found.find()) {
      String name = found.group(1);
      Value value = advice.values().get(name);
      String words =
          value != null ? words(value) : name.equals("about") ? advice.about() : found.group();
      found.appendReplacement(filled, Matcher.quoteReplacement(words));
    }
    found.appendTail(filled);
    return capital(filled.toString().strip().replaceAll(" {2,}", " "));
  }

  /** A value as it stands in a sentence. */
  String words(Value value) {
    if (value instanceof Value.Amount amount) {
      return Display.band(
          amount.band().low(),
          amount.band().likely(),
          amount.band().high(),
          amount.dimension(),
          units);
    }
    if (value instanceof Value.Amounts several) {
      return Display.amounts(several.amounts(), several.dimension(), units);
    }
    if (value instanceof Value.Count count) {
      return number(count.count());
    }
    if (value instanceof Value.Day day) {
      return Dates.words(day.day());
    }
    if (value instanceof Value.Chance chance) {
      return chance(chance.chance());
    }
    return ((Value.Words) value).words();
  }

  /** {@code three}; from thirteen up in figures. */
  static String number(int count) {
    return count >= 0 && count < NUMBERS.size() ? NUMBERS.get(count) : Integer.toString(count);
  }

  /** {@code three pigs}, {@code one pig}. */
  static String counted(int count, String one, String many) {
    return number(count) + " " + (count == 1 ? one : many);
  }

  /** A probability as people say it. */
  static String chance(double chance) {
    int tenths = (int) Math.round(chance * 10);
    if (chance < 0.02) {
      return "hardly any chance";
    }
    if (chance > 0.98) {
      return "almost sure";
    }
    if (tenths == 0 || tenths == 10) {
      return tenths == 0 ? "less than one in ten" : "more than nine in ten";
    }
    return tenths + " in ten";
  }

  static String capital(String text) {
    return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }

  static String uncapital(String text) {
    return text.isEmpty() ? text : Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  /** The answers an item rests on, in one line: {@code fence: electric; pigs there before: yes}. */
  static String said(Map<String, String> answers) {
    StringBuilder line = new StringBuilder();
    answers.forEach(
        (label, said) ->
            line.append(line.isEmpty() ? "" : "; ").append(label).append(": ").append(said));
    return line.toString();
  }
}
