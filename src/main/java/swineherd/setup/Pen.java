package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * One pen and what belongs to it.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param name its name, by which groups refer to it
 * @param area all that the pigs can walk on, m2
 * @param ground what they walk on
 * @param pigsBefore whether pigs or pig manure have been on it before
 * @param restedFor how long it has been without pigs, days
 * @param steamed whether the floor is washed, steamed and dried between batches
 * @param wormsKnown whether worms were ever found in pigs from here
 * @param wellDistance from the nearest well, spring or borehole, m
 * @param openWaterDistance from the nearest stream, pond or ditch, m
 * @param slope rise of the ground in % of the level distance
 * @param plants poisonous plants that grow in it or hang over it, keys of the table plants
 * @param fence what keeps them in; never null
 * @param shelter what they lie in; never null
 * @param shade what gives shade; never null
 * @param water how they drink; never null
 * @param feederLength length of trough or feeder front, m
 */
public record Pen(
    String name,
    Double area,
    Ground ground,
    Boolean pigsBefore,
    Double restedFor,
    Boolean steamed,
    Boolean wormsKnown,
    Double wellDistance,
    Double openWaterDistance,
    Double slope,
    List<String> plants,
    Fence fence,
    Shelter shelter,
    Shade shade,
    Water water,
    Double feederLength) {

  public Pen {
    fence = fence == null ? Fence.UNKNOWN : fence;
    shelter = shelter == null ? Shelter.UNKNOWN : shelter;
    shade = shade == null ? Shade.UNKNOWN : shade;
    water = water == null ? Water.UNKNOWN : water;
  }

  /** What the pigs walk on. */
  public enum Ground {
    @JsonProperty("slats")
    SLATS,
    @JsonProperty("concrete")
    CONCRETE,
    @JsonProperty("bedded-concrete")
    BEDDED_CONCRETE,
    @JsonProperty("deep-litter")
    DEEP_LITTER,
    @JsonProperty("moved-pasture")
    MOVED_PASTURE,
    @JsonProperty("bare-dry")
    BARE_DRY,
    @JsonProperty("bare-wet")
    BARE_WET;

    /** Whether it is earth that worm eggs live in. */
    public boolean isEarth() {
      return this == MOVED_PASTURE || this == BARE_DRY || this == BARE_WET;
    }
  }
}
