package swineherd.outlook;

import java.util.OptionalDouble;
import swineherd.figures.LyingPlace;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Warmth;
import swineherd.figures.WinterClass;
import swineherd.setup.Shelter;

/**
 * A shelter as the figures see it.
 *
 * @param place what the pigs feel lying there; null if there is no roof, which no bed makes good
 * @param holdsHeat whether it is a building, or insulated: outdoor air says too little about it
 *     then, and the least weight of the winter class counts as well
 * @param inClass what the winter classes call it
 */
record Lodging(LyingPlace place, boolean holdsHeat, WinterClass.Lodging inClass) {
  private static final double LIGHTEST = 10;
  private static final double HEAVIEST = 130;

  /** Of a shelter whose kind is known; a bed that is not known counts as a bare floor. */
  static Lodging of(Shelter shelter) {
    LyingPlace.Floor floor = floor(shelter.bed());
    boolean insulated = Boolean.TRUE.equals(shelter.insulated());
    double still = LyingPlace.Shelter.CLOSED_HUT.airSpeed();
    double airy = LyingPlace.Shelter.THREE_SIDED.airSpeed();
    return switch (shelter.kind()) {
      case CLOSED_HUT ->
          new Lodging(
              LyingPlace.dry(floor, LyingPlace.Shelter.CLOSED_HUT),
              insulated,
              insulated ? WinterClass.Lodging.INSULATED_HUT : WinterClass.Lodging.CLOSED_HUT);
      case THREE_SIDED ->
          new Lodging(
              LyingPlace.dry(floor, LyingPlace.Shelter.THREE_SIDED),
              false,
              WinterClass.Lodging.THREE_SIDED);
      case OPEN_FRONT -> openTo(shelter.bed());
      case BARN ->
          new Lodging(new LyingPlace(floor, still, false, false), true, WinterClass.Lodging.BARN);
      case HOOP ->
          new Lodging(new LyingPlace(floor, airy, false, false), true, WinterClass.Lodging.BARN);
      case NONE -> new Lodging(null, false, WinterClass.Lodging.THREE_SIDED);
    };
  }

  /** A shelter open to the weather. */
  static Lodging openTo(Shelter.Bed bed) {
    return new Lodging(
        LyingPlace.dry(floor(bed), LyingPlace.Shelter.OPEN_FRONT),
        false,
        WinterClass.Lodging.THREE_SIDED);
  }

  /** A closed low hut with a deep bed, which is what an open shelter is turned into. */
  static Lodging closedHut() {
    return new Lodging(
        LyingPlace.dry(LyingPlace.Floor.DEEP_NEST, LyingPlace.Shelter.CLOSED_HUT),
        false,
        WinterClass.Lodging.CLOSED_HUT);
  }

  /** The same shelter with a bed deep enough to lie buried in. */
  Lodging withDeepBed() {
    return place == null
        ? this
        : new Lodging(
            new LyingPlace(
                LyingPlace.Floor.DEEP_NEST, place.airSpeed(), place.wetPigs(), place.closedHut()),
            holdsHeat,
            inClass);
  }

  /**
   * Whether pigs come to no harm there.
   *
   * @param air temperature outdoors, degC
   * @param pigs that lie together
   * @param weight of one of them, kg; taken as 10 below that and as 130 above
   * @param eased degrees by which the lower extreme is eased for a winter coat
   */
  boolean warmEnough(double air, int pigs, double weight, double eased) {
    return place != null && felt(air, pigs) >= lowest(weight, eased);
  }

  /**
   * The same in the winter of a place: a building or an insulated hut with a straw bed also passes
   * from the least weight of the class on.
   */
  boolean warmEnough(
      double air, int pigs, double weight, double eased, WinterClass winter, double nights) {
    if (warmEnough(air, pigs, weight, eased)) {
      return true;
    }
    boolean bedded =
        place != null
            && (place.floor() == LyingPlace.Floor.STRAW
                || place.floor() == LyingPlace.Floor.DEEP_NEST);
    OptionalDouble least = winter.leastWeight(inClass, nights);
    return holdsHeat && bedded && least.isPresent() && weight >= least.getAsDouble();
  }

  /** Effective temperature where they lie, degC. */
  double felt(double air, int pigs) {
    OutsideDomainException.within("air temperature in degC", air, -60, 50);
    return place.effectiveTemperature(air, pigs);
  }

  /** Effective temperature under which they come to harm, degC. */
  static double lowest(double weight, double eased) {
    return Warmth.lowerExtreme(clipped(weight)) - eased;
  }

  /** A weight that the figures of warmth take. */
  static double clipped(double weight) {
    return Math.max(LIGHTEST, Math.min(HEAVIEST, weight));
  }

  /** What the keeper calls the bed, as a floor; not known counts as bare. */
  private static LyingPlace.Floor floor(Shelter.Bed bed) {
    if (bed == null) {
      return LyingPlace.Floor.BARE_DRY;
    }
    return switch (bed) {
      case SLATS -> LyingPlace.Floor.FULL_SLATS;
      case WET -> LyingPlace.Floor.WET;
      case BARE -> LyingPlace.Floor.BARE_DRY;
      case THIN_STRAW -> LyingPlace.Floor.THIN_STRAW;
      case STRAW -> LyingPlace.Floor.STRAW;
      case DEEP_NEST -> LyingPlace.Floor.DEEP_NEST;
    };
  }
}
