package swineherd.advice;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kie.api.runtime.KieSession;
import swineherd.outlook.Outlook;
import swineherd.outlook.Outlooks;
import swineherd.rulebook.Card;
import swineherd.rulebook.Question;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Answer;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;

/**
 * Checks a setup by the rules: setup in, checklist out, nothing remembered in between.
 *
 * <pre>{@code
 * Checklist checklist = Advisor.advise(SetupReader.read(path, LocalDate.now()));
 * checklist.items().get(0).card().heading();
 * }</pre>
 *
 * Safe to use from several threads at once.
 */
public final class Advisor {
  /** Far above what any setup needs; reached only by rules that feed each other for ever. */
  private static final int MAX_FIRINGS = 50_000;

  private static final Comparator<Item> ORDER =
      Comparator.comparing(Item::rank, Rank.HIGHEST_FIRST)
          .thenComparing(Item::id)
          .thenComparing(i -> i.advice().about());

  private final SetupFile file;
  private final IdentityHashMap<Object, String> places = new IdentityHashMap<>();

  private final KnowledgeBase rules;

  private Advisor(SetupFile file, KnowledgeBase rules) {
    this.file = file;
    this.rules = rules;
  }

  /**
   * Loads rules and cards in the background, so that they are there when the setup has been read.
   * May be left out; a fault is told by {@link #advise} all the same.
   */
  public static void prepare() {
    Thread loading =
        new Thread(
            () -> {
              KnowledgeBase.shipped();
              Rulebook.cards();
            },
            "rules");
    loading.setDaemon(true);
    loading.setUncaughtExceptionHandler((thread, fault) -> {});
    loading.start();
  }

  /** The checklist of a setup by the shipped rules. */
  public static Checklist advise(SetupFile file) {
    return advise(file, KnowledgeBase.shipped());
  }

  /**
   * The checklist of a setup by these rules. What a keeper's own rules conclude is added to what
   * the shipped ones say by themselves, and so can take nothing from it. If they fail the shipped
   * advice is given alone, and {@link KnowledgeBase#fault()} says what went wrong.
   */
  public static Checklist advise(SetupFile file, KnowledgeBase rules) {
    Checklist shipped = new Advisor(file, KnowledgeBase.shipped()).run();
    return OwnRulesRun.of(rules, () -> new Advisor(file, rules).run())
        .map(own -> add(shipped, own, rules))
        .orElse(shipped);
  }

  /** A checklist with what own rules add to it. */
  private static Checklist add(Checklist shipped, Checklist own, KnowledgeBase rules) {
    List<Item> items = new ArrayList<>(shipped.items());
    own.items().stream().filter(i -> rules.isOwn(i.id())).forEach(items::add);
    items.sort(ORDER);
    List<TickedOff> tickedOff = new ArrayList<>(shipped.tickedOff());
    own.tickedOff().stream().filter(t -> rules.isOwn(t.item().id())).forEach(tickedOff::add);
    List<Checklist.InOrder> inOrder = new ArrayList<>(shipped.inOrder());
    own.inOrder().stream().filter(o -> rules.isOwn(o.card().id())).forEach(inOrder::add);
    Set<String> fired = new LinkedHashSet<>(shipped.fired());
    fired.addAll(own.fired());
    return new Checklist(
        shipped.file(),
        List.copyOf(items),
        List.copyOf(tickedOff),
        List.copyOf(inOrder),
        shipped.unanswered(),
        shipped.outlooks(),
        Set.copyOf(fired));
  }

  private Checklist run() {
    Setup setup = file.setup();
    List<Unanswered> unanswered = UnansweredQuestions.of(file);
    List<Outlook> outlooks = Outlooks.of(setup);
    KieSession session = rules.base().newKieSession();
    try {
      place(setup, "");
      place(setup.keeper(), "keeper");
      place(setup.place(), "place");
      place(setup.feed(), "feed");
      placeAll(setup.pens(), "pens");
      placeAll(setup.pigs(), "pigs");
      placeAll(setup.signs(), "signs");
      placeAll(setup.diary(), "diary");
      places.keySet().forEach(session::insert);
      unanswered.forEach(session::insert);
      outlooks.forEach(session::insert);
      if (session.fireAllRules(MAX_FIRINGS) >= MAX_FIRINGS) {
        throw new IllegalStateException("the rules feed each other without end");
      }
      return checklist(session, unanswered, outlooks);
    } finally {
      session.dispose();
    }
  }

  private void place(Object fact, String path) {
    places.put(fact, path);
  }

  private void placeAll(List<?> facts, String list) {
    for (int i = 0; i < facts.size(); i++) {
      place(facts.get(i), list + "[" + i + "]");
    }
  }

  private Checklist checklist(
      KieSession session, List<Unanswered> unanswered, List<Outlook> outlooks) {
    Reasons reasons = new Reasons(session);
    List<Item> items = new ArrayList<>();
    List<Checklist.InOrder> inOrder = new ArrayList<>();
    for (Object fact : session.getObjects(o -> o instanceof Advice)) {
      Advice advice = (Advice) fact;
      Card card = rules.card(advice.id());
      if (card.kind() == Card.Kind.IN_ORDER) {
        inOrder.add(new Checklist.InOrder(card, advice));
      } else {
        items.add(item(card, advice, reasons));
      }
    }
    items.sort(ORDER);
    List<TickedOff> tickedOff = TickedOff.takeFrom(items, file.setup());
    inOrder.sort(
        Comparator.comparing((Checklist.InOrder o) -> o.card().id())
            .thenComparing(o -> o.advice().about()));
    return new Checklist(
        file,
        List.copyOf(items),
        tickedOff,
        List.copyOf(inOrder),
        unanswered,
        outlooks,
        Set.copyOf(reasons.fired().keySet()));
  }

  private Item item(Card card, Advice advice, Reasons reasons) {
    Map<String, Item.Because> because = new LinkedHashMap<>();
    Set<String> through = new LinkedHashSet<>();
    Deque<Object> open = new ArrayDeque<>(List.of(advice));
    Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    while (!open.isEmpty()) {
      Object conclusion = open.removeFirst();
      if (!seen.add(conclusion)) {
        continue;
      }
      for (Reasons.Ground ground : reasons.of(conclusion)) {
        through.add(ground.rule());
        // the answers a rule reads itself come before those that were reckoned with
        List<Object> facts = new ArrayList<>(ground.facts());
        facts.sort(Comparator.comparing(fact -> fact instanceof Outlook));
        for (Object fact : facts) {
          open.addLast(fact);
          because(ground.rule(), fact, because);
        }
      }
    }
    Rank rank = Rank.of(card, advice, advice.due(), file.setup().checkOn());
    return new Item(
        card, advice, rank, advice.due(), List.copyOf(because.values()), List.copyOf(through));
  }

  /** Adds the answers behind one matched fact. */
  private void because(String rule, Object fact, Map<String, Item.Because> because) {
    if (fact instanceof Unanswered question) {
      add(question.path(), because);
    } else if (fact instanceof Outlook outlook) {
      outlook.grounds().forEach(path -> add(path, because));
    } else if (places.containsKey(fact)) {
      String type = fact.getClass().getSimpleName();
      RuleInfo info = rules.rule(rule);
      for (RuleInfo.Reads reads : info == null ? List.<RuleInfo.Reads>of() : info.reads()) {
        if (reads.type().equals(type)) {
          for (String property : reads.properties()) {
            if (Rulebook.questions().containsKey(reads.section() + property)
                && !property.equals("name")
                && !property.equals("pen")) {
              String place = places.get(fact);
              add(place.isEmpty() ? property : place + "." + property, because);
            }
          }
        }
      }
    }
  }

  private void add(String path, Map<String, Item.Because> because) {
    Answer answer = file.answers().get(path);
    Question question = Rulebook.questions().get(Question.keyOf(path));
    if (question != null) {
      because.putIfAbsent(
          path, new Item.Because(path, question.label(), answer == null ? null : answer.said()));
    }
  }
}
