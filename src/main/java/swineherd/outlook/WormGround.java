package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import swineherd.figures.Ascaris;
import swineherd.figures.GroundRest;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Parasites;
import swineherd.figures.Parasites.Keeping;
import swineherd.setup.Pen;
import swineherd.setup.Pen.Ground;
import swineherd.setup.Setup;

/**
 * What the ground of a group's pen means for worms. There is one for each group with a pen.
 *
 * @param pigs name of the group
 * @param pen name of the pen
 * @param arrives day of arrival; null if unknown
 * @param toCome whether they have yet to come, or nothing tells that they are there
 * @param earth whether they live on earth; what is not known counts as earth
 * @param areaPerPig m2; null if unknown
 * @param overloaded so many pigs for so little rested ground that testing and worming cannot keep
 *     up, whatever turns out of the pen that is not known
 * @param perhapsOverloaded it is if what is not known of the pen is at its worst, and not if at its
 *     best
 * @param missing what to find out then, in words
 * @param wormsKnown worms were found in pigs from there, and it has not had the rest that a heavy
 *     infestation asks for, nor is the floor steamed
 * @param lightArea m2 a pig from which on the area does not shorten the way to the next count
 * @param rest days without pigs that ground should have had, the least
 * @param restAfterWorms the same after a heavy infestation
 * @param dungEvery days within which dung should be taken up while it is warm: before eggs of the
 *     large roundworm in it can infect, and never above 14
 */
public record WormGround(
    String pigs,
    String pen,
    LocalDate arrives,
    boolean toCome,
    boolean earth,
    Double areaPerPig,
    boolean overloaded,
    boolean perhapsOverloaded,
    String missing,
    boolean wormsKnown,
    double lightArea,
    int rest,
    int restAfterWorms,
    int dungEvery,
    List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Worms worms = new Worms(setup, i);
      if (worms.pen() == null) {
        continue;
      }
      try {
        all.add(of(setup, worms, i));
      } catch (OutsideDomainException e) {
        all.add(
            new NotWorkedOut("worms", worms.pen().name(), e.getMessage(), worms.ofGround().list()));
      }
    }
    return all;
  }

  private static WormGround of(Setup setup, Worms worms, int index) {
    Pen pen = worms.pen();
    Keeping known =
        worms.keeping(worms.group().arrives() == null ? setup.checkOn() : worms.group().arrives());
    boolean atWorst = Parasites.nextTest(known).overloaded();
    boolean atBest = known.areaPerPigM2() != null && Parasites.nextTest(best(known)).overloaded();
    Double rest = worms.restDays();
    boolean cleanAgain = rest != null && GroundRest.worth(rest) == GroundRest.Worth.GOOD;
    return new WormGround(
        worms.group().name(),
        pen.name(),
        worms.group().arrives(),
        worms.toCome(),
        pen.ground() == null || pen.ground().isEarth(),
        known.areaPerPigM2(),
        atBest,
        atWorst && !atBest,
        missing(known),
        Boolean.TRUE.equals(pen.wormsKnown()) && !cleanAgain && !Boolean.TRUE.equals(pen.steamed()),
        Parasites.lightArea(),
        GroundRest.daysNeeded(false),
        GroundRest.daysNeeded(true),
        dungEvery(setup.place().hottestMonth()),
        worms.ofGround().and("pigs[" + index + "]", "count", "arrives", "dungCount").list());
  }

  /**
   * The same with what is not known of the pen at its best. Age and season, where unknown, stay at
   * their worst, and the past of the pigs as it is: nobody is asked for them on account of this.
   */
  private static Keeping best(Keeping k) {
    return new Keeping(
        k.areaPerPigM2(),
        k.ground() == null ? Ground.MOVED_PASTURE : k.ground(),
        k.restDays() == null ? Double.POSITIVE_INFINITY : k.restDays(),
        k.washed() == null ? Boolean.TRUE : k.washed(),
        k.history(),
        k.ageWeeks(),
        k.breeding(),
        k.coldThroughout());
  }

  private static String missing(Keeping k) {
    List<String> open = new ArrayList<>();
    if (k.ground() == null) {
      open.add("what they walk on");
    }
    if (k.restDays() == null) {
      open.add("when pigs or pig manure were last there");
    }
    if (open.isEmpty()) {
      open.add("how much room each pig has");
    }
    return String.join(", and ", open);
  }

  /** Reckoned on the afternoons of the hottest month, which are warmer than its soil. */
  private static int dungEvery(Double hottestMonth) {
    double celsius =
        hottestMonth == null ? Ascaris.WARMEST_C : Math.min(hottestMonth, Ascaris.WARMEST_C);
    OptionalInt days = Ascaris.daysToInfective(celsius);
    int longest = Parasites.days("dung-up");
    return Math.min(longest, days.orElse(longest));
  }
}
