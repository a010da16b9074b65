package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import swineherd.figures.Sun;
import swineherd.setup.Setup;

/**
 * Sun that burns pigs of a pen while they are there. Made where the latitude is known and the skin
 * of some of them burns.
 *
 * @param pen name of the pen
 * @param index highest UV index of a clear noon in that time, rounded as it is published
 * @param from first day with a UV index of {@link Sun#STRONG} or more
 * @param until last day of that run
 * @param need what the palest of them need at that index
 * @param likely how likely some of them burn without shade, 0 to 1
 */
public record StrongSun(
    String pen,
    int index,
    LocalDate from,
    LocalDate until,
    Sun.SunNeed need,
    double likely,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup, List<Course> courses) {
    SkyOver sky = new SkyOver(setup.place());
    List<Outlook> all = new ArrayList<>();
    if (!sky.isLatitudeKnown()) {
      return all;
    }
    List<OpenAir> burning =
        OpenAir.of(setup, courses).stream().filter(p -> p.skin().burns()).toList();
    for (List<OpenAir> pigs : OpenAir.byPen(burning)) {
      StrongSun sun = of(pigs, sky);
      if (sun != null) {
        all.add(sun);
      }
    }
    return all;
  }

  private static StrongSun of(List<OpenAir> pigs, SkyOver sky) {
    NavigableSet<LocalDate> days = OpenAir.days(pigs, sky::isStrong);
    if (days.isEmpty()) {
      return null;
    }
    double index = days.stream().mapToDouble(sky::index).max().orElseThrow();
    LocalDate until = days.first();
    while (days.contains(until.plusDays(1))) {
      until = until.plusDays(1);
    }
    Sun.Skin palest = pigs.stream().map(OpenAir::skin).reduce(Sun.Skin::paler).orElseThrow();
    boolean mud = Boolean.TRUE.equals(pigs.get(0).pen().shade().wallow());
    Grounds grounds = new Grounds();
    for (OpenAir each : pigs) {
      grounds.and(each.grounds().list()).and(each.penPath(), "shade.wallow");
    }
    return new StrongSun(
        pigs.get(0).pen().name(),
        (int) Math.round(index),
        days.first(),
        until,
        palest.need(index),
        palest.likelyToBurn(mud),
        grounds.and("place", "latitude").list());
  }
}
