package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.Earthing;
import swineherd.figures.FenceLine;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;

/**
 * The volts at the far end of a live fence as they can be worked out: with nothing on it, which is
 * what a tester shows, and with a pig's nose on it. Left out where wire or length are not known,
 * and for netting. The strands are taken as joined at both ends.
 *
 * @param pen name of the pen
 * @param fromLabel whether the energizer's two label figures were given; if not, a usual one is
 *     taken
 * @param open volts with nothing touching, V
 * @param touched volts with a pig on it, V
 * @param holds whether the pig gets enough
 * @param poly whether it is poly wire of steel alone, which resists most
 * @param length of the fence, m
 * @param reach longest fence of this wire that still holds, m; 0 if not even a short one does
 * @param assumed what was not said and how it was taken
 */
public record FarEnd(
    String pen,
    boolean fromLabel,
    Band open,
    Band touched,
    boolean holds,
    boolean poly,
    double length,
    double reach,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  static Optional<FarEnd> of(Occupants pigs, Wires wires) {
    Fence fence = pigs.pen().fence();
    if (fence.conductor() == null
        || fence.conductor() == Fence.Conductor.NETTING
        || fence.length() == null) {
      return Optional.empty();
    }
    List<String> assumed = new ArrayList<>(List.of("strands joined at both ends"));
    int strands = fence.strands() == null ? wires.heights().size() : fence.strands();
    if (fence.strands() == null) {
      assumed.add(strands + " live strands");
    }
    Fence.Growth growth = fence.growth() == null ? Fence.Growth.HEAVY : fence.growth();
    if (fence.growth() == null) {
      assumed.add("growth taken as heavy");
    }
    FenceLine line =
        FenceLine.of(
            fence.length(),
            strands,
            true,
            conductor(fence.conductor()),
            growth.name().toLowerCase(Locale.ROOT));
    double earth = earth(pigs, assumed);
    boolean label = fence.openVoltage() != null && fence.loadVoltage() != null;
    FenceLine.Energizer energizer =
        label
            ? new FenceLine.Energizer(fence.openVoltage(), fence.loadVoltage())
            : usual(fence.output(), assumed);
    Band touched = line.touchedVolts(energizer, earth);
    return Optional.of(
        new FarEnd(
            pigs.pen().name(),
            label,
            line.openVolts(energizer, earth),
            touched,
            touched.likely() >= Table.named("fence-voltage").row("ordinary").number("unsafe_below"),
            switch (fence.conductor()) {
              case POLY_3, POLY_6, POLY_9 -> true;
              default -> false;
            },
            fence.length(),
            line.longestThatHolds(energizer, earth).orElse(0),
            List.copyOf(assumed),
            Grounds.of(
                    "pens[" + pigs.index() + "].fence",
                    "conductor",
                    "length",
                    "strands",
                    "growth",
                    "openVoltage",
                    "loadVoltage")
                .list()));
  }

  private static FenceLine.Energizer usual(Double output, List<String> assumed) {
    Table labels = Table.named("energizer-labels");
    Table.Row row = labels.row("small");
    if (output != null && output >= labels.row("larger").number("from_joules")) {
      row = labels.row("larger");
    }
    assumed.add("an energizer that gives " + row.text("words"));
    return new FenceLine.Energizer(row.number("open_v"), row.number("load_v"));
  }

  private static double earth(Occupants pigs, List<String> assumed) {
    Integer rods = pigs.pen().fence().earthRods();
    if (rods == null) {
      assumed.add("one earth rod");
    }
    if (pigs.setup().place().soil() == null) {
      assumed.add("soil taken as loam, dry in summer");
    }
    return Earthing.resistance(
        EarthNeed.key(pigs.setup().place().soil()),
        rods == null ? 1 : Math.max(1, Math.min(10, rods)));
  }

  /** The row of {@code conductors.csv}. */
  private static String conductor(Fence.Conductor conductor) {
    return switch (conductor) {
      case STEEL_2_5 -> "steel-2.5";
      case STEEL_1_6 -> "steel-1.6";
      case ALUMINIUM_2_5 -> "aluminium-2.5";
      default -> conductor.name().toLowerCase(Locale.ROOT).replace('_', '-');
    };
  }
}
