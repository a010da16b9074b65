package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;

/** What happens if an item is left undone, the worst first, with its weight in the rank. */
public enum Consequence {
  @JsonProperty("people")
  PEOPLE(100, "somebody is hurt"),
  @JsonProperty("animals")
  ANIMALS(60, "pigs suffer or die"),
  @JsonProperty("law")
  LAW(40, "the law is broken"),
  @JsonProperty("meat")
  MEAT(30, "meat is lost"),
  @JsonProperty("money")
  MONEY(15, "money is lost"),
  @JsonProperty("comfort")
  COMFORT(8, "work or comfort is lost");

  private final int weight;
  private final String words;

  Consequence(int weight, String words) {
    this.weight = weight;
    this.words = words;
  }

  public int weight() {
    return weight;
  }

  public String words() {
    return words;
  }
}
