package swineherd.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.units.Spoken;
import swineherd.units.UnitSystem;
import swineherd.units.UnreadableException;

/**
 * Signs of illness in a keeper's own words, single ones or whole sentences: {@code one pig is off
 * feed since yesterday, 41 C, not coughing}. What was read otherwise than it was typed is told.
 */
public final class SignsHeard {
  private static final Map<String, Integer> MORE =
      Map.of("both", 2, "single", 1, "eleven", 11, "twelve", 12, "dozen", 12);

  private static final Set<SignWords.Kind> SAYS_LITTLE =
      EnumSet.of(SignWords.Kind.MUCH, SignWords.Kind.SEVERAL);

  private static final Pattern PEOPLE =
      Pattern.compile(
          "(?s)^(?!.*\\b(?:pig|weaner|gilt|barrow|boar|hog))"
              + ".*\\b(?:i have|i've got|i feel|i am|i'm|i got|i was|my (?:hand|finger|arm|skin))\\b");

  private static final String DEGREES = "(\\d{2,3}(?:[.,]\\d+)?) ?(?:°|degrees?|deg)?\\.? ?";
  private static final List<Pattern> TEMPERATURES =
      List.of(
          Pattern.compile(
              "\\b(?:temp(?:erature)?)(?: of| is| was| at)?[ :=]*"
                  + DEGREES
                  + "([cf])?(?:elsius|ahrenheit)?\\b"),
          Pattern.compile("(?<![\\d.,])" + DEGREES + "([cf])(?:elsius|ahrenheit)?\\b"),
          Pattern.compile("(?<=fever )(?:of )?" + DEGREES + "()"),
          Pattern.compile("(?<![\\d.,])(\\d{2,3}(?:[.,]\\d+)?) ?(?:°|degrees?|deg)()"),
          // without any unit: 41.5
          Pattern.compile(
              "(?<![\\d.,])((?:3[5-9]|4[0-5]|9[5-9]|10\\d|11[0-3])[.,]\\d)(?!\\d| ?(?:kg|lb|l\\b))()"));
  private static final Pattern BREATHS =
      Pattern.compile("\\b(\\d{1,3}) breaths?(?: (?:a|per|in a) min(?:ute)?)?\\b");
  private static final Pattern AGE = Pattern.compile("\\b\\w+ (?:weeks?|months?)[ -]old\\b");
  private static final Pattern WEIGHT =
      Pattern.compile("\\b\\d+(?:[.,]\\d+)? ?(?:kgs?|kilos?|lbs?|pounds?)\\b");
  private static final String DAYS = "(?:mon|tues|wednes|thurs|fri|satur|sun)day";
  private static final Pattern SINCE =
      Pattern.compile(
          "\\b(?:since |from |on )?(?:last )?(?:(today|this morning|this afternoon|tonight|just now)"
              + "|(yesterday|last night)|("
              + DAYS
              + ")|(?:for |these |the )?(?:last |past )?(an?|one|two|three|four|five|six|seven|\\d{1,3})"
              + " (hours?|hrs?|days?|weeks?)(?: ago| now)?)\\b");

  /**
   * One sign.
   *
   * @param sign its key in the table signs
   * @param count how many pigs show it; null if it was not said
   */
  public record Told(String sign, Integer count) {}

  /**
   * What was heard.
   *
   * @param signs in the order in which they were said; several of a kind are one
   * @param since the earliest day that was said, as it can be written into a setup; null if none
   * @param temperature the highest that was said, with its unit if that was said; null if none
   * @param breaths breaths in a minute; null if not said
   * @param notes what was read otherwise than typed, a sentence each
   * @param unknown words that were not understood
   * @param people whether it seems to tell of people
   * @param breeding whether it seems to tell of sows and births
   */
  public record Result(
      List<Told> signs,
      LocalDate since,
      String temperature,
      String breaths,
      List<String> notes,
      List<String> unknown,
      boolean people,
      boolean breeding) {}

  /** After these, or before them, "one" counts pigs: one ear or one leg does not. */
  private static final Pattern ONE =
      Pattern.compile(
          "(?:pig|weaner|grower|gilt|barrow|boar|hog|piglet)s?|of|is|has|was|had|looks|seems|wont"
              + "|cant|cannot|isnt|hasnt|doesnt|not|dead|died|found|lame|coughing|down|dull|off");

  /**
   * One typed word.
   *
   * @param readings what it may be; itself where it is known, or like nothing known
   * @param stop whether a stop stands before it, which ends a clause
   * @param number how many pigs it counts; null if it counts none
   */
  private record Word(String typed, List<String> readings, boolean stop, Integer number) {
    boolean misspelt() {
      return !readings.equals(List.of(typed));
    }
  }

  private final SignWords vocabulary = new SignWords();
  private final LocalDate today;
  private final Map<String, Integer> counts = new LinkedHashMap<>();
  private final List<String> notes = new ArrayList<>();
  private final List<String> unknown = new ArrayList<>();
  private final Set<String> absent = new LinkedHashSet<>();
  private boolean people;
  private boolean breeding;
  private LocalDate since;
  private String temperature;
  private String breaths;

  private SignsHeard(LocalDate today) {
    this.today = today;
  }

  /**
   * @param typed all that was typed, in as many pieces as the shell made of it
   * @param today the day from which days are reckoned
   */
  public static Result hear(List<String> typed, LocalDate today) {
    SignsHeard heard = new SignsHeard(today);
    Question question = Rulebook.questions().get("signs.sign");
    List<String> rest = new ArrayList<>();
    for (String piece : typed) {
      // the names of some signs are sentences with stops of their own
      Optional<String> sign = piece.contains(",") ? question.choice(piece) : Optional.empty();
      sign.ifPresentOrElse(s -> heard.counts.put(s, 0), () -> rest.add(piece));
    }
    return heard.heard(String.join(" ", rest));
  }

  /**
   * A day as people say it, in the form of a setup file; what is none comes back as it is.
   *
   * @param typed such as {@code yesterday}, {@code 3 days ago} or {@code monday}
   */
  public static String day(String typed, LocalDate today) {
    String said = typed.strip().toLowerCase(Locale.ROOT).replaceFirst("^since ", "");
    Matcher since = SINCE.matcher(said);
    if (since.matches()) {
      return date(since, today).toString();
    }
    try {
      return new DayHeard(today, UnitSystem.METRIC).date(said, true).said();
    } catch (UnreadableException e) {
      return typed;
    }
  }

  /** A number of pigs as people say it, in digits; what is none comes back as it is. */
  public static String number(String typed) {
    Integer number = numberOf(typed.strip().toLowerCase(Locale.ROOT));
    return number == null ? typed : number.toString();
  }

  private Result heard(String text) {
    String rest = asides(text.toLowerCase(Locale.ROOT).replace('’', '\''));
    people = PEOPLE.matcher(rest).find();
    signs(words(rest));
    if (!absent.isEmpty()) {
      notes.add("Left out, as you say it is not so: " + String.join(", ", absent) + ".");
    }
    List<Told> told = new ArrayList<>();
    counts.forEach((sign, count) -> told.add(new Told(sign, count == 0 ? null : count)));
    return new Result(
        told, since, temperature, breaths, notes, List.copyOf(unknown), people, breeding);
  }

  /** Takes temperature, breaths and days out of the text. */
  private String asides(String text) {
    Matcher old = AGE.matcher(text);
    while (old.find()) {
      unknown.add(old.group());
    }
    String rest = WEIGHT.matcher(AGE.matcher(text).replaceAll(" ")).replaceAll(" ");
    double highest = 0;
    for (Pattern pattern : TEMPERATURES) {
      Matcher found = pattern.matcher(rest);
      while (found.find()) {
        double number = Double.parseDouble(found.group(1).replace(',', '.'));
        String unit = found.group(2) == null ? "" : " " + found.group(2).toUpperCase(Locale.ROOT);
        double celsius = number > 60 ? (number - 32) / 1.8 : number;
        if (celsius > highest) {
          highest = celsius;
          temperature = (found.group(1).replace(',', '.') + unit).strip();
        }
      }
      rest = pattern.matcher(rest).replaceAll(" ");
    }
    Matcher breath = BREATHS.matcher(rest);
    if (breath.find()) {
      breaths = breath.group(1);
      rest = breath.replaceAll("");
    }
    Matcher day = SINCE.matcher(rest);
    while (day.find()) {
      LocalDate date = date(day, today);
      since = since == null || date.isBefore(since) ? date : since;
    }
    return SINCE.matcher(rest).replaceAll(" ");
  }

  private static LocalDate date(Matcher since, LocalDate today) {
    if (since.group(1) != null) {
      return today;
    }
    if (since.group(2) != null) {
      return today.minusDays(1);
    }
    if (since.group(3) != null) {
      return LocalDate.parse(
          new DayHeard(today, UnitSystem.METRIC).date(since.group(3), true).said());
    }
    String said = Spoken.digits(since.group(4).replaceFirst("^an?$", "1"));
    int number = Integer.parseInt(said.strip());
    return switch (since.group(5).charAt(0)) {
      case 'h' -> today.minusDays(number / 24);
      case 'd' -> today.minusDays(number);
      default -> today.minusWeeks(number);
    };
  }

  private List<Word> words(String text) {
    List<Word> words = new ArrayList<>();
    boolean stop = false;
    for (String part : text.split("(?<=[,.;:!?\\n])|(?=[,.;:!?\\n])")) {
      stop |= part.matches("[,.;:!?\\n]");
      List<String> typed = SignWords.split(part);
      for (int i = 0; i < typed.size(); i++) {
        String word = typed.get(i);
        String next = i + 1 < typed.size() ? typed.get(i + 1) : "";
        boolean whole = i > 0 && typed.get(i - 1).equals("of"); // 4 of 60 pigs
        Integer number = whole ? null : number(word, next);
        boolean skipped = vocabulary.kind(word) == SignWords.Kind.SKIP;
        if (number != null || !skipped) {
          words.add(new Word(word, readings(word), stop, number));
          stop = false;
        }
      }
    }
    return words;
  }

  private static Integer number(String word, String next) {
    Integer number = word.equals("a") ? Integer.valueOf(1) : numberOf(word);
    boolean some = number != null && number == 1;
    if (word.equals("a")) {
      return next.matches("(?:pig|weaner|grower|gilt|barrow|boar|hog|piglet)") ? number : null;
    }
    return some && !ONE.matcher(next).matches() ? null : number;
  }

  private List<String> readings(String word) {
    if (vocabulary.isKnown(word) || numberOf(word) != null) {
      return List.of(word);
    }
    List<String> near = vocabulary.near(word);
    return near.isEmpty() ? List.of(word) : near;
  }

  private void signs(List<Word> words) {
    int count = 0;
    int numbers = 0;
    String not = null;
    for (int at = 0; at < words.size(); ) {
      Word word = words.get(at);
      not = word.stop() ? null : not;
      int end = word.number() != null && word.number() == 1 ? at : end(words, at);
      boolean counts = end <= at + 1 || !named(words.subList(at + 1, end)).isEmpty();
      if (word.number() != null && counts) { // "two dead" does, "three legs" does not
        count = word.number();
        numbers++;
      }
      if (end > at) {
        boolean died = take(words.subList(at, end), count, not != null);
        count = died ? 0 : count; // of those that live nobody said how many
        boolean goesOn = end < words.size() && words.get(end).typed().matches("or|nor");
        not = goesOn ? not : null;
        at = end;
        continue;
      }
      if (vocabulary.kind(word.typed()) == SignWords.Kind.SEVERAL) {
        count = 0;
        numbers++;
      } else if (word.number() == null && !word.typed().matches("or|nor")) {
        not = single(word, not);
      }
      at++;
    }
    boolean last = numbers == 1 && counts.values().stream().allMatch(c -> c == 0);
    if (last && count > 0) {
      int all = count;
      counts.replaceAll((sign, c) -> all);
    }
  }

  /** Where the longest run of words that names a sign ends; where it begins if none does. */
  private int end(List<Word> words, int from) {
    int to = Math.min(words.size(), from + SignWords.LONGEST);
    for (int i = from + 1; i < to; i++) {
      if (words.get(i).stop()) {
        to = i;
      }
    }
    while (to > from && named(words.subList(from, to)).isEmpty()) {
      to--;
    }
    return to;
  }

  private Set<String> named(List<Word> run) {
    Set<String> signs = named(run.stream().map(Word::readings));
    return signs.isEmpty() && !SAYS_LITTLE.contains(vocabulary.kind(run.get(0).typed()))
        ? named(
            run.stream()
                .filter(w -> !SAYS_LITTLE.contains(vocabulary.kind(w.typed())))
                .map(Word::readings))
        : signs;
  }

  private Set<String> named(Stream<List<String>> readings) {
    Set<String> signs = new LinkedHashSet<>();
    for (List<String> reading : SignWords.readings(readings.toList())) {
      String sign = vocabulary.sign(reading);
      if (sign != null) {
        signs.add(sign);
      }
    }
    return signs;
  }

  /** Takes the signs of a run of words; says whether it tells of the dead. */
  private boolean take(List<Word> run, int count, boolean not) {
    for (Word word : run) {
      if (word.misspelt()) {
        notes.add(
            word.readings().size() == 1
                ? "Read \"%s\" as \"%s\".".formatted(word.typed(), word.readings().get(0))
                : "\"%s\" may be \"%s\"; all of that counts until you say which."
                    .formatted(word.typed(), String.join("\" or \"", word.readings())));
      }
    }
    if (not) {
      absent.add(String.join(" ", run.stream().map(w -> w.readings().get(0)).toList()));
      return false;
    }
    Set<String> signs = named(run);
    for (String sign : signs) {
      counts.merge(sign, count, (a, b) -> a == 0 || b == 0 ? 0 : Math.max(a, b));
    }
    return signs.stream().anyMatch(sign -> sign.endsWith("dead") || sign.equals("sudden-death"));
  }

  /** A word that names no sign; whether what follows is said not to be. */
  private String single(Word word, String not) {
    SignWords.Kind kind = vocabulary.kind(word.typed());
    if (kind == SignWords.Kind.NOT) {
      return word.typed();
    }
    if (numberOf(word.typed()) != null) {
      return null; // one that counts no pigs
    }
    people |= kind == SignWords.Kind.PERSON;
    breeding |= kind == SignWords.Kind.BREEDING;
    if (kind == null) {
      unknown.add(not == null ? word.typed() : not + " " + word.typed());
    } else if (kind == SignWords.Kind.QUIET && not != null) {
      unknown.add(not + " " + word.typed());
    }
    return null;
  }

  private static Integer numberOf(String word) {
    if (word.matches("\\d{1,3}")) {
      return Integer.valueOf(word);
    }
    int number = SignWords.NUMBERS.indexOf(word);
    return number > 0 ? Integer.valueOf(number) : MORE.get(word);
  }
}
