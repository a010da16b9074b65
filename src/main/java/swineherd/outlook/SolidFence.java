package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import swineherd.figures.BodySize;
import swineherd.figures.PhysicalFence;
import swineherd.figures.PhysicalFence.Fault;
import swineherd.figures.PhysicalFence.Occasion;
import swineherd.rulebook.Rulebook;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;
import swineherd.setup.Group;
import swineherd.setup.Pen;
import swineherd.setup.Shelter;

/**
 * What the solid part of a fence should be for the pigs in it, the smallest on arrival and the
 * heaviest when they go, and what is wrong with it as it stands. Sizes are known for pigs of 5 to
 * 150 kg; lighter and heavier ones are judged as these.
 *
 * @param pen name of the pen
 * @param faults what is wrong with it; empty if nothing or not known
 * @param alone whether no live wire stands there too
 * @param height how high it should be once they have settled, m
 * @param firstWeeks how high where pigs are new, frightened or loaded, m
 * @param gap widest gap low down to leave when building, m
 * @param unknown what must be known to judge it, in words; empty if nothing
 * @param assumed what was not said and how it was taken
 */
public record SolidFence(
    String pen,
    Set<Fault> faults,
    boolean alone,
    double height,
    double firstWeeks,
    double gap,
    String unknown,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final double LIGHTEST = 5;
  private static final double HEAVIEST = 150;

  static SolidFence of(Occupants pigs) {
    Fence fence = pigs.pen().fence();
    double light = covered(pigs.lightest().kgNow());
    double heavy = covered(pigs.heaviestEnd());
    Occasion occasion = boars(pigs) ? Occasion.BOARS : Occasion.SETTLED;
    double height = PhysicalFence.height(heavy, occasion).low();
    EnumSet<Fault> faults = EnumSet.noneOf(Fault.class);
    List<String> unknown = new ArrayList<>();
    List<String> assumed = new ArrayList<>();
    boolean stands = fence.kind() == Fence.Kind.SOLID || fence.kind() == Fence.Kind.BOTH;
    if (stands && fence.solid() == null) {
      // the walls of a house that holds pigs already are not asked for
      if (!(indoors(pigs.pen()) && pigs.anyThere())) {
        unknown.addAll(List.of("solid", "height", "gap", "footGuard"));
      }
    } else if (stands) {
      judge(pigs, light, height, faults, unknown);
    }
    return new SolidFence(
        pigs.pen().name(),
        Collections.unmodifiableSet(faults),
        fence.kind() != Fence.Kind.BOTH,
        height,
        PhysicalFence.height(heavy, Occasion.FIRST_WEEKS).likely(),
        PhysicalFence.widestLowGap(light),
        words(unknown),
        List.copyOf(assumed),
        Grounds.of("pens[" + pigs.index() + "].fence", "solid", "height", "gap", "footGuard")
            .and(pigs.ofPigs("arrivalWeight", "targetWeight"))
            .list());
  }

  private static void judge(
      Occupants pigs, double light, double height, Set<Fault> faults, List<String> unknown) {
    Fence fence = pigs.pen().fence();
    Table.Row kind = Table.named("fence-kinds").row(key(fence.solid()));
    Set<Fault> found =
        PhysicalFence.faults(
            new PhysicalFence.Barrier(kind.key(), maybe(fence.height()), maybe(fence.gap())),
            light,
            Occasion.SETTLED);
    boolean electric = fence.kind() == Fence.Kind.BOTH;
    for (Fault fault : found) {
      switch (fault) {
        case INJURES -> faults.add(fault);
        case SLIPS_THROUGH -> addIf(faults, fault, slips(fence, kind, light));
        case LIGHT, LIVE_WIRE -> addIf(faults, fault, !electric);
        case SHORT_TERM -> addIf(faults, fault, staysLong(pigs));
        case GAP_UNKNOWN -> unknown.add("gap");
        case FOOT_GUARD -> footGuard(pigs, faults, unknown);
        case LOW, HEIGHT_UNKNOWN -> {} // judged below, at the end and with some tolerance
      }
    }
    height(fence, kind, height, faults, unknown);
    if (fence.gap() == null
        && !unknown.contains("gap")
        && light < build("small-below")
        && !kind.text("gap_by_make").equals("yes")) {
      unknown.add("gap");
    }
    if (faults.contains(Fault.INJURES) || faults.contains(Fault.LIGHT)) {
      // it is to go as a whole: nothing else about it matters
      faults.retainAll(EnumSet.of(Fault.INJURES, Fault.LIGHT));
      unknown.clear();
    }
  }

  /** Judged by the opening alone: mesh that is sold for larger pigs may still hold small ones. */
  private static boolean slips(Fence fence, Table.Row kind, double light) {
    double gap = fence.gap() == null ? kind.number("low_gap_m") : fence.gap();
    return gap > BodySize.widestGap(light);
  }

  /** The height needed is a round figure: one that falls short of it by little is let pass. */
  private static void height(
      Fence fence, Table.Row kind, double needed, Set<Fault> faults, List<String> unknown) {
    double least = needed - build("height-tolerance");
    if (fence.height() != null) {
      addIf(faults, Fault.LOW, fence.height() < least);
    } else if (kind.maybe("height_high_m").orElse(Double.MAX_VALUE) < least) {
      faults.add(Fault.LOW);
    } else if (kind.maybe("height_low_m").orElse(0) < least) {
      unknown.add("height");
    }
  }

  /** Pigs do not dig through a floor, and turn back from a live wire at the foot. */
  private static void footGuard(Occupants pigs, Set<Fault> faults, List<String> unknown) {
    Pen pen = pigs.pen();
    boolean hard = pen.ground() != null && !pen.ground().isEarth();
    List<Double> wires = pen.fence().wireHeights();
    boolean wire =
        pen.fence().kind() == Fence.Kind.BOTH
            && wires != null
            && Collections.min(wires) <= build("hot-wire-most");
    if (hard || wire) {
      return;
    }
    if (pen.fence().footGuard() == null) {
      unknown.add("footGuard");
    } else {
      addIf(faults, Fault.FOOT_GUARD, pen.fence().footGuard() == Fence.FootGuard.NONE);
    }
  }

  private static boolean staysLong(Occupants pigs) {
    LocalDate until = pigs.until();
    return until == null
        || until.isAfter(pigs.setup().checkOn().plusDays((long) build("short-term-days")));
  }

  private static boolean indoors(Pen pen) {
    return pen.shelter().kind() == Shelter.Kind.BARN
        && pen.ground() != null
        && !pen.ground().isEarth();
  }

  /** Entire males that will be near or past puberty when they go. */
  private static boolean boars(Occupants pigs) {
    return pigs.members().stream()
        .anyMatch(
            m ->
                m.group().males() == Group.Males.ENTIRE
                    && m.course() != null
                    && m.course().end() != null
                    && m.course().ageOn(m.course().end()) >= build("boars-from-age"));
  }

  private static String words(List<String> unknown) {
    List<String> labels =
        unknown.stream()
            .map(field -> Rulebook.questions().get("pens.fence." + field).label())
            .toList();
    if (labels.size() < 2) {
      return String.join("", labels);
    }
    return String.join(", ", labels.subList(0, labels.size() - 1))
        + " and "
        + labels.get(labels.size() - 1);
  }

  private static String key(Fence.Solid solid) {
    return solid.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static OptionalDouble maybe(Double value) {
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private static double build(String key) {
    return Table.named("fence-build").row(key).number("value");
  }

  private static double covered(double kg) {
    return Math.max(LIGHTEST, Math.min(HEAVIEST, kg));
  }

  private static void addIf(Set<Fault> faults, Fault fault, boolean found) {
    if (found) {
      faults.add(fault);
    }
  }
}
