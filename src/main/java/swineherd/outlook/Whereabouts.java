package swineherd.outlook;

import java.time.LocalDate;
import java.util.Objects;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/** Which groups are there, which are to come and which are gone, on the day of the check. */
record Whereabouts(Setup setup) {
  /** kg; judgement: weaners are sold up to about 27 kg. */
  private static final double HEAVIEST_NEW = 30;

  /** There: the day of arrival is past or today, or the diary or a sign tells of them. */
  boolean isHere(Group group) {
    if (group.arrives() != null) {
      return !isGone(group) && !group.arrives().isAfter(setup.checkOn());
    }
    return !isGone(group) && isTold(group);
  }

  /**
   * To come, or come within so many days. Pigs of which no day of arrival is known count as new as
   * long as they weigh no more than a weaner does.
   */
  boolean isNew(Stay stay, int days) {
    LocalDate arrives = stay.group().arrives();
    if (arrives != null) {
      return arrives.plusDays(days).isAfter(setup.checkOn());
    }
    return isComing(stay.group()) || stay.weightOn(setup.checkOn()) <= HEAVIEST_NEW;
  }

  /** To come, or nothing says that they are there. */
  boolean isComing(Group group) {
    return !isGone(group) && !isHere(group);
  }

  boolean isGone(Group group) {
    return group.slaughterOn() != null && group.slaughterOn().isBefore(setup.checkOn());
  }

  private boolean isTold(Group group) {
    return setup.diary().stream().anyMatch(e -> e.tellsOf(group.name()))
        || setup.signs().stream().anyMatch(s -> Objects.equals(s.pigs(), group.name()));
  }

  /**
   * Whether the one group is already there when the other comes. A group of which neither a day nor
   * anything else is known counts as there, if the other has a day.
   */
  boolean isThereBefore(Group there, Group newcomer) {
    LocalDate day = newcomer.arrives() == null ? setup.checkOn() : newcomer.arrives();
    if (there.equals(newcomer)
        || isGone(there)
        || (there.slaughterOn() != null && there.slaughterOn().isBefore(day))) {
      return false;
    }
    if (newcomer.arrives() == null && isTold(newcomer) && there.arrives() == null) {
      return false;
    }
    if (there.arrives() != null) {
      return newcomer.arrives() == null
          ? !there.arrives().isAfter(day)
          : there.arrives().isBefore(day);
    }
    return isTold(there) || newcomer.arrives() != null;
  }
}
