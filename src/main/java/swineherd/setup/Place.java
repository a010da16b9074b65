package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.MonthDay;
import java.util.List;

/**
 * Where the pigs are kept: its law, its climate, its soil.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param country country, for its law
 * @param state state, province or region
 * @param latitude degrees, negative in the south
 * @param freezes whether it freezes hard in an ordinary winter
 * @param firstHardFrost usual day of the first hard frost (-2.2 degC)
 * @param frostSpread standard deviation of that day, in days
 * @param coldestMonth mean daily minimum of the coldest month, degC
 * @param hottestMonth mean daily maximum of the hottest month, degC
 * @param hardinessZone plant hardiness zone, such as 6b
 * @param maritime whether a nearby ocean sets the climate
 * @param soil what the soil is like
 * @param publicAccess whether a road, path or neighbour lies beside the pens
 * @param animals animals that come near the pens
 * @param loadingPlace whether there is a place to load grown pigs from
 */
public record Place(
    Country country,
    String state,
    Double latitude,
    Boolean freezes,
    MonthDay firstHardFrost,
    Double frostSpread,
    Double coldestMonth,
    Double hottestMonth,
    String hardinessZone,
    Boolean maritime,
    Soil soil,
    Boolean publicAccess,
    List<Animal> animals,
    Boolean loadingPlace) {

  static final Place UNKNOWN =
      new Place(null, null, null, null, null, null, null, null, null, null, null, null, null, null);

  /** Animals that come near the pens. */
  public enum Animal {
    @JsonProperty("none-of-these")
    NONE_OF_THESE,
    @JsonProperty("dogs")
    DOGS,
    @JsonProperty("coyotes")
    COYOTES,
    @JsonProperty("large")
    LARGE,
    @JsonProperty("wild-pigs")
    WILD_PIGS
  }

  /** What the soil is like. */
  public enum Soil {
    @JsonProperty("wet-clay")
    WET_CLAY,
    @JsonProperty("loam")
    LOAM,
    @JsonProperty("dry-loam")
    DRY_LOAM,
    @JsonProperty("sand")
    SAND
  }
}
