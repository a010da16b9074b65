package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Weaner;
import swineherd.rulebook.Table;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * Vaccination against erysipelas of pigs that are to come, or came within a month, and live on
 * earth. The vet decides; these are the usual days of handbooks.
 *
 * @param pigs name of the group
 * @param first age at the usual first dose, the earliest and the latest, in words
 * @param gap days between the two doses, the shortest and the longest, in words
 * @param until day by which the protection from the sow is usually over, in words
 * @param by day by which to ask: before they come, or now
 */
public record Vaccination(
    String pigs, String first, String gap, String until, LocalDate by, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    Whereabouts whereabouts = new Whereabouts(setup);
    int watch = Weaner.quarantineDays().high();
    for (Stay stay : Stay.of(setup, courses)) {
      Pen pen = setup.pen(stay.group().pen()).orElse(null);
      boolean earth = pen != null && pen.ground() != null && pen.ground().isEarth();
      if (earth && whereabouts.isNew(stay, watch)) {
        all.add(of(stay, setup));
      }
    }
    return all;
  }

  private static Vaccination of(Stay stay, Setup setup) {
    Group group = stay.group();
    Table.Row row = Table.named("vaccination").row("erysipelas");
    LocalDate born = Leaving.of(group, List.of()).born();
    int sow = (int) row.number("sow_until_d");
    LocalDate over = born == null ? null : born.plusDays(sow);
    String until = "at about " + sow / 7 + " weeks of age";
    LocalDate by = group.arrives();
    return new Vaccination(
        group.name(),
        weeks(row, "first"),
        weeks(row, "gap"),
        over == null ? until : until + ", " + Dates.words(over),
        by != null && by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
        Grounds.of(stay.path(), "arrives", "ageOnArrival", "born").list());
  }

  private static String weeks(Table.Row row, String of) {
    return (int) row.number(of + "_low_d") / 7
        + " to "
        + (int) row.number(of + "_high_d") / 7
        + " weeks";
  }
}
