package swineherd.ask;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A run through some of the questions. Which is next depends on the answers so far, so it is looked
 * for anew each time.
 */
final class Round {
  /** How bare numbers are read, and the questions worded. */
  private static final List<String> FIRST_OF_ALL = List.of("units");

  private final Draft draft;
  private final Predicate<Asked> of;
  private final List<String> order;
  private final boolean again;
  private final Set<String> passed = new HashSet<>();

  private Round(Draft draft, Predicate<Asked> of, List<String> order, boolean again) {
    this.draft = draft;
    this.of = of;
    this.order = order;
    this.again = again;
  }

  /** The few questions that come before anything else. */
  static Round first(Draft draft) {
    return new Round(draft, asked -> asked.question().first(), FIRST_OF_ALL, false);
  }

  /** All that is open in a topic; if nothing is, all of it, to be looked at again. */
  static Round topic(Draft draft, String topic) {
    Round open = new Round(draft, asked -> asked.isOf(topic), List.of(), false);
    return open.next() != null
        ? open
        : new Round(draft, asked -> asked.isOf(topic), List.of(), true);
  }

  /** These, in their order. */
  static Round of(Draft draft, List<String> paths) {
    return new Round(draft, asked -> paths.contains(asked.path()), paths, false);
  }

  /** The next question; null when the round is over. */
  Asked next() {
    List<Asked> left = left();
    for (String path : order) {
      for (Asked asked : left) {
        if (asked.path().equals(path)) {
          return asked;
        }
      }
    }
    return left.isEmpty() ? null : left.get(0);
  }

  /** How many are to come, as far as can be said now. */
  int size() {
    return left().size();
  }

  private List<Asked> left() {
    return Asked.all(draft.file().setup()).stream()
        .filter(of)
        .filter(asked -> !passed.contains(asked.path()))
        .filter(asked -> again || draft.said(asked.path()) == null)
        .filter(asked -> asked.applies(draft))
        .toList();
  }

  /** Leaves a question out of the rest of this round. */
  void pass(Asked asked) {
    passed.add(asked.path());
  }

  /** Lets it be asked again in this round. */
  void recall(Asked asked) {
    passed.remove(asked.path());
  }
}
