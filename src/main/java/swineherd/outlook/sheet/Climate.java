package swineherd.outlook.sheet;

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
record Climate(Place place) {
  private static final int HALF_SEASON = 45;

  /** By latitude or country, or by the month of the first frost; empty if all are unknown. */
  Optional<Hemisphere> hemisphere() {
    if (place.latitude() != null) {
      return Optional.of(Hemisphere.of(place.latitude()));
    }
    if (place.country() == Country.AUSTRALIA || place.country() == Country.NEW_ZEALAND) {
      return Optional.of(Hemisphere.SOUTH);
    }
    if (place.country() != null && place.country() != Country.ELSEWHERE) {
      return Optional.of(Hemisphere.NORTH);
    }
    return Optional.ofNullable(place.firstHardFrost())
        .map(f -> f.getMonthValue() >= 2 && f.getMonthValue() <= 7)
        .map(south -> south ? Hemisphere.SOUTH : Hemisphere.NORTH);
  }

  private boolean maritime() {
    return Boolean.TRUE.equals(place.maritime());
  }

  /**
   * Mean daily minimum of the coldest month, degC, as said or from the hardiness zone.
   *
   * @throws swineherd.figures.OutsideDomainException if there is no such zone
   */
  OptionalDouble coldestMonth() {
    if (place.coldestMonth() != null) {
      return OptionalDouble.of(place.coldestMonth());
    }
    return place.hardinessZone() == null
        ? OptionalDouble.empty()
        : OptionalDouble.of(Winter.monthlyMinimum(zone(), maritime()).likely());
  }

  /** The worst night of an ordinary year, degC; to be asked for only with {@link #coldestMonth}. */
  double worstNight() {
    return place.hardinessZone() == null
        ? Winter.worstNight(place.coldestMonth(), maritime())
        : zone().extremeMinimum().likely();
  }

  /** The 24-hour mean of the coldest month, degC; to be asked for only with its minimum. */
  double coldestDayMean() {
    return Winter.dayMean(coldestMonth().orElseThrow(), maritime());
  }

  private HardinessZone zone() {
    return HardinessZone.parse(place.hardinessZone());
  }

  /** Whether hard frost can come: its day is known, and nobody said that it does not freeze. */
  boolean frostKnown() {
    return place.firstHardFrost() != null && hemisphere().isPresent();
  }

  /**
   * The season of hard frost that a day falls into, or the next; only if {@link #frostKnown}.
   *
   * @throws swineherd.figures.OutsideDomainException if the frost was given at an odd time of year
   */
  ColdSeason coldSeason(LocalDate on) {
    double spread = place.frostSpread() == null ? Winter.USUAL_SPREAD : place.frostSpread();
    return ColdSeason.currentOrNext(place.firstHardFrost(), spread, hemisphere().orElseThrow(), on);
  }

  /**
   * Early day of the first hard frost that pigs will still live to see, in this winter or the next;
   * only if {@link #frostKnown}. Empty in the first half of a winter, when it has already come.
   *
   * @throws swineherd.figures.OutsideDomainException if the frost was given at an odd time of year
   */
  Optional<LocalDate> nextFrost(LocalDate on) {
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
  ColdSeason winter(LocalDate on) {
    return around(hemisphere().orElseThrow().midwinter(), on);
  }

  /** The hottest three months around a day or after it, half a year from midwinter. */
  ColdSeason summer(LocalDate on) {
    MonthDay midwinter = hemisphere().orElseThrow().midwinter();
    return around(midwinter.withMonth((midwinter.getMonthValue() + 5) % 12 + 1), on);
  }

  private static ColdSeason around(MonthDay middle, LocalDate on) {
    for (int year = on.getYear() - 1; ; year++) {
      LocalDate day = middle.atYear(year);
      if (!day.plusDays(HALF_SEASON).isBefore(on)) {
        return new ColdSeason(day.minusDays(HALF_SEASON), day.plusDays(HALF_SEASON));
      }
    }
  }
}
