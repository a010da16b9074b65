package swineherd.ask;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.LevenshteinDistance;
import swineherd.rulebook.Question;
import swineherd.units.Spoken;
import swineherd.units.UnreadableException;

/**
 * Finds the choice that is meant: by its number, its key, its words, or a part that only it has.
 */
final class Choosing {
  /** More choices than this are not numbered; they are typed, and listed on request. */
  static final int MOST_NUMBERED = 12;

  private static final Set<String> NOTHING = Set.of("no", "none", "nothing", "none of them", "n");

  private final Question question;

  private Choosing(Question question) {
    this.question = question;
  }

  static Heard one(Question question, String typed) {
    return new Choosing(question).one(typed);
  }

  /** Several choices, between commas or the word and. */
  static Heard several(Question question, String typed) {
    Choosing choosing = new Choosing(question);
    String exact = choosing.exact(normal(typed));
    if (exact != null) {
      return new Heard(List.of(exact), question.choices().get(exact), false);
    }
    String[] parts =
        typed.strip().matches("\\d+(?:\\s+\\d+)+")
            ? typed.strip().split("\\s+")
            : typed.split("\\s*(?:[,;&+]|\\band\\b)\\s*");
    Set<String> keys = new LinkedHashSet<>();
    boolean doubt = false;
    for (String part : parts) {
      if (!part.isBlank()) {
        Heard heard = choosing.one(part);
        keys.addAll(heard.written());
        doubt |= heard.doubt();
      }
    }
    if (keys.isEmpty()) {
      throw choosing.unreadable(typed);
    }
    String words = keys.stream().map(question.choices()::get).collect(Collectors.joining("; "));
    return new Heard(List.copyOf(keys), words, doubt);
  }

  static boolean isNumbered(Question question) {
    return question.choices().size() <= MOST_NUMBERED;
  }

  private Heard one(String typed) {
    String wanted = normal(typed);
    String key = numbered(wanted);
    if (key == null) {
      key = exact(wanted);
    }
    if (key == null && wanted.length() > 1) {
      key = only(wanted, true);
    }
    if (key != null) {
      return Heard.sure(key, question.choices().get(key));
    }
    key = wanted.length() > 2 ? only(wanted, false) : null;
    if (key == null) {
      key = containing(wanted);
    }
    if (key == null) {
      key = nearest(wanted);
    }
    if (key == null) {
      throw unreadable(typed);
    }
    return Heard.doubtful(key, question.choices().get(key));
  }

  private UnreadableException unreadable(String typed) {
    return new UnreadableException(
        Hearing.quoted(typed) + " is not one of the answers",
        isNumbered(question)
            ? "a number from 1 to " + question.choices().size()
            : "? lists all " + question.choices().size());
  }

  private String numbered(String wanted) {
    String digits = Spoken.digits(wanted).replaceFirst("^(?:number|no\\.) ", "");
    if (!isNumbered(question) || !digits.matches("\\d{1,2}")) {
      return null;
    }
    int number = Integer.parseInt(digits);
    List<String> keys = new ArrayList<>(question.choices().keySet());
    return number >= 1 && number <= keys.size() ? keys.get(number - 1) : null;
  }

  private String exact(String wanted) {
    for (Map.Entry<String, Set<String>> choice : names().entrySet()) {
      if (choice.getValue().contains(wanted)) {
        return choice.getKey();
      }
    }
    if (NOTHING.contains(wanted)) {
      return question.choices().keySet().stream()
          .filter(key -> key.equals("none") || key.startsWith("none-"))
          .findFirst()
          .orElse(null);
    }
    return null;
  }

  /** The one choice of which a name begins so; by its key alone, or by all its words. */
  private String only(String wanted, boolean keysOnly) {
    List<String> found =
        names().entrySet().stream()
            .filter(
                choice ->
                    keysOnly
                        ? normal(choice.getKey()).startsWith(wanted)
                        : choice.getValue().stream().anyMatch(name -> name.startsWith(wanted)))
            .map(Map.Entry::getKey)
            .toList();
    return found.size() == 1 ? found.get(0) : null;
  }

  /** The one choice whose words hold all of these. */
  private String containing(String wanted) {
    Set<String> parts =
        Arrays.stream(wanted.split(" "))
            .filter(w -> w.length() > 2 && !Set.of("the", "and", "with").contains(w))
            .collect(Collectors.toSet());
    if (parts.isEmpty()) {
      return null;
    }
    List<String> found =
        names().entrySet().stream()
            .filter(
                choice ->
                    Set.copyOf(Arrays.asList(String.join(" ", choice.getValue()).split(" ")))
                        .containsAll(parts))
            .map(Map.Entry::getKey)
            .toList();
    return found.size() == 1 ? found.get(0) : null;
  }

  private String nearest(String wanted) {
    if (wanted.length() < 4) {
      return null;
    }
    LevenshteinDistance distance = new LevenshteinDistance(Math.max(1, wanted.length() / 4));
    String best = null;
    int least = Integer.MAX_VALUE;
    for (Map.Entry<String, Set<String>> choice : names().entrySet()) {
      for (String name : choice.getValue()) {
        int d = distance.apply(wanted, name);
        if (d >= 0 && d < least) {
          least = d;
          best = choice.getKey();
        }
      }
    }
    return best;
  }

  /** Every name of each choice. */
  private Map<String, Set<String>> names() {
    Map<String, Set<String>> names = new LinkedHashMap<>();
    question
        .choices()
        .forEach(
            (key, words) -> {
              Set<String> all = new LinkedHashSet<>(List.of(normal(key), normal(words)));
              question.also().getOrDefault(key, List.of()).forEach(w -> all.add(normal(w)));
              names.put(key, all);
            });
    return names;
  }

  static String normal(String text) {
    return text.toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{N}.%]+", " ")
        .strip()
        .replaceFirst("^(?:a|an|the) (?=.)", "")
        .replaceFirst("\\.$", "");
  }
}
