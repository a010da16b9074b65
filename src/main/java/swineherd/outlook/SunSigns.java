package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.setup.Sign;

/**
 * What is seen on the pigs of a group, taken together, and whether sun or heat can be behind it.
 *
 * @param pigs name of the group; empty if it was not said and there are several
 * @param pen name of its pen; null if not known
 * @param shown all signs that were named
 * @param skin in words
 * @param days days since the first sign; null if one of them was not dated
 * @param downDays days since one could not get up; null if it was not said or none is down
 * @param temperature highest rectal temperature, degC; null if none was taken
 * @param sunMayBe whether the sun may be behind it: pale skin or in part, not under a roof, strong
 *     sun in the days before. What is not known counts as yes
 * @param heatMayBe whether the season is one of warm days; not known counts as yes
 */
public record SunSigns(
    String pigs,
    String pen,
    Set<String> shown,
    String skin,
    Long days,
    Long downDays,
    Double temperature,
    boolean sunMayBe,
    boolean heatMayBe,
    List<String> grounds)
    implements Outlook {

  /** A burn shows within three days of the sun that made it; judgement. */
  private static final int DAYS_BEFORE = 3;

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    Watched.byGroup(setup)
        .forEach(
            (pigs, at) -> {
              SunSigns seen = of(setup, pigs, at);
              if (!seen.shown().isEmpty()) {
                all.add(seen);
              }
            });
    return all;
  }

  private static SunSigns of(Setup setup, String pigs, List<Integer> at) {
    Set<String> shown = new HashSet<>();
    List<LocalDate> since = new ArrayList<>();
    LocalDate downSince = null;
    Double temperature = null;
    Grounds grounds = new Grounds();
    for (int i : at) {
      Sign sign = setup.signs().get(i);
      shown.addAll(Watched.shown(setup, sign));
      since.add(sign.since());
      if ("cannot-rise".equals(sign.sign())) {
        downSince = sign.since();
      }
      if (sign.temperature() != null) {
        temperature =
            temperature == null ? sign.temperature() : Math.max(temperature, sign.temperature());
      }
      grounds.and("signs[" + i + "]", "sign", "count", "since", "temperature");
    }
    LocalDate today = setup.checkOn();
    LocalDate first =
        since.stream().filter(Objects::nonNull).min(LocalDate::compareTo).orElse(today);
    SkyOver sky = new SkyOver(setup.place());
    boolean strong =
        first.minusDays(DAYS_BEFORE).datesUntil(today.plusDays(1)).anyMatch(sky::isStrong);
    Group group = setup.group(pigs).orElse(null);
    boolean open =
        group == null || setup.pen(group.pen()).map(p -> !OpenAir.isRoofed(p)).orElse(true);
    if (group != null) {
      String path = "pigs[" + setup.pigs().indexOf(group) + "]";
      grounds.and(SkinOf.grounds(path, group).list()).and("place", "latitude");
    }
    return new SunSigns(
        pigs,
        group == null ? null : group.pen(),
        Set.copyOf(shown),
        group == null ? "not known and taken as pale" : SkinOf.words(group),
        since.contains(null) ? null : ChronoUnit.DAYS.between(first, today),
        downSince == null ? null : ChronoUnit.DAYS.between(downSince, today),
        temperature,
        strong && open && (group == null || SkinOf.group(group).burns()),
        sky.isStrong(today),
        grounds.list());
  }
}
