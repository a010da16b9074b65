package swineherd.outlook;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import swineherd.setup.Country;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * A keeper of whom it is not known that he is registered, or who is not.
 *
 * @param country null if not known
 * @param here whether pigs are there already
 * @param by day by which it should be begun; null if pigs are there or nobody knows when they come
 * @param chance that the law is broken if nothing is done, 0 to 1 (judgement)
 */
public record Registration(
    Country country, boolean here, LocalDate by, double chance, List<String> grounds)
    implements Outlook {

  /** Numbers take their time to be issued; judgement. */
  private static final int LEAD_DAYS = 14;

  static List<Outlook> of(Setup setup) {
    boolean any = setup.pigs().stream().anyMatch(g -> !setup.isGone(g));
    if (Boolean.TRUE.equals(setup.keeper().registered()) || !any) {
      return List.of();
    }
    boolean here = setup.pigs().stream().anyMatch(new Whereabouts(setup)::isHere);
    LocalDate first =
        setup.pigs().stream()
            .filter(g -> !setup.isGone(g))
            .map(Group::arrives)
            .filter(Objects::nonNull)
            .min(Comparator.naturalOrder())
            .orElse(null);
    boolean unknown = setup.keeper().registered() == null;
    return List.of(
        new Registration(
            setup.place().country(),
            here,
            here || first == null ? null : first.minusDays(LEAD_DAYS),
            unknown ? (here ? 0.25 : 0.5) : 0.9,
            Grounds.of("keeper", "registered").and("place", "country").list()));
  }
}
