package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import swineherd.figures.Earthing;
import swineherd.rulebook.Table;
import swineherd.setup.Fence;
import swineherd.setup.Place;

/**
 * The way back of the current: earth rods, and an earthed wire where the ground does not conduct.
 * Soil nobody described is taken as loam that dries in summer.
 *
 * @param pen name of the pen
 * @param rods earth rods of {@link #rodLength} it should have
 * @param rodLength m
 * @param enough whether it has them; null if nobody said
 * @param drySand whether the soil is dry sand or gravel, on which a pig stands insulated
 * @param frozenBy day to have an earthed return wire by, because pigs will be there on frozen or
 *     snowy ground; null if they will not
 * @param assumed what was not said and how it was taken
 */
public record EarthNeed(
    String pen,
    int rods,
    double rodLength,
    Boolean enough,
    boolean drySand,
    LocalDate frozenBy,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final double LEAST_JOULES = 0.01;
  private static final double MOST_JOULES = 15;

  static EarthNeed of(Occupants pigs, EnergizerNeed energizer, FrozenGround frozen) {
    Fence fence = pigs.pen().fence();
    List<String> assumed = new ArrayList<>();
    Place.Soil soil = pigs.setup().place().soil();
    if (soil == null) {
      assumed.add("soil taken as loam, dry in summer");
    }
    double joules = fence.output() == null ? energizer.joules() : fence.output();
    int rods = Earthing.rods(Math.max(LEAST_JOULES, Math.min(MOST_JOULES, joules)), key(soil));
    if (frozen != null) {
      assumed.addAll(frozen.assumed());
    }
    Grounds grounds =
        Grounds.of("pens[" + pigs.index() + "].fence", "earthRods", "returnWire", "output")
            .and("place", "soil");
    return new EarthNeed(
        pigs.pen().name(),
        rods,
        Table.named("fence-build").row("rod-length").number("value"),
        fence.earthRods() == null ? null : fence.earthRods() >= rods,
        soil != null && Earthing.returnWire(key(soil)) == Earthing.ReturnWire.YES,
        frozen == null ? null : frozen.readyBy(),
        List.copyOf(assumed),
        frozen == null ? grounds.list() : grounds.and(frozen.grounds()).list());
  }

  /** The row of {@code soils.csv}. */
  static String key(Place.Soil soil) {
    return soil == null ? "dry-loam" : soil.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
