package swineherd.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.rulebook.Question;
import swineherd.units.Dimension;
import swineherd.units.Latitude;
import swineherd.units.Price;
import swineherd.units.Quantity;
import swineherd.units.Spoken;
import swineherd.units.UnitSystem;
import swineherd.units.UnreadableException;

/**
 * Takes an answer as a person types it and finds the form in which a setup file holds it. What had
 * to be guessed, such as the unit of a bare number, is marked as doubtful.
 */
final class Hearing {
  private static final Set<String> YES =
      Set.of("y", "yes", "yep", "yeah", "yup", "aye", "sure", "true", "on", "of course");
  private static final Set<String> NO =
      Set.of("n", "no", "nope", "nah", "nay", "not yet", "never", "none", "false", "off");
  private static final Set<String> UNKNOWN =
      Set.of(
          "unknown",
          "don't know",
          "dont know",
          "i don't know",
          "i dont know",
          "do not know",
          "dunno",
          "not sure",
          "unsure",
          "no idea",
          "not known",
          "idk",
          "can't say",
          "cant say",
          "can't tell",
          "who knows");

  /** Hardly anybody would think of another unit. */
  private static final Set<Dimension> UNMISTAKABLE =
      Set.of(Dimension.ENERGY, Dimension.VOLTAGE, Dimension.SHARE);

  private static final String NUMBER = "\\d+(?:[.,]\\d+)?";
  private static final Pattern BARE = Pattern.compile("([-+]?(?:\\d[\\d,]*(?:\\.\\d+)?|\\.\\d+))");
  private static final Pattern BARE_SIDES =
      Pattern.compile("(" + NUMBER + ")\\s*(?:x|×|\\*|by)\\s*(" + NUMBER + ")");
  private static final Pattern SPAN =
      Pattern.compile(
          "(" + NUMBER + ")\\s*([a-z'\"]*)\\s*(?:-|to|or)\\s*(" + NUMBER + ")\\s*(\\D*)");
  private static final Pattern ROUGHLY =
      Pattern.compile(
          "^(?:about|around|roughly|approximately|approx\\.?|circa|ca\\.?|~|some|say|maybe|nearly|almost)\\s*");
  private static final Pattern COUNTED =
      Pattern.compile(
          "(\\d+)(?: of them)?(?: (?:pigs?|weaners?|piglets?|gilts?|boars?|barrows?|males?|hogs?|strands?|wires?|rods?|drinkers?|nipples?|bowls?))?");
  private static final Pattern MINUTES =
      Pattern.compile("(\\d{1,2})\\s*[°d ]\\s*(\\d{1,2})\\s*['’m]?(?:in)?\\s*([ns])\\w*");
  private static final String CURRENCY =
      "(?:dollars?|bucks|pounds?|quid|euros?|crowns?|kroner|usd|gbp|eur|aud|nzd|cad|each|a head|apiece)";

  private final UnitSystem units;
  private final LocalDate today;
  private final Boolean south;

  /**
   * @param units in which a bare number is taken, to be confirmed
   * @param today the day from which a date without a year is reckoned
   * @param south whether the place lies south of the equator; null if that is not known
   */
  Hearing(UnitSystem units, LocalDate today, Boolean south) {
    this.units = units;
    this.today = today;
    this.south = south;
  }

  static boolean isYes(String typed) {
    return YES.contains(plain(typed));
  }

  static boolean isNo(String typed) {
    return NO.contains(plain(typed));
  }

  static boolean isUnknown(String typed) {
    return UNKNOWN.contains(plain(typed).replace('’', '\''));
  }

  private static String plain(String typed) {
    return typed.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ").replaceAll("[.!]+$", "");
  }

  /**
   * The answer to a question.
   *
   * @throws UnreadableException if it is none; the message says what would be accepted
   */
  Heard hear(Question question, String typed) {
    if (question.list()) {
      return question.kind() == Question.Kind.CHOICE
          ? Choosing.several(question, typed)
          : several(question, typed);
    }
    return switch (question.kind()) {
      case TEXT -> text(typed);
      case YES_NO -> yesNo(typed);
      case CHOICE -> Choosing.one(question, typed);
      case COUNT -> count(typed);
      case DATE -> new DayHeard(today, units).date(typed, question.past());
      case DAY_OF_YEAR -> new DayHeard(today, units).dayOfYear(typed);
      case LATITUDE -> latitude(typed);
      case PRICE -> price(typed);
      case PRICE_BY_WEIGHT -> priceByWeight(typed);
      default -> quantity(question, typed);
    };
  }

  private static Heard text(String typed) {
    String text = typed.strip().replaceAll("\\s+", " ");
    if (text.length() > 1 && text.matches("\".*\"|'.*'")) {
      text = text.substring(1, text.length() - 1).strip();
    }
    if (text.isEmpty()) {
      throw new UnreadableException("there is nothing in it", "a name");
    }
    // hardly a name: more likely another question was meant
    boolean slip = isYes(text) || isNo(text) || text.matches("\\d+");
    return slip && text.equals(typed.strip())
        ? Heard.doubtful(text, quoted(text))
        : Heard.sure(text, text);
  }

  private static Heard yesNo(String typed) {
    if (isYes(typed)) {
      return Heard.sure("yes", "yes");
    }
    if (isNo(typed)) {
      return Heard.sure("no", "no");
    }
    throw new UnreadableException(quoted(typed) + " is neither yes nor no", "y, n or don't know");
  }

  private static Heard count(String typed) {
    String text = ROUGHLY.matcher(Spoken.digits(typed)).replaceFirst("");
    if (NO.contains(text) || text.equals("nothing")) {
      return Heard.sure("0", "0");
    }
    Matcher counted = COUNTED.matcher(text);
    if (!counted.matches()) {
      throw new UnreadableException(quoted(typed) + " is not a whole number", "such as 3");
    }
    String number = counted.group(1).replaceFirst("^0+(?=\\d)", "");
    return Heard.sure(number, number);
  }

  private Heard latitude(String typed) {
    String text = plain(typed).replaceAll("^(?:about|around|roughly)\\s*", "");
    Matcher minutes = MINUTES.matcher(text);
    if (minutes.matches()) {
      double degrees =
          Integer.parseInt(minutes.group(1)) + Integer.parseInt(minutes.group(2)) / 60.0;
      text = "%.1f %s".formatted(degrees, minutes.group(3)).replace(',', '.');
    }
    double latitude = Latitude.parse(text);
    boolean bare = text.matches("[\\d.]+\\s*(?:°|deg|degrees)?");
    if (bare && Boolean.TRUE.equals(south)) {
      latitude = -latitude;
    }
    String number = String.valueOf(Math.abs(latitude)).replaceFirst("\\.0$", "");
    String tidy = number + (latitude < 0 ? " S" : " N");
    String words = number + (latitude < 0 ? " degrees south" : " degrees north");
    return bare && south == null ? Heard.doubtful(tidy, words) : Heard.sure(tidy, words);
  }

  private static Heard price(String typed) {
    String text = ROUGHLY.matcher(Spoken.digits(typed)).replaceFirst("");
    text = text.replaceFirst("\\s*" + CURRENCY + "(?:\\s+each)?$", "");
    if (NO.contains(text) || text.equals("nothing")) {
      text = "0";
    }
    Price.parse(text);
    return Heard.sure(text, text + " in your money");
  }

  private static Heard priceByWeight(String typed) {
    String text = ROUGHLY.matcher(Spoken.digits(typed)).replaceFirst("");
    text = text.replaceFirst("^(\\S+?)\\s+" + CURRENCY + "\\s+(?=per|for|an?\\b|/)", "$1 ");
    text = text.replaceFirst("\\b(?:for an?|an?|for|each)\\s+(?=\\S)", "per ");
    Price.perKg(text);
    return Heard.sure(text, text);
  }

  // ------------------------------------------------------------------------------- quantities

  private Heard quantity(Question question, String typed) {
    Dimension dimension = question.kind().dimension();
    String text =
        ROUGHLY.matcher(Spoken.digits(typed)).replaceFirst("").replaceFirst("\\s+each$", "");
    Matcher span = SPAN.matcher(text);
    if (span.matches()) {
      return middle(question, typed, span);
    }
    Matcher sides = BARE_SIDES.matcher(text);
    if (dimension == Dimension.AREA && sides.matches()) {
      String unit = units == UnitSystem.US ? " ft" : " m";
      String tidy = Quantity.tidy(text + unit, dimension);
      return Heard.doubtful(tidy, Amounts.words(tidy, dimension, units));
    }
    if (BARE.matcher(text).matches()) {
      return bare(question, typed, text);
    }
    try {
      String tidy = Quantity.tidy(text, dimension);
      return Heard.sure(tidy, Amounts.words(tidy, dimension, units));
    } catch (UnreadableException e) {
      throw new UnreadableException(
          quoted(typed) + " cannot be read here", "write it like " + dimension.example());
    }
  }

  /** From one to another: the middle, if that is meant. */
  private Heard middle(Question question, String typed, Matcher span) {
    Dimension dimension = question.kind().dimension();
    String unit = span.group(4).isBlank() ? span.group(2) : span.group(4);
    try {
      double low = Quantity.parse(span.group(1) + " " + unit, dimension);
      double high = Quantity.parse(span.group(3) + " " + unit, dimension);
      String symbol = dimension.symbolFor(unit);
      String tidy =
          Quantity.tidy(
              Amounts.number(dimension.fromBase((low + high) / 2, symbol)) + " " + symbol,
              dimension);
      return Heard.doubtful(tidy, Amounts.words(tidy, dimension, units) + ", the middle of that");
    } catch (UnreadableException e) {
      throw new UnreadableException(
          quoted(typed) + " is not one amount", "one, such as " + dimension.example());
    }
  }

  /** A number without a unit: taken in the only unit that fits, to be confirmed. */
  private Heard bare(Question question, String typed, String number) {
    Dimension dimension = question.kind().dimension();
    List<String> candidates = Amounts.candidates(dimension, units);
    List<String> usual = new ArrayList<>();
    List<String> possible = new ArrayList<>();
    for (String symbol : candidates) {
      double value = Quantity.parse(number + " " + symbol, dimension);
      if (within(question.range(), value)) {
        possible.add(symbol);
        if (within(question.usual(), value)) {
          usual.add(symbol);
        }
      }
    }
    List<String> fitting = usual.isEmpty() ? possible : usual;
    if (fitting.size() == 1) {
      String tidy = Quantity.tidy(number + " " + fitting.get(0), dimension);
      String words = Amounts.words(tidy, dimension, units);
      boolean plain = fitting.get(0).equals(dimension.base()) && UNMISTAKABLE.contains(dimension);
      return plain ? Heard.sure(tidy, words) : Heard.doubtful(tidy, words);
    }
    List<String> named = fitting.isEmpty() ? candidates : fitting;
    throw new UnreadableException(
        quoted(typed) + " has no unit",
        "write "
            + String.join(" or ", named.stream().map(symbol -> number + " " + symbol).toList()));
  }

  private static boolean within(List<Double> limits, double value) {
    return limits == null || (value >= limits.get(0) && value <= limits.get(1));
  }

  /** Several amounts; a unit that stands only behind the last is meant for all. */
  private Heard several(Question question, String typed) {
    String text = Spoken.digits(typed).replaceFirst("^\\[", "").replaceFirst("]$", "");
    String[] parts = text.split("\\s*(?:[,;&]|\\band\\b)\\s*");
    String unit = parts[parts.length - 1].replaceFirst("^[-+\\d.,/\\s]+", "");
    boolean spaced = parts.length == 1 && text.matches("[\\d.]+(?: [\\d.]+)+\\s*\\D*");
    if (spaced) {
      parts = text.replaceFirst("\\s*[^\\d.\\s]+$", "").split(" ");
    }
    List<String> written = new ArrayList<>();
    List<String> words = new ArrayList<>();
    boolean doubt = false;
    for (String part : parts) {
      if (part.isBlank()) {
        continue;
      }
      String whole = BARE.matcher(part.strip()).matches() ? part.strip() + " " + unit : part;
      Heard one = quantity(question, whole.strip());
      written.add(one.said());
      words.add(one.words());
      doubt |= one.doubt();
    }
    if (written.isEmpty()) {
      throw new UnreadableException(quoted(typed) + " holds no amount", "such as 8 in, 18 in");
    }
    return new Heard(written, String.join(", ", words), doubt);
  }

  static String quoted(String typed) {
    return "\"" + typed.strip() + "\"";
  }
}
