package swineherd.outlook;

import java.time.LocalDate;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/** Which groups are there, which are to come and which are gone, on the day of the check. */
record Whereabouts(Setup setup) {
  /** kg; judgement: weaners are sold up to about 27 kg. */
  private static final double HEAVIEST_NEW = 30;

  /** There: the day of arrival is past or today, or the diary or a sign tells of them. */
  boolean isHere(Group group) {
    return !setup.isGone(group) && setup.isThere(group);
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
    return !setup.isGone(group) && !isHere(group);
  }

  /**
   * Whether the one group is already there when the other comes. A group of which neither a day nor
   * anything else is known counts as there, if the other has a day.
   */
  boolean isThereBefore(Group there, Group newcomer) {
    LocalDate day = newcomer.arrives() == null ? setup.checkOn() : newcomer.arrives();
    if (there.equals(newcomer)
        || setup.isGone(there)
        || (there.slaughterOn() != null && there.slaughterOn().isBefore(day))) {
      return false;
    }
    if (newcomer.arrives() == null && there.arrives() == null && setup.isThere(newcomer)) {
      return false;
    }
    if (there.arrives() != null) {
      return newcomer.arrives() == null
          ? !there.arrives().isAfter(day)
          : there.arrives().isBefore(day);
    }
    return setup.isThere(there) || newcomer.arrives() != null;
  }
}
