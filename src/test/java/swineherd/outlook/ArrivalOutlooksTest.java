package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.setup.Setup;
import swineherd.setup.SetupReader;

/**
 * Buying, fetching and keeping apart, by hand from published figures: quarantine 30 to 60 days in
 * herds (Vet Times) [read] and two, better four weeks (Michigan State) [read], 30 and 21 being our
 * judgement; fights of the first day 63.6 % (study of 25-30 kg pigs) [read]; standstill of 20 clear
 * days (English trading standards) [read]; weaning at 28 days (SI 2007/2078, Directive 2008/120)
 * [memory].
 */
class ArrivalOutlooksTest {

  private static Setup setup(String country, String checkOn, String... groups) {
    String text =
        "checkOn: %s\nplace: {country: %s, hottestMonth: 20 C, latitude: 52 N}\npigs:\n"
                .formatted(checkOn, country)
            + String.join("", List.of(groups).stream().map(g -> "  - {" + g + "}\n").toList());
    return SetupReader.read("test.yaml", text, LocalDate.parse(checkOn)).setup();
  }

  private static <T> List<T> outlooks(Class<T> kind, Setup setup) {
    return Outlooks.of(setup).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  @Test
  void newcomers_stay_apart_for_30_days_from_the_day_they_come_judgement() {
    Newcomers newcomers =
        outlooks(
                Newcomers.class,
                setup(
                    "england",
                    "2027-03-20",
                    "name: pair, count: 2, arrives: 2027-01-20, arrivalWeight: 18 kg",
                    "name: new, count: 3, arrives: 2027-04-03, source: auction"))
            .get(0);
    assertThat(newcomers.pigs()).isEqualTo("new");
    assertThat(newcomers.residents()).isEqualTo("pair");
    assertThat(newcomers.until()).isEqualTo(LocalDate.of(2027, 5, 3));
    assertThat(newcomers.least()).isEqualTo(21);
    assertThat(newcomers.together()).isEqualTo(5);
    assertThat(newcomers.dayOneFights()).isEqualTo(63.6);
    assertThat(newcomers.residentWeight()).isGreaterThan(newcomers.weight());
  }

  @Test
  void the_first_batch_meets_nobody() {
    Setup setup = setup("england", "2027-03-20", "name: first, count: 3, arrives: 2027-04-03");
    assertThat(outlooks(Newcomers.class, setup)).isEmpty();
  }

  /** Two of 15 kg (33 lb): 0.33 m2, 0.81 m long, 0.48 m high [derived from EFSA and Petherick]. */
  @Test
  void two_weaners_of_15_kg_need_a_crate_as_worked_out_by_hand_derived() {
    RideHome ride =
        outlooks(
                RideHome.class,
                setup(
                    "england",
                    "2027-03-20",
                    "name: new, count: 2, arrives: 2027-04-03, arrivalWeight: 15 kg"))
            .get(0);
    assertThat(ride.hot()).isFalse();
    assertThat(ride.crates()).isEqualTo(1);
    assertThat(ride.floor()).isCloseTo(0.33, within(0.005));
    assertThat(ride.length()).isCloseTo(0.81, within(0.01));
    assertThat(ride.height()).isCloseTo(0.48, within(0.01));
  }

  @ParameterizedTest(name = "{0} pigs of {1}: crates {2}")
  @CsvSource({"1, 15 kg, 1", "5, 15 kg, 2", "12, 15 kg, 3", "13, 15 kg, 0", "2, 40 kg, 0"})
  void four_to_a_crate_and_many_or_heavy_ones_in_a_trailer_judgement(
      int count, String weight, int crates) {
    RideHome ride =
        outlooks(
                RideHome.class,
                setup(
                    "england",
                    "2027-03-20",
                    "name: new, arrives: 2027-04-03, count: %d, arrivalWeight: %s"
                        .formatted(count, weight)))
            .get(0);
    assertThat(ride.crates()).isEqualTo(crates);
    assertThat(ride.crated()).isEqualTo(crates > 0);
  }

  /** Judgement: papers and the thermometer do not hang on the weather or on the weight. */
  @Test
  void what_makes_a_crate_large_is_no_reason_to_ask_for_papers_judgement() {
    Setup hot =
        setup(
            "england",
            "2027-03-20",
            "name: new, count: 2, arrives: 2027-04-03, arrivalWeight: 15 kg, source: auction");
    assertThat(outlooks(Arrival.class, hot).get(0).grounds())
        .containsExactlyInAnyOrder("pigs[0].arrives", "pigs[0].source");
    assertThat(outlooks(RideHome.class, hot).get(0).grounds())
        .contains("place.hottestMonth", "pigs[0].arrivalWeight");
  }

  /** england-trading-standards [read]: the day of arrival is not counted. */
  @Test
  void after_an_arrival_on_3_june_nothing_leaves_until_23_june() {
    LeaveBarred barred =
        outlooks(
                LeaveBarred.class,
                setup("england", "2026-06-05", "name: new, count: 4, arrives: 2026-06-03"))
            .get(0);
    assertThat(barred.last()).isEqualTo(LocalDate.of(2026, 6, 23));
    assertThat(barred.first()).isEqualTo(LocalDate.of(2026, 6, 24));
    assertThat(barred.leaver()).isNull();
  }

  /** LW02 [derived]: arrivals on 1 and 10 May 2025 bar pigs until 31 May. */
  @Test
  void a_second_batch_begins_the_standstill_anew_and_touches_a_booked_day() {
    List<LeaveBarred> barred =
        outlooks(
            LeaveBarred.class,
            setup(
                "england",
                "2025-05-02",
                "name: old, arrives: 2025-01-05, slaughterOn: 2025-05-30",
                "name: one, arrives: 2025-05-01",
                "name: two, arrives: 2025-05-10"));
    assertThat(barred).hasSize(2);
    assertThat(barred).allSatisfy(b -> assertThat(b.first()).isEqualTo("2025-05-31"));
    assertThat(barred.get(1).leaver()).isEqualTo("old");
  }

  @Test
  void no_standstill_is_told_of_a_country_whose_rule_is_not_known_here() {
    Setup setup = setup("united-states", "2026-06-05", "name: new, count: 4, arrives: 2026-06-03");
    assertThat(outlooks(LeaveBarred.class, setup)).isEmpty();
  }

  @ParameterizedTest(name = "weaned at {1} days in {0}: too early {2}")
  @CsvSource({
    "england, 27, true",
    "england, 28, false",
    "germany, 27, true",
    "united-states, 20, false",
  })
  void weaning_is_held_against_the_law_of_the_country(String country, int days, boolean early) {
    Offer offer =
        outlooks(
                Offer.class,
                setup(country, "2027-03-01", "name: new, weanedAt: %d days".formatted(days)))
            .get(0);
    assertThat(offer.weanedTooEarly()).isEqualTo(early);
    assertThat(offer.asks()).contains("born");
  }

  @ParameterizedTest(name = "{0} days on arrival: too young {1}, {2} days to eight weeks")
  @CsvSource({"41, true, 15", "42, false, 14", "56, false, 0", "70, false, 0"})
  void under_six_weeks_is_too_young_raising_small_animals_judgement(
      int days, boolean young, double longer) {
    Offer offer =
        outlooks(
                Offer.class,
                setup("england", "2027-03-01", "name: new, ageOnArrival: %d days".formatted(days)))
            .get(0);
    assertThat(offer.tooYoung()).isEqualTo(young);
    assertThat(offer.longer()).isEqualTo(longer);
  }

  @Test
  void whoever_is_registered_is_not_asked() {
    String text = "checkOn: 2027-03-01\nkeeper: {registered: yes}\npigs: [{name: new}]\n";
    Setup setup = SetupReader.read("test.yaml", text, LocalDate.of(2027, 3, 1)).setup();
    assertThat(outlooks(Registration.class, setup)).isEmpty();
  }
}
