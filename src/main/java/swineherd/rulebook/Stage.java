package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** When in the life of a batch of pigs something is to be done. */
public enum Stage {
  @JsonProperty("now")
  NOW("now"),
  @JsonProperty("before-buying")
  BEFORE_BUYING("before anything is bought"),
  @JsonProperty("before-arrival")
  BEFORE_ARRIVAL("before the pigs come"),
  @JsonProperty("on-arrival")
  ON_ARRIVAL("when the pigs come"),
  @JsonProperty("while-growing")
  WHILE_GROWING("while they grow"),
  @JsonProperty("before-winter")
  BEFORE_WINTER("before winter"),
  @JsonProperty("before-slaughter")
  BEFORE_SLAUGHTER("before slaughter");

  private final String words;

  Stage(String words) {
    this.words = words;
  }

  public String words() {
    return words;
  }
}
