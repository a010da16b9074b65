package swineherd.advice;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.drools.core.common.EqualityKey;
import org.drools.core.common.ReteEvaluator;
import org.drools.core.common.TruthMaintenanceSystem;
import org.drools.core.common.TruthMaintenanceSystemFactory;
import org.drools.tms.LogicalDependency;
import org.drools.tms.SimpleMode;
import org.drools.tms.TruthMaintenanceSystemEqualityKey;
import org.drools.tms.beliefsystem.BeliefSet;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.Match;

/**
 * Why each conclusion stands, asked of the engine's truth maintenance once all rules have fired. A
 * listener would not do: it keeps matches that were withdrawn later and misses a second ground of
 * an equal conclusion. This reads an internal interface of the engine, and is the only class that
 * does.
 */
final class Reasons {
  /** One rule that supports a conclusion, and the facts it matched. */
  record Ground(String rule, List<Object> facts) {}

  private final IdentityHashMap<Object, List<Ground>> grounds = new IdentityHashMap<>();
  private final Map<String, Integer> fired = new TreeMap<>();

  Reasons(KieSession session) {
    TruthMaintenanceSystem truth =
        TruthMaintenanceSystemFactory.get()
            .getOrCreateTruthMaintenanceSystem((ReteEvaluator) session);
    for (EqualityKey key : truth.getEqualityKeys()) {
      BeliefSet<?> beliefs = ((TruthMaintenanceSystemEqualityKey) key).getBeliefSet();
      if (beliefs == null) {
        continue;
      }
      List<Ground> of = new ArrayList<>();
      // walked by hand: the set's own iterator fails with a cast in Drools 10.2
      for (Object mode = beliefs.getFirst(); mode != null; mode = ((SimpleMode) mode).getNext()) {
        LogicalDependency<SimpleMode> dependency = ((SimpleMode) mode).getObject();
        Match match = dependency.getJustifier();
        of.add(new Ground(match.getRule().getName(), match.getObjects()));
        fired.merge(match.getRule().getName(), 1, Integer::sum);
      }
      grounds.put(key.getFactHandle().getObject(), of);
    }
  }

  /** What supports a conclusion; empty for a fact that was given. */
  List<Ground> of(Object conclusion) {
    return grounds.getOrDefault(conclusion, List.of());
  }

  /** The names of the rules that support anything. */
  Map<String, Integer> fired() {
    return fired;
  }
}
