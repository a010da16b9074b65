package swineherd.setup;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import swineherd.units.UnitSystem;

/**
 * What a keeper said about pigs and place, in SI units. Answers that were not given are null;
 * sections and lists never are.
 *
 * @param name what the keeper calls it
 * @param checkOn the day as of which it is checked; never null once read
 * @param units the units the keeper wants to read; never null once read
 * @param keeper who keeps them
 * @param place where
 * @param pens the pens
 * @param pigs the groups of pigs
 * @param feed how they are fed
 * @param money what things cost
 * @param signs what is seen that may be wrong
 * @param diary what was done so far, oldest first
 */
public record Setup(
    String name,
    LocalDate checkOn,
    UnitSystem units,
    Keeper keeper,
    Place place,
    List<Pen> pens,
    List<Group> pigs,
    Feed feed,
    Money money,
    List<Sign> signs,
    List<DiaryEntry> diary) {

  public Setup {
    keeper = keeper == null ? Keeper.UNKNOWN : keeper;
    place = place == null ? Place.UNKNOWN : place;
    pens = pens == null ? List.of() : List.copyOf(pens);
    pigs = pigs == null ? List.of() : List.copyOf(pigs);
    feed = feed == null ? Feed.UNKNOWN : feed;
    money = money == null ? Money.UNKNOWN : money;
    signs = signs == null ? List.of() : List.copyOf(signs);
    diary = diary == null ? List.of() : List.copyOf(diary);
  }

  /** The pen of that name. */
  public Optional<Pen> pen(String name) {
    return pens.stream().filter(p -> name != null && name.equals(p.name())).findFirst();
  }

  /**
   * Whether a group is there on the day of the check. Where nobody said when they come, pigs that
   * were seen, weighed or treated are.
   */
  public boolean isThere(Group group) {
    if (group.arrives() != null) {
      return !group.arrives().isAfter(checkOn);
    }
    return diary.stream().anyMatch(e -> e.tellsOf(group.name()))
        || signs.stream().anyMatch(s -> Objects.equals(s.pigs(), group.name()));
  }

  /** Whether the day set for the slaughter of a group has passed. */
  public boolean isGone(Group group) {
    return group.slaughterOn() != null && group.slaughterOn().isBefore(checkOn);
  }

  /** The group of that name. */
  public Optional<Group> group(String name) {
    return pigs.stream().filter(g -> name != null && name.equals(g.name())).findFirst();
  }
}
