package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How the pigs of a pen drink.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind how they drink
 * @param drinkers number of drinkers
 * @param flow what one drinker gives, L/min; of a trough only if it fills itself
 * @param volume what the trough holds when full, L
 * @param pipeInSun whether much of the pipe lies in the sun
 * @param solids total dissolved solids by analysis, mg/L
 * @param sulfate sulfate by analysis, mg/L
 * @param nitrate nitrate as NO3 by analysis, mg/L
 * @param frostProof whether it keeps running in hard frost
 */
public record Water(
    Kind kind,
    Integer drinkers,
    Double flow,
    Double volume,
    Boolean pipeInSun,
    Double solids,
    Double sulfate,
    Double nitrate,
    Boolean frostProof) {

  static final Water UNKNOWN = new Water(null, null, null, null, null, null, null, null, null);

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
