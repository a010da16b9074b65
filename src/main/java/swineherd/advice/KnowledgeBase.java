package swineherd.advice;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicReference;
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

  /** What went wrong when own rules ran; the first thing only, for they are not run again. */
  private final AtomicReference<String> fault = new AtomicReference<>();

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
    if (!Files.isDirectory(folder) || !Files.isReadable(folder)) {
      String why = !Files.exists(folder) ? "there is no such folder" : "no folder that can be read";
      throw new RulebookException(
          List.of(folder + ": " + why + "; --rules takes one with TOPIC/TOPIC.drl in it"));
    }
    try {
      RuleCompiler.OwnRules own = RuleCompiler.compileOwn(folder);
      KieBase base = load();
      ((InternalKnowledgeBase) base).addPackages(own.base().getKiePackages());
      return new KnowledgeBase(base, own.rules(), own.cards());
    } catch (MalformedInputException e) {
      throw new RulebookException(
          List.of(folder + ": a file in it is no text in UTF-8; save it so in your editor"));
    } catch (IOException | UncheckedIOException e) {
      throw new RulebookException(List.of(folder + ": cannot be read: " + e.getMessage()));
    }
  }

  KieBase base() {
    return base;
  }

  /**
   * The card of that id.
   *
   * @throws IllegalArgumentException if there is none
   */
  public Card card(String id) {
    Card own = ownCards.get(id);
    return own == null ? Rulebook.card(id) : own;
  }

  /** Whether own rules are there beside the shipped ones. */
  boolean hasOwn() {
    return !ownRules.isEmpty();
  }

  /** Whether an item of that id is the keeper's own. */
  boolean isOwn(String id) {
    return ownCards.containsKey(id);
  }

  /** What went wrong when own rules ran, with file and line of the rule where that is known. */
  public Optional<String> fault() {
    return Optional.ofNullable(fault.get());
  }

  void failed(String what) {
    fault.compareAndSet(null, what);
  }

  /** All rules by their names, the keeper's own among them. */
  public Map<String, RuleInfo> rules() {
    Map<String, RuleInfo> all = new TreeMap<>(Rulebook.rules());
    all.putAll(ownRules);
    return all;
  }

  /** Own rules by their names. */
  Map<String, RuleInfo> ownRules() {
    return ownRules;
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
