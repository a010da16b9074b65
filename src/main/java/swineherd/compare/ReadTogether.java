package swineherd.compare;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import swineherd.advice.Unanswered;
import swineherd.outlook.Outlook;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Group;
import swineherd.setup.SetupFile;

/**
 * Which two questions can matter together: those that one figure is worked out from, or that one
 * rule reads, itself or through its figures, about the same pigs and their pen.
 */
final class ReadTogether {
  record Pair(Unanswered one, Unanswered other) {}

  private static final Comparator<Unanswered> PATHS = Comparator.comparing(Unanswered::path);

  private final SetupFile file;

  private ReadTogether(SetupFile file) {
    this.file = file;
  }

  /** Each pair once, in the order of the questions. */
  static Set<Pair> of(
      SetupFile file, Collection<Unanswered> questions, Collection<Outlook> outlooks) {
    return new ReadTogether(file).pairs(questions, outlooks);
  }

  private Set<Pair> pairs(Collection<Unanswered> questions, Collection<Outlook> outlooks) {
    Map<String, Unanswered> byPath = new HashMap<>();
    Map<String, List<Unanswered>> byKey = new HashMap<>();
    for (Unanswered question : questions) {
      byPath.put(question.path(), question);
      byKey.computeIfAbsent(question.question(), q -> new ArrayList<>()).add(question);
    }
    Map<String, Set<Unanswered>> figures = new HashMap<>();
    for (Outlook outlook : outlooks) {
      Set<Unanswered> from =
          figures.computeIfAbsent(outlook.getClass().getSimpleName(), t -> new HashSet<>());
      outlook.grounds().stream().filter(byPath::containsKey).map(byPath::get).forEach(from::add);
    }
    Set<Set<Unanswered>> groups = new LinkedHashSet<>(figures.values());
    for (RuleInfo rule : Rulebook.rules().values()) {
      Set<Unanswered> group = new HashSet<>();
      for (RuleInfo.Reads reads : rule.reads()) {
        reads.questions().forEach(key -> group.addAll(byKey.getOrDefault(key, List.of())));
        group.addAll(figures.getOrDefault(reads.type(), Set.of()));
      }
      groups.add(group);
    }
    Set<Pair> pairs = new LinkedHashSet<>();
    for (Set<Unanswered> group : groups) {
      List<Unanswered> members = group.stream().sorted(PATHS).toList();
      for (int i = 0; i < members.size(); i++) {
        for (Unanswered other : members.subList(i + 1, members.size())) {
          if (meet(members.get(i).path(), other.path())) {
            pairs.add(new Pair(members.get(i), other));
          }
        }
      }
    }
    return pairs;
  }

  /** Answers about two pens, or about pigs and a pen that is not theirs, have no rule in common. */
  private boolean meet(String one, String other) {
    String a = section(one);
    String b = section(other);
    if (a.equals(b) || !a.endsWith("]") || !b.endsWith("]")) {
      return true;
    }
    if (a.startsWith("pens[") && b.startsWith("pens[")) {
      return false;
    }
    if (a.startsWith("pens[") && b.startsWith("pigs[")) {
      return livesIn(b, a);
    }
    return !(a.startsWith("pigs[") && b.startsWith("pens[")) || livesIn(a, b);
  }

  private boolean livesIn(String pigs, String pen) {
    Group group = file.setup().pigs().get(index(pigs));
    return file.setup().pens().get(index(pen)).name().equals(group.pen());
  }

  private static int index(String section) {
    return Integer.parseInt(section.substring(section.indexOf('[') + 1, section.length() - 1));
  }

  private static String section(String path) {
    int dot = path.indexOf('.');
    return dot < 0 ? path : path.substring(0, dot);
  }
}
