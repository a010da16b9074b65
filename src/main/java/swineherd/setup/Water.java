package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How the pigs of a pen drink.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind how they drink
 * @param drinkers number of drinkers
 * @param flow what one drinker gives, L/min
 * @param frostProof whether it keeps running in hard frost
 */
public record Water(Kind kind, Integer drinkers, Double flow, Boolean frostProof) {

  static final Water UNKNOWN = new Water(null, null, null, null);

  /** How the pigs drink. */
  public enum Kind {
    @JsonProperty("nipple")
    NIPPLE,
    @JsonProperty("bowl")
    BOWL,
    @JsonProperty("trough")
    TROUGH,
    @JsonProperty("stream")
    STREAM,
    @JsonProperty("none")
    NONE
  }
}
