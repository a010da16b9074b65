package swineherd.figures;

import java.util.OptionalDouble;
import swineherd.setup.Country;

/**
 * Room for pigs that are always in: a shed, or a pen on concrete. Areas are m2 of unobstructed
 * floor, weights are live weights in kg. A pen is sized for the weight at which the pigs leave it.
 *
 * <p>The lines between good, tight and bad are this project's judgement, drawn through published
 * factors (see {@code rules/tables/space-factors.csv}); law is asked for separately, in {@link
 * FloorArea}.
 */
public final class Space {
  /** Pigs are company for each other: fewer than this many is a lone pig. */
  public static final int SMALLEST_GROUP = 2;

  /** Bed, dunging place and feeding place: twice what the pigs cover when they all lie flat. */
  private static final double TARGET = 2;

  /** Corners cost a small pen more than a large one. Our judgement. */
  private static final double SIDE_IN_PIGS = 1.5;

  /** A pig kept singly must have a pen as long as itself squared, no side under 0.75 of it. */
  private static final double SINGLE_SIDE_IN_PIGS = 0.75;

  private Space() {}

  /**
   * How a pen stands: red below the law of the country or where growth and welfare suffer (k
   * 0.0335), amber below the country's code or where not all can lie flat (k 0.047).
   *
   * <p>This is about floor for a group. A lone pig is asked for {@link #single} besides, which is
   * more than two pigs together need in some weight classes: the law sees to it that it can turn.
   *
   * @param country null if it is not known: no law is guessed
   * @param pigs in the pen, 1 or more
   * @param area m2 of the whole pen, without what trough, hopper and posts take; more than 0
   * @param weight of one pig in kg when it leaves, 5 to 150
   * @throws OutsideDomainException outside those
   */
  public static Pen pen(Country country, int pigs, double area, double weight) {
    OutsideDomainException.within("number of pigs", pigs, 1, Integer.MAX_VALUE);
    OutsideDomainException.within("area in m2", area, Double.MIN_VALUE, Double.MAX_VALUE);
    return new Pen(
        area / pigs,
        FloorArea.law(country, weight),
        FloorArea.code(country, weight),
        Allometry.named("crowded").area(weight),
        Allometry.named("roomy").area(weight));
  }

  /**
   * Whole floor in m2 for a group: what to build, not what is just legal.
   *
   * @param country null if it is not known
   * @param pigs 1 or more
   * @param weight of one pig in kg when it leaves, 5 to 150
   * @throws OutsideDomainException outside those
   */
  public static double targetArea(Country country, int pigs, double weight) {
    return pigs * pen(country, pigs, 1, weight).target();
  }

  /**
   * Live weight in kg at which an area becomes too small for growth and welfare (k 0.0335).
   *
   * @param area m2 for each pig
   * @throws OutsideDomainException if that is not a weight of 5 to 150 kg
   */
  public static double crowdedFrom(double area) {
    return Allometry.named("crowded").weightAt(area);
  }

  /**
   * Shortest side in m that a pen for a group should have: one and a half pigs.
   *
   * @param weight live weight in kg, 5 to 150
   * @throws OutsideDomainException outside that
   */
  public static double shortestSide(double weight) {
    return SIDE_IN_PIGS * BodySize.length(weight);
  }

  /**
   * The least pen for a pig kept alone, for instance because it is sick: {@code uk-2000-1870}.
   *
   * @param weight live weight in kg, 5 to 150
   * @throws OutsideDomainException outside that
   */
  public static SinglePen single(double weight) {
    double length = BodySize.length(weight);
    return new SinglePen(length * length, SINGLE_SIDE_IN_PIGS * length);
  }

  /** Whether a pig has no company. It must at least be able to see others, by law in England. */
  public static boolean isLone(int pigs) {
    return pigs < SMALLEST_GROUP && pigs > 0;
  }

  /**
   * A pen against its limits; all are m2 for each pig.
   *
   * @param each what there is
   * @param law least by law; empty if none is known for the country
   * @param code what the country's code asks; empty if none is known
   * @param crowded below it growth and welfare suffer
   * @param roomy above it all can lie flat on their sides
   */
  public record Pen(
      double each, OptionalDouble law, OptionalDouble code, double crowded, double roomy) {

    /** Whether a law that is known here asks for more. */
    public boolean breaksLaw() {
      return law.isPresent() && each < law.getAsDouble();
    }

    /** Red: below the law or crowded; amber: not all can lie flat, or below the country's code. */
    public Signal signal() {
      if (breaksLaw() || each < crowded) {
        return Signal.RED;
      }
      return each < Math.max(roomy, code.orElse(0)) ? Signal.AMBER : Signal.GREEN;
    }

    /** What to build, m2 for each pig: room to lie, dung and feed apart, never less than law. */
    public double target() {
      return Math.max(TARGET * roomy, Math.max(law.orElse(0), code.orElse(0)));
    }
  }

  /**
   * @param area m2
   * @param shortestSide m
   */
  public record SinglePen(double area, double shortestSide) {}
}
