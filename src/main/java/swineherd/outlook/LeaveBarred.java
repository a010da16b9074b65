package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Standstill;
import swineherd.setup.Country;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * The standstill that an arrival brings: one for the latest arrival, and one for each group that is
 * to leave within a standstill.
 *
 * @param arrived name of the group whose arrival begins it
 * @param arrives day of that arrival
 * @param last last day on which nothing may leave
 * @param first first day on which pigs may leave
 * @param leaver group that is to leave before that; null if none is
 * @param leaves day it is to leave; null with {@code leaver}
 * @param by day by which to act; null if pigs have come and none is to leave
 */
public record LeaveBarred(
    String arrived,
    LocalDate arrives,
    LocalDate last,
    LocalDate first,
    String leaver,
    LocalDate leaves,
    LocalDate by,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup) {
    String rule = rule(setup.place().country());
    if (rule == null) {
      return List.of();
    }
    List<Outlook> all = new ArrayList<>();
    latest(setup, null)
        .filter(g -> firstDay(g, rule).isAfter(setup.checkOn()))
        .ifPresent(g -> all.add(of(setup, g, null, rule)));
    for (Group leaver : setup.pigs()) {
      LocalDate leaves = leaver.slaughterOn();
      if (leaves != null && !leaves.isBefore(setup.checkOn())) {
        latest(setup, leaves)
            .filter(g -> leaves.isBefore(firstDay(g, rule)))
            .ifPresent(g -> all.add(of(setup, g, leaver, rule)));
      }
    }
    return all;
  }

  private static String rule(Country country) {
    if (country == Country.ENGLAND) {
      return "england-pigs";
    }
    return country != null && country.isUnitedKingdom() ? "uk-pigs" : null;
  }

  /** The group that came last, no later than a day if one is given. */
  private static Optional<Group> latest(Setup setup, LocalDate noLaterThan) {
    return setup.pigs().stream()
        .filter(g -> g.arrives() != null)
        .filter(g -> noLaterThan == null || !g.arrives().isAfter(noLaterThan))
        .max(Comparator.comparing(Group::arrives));
  }

  private static LocalDate firstDay(Group arrived, String rule) {
    return Standstill.earliestMove(List.of(arrived.arrives()), rule).orElseThrow();
  }

  private static LeaveBarred of(Setup setup, Group arrived, Group leaver, String rule) {
    Grounds grounds =
        Grounds.of("pigs[" + setup.pigs().indexOf(arrived) + "]", "arrives")
            .and("place", "country");
    if (leaver != null) {
      grounds.and("pigs[" + setup.pigs().indexOf(leaver) + "]", "slaughterOn");
    }
    LocalDate first = firstDay(arrived, rule);
    return new LeaveBarred(
        arrived.name(),
        arrived.arrives(),
        first.minusDays(1),
        first,
        leaver == null ? null : leaver.name(),
        leaver == null ? null : leaver.slaughterOn(),
        by(arrived, leaver, setup.checkOn()),
        grounds.list());
  }

  private static LocalDate by(Group arrived, Group leaver, LocalDate today) {
    if (arrived.arrives().isAfter(today)) {
      return arrived.arrives();
    }
    return leaver == null ? null : leaver.slaughterOn();
  }
}
