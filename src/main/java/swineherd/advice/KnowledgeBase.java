package swineherd.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import swineherd.rulebook.Card;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.RulebookException;

/**
 * The compiled rules, with their cards: the shipped ones, or these and a keeper's own. Safe to
 * share between threads.
 */
public final class KnowledgeBase {
  private final KieBase base;
  private final Map<String, RuleInfo> ownRules;
  private final Map<String, Card> ownCards;

  private KnowledgeBase(KieBase base, Map<String, RuleInfo> ownRules, Map<String, Card> ownCards) {
    this.base = base;
    this.ownRules = ownRules;
    this.ownCards = ownCards;
  }

  /** The shipped rules; loaded once for each process. */
  public static KnowledgeBase shipped() {
    return Shipped.BASE;
  }

  /**
   * The shipped rules and those of a folder of the keeper's own. <strong>A rule file is a program:
   * loading it runs it, with all that the user may do, and nothing confines it.</strong> Own rules
   * only add; they cannot replace or silence a shipped one.
   *
   * @throws RulebookException with every fault found in the folder
   */
  public static KnowledgeBase with(Path folder) {
    try {
      RuleCompiler.OwnRules own = RuleCompiler.compileOwn(folder);
      KieBase base = load();
      ((InternalKnowledgeBase) base).addPackages(own.base().getKiePackages());
      return new KnowledgeBase(base, own.rules(), own.cards());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  KieBase base() {
    return base;
  }

  Card card(String id) {
    Card own = ownCards.get(id);
    return own == null ? Rulebook.card(id) : own;
  }

  /** Whether there is an item of that id. */
  public boolean knows(String id) {
    return ownCards.containsKey(id) || Rulebook.cards().containsKey(id);
  }

  /** What is known of a rule; null if it is not ours and not the keeper's. */
  RuleInfo rule(String name) {
    RuleInfo own = ownRules.get(name);
    return own == null ? Rulebook.rules().get(name) : own;
  }

  private static KieBase load() {
    List<Model> models = new ArrayList<>();
    for (String name : Rulebook.models()) {
      try {
        models.add(
            Class.forName(name).asSubclass(Model.class).getDeclaredConstructor().newInstance());
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("compiled rules are missing: build again", e);
      }
    }
    return KieBaseBuilder.createKieBaseFromModel(models);
  }

  private static final class Shipped {
    static final KnowledgeBase BASE = new KnowledgeBase(load(), Map.of(), Map.of());
  }
}
