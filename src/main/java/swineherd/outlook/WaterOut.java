package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.signs().size(); i++) {
      Sign sign = setup.signs().get(i);
      if (sign.sign() == Sign.Kind.NO_WATER) {
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
    double weight =
        Math.max(LIGHTEST, dry.stream().mapToDouble(s -> s.weightOn(today)).min().orElse(LIGHTEST));
    Double hours = sign.dryFor() == null ? null : sign.dryFor() * 24;
    return new WaterOut(
        dry.size() == 1 ? dry.get(0).group().name() : "",
        WaterLost.action(hours, new Weather(setup.place()).hotDay(today), look(sign)),
        hours == null ? null : (int) Math.round(hours),
        weight,
        WaterLost.litresPerHour(weight),
        Grounds.of(path, "sign", "dryFor", "look").and("place", "hottestMonth").list());
  }

  private static WaterLost.Look look(Sign sign) {
    if (sign.look() == null || sign.look() == Sign.Look.DULL) {
      return WaterLost.Look.DULL_OR_UNSEEN;
    }
    return sign.look() == Sign.Look.BRIGHT ? WaterLost.Look.BRIGHT : WaterLost.Look.NERVOUS;
  }
}
