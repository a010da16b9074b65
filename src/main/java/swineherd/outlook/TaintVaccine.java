package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Taint;
import swineherd.figures.Taint.Protected;
import swineherd.figures.Taint.Protection;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * Whether the vaccination of a group's males against taint suits the day they go.
 *
 * @param pigs name of the group
 * @param second day of the second injection; null if not known
 * @param given whether it has been given
 * @param fits whether a day is set for slaughter, and it lies as the label means it
 * @param best the days to go on after the second injection; null if that is not known
 * @param secondBy last day for the second injection before the day they go, today at the earliest;
 *     null if no day is known
 * @param least days from the second injection to slaughter, at least
 * @param most the same, at most
 */
public record TaintVaccine(
    String pigs,
    LocalDate second,
    boolean given,
    boolean fits,
    Protected best,
    LocalDate secondBy,
    double least,
    double most,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      if (group.sex() != Group.Sex.GILTS
          && group.males() == Group.Males.VACCINATED
          && !setup.isGone(group)) {
        all.add(of(setup, group, "pigs[" + i + "]", Leaving.of(group, courses)));
      }
    }
    return all;
  }

  private static TaintVaccine of(Setup setup, Group group, String path, Leaving leaving) {
    LocalDate second = group.secondVaccine();
    LocalDate day = leaving.likely();
    double least = Taint.secondBeforeSlaughter().low();
    LocalDate secondBy = day == null ? null : day.minusDays((long) least);
    return new TaintVaccine(
        group.name(),
        second,
        second != null && !second.isAfter(setup.checkOn()),
        second != null
            && group.slaughterOn() != null
            && Taint.protection(leaving.born(), second, group.slaughterOn())
                == Protection.AS_LABELLED,
        second == null ? null : Taint.protectedAfter(second),
        secondBy != null && secondBy.isBefore(setup.checkOn()) ? setup.checkOn() : secondBy,
        least,
        Taint.secondBeforeSlaughter().high(),
        Grounds.of(path, "males", "secondVaccine", "slaughterOn").list());
  }
}
