package swineherd.figures;

import swineherd.rulebook.Table;

/** The earth rods that carry the current back, and the soils in which rods alone do not help. */
public final class Earthing {
  private Earthing() {}

  /** Whether an earthed wire beside the live one is the answer, so that the pig bridges both. */
  public enum ReturnWire {
    NO,
    IF_RODS_FAIL,
    YES
  }

  /** What the volts on the last rod mean while the fence is shorted 100 m out. */
  public enum Test {
    GOOD,
    ENOUGH,
    MORE_RODS
  }

  /**
   * Resistance to earth of upright rods in ohm. One rod by the formula of dwight-1936; several, two
   * rod lengths apart, share it with a loss of 15 % (cited from memory; standing one length apart
   * they lose more, ieee-142).
   *
   * @param soilOhmM resistivity of the soil, 1 to 100,000 ohm m
   * @param rodLength in the ground, 0.3 to 6 m
   * @param rodDiameter 0.005 to 0.05 m
   * @param rods 1 to 10
   * @throws OutsideDomainException if a number lies outside
   */
  public static double resistance(double soilOhmM, double rodLength, double rodDiameter, int rods) {
    OutsideDomainException.within("soil resistivity in ohm m", soilOhmM, 1, 100_000);
    OutsideDomainException.within("rod length in m", rodLength, 0.3, 6);
    OutsideDomainException.within("rod diameter in m", rodDiameter, 0.005, 0.05);
    OutsideDomainException.within("number of rods", rods, 1, 10);
    double one = soilOhmM / (2 * Math.PI * rodLength) * (Math.log(8 * rodLength / rodDiameter) - 1);
    return rods == 1 ? one : one / rods * FenceNumbers.build("rods-parallel");
  }

  /**
   * The same for rods of 1.8 m by 16 mm (6 ft by 5/8 in) in a soil of {@code soils.csv}, in ohm.
   *
   * @param rods 1 to 10
   * @throws OutsideDomainException if the number of rods lies outside
   * @throws IllegalArgumentException if the table has no such soil
   */
  public static double resistance(String soil, int rods) {
    double ohmM = Table.named("soils").row(soil).number("ohm_m");
    return resistance(
        ohmM, FenceNumbers.build("rod-length"), FenceNumbers.build("rod-diameter"), rods);
  }

  /**
   * Rods of 1.8 m, 3 m apart, for an energizer: 0.9 m of rod for each output joule
   * (earth-rod-rule), at least three from 3 J (power-cooperative-fence), twice as many in dry
   * ground. The two sources disagree, 4.6 m and 7.3 m of rod for 5 J; this lies between them, by
   * judgement.
   *
   * @param joules output energy, 0.01 to 15 J
   * @param soil a row of {@code soils.csv}
   * @throws OutsideDomainException if the energy lies outside
   * @throws IllegalArgumentException if the table has no such soil
   */
  public static int rods(double joules, String soil) {
    OutsideDomainException.within("output energy in J", joules, 0.01, 15);
    double rodLength = FenceNumbers.build("rod-length");
    double metres = Math.max(rodLength, FenceNumbers.build("rod-per-joule") * joules);
    double rods = Math.ceil(metres / rodLength);
    if (joules >= 3) {
      rods = Math.max(rods, FenceNumbers.build("rods-from-3-joules"));
    }
    return (int) (rods * Table.named("soils").row(soil).number("rods_times"));
  }

  /**
   * Whether a return wire is the answer in this soil: on dry sand or gravel, frozen or snowy ground
   * the pig itself stands insulated, and more rods do not cure that (bc-winter-fence).
   *
   * @param soil a row of {@code soils.csv}
   * @throws IllegalArgumentException if the table has no such soil
   */
  public static ReturnWire returnWire(String soil) {
    String answer = Table.named("soils").row(soil).text("return_wire");
    return switch (answer) {
      case "no" -> ReturnWire.NO;
      case "if-rods-fail" -> ReturnWire.IF_RODS_FAIL;
      case "yes" -> ReturnWire.YES;
      default -> throw new IllegalArgumentException("soil " + soil + ", return wire: " + answer);
    };
  }

  /**
   * What the earth test says: short the fence with steel 100 m out until it reads under 2,000 V,
   * then measure from the last rod to a probe 1 m away. Practice of the trade, cited from memory.
   *
   * @param volts on the last rod, 0 to 10,000 V
   * @throws OutsideDomainException if they lie outside
   */
  public static Test test(double volts) {
    OutsideDomainException.within("volts on the last rod", volts, 0, 10_000);
    if (volts <= FenceNumbers.build("earth-test-good")) {
      return Test.GOOD;
    }
    return volts <= FenceNumbers.build("earth-test-limit") ? Test.ENOUGH : Test.MORE_RODS;
  }
}
