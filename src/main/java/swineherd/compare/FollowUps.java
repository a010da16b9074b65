package swineherd.compare;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
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
  private static final String NOT_FIT = "slaughter.not-fit";

  private static final Set<String> TAKEN = Set.of("fever", "high-fever", "chill");

  /** Beside what must be reported anyway only this is asked for. */
  private static final Set<String> PEOPLE_DIE = Set.of("bleeding-dead");

  /** A value that may be open, with the mildest answer first. */
  private enum Open {
    COUNT("signs.count"),
    SINCE("signs.since"),
    TEMPERATURE("signs.temperature"),
    BORN("pigs.born");

    private final String question;

    Open(String question) {
      this.question = question;
    }

    private String word() {
      return question.substring(question.indexOf('.') + 1);
    }

    private String ask() {
      return this == BORN ? "How old are they?" : Rulebook.questions().get(question).ask();
    }

    /** Answers to try, in words: the mildest first. Temperatures are none, some and high fever. */
    private Map<String, Object> answers(LocalDate today) {
      Map<String, Object> answers = new LinkedHashMap<>();
      switch (this) {
        case COUNT -> {
          answers.put("one", 1);
          answers.put("two or more", 2);
        }
        case SINCE -> answers.put("since today", today.toString());
        case TEMPERATURE -> {
          answers.put("normal", 39.3);
          answers.put("40 C (104 F) or more", 40.5);
          answers.put("41 C (106 F) or more", 41.5);
        }
        case BORN -> answers.put("12 weeks or more", today.minusWeeks(13).toString());
      }
      return answers;
    }
  }

  /**
   * One question and what would follow from each answer.
   *
   * @param about what it asks for: count, since, temperature, born or sign; two where only both
   *     together change something
   * @param question in words
   * @param answers what could be answered, and whom to call then
   */
  public record FollowUp(List<String> about, String question, Map<String, Referral> answers) {
    /** Whether an answer to it would make the call less urgent, which stands on not knowing it. */
    public boolean mayLower(Referral now) {
      return answers.values().stream().anyMatch(then -> then.compareTo(now) < 0);
    }
  }

  private final Checklist base;
  private final KnowledgeBase rules;
  private final List<FollowUp> all = new ArrayList<>();

  private FollowUps(Checklist base, KnowledgeBase rules) {
    this.base = base;
    this.rules = rules;
  }

  /**
   * The items of a checklist that come from signs on pigs, and whatever else somebody must be
   * called for now, or because of a death: it may be one cause. That ill pigs are not slaughtered
   * every one of them says, so that the item about it is told only where a day has to be moved.
   */
  public static List<Item> signItems(Checklist checklist) {
    return checklist.items().stream()
        .filter(i -> !i.id().equals(NOT_FIT) || isDaySet(i))
        .filter(
            i ->
                i.rank().emergency()
                    || i.id().equals("diary.died")
                    || i.because().stream().anyMatch(b -> b.path().startsWith("signs[")))
        .toList();
  }

  private static boolean isDaySet(Item item) {
    return item.because().stream()
        .anyMatch(b -> b.path().endsWith(".slaughterOn") && b.said() != null);
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
    for (Open open : Open.values()) {
      value(open);
    }
    if (all.stream().noneMatch(f -> f.mayLower(referral(base)))) {
      together();
    }
    if (referral(base) != Referral.AUTHORITY_NOW) {
      alsoSeen();
    } else {
      alsoSeen(PEOPLE_DIE);
    }
    return List.copyOf(all.subList(0, Math.min(MOST, all.size())));
  }

  /** The paths of the answers of this name that were not given for a sign, or for its pigs. */
  private List<String> open(Open open) {
    Setup setup = base.file().setup();
    if (open == Open.BORN) {
      Set<String> ill = setup.signs().stream().map(Sign::pigs).collect(Collectors.toSet());
      return IntStream.range(0, setup.pigs().size())
          .filter(i -> setup.pigs().size() == 1 || ill.contains(setup.pigs().get(i).name()))
          .filter(i -> setup.pigs().get(i).born() == null)
          .filter(i -> setup.pigs().get(i).ageOnArrival() == null)
          .mapToObj(i -> "pigs[" + i + "].born")
          .toList();
    }
    return base.unanswered().stream()
        .filter(u -> u.question().equals(open.question))
        .map(u -> u.path())
        .toList();
  }

  /** Whom to call if all that is open of these were answered so; null if it cannot be. */
  private Referral then(Map<Open, Object> answers) {
    try {
      SetupFile answered = base.file();
      for (Map.Entry<Open, Object> answer : answers.entrySet()) {
        for (String path : open(answer.getKey())) {
          answered = answered.with(path, answer.getValue());
        }
      }
      return referral(Advisor.advise(answered, rules));
    } catch (BadSetupException e) {
      return null; // there are not so many pigs
    }
  }

  /** Asks for a value that some sign lacks, where an answer would change whom to call. */
  private void value(Open open) {
    if (open(open).isEmpty()) {
      return;
    }
    Map<String, Referral> outcomes = new LinkedHashMap<>();
    open.answers(base.file().setup().checkOn())
        .forEach(
            (words, value) -> {
              Referral then = then(Map.of(open, value));
              if (then != null && !outcomes.containsValue(then)) {
                outcomes.put(words, then);
              }
            });
    if (outcomes.values().stream().anyMatch(r -> r != referral(base))) {
      all.add(new FollowUp(List.of(open.word()), open.ask(), outcomes));
    }
  }

  /** Asks for two values where only the mildest answer to both makes it less urgent. */
  private void together() {
    List<Open> asked = Arrays.stream(Open.values()).filter(o -> !open(o).isEmpty()).toList();
    for (int i = 0; i < asked.size(); i++) {
      for (int j = i + 1; j < asked.size(); j++) {
        Map.Entry<String, Object> one = mildest(asked.get(i));
        Map.Entry<String, Object> other = mildest(asked.get(j));
        Referral then = then(Map.of(asked.get(i), one.getValue(), asked.get(j), other.getValue()));
        if (then != null && then.compareTo(referral(base)) < 0) {
          all.add(
              new FollowUp(
                  List.of(asked.get(i).word(), asked.get(j).word()),
                  asked.get(i).ask() + " " + asked.get(j).ask(),
                  Map.of(one.getKey() + ", and " + other.getKey(), then)));
          return;
        }
      }
    }
  }

  private Map.Entry<String, Object> mildest(Open open) {
    return open.answers(base.file().setup().checkOn()).entrySet().iterator().next();
  }

  /** Asks for the other signs that the table names, where seeing one would change something. */
  private void alsoSeen() {
    alsoSeen(Rulebook.questions().get("signs.sign").choices().keySet());
  }

  private void alsoSeen(Set<String> which) {
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
    groups.keySet().retainAll(which);
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
      String question = "Do you see this too: " + Triage.of(sign).name() + "?";
      all.add(new FollowUp(List.of("sign"), question, Map.of(sign, then)));
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
