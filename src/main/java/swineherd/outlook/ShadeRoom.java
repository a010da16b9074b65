package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.Sun;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shade;
import swineherd.setup.Shelter;

/**
 * The shade that the pigs of a pen need at noon, and what there is. There is one for each pen under
 * the open sky in which pigs will be while the sun is strong; {@link Sun#shade} at the weight they
 * reach in that time.
 *
 * @param pen name of the pen
 * @param come whether some of the pigs are there already
 * @param burns whether the skin of some of them burns
 * @param skin the palest skin among them, in words
 * @param weight of the heaviest group when most shade is needed, kg
 * @param area shade needed for all of them at noon, m2; over 150 kg what pigs of 150 kg need, which
 *     is then the least
 * @param there shade there is, as far as it is known, m2
 * @param verdict how the two compare
 * @param by when shade should stand: a fortnight before it is first needed, or today
 * @param assumed what was not said and how it was taken
 */
public record ShadeRoom(
    String pen,
    boolean come,
    boolean burns,
    String skin,
    double weight,
    double area,
    double there,
    Verdict verdict,
    LocalDate by,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** How the shade there is compares to what is needed. */
  public enum Verdict {
    NONE,
    TOO_LITTLE,
    ENOUGH,
    UNKNOWN
  }

  /** Days to have it ready before it is needed; this project's judgement. */
  private static final int LEAD_DAYS = 14;

  /** Weights for which lying room was measured, kg. */
  private static final double LIGHTEST = 5;

  private static final double HEAVIEST = 150;

  static List<Outlook> of(Setup setup, List<Course> courses) {
    SkyOver sky = new SkyOver(setup.place());
    List<Outlook> all = new ArrayList<>();
    for (List<OpenAir> pigs : OpenAir.byPen(OpenAir.of(setup, courses))) {
      Need need = Need.of(pigs, sky);
      if (need.first != null) {
        all.add(of(setup, pigs, sky, need));
      }
    }
    return all;
  }

  private static ShadeRoom of(Setup setup, List<OpenAir> pigs, SkyOver sky, Need need) {
    Pen pen = pigs.get(0).pen();
    List<String> assumed = new ArrayList<>();
    if (!sky.isLatitudeKnown()) {
      assumed.add("latitude not known: sun taken as strong on every day that is not dark");
    }
    boolean counted = pigs.stream().allMatch(p -> p.stay().group().count() != null);
    if (!counted) {
      assumed.add("number of pigs not known: shade for one");
    }
    if (need.weight > HEAVIEST) {
      assumed.add("heavier than was measured: shade of pigs of " + (int) HEAVIEST + " kg");
    }
    OpenAir palest = pigs.get(0);
    for (OpenAir each : pigs) {
      palest = each.skin().paler(palest.skin()) == palest.skin() ? palest : each;
    }
    ShadeThere there = ShadeThere.of(pen);
    Verdict verdict = there.against(need.area, counted && need.weight <= HEAVIEST);
    LocalDate first = verdict == Verdict.TOO_LITTLE ? Need.shortOn(pigs, sky, there.area) : null;
    LocalDate by = (first == null ? need.first : first).minusDays(LEAD_DAYS);
    return new ShadeRoom(
        pen.name(),
        pigs.stream().anyMatch(p -> p.hasCome(setup.checkOn())),
        palest.skin().burns(),
        SkinOf.words(palest.stay().group()),
        need.weight,
        need.area,
        there.area,
        verdict,
        by.isBefore(setup.checkOn()) ? setup.checkOn() : by,
        List.copyOf(assumed),
        grounds(pigs));
  }

  private static List<String> grounds(List<OpenAir> pigs) {
    Grounds grounds = new Grounds();
    for (OpenAir each : pigs) {
      grounds.and(each.stay().path(), "count").and(each.grounds().list());
    }
    Pen pen = pigs.get(0).pen();
    String path = pigs.get(0).penPath();
    grounds.and(path, "shade.kind");
    if (pen.shade().kind() != Shade.Kind.NONE) {
      grounds.and(path, "shade.area");
    }
    if (pen.shelter().kind() == Shelter.Kind.BARN) {
      grounds.and(path, "shelter.kind", "shelter.floorArea");
    }
    return grounds.and("place", "latitude").list();
  }

  /** Shade needed by all pigs of a pen on one day, m2. */
  private static double areaOn(List<OpenAir> pigs, LocalDate day) {
    double area = 0;
    for (OpenAir each : pigs) {
      if (each.stay().isThereOn(day)) {
        double weight = Math.max(LIGHTEST, Math.min(HEAVIEST, each.weightOn(day)));
        area += each.stay().count() * Sun.shade(weight);
      }
    }
    return area;
  }

  /**
   * Most shade needed on a day of strong sun.
   *
   * @param first first day it is needed; null if there is none
   * @param area m2
   * @param weight of the heaviest group on the day most is needed, kg
   */
  private record Need(LocalDate first, double area, double weight) {
    static Need of(List<OpenAir> pigs, SkyOver sky) {
      LocalDate first = null;
      LocalDate most = null;
      double mostArea = 0;
      for (LocalDate day : OpenAir.days(pigs, sky::isStrong)) {
        double area = areaOn(pigs, day);
        first = first == null ? day : first;
        if (area > mostArea) {
          mostArea = area;
          most = day;
        }
      }
      double weight = 0;
      for (OpenAir each : pigs) {
        if (most != null && each.stay().isThereOn(most)) {
          weight = Math.max(weight, each.weightOn(most));
        }
      }
      return new Need(first, mostArea, weight);
    }

    /** First day of strong sun on which so much shade no longer does. */
    static LocalDate shortOn(List<OpenAir> pigs, SkyOver sky, double there) {
      return OpenAir.days(pigs, sky::isStrong).stream()
          .filter(day -> areaOn(pigs, day) > there)
          .findFirst()
          .orElse(null);
    }
  }

  /**
   * Shade that is known of. A hut is none, since it gets hot inside; a barn is.
   *
   * @param area m2 that are known
   * @param all whether there can be no more than that
   */
  private record ShadeThere(double area, boolean all) {
    static ShadeThere of(Pen pen) {
      Shade shade = pen.shade();
      boolean barn = pen.shelter().kind() == Shelter.Kind.BARN;
      Double floor = barn ? pen.shelter().floorArea() : Double.valueOf(0);
      Double beside = shade.kind() == Shade.Kind.NONE ? Double.valueOf(0) : shade.area();
      return new ShadeThere(
          (floor == null ? 0 : floor) + (beside == null ? 0 : beside),
          floor != null && beside != null);
    }

    /**
     * @param whole whether the need is that of all pigs at their true weight
     */
    Verdict against(double need, boolean whole) {
      if (area >= need) {
        return whole ? Verdict.ENOUGH : Verdict.UNKNOWN;
      }
      if (!all) {
        return Verdict.UNKNOWN;
      }
      return area == 0 ? Verdict.NONE : Verdict.TOO_LITTLE;
    }
  }
}
