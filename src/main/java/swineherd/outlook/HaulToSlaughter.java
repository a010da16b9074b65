package swineherd.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import swineherd.figures.GrowthClass;
import swineherd.figures.Heat;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.SlaughterLaw;
import swineherd.figures.Transport;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/**
 * The road to the abattoir: room for the weight they will have, and whether the weather lets them
 * be loaded. One for each group that is not slaughtered at home, has not gone, and of which day or
 * weight is known.
 *
 * @param pigs name of the group
 * @param day the day they go, set or likely; null if neither is known
 * @param daysLeft days until then; -1 if no day is set
 * @param weight likely weight of one then, kg
 * @param air highest temperature forecast for that day, degC; null if not known
 * @param haul what that temperature means for loading; null with it
 * @param floor room for each to lie, m2
 * @param floorAll the same for all of them
 * @param leastAll floor for all below which no load goes
 * @param papers what the law there asks of the move, in words
 * @param where what else it may be, where nobody said that they travel; empty otherwise
 * @param assumed what was not said and how it was taken
 */
public record HaulToSlaughter(
    String pigs,
    LocalDate day,
    long daysLeft,
    double weight,
    Double air,
    Heat.Haul haul,
    double floor,
    double floorAll,
    double leastAll,
    String papers,
    String where,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final double LIGHTEST = 5;
  private static final double HEAVIEST = 150;

  private static final String NOT_SAID =
      "Nobody said where: if it is done at home say so here, for then no inspector sees the meat"
          + " and it has to be cooled and tested or cooked through.";

  /** Whether the forecast is too hot to load them at all. */
  public boolean isRefused() {
    return haul == Heat.Haul.POSTPONE;
  }

  /** The day in words of a sentence. */
  public String when() {
    return day == null ? "the day they go" : Dates.words(day);
  }

  static List<Outlook> of(Setup setup, List<Course> courses) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pigs().size(); i++) {
      Group group = setup.pigs().get(i);
      Leaving leaving = Leaving.of(group, courses);
      boolean gone = setup.isGone(group);
      boolean known = leaving.likely() != null || group.forecast() != null;
      if (gone || !known || group.slaughterAt() == Group.SlaughterAt.HOME) {
        continue;
      }
      Grounds grounds =
          leaving
              .grounds("pigs[" + i + "]")
              .said("pigs[" + i + "].forecast", group.forecast())
              .said("pigs[" + i + "].count", group.count());
      try {
        all.add(of(setup, group, leaving, grounds));
      } catch (OutsideDomainException e) {
        all.add(
            new NotWorkedOut("road to slaughter", group.name(), e.getMessage(), grounds.list()));
      }
    }
    return all;
  }

  private static HaulToSlaughter of(Setup setup, Group group, Leaving leaving, Grounds grounds) {
    List<String> assumed = new ArrayList<>();
    LocalDate day = leaving.likely();
    double weight = weight(group, leaving, assumed);
    Double air = group.forecast();
    if (air != null) {
      assumed.add("humidity taken as 60 %");
    }
    int count = group.countOrOne();
    boolean hot = air != null && Transport.isHot(air);
    double reckoned = Math.max(LIGHTEST, Math.min(HEAVIEST, weight));
    return new HaulToSlaughter(
        group.name(),
        day,
        group.slaughterOn() == null
            ? -1
            : ChronoUnit.DAYS.between(setup.checkOn(), group.slaughterOn()),
        weight,
        air,
        air == null ? null : Heat.haul(air, weight),
        Transport.floor(reckoned, hot),
        count * Transport.floor(reckoned, hot),
        count * Transport.hardLine(reckoned),
        SlaughterLaw.move(setup.place().country()),
        group.slaughterAt() == null ? NOT_SAID : "",
        List.copyOf(assumed),
        grounds.list());
  }

  private static double weight(Group group, Leaving leaving, List<String> assumed) {
    if (leaving.course() != null) {
      return leaving.endWeight();
    }
    if (group.targetWeight() != null) {
      return group.targetWeight();
    }
    assumed.add("weight taken as usual for the breed");
    return GrowthClass.ofBreed(group.breed()).usualSlaughterKg();
  }
}
