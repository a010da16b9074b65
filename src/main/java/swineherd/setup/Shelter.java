package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * What the pigs of a pen lie in.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind what it is
 * @param floorArea its floor, m2
 * @param bed what they lie on
 * @param insulated whether it is insulated
 * @param heatLamp whether a heat lamp is used or planned
 * @param anchored whether neither wind nor pigs move it
 * @param air how the air is where they lie
 * @param fireRisks what could set it on fire, or keep people from getting out
 */
public record Shelter(
    Kind kind,
    Double floorArea,
    Bed bed,
    Boolean insulated,
    Boolean heatLamp,
    Boolean anchored,
    Air air,
    List<FireRisk> fireRisks) {

  static final Shelter UNKNOWN = new Shelter(null, null, null, null, null, null, null, null);

  /** What the shelter is. */
  public enum Kind {
    @JsonProperty("closed-hut")
    CLOSED_HUT,
    @JsonProperty("three-sided")
    THREE_SIDED,
    @JsonProperty("open-front")
    OPEN_FRONT,
    @JsonProperty("barn")
    BARN,
    @JsonProperty("hoop")
    HOOP,
    @JsonProperty("none")
    NONE
  }

  /** How the air is where they lie. */
  public enum Air {
    @JsonProperty("fresh")
    FRESH,
    @JsonProperty("stings")
    STINGS,
    @JsonProperty("drips")
    DRIPS
  }

  /** What could set it on fire, or keep people from getting out. */
  public enum FireRisk {
    @JsonProperty("none-of-these")
    NONE_OF_THESE,
    @JsonProperty("cables")
    CABLES,
    @JsonProperty("heater")
    HEATER,
    @JsonProperty("straw-store")
    STRAW_STORE,
    @JsonProperty("one-way-out")
    ONE_WAY_OUT
  }

  /** What the pigs lie on. */
  public enum Bed {
    @JsonProperty("slats")
    SLATS,
    @JsonProperty("wet")
    WET,
    @JsonProperty("bare")
    BARE,
    @JsonProperty("thin-straw")
    THIN_STRAW,
    @JsonProperty("straw")
    STRAW,
    @JsonProperty("deep-nest")
    DEEP_NEST
  }
}
