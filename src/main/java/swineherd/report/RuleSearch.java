package swineherd.report;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;
import swineherd.rulebook.Card;
import swineherd.rulebook.RuleInfo;

/** Finds rules by words, as a keeper types them: singular or plural, British or American. */
public final class RuleSearch {
  private static final int NEAR = 5;

  /** As it is typed, and as the cards write it. */
  private static final Map<String, String> SPELLINGS =
      Map.ofEntries(
          Map.entry("deworm", "worm"),
          Map.entry("castration", "castrat"),
          Map.entry("castrate", "castrat"),
          Map.entry("feces", "dung"),
          Map.entry("faeces", "dung"),
          Map.entry("manure", "dung"),
          Map.entry("fiber", "fibre"),
          Map.entry("odor", "smell"),
          Map.entry("diarrhea", "scour"),
          Map.entry("diarrhoea", "scour"),
          Map.entry("liter", "litre"),
          Map.entry("ground wire", "return wire"),
          Map.entry("ground rod", "earth rod"),
          Map.entry("abscess", "swelling"),
          Map.entry("neighbor", "neighbour"),
          Map.entry("trichinosi", "trichinella"),
          Map.entry("abattoir", "slaughter"),
          Map.entry("processor", "slaughter"),
          Map.entry("charger", "energizer"),
          Map.entry("energiser", "energizer"));

  private final Collection<RuleInfo> rules;
  private final Function<RuleInfo, Card> cards;

  /**
   * @param cards the card of a rule, or null
   */
  public RuleSearch(Collection<RuleInfo> rules, Function<RuleInfo, Card> cards) {
    this.rules = rules;
    this.cards = cards;
  }

  /** The rules that speak of all of these words; those first that say them in id or heading. */
  public List<RuleInfo> find(List<String> words) {
    List<String> stems = words.stream().map(RuleSearch::stem).toList();
    return rules.stream()
        .filter(rule -> stems.stream().allMatch(stem -> hits(rule, stem) > 0))
        .sorted(
            Comparator.comparing(
                    (RuleInfo rule) -> -stems.stream().mapToInt(s -> hits(rule, s)).sum())
                .thenComparing(RuleInfo::id))
        .toList();
  }

  /** The rules whose ids are nearest to what was typed; none if nothing is near. */
  public List<RuleInfo> near(String typed) {
    String id = typed.toLowerCase(Locale.ROOT);
    String name = id.substring(id.indexOf('.') + 1);
    int most = Math.max(2, name.length() / 3);
    return rules.stream()
        .filter(rule -> distance(rule, id, name) <= most)
        .sorted(
            Comparator.comparing((RuleInfo rule) -> distance(rule, id, name))
                .thenComparing(RuleInfo::id))
        .limit(NEAR)
        .toList();
  }

  /** Between the whole ids, or the names after the topic where that is nearer. */
  private static int distance(RuleInfo rule, String id, String name) {
    String after = rule.id().substring(rule.id().indexOf('.') + 1);
    return Math.min(edits(rule.id(), id), edits(after, name) + 1);
  }

  private int hits(RuleInfo rule, String stem) {
    Card card = cards.apply(rule);
    int hits = says(rule.id().replace('-', ' ').replace('.', ' '), stem) ? 8 : 0;
    if (card != null) {
      hits += says(card.heading(), stem) ? 4 : 0;
      hits += says(card.doIt(), stem) ? 2 : 0;
      hits += says(card.why(), stem) || says(card.caution(), stem) ? 1 : 0;
      hits += says(card.ready(), stem) || says(card.meat(), stem) ? 1 : 0;
      hits += says(card.atRisk(), stem) ? 1 : 0;
    }
    return hits + (RulePage.conditions(rule).stream().anyMatch(c -> says(c, stem)) ? 1 : 0);
  }

  /** Whether a word of the text begins so. */
  private static boolean says(String text, String stem) {
    return text != null && (" " + text.toLowerCase(Locale.ROOT)).matches("(?s).*\\W" + stem + ".*");
  }

  /** A word without its endings, quoted to stand in a pattern. */
  private static String stem(String word) {
    String stem = word.toLowerCase(Locale.ROOT).strip();
    if (stem.length() > 6) {
      stem = stem.replaceFirst("(ings?|ed)$", "");
    }
    stem = stem.replaceFirst("(x|ch|sh)es$", "$1");
    if (stem.length() > 3) {
      stem = stem.replaceFirst("(?<!s)s$", "");
    }
    return Pattern.quote(
        SPELLINGS.getOrDefault(stem, SPELLINGS.getOrDefault(word.toLowerCase(Locale.ROOT), stem)));
  }

  /** Letters put in, left out or changed to make the one word of the other. */
  private static int edits(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, Math.min(row[j], row[j - 1]) + 1);
      }
    }
    return row[b.length()];
  }
}
