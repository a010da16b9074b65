package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import swineherd.figures.Sun;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * A group that lives under the open sky. A group whose pen is not named is not among them.
 *
 * @param stay the pigs and their time there, to the last day they may be there
 * @param pen their pen
 * @param penPath where it stands in the setup
 */
record OpenAir(Stay stay, Pen pen, String penPath) {

  static List<OpenAir> of(Setup setup, List<Course> courses) {
    List<OpenAir> all = new ArrayList<>();
    for (Stay stay : Stay.of(setup, courses)) {
      Pen pen = setup.pen(stay.group().pen()).orElse(null);
      if (pen != null && !isRoofed(pen)) {
        String path = "pens[" + setup.pens().indexOf(pen) + "]";
        all.add(new OpenAir(stay.until(last(stay)), pen, path));
      }
    }
    return all;
  }

  /** Slaughter, or the late end of the forecast; a year where neither is known, nor the breed. */
  private static LocalDate last(Stay stay) {
    Group group = stay.group();
    Course course = stay.course();
    if (group.slaughterOn() != null) {
      return group.slaughterOn();
    }
    if (group.breed() == null || course == null || course.finish() == null) {
      return stay.from().plusYears(1);
    }
    LocalDate late = course.finish().late();
    return late.isBefore(stay.from()) ? stay.from() : late;
  }

  /** Whether all of the pen lies under a roof. Of a yard with a barn that is not known. */
  static boolean isRoofed(Pen pen) {
    if (pen.ground() == null) {
      return false;
    }
    return switch (pen.ground()) {
      case SLATS, DEEP_LITTER -> true;
      case CONCRETE, BEDDED_CONCRETE -> roofCovers(pen);
      case MOVED_PASTURE, BARE_DRY, BARE_WET -> false;
    };
  }

  private static boolean roofCovers(Pen pen) {
    Shelter.Kind kind = pen.shelter().kind();
    Double roof = pen.shelter().floorArea();
    return (kind == Shelter.Kind.BARN || kind == Shelter.Kind.HOOP)
        && (roof == null || pen.area() == null || roof >= pen.area());
  }

  /** Groups that share a pen share its shade and its wallow. */
  static Collection<List<OpenAir>> byPen(List<OpenAir> pigs) {
    Map<String, List<OpenAir>> byPen =
        pigs.stream()
            .collect(
                Collectors.groupingBy(
                    p -> p.pen().name(), LinkedHashMap::new, Collectors.toList()));
    return byPen.values();
  }

  /** Those days on which some of the pigs are there. */
  static NavigableSet<LocalDate> days(List<OpenAir> pigs, Predicate<LocalDate> which) {
    return pigs.stream()
        .flatMap(p -> p.stay().days())
        .filter(which)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Whether they have come; taken so where the day is not known. */
  boolean hasCome(LocalDate today) {
    LocalDate arrives = stay.group().arrives();
    return arrives == null || !arrives.isAfter(today);
  }

  /**
   * Likely weight on a day they are there, kg. Without a date set for slaughter they go at their
   * target weight; where growth is not known that is also what they are reckoned to weigh.
   */
  double weightOn(LocalDate day) {
    if (stay.course() == null) {
      return stay.endWeight();
    }
    double weight = stay.course().weightOn(day).likely();
    return stay.group().slaughterOn() == null ? Math.min(weight, stay.endWeight()) : weight;
  }

  /** Their skin; see {@link SkinOf}. */
  Sun.Skin skin() {
    return SkinOf.group(stay.group());
  }

  /** The answers on which their skin and their time there rest. */
  Grounds grounds() {
    String end = stay.group().slaughterOn() == null ? "targetWeight" : "slaughterOn";
    return SkinOf.grounds(stay.path(), stay.group()).and(stay.path(), "arrives", end);
  }
}
