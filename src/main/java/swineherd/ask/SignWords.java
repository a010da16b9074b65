package swineherd.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.text.similarity.LevenshteinDistance;
import swineherd.figures.Triage;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;

/**
 * The words in which keepers name signs of illness: those of the table {@code signs}, and what the
 * table {@code sign-words} says of single words. A phrase is known in its own form, with its words
 * in their plain forms (scours, scouring: scour), and those in any order.
 */
final class SignWords {
  /** Numbers in words that count pigs. */
  static final List<String> NUMBERS =
      List.of(
          "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten");

  /** Words in the longest phrase that is tried. */
  static final int LONGEST = 6;

  /** What a word does in a sentence. */
  enum Kind {
    SAME,
    NOT,
    SEVERAL,
    MUCH,
    SKIP,
    QUIET,
    PERSON,
    BREEDING
  }

  /** A typed word of so many letters may be one letter off, or two. */
  private static final int NEAR_FROM = 4;

  private static final int NEARER_FROM = 5;
  private static final int TWO_FROM = 8;

  private final Map<String, Kind> kinds = new HashMap<>();
  private final Map<String, String> same = new HashMap<>();
  private final Map<String, String> written = new HashMap<>();
  private final Map<String, String> plain = new HashMap<>();
  private final Map<String, String> anyOrder = new HashMap<>();

  /** Words of phrases, by which a misspelt one is known. */
  private final Set<String> words = new TreeSet<>();

  private final Set<String> plainWords = new TreeSet<>();

  SignWords() {
    for (Table.Row row : Table.named("sign-words").rows()) {
      kinds.put(row.key(), Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)));
      if (!row.text("means").isEmpty()) {
        same.put(row.key(), row.text("means"));
        words.add(row.key());
      }
    }
    Question question = Rulebook.questions().get("signs.sign");
    question
        .choices()
        .forEach(
            (key, name) -> {
              add(key, key);
              add(key, name);
              question.also().getOrDefault(key, List.of()).forEach(also -> add(key, also));
            });
    words.forEach(word -> plainWords.add(plain(word)));
  }

  private void add(String sign, String phrase) {
    List<String> typed = split(phrase);
    typed.remove("the");
    boolean more = typed.size() > 1;
    typed.removeIf(w -> kinds.get(w) == Kind.SKIP);
    if (typed.isEmpty() || (typed.size() == 1 && more)) {
      return; // what is left would mean too much: "not itself", "dead pigs"
    }
    words.addAll(typed);
    List<String> forms = typed.stream().map(this::plain).toList();
    written.merge(String.join(" ", typed), sign, SignWords::moreUrgent);
    plain.merge(String.join(" ", forms), sign, SignWords::moreUrgent);
    if (!isOrdered(forms)) {
      anyOrder.merge(sorted(forms), sign, SignWords::moreUrgent);
    }
  }

  private static String moreUrgent(String one, String other) {
    return Triage.of(other).least().compareTo(Triage.of(one).least()) > 0 ? other : one;
  }

  /** The single words of a text, in small letters, without stops and apostrophes. */
  static List<String> split(String text) {
    String letters =
        text.toLowerCase(Locale.ROOT).replaceAll("['’`]", "").replaceAll("[^\\p{L}\\d]+", " ");
    return new ArrayList<>(Arrays.stream(letters.split(" ")).filter(w -> !w.isEmpty()).toList());
  }

  /** What a word does by itself; null if nothing is known of it. */
  Kind kind(String word) {
    Kind kind = kinds.get(word);
    return kind == Kind.SAME ? kinds.get(same.get(word)) : kind;
  }

  /** The sign that a run of words names; null if none. */
  String sign(List<String> run) {
    String found = written.get(String.join(" ", run));
    if (found != null) {
      return found;
    }
    List<String> forms = run.stream().map(this::plain).toList();
    found = plain.get(String.join(" ", forms));
    return found != null || isOrdered(forms) ? found : anyOrder.get(sorted(forms));
  }

  /** Whether it stands in some phrase or in the table of words, in any of its forms. */
  boolean isKnown(String word) {
    return kinds.containsKey(word) || words.contains(word) || plainWords.contains(plain(word));
  }

  /** The known words that a misspelt one is closest to; several if they mean different things. */
  List<String> near(String word) {
    LevenshteinDistance distance =
        new LevenshteinDistance(word.length() >= TWO_FROM ? 2 : word.length() >= NEAR_FROM ? 1 : 0);
    int least = Integer.MAX_VALUE;
    Map<String, String> best = new HashMap<>();
    for (String known : words) {
      if (Math.max(known.length(), word.length()) < NEARER_FROM) {
        continue;
      }
      int d = distance.apply(word, known);
      if (d > 0 && d <= least) {
        if (d < least) {
          best.clear();
        }
        least = d;
        best.putIfAbsent(plain(known), known);
      }
    }
    return best.size() > 2 ? List.of() : best.values().stream().sorted().toList();
  }

  /** The form that stands for all forms of a word, and for words that mean the same. */
  private String plain(String word) {
    if (kinds.get(word) == Kind.NOT) {
      return "not";
    }
    if (NUMBERS.contains(word)) {
      return word;
    }
    String means = same.get(word);
    return stem(means != null ? means : same.getOrDefault(stem(word), word));
  }

  /** Coughs, coughed and coughing: cough. Rough, but the same on both sides. */
  private static String stem(String word) {
    String stem = word.length() < 5 ? word : word.replaceFirst("(?:ing|ed)$", "");
    stem = stem.length() < 4 ? stem : stem.replaceFirst("(?<!s)s$", "");
    stem = stem.replaceFirst("([bdgmnprt])\\1$", "$1");
    return stem.length() < 4 ? stem : stem.replaceFirst("e$", "");
  }

  /** What is denied or counted is the next word, so that the order matters. */
  private static boolean isOrdered(List<String> words) {
    return words.stream().anyMatch(w -> w.equals("not") || NUMBERS.contains(w));
  }

  private static String sorted(List<String> words) {
    return String.join(" ", words.stream().sorted().toList());
  }

  /** All runs that a run with several readings of a word can mean. */
  static List<List<String>> readings(List<List<String>> words) {
    List<List<String>> all = List.of(List.of());
    for (List<String> readings : words) {
      Set<List<String>> longer = new LinkedHashSet<>();
      for (List<String> begun : all) {
        for (String reading : readings) {
          List<String> one = new ArrayList<>(begun);
          one.add(reading);
          longer.add(one);
        }
      }
      all = List.copyOf(longer);
    }
    return all;
  }
}
