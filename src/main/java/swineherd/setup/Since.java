package swineherd.setup;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import swineherd.rulebook.RecordReader;

/**
 * What the diary has changed since the rest was written: groups that were moved stand in another
 * pen, those of which some died are fewer, and a pen they left has rested since.
 */
final class Since {
  /** A group in a pen; a day that is not known is null. */
  private record Stay(String pen, LocalDate from, LocalDate to, boolean now) {}

  private final Setup said;
  private final Map<String, Object> tree;

  private Since(Setup said, Map<String, Object> tree) {
    this.said = said;
    this.tree = tree;
  }

  /**
   * The setup as it stands on the day of the check.
   *
   * @param said the setup as it was said
   * @param tree the same as plain values
   */
  static Setup applied(Setup said, Map<String, Object> tree) {
    boolean changed =
        said.diary().stream()
            .anyMatch(e -> e.did() == DiaryEntry.Did.MOVED || e.did() == DiaryEntry.Did.DIED);
    return changed ? new Since(said, SetupReader.copy(tree)).applied() : said;
  }

  /** The group an entry is about: the only one, if none is named; null if that is not clear. */
  static Group group(Setup setup, DiaryEntry entry) {
    if (entry.pigs() == null) {
      return setup.pigs().size() == 1 ? setup.pigs().get(0) : null;
    }
    return setup.group(entry.pigs()).orElse(null);
  }

  private Setup applied() {
    List<Stay> stays = new ArrayList<>();
    for (int i = 0; i < said.pigs().size(); i++) {
      Group group = said.pigs().get(i);
      List<Stay> own = stays(group);
      stays.addAll(own);
      String pen = own.isEmpty() ? null : own.get(own.size() - 1).pen();
      if (pen != null) {
        member("pigs", i).put("pen", pen);
      }
      deaths(group, member("pigs", i));
    }
    for (int i = 0; i < said.pens().size(); i++) {
      rest(said.pens().get(i), member("pens", i), stays);
    }
    return RecordReader.read(Setup.class, tree);
  }

  @SuppressWarnings("unchecked") // the reader makes lists of sections of this kind
  private Map<String, Object> member(String list, int index) {
    return ((List<Map<String, Object>>) tree.get(list)).get(index);
  }

  /** The pens of a group one after the other, the last without an end. */
  private List<Stay> stays(Group group) {
    List<DiaryEntry> moves =
        said.diary().stream()
            .filter(e -> e.did() == DiaryEntry.Did.MOVED && e.pen() != null)
            .filter(e -> Objects.equals(group(said, e), group))
            .sorted(
                Comparator.comparing(
                    DiaryEntry::on, Comparator.nullsFirst(Comparator.naturalOrder())))
            .toList();
    List<Stay> stays = new ArrayList<>();
    String pen = group.pen();
    LocalDate from = group.arrives();
    if (!moves.isEmpty() && Objects.equals(pen, moves.get(moves.size() - 1).pen())) {
      pen = null; // the file says where they are now; where they came from is not known
    }
    for (DiaryEntry move : moves) {
      if (pen != null) {
        stays.add(new Stay(pen, from, move.on(), false));
      }
      pen = move.pen();
      from = move.on();
    }
    if (pen != null) {
      stays.add(new Stay(pen, from, null, true));
    }
    return stays;
  }

  private void deaths(Group group, Map<String, Object> fields) {
    int died = 0;
    for (DiaryEntry entry : said.diary()) {
      if (entry.did() == DiaryEntry.Did.DIED && Objects.equals(group(said, entry), group)) {
        died += entry.countOrOne();
      }
    }
    if (died == 0 || group.count() == null) {
      return;
    }
    if (died < group.count()) {
      fields.put("count", group.count() - died);
    } else {
      // none is left: as if they had gone
      fields.put("slaughterOn", said.checkOn().minusDays(1).toString());
    }
  }

  /** Ground that pigs were moved off rests from that day, until others come. */
  private void rest(Pen pen, Map<String, Object> fields, List<Stay> stays) {
    List<Stay> here = stays.stream().filter(s -> s.pen().equals(pen.name())).toList();
    List<Stay> left = new ArrayList<>();
    List<Stay> there = new ArrayList<>();
    for (Stay stay : here) {
      (stay.now() ? there : left).add(stay);
    }
    if (left.isEmpty()) {
      return;
    }
    fields.put("pigsBefore", true);
    LocalDate last = null;
    LocalDate next = said.checkOn();
    for (Stay stay : left) {
      if (stay.to() == null) {
        fields.remove("restedFor");
        return;
      }
      last = last == null || stay.to().isAfter(last) ? stay.to() : last;
    }
    for (Stay stay : there) {
      if (stay.from() == null || stay.from().isBefore(last)) {
        return; // it has not been without pigs since
      }
      next = stay.from().isBefore(next) ? stay.from() : next;
    }
    fields.put("restedFor", (double) ChronoUnit.DAYS.between(last, next));
  }
}
