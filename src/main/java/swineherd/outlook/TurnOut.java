package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Group;
import swineherd.setup.Setup;

/**
 * The first ten days outdoors of pigs whose skin burns, where the sun is strong in them or that is
 * not known. There is one for each group that has not had them yet.
 *
 * @param pigs name of the group
 * @param pen name of the pen
 * @param skin in words
 * @param on the day they are put out, or today if they are out; null if it is not known
 * @param likely how likely some burn in these days, 0 to 1: half of what a whole season does to
 *     pigs from indoors, and half of that again where nobody knows where they were; judgement
 */
public record TurnOut(
    String pigs, String pen, String skin, LocalDate on, double likely, List<String> grounds)
    implements Outlook {

  /** Days that skin from indoors needs to get used to the sun: 7 to 10, judgement. */
  private static final int DAYS = 10;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    SkyOver sky = new SkyOver(setup.place());
    List<Outlook> all = new ArrayList<>();
    for (OpenAir pigs : OpenAir.of(setup, courses)) {
      Stay stay = pigs.stay();
      Group group = stay.group();
      LocalDate arrives = group.arrives();
      LocalDate last = arrives == null ? stay.to() : arrives.plusDays(DAYS);
      if (pigs.skin().burns()
          && !last.isBefore(setup.checkOn())
          && stay.from().datesUntil(last.plusDays(1)).anyMatch(sky::isStrong)) {
        all.add(
            new TurnOut(
                group.name(),
                pigs.pen().name(),
                SkinOf.words(group),
                arrives == null ? null : stay.from(),
                likely(pigs),
                SkinOf.grounds(stay.path(), group)
                    .and(stay.path(), "arrives")
                    .and("place", "latitude")
                    .list()));
      }
    }
    return all;
  }

  private static double likely(OpenAir pigs) {
    boolean mud = Boolean.TRUE.equals(pigs.pen().shade().wallow());
    double share = pigs.stay().group().raised() == Group.Raised.INDOORS ? 0.5 : 0.25;
    return share * pigs.skin().likelyToBurn(mud);
  }
}
