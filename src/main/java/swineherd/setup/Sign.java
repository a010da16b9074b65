package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.LocalDate;

/**
 * Something seen on pigs that may be wrong.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param pigs name of the group
 * @param sign what is seen: key of a row of the table signs
 * @param since since when
 * @param count how many show it
 * @param temperature rectal temperature, degC
 * @param breaths breaths in a minute at rest
 * @param dryFor for how long they could not drink, days
 * @param look how pigs look that could not drink
 */
public record Sign(
    String pigs,
    String sign,
    LocalDate since,
    Integer count,
    Double temperature,
    Integer breaths,
    Double dryFor,
    Look look) {

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
