package swineherd.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.figures.Triage;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;
import swineherd.setup.Sign;

/**
 * What to find out about pigs that look wrong: only what would change how soon somebody must be
 * called, or what is said. Each answer is tried out with the rules.
 */
public final class FollowUps {
  private static final int MOST = 8;

  private static final Set<String> TAKEN = Set.of("fever", "high-fever", "chill");

  /** Temperatures that stand for none, some and high fever, degC. */
  private static final List<Double> TEMPERATURES = List.of(39.3, 40.5, 41.5);

  /**
   * One question and what would follow from each answer.
   *
   * @param question in words
   * @param answers what could be answered, and whom to call then
   */
  public record FollowUp(String question, Map<String, Referral> answers) {}

  private final Checklist base;
  private final KnowledgeBase rules;
  private final List<FollowUp> all = new ArrayList<>();

  private FollowUps(Checklist base, KnowledgeBase rules) {
    this.base = base;
    this.rules = rules;
  }

  /**
   * The items of a checklist that come from signs on pigs, and whatever else somebody must be
   * called for now, or because of a death: it may be one cause.
   */
  public static List<Item> signItems(Checklist checklist) {
    return checklist.items().stream()
        .filter(
            i ->
                i.rank().emergency()
                    || i.id().equals("diary.died")
                    || i.because().stream().anyMatch(b -> b.path().startsWith("signs[")))
        .toList();
  }

  /** Whom to call by them: the most urgent. */
  public static Referral referral(Checklist checklist) {
    return signItems(checklist).stream().map(Item::referral).reduce(Referral.NONE, Triage::higher);
  }

  /**
   * The questions, those about number, day and temperature first, then the other signs to look for.
   *
   * @param base the checklist as it is
   * @param rules the rules it was checked by
   */
  public static List<FollowUp> of(Checklist base, KnowledgeBase rules) {
    return new FollowUps(base, rules).ask();
  }

  private List<FollowUp> ask() {
    String today = base.file().setup().checkOn().toString();
    Map<String, Object> counts = new LinkedHashMap<>();
    counts.put("one", 1);
    counts.put("two or more", 2);
    value("count", counts);
    value("since", Map.of("since today", today));
    Map<String, Object> temperatures = new LinkedHashMap<>();
    List<String> words = List.of("normal", "40 C (104 F) or more", "41 C (106 F) or more");
    IntStream.range(0, words.size())
        .forEach(i -> temperatures.put(words.get(i), TEMPERATURES.get(i)));
    value("temperature", temperatures);
    alsoSeen();
    return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
  }

  /** Asks for a value that some sign lacks, where an answer would change whom to call. */
  private void value(String name, Map<String, Object> answers) {
    List<String> open =
        base.unanswered().stream()
            .filter(u -> u.question().equals("signs." + name))
            .map(u -> u.path())
            .toList();
    if (open.isEmpty()) {
      return;
    }
    Map<String, Referral> outcomes = new LinkedHashMap<>();
    answers.forEach(
        (words, value) -> {
          try {
            SetupFile answered = base.file();
            for (String path : open) {
              answered = answered.with(path, value);
            }
            outcomes.put(words, referral(Advisor.advise(answered, rules)));
          } catch (BadSetupException e) {
            // there are not so many pigs
          }
        });
    if (outcomes.values().stream().anyMatch(r -> r != referral(base))) {
      all.add(new FollowUp(Rulebook.questions().get("signs." + name).ask(), outcomes));
    }
  }

  /** Asks for the other signs that the table names, where seeing one would change something. */
  private void alsoSeen() {
    Setup setup = base.file().setup();
    Map<String, String> groups = new LinkedHashMap<>();
    Set<String> shown = new LinkedHashSet<>();
    for (Sign sign : setup.signs()) {
      if (sign.sign() != null) {
        shown.add(sign.sign());
        for (String other : Triage.of(sign.sign()).ask()) {
          groups.putIfAbsent(other, Objects.requireNonNullElse(sign.pigs(), ""));
        }
      }
    }
    shown.forEach(groups::remove);
    TAKEN.forEach(groups::remove); // the thermometer tells
    groups.forEach(this::alsoSeen);
  }

  private void alsoSeen(String sign, String pigs) {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("sign", sign);
    if (!pigs.isEmpty()) {
      words.put("pigs", pigs);
    }
    Integer there = base.file().setup().group(pigs).map(g -> g.count()).orElse(null);
    words.put("since", base.file().setup().checkOn().toString());
    words.put("temperature", "39.3 C");
    if (there == null || there >= 1) {
      words.put("count", "1");
    }
    Checklist seen = Advisor.advise(base.file().and("signs", words), rules);
    Referral then = referral(seen);
    if (then.compareTo(referral(base)) > 0 || special(seen)) {
      Map<String, Referral> answers = new LinkedHashMap<>();
      answers.put("if so (" + sign + ")", then);
      all.add(new FollowUp("Do you see this too: " + Triage.of(sign).name() + "?", answers));
    }
  }

  /** Whether something as urgent is said that is more than a sign by itself. */
  private boolean special(Checklist seen) {
    return signItems(seen).stream()
        .filter(i -> !ids(base).contains(i.id()) && !i.card().covers().isEmpty())
        .anyMatch(i -> i.referral() == referral(base));
  }

  private static Set<String> ids(Checklist checklist) {
    return signItems(checklist).stream()
        .map(Item::id)
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
