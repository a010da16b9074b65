package swineherd.outlook.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import swineherd.outlook.Outlook;

/**
 * The outlooks of a setup, picked by kind.
 *
 * @param outlooks all of them
 */
record Worked(List<Outlook> outlooks) {

  /** All of a kind. */
  <T extends Outlook> List<T> all(Class<T> kind, Predicate<T> which) {
    return outlooks.stream().filter(kind::isInstance).map(kind::cast).filter(which).toList();
  }

  /** The first of a kind. */
  <T extends Outlook> Optional<T> first(Class<T> kind, Predicate<T> which) {
    return all(kind, which).stream().findFirst();
  }
}
