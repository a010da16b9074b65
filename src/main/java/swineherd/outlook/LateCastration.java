package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import swineherd.figures.Breed;
import swineherd.figures.Taint;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Males that were, or will be, castrated so late that their fat may still smell on the day they go.
 * A day of castration that was not said is before they came, as its question tells.
 *
 * @param pigs name of the group
 * @param castratedOn the day
 * @param waiting days the fat is given to clear, the longer one if their age then is not known
 * @param clearedOn first day after the wait
 * @param day the day they go, set or likely; null if neither is known
 */
public record LateCastration(
    String pigs,
    LocalDate castratedOn,
    double waiting,
    LocalDate clearedOn,
    LocalDate day,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (group.sex() != Group.Sex.GILTS
          && group.males() == Group.Males.CASTRATED
          && group.castratedOn() != null
          && !setup.isGone(group)) {
        Leaving leaving = Leaving.of(group, courses);
        LateCastration late = of(group, "pigs[" + i + "]", leaving);
        boolean clear =
            !late.clearedOn.isAfter(setup.checkOn())
                || (leaving.earliest() != null && !late.clearedOn.isAfter(leaving.earliest()));
        if (afterPuberty(group, leaving.born()) && !clear) {
          all.add(late);
        }
      }
    }
    return all;
  }

  private static LateCastration of(Group group, String path, Leaving leaving) {
    boolean mature = mature(group, leaving.born());
    return new LateCastration(
        group.name(),
        group.castratedOn(),
        Taint.clearingDays(mature),
        Taint.clearedOn(group.castratedOn(), mature),
        leaving.likely(),
        leaving.grounds(path).and(path, "castratedOn").list());
  }

  private static boolean afterPuberty(Group group, LocalDate born) {
    return born == null
        || ChronoUnit.DAYS.between(born, group.castratedOn()) >= Taint.castratedBeforePuberty();
  }

  private static boolean mature(Group group, LocalDate born) {
    if (born == null) {
      return true;
    }
    boolean early =
        Stream.of(group.breed(), group.crossedWith())
            .anyMatch(breed -> breed != null && Breed.named(breed).earlyMaturing());
    double age = (double) Math.max(0, ChronoUnit.DAYS.between(born, group.castratedOn()));
    return Taint.risk(new Taint.Pig(Taint.Sex.ENTIRE, age, null, early, false, false)).riskClass()
        == Taint.RiskClass.VERY_HIGH;
  }
}
