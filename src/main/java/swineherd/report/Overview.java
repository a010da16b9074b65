package swineherd.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import swineherd.advice.Checklist;
import swineherd.compare.Matters;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/** The first two sentences of every report. */
final class Overview {
  private Overview() {}

  /** {@code Alder Bottom: three pigs coming 24 April 2027. Checked 1 March 2027.} */
  static String setup(Setup setup) {
    String name = setup.name() == null ? "Your pigs" : setup.name();
    return name + ": " + pigs(setup) + ". Checked " + Dates.words(setup.checkOn()) + ".";
  }

  private static String pigs(Setup setup) {
    List<Group> groups = setup.pigs();
    if (groups.isEmpty()) {
      return "no pigs described yet";
    }
    boolean counted = groups.stream().allMatch(g -> g.count() != null);
    int count = counted ? groups.stream().mapToInt(Group::count).sum() : 0;
    String pigs = counted ? Wording.counted(count, "pig", "pigs") : "pigs, their number not said";
    List<LocalDate> coming =
        groups.stream()
            .map(Group::arrives)
            .filter(Objects::nonNull)
            .filter(d -> d.isAfter(setup.checkOn()))
            .sorted()
            .toList();
    if (coming.isEmpty()) {
      return pigs;
    }
    return pigs
        + (coming.size() == groups.size() ? " coming " : ", the next coming ")
        + Dates.words(coming.get(0));
  }

  /** How much there is to do. */
  static String verdict(Checklist checklist) {
    int items = checklist.items().size();
    boolean noPigs = checklist.file().setup().pigs().isEmpty();
    if (items == 0 && noPigs) {
      return "No pigs are described, so nothing can be judged yet.";
    }
    if (items == 0) {
      return "Nothing stands out in what you described.";
    }
    long urgent = checklist.items().stream().filter(i -> i.rank().emergency()).count();
    String things = Wording.capital(Wording.counted(items, "thing", "things")) + " to do";
    if (urgent > 0) {
      return things
          + "; "
          + (urgent == 1 ? "the first is" : "the first are")
          + " urgent: call now.";
    }
    if (noPigs) {
      return things + "; no pigs are described, so nothing else can be judged yet.";
    }
    if (items <= 3 && checklist.items().stream().allMatch(i -> i.rank().score() < 40)) {
      return things + ", none of them pressing; nothing else stands out.";
    }
    return things + ", the strongest first.";
  }

  /** How many questions are open, and how many of them matter. */
  static String questions(Checklist checklist, Matters.Tried tried) {
    int open = checklist.unanswered().size();
    int matter = tried.questions().size();
    if (open == 0) {
      return "Every question that applies is answered.";
    }
    return Wording.capital(Wording.counted(open, "question is", "questions are"))
        + " open; "
        + (matter == 0
            ? "no usual answer would move the list."
            : matter == 1
                ? "this one would move the list:"
                : Wording.number(matter) + " would move the list, the first of these farthest:");
  }
}
