package swineherd.compare;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.advice.Value;
import swineherd.setup.BadSetupException;
import swineherd.setup.Differences;
import swineherd.setup.Differences.Difference;
import swineherd.setup.SetupFile;
import swineherd.units.Dimension;

/**
 * What has changed between two checks, and what made it so. The engine runs on the setups between
 * the two: a difference caused a change if the change is not there without it.
 *
 * @param earlier the earlier checklist
 * @param later the later one
 * @param differences how the setups differ, the passing of time first
 * @param changes new, cleared and changed items; the strongest first in each
 */
public record Comparison(
    Checklist earlier, Checklist later, List<Difference> differences, List<Change> changes) {

  /** Places by which an item must rise or fall, among those on both lists, to be told. */
  private static final int FAR = 3;

  /** Days by which a date must shift to be told, unless it is near. */
  private static final int SHIFTED = 3;

  private static final int NEAR = 14;

  /** Beyond so many differences each change is only traced forwards. */
  private static final int MOST_TRACED = 60;

  /** What has become of an item. */
  public enum Kind {
    NEW,
    CLEARED,
    CHANGED
  }

  /** In what an item has changed. */
  public enum Respect {
    PLACE,
    DATE,
    FIGURE
  }

  /**
   * One item that is not as it was.
   *
   * @param before the item on the earlier list; null if it is new
   * @param after the item on the later list; null if it is cleared
   * @param placeBefore its place there, from 1; 0 if it had none
   * @param placeAfter its place there, from 1; 0 if it has none
   * @param respects in what it has changed
   * @param ticked whether it went because it was ticked off
   * @param causes the differences that made it so, the passing of time first
   */
  public record Change(
      Kind kind,
      Item before,
      Item after,
      int placeBefore,
      int placeAfter,
      List<Respect> respects,
      boolean ticked,
      List<Difference> causes) {
    /** The item as it is now, or as it was. */
    public Item item() {
      return after == null ? before : after;
    }
  }

  /** The changes of one kind. */
  public List<Change> of(Kind kind) {
    return changes.stream().filter(c -> c.kind() == kind).toList();
  }

  /** Compares the checklists of two setups. */
  public static Comparison of(SetupFile earlier, SetupFile later, KnowledgeBase rules) {
    return new Tracing(Differences.between(earlier, later), rules)
        .compare(Advisor.advise(earlier, rules), Advisor.advise(later, rules));
  }

  /** Compares two checklists without asking what caused the changes. */
  public static Comparison between(Checklist earlier, Checklist later) {
    return new Comparison(earlier, later, List.of(), changes(earlier, later));
  }

  /** Finds out what caused each change. */
  private static final class Tracing {
    private final Differences between;
    private final List<Difference> all;
    private final KnowledgeBase rules;

    Tracing(Differences between, KnowledgeBase rules) {
      this.between = between;
      this.all = between.all();
      this.rules = rules;
    }

    Comparison compare(Checklist earlier, Checklist later) {
      List<Change> changes = changes(earlier, later);
      Map<String, List<Difference>> causes = new HashMap<>();
      changes.forEach(c -> causes.put(key(c), new ArrayList<>()));
      if (all.size() <= MOST_TRACED) {
        for (Difference difference : all) {
          List<Difference> others = all.stream().filter(d -> !d.equals(difference)).toList();
          trace(checklist(others), earlier, changes, difference, causes);
        }
      }
      if (all.size() <= MOST_TRACED && causes.values().stream().anyMatch(List::isEmpty)) {
        alone(earlier, changes, causes);
      }
      if (causes.values().stream().anyMatch(List::isEmpty)) {
        forwards(earlier, changes, causes);
      }
      return new Comparison(
          earlier, later, all, changes.stream().map(c -> caused(c, causes.get(key(c)))).toList());
    }

    /** Notes a difference as the cause of every change that is not there without it. */
    private void trace(
        Checklist without,
        Checklist earlier,
        List<Change> changes,
        Difference difference,
        Map<String, List<Difference>> causes) {
      if (without == null) {
        return;
      }
      Map<String, Change> left = new HashMap<>();
      changes(earlier, without).forEach(c -> left.put(key(c), c));
      for (Change change : changes) {
        Change other = left.get(key(change));
        if (other == null || other.kind() != change.kind()) {
          causes.get(key(change)).add(difference);
        }
      }
    }

    /** Where no single difference is needed: all those that would do alone. */
    private void alone(
        Checklist earlier, List<Change> changes, Map<String, List<Difference>> causes) {
      List<Change> open = changes.stream().filter(c -> causes.get(key(c)).isEmpty()).toList();
      for (Difference difference : all) {
        Checklist then = checklist(List.of(difference));
        if (then == null) {
          continue;
        }
        Map<String, Kind> there = new HashMap<>();
        changes(earlier, then).forEach(c -> there.put(key(c), c.kind()));
        for (Change change : open) {
          if (there.get(key(change)) == change.kind()) {
            causes.get(key(change)).add(difference);
          }
        }
      }
    }

    /**
     * Where none would do alone: the one with which the change comes to stay, as they are added one
     * by one.
     */
    private void forwards(
        Checklist earlier, List<Change> changes, Map<String, List<Difference>> causes) {
      Map<String, Difference> since = new HashMap<>();
      List<Difference> sofar = new ArrayList<>();
      for (Difference difference : all) {
        sofar.add(difference);
        Checklist then = checklist(sofar);
        if (then == null) {
          continue;
        }
        Map<String, Kind> there = new HashMap<>();
        changes(earlier, then).forEach(c -> there.put(key(c), c.kind()));
        for (Change change : changes) {
          if (there.get(key(change)) == change.kind()) {
            since.putIfAbsent(key(change), difference);
          } else {
            since.remove(key(change));
          }
        }
      }
      since.forEach(
          (key, difference) -> {
            if (causes.get(key).isEmpty()) {
              causes.get(key).add(difference);
            }
          });
    }

    /** Null if the answers do not go together so. */
    private Checklist checklist(List<Difference> some) {
      try {
        return Advisor.advise(between.with(some), rules);
      } catch (BadSetupException e) {
        return null;
      }
    }

    private static Change caused(Change c, List<Difference> causes) {
      return new Change(
          c.kind(),
          c.before(),
          c.after(),
          c.placeBefore(),
          c.placeAfter(),
          c.respects(),
          c.ticked(),
          List.copyOf(causes));
    }
  }

  /** What differs between two lists, without causes. */
  static List<Change> changes(Checklist earlier, Checklist later) {
    Map<String, Item> before = byKey(earlier);
    Map<String, Item> after = byKey(later);
    List<String> places = new ArrayList<>(before.keySet());
    List<String> placesNow = new ArrayList<>(after.keySet());
    List<String> common = places.stream().filter(after::containsKey).toList();
    List<String> commonNow = placesNow.stream().filter(before::containsKey).toList();
    List<Change> changes = new ArrayList<>();
    after.forEach(
        (key, item) -> {
          int place = placesNow.indexOf(key) + 1;
          Item was = before.get(key);
          if (was == null) {
            changes.add(new Change(Kind.NEW, null, item, 0, place, List.of(), false, List.of()));
            return;
          }
          int rise = common.indexOf(key) - commonNow.indexOf(key);
          List<Respect> respects = respects(earlier, was, later, item, rise);
          if (!respects.isEmpty()) {
            int placeBefore = places.indexOf(key) + 1;
            changes.add(
                new Change(
                    Kind.CHANGED, was, item, placeBefore, place, respects, false, List.of()));
          }
        });
    before.forEach(
        (key, item) -> {
          if (!after.containsKey(key)) {
            boolean ticked = later.tickedOff().stream().anyMatch(t -> same(t.item(), item));
            int place = places.indexOf(key) + 1;
            changes.add(
                new Change(Kind.CLEARED, item, null, place, 0, List.of(), ticked, List.of()));
          }
        });
    // pigs that moved take an item along; in the same words it is no news
    List<Change> along =
        changes.stream().filter(c -> changes.stream().anyMatch(o -> isAlong(c, o))).toList();
    changes.removeAll(along);
    return changes;
  }

  private static boolean isAlong(Change one, Change other) {
    boolean pair =
        (one.kind() == Kind.NEW && other.kind() == Kind.CLEARED)
            || (one.kind() == Kind.CLEARED && other.kind() == Kind.NEW);
    Item a = one.item();
    Item b = other.item();
    return pair
        && a.id().equals(b.id())
        && !a.card().placeholders().contains("about")
        && a.advice().values().equals(b.advice().values());
  }

  private static List<Respect> respects(
      Checklist earlier, Item before, Checklist later, Item after, int rise) {
    List<Respect> respects = new ArrayList<>();
    if (Math.abs(rise) >= FAR) {
      respects.add(Respect.PLACE);
    }
    if (isNews(due(earlier, before), due(later, after), later.file().setup().checkOn())) {
      respects.add(Respect.DATE);
    }
    if (!moved(before, after).isEmpty()) {
      respects.add(Respect.FIGURE);
    }
    return respects;
  }

  /** When it is due; what is due today or before is due now on whatever day one looks. */
  private static LocalDate due(Checklist checklist, Item item) {
    return item.due() == null || item.due().isAfter(checklist.file().setup().checkOn())
        ? item.due()
        : LocalDate.MIN;
  }

  /** A day or two more or less are news only where the day is near. */
  private static boolean isNews(LocalDate was, LocalDate is, LocalDate today) {
    if (was == null || is == null || was.equals(LocalDate.MIN) || is.equals(LocalDate.MIN)) {
      return !Objects.equals(was, is);
    }
    long apart = Math.abs(ChronoUnit.DAYS.between(was, is));
    return apart >= SHIFTED || (apart > 0 && is.isBefore(today.plusDays(NEAR)));
  }

  /** The figures of an item that have changed so that a keeper would see it, by their names. */
  public static Map<String, List<Value>> moved(Item before, Item after) {
    Map<String, List<Value>> moved = new LinkedHashMap<>();
    before
        .advice()
        .values()
        .forEach(
            (name, was) -> {
              Value is = after.advice().values().get(name);
              if (is == null) {
                return;
              }
              Predicate<String> told = p -> after.card().placeholders().contains(p);
              boolean due =
                  was.equals(new Value.Day(before.due())) && is.equals(new Value.Day(after.due()));
              if (told.test(name) && !due && differ(was, is)) {
                moved.put(name, List.of(was, is));
              }
            });
    return moved;
  }

  private static boolean differ(Value was, Value is) {
    if (was instanceof Value.Amount a && is instanceof Value.Amount b) {
      // a tenth; small steps of a growing pig are no news
      double scale = Math.max(Math.abs(a.band().likely()), Math.abs(b.band().likely()));
      boolean absolute = a.dimension() == Dimension.TEMPERATURE;
      return Math.abs(a.band().likely() - b.band().likely()) > (absolute ? 1 : 0.1 * scale);
    }
    if (was instanceof Value.Chance a && is instanceof Value.Chance b) {
      return Math.abs(a.chance() - b.chance()) >= 0.1;
    }
    if (was instanceof Value.Day a && is instanceof Value.Day b) {
      return Math.abs(ChronoUnit.DAYS.between(a.day(), b.day())) >= SHIFTED;
    }
    return !was.equals(is);
  }

  private static boolean same(Item a, Item b) {
    return a.id().equals(b.id()) && a.advice().about().equals(b.advice().about());
  }

  private static String key(Change change) {
    return key(change.item());
  }

  private static String key(Item item) {
    return item.id() + " " + item.advice().about();
  }

  /** In their order; a second item of one rule about the same is told apart by its number. */
  private static Map<String, Item> byKey(Checklist checklist) {
    Map<String, Item> items = new LinkedHashMap<>();
    for (Item item : checklist.items()) {
      String key = key(item);
      for (int n = 2; items.containsKey(key); n++) {
        key = key(item) + " " + n;
      }
      items.put(key, item);
    }
    return items;
  }
}
