package swineherd.setup;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * The fence of a pen.
 *
 * <p>Every answer may be missing; it is null then.
 *
 * @param kind what keeps the pigs in
 * @param solid what the solid part is made of
 * @param height height of the solid part, m
 * @param gap widest gap in its lower half, m
 * @param footGuard what stops pigs going under
 * @param strands number of live strands
 * @param wireHeights height of each live strand, m
 * @param conductor what the strands are
 * @param length length of the fence once round, m
 * @param growth how much grass touches the wire
 * @param output energizer output per impulse, J
 * @param openVoltage label voltage without load, V
 * @param loadVoltage label voltage into 500 ohm, V
 * @param endVoltage voltage a tester showed at the far end, V
 * @param earthRods number of earth rods of about 1.8 m
 * @param returnWire whether an earthed wire runs between the live ones
 * @param signs whether there are warning signs
 * @param trainingPen whether there is a pen to train pigs in, solid outside, live wire inside
 * @param hazards what at the live fence can hurt people
 * @param power what the energizer runs on
 * @param battery rated charge of its battery, Ah
 * @param panel rated power of its solar panel, W
 * @param gate what the gate is like
 */
public record Fence(
    Kind kind,
    Solid solid,
    Double height,
    Double gap,
    FootGuard footGuard,
    Integer strands,
    List<Double> wireHeights,
    Conductor conductor,
    Double length,
    Growth growth,
    Double output,
    Double openVoltage,
    Double loadVoltage,
    Double endVoltage,
    Integer earthRods,
    Boolean returnWire,
    Boolean signs,
    Boolean trainingPen,
    List<Hazard> hazards,
    Power power,
    Integer battery,
    Integer panel,
    Gate gate) {

  static final Fence UNKNOWN =
      new Fence(
          null, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null, null, null, null, null, null, null, null);

  /** What keeps the pigs in. */
  public enum Kind {
    @JsonProperty("electric")
    ELECTRIC,
    @JsonProperty("solid")
    SOLID,
    @JsonProperty("both")
    BOTH,
    @JsonProperty("none")
    NONE
  }

  /** What the solid part is made of. */
  public enum Solid {
    @JsonProperty("hog-panel")
    HOG_PANEL,
    @JsonProperty("cattle-panel")
    CATTLE_PANEL,
    @JsonProperty("woven-wire")
    WOVEN_WIRE,
    @JsonProperty("hinge-joint")
    HINGE_JOINT,
    @JsonProperty("high-tensile")
    HIGH_TENSILE,
    @JsonProperty("barbed")
    BARBED,
    @JsonProperty("boards")
    BOARDS,
    @JsonProperty("pallets")
    PALLETS,
    @JsonProperty("sheet")
    SHEET,
    @JsonProperty("chain-link")
    CHAIN_LINK,
    @JsonProperty("poultry-wire")
    POULTRY_WIRE
  }

  /** What at a live fence can hurt people. */
  public enum Hazard {
    @JsonProperty("none-of-these")
    NONE_OF_THESE,
    @JsonProperty("two-energizers")
    TWO_ENERGIZERS,
    @JsonProperty("other-fence")
    OTHER_FENCE,
    @JsonProperty("power-line")
    POWER_LINE,
    @JsonProperty("barbed")
    BARBED,
    @JsonProperty("earth-near")
    EARTH_NEAR,
    @JsonProperty("mains")
    MAINS
  }

  /** What the energizer runs on. */
  public enum Power {
    @JsonProperty("mains")
    MAINS,
    @JsonProperty("battery")
    BATTERY,
    @JsonProperty("solar")
    SOLAR
  }

  /** What the gate is like. */
  public enum Gate {
    @JsonProperty("firm")
    FIRM,
    @JsonProperty("weak")
    WEAK,
    @JsonProperty("wire")
    WIRE,
    @JsonProperty("none")
    NONE
  }

  /** What stops pigs going under. */
  public enum FootGuard {
    @JsonProperty("none")
    NONE,
    @JsonProperty("buried")
    BURIED,
    @JsonProperty("apron")
    APRON,
    @JsonProperty("hot-wire")
    HOT_WIRE,
    @JsonProperty("hard-floor")
    HARD_FLOOR
  }

  /** What the strands are. */
  public enum Conductor {
    @JsonProperty("steel-2.5")
    STEEL_2_5,
    @JsonProperty("steel-1.6")
    STEEL_1_6,
    @JsonProperty("aluminium-2.5")
    ALUMINIUM_2_5,
    @JsonProperty("poly-3")
    POLY_3,
    @JsonProperty("poly-6")
    POLY_6,
    @JsonProperty("poly-9")
    POLY_9,
    @JsonProperty("poly-copper")
    POLY_COPPER,
    @JsonProperty("netting")
    NETTING
  }

  /** How much grass touches the wire. */
  public enum Growth {
    @JsonProperty("clean")
    CLEAN,
    @JsonProperty("medium")
    MEDIUM,
    @JsonProperty("heavy")
    HEAVY
  }
}
