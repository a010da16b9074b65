package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * How the pigs are fed.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind how they are fed
 * @param protein crude protein of the feed, %
 * @param form what it is like, for how long it keeps
 * @param madeFor for which animals it was made
 * @param oneFeedToTheEnd whether the same feed is to last to slaughter
 * @param premix whether minerals and vitamins are mixed in
 * @param breederFeed whether they have the breeder's feed in their first week
 * @param storage how it is kept
 * @param scraps what they get besides
 * @param scrapsShare how much of their feed that is, reckoned dry, %
 */
public record Feed(
    Kind kind,
    Double protein,
    Form form,
    MadeFor madeFor,
    Boolean oneFeedToTheEnd,
    Boolean premix,
    Boolean breederFeed,
    Storage storage,
    List<Scraps> scraps,
    Double scrapsShare) {

  static final Feed UNKNOWN = new Feed(null, null, null, null, null, null, null, null, null, null);

  /** For which animals a feed was made. */
  public enum MadeFor {
    @JsonProperty("pigs")
    PIGS,
    @JsonProperty("medicated")
    MEDICATED,
    @JsonProperty("others")
    OTHERS
  }

  /** How feed is kept. */
  public enum Storage {
    @JsonProperty("good")
    GOOD,
    @JsonProperty("warm")
    WARM,
    @JsonProperty("damp")
    DAMP,
    @JsonProperty("open")
    OPEN,
    @JsonProperty("spoiled")
    SPOILED
  }

  /** What pigs get besides their feed. */
  public enum Scraps {
    @JsonProperty("none")
    NONE,
    @JsonProperty("garden")
    GARDEN,
    @JsonProperty("kitchen")
    KITCHEN,
    @JsonProperty("meat")
    MEAT,
    @JsonProperty("bakery")
    BAKERY,
    @JsonProperty("whey")
    WHEY,
    @JsonProperty("milk")
    MILK,
    @JsonProperty("brewers-grains")
    BREWERS_GRAINS,
    @JsonProperty("cooked-potatoes")
    COOKED_POTATOES,
    @JsonProperty("raw-potatoes")
    RAW_POTATOES,
    @JsonProperty("acorns")
    ACORNS
  }

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
