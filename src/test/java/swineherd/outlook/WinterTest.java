package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Hemisphere;
import swineherd.figures.Hut;
import swineherd.figures.WinterClass;
import swineherd.setup.SetupReader;

/** The winter of one setup: its climate, who meets it, what can be done, what they need. */
class WinterTest {
  private static final LocalDate ARRIVAL = LocalDate.of(2027, 4, 24);

  private static List<Outlook> all(String yaml) {
    return Outlooks.of(SetupReader.read("pigs.yaml", yaml, ARRIVAL).setup());
  }

  private static <T> List<T> all(String yaml, Class<T> type) {
    return all(yaml).stream().filter(type::isInstance).map(type::cast).toList();
  }

  private static <T> T one(String yaml, Class<T> type) {
    return all(yaml, type).get(0);
  }

  // ------------------------------------------------------------------------------- climate

  private static WinterClimate climate(String place) {
    return one("place: {" + place + "}", WinterClimate.class);
  }

  @Test
  void no_hard_frost_or_a_mild_class_is_mild() {
    assertThat(climate("freezes: 'no'").kind()).isEqualTo(WinterClimate.Kind.MILD);
    // class A from 5 degC up, judgement
    assertThat(climate("coldestMonth: 5 C").kind()).isEqualTo(WinterClimate.Kind.MILD);
    assertThat(climate("coldestMonth: 4.9 C").kind()).isEqualTo(WinterClimate.Kind.FREEZES);
  }

  @Test
  void where_nothing_is_said_nothing_is_known() {
    WinterClimate unknown = climate("freezes: 'yes'");
    assertThat(unknown.kind()).isEqualTo(WinterClimate.Kind.UNKNOWN);
    assertThat(unknown.winterClass()).isNull();
  }

  /**
   * Nights of -25 degC have a worst night of -40, which is the edge of zones 2b and 3a; the first
   * freeze in zone 3 is in mid-September, the hard one 10 to 14 days later (common practice).
   */
  @Test
  void a_day_that_was_not_said_is_taken_from_the_nights() {
    WinterClimate prairie = climate("coldestMonth: -25 C");
    assertThat(prairie.dateTaken()).isTrue();
    assertThat(prairie.firstHardFrost()).isEqualTo(MonthDay.of(9, 27));
    assertThat(prairie.winterClass()).isEqualTo(WinterClass.E);
    // 10 days from year to year, and three weeks either way in eight of ten places
    assertThat(prairie.spread()).isCloseTo(19.2, within(0.1));
    assertThat(prairie.assumed()).hasSize(1);
  }

  @Test
  void the_south_has_its_winter_half_a_year_later() {
    // zone 8: first hard freeze 2 December in the north
    assertThat(climate("country: new-zealand, hardinessZone: 8a").firstHardFrost())
        .isEqualTo(MonthDay.of(6, 2));
    assertThat(climate("firstHardFrost: 25 May").hemisphere()).isEqualTo(Hemisphere.SOUTH);
    assertThat(climate("firstHardFrost: 25 October").hemisphere()).isEqualTo(Hemisphere.NORTH);
    assertThat(climate("latitude: 43 S").hemisphere()).isEqualTo(Hemisphere.SOUTH);
  }

  @Test
  void a_date_of_the_other_half_of_the_world_is_told_as_not_worked_out() {
    String setup = gilts("firstHardFrost: 10 October, latitude: 40 S");
    assertThat(all(setup, NotWorkedOut.class))
        .singleElement()
        .satisfies(n -> assertThat(n.figure()).isEqualTo("winter"));
    assertThat(all(setup, WinterStay.class)).isEmpty();
  }

  // ------------------------------------------------------------------- still there at the frost

  /** Three modern gilts, 18 kg by guess, hand-fed outdoors, to 110 kg. */
  private static String gilts(String place) {
    return """
        checkOn: 2027-04-01
        place: {%s}
        feed: {kind: hand-fed}
        pens: [{name: yard}]
        pigs:
          - name: gilts
            count: 3
            breed: commercial-cross
            sex: gilts
            arrives: 2027-04-24
            arrivalWeight: 18 kg
            weighedBy: guess
            targetWeight: 110 kg
        """
        .formatted(place);
  }

  /**
   * Worked example [derived]: reached in 114.4 days, eight in ten within 95.4 to 137.1, and four
   * days of standstill; so one in ten is not there by day 141, nine in ten by day 99. The rate of
   * 0.8556 instead of 0.86 is half a day later.
   */
  @ParameterizedTest(name = "frost on {0}, sure to the day: {1} [derived]")
  @CsvSource({"2 August, 0.9", "21 August, 0.5", "13 September, 0.1"})
  void the_chance_is_that_of_the_worked_example(String frost, double expected) {
    WinterStay stay =
        one(gilts("firstHardFrost: " + frost + ", frostSpread: 0 days"), WinterStay.class);
    assertThat(stay.chance()).isCloseTo(expected, within(0.02));
    assertThat(stay.begun()).isFalse();
  }

  /**
   * By hand, both spreads taken as normal: (137.1 - 95.4) / 2 / 1.2816 = 16.3 days of growth and 20
   * of frost are 25.8 together; 23 days after the likely day that leaves 0.19, against 0.08 with a
   * sure frost. The late side of growth is a little longer, hence the tolerance [derived].
   */
  @Test
  void a_frost_that_may_come_early_finds_more_pigs_there() {
    WinterStay sure =
        one(gilts("firstHardFrost: 13 September, frostSpread: 0 days"), WinterStay.class);
    WinterStay unsure =
        one(gilts("firstHardFrost: 13 September, frostSpread: 20 days"), WinterStay.class);
    assertThat(unsure.chance()).isCloseTo(0.19, within(0.03)).isGreaterThan(sure.chance() + 0.05);
  }

  @Test
  void with_a_day_set_they_are_there_until_that_day() {
    String yaml = gilts("firstHardFrost: 20 October") + "    slaughterOn: 2027-10-20\n";
    // as many years with the frost before as after
    assertThat(one(yaml, WinterStay.class).chance()).isCloseTo(0.45, within(0.06));
    String early = gilts("firstHardFrost: 20 October") + "    slaughterOn: 2027-09-01\n";
    assertThat(one(early, WinterStay.class).chance()).isZero();
  }

  @Test
  void pigs_of_spring_meet_the_frost_of_the_coming_autumn_not_that_of_the_last() {
    WinterStay stay = one(gilts("firstHardFrost: 5 October"), WinterStay.class);
    assertThat(stay.frost().usual()).isEqualTo(LocalDate.of(2027, 10, 5));
  }

  @Test
  void the_ones_still_there_are_not_heavier_than_the_target() {
    WinterStay stay = one(gilts("firstHardFrost: 21 August"), WinterStay.class);
    assertThat(stay.weight().high()).isEqualTo(110);
    assertThat(stay.weight().low()).isBetween(80.0, 100.0);
  }

  @Test
  void pigs_that_are_gone_meet_nothing() {
    String gone =
        gilts("firstHardFrost: 5 October").replace("checkOn: 2027-04-01", "checkOn: 2027-09-02")
            + "    slaughterOn: 2027-09-01\n";
    assertThat(all(gone, WinterStay.class)).isEmpty();
  }

  // ------------------------------------------------------------------------ what can be chosen

  /** A03: three Mangalitsa of 30 lb come on 25 April; 250 lb are hoped for on 15 October. */
  private static String lard(String arrives, String more) {
    return """
        checkOn: 2024-03-15
        place: {freezes: "yes", firstHardFrost: 5 October}
        pigs:
          - name: barrows
            count: 3
            breed: mangalitsa
            sex: males
            males: castrated
            arrives: %s
            arrivalWeight: 30 lb
            targetWeight: 250 lb
        """
            .formatted(arrives)
        + more;
  }

  /**
   * Judgement of a keeper: at 0.5 to 0.8 lb a day (common practice) 30 lb become 116 to 168 lb in
   * 173 days; 250 lb at 12 to 18 months of age; a modern cross of 45 lb at 1.5 to 1.7 lb a day is
   * there by late August to mid-September (common practice).
   */
  @Test
  void A03_lard_pigs_of_spring_are_no_autumn_pork() {
    Deadline late = one(lard("2026-04-25", "    slaughterOn: 2026-10-15\n"), Deadline.class);
    assertThat(late.byDay()).isTrue();
    assertThat(late.chance()).isGreaterThan(0.9);
    assertThat(late.winterIfKept()).isGreaterThan(0.9);
    assertThat(late.weight().likely() / 0.45359237).isBetween(116.0, 168.0);
    assertThat(late.crossFinish()).isBetween(LocalDate.of(2026, 8, 20), LocalDate.of(2026, 9, 15));
    assertThat(late.finish().likely())
        .isBetween(LocalDate.of(2026, 12, 1), LocalDate.of(2027, 6, 1));
    assertThat(late.finish().late()).isBetween(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 8, 31));
  }

  @ParameterizedTest(name = "latest arrival before {0}")
  @CsvSource(
      nullValues = "-",
      value = {"2026-10-15", "-"})
  void the_latest_arrival_is_the_last_from_which_eight_in_ten_are_in_time(String day) {
    String set = day == null ? "" : "    slaughterOn: " + day + "\n";
    LocalDate latest = one(lard("2026-04-25", set), Deadline.class).latestArrival();
    assertThat(latest).isBefore(LocalDate.of(2026, 4, 25));
    if (day != null) {
      assertThat(one(lard(latest.toString(), set), Deadline.class).chance())
          .isLessThanOrEqualTo(0.2);
      assertThat(one(lard(latest.plusDays(1).toString(), set), Deadline.class).chance())
          .isGreaterThan(0.2);
    }
  }

  @Test
  void no_other_breed_is_named_to_those_who_have_the_fastest() {
    Deadline late =
        one(
            lard("2026-07-25", "    slaughterOn: 2026-10-15\n")
                .replace("mangalitsa", "commercial-cross"),
            Deadline.class);
    assertThat(late.chance()).isGreaterThan(0.5);
    assertThat(late.crossFinish()).isNull();
    assertThat(late.latestArrival()).isBetween(LocalDate.of(2026, 4, 1), LocalDate.of(2026, 7, 24));
  }

  // -------------------------------------------------------------------------- what a pen needs

  private static String wintering(int count, String kg, String shelter, String place, String rest) {
    return """
        checkOn: 2028-01-20
        place: {firstHardFrost: 20 October, %s}
        feed: {kind: hand-fed}
        pens: [{name: yard, shelter: {%s}}]
        pigs: [{name: reds, count: %d, breed: large-white%s}]
        diary: [{on: 2028-01-20, pigs: reds, did: weighed, weight: %s}]
        """
        .formatted(place, shelter, count, rest, kg);
  }

  /**
   * Worked examples C and D [derived]: five pigs to 110 kg lie on 5 x 0.033 x 110^0.67 x 1.2 = 4.62
   * m2 (Petherick [memory]); 0.30 m of loose straw of 50 kg/m3 on it are 69.3 kg; from 40 kg they
   * take 5 x 1.1 x 70 = 385 kg over the winter (Iowa State hoops [read]), 481 kg with a quarter to
   * spare, which is 27 bales of 18 kg.
   */
  @Test
  void bed_and_straw_are_those_of_the_worked_examples() {
    WinterPen pen =
        one(
            wintering(
                5,
                "40 kg",
                "kind: barn, floorArea: 10 m2",
                "coldestMonth: -3 C",
                ", targetWeight: 110 kg"),
            WinterPen.class);
    assertThat(pen.bedArea()).isCloseTo(4.62, within(0.01));
    assertThat(pen.firstBed().likely()).isCloseTo(69.3, within(0.2));
    assertThat(pen.straw()).isCloseTo(481, within(1.0));
    assertThat(pen.bales()).isEqualTo(27);
    // not more than twice the bed, judgement
    assertThat(pen.fit()).isEqualTo(Hut.Fit.TOO_LARGE);
    assertThat(pen.begun()).isTrue();
    assertThat(pen.weight()).isEqualTo(40);
    assertThat(pen.heaviest()).isEqualTo(110);
    // all of it is due today
    assertThat(pen.strawBy()).isEqualTo(LocalDate.of(2028, 1, 20));
  }

  /** Weeks before the early date, 7 October: straw 10, shelter 8, water 6, bed 2; judgement. */
  @Test
  void the_days_are_counted_back_from_an_early_frost() {
    WinterPen pen =
        one(
            gilts("firstHardFrost: 20 October, coldestMonth: -3 C")
                .replace("2027-04-24", "2027-07-20"),
            WinterPen.class);
    assertThat(pen.strawBy()).isEqualTo(LocalDate.of(2027, 7, 29));
    assertThat(pen.shelterBy()).isEqualTo(LocalDate.of(2027, 8, 12));
    assertThat(pen.waterBy()).isEqualTo(LocalDate.of(2027, 8, 26));
    assertThat(pen.bedBy()).isEqualTo(LocalDate.of(2027, 9, 23));
  }

  @Test
  void two_groups_in_one_pen_share_it() {
    String alone = gilts("firstHardFrost: 1 August, coldestMonth: -3 C");
    String two =
        alone
            + "  - {name: boars, count: 2, breed: duroc, arrives: 2027-05-24, targetWeight: 100 kg}\n";
    WinterPen pen = one(two, WinterPen.class);
    assertThat(pen.count()).isEqualTo(5);
    assertThat(pen.bedArea()).isGreaterThan(one(alone, WinterPen.class).bedArea());
  }

  @Test
  void a_pen_whose_pigs_are_gone_by_then_needs_nothing() {
    assertThat(all(gilts("firstHardFrost: 20 November, coldestMonth: -3 C"), WinterPen.class))
        .isEmpty();
  }

  // ------------------------------------------------------------------------- nights in the bed

  private static WinterLying lying(int count, String kg, String shelter, String place) {
    return one(wintering(count, kg, shelter, place, ""), WinterLying.class);
  }

  /** KX02 and KX03 [derived]: mean minimum -3, so -9 in a cold week; the deep nest is worth 8. */
  @Test
  void KX02_KX03_the_bed_decides_in_a_three_sided_shed() {
    assertThat(
            lying(4, "40 kg", "kind: three-sided, bed: deep-nest", "coldestMonth: -3 C").coldFrom())
        .isNull();
    WinterLying straw = lying(4, "40 kg", "kind: three-sided, bed: straw", "coldestMonth: -3 C");
    assertThat(straw.coldFrom()).isEqualTo(LocalDate.of(2028, 1, 20));
    assertThat(straw.coldBedded()).isNull();
    assertThat(straw.night()).isCloseTo(-9, within(0.01));
  }

  /** KX04 [derived]: -13 is -19 in a cold week, -8 in a closed hut: 40 kg no, 80 kg yes. */
  @Test
  void KX04_a_closed_hut_does_for_80_kg_and_not_for_40() {
    String hut = "kind: closed-hut, bed: deep-nest";
    WinterLying small = lying(4, "40 kg", hut, "coldestMonth: -13 C");
    assertThat(small.coldBedded()).isEqualTo(LocalDate.of(2028, 1, 20));
    assertThat(small.coldInHut()).isEqualTo(LocalDate.of(2028, 1, 20));
    // Ag Guide: pigs of 70 kg and more stand -20 degC [memory]
    assertThat(small.enough()).isEqualTo(70);
    assertThat(lying(4, "80 kg", hut, "coldestMonth: -13 C").coldFrom()).isNull();
  }

  /**
   * KX05 and KX06 [derived]: zone 5a has a night of -27.5, which is -16.5 there; 3a one of -38.6.
   */
  @Test
  void KX05_KX06_the_worst_night_asks_for_a_plan_where_it_is_colder_than_the_limit() {
    String hut = "kind: closed-hut, bed: deep-nest";
    assertThat(lying(4, "80 kg", hut, "hardinessZone: 5a").planNeeded()).isFalse();
    WinterLying severe = lying(4, "80 kg", hut, "hardinessZone: 3a");
    assertThat(severe.coldFrom()).isNull();
    assertThat(severe.planNeeded()).isTrue();
    assertThat(severe.worstNight()).isCloseTo(-38.6, within(0.05));
  }

  /**
   * Worked example A (ii) [derived]: four pigs of 60 kg in a closed hut with a deep nest on a mean
   * day of -1 are 6.65 degrees too cold and eat 39 g more for each (NRC 1998 [memory]).
   */
  @Test
  void KL10_more_feed_in_the_cold() {
    WinterLying lying = lying(4, "60 kg", "kind: closed-hut, bed: deep-nest", "coldestMonth: -6 C");
    assertThat(lying.extraFeed().likely()).isCloseTo(0.259, within(0.002));
  }

  @Test
  void no_roof_is_never_warm_enough() {
    WinterLying none = lying(4, "90 kg", "kind: none, bed: deep-nest", "coldestMonth: 3 C");
    assertThat(none.coldBedded()).isNotNull();
    assertThat(none.coldInHut()).isNull();
  }

  /** A barn passes from the least weight of the class on, 35 kg at -20 degC; judgement. */
  @Test
  void a_bedded_barn_is_judged_by_the_weight_of_the_class() {
    assertThat(lying(4, "40 kg", "kind: barn, bed: straw", "coldestMonth: -20 C").coldFrom())
        .isNull();
    assertThat(lying(4, "40 kg", "kind: barn, bed: bare", "coldestMonth: -20 C").coldFrom())
        .isNotNull();
    assertThat(lying(4, "30 kg", "kind: barn, bed: straw", "coldestMonth: -20 C").coldBedded())
        .isNotNull();
  }

  /** Eased by 5 degrees for a heavy coat after an autumn outdoors; judgement. */
  @Test
  void a_heavy_coat_counts_once_it_is_grown() {
    String hut = "kind: closed-hut, bed: deep-nest";
    String place = "coldestMonth: -11 C";
    // -17 + 11 = -6: under -5, over -10
    assertThat(lying(4, "40 kg", hut, place).coldFrom()).isNotNull();
    String tamworth =
        wintering(4, "40 kg", hut, place, ", arrives: 2027-09-01")
            .replace("large-white", "tamworth");
    assertThat(one(tamworth, WinterLying.class).coldFrom()).isNull();
    String new_ = tamworth.replace("2027-09-01", "2028-01-10");
    assertThat(one(new_, WinterLying.class).coldFrom()).isNotNull();
  }

  // --------------------------------------------------------------------------- spring weaners

  /**
   * Night by hand in WinterNightsTest, -5.57 a day sooner; 15 to 35 kg need 5 degC (Ag Guide
   * [memory]).
   */
  @Test
  void weaners_of_april_may_come_into_frost() {
    String place = "firstHardFrost: 5 October, coldestMonth: -15.56 C";
    FrostyArrival cold = one(gilts(place), FrostyArrival.class);
    assertThat(cold.night()).isCloseTo(-5.6, within(0.2));
    assertThat(cold.weight()).isEqualTo(18);
    assertThat(cold.warmFrom()).isAfter(ARRIVAL);
    assertThat(all(gilts(place).replace("2027-04-24", "2027-06-24"), FrostyArrival.class))
        .isEmpty();
    assertThat(all(gilts("firstHardFrost: 5 October, coldestMonth: 6 C"), FrostyArrival.class))
        .isEmpty();
    String snug =
        gilts(place)
            .replace("{name: yard}", "{name: yard, shelter: {kind: closed-hut, bed: deep-nest}}");
    assertThat(all(snug, FrostyArrival.class)).isEmpty();
  }
}
