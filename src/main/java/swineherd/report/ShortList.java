package swineherd.report;

import java.util.ArrayList;
import java.util.List;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.compare.Matters;
import swineherd.rulebook.Stage;

/** A checklist in a line or two for each item; the order is that of the whole list. */
public final class ShortList {
  private ShortList() {}

  /**
   * The first items, and how many there are beyond them.
   *
   * @param most how many items to show
   */
  public static List<String> of(Checklist checklist, int most) {
    Wording wording = new Wording(checklist.file().setup().units());
    List<String> lines = new ArrayList<>();
    lines.add(wrapped("", Overview.setup(checklist.file().setup())));
    lines.add(wrapped("", Overview.verdict(checklist)));
    List<Item> items = checklist.items();
    for (int i = 0; i < Math.min(most, items.size()); i++) {
      Item item = items.get(i);
      String heading = wording.fill(item.card().heading(), item.advice());
      lines.add(
          wrapped(
              "%2d  ".formatted(i + 1),
              item.stage() == Stage.NOW ? heading.strip() + " (now)" : heading));
    }
    if (items.size() > most) {
      lines.add("    and " + Wording.counted(items.size() - most, "more", "more") + ".");
    }
    return lines;
  }

  /** The questions that matter, a line each. */
  public static List<String> open(List<Matters.Matter> matters) {
    return matters.stream().map(TextReport::open).toList();
  }

  private static String wrapped(String lead, String text) {
    return new Lines().add(lead, text).toString().stripTrailing();
  }
}
