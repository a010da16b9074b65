package swineherd.ask;

import java.util.ArrayList;
import java.util.List;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.compare.Matters;
import swineherd.report.Lines;
import swineherd.report.ShortList;

/** The checklist that the answers so far lead to, and the questions that would change it. */
final class Outcome {
  private static final int ITEMS = 7;
  private static final int OPEN = 3;
  private static final long LONGEST_MILLISECONDS = 3_000;

  private final Draft draft;

  Outcome(Draft draft) {
    this.draft = draft;
  }

  /** The first items and the open questions that matter, in lines. */
  List<String> lines() {
    Checklist checklist = Advisor.advise(draft.file(), KnowledgeBase.shipped());
    List<String> lines = new ArrayList<>(ShortList.of(checklist, ITEMS));
    List<String> open = ShortList.open(matters(checklist, 1_000).stream().limit(OPEN).toList());
    if (!open.isEmpty()) {
      lines.add("");
      lines.add("Not yet known, and it matters:");
      open.forEach(line -> lines.add(new Lines().add("  ", line).toString().stripTrailing()));
    }
    return lines;
  }

  /** Where the open questions stand that would move the list farthest. */
  List<String> telling(int most) {
    Checklist checklist = Advisor.advise(draft.file(), KnowledgeBase.shipped());
    return matters(checklist, LONGEST_MILLISECONDS).stream()
        .map(matter -> matter.question().path())
        .filter(path -> path.contains(".")) // what the whole is called moves nothing
        .filter(path -> draft.said(path) == null && Asked.at(path).applies(draft))
        .limit(most)
        .toList();
  }

  private static List<Matters.Matter> matters(Checklist checklist, long milliseconds) {
    return Matters.of(checklist, KnowledgeBase.shipped(), milliseconds).all();
  }
}
