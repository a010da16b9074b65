package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import swineherd.figures.Space;
import swineherd.setup.Setup;

/**
 * One pig that has its pen to itself. There is one for each group of a single pig that will be
 * alone for more than some days.
 *
 * @param pigs name of the group
 * @param from first day it is alone, not before the day of the check
 * @param leftBehind whether it has company until then
 * @param othersAbout whether there are or will be pigs in other pens meanwhile
 * @param by when something should be done
 */
public record Alone(
    String pigs,
    LocalDate from,
    boolean leftBehind,
    boolean othersAbout,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  /** Some days alone at the end are borne; judgement. */
  private static final int BORNE_DAYS = 7;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Stay> stays = Stay.of(setup, courses);
    List<Outlook> all = new ArrayList<>();
    for (Stay stay : stays) {
      if (stay.group().count() == null || !Space.isLone(stay.group().count())) {
        continue;
      }
      LocalDate from = firstAlone(stay, stays);
      if (from == null) {
        continue;
      }
      boolean left = from.isAfter(stay.from());
      boolean others =
          stays.stream()
              .anyMatch(
                  s -> !s.equals(stay) && !s.to().isBefore(from) && !s.from().isAfter(stay.to()));
      all.add(
          new Alone(
              stay.group().name(),
              from,
              left,
              others,
              from,
              Grounds.of(stay.path(), "count", "arrives", "slaughterOn").list()));
    }
    return all;
  }

  /** First day from which it is alone for longer than is borne; null if there is none. */
  private static LocalDate firstAlone(Stay stay, List<Stay> stays) {
    List<Stay> mates =
        stays.stream()
            .filter(s -> !s.equals(stay) && Objects.equals(s.group().pen(), stay.group().pen()))
            .toList();
    int days = 0;
    for (LocalDate day = stay.from(); !day.isAfter(stay.to()); day = day.plusDays(1)) {
      LocalDate on = day;
      days = mates.stream().anyMatch(m -> m.isThereOn(on)) ? 0 : days + 1;
      if (days > BORNE_DAYS) {
        return day.minusDays(BORNE_DAYS);
      }
    }
    return null;
  }
}
