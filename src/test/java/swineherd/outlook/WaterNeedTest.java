package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.setup.SetupReader;

class WaterNeedTest {
  /** Four modern pigs from 18 to 110 kg in a bedded barn, so that nothing is added for outdoors. */
  private static final String FOUR =
      """
      checkOn: 2027-03-01
      place: {country: england, latitude: 51 N, hottestMonth: 26 C}
      pens:
        - name: barn
          ground: bedded-concrete
          shelter: {kind: barn}
          water: {kind: nipple, drinkers: 2, flow: 0.5 L/min}
      pigs:
        - {name: four, count: 4, arrives: 2027-04-24, arrivalWeight: 30 kg, targetWeight: 110 kg}
      feed: {kind: self-feeder}
      """;

  private static WaterNeed need(String yaml) {
    List<Outlook> all =
        Outlooks.of(SetupReader.read("pigs.yaml", yaml, LocalDate.of(2027, 3, 1)).setup());
    return (WaterNeed) all.stream().filter(WaterNeed.class::isInstance).findFirst().orElseThrow();
  }

  /**
   * Worked examples [derived] of Mount and others 1971 [read] and the NRC 2012 intake curves
   * [memory]: 3.3 L at 30 kg and 6.8 L at 110 kg up to 22 degC, 10.7 L at 110 kg and 32 degC.
   */
  @Test
  void four_pigs_drink_four_times_what_the_table_gives_for_one() {
    WaterNeed need = need(FOUR);
    assertThat(need.now()).isCloseTo(4 * 3.3, within(0.3));
    assertThat(need.end()).isCloseTo(4 * 6.8, within(0.4));
    // a hot day is 6 degrees over the mean of the hottest month: 32 degC (judgement)
    assertThat(need.most()).isCloseTo(4 * 10.7, within(0.6));
    assertThat(need.plan()).isCloseTo(1.5 * need.most(), within(1e-9));
  }

  @Test
  void it_is_ready_a_week_before_they_come_and_now_where_they_are_there() {
    assertThat(need(FOUR).come()).isFalse();
    assertThat(need(FOUR).by()).isEqualTo(LocalDate.of(2027, 4, 17));
    WaterNeed there = need(FOUR.replace("2027-04-24", "2027-02-20"));
    assertThat(there.come()).isTrue();
    assertThat(there.by()).isEqualTo(LocalDate.of(2027, 3, 1));
  }

  /**
   * A drinker of 0.5 L/min does for weaners; above 25 kg 0.67 L/min is the least, SAC 1998 [read].
   */
  @Test
  void a_drinker_that_does_for_weaners_is_too_slow_from_25_kg_on() {
    WaterNeed light = need(FOUR.replace("arrivalWeight: 30 kg", "arrivalWeight: 15 kg"));
    assertThat(light.slowAt()).isBetween(25.0, 30.0);
    assertThat(light.slowFrom()).isAfter(LocalDate.of(2027, 4, 24));
    assertThat(light.leastFlow()).isEqualTo(0.67);
    assertThat(need(FOUR).slowFrom()).isEqualTo(LocalDate.of(2027, 4, 24));
    assertThat(need(FOUR.replace("0.5 L/min", "0.7 L/min")).slowFrom()).isNull();
  }

  @Test
  void a_summer_that_is_not_known_counts_as_hot_and_is_named() {
    WaterNeed unknown = need(FOUR.replace(", hottestMonth: 26 C", ""));
    assertThat(unknown.most()).isGreaterThan(need(FOUR).most());
    assertThat(unknown.assumed()).anyMatch(a -> a.contains("35 C"));
    assertThat(need(FOUR).assumed()).isEmpty();
  }

  @ParameterizedTest(name = "from {0} to {1} at {2}: warm months {3}, judgement")
  @CsvSource({
    "2027-10-05, 2027-12-20, 51 N, false",
    "2027-10-05, 2027-12-20, 37 S, true",
    "2027-10-05, 2027-12-20, 10 N, true",
    "2027-06-05, 2027-08-20, 51 N, true",
    "2027-06-05, 2027-08-20, 37 S, false",
    "2027-04-05, 2027-04-20, 51 N, false"
  })
  void the_warm_months_turn_round_in_the_south_and_never_end_in_the_tropics(
      String from, String to, String latitude, boolean warm) {
    String yaml =
        FOUR.replace("51 N", latitude)
            .replace("arrives: 2027-04-24", "arrives: " + from + ", slaughterOn: " + to);
    assertThat(need(yaml).warm()).isEqualTo(warm);
    assertThat(need(yaml).most() > need(yaml).end()).isEqualTo(warm);
  }

  @Test
  void two_groups_in_one_pen_drink_together_while_both_are_there() {
    String two =
        FOUR.replace(
            "feed:",
            "  - {name: late, count: 2, arrives: 2027-05-24, arrivalWeight: 30 kg, targetWeight: 110 kg}\nfeed:");
    assertThat(need(two).now()).isEqualTo(need(FOUR).now());
    assertThat(need(two).end()).isBetween(need(FOUR).end(), 6 * 6.9);
  }

  @Test
  void where_nothing_is_known_of_growth_there_is_a_need_all_the_same() {
    WaterNeed unknown = need(FOUR.replace("arrives: 2027-04-24, ", ""));
    assertThat(unknown.come()).isTrue();
    assertThat(unknown.now()).isCloseTo(4 * 3.3, within(0.3));
    assertThat(unknown.end()).isCloseTo(4 * 6.8, within(0.4));
    assertThat(unknown.assumed()).anyMatch(a -> a.contains("growth"));
  }

  /** 40 L against 43 L on a hot day: filled twice. */
  @Test
  void a_trough_is_filled_as_often_as_a_hot_day_asks() {
    String trough =
        FOUR.replace(
            "{kind: nipple, drinkers: 2, flow: 0.5 L/min}", "{kind: trough, volume: 40 L}");
    assertThat(need(trough).fills()).isEqualTo(2);
    assertThat(need(trough.replace("40 L", "60 L")).fills()).isEqualTo(1);
    assertThat(need(FOUR).fills()).isNull();
  }

  /** 20 to a nipple held with flow enough, and two at the least: SAC 1998 [read]. */
  @Test
  void more_than_ten_to_a_drinker_is_tight_and_more_than_twenty_or_a_single_one_is_worse() {
    String enough = FOUR.replace("0.5 L/min", "1 L/min");
    WaterNeed twelve = need(enough.replace("count: 4", "count: 24"));
    assertThat(twelve.drinkers()).isEqualTo(3);
    assertThat(twelve.likelyDry()).isLessThan(0.2);
    assertThat(need(enough.replace("count: 4", "count: 41")).likelyDry()).isGreaterThan(0.3);
    assertThat(need(enough.replace("drinkers: 2", "drinkers: 1")).likelyDry()).isGreaterThan(0.3);
    assertThat(need(FOUR.replace("count: 4", "count: 24")).likelyDry()).isGreaterThan(0.3);
  }

  @Test
  void pigs_that_have_gone_need_none() {
    List<Outlook> all =
        Outlooks.of(
            SetupReader.read(
                    "pigs.yaml",
                    FOUR.replace(
                        "arrives: 2027-04-24", "arrives: 2026-10-01, slaughterOn: 2027-02-20"),
                    LocalDate.of(2027, 3, 1))
                .setup());
    assertThat(all).noneMatch(WaterNeed.class::isInstance);
  }
}
