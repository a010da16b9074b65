package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

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
 */
public record Shelter(Kind kind, Double floorArea, Bed bed, Boolean insulated, Boolean heatLamp) {

  static final Shelter UNKNOWN = new Shelter(null, null, null, null, null);

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
