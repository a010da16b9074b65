package swineherd.outlook;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.ColdSeason;
import swineherd.figures.FirstFrost;
import swineherd.figures.HardinessZone;
import swineherd.figures.Hemisphere;
import swineherd.figures.Winter;
import swineherd.figures.WinterClass;
import swineherd.setup.Place;

/**
 * The winters of the place, as far as the answers tell. There is always one.
 *
 * @param kind whether there is a winter to speak of
 * @param hemisphere north where nothing tells
 * @param firstHardFrost usual day of the first hard frost; where nothing is known of the winter, a
 *     day by which it has come in most places that have one, good only to see whether it matters
 * @param spread standard deviation of that day, in days
 * @param dateTaken whether the day was not said but taken from the hardiness zone or the nights
 * @param nights mean daily minimum of the coldest month, degC; null if not known
 * @param worstNight mean lowest temperature of the year, degC; null if not known
 * @param winterClass null if the nights are not known
 * @param maritime whether the sea keeps it mild; not known counts as no
 * @param assumed what was not said and how it was taken
 */
public record WinterClimate(
    Kind kind,
    Hemisphere hemisphere,
    MonthDay firstHardFrost,
    double spread,
    boolean dateTaken,
    Double nights,
    Double worstNight,
    WinterClass winterClass,
    boolean maritime,
    List<String> assumed,
    List<String> grounds)
    implements Outlook {

  private static final String FROST = "place.firstHardFrost";
  private static final String SPREAD = "place.frostSpread";

  /** Pigs that come so near to the end of the cold season do not meet a winter. */
  private static final int TAIL_DAYS = 42;

  /** Pigs that come so long after midwinter are pigs of spring. */
  private static final int SPRING_DAYS = 60;

  /** Colder end of class C, in degC. */
  private static final double COLD = -5;

  /** Nights of the coldest month at the hardest places where pigs are kept, degC; judgement. */
  private static final double HARDEST = -25;

  /** A first hard frost as early as at those; judgement. */
  private static final MonthDay EARLIEST = MonthDay.of(10, 1);

  /** Judgement: where it freezes hard at all, it mostly has by then. */
  private static final MonthDay ASKING = MonthDay.of(10, 29);

  /** Whether there is a winter to speak of. */
  public enum Kind {
    /** No hard frost in an ordinary winter, or nights that pigs outdoors do not mind. */
    MILD,
    /** Hard frost, and a day for it. */
    FREEZES,
    /** Nothing is known that tells. */
    UNKNOWN
  }

  /** The winter of a place; throws where the answers lie outside what the figures are good for. */
  static WinterClimate of(Place place) {
    List<String> assumed = new ArrayList<>();
    Grounds grounds =
        new Grounds()
            .said("place.freezes", place.freezes())
            .said(FROST, place.firstHardFrost())
            .said(SPREAD, place.frostSpread())
            .said("place.coldestMonth", place.coldestMonth())
            .said("place.hardinessZone", place.hardinessZone());
    Climate said = new Climate(place);
    HardinessZone zone = said.zone().orElse(null);
    Double nights = orNull(said.coldestMonth());
    if (nights != null && place.coldestMonth() == null) {
      assumed.add("nights of the coldest month taken from the hardiness zone");
    }
    Double worst = orNull(said.worstNight());
    WinterClass winterClass = nights == null ? null : WinterClass.of(nights);
    Hemisphere hemisphere = said.hemisphere().orElse(Hemisphere.NORTH);
    MonthDay frost = place.firstHardFrost();
    double spread = said.frostSpread();
    Kind kind = Kind.FREEZES;
    boolean taken = false;
    if (Boolean.FALSE.equals(place.freezes()) || winterClass == WinterClass.A) {
      kind = Kind.MILD;
    } else if (frost == null) {
      Optional<HardinessZone> of = frostZone(zone, worst);
      kind = of.isPresent() ? Kind.FREEZES : Kind.UNKNOWN;
      taken = of.isPresent();
      frost =
          of.flatMap(HardinessZone::firstHardFreezeEastUnitedStates)
              .map(day -> turned(day, hemisphere))
              .orElse(null);
      if (taken) {
        spread = Math.hypot(spread, of.get().firstHardFreezeError() / 1.2816);
        assumed.add("first hard frost taken from how cold the winter is, good to three weeks");
      }
    }
    if (frost == null) {
      frost = turned(ASKING, hemisphere);
      spread = 0;
    }
    return new WinterClimate(
        kind,
        hemisphere,
        frost,
        spread,
        taken,
        nights,
        worst,
        winterClass,
        said.maritime(),
        List.copyOf(assumed),
        grounds.list());
  }

  /** The answers that tell the day of the frost. */
  List<String> frostGrounds() {
    return dateTaken
        ? grounds
        : grounds.stream().filter(p -> p.equals(FROST) || p.equals(SPREAD)).toList();
  }

  /** The nights, or those of the colder end of a cold winter (C) where they are not known. */
  double nightsOrCold() {
    return nights == null ? COLD : nights;
  }

  /** Whether both the day of the frost and the nights are known. */
  boolean isTold() {
    return kind != Kind.UNKNOWN && !dateTaken && nights != null;
  }

  /** The hardest winter that the answers leave open. */
  WinterClimate atWorst() {
    return new WinterClimate(
        Kind.FREEZES,
        hemisphere,
        kind == Kind.UNKNOWN || dateTaken ? turned(EARLIEST, hemisphere) : firstHardFrost,
        spread,
        true,
        nights == null ? HARDEST : nights,
        worstNight,
        winterClass,
        maritime,
        assumed,
        grounds);
  }

  /**
   * The cold season that matters to pigs that are there, or come, on a day: the one it falls into,
   * or the next; the next too where the season is nearly over, and for weaners of spring.
   *
   * @param coming whether they come on that day
   */
  ColdSeason seasonFor(LocalDate from, boolean coming) {
    ColdSeason season = seasonOn(from);
    LocalDate spring = season.midwinter().plusDays(SPRING_DAYS);
    LocalDate tail = season.end().minusDays(TAIL_DAYS);
    boolean over = from.isAfter(tail) || (coming && from.isAfter(spring));
    return over ? seasonOn(season.end().plusDays(1)) : season;
  }

  /** The season that a day falls into, or the next. */
  ColdSeason seasonOn(LocalDate day) {
    return ColdSeason.currentOrNext(firstHardFrost, spread, hemisphere, day);
  }

  /** The first hard frost of a season. */
  FirstFrost frostOf(ColdSeason season) {
    return new FirstFrost(Winter.usualFreeze(season.start(), spread), spread);
  }

  /**
   * The zone by which the date of the frost is taken: that of the place, or the one in which the
   * worst night lies. Zones colder than the table knows are taken as its coldest.
   */
  private static Optional<HardinessZone> frostZone(HardinessZone zone, Double worstNight) {
    HardinessZone of = zone != null || worstNight == null ? zone : HardinessZone.of(worstNight);
    if (of != null && of.number() < 3) {
      of = new HardinessZone(3, HardinessZone.Half.A);
    }
    return Optional.ofNullable(of).filter(z -> z.firstHardFreezeEastUnitedStates().isPresent());
  }

  private static Double orNull(OptionalDouble figure) {
    return figure.isPresent() ? figure.getAsDouble() : null;
  }

  private static MonthDay turned(MonthDay northern, Hemisphere hemisphere) {
    return hemisphere == Hemisphere.NORTH
        ? northern
        : MonthDay.from(northern.atYear(2027).plusMonths(6));
  }
}
