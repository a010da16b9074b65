package swineherd.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.Band;
import swineherd.figures.Breed;
import swineherd.figures.ColdSeason;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Warmth;
import swineherd.figures.Winter;
import swineherd.figures.WinterClass;
import swineherd.figures.WinterNights;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.setup.Shelter;

/**
 * Whether the pigs that a winter finds in a pen come through its nights where they lie, day by day
 * as they grow and the nights turn colder: on the nights of an ordinary cold week, and on the worst
 * of the year. There is one for each {@link WinterPen} whose shelter and nights are known.
 *
 * @param pen name of the pen
 * @param coming whether any of them has yet to come
 * @param coldFrom first day on which it is too cold for them with the bed as it is; null if never
 * @param coldBedded the same with a deep bed in that shelter; null if never
 * @param coldInHut the same in a closed low hut with a deep bed; null if never
 * @param told the day of which weight and night are told: the first on which no hut does, or else
 *     no deep bed, or else the bed as it is; or else that of the frost
 * @param weight of one of the lightest on that day, kg
 * @param night air on a night of an ordinary cold week then, degC
 * @param worstNight air on the worst night of the year, degC
 * @param enough least weight with which pigs should meet the first hard frost in a closed hut with
 *     a deep bed, kg; null if none will do
 * @param planNeeded whether the worst nights are too cold with a deep bed, though ordinary ones are
 *     not
 * @param extraFeed more feed for each pig at the coldest time, kg a day, the shelter made good and
 *     no more than it can eat
 */
public record WinterLying(
    String pen,
    boolean coming,
    LocalDate coldFrom,
    LocalDate coldBedded,
    LocalDate coldInHut,
    LocalDate told,
    double weight,
    double night,
    double worstNight,
    Double enough,
    boolean planNeeded,
    Band extraFeed,
    List<String> grounds)
    implements Outlook {

  private static final int WEEK = 7;

  /** Pigs need so long outdoors in autumn to grow a coat. */
  private static final int COAT_DAYS = 42;

  static Optional<WinterLying> of(
      Setup setup, int index, List<WinterPen.Winterer> winterers, WinterClimate climate) {
    Shelter shelter = setup.pens().get(index).shelter();
    if (climate.nights() == null || shelter.kind() == null) {
      return Optional.empty();
    }
    return Optional.of(new Check(setup, index, winterers, climate).result());
  }

  /** Adds what was said of a shelter. */
  static Grounds shelterGrounds(Grounds grounds, int pen, Shelter shelter) {
    String path = "pens[" + pen + "].shelter.";
    return grounds
        .said(path + "kind", shelter.kind())
        .said(path + "bed", shelter.bed())
        .said(path + "insulated", shelter.insulated());
  }

  /** One pen through one winter. */
  private static final class Check {
    private final Setup setup;
    private final int index;
    private final List<WinterPen.Winterer> winterers;
    private final WinterClimate climate;
    private final WinterNights cold;
    private final WinterNights worst;
    private final WinterClass winter;
    private final Lodging asIs;
    private final int count;

    Check(Setup setup, int index, List<WinterPen.Winterer> winterers, WinterClimate climate) {
      this.setup = setup;
      this.index = index;
      this.winterers = winterers;
      this.climate = climate;
      ColdSeason season = winterers.get(0).stay().season();
      cold = WinterNights.ofColdWeeks(season, climate.spread(), climate.nights());
      worst = WinterNights.ofWorst(season, climate.spread(), climate.worstNight());
      count = winterers.stream().mapToInt(w -> w.course().count()).sum();
      winter = count == 1 ? climate.winterClass().harder() : climate.winterClass();
      asIs = Lodging.of(setup.pens().get(index).shelter());
    }

    WinterLying result() {
      Lodging bedded = asIs.withDeepBed();
      Lodging hut = Lodging.closedHut();
      LocalDate coldFrom = firstTooCold(asIs, cold);
      LocalDate coldBedded = firstTooCold(bedded, cold);
      LocalDate coldInHut = firstTooCold(hut, cold);
      double coldest = cold.on(winterers.get(0).stay().season().midwinter());
      Double enough = enough(hut.felt(coldest, count));
      LocalDate told = told(coldFrom, coldBedded, coldInHut);
      Grounds grounds =
          shelterGrounds(
              new Grounds().and(climate.grounds()), index, setup.pens().get(index).shelter());
      winterers.forEach(w -> grounds.and(w.stay().grounds()));
      return new WinterLying(
          setup.pens().get(index).name(),
          winterers.stream().anyMatch(w -> w.course().arrives().isAfter(setup.checkOn())),
          coldFrom,
          coldBedded,
          coldInHut,
          told,
          lightest(told),
          cold.on(told),
          climate.worstNight(),
          enough,
          coldBedded == null && !asIs.holdsHeat() && firstTooCold(bedded, worst) != null,
          extraFeed(coldBedded == null ? bedded : hut),
          grounds.list());
    }

    /** What both the lower extreme and the winter class ask for in a closed hut. */
    private Double enough(double felt) {
      OptionalDouble byNight = Warmth.leastWeight(felt);
      OptionalDouble byClass = winter.leastWeight(WinterClass.Lodging.CLOSED_HUT, climate.nights());
      return byNight.isPresent() && byClass.isPresent()
          ? Math.max(byNight.getAsDouble(), byClass.getAsDouble())
          : null;
    }

    private LocalDate told(LocalDate coldFrom, LocalDate coldBedded, LocalDate coldInHut) {
      if (coldBedded != null) {
        return coldInHut == null ? coldBedded : WinterStay.later(coldBedded, coldInHut);
      }
      return coldFrom != null ? coldFrom : firstDay();
    }

    /** The first day on which some group comes to harm; null if none does. */
    private LocalDate firstTooCold(Lodging lodging, WinterNights nights) {
      LocalDate first = null;
      for (WinterPen.Winterer group : winterers) {
        for (LocalDate day : days(group)) {
          boolean before = first == null || day.isBefore(first);
          if (before && !passes(lodging, nights.on(day), group, kg(group, day), day)) {
            first = day;
          }
        }
      }
      return first;
    }

    private boolean passes(
        Lodging lodging, double air, WinterPen.Winterer group, double kg, LocalDate day) {
      return lodging.warmEnough(air, count, kg, eased(group, day), winter, climate.nights());
    }

    /** Every week from the frost until they go, and the last day. */
    private List<LocalDate> days(WinterPen.Winterer group) {
      LocalDate last = group.stay().season().end();
      LocalDate end = group.course().end();
      if (end != null && end.isBefore(last)) {
        last = end;
      }
      List<LocalDate> days = new ArrayList<>();
      LocalDate day = group.stay().firstDay();
      days.add(day);
      for (day = day.plusDays(WEEK); day.isBefore(last); day = day.plusDays(WEEK)) {
        days.add(day);
      }
      if (last.isAfter(group.stay().firstDay())) {
        days.add(last);
      }
      return days;
    }

    private LocalDate firstDay() {
      return winterers.stream()
          .map(w -> w.stay().firstDay())
          .min(LocalDate::compareTo)
          .orElseThrow();
    }

    private double lightest(LocalDate day) {
      return winterers.stream().mapToDouble(w -> kg(w, day)).min().orElseThrow();
    }

    /** Likely weight; the light end of it where nobody said what they weigh. */
    private double kg(WinterPen.Winterer group, LocalDate day) {
      Band then = group.course().weightOn(day);
      return weighed(group.course()) ? then.likely() : then.low();
    }

    private boolean weighed(Course course) {
      return !course.weighings().isEmpty()
          || setup.group(course.pigs()).orElseThrow().arrivalWeight() != null;
    }

    /** A winter coat counts for breeds that grow one, once they have been outdoors for weeks. */
    private double eased(WinterPen.Winterer group, LocalDate day) {
      Group pigs = setup.group(group.course().pigs()).orElseThrow();
      boolean coat =
          pigs.breed() != null
              && pigs.crossedWith() == null
              && !group.course().arrives().plusDays(COAT_DAYS).isAfter(day);
      return coat ? Warmth.easedBy(Breed.named(pigs.breed()).coat()) : 0;
    }

    /** At the time when it is coldest for their weight. */
    private Band extraFeed(Lodging lodging) {
      Band most = Band.exactly(0);
      if (lodging.place() == null) {
        return most;
      }
      for (WinterPen.Winterer group : winterers) {
        for (LocalDate day : days(group)) {
          double kg = Lodging.clipped(kg(group, day));
          double mean = Winter.dayMean(cold.on(day) + Warmth.coldWeekBelow(), climate.maritime());
          double degrees =
              Warmth.degreesOfCold(
                  Warmth.lowerCritical(kg, count, Warmth.FeedLevel.FULL),
                  lodging.felt(mean, count));
          OutsideDomainException.within("degrees of cold", degrees, 0, 80);
          Band extra =
              Warmth.eatable(
                  Warmth.extraFeed(kg, degrees),
                  WinterPen.feeding(group.course()).eaten(WinterPen.within(kg, 2.5, 140)));
          if (extra.likely() > most.likely()) {
            most = extra;
          }
        }
      }
      return most;
    }
  }
}
