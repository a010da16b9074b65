package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Whom to call, the least urgent first. */
public enum Referral {
  @JsonProperty("none")
  NONE(""),
  @JsonProperty("ask-vet")
  ASK_VET("Ask your vet, by phone or at the next visit."),
  @JsonProperty("vet-this-week")
  VET_THIS_WEEK("Call your vet this week."),
  @JsonProperty("vet-today")
  VET_TODAY("Call your vet today."),
  @JsonProperty("vet-now")
  VET_NOW("Call your vet now."),
  @JsonProperty("authority-now")
  AUTHORITY_NOW("Tell the animal-health authority now, and your vet.");

  private final String words;

  Referral(String words) {
    this.words = words;
  }

  /** A sentence for the keeper; empty for {@link #NONE}. */
  public String words() {
    return words;
  }
}
