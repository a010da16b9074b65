package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static swineherd.outlook.Setups.all;
import static swineherd.outlook.Setups.one;

import java.time.LocalDate;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Heat;
import swineherd.outlook.SlaughterReadiness.Verdict;
import swineherd.setup.Setup;
import swineherd.setup.SetupReader;

/** Ready or not, the road, the meat and the last weeks, from published figures by hand. */
class SlaughterOutlooksTest {
  private static final double POUND = 0.45359237;

  /** Two castrated males of 110 kg by the scale on the day of the check, to 110 kg. */
  private static final String HEAVY =
      """
      checkOn: 2027-09-20
      place: {country: %s}
      pigs:
        - {name: barrows, count: 2, breed: commercial-cross, sex: males, males: castrated,
           targetWeight: 110 kg%s}
      diary:
        - {on: 2027-09-20, pigs: barrows, did: weighed, weight: 110 kg}
      """;

  private static String heavy(String country, String more) {
    return HEAVY.formatted(country, more);
  }

  private static SlaughterReadiness ready(String yaml) {
    return one(SlaughterReadiness.class, yaml);
  }

  private static String treated(String active, String route, String rest) {
    return "  - {on: 2027-09-20, pigs: barrows, did: treated, active: %s, route: %s%s}\n"
        .formatted(active, route, rest);
  }

  @Test
  void at_their_weight_and_with_nothing_noted_they_are_ready_today() {
    SlaughterReadiness ready = ready(heavy("united-states", ""));
    assertThat(ready.verdict()).isEqualTo(Verdict.READY);
    assertThat(ready.earliest()).isEqualTo("2027-09-20");
    assertThat(ready.readyOn()).isEqualTo("2027-09-20");
  }

  /** Days of 21 CFR and of data sheets as in WithdrawalTest; a day for safety [judgement]. */
  @ParameterizedTest(name = "{0} {1} {2} [{5}]: {3} from {4}")
  @CsvSource({
    "united-states, ivermectin, injection, '', 2027-10-09, W02 read",
    "united-states, ivermectin, feed, '', 2027-09-26, W03 read",
    "united-states, doramectin, injection, '', 2027-10-15, W04 read",
    "united-states, levamisole, water, '', 2027-09-24, W05 read",
    "united-states, piperazine, feed, '', 2027-10-12, W07 read",
    "united-states, penicillin procaine, injection, '', 2027-09-28, W08 memory",
    "united-states, oxytetracycline long-acting, injection, '', 2027-10-19, W09 read",
    "united-states, oxytetracycline hydrochloride, injection, '', 2027-10-17, W10 read",
    // which of the two kinds was not said: the longer
    "united-states, oxytetracycline, injection, '', 2027-10-19, W09 read",
    "united-states, tylosin, injection, '', 2027-10-05, W11 read",
    "united-states, flunixin, injection, '', 2027-10-03, W11 read",
    // fed with feed for the last time on that day: the days of a feed medicine
    "united-states, lincomycin, feed, '', 2027-09-27, 558.258 read",
    // a label shorter than the table: the longer wins
    "united-states, ivermectin, injection, ', withdrawal: 5 days', 2027-10-09, W02 read",
    "england, ivermectin, feed, ', withdrawal: 5 days', 2027-10-03, W03 read",
    // a longer one is taken as it is, and so is the vet's
    "england, ivermectin, feed, ', withdrawal: 20 days', 2027-10-11, label",
    "united-states, tylosin, injection, ', withdrawal: 14 days, vetWithdrawal: 21 days',"
        + " 2027-10-12, vet",
    // W16: off the label in the United Kingdom at least 28 days
    "england, anything, injection, ', offLabel: yes, vetWithdrawal: 10 days', 2027-10-19, W16 read",
    // 1.5 times a label of 20 days (uk-vmr-2013 [read])
    "wales, anything, feed, ', offLabel: yes, withdrawal: 20 days, vetWithdrawal: 10 days',"
        + " 2027-10-21, cascade read",
    // hours round up: 72 h, W14
    "canada, anything, water, ', withdrawal: 72 hours', 2027-09-24, W14 judgement",
  })
  void a_withdrawal_sets_the_earliest_day(
      String country, String active, String route, String rest, LocalDate earliest, String id) {
    SlaughterReadiness ready = ready(heavy(country, "") + treated(active, route, rest));
    assertThat(ready.blocked()).as(id).isFalse();
    assertThat(ready.clearOn()).as(id).isEqualTo(earliest);
    assertThat(ready.earliest()).isEqualTo(earliest);
    assertThat(ready.readyOn()).isEqualTo(earliest);
    assertThat(ready.verdict()).isEqualTo(Verdict.NOT_YET);
  }

  @ParameterizedTest(name = "{0}: {1} {2} {3} has no date")
  @CsvSource({
    "united-states, something new, injection, ''",
    "england, ivermectin, injection, ''",
    "canada, ivermectin, injection, ''",
    // W15: not labelled for pigs (21 CFR 522.1696a [read])
    "united-states, penicillin benzathine procaine, injection, ', withdrawal: 30 days'",
    "united-states, ivermectin, pour-on, ''",
    "united-states, ivermectin, injection, ', withdrawal: 18 days, offLabel: yes'",
  })
  void what_is_unknown_or_off_the_label_has_no_date(
      String country, String active, String route, String rest) {
    SlaughterReadiness ready = ready(heavy(country, "") + treated(active, route, rest));
    assertThat(ready.blocked()).isTrue();
    assertThat(ready.readyOn()).isNull();
    assertThat(ready.verdict()).isEqualTo(Verdict.NOT_YET);
    assertThat(SlaughterPlan.of(ready, setup(heavy(country, "")).pigs().get(0)).day()).isNull();
  }

  @Test
  void of_two_treatments_the_one_that_clears_last_counts_and_one_without_a_date_blocks() {
    String two =
        heavy("united-states", "")
            + treated("tylosin", "injection", "")
            + treated("doramectin", "injection", "");
    assertThat(ready(two).earliest()).isEqualTo("2027-10-15");
    assertThat(ready(two + treated("something new", "feed", "")).blocked()).isTrue();
  }

  @Test
  void a_day_set_too_early_is_not_yet_and_one_day_later_it_is() {
    // 18 days (21 CFR 522.1192 [read]) end on 8 October; a day for safety
    String treated = treated("ivermectin", "injection", "");
    assertThat(ready(heavy("united-states", ", slaughterOn: 2027-10-08") + treated).verdict())
        .isEqualTo(Verdict.NOT_YET);
    assertThat(ready(heavy("united-states", ", slaughterOn: 2027-10-09") + treated).isTooSoon())
        .isFalse();
  }

  /** LW01: 20 clear days after an arrival in England (trading standards [read]). */
  @Test
  void an_arrival_keeps_all_pigs_for_its_standstill() {
    String yaml =
        heavy("england", ", slaughterOn: 2027-09-28")
            .replace("diary:", "  - {name: weaners, count: 2, arrives: 2027-09-15}\ndiary:");
    SlaughterReadiness ready = all(SlaughterReadiness.class, yaml).get(0);
    assertThat(ready.leaveOn()).isEqualTo("2027-10-06");
    assertThat(ready.verdict()).isEqualTo(Verdict.NOT_YET);
  }

  /** The day-to-day care of 28 days that New Zealand asks for (homekill as summarised [read]). */
  @Test
  void in_new_zealand_they_are_not_killed_at_home_in_their_first_28_days() {
    String more = ", arrives: 2027-09-10, arrivalWeight: 100 kg, slaughterAt: home";
    assertThat(ready(heavy("new-zealand", more)).earliest()).isEqualTo("2027-10-08");
    assertThat(ready(heavy("new-zealand", more.replace("home", "abattoir"))).earliest())
        .isEqualTo("2027-09-20");
  }

  @Test
  void weight_decides_what_medicine_does_not() {
    String light = heavy("united-states", "").replace("weight: 110 kg}", "weight: 60 kg}");
    assertThat(ready(light).verdict()).isEqualTo(Verdict.NOT_YET);
    assertThat(ready(light).readyOn()).isAfter("2027-10-20");
    // a tenth over 115 kg, the upper end for a modern cross [judgement]
    String fat = heavy("united-states", "").replace("weight: 110 kg}", "weight: 127 kg}");
    assertThat(ready(fat).verdict()).isEqualTo(Verdict.TOO_LATE);
    assertThat(ready(fat).tooHeavyOver()).isCloseTo(126.5, within(1e-9));
    assertThat(ready(fat.replace("targetWeight: 110", "targetWeight: 140")).verdict())
        .isEqualTo(Verdict.NOT_YET);
  }

  @Test
  void ill_pigs_and_a_day_too_hot_are_not_yet() {
    String day = heavy("united-states", ", slaughterOn: 2027-09-21");
    assertThat(ready(day).verdict()).isEqualTo(Verdict.READY);
    assertThat(ready(day + "signs: [{pigs: barrows, sign: off-feed}]\n").verdict())
        .isEqualTo(Verdict.NOT_YET);
    assertThat(ready(day.replace("-21", "-21, forecast: 33 C")).verdict())
        .isEqualTo(Verdict.NOT_YET);
  }

  /** The effect of the vaccine lasts about ten weeks after the second dose (SLU [read]). */
  @Test
  void after_ten_weeks_the_vaccine_has_worn_off() {
    String vaccinated =
        heavy("united-states", ", slaughterOn: %s")
            .replace("males: castrated", "males: vaccinated, secondVaccine: 2027-08-20");
    assertThat(ready(vaccinated.formatted("2027-09-24")).isVaccineOver()).isFalse();
    assertThat(ready(vaccinated.formatted("2027-11-20")).verdict()).isEqualTo(Verdict.TOO_LATE);
  }

  @Test
  void pigs_that_are_gone_have_none_and_pigs_to_come_not_before_they_come() {
    assertThat(all(SlaughterReadiness.class, heavy("canada", ", slaughterOn: 2027-09-10")))
        .isEmpty();
    String coming =
        """
        checkOn: 2027-09-20
        pigs: [{name: weaners, count: 60, arrives: 2027-10-01, arrivalWeight: 18 kg}]
        """;
    assertThat(ready(coming).earliest()).isEqualTo("2027-10-01");
    assertThat(ready(coming).near()).isFalse();
  }

  /** Ontario 05-065 [read]: 12 to 18 hours, so 14:00 to 20:00 for a kill at eight. SL01, SL02. */
  @Test
  void the_feed_goes_away_on_the_day_before_a_leap_day_too() {
    SlaughterReadiness ready =
        ready(
            heavy("united-states", ", slaughterOn: 2028-03-01")
                .replace("2027-09-20", "2028-02-20"));
    assertThat(ready.dayBefore()).isEqualTo("2028-02-29");
    assertThat(ready.feedFrom()).isEqualTo("14:00");
    assertThat(ready.feedTo()).isEqualTo("20:00");
  }

  /** Six weeks for a small abattoir in England, sixteen in the United States (common practice). */
  @Test
  void booking_leads_differ_by_country_and_a_lead_that_is_past_is_today() {
    assertThat(ready(heavy("england", ", slaughterOn: 2027-12-20")).bookBy())
        .isEqualTo("2027-11-08");
    assertThat(ready(heavy("united-states", ", slaughterOn: 2027-12-20")).bookBy())
        .isEqualTo("2027-09-20");
    assertThat(ready(heavy("england", ", slaughterOn: 2027-12-20, booked: yes")).bookBy()).isNull();
  }

  /** Whatever is added, pigs never become free sooner. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void more_medicine_or_a_longer_label_never_frees_pigs_sooner(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> actives =
        List.of(
            "ivermectin", "tylosin", "levamisole", "fenbendazole", "doramectin", "oxytetracycline");
    List<String> places = List.of("united-states", "england", "ireland", "canada");
    for (int i = 0; i < 60; i++) {
      String yaml = heavy(places.get(random.nextInt(places.size())), "");
      LocalDate before = LocalDate.of(2027, 9, 20);
      for (int k = 0; k < 3; k++) {
        int label = random.nextInt(60);
        String active = actives.get(random.nextInt(actives.size()));
        String shorter = yaml + treated(active, "feed", ", withdrawal: " + label + " days");
        String longer = yaml + treated(active, "feed", ", withdrawal: " + (label + 5) + " days");
        SlaughterReadiness with = ready(shorter);
        SlaughterReadiness later = ready(longer);
        if (with.blocked()) {
          assertThat(later.blocked()).isTrue();
        } else {
          assertThat(with.earliest()).isAfterOrEqualTo(before);
          assertThat(with.earliest()).isAfter(LocalDate.of(2027, 9, 20).plusDays(label));
          assertThat(later.earliest()).isAfterOrEqualTo(with.earliest());
          before = with.earliest();
        }
        yaml = shorter;
      }
    }
  }

  // ------------------------------------------------------------------------------- the road

  /** TR04 (Reg. 1/2005 [read]) and TR06/TR07 (EFSA k 0.027 [memory]) at 110 kg: 0.468, 0.630 m2. */
  @Test
  void the_floor_is_for_all_to_lie_and_a_third_more_in_the_heat() {
    String yaml = heavy("england", ", slaughterOn: 2027-09-20");
    HaulToSlaughter road = one(HaulToSlaughter.class, yaml);
    assertThat(road.floor()).isCloseTo(0.630, within(0.001));
    assertThat(road.floorAll()).isCloseTo(1.260, within(0.002));
    assertThat(road.leastAll()).isCloseTo(2 * 0.4681, within(0.0005));
    HaulToSlaughter hot =
        one(
            HaulToSlaughter.class,
            yaml.replace("-20}", "-20, forecast: 27 C}")
                .replace("weighed, weight: 110 kg, forecast: 27 C", "weighed, weight: 110 kg"));
    assertThat(hot.floor()).isCloseTo(0.819, within(0.001));
    assertThat(hot.haul()).isEqualTo(Heat.Haul.EARLY);
    assertThat(hot.assumed()).contains("humidity taken as 60 %");
  }

  @Test
  void sixty_pigs_need_thirty_times_the_floor_of_two() {
    String two = heavy("england", ", slaughterOn: 2027-09-20");
    double floor = one(HaulToSlaughter.class, two).floorAll();
    assertThat(one(HaulToSlaughter.class, two.replace("count: 2", "count: 60")).floorAll())
        .isCloseTo(30 * floor, within(1e-9));
  }

  @Test
  void at_home_there_is_no_road() {
    String home = heavy("england", ", slaughterOn: 2027-09-20, slaughterAt: home");
    assertThat(all(HaulToSlaughter.class, home)).isEmpty();
    assertThat(one(HomeKill.class, home).atHome()).isTrue();
  }

  // ------------------------------------------------------------------------------- the meat

  /** YD08 and 2.8 [derived]: 110 kg, 79.2 kg hanging, 55.4 kg of meat each; 2.1 L a kg. */
  @Test
  void two_pigs_of_110_kg_fill_233_litres() {
    MeatYield yield = one(MeatYield.class, heavy("united-states", ", slaughterOn: 2027-09-20"));
    assertThat(yield.hanging().likely()).isCloseTo(79.2, within(0.01));
    assertThat(yield.meat().likely()).isCloseTo(2 * 55.44, within(0.02));
    assertThat(yield.freezer().likely()).isCloseTo(2.1 * 2 * 55.44, within(0.1));
    // 30 lb of meat to the cubic foot [judgement]
    assertThat(yield.freezer().likely() / 28.316846592)
        .isCloseTo(yield.meat().likely() / POUND / 30, within(0.1));
  }

  // ------------------------------------------------------------------------------- at home

  @ParameterizedTest(name = "SL13 and usda-fb-2265 [read]: {0} cannot chill: {1}")
  @CsvSource({
    "'forecast: 9 C', true",
    "'forecast: 1 C', false",
    "'forecast: 9 C, cooler: yes', false",
    "'cooler: no', true",
    "'booked: no', true",
  })
  void without_a_cooler_a_warm_day_or_an_unknown_one_is_refused(String more, boolean cannot) {
    String home = heavy("england", ", slaughterAt: home, " + more);
    assertThat(one(HomeKill.class, home).cannotChill()).isEqualTo(cannot);
  }

  // ------------------------------------------------------------------------------- the plan

  private static Setup setup(String yaml) {
    return SetupReader.read("setup.yaml", yaml, LocalDate.EPOCH).setup();
  }

  private static SlaughterPlan plan(String yaml) {
    return SlaughterPlan.of(ready(yaml), setup(yaml).pigs().get(0));
  }

  @Test
  void the_plan_leads_to_the_day_set_and_tells_nothing_of_the_past() {
    SlaughterPlan plan = plan(heavy("united-states", ", slaughterOn: 2027-09-25, booked: yes"));
    assertThat(plan.set()).isTrue();
    assertThat(plan.steps())
        .extracting(SlaughterPlan.Step::key)
        .containsExactly("forecast", "pen", "feed-off", "load", "cut");
    assertThat(plan.steps()).allMatch(step -> !step.on().isBefore(LocalDate.of(2027, 9, 20)));
  }

  @Test
  void where_the_day_set_cannot_be_the_plan_leads_to_the_first_that_can() {
    SlaughterPlan plan =
        plan(
            heavy("united-states", ", slaughterOn: 2027-09-25, booked: yes")
                + treated("ivermectin", "injection", ""));
    assertThat(plan.set()).isFalse();
    assertThat(plan.day()).isEqualTo("2027-10-09");
    assertThat(plan.steps().get(0).key()).isEqualTo("withdrawal");
  }

  @Test
  void at_home_the_plan_has_a_slaughterer_and_a_cooler_and_no_trailer() {
    List<String> keys =
        plan(heavy("england", ", slaughterOn: 2027-10-20, slaughterAt: home")).steps().stream()
            .map(SlaughterPlan.Step::key)
            .toList();
    assertThat(keys)
        .contains("helper", "chill", "feed-off")
        .doesNotContain("trailer", "load", "book");
  }
}
