package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What a piece of advice or a number rests on, strongest first. */
public enum Evidence {
  @JsonProperty("law")
  LAW("law"),
  @JsonProperty("code")
  CODE("a code of practice"),
  @JsonProperty("study")
  STUDY("published study"),
  @JsonProperty("extension")
  EXTENSION("extension advice"),
  @JsonProperty("common-practice")
  COMMON_PRACTICE("common practice"),
  @JsonProperty("judgement")
  JUDGEMENT("our judgement");

  private final String words;

  Evidence(String words) {
    this.words = words;
  }

  /** As it is shown to the keeper. */
  public String words() {
    return words;
  }
}
