package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How the pigs are fed.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind how they are fed
 * @param protein crude protein of the feed, %
 * @param form what it is like, for how long it keeps
 */
public record Feed(Kind kind, Double protein, Form form) {

  static final Feed UNKNOWN = new Feed(null, null, null);

  /** What the feed is like; the keys are those of the table feed-storage. */
  public enum Form {
    @JsonProperty("pellets")
    PELLETS("pellets"),
    @JsonProperty("ground")
    GROUND("ground"),
    @JsonProperty("home-mash")
    HOME_MASH("home-mash"),
    @JsonProperty("whole-grain")
    WHOLE_GRAIN("whole-grain"),
    @JsonProperty("milk-or-fat-mash")
    MILK_OR_FAT_MASH("milk-or-fat-mash"),
    @JsonProperty("wet")
    WET("wet");

    private final String key;

    Form(String key) {
      this.key = key;
    }

    /** Key in the table. */
    public String key() {
      return key;
    }
  }

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
