package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How the pigs are fed.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind how they are fed
 * @param protein crude protein of the feed, %
 */
public record Feed(Kind kind, Double protein) {

  static final Feed UNKNOWN = new Feed(null, null);

  /** How pigs are fed. */
  public enum Kind {
    @JsonProperty("self-feeder")
    SELF_FEEDER,
    @JsonProperty("hand-fed")
    HAND_FED,
    @JsonProperty("restricted")
    RESTRICTED,
    @JsonProperty("home-mix")
    HOME_MIX,
    @JsonProperty("grain-or-scraps")
    GRAIN_OR_SCRAPS,
    @JsonProperty("foraging")
    FORAGING
  }
}
