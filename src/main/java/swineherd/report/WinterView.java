package swineherd.report;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.outlook.Course;
import swineherd.outlook.NotWorkedOut;
import swineherd.outlook.WinterClimate;
import swineherd.outlook.WinterPen;
import swineherd.outlook.WinterStay;
import swineherd.outlook.WinterStores;
import swineherd.rulebook.Stage;
import swineherd.setup.Group;

/**
 * What a checklist says of the winter: which groups meet it, and the items that are about it, by
 * the day they are due. It selects and sorts; everything in it stands on the checklist too.
 *
 * @param climate the winters of the place; null if they lie outside what the figures are good for
 * @param faults what could not be worked out, and why
 * @param groups each group in the order of the setup
 * @param pens what the pens need in which some are reckoned with
 * @param dated items with a day, the earliest first
 * @param undated items without one, the strongest first
 * @param inOrder what needs nothing more
 */
record WinterView(
    WinterClimate climate,
    List<String> faults,
    List<There> groups,
    List<Needs> pens,
    List<Item> dated,
    List<Item> undated,
    List<Checklist.InOrder> inOrder) {

  private static final String TOPIC = "winter";

  /** From this chance on a group is reckoned with. */
  private static final double RECKONED = 0.1;

  /**
   * A group and the next winter.
   *
   * @param stay null where winters are mild, or nothing can be foreseen of it
   * @param course null where nobody knows when they come or what they weigh
   */
  record There(Group group, WinterStay stay, Course course) {
    boolean stays() {
      return stay != null && stay.frostKnown() && (stay.begun() || stay.chance() >= RECKONED);
    }
  }

  /**
   * A pen and its winter.
   *
   * @param stores null where no feed need be laid in
   */
  record Needs(WinterPen pen, WinterStores stores) {}

  /** All items, those with a day first. */
  List<Item> items() {
    return Stream.concat(dated.stream(), undated.stream()).toList();
  }

  static WinterView of(Checklist checklist) {
    List<WinterStay> stays = all(checklist, WinterStay.class).toList();
    List<Course> courses = all(checklist, Course.class).toList();
    List<Item> items =
        checklist.items().stream()
            .filter(i -> i.card().topic().equals(TOPIC) || i.card().stage() == Stage.BEFORE_WINTER)
            .toList();
    return new WinterView(
        one(all(checklist, WinterClimate.class)),
        all(checklist, NotWorkedOut.class)
            .filter(n -> n.figure().equals(TOPIC))
            .map(NotWorkedOut::why)
            .distinct()
            .toList(),
        checklist.file().setup().pigs().stream()
            .map(
                group ->
                    new There(
                        group,
                        one(stays.stream().filter(s -> s.pigs().equals(group.name()))),
                        one(courses.stream().filter(c -> c.pigs().equals(group.name())))))
            .toList(),
        all(checklist, WinterPen.class)
            .map(
                pen ->
                    new Needs(
                        pen,
                        one(
                            all(checklist, WinterStores.class)
                                .filter(s -> s.pen().equals(pen.pen())))))
            .toList(),
        items.stream()
            .filter(i -> i.due() != null)
            .sorted(Comparator.comparing(Item::due)) // equal days stay as ranked
            .toList(),
        items.stream().filter(i -> i.due() == null).toList(),
        checklist.inOrder().stream().filter(o -> o.card().topic().equals(TOPIC)).toList());
  }

  /** Whether some group has to be reckoned with in the next winter. */
  boolean someStay() {
    return groups.stream().anyMatch(There::stays);
  }

  /** The early date of the first hard frost that is counted back from; empty if none meets one. */
  Optional<LocalDate> earlyFrost() {
    return groups.stream()
        .filter(There::stays)
        .map(g -> g.stay().frost().early())
        .min(Comparator.naturalOrder());
  }

  /** Whole weeks from a day to the early frost; empty after it, and where none comes. */
  Optional<Long> weeksBefore(LocalDate day) {
    return earlyFrost()
        .filter(frost -> frost.isAfter(day))
        .map(frost -> ChronoUnit.WEEKS.between(day, frost))
        .filter(weeks -> weeks > 0);
  }

  private static <T> Stream<T> all(Checklist checklist, Class<T> type) {
    return checklist.outlooks().stream().filter(type::isInstance).map(type::cast);
  }

  private static <T> T one(Stream<T> all) {
    return all.findFirst().orElse(null);
  }
}
