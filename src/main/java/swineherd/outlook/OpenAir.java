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
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.GrowthClass;
import swineherd.figures.Sun;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * A group that lives under the open sky, and how long it is still there. A group whose pen is not
 * named is not among them.
 *
 * @param group the pigs
 * @param groupPath where they stand in the setup
 * @param pen their pen
 * @param penPath where it stands in the setup
 * @param course how they grow; null if that is not known
 * @param from first day they are there, not before the day of the check
 * @param to last day they may be there
 */
record OpenAir(
    Group group,
    String groupPath,
    Pen pen,
    String penPath,
    Course course,
    LocalDate from,
    LocalDate to) {

  static List<OpenAir> of(Setup setup, List<Course> courses) {
    List<OpenAir> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      Pen pen = setup.pen(group.pen()).orElse(null);
      boolean gone = group.slaughterOn() != null && group.slaughterOn().isBefore(setup.checkOn());
      if (pen == null || isRoofed(pen) || gone) {
        continue;
      }
      Course course =
          courses.stream().filter(c -> c.pigs().equals(group.name())).findFirst().orElse(null);
      LocalDate from =
          group.arrives() != null && group.arrives().isAfter(setup.checkOn())
              ? group.arrives()
              : setup.checkOn();
      all.add(
          new OpenAir(
              group,
              "pigs[" + i + "]",
              pen,
              "pens[" + setup.pens().indexOf(pen) + "]",
              course,
              from,
              last(group, course, from)));
    }
    return all;
  }

  /** Slaughter, or the late end of the forecast; a year where neither is known, nor the breed. */
  private static LocalDate last(Group group, Course course, LocalDate from) {
    if (group.slaughterOn() != null) {
      return group.slaughterOn();
    }
    if (group.breed() == null || course == null || course.finish() == null) {
      return from.plusYears(1);
    }
    LocalDate late = course.finish().late();
    return late.isBefore(from) ? from : late;
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
        .flatMap(p -> p.from().datesUntil(p.to().plusDays(1)))
        .filter(which)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  boolean isThereOn(LocalDate day) {
    return !day.isBefore(from) && !day.isAfter(to);
  }

  /** Whether they have come; taken so where the day is not known. */
  boolean hasCome(LocalDate today) {
    return group.arrives() == null || !group.arrives().isAfter(today);
  }

  /** Number of pigs; one where it is not known. */
  int count() {
    return group.count() == null ? 1 : group.count();
  }

  /**
   * Likely weight on a day they are there, kg. Without a date set for slaughter they go at their
   * target weight; where growth is not known that is also what they are reckoned to weigh.
   */
  double weightOn(LocalDate day) {
    double target = course == null ? target(group) : course.endWeight();
    Band weight = course == null ? null : course.weightOn(day);
    if (weight == null) {
      return target;
    }
    return group.slaughterOn() == null ? Math.min(weight.likely(), target) : weight.likely();
  }

  private static double target(Group group) {
    if (group.targetWeight() != null) {
      return group.targetWeight();
    }
    GrowthClass usual =
        group.breed() == null
            ? GrowthClass.unknownBreed()
            : GrowthClass.named(Breed.named(group.breed()).growthClass());
    return (usual.slaughterFromKg() + usual.slaughterToKg()) / 2;
  }

  /** Their skin: as said, or usual for the breed (of a cross the paler), or pale if not known. */
  Sun.Skin skin() {
    return skin(group);
  }

  static Sun.Skin skin(Group group) {
    if (group.skin() != null) {
      return Sun.Skin.valueOf(group.skin().name());
    }
    if (group.breed() == null) {
      return Sun.Skin.PALE;
    }
    Sun.Skin skin = usual(group.breed());
    return group.crossedWith() == null ? skin : skin.paler(usual(group.crossedWith()));
  }

  /** The skin in words for the keeper. */
  static String skinWords(Group group) {
    return group.skin() == null && group.breed() == null
        ? "not known and taken as pale"
        : skin(group).words();
  }

  private static Sun.Skin usual(String breed) {
    return Sun.Skin.valueOf(Breed.named(breed).skin().name());
  }

  /** The answers on which their skin rests. */
  static Grounds skinGrounds(String groupPath, Group group) {
    if (group.skin() != null) {
      return Grounds.of(groupPath, "skin");
    }
    Grounds grounds = Grounds.of(groupPath, "breed");
    return group.crossedWith() == null ? grounds : grounds.and(groupPath, "crossedWith");
  }

  /** The answers on which their skin and their time there rest. */
  Grounds grounds() {
    return skinGrounds(groupPath, group)
        .and(groupPath, "arrives", group.slaughterOn() == null ? "targetWeight" : "slaughterOn");
  }
}
