package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import swineherd.figures.WaterLost;
import swineherd.setup.Setup;
import swineherd.setup.Sign;

/**
 * Pigs that could not drink, and how they get water back. There is one for each sign of it.
 *
 * @param pigs name of the group; empty if it was not said and there are several
 * @param action what to do
 * @param hours they could not drink; null if not known, which counts as long
 * @param weight they are reckoned at, kg; where it is not known rather too little, so that water
 *     comes back rather too slowly
 * @param each water for one pig in an hour while it comes back in steps, L
 */
public record WaterOut(
    String pigs,
    WaterLost.Action action,
    Integer hours,
    double weight,
    double each,
    List<String> grounds)
    implements Outlook {

  private static final double LIGHTEST = 5;
  private static final String NO_WATER = "no-water";

  /** Signs of salt poisoning on the nerves, and signs that a pig is not bright. */
  private static final Set<String> NERVOUS =
      Set.of("fits", "hind-weak", "head-tilt", "trembling", "cannot-rise");

  private static final Set<String> DULL = Set.of("dull", "off-feed", "missed-meal");

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.signs().size(); i++) {
      Sign sign = setup.signs().get(i);
      if (NO_WATER.equals(sign.sign())) {
        all.add(of(setup, sign, "signs[" + i + "]", Stay.of(setup, courses)));
      }
    }
    return all;
  }

  private static WaterOut of(Setup setup, Sign sign, String path, List<Stay> stays) {
    List<Stay> dry =
        sign.pigs() == null
            ? stays
            : stays.stream().filter(s -> s.group().name().equals(sign.pigs())).toList();
    LocalDate today = setup.checkOn();
    String pigs = Watched.group(setup, sign);
    double weight = lightest(dry, today);
    Double hours = sign.dryFor() == null ? null : sign.dryFor() * 24;
    return new WaterOut(
        pigs,
        WaterLost.action(hours, new Weather(setup.place()).hotDay(today), look(setup, pigs, sign)),
        hours == null ? null : (int) Math.round(hours),
        weight,
        WaterLost.litresPerHour(weight),
        grounds(setup, pigs, path));
  }

  private static List<String> grounds(Setup setup, String pigs, String path) {
    Grounds grounds = Grounds.of(path, "sign", "count", "dryFor", "look");
    for (int i : Watched.byGroup(setup).get(pigs)) {
      grounds.and("signs[" + i + "]", "sign", "count");
    }
    return grounds.and("place", "hottestMonth").list();
  }

  /** The lightest of some pigs, kg; rather too light where it is not known. */
  static double lightest(List<Stay> pigs, LocalDate on) {
    return Math.max(
        LIGHTEST, pigs.stream().mapToDouble(s -> s.weightOn(on)).min().orElse(LIGHTEST));
  }

  /** How they look, by what was said and by the other signs of the group; the worst counts. */
  private static WaterLost.Look look(Setup setup, String pigs, Sign sign) {
    Set<String> shown =
        setup.signs().stream()
            .filter(s -> Watched.group(setup, s).equals(pigs))
            .map(Sign::sign)
            .filter(Objects::nonNull)
            .collect(Collectors.toSet());
    if (sign.look() == Sign.Look.NERVOUS || !Collections.disjoint(shown, NERVOUS)) {
      return WaterLost.Look.NERVOUS;
    }
    return sign.look() == Sign.Look.BRIGHT && Collections.disjoint(shown, DULL)
        ? WaterLost.Look.BRIGHT
        : WaterLost.Look.DULL_OR_UNSEEN;
  }
}
