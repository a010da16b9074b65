package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What gives the pigs of a pen shade, and mud.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind what gives shade at midday besides the hut
 * @param area ground in shade at midday, m2
 * @param wallow whether there is a wallow
 */
public record Shade(Kind kind, Double area, Boolean wallow) {

  static final Shade UNKNOWN = new Shade(null, null, null);

  /** What gives shade. */
  public enum Kind {
    @JsonProperty("roof")
    ROOF,
    @JsonProperty("cloth")
    CLOTH,
    @JsonProperty("trees")
    TREES,
    @JsonProperty("barn")
    BARN,
    @JsonProperty("none")
    NONE
  }
}
