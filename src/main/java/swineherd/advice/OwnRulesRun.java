package swineherd.advice;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import swineherd.rulebook.RuleInfo;

/**
 * One run of the rules with a keeper's own among them. They are programs and may fail in any way,
 * or never end; whatever they do, the caller goes on, and the rules know what went wrong.
 */
final class OwnRulesRun {
  /** Far above what rules take; a program that takes longer is taken not to end. */
  static final Duration PATIENCE = Duration.ofSeconds(60);

  private OwnRulesRun() {}

  /** What came of the run; nothing without own rules, or if they fail or failed before. */
  static Optional<Checklist> of(KnowledgeBase rules, Supplier<Checklist> run) {
    return of(rules, run, PATIENCE);
  }

  static Optional<Checklist> of(KnowledgeBase rules, Supplier<Checklist> run, Duration patience) {
    if (!rules.hasOwn() || rules.fault().isPresent()) {
      return Optional.empty();
    }
    FutureTask<Checklist> task = new FutureTask<>(run::get);
    Thread thread = new Thread(task, "own rules");
    thread.setDaemon(true);
    thread.start();
    try {
      return Optional.of(task.get(patience.toMillis(), TimeUnit.MILLISECONDS));
    } catch (TimeoutException e) {
      rules.failed(files(rules) + ": not done after " + patience.toSeconds() + " seconds");
    } catch (ExecutionException e) {
      rules.failed(told(e.getCause(), rules));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      rules.failed(files(rules) + ": stopped before it was done");
    }
    return Optional.empty();
  }

  /** Drools names the rule in the message of one of the nested exceptions. */
  private static String told(Throwable fault, KnowledgeBase rules) {
    RuleInfo guilty = null;
    Throwable deepest = fault;
    for (Throwable at = fault; at != null; at = at.getCause()) {
      deepest = at;
      for (RuleInfo rule : rules.ownRules().values()) {
        if (guilty == null && String.valueOf(at.getMessage()).contains("\"" + rule.id() + "\"")) {
          guilty = rule;
        }
      }
    }
    String place =
        guilty == null
            ? files(rules)
            : guilty.file() + ":" + guilty.line() + ": rule \"" + guilty.id() + "\"";
    String what = deepest.getMessage();
    return place + ": " + (what == null ? deepest.getClass().getSimpleName() : what);
  }

  private static String files(KnowledgeBase rules) {
    return String.join(
        ", ", rules.ownRules().values().stream().map(RuleInfo::file).distinct().toList());
  }
}
