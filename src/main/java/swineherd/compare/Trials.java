package swineherd.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.setup.BadSetupException;
import swineherd.setup.SetupFile;

/** Runs the engine over a setup with other answers, on all cores, until the time is up. */
final class Trials implements AutoCloseable {
  private final SetupFile file;
  private final KnowledgeBase rules;
  private final long end;
  private final ExecutorService pool =
      Executors.newFixedThreadPool(
          Runtime.getRuntime().availableProcessors(),
          work -> {
            Thread thread = new Thread(work, "trial");
            thread.setDaemon(true);
            return thread;
          });

  /**
   * @param milliseconds for how long to try; what comes later is left out
   */
  Trials(SetupFile file, KnowledgeBase rules, long milliseconds) {
    this.file = file;
    this.rules = rules;
    this.end = System.nanoTime() + milliseconds * 1_000_000;
  }

  /** Whether the time is up. */
  boolean late() {
    return System.nanoTime() > end;
  }

  /** The checklist with these answers changed; empty if they do not go with the others. */
  Optional<Checklist> with(Map<String, Object> changes) {
    SetupFile changed;
    try {
      changed = file.with(changes);
    } catch (BadSetupException e) {
      return Optional.empty();
    }
    return Optional.of(Advisor.advise(changed, rules));
  }

  /** Does all of it, the first first, on all cores; the results are in the order of the work. */
  <T> List<T> all(List<Callable<T>> work) {
    List<T> results = new ArrayList<>();
    try {
      for (Future<T> done : pool.invokeAll(work)) {
        results.add(done.get());
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("interrupted while trying out answers", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(e.getCause());
    }
    return results;
  }

  /** The score of each item, by its id and what it is about, {@code space.tight lot}. */
  static Map<String, Double> scores(Checklist checklist) {
    Map<String, Double> scores = new TreeMap<>();
    for (Item item : checklist.items()) {
      scores.merge(key(item), item.rank().score(), Math::max);
    }
    return scores;
  }

  static String key(Item item) {
    return item.id() + " " + item.advice().about();
  }

  @Override
  public void close() {
    pool.shutdownNow();
  }
}
