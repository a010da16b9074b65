package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupFile;

/** What must hold of the rules as a whole, tried on every scenario, case and example. */
class RuleBaseTest {
  @Test
  void no_rule_is_dead_and_every_card_is_shown_somewhere() {
    Set<String> fired = new TreeSet<>();
    Set<String> shown = new TreeSet<>();
    for (SetupFile file : ManySetups.written().values()) {
      Checklist checklist = Advisor.advise(file);
      fired.addAll(checklist.fired());
      checklist.items().forEach(i -> shown.add(i.id()));
      checklist.inOrder().forEach(o -> shown.add(o.card().id()));
    }
    assertThat(fired)
        .as("rules that fire")
        .containsExactlyInAnyOrderElementsOf(Rulebook.rules().keySet());
    assertThat(shown)
        .as("cards that are shown")
        .containsExactlyInAnyOrderElementsOf(Rulebook.cards().keySet());
  }

  @Test
  void many_at_once_give_the_same_answers_and_leave_nothing_behind() throws Exception {
    Map<String, SetupFile> all = ManySetups.written();
    Map<String, String> alone = new LinkedHashMap<>();
    all.forEach((name, file) -> alone.put(name, print(file)));
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      Map<String, Future<String>> together = new LinkedHashMap<>();
      all.forEach((name, file) -> together.put(name, pool.submit(() -> print(file))));
      for (Map.Entry<String, Future<String>> run : together.entrySet()) {
        assertThat(run.getValue().get()).as(run.getKey()).isEqualTo(alone.get(run.getKey()));
      }
    } finally {
      pool.shutdown();
    }
    assertThat(KnowledgeBase.shipped().base().getKieSessions())
        .as("sessions that were not closed")
        .isEmpty();
  }

  private static String print(SetupFile file) {
    return Advisor.advise(file).items().stream()
        .map(i -> i.id() + " " + i.advice() + " " + i.rank() + " " + i.because())
        .collect(Collectors.joining("\n"));
  }
}
