package swineherd.outlook;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.ColdSeason;
import swineherd.figures.HardinessZone;
import swineherd.figures.Hemisphere;
import swineherd.figures.Winter;
import swineherd.setup.Country;
import swineherd.setup.Place;

/** What the answers about the place say of its winter and summer; nothing is guessed. */
public record Climate(Place place) {
  private static final int HALF_SEASON = 45;

  /**
   * By latitude, or else by country; empty if neither tells.
   *
   * @throws swineherd.figures.OutsideDomainException if there is no such latitude
   */
  public Optional<Hemisphere> hemisphereSaid() {
    if (place.latitude() != null) {
      return Optional.of(Hemisphere.of(place.latitude()));
    }
    if (place.country() == null || place.country() == Country.ELSEWHERE) {
      return Optional.empty();
    }
    return Optional.of(
        place.country() == Country.AUSTRALIA || place.country() == Country.NEW_ZEALAND
            ? Hemisphere.SOUTH
            : Hemisphere.NORTH);
  }

  /** Whether it is said to lie in the south; no where that is not known. */
  boolean isSouthern() {
    return hemisphereSaid().filter(Hemisphere.SOUTH::equals).isPresent();
  }

  /** As said, or by the day of the first frost; empty if all are unknown. */
  public Optional<Hemisphere> hemisphere() {
    // a first frost comes in the half year before midwinter
    return hemisphereSaid()
        .or(
            () ->
                Optional.ofNullable(place.firstHardFrost())
                    .map(
                        day ->
                            day.isAfter(Hemisphere.NORTH.midwinter())
                                    && !day.isAfter(Hemisphere.SOUTH.midwinter())
                                ? Hemisphere.SOUTH
                                : Hemisphere.NORTH));
  }

  /** Whether the sea keeps the winters mild; not known counts as no. */
  boolean maritime() {
    return Boolean.TRUE.equals(place.maritime());
  }

  /**
   * @throws swineherd.figures.OutsideDomainException if there is no such zone
   */
  Optional<HardinessZone> zone() {
    return Optional.ofNullable(place.hardinessZone()).map(HardinessZone::parse);
  }

  /**
   * Mean daily minimum of the coldest month, degC, as said or from the hardiness zone.
   *
   * @throws swineherd.figures.OutsideDomainException if there is no such zone
   */
  public OptionalDouble coldestMonth() {
    if (place.coldestMonth() != null) {
      return OptionalDouble.of(place.coldestMonth());
    }
    return zone().stream()
        .mapToDouble(zone -> Winter.monthlyMinimum(zone, maritime()).likely())
        .findFirst();
  }

  /**
   * The worst night of an ordinary year, degC; known where {@link #coldestMonth} is.
   *
   * @throws swineherd.figures.OutsideDomainException if there is no such zone
   */
  public OptionalDouble worstNight() {
    Optional<HardinessZone> zone = zone();
    if (zone.isPresent()) {
      return OptionalDouble.of(zone.get().extremeMinimum().likely());
    }
    return place.coldestMonth() == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Winter.worstNight(place.coldestMonth(), maritime()));
  }

  /** The 24-hour mean of the coldest month, degC; to be asked for only with its minimum. */
  public double coldestDayMean() {
    return Winter.dayMean(coldestMonth().orElseThrow(), maritime());
  }

  /** Whether hard frost can come: its day is known, and nobody said that it does not freeze. */
  public boolean frostKnown() {
    return place.firstHardFrost() != null && hemisphere().isPresent();
  }

  /** Standard deviation of the day of the first hard frost, in days, as said or usual. */
  double frostSpread() {
    return place.frostSpread() == null ? Winter.USUAL_SPREAD : place.frostSpread();
  }

  /**
   * The season of hard frost that a day falls into, or the next; only if {@link #frostKnown}.
   *
   * @throws swineherd.figures.OutsideDomainException if the frost was given at an odd time of year
   */
  public ColdSeason coldSeason(LocalDate on) {
    return ColdSeason.currentOrNext(
        place.firstHardFrost(), frostSpread(), hemisphere().orElseThrow(), on);
  }

  /**
   * Early day of the first hard frost that pigs will still live to see, in this winter or the next;
   * only if {@link #frostKnown}. Empty in the first half of a winter, when it has already come.
   *
   * @throws swineherd.figures.OutsideDomainException if the frost was given at an odd time of year
   */
  public Optional<LocalDate> nextFrost(LocalDate on) {
    ColdSeason season = coldSeason(on);
    if (season.start().isAfter(on)) {
      return Optional.of(season.start());
    }
    boolean pastMidwinter = on.isAfter(season.start().plusDays(season.days() / 2));
    return pastMidwinter
        ? Optional.of(coldSeason(season.end().plusDays(1)).start())
        : Optional.empty();
  }

  /** The coldest three months around a day, or the next; only if the hemisphere is known. */
  public ColdSeason winter(LocalDate on) {
    MonthDay middle = hemisphere().orElseThrow().midwinter();
    for (int year = on.getYear() - 1; ; year++) {
      LocalDate day = middle.atYear(year);
      if (!day.plusDays(HALF_SEASON).isBefore(on)) {
        return new ColdSeason(day.minusDays(HALF_SEASON), day.plusDays(HALF_SEASON));
      }
    }
  }
}
