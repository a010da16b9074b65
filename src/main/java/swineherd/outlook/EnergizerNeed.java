package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import swineherd.figures.ElectricFence;
import swineherd.figures.FenceSafety;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;

/**
 * The output energy that a live fence needs. A length nobody measured is taken as that of a square
 * of the pen's area, growth nobody described as heavy.
 *
 * @param pen name of the pen
 * @param joules output it should have, never more than the standard allows, J
 * @param splitOrClear whether the fence would need more than the standard allows
 * @param enough whether the output does; null if that hangs on what is not known
 * @param holdsNow whether by reckoning ({@link FarEnd}) a pig at the far end gets enough as the
 *     line is: then what is lacking is the reserve
 * @param tooStrong whether the output is more than the standard allows
 * @param most what the standard allows, J
 * @param assumed what was not said and how it was taken
 */
public record EnergizerNeed(
    String pen,
    double joules,
    boolean splitOrClear,
    Boolean enough,
    boolean holdsNow,
    boolean tooStrong,
    double most,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  /** What comes of too little output, in words. */
  public String lacks() {
    return holdsNow
        ? "As the line is now it should hold; what is lacking is the reserve for more growth, wet"
            + " and a poor earth."
        : "Pigs' wires lie low and soon have grass and soil on them, and what a small unit gives is"
            + " lost there.";
  }

  /** How likely they break out for it, 0 to 1; judgement. */
  public double likely() {
    return holdsNow ? 0.2 : 0.35;
  }

  static EnergizerNeed of(Occupants pigs, Wires wires, Optional<FarEnd> far) {
    Fence fence = pigs.pen().fence();
    List<String> assumed = new ArrayList<>();
    Double length = length(pigs, assumed);
    int strands = fence.strands() == null ? wires.heights().size() : fence.strands();
    if (fence.strands() == null) {
      assumed.add(strands + " live strands");
    }
    if (fence.growth() == null) {
      assumed.add("growth taken as heavy");
    }
    ElectricFence.Energizer worst = need(length, strands, fence.growth(), Fence.Growth.HEAVY);
    ElectricFence.Energizer best = need(length, strands, fence.growth(), Fence.Growth.CLEAN);
    Double output = fence.output();
    Boolean enough = null;
    if (output != null && output < best.joules()) {
      enough = false;
    } else if (output != null && length != null && output >= worst.joules()) {
      enough = !worst.splitOrClear();
    }
    return new EnergizerNeed(
        pigs.pen().name(),
        worst.joules(),
        best.splitOrClear(),
        enough,
        far.map(FarEnd::holds).orElse(false),
        output != null && !FenceSafety.energyAllowed(output),
        Table.named("fence-safety").row("energy").number("value"),
        List.copyOf(assumed),
        Grounds.of("pens[" + pigs.index() + "].fence", "output", "length", "strands", "growth")
            .and(far.filter(FarEnd::holds).map(FarEnd::grounds).orElse(List.of()))
            .list());
  }

  private static ElectricFence.Energizer need(
      Double length, int strands, Fence.Growth growth, Fence.Growth otherwise) {
    String key = (growth == null ? otherwise : growth).name().toLowerCase(Locale.ROOT);
    return ElectricFence.energizer(length == null ? 1 : length, strands, key);
  }

  private static Double length(Occupants pigs, List<String> assumed) {
    Double length = pigs.pen().fence().length();
    Double area = pigs.pen().area();
    if (length != null) {
      return length;
    }
    assumed.add(area == null ? "a short fence" : "length taken from the area of the pen");
    return area == null ? null : 4 * Math.sqrt(area);
  }
}
