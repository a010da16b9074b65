package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;

/**
 * Something seen on pigs that may be wrong.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param pigs name of the group
 * @param sign what is seen
 * @param since since when
 * @param count how many show it
 * @param temperature rectal temperature, degC
 * @param dryFor for how long they could not drink, days
 * @param look how pigs look that could not drink
 */
public record Sign(
    String pigs,
    Kind sign,
    LocalDate since,
    Integer count,
    Double temperature,
    Double dryFor,
    Look look) {

  /** What is seen. */
  public enum Kind {
    @JsonProperty("sore-back")
    SORE_BACK,
    @JsonProperty("red-skin")
    RED_SKIN,
    @JsonProperty("blistered-skin")
    BLISTERED_SKIN,
    @JsonProperty("panting")
    PANTING,
    @JsonProperty("cannot-rise")
    CANNOT_RISE,
    @JsonProperty("off-feed")
    OFF_FEED,
    @JsonProperty("no-water")
    NO_WATER
  }

  /** How pigs look that could not drink. */
  public enum Look {
    @JsonProperty("bright")
    BRIGHT,
    @JsonProperty("dull")
    DULL,
    @JsonProperty("nervous")
    NERVOUS
  }
}
