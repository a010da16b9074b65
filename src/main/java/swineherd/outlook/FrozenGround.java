package swineherd.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import swineherd.figures.ColdSeason;
import swineherd.figures.Hemisphere;
import swineherd.figures.Winter;
import swineherd.figures.WinterClass;
import swineherd.rulebook.Table;
import swineherd.setup.Place;

/**
 * Ground that is frozen or under snow while pigs are on it: in winters of class C and harder, from
 * some weeks after an early first hard freeze to as long before the last. Where nobody said how
 * cold it gets but that it freezes hard, class C is taken; where nobody said when, the beginning of
 * the month in which such winters begin.
 *
 * @param now whether it is so on the day of the check
 * @param from first day on which that must be reckoned with
 * @param to last day
 * @param readyBy day to have the fence ready for it, not before the day of the check
 */
record FrozenGround(
    boolean now,
    LocalDate from,
    LocalDate to,
    LocalDate readyBy,
    List<String> assumed,
    List<String> grounds) {

  /** Judgement: mean first hard freeze of a winter of class C, and of D and E, in the north. */
  private static final MonthDay COLD = MonthDay.of(Month.NOVEMBER, 1);

  private static final MonthDay HARD = MonthDay.of(Month.OCTOBER, 1);
  private static final int HALF_YEAR = 6;

  /** Nothing if the pigs are not there then or the winter is mild. */
  static Optional<FrozenGround> of(Occupants pigs) {
    Place place = pigs.setup().place();
    List<String> assumed = new ArrayList<>();
    WinterClass winter = winter(place, assumed);
    if (winter == null || !winter.atLeast(WinterClass.C)) {
      return Optional.empty();
    }
    long lag = (long) Table.named("fence-build").row("ground-frost-lag").number("value");
    LocalDate today = pigs.setup().checkOn();
    LocalDate there = pigs.readyBy(0);
    WinterClimate climate = WinterClimate.of(place);
    ColdSeason season =
        ColdSeason.currentOrNext(
            firstFreeze(place, climate, winter, assumed),
            climate.dateTaken() ? climate.spread() : new Climate(place).frostSpread(),
            climate.hemisphere(),
            (there == null ? today : there).plusDays(lag));
    LocalDate from = season.start().plusDays(lag);
    LocalDate to = season.end().minusDays(lag);
    LocalDate until = pigs.until();
    if (from.isAfter(to) || (until != null && until.isBefore(from))) {
      return Optional.empty();
    }
    LocalDate ready =
        Winter.readiness(winter, season.start()).stream()
            .filter(task -> task.key().equals("fence"))
            .map(Winter.Task::due)
            .findFirst()
            .orElse(season.start());
    return Optional.of(
        new FrozenGround(
            !today.isBefore(from) && !today.isAfter(to),
            from,
            to,
            ready.isBefore(today) ? today : ready,
            List.copyOf(assumed),
            Grounds.of("place", "coldestMonth", "firstHardFrost")
                .said("place.hardinessZone", place.hardinessZone())
                .list()));
  }

  /** Null if nothing is known of it, or that it does not freeze. */
  private static WinterClass winter(Place place, List<String> assumed) {
    OptionalDouble nights = new Climate(place).coldestMonth();
    if (nights.isPresent()) {
      return WinterClass.of(nights.getAsDouble());
    }
    boolean freezes =
        Boolean.TRUE.equals(place.freezes())
            || (place.freezes() == null && place.firstHardFrost() != null);
    if (!freezes) {
      return null;
    }
    assumed.add("a cold winter, since it freezes hard");
    return WinterClass.C;
  }

  private static MonthDay firstFreeze(
      Place place, WinterClimate climate, WinterClass winter, List<String> assumed) {
    if (place.firstHardFrost() != null) {
      return place.firstHardFrost();
    }
    if (climate.dateTaken()) {
      assumed.addAll(climate.assumed());
      return climate.firstHardFrost();
    }
    MonthDay north = winter.atLeast(WinterClass.D) ? HARD : COLD;
    assumed.add("the first hard frost at the usual time of such a winter");
    return climate.hemisphere() == Hemisphere.NORTH
        ? north
        : MonthDay.of(north.getMonth().minus(HALF_YEAR), north.getDayOfMonth());
  }
}
