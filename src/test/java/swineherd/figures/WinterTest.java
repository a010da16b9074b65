package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.HardinessZone.Half;
import swineherd.figures.WinterClass.Lodging;

/**
 * Winters from what a keeper can say. The classes and the weeks are this project's judgement, so a
 * test on them fixes the choice; the sums are held against station normals.
 */
class WinterTest {
  @ParameterizedTest(name = "{0}: zone {1}, coldest month {2} degC [derived]")
  @CsvSource({
    "KZ04, 5a, -12.5",
    "KZ06, 7a, -3.4",
    "KZ06, 8a, 0.2",
    "KZ06, 9b, 6.5",
    "KZ06, 4b, -15.3"
  })
  void coldest_month_from_the_zone(String id, String zone, double expected) {
    Band minimum = Winter.monthlyMinimum(HardinessZone.parse(zone), false);
    assertThat(minimum.likely()).isCloseTo(expected, within(0.1));
    assertThat(minimum.high() - minimum.likely()).isEqualTo(3, within(1e-9));
  }

  // NOAA normals 1991-2020, mean January minimum, rounded [memory]: the estimate must hold the
  // station within its own error, both ways
  @ParameterizedTest(name = "{0}: zone {1}, January minimum {2} degC, NOAA normals [memory]")
  @CsvSource({
    "Minneapolis, 5a, -13, false",
    "Des Moines, 5b, -10, false",
    "St Louis, 7a, -4.5, false",
    "Atlanta, 8a, 2, false",
    "Dallas, 8b, 3, false",
    "Seattle, 9a, 3, true"
  })
  void stations_lie_within_the_error(String place, String zone, double january, boolean maritime) {
    HardinessZone z = HardinessZone.parse(zone);
    Band minimum = Winter.monthlyMinimum(z, maritime);
    assertThat(january).isBetween(minimum.low(), minimum.high());
    assertThat(Winter.worstNight(january, maritime))
        .isCloseTo(z.extremeMinimum().likely(), within(3.0));
  }

  @Test
  void the_sea_keeps_the_worst_night_nearer_to_the_month() {
    assertThat(Winter.worstNight(3, true)).isEqualTo(-6);
    assertThat(Winter.worstNight(3, false)).isEqualTo(-10);
    assertThat(Winter.worstNight(-13, false)).isEqualTo(-28);
    assertThat(Winter.dayMean(-5, true)).isEqualTo(-1);
    assertThat(Winter.dayMean(-5, false)).isEqualTo(0);
  }

  @ParameterizedTest(name = "KZ05: {0} degC is class {1}, judgement")
  @CsvSource({
    "-12.5, D",
    "-3.4, C",
    "0.2, B",
    "6.5, A",
    "-15.3, E",
    "5, A",
    "4.9, B",
    "0, B",
    "-0.1, C",
    "-5, C",
    "-5.1, D",
    "-15, D"
  })
  void class_by_the_coldest_month(double minimum, WinterClass expected) {
    assertThat(WinterClass.of(minimum)).isEqualTo(expected);
  }

  // A 9b and up, B 8a-9a, C 7a-7b, D 5a-6b, E 4b and colder; follows from the sums [derived]
  @ParameterizedTest(name = "zones {0} to {1} are class {2} [derived]")
  @CsvSource({"9b, 13b, A", "8a, 9a, B", "7a, 7b, C", "5a, 6b, D", "1a, 4b, E"})
  void class_by_the_zone(String coldest, String mildest, WinterClass expected) {
    HardinessZone last = HardinessZone.parse(mildest);
    HardinessZone zone = HardinessZone.parse(coldest);
    while (true) {
      double minimum = Winter.monthlyMinimum(zone, false).likely();
      assertThat(WinterClass.of(minimum)).as("zone %s", zone).isEqualTo(expected);
      if (zone.equals(last)) {
        return;
      }
      zone =
          zone.half() == Half.A
              ? new HardinessZone(zone.number(), Half.B)
              : new HardinessZone(zone.number() + 1, Half.A);
    }
  }

  @ParameterizedTest(name = "class {0} at {1} degC, {2}: {3} kg, judgement")
  @CsvSource({
    "A, 6, CLOSED_HUT, 15",
    "B, 2, CLOSED_HUT, 20",
    "B, 2, THREE_SIDED, 35",
    "C, -3, CLOSED_HUT, 35",
    "C, -3, INSULATED_HUT, 25",
    "D, -9, CLOSED_HUT, 35",
    "D, -10, CLOSED_HUT, 35",
    "D, -10.1, CLOSED_HUT, 70",
    "D, -12, INSULATED_HUT, 35",
    "E, -20, CLOSED_HUT, 70",
    "E, -20, BARN, 35",
    "E, -24.1, INSULATED_HUT, 70",
    // a lone pig is asked for one class more than the month says
    "D, -3, CLOSED_HUT, 35",
    "E, -9, CLOSED_HUT, 70"
  })
  void least_weight(WinterClass winter, double minimum, Lodging lodging, double weight) {
    assertThat(winter.leastWeight(lodging, minimum)).hasValue(weight);
  }

  @Test
  void an_open_shed_will_not_do_in_a_hard_winter() {
    assertThat(WinterClass.D.leastWeight(Lodging.THREE_SIDED, -9)).isEmpty();
    assertThat(WinterClass.E.leastWeight(Lodging.THREE_SIDED, -30)).isEmpty();
  }

  @Test
  void a_lone_pig_counts_as_one_class_harder() {
    assertThat(WinterClass.A.harder()).isEqualTo(WinterClass.B);
    assertThat(WinterClass.D.harder()).isEqualTo(WinterClass.E);
    assertThat(WinterClass.E.harder()).isEqualTo(WinterClass.E);
  }

  @Test
  void requirements_and_stores_grow_with_the_class() {
    assertThat(WinterClass.A.requirements()).containsExactly("dry-bed", "rain-shelter");
    assertThat(WinterClass.E.requirements()).containsAll(WinterClass.D.requirements());
    assertThat(WinterClass.B.bedDepth(34)).isEqualTo(0.30);
    assertThat(WinterClass.B.bedDepth(35)).isEqualTo(0.20);
    assertThat(List.of(WinterClass.values()))
        .extracting(WinterClass::feedReserveDays)
        .containsExactly(0, 7, 14, 21, 30);
  }

  // The classes must not promise what the night test refuses: the least weight of a closed hut,
  // with
  // four pigs in a deep nest, passes a night of a cold week at the class's coldest month.
  @ParameterizedTest(name = "{0} degC")
  @ValueSource(doubles = {5, 0, -5, -10, -15, -20})
  void the_least_weight_passes_the_night_of_a_cold_week(double minimum) {
    double weight = WinterClass.of(minimum).leastWeight(Lodging.CLOSED_HUT, minimum).orElseThrow();
    LyingPlace hut = LyingPlace.dry(LyingPlace.Floor.DEEP_NEST, LyingPlace.Shelter.CLOSED_HUT);
    assertThat(Warmth.nights(hut, 4, weight, minimum, minimum - 13).suitable()).isTrue();
  }

  // KC07 [derived]: mean 20 October, standard deviation 10 days
  @Test
  void one_year_in_ten_freezes_thirteen_days_early() {
    assertThat(Winter.earlyFreeze(LocalDate.of(2027, 10, 20), Winter.USUAL_SPREAD))
        .isEqualTo("2027-10-07");
  }

  @ParameterizedTest(name = "mean {0}, spread {1} d: {2} [derived]")
  @CsvSource({
    "2027-05-20, 10, 2027-05-07",
    "2027-01-05, 10, 2026-12-23",
    "2027-10-20, 0, 2027-10-20",
    "2028-03-05, 7, 2028-02-25"
  })
  void early_dates_cross_the_end_of_the_year(LocalDate mean, double spread, LocalDate early) {
    assertThat(Winter.earlyFreeze(mean, spread)).isEqualTo(early);
  }

  @Test
  void refuses_a_spread_of_half_a_winter() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> Winter.earlyFreeze(LocalDate.of(2027, 10, 20), 60))
        .withMessageContaining("days");
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> WinterClass.of(Double.NaN));
  }

  @Test
  void readiness_counts_back_from_the_early_date() {
    LocalDate early = LocalDate.of(2027, 10, 7);
    List<Winter.Task> tasks = Winter.readiness(WinterClass.C, early);
    assertThat(tasks)
        .contains(
            new Winter.Task("plan-weights", LocalDate.of(2027, 5, 20), LocalDate.of(2027, 7, 15)),
            new Winter.Task("buy-straw", LocalDate.of(2027, 6, 17), LocalDate.of(2027, 7, 29)),
            new Winter.Task("switch-over", early, early));
    assertThat(tasks).extracting(Winter.Task::due).isSorted();
    assertThat(tasks).allSatisfy(t -> assertThat(t.start()).isBeforeOrEqualTo(t.due()));
  }

  @Test
  void in_the_south_the_plan_starts_in_the_year_before() {
    assertThat(Winter.readiness(WinterClass.C, LocalDate.of(2027, 5, 7)).get(0))
        .isEqualTo(
            new Winter.Task("plan-weights", LocalDate.of(2026, 12, 18), LocalDate.of(2027, 2, 12)));
  }

  @Test
  void a_mild_winter_asks_for_little() {
    assertThat(Winter.readiness(WinterClass.A, LocalDate.of(2027, 12, 1)))
        .extracting(Winter.Task::key)
        .containsExactly("worms-and-vaccines", "switch-over");
    assertThat(Winter.readiness(WinterClass.B, LocalDate.of(2027, 12, 1)))
        .extracting(Winter.Task::key)
        .doesNotContain("fence", "plan-weights", "thaw");
  }

  @ParameterizedTest(name = "500 draws with the fixed seed {0}")
  @ValueSource(longs = {71, 72})
  void a_colder_month_never_asks_for_less(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    LocalDate early = LocalDate.of(2027, 10, 7);
    for (int i = 0; i < 500; i++) {
      double mild = random.nextDouble(-35, 12);
      double cold = random.nextDouble(-40, mild);
      WinterClass milder = WinterClass.of(mild);
      WinterClass colder = WinterClass.of(cold);
      assertThat(colder.atLeast(milder)).isTrue();
      assertThat(Winter.readiness(colder, early)).containsAll(Winter.readiness(milder, early));
      assertThat(Winter.worstNight(cold, false))
          .isLessThanOrEqualTo(Winter.worstNight(mild, false));
      for (Lodging lodging : Lodging.values()) {
        assertThat(colder.leastWeight(lodging, cold).orElse(999))
            .isGreaterThanOrEqualTo(milder.leastWeight(lodging, mild).orElse(999));
      }
    }
  }
}
