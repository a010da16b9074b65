package swineherd.outlook.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import swineherd.figures.Band;
import swineherd.setup.SetupReader;

/** Worked examples from the setup file to the row of the sheet. */
class FigureSheetTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 4, 1);
  private static final double POUND = 0.45359237;

  /** Three of a modern cross, 18 kg by guess, hand-fed outdoors, to 110 kg: the worked example. */
  private static final String THREE =
      """
      place: {country: denmark}
      pens:
        - {name: lot, area: 400 m2, ground: bare-dry}
      pigs:
        - {name: pigs, pen: lot, count: 3, breed: modern-cross, arrives: 2027-04-24,
           arrivalWeight: 18 kg, weighedBy: guess, targetWeight: 110 kg}
      feed: {kind: hand-fed}
      """;

  private static FigureSheet sheet(String yaml) {
    return FigureSheet.of(SetupReader.read("pigs.yaml", yaml, TODAY).setup());
  }

  private static List<Row> rows(FigureSheet sheet, String section, String key) {
    return sheet.sections().stream()
        .filter(s -> s.key().equals(section))
        .flatMap(s -> s.rows().stream())
        .filter(r -> r.key().equals(key))
        .toList();
  }

  private static Figure figure(FigureSheet sheet, String section, String key) {
    assertThat(rows(sheet, section, key)).as(section + ", " + key).hasSize(1);
    return rows(sheet, section, key).get(0).figure();
  }

  private static Band band(FigureSheet sheet, String section, String key) {
    return ((Figure.Amount) figure(sheet, section, key)).band();
  }

  private static double money(FigureSheet sheet, String key) {
    return ((Figure.Price) figure(sheet, "money", key)).amount();
  }

  @Nested
  class Growth_and_feed {
    /** 114.4 days on the curve and four of standstill after the purchase [derived]. */
    @Test
    void the_first_worked_example_is_finished_in_a_hundred_and_eighteen_days() {
      Figure.Dates finish = (Figure.Dates) figure(sheet(THREE), "growth", "finish");
      long days = finish.dates().likely().toEpochDay() - LocalDate.of(2027, 4, 24).toEpochDay();
      assertThat(days).isCloseTo(119, within(1L));
    }

    /**
     * F05: 278 kg of feed for one, to within 2 % [derived]; the days of standstill after the
     * purchase, four of 1.24 kg at most (by phase, 18 to 25 kg), come on top.
     */
    @Test
    void F05_feed_for_one_pig() {
      Band all = band(sheet(THREE), "feed", "total");
      assertThat(all.likely() / 3).isBetween(278 * 0.98, 278 * 1.02 + 4 * 1.24);
      // a tenth less to a quarter more (judgement)
      assertThat(all.low()).isCloseTo(all.likely() * 0.90, within(1e-6));
      assertThat(all.high()).isCloseTo(all.likely() * 1.25, within(1e-6));
    }

    /** By phase: 16, 65, 75, 85 and 37 kg for one pig [derived]; the first holds the standstill. */
    @Test
    void feed_by_phase_is_that_of_the_worked_example() {
      List<Double> phases =
          rows(sheet(THREE), "feed", "phase").stream()
              .map(r -> ((Figure.Amount) r.figure()).band().likely() / 3)
              .toList();
      assertThat(phases).hasSize(5);
      assertThat(phases.get(0)).isCloseTo(16 + 4 * 1.15, within(1.5));
      assertThat(phases.get(1)).isCloseTo(65, within(2.0));
      assertThat(phases.get(2)).isCloseTo(75, within(3.0));
      assertThat(phases.get(3)).isCloseTo(85, within(3.0));
      assertThat(phases.get(4)).isCloseTo(37, within(3.5));
    }

    /** The published break-even: 40 for delivery, 0.60 in bags, 0.45 in bulk: 267 kg [derived]. */
    @Test
    void bulk_is_worth_it_from_the_published_load() {
      FigureSheet bulk =
          sheet(
              THREE
                  + """
                  money: {feed: 15 per 25 kg, bulk: 450 per t, bulkLoad: 500 kg, bulkDelivery: 40}
                  """);
      assertThat(band(bulk, "feed-buying", "bulk-even").likely()).isCloseTo(266.7, within(0.1));
    }

    @Test
    void a_weight_in_the_diary_is_told_with_what_was_expected() {
      FigureSheet taped =
          sheet(
              "checkOn: 2027-06-30\n"
                  + THREE.replace("guess", "tape")
                  + "diary: [{on: 2027-06-09, pigs: pigs, did: taped, weight: 40 kg}]\n");
      Row row = rows(taped, "growth", "weighed").get(0);
      // worked example: expected 45.7 kg at a rate of 0.86, the rate falls to 0.877 of it [derived]
      Figure.Amount expected = (Figure.Amount) row.note().figures().get("expected");
      assertThat(expected.band().likely()).isCloseTo(45.7, within(0.4));
      Figure.Amount rate = (Figure.Amount) row.note().figures().get("rate");
      assertThat(rate.band().likely()).isCloseTo(87.7, within(0.5));
    }
  }

  @Nested
  class Water_and_room {
    /** 6.8 L drunk by one of 110 kg in mild weather, to lay on half as much again [derived]. */
    @Test
    void water_at_the_end_is_that_of_the_table() {
      assertThat(band(sheet(THREE), "water", "end").likely()).isCloseTo(3 * 10.3, within(0.3));
    }

    /** Two drinkers in a pen whatever its size: sac-1998 [read]. */
    @Test
    void two_drinkers_at_least() {
      assertThat(figure(sheet(THREE), "water", "drinkers"))
          .isEqualTo(new Figure.Count(2, "drinker", "drinkers"));
    }

    /** 0.65 m2 each from over 85 to 110 kg: Council Directive 2008/120/EC, article 3 [read]. */
    @Test
    void floor_by_law_is_for_the_weight_they_leave_with() {
      assertThat(band(sheet(THREE), "space", "law").likely()).isCloseTo(3 * 0.65, within(1e-9));
      assertThat(rows(sheet(THREE), "space", "law").get(0).sources())
          .containsExactly("eu-2008-120");
    }

    @Test
    void no_law_is_told_where_the_country_is_not_known() {
      FigureSheet nowhere = sheet(THREE.replace("{country: denmark}", "{}"));
      assertThat(figure(nowhere, "space", "law"))
          .isEqualTo(new Figure.Missing(List.of("place.country")));
    }
  }

  /** Worked example: 79.2 kg hanging, 55.4 kg of meat, 349 L for three [derived]. */
  @Test
  void carcass_meat_and_freezer_are_those_of_the_worked_example() {
    FigureSheet three = sheet(THREE);
    assertThat(band(three, "slaughter", "hanging").likely()).isCloseTo(79.2, within(0.05));
    assertThat(band(three, "slaughter", "meat").likely()).isCloseTo(55.4, within(0.05));
    assertThat(band(three, "slaughter", "freezer").likely()).isCloseTo(349, within(1.0));
  }

  @Nested
  class Money_of_the_worked_budget {
    private static final String PRICES =
        """
        money: {weaner: 90, feed: 15 per 25 kg, straw: 6 per 18 kg, vet: 45, travel: 60,
          insurance: 0, kill: 45, cut: 1.30 per kg, fence: 300, shelter: 400, trough: 120,
          energizer: 0, freezer: 0}
        """;

    /**
     * EC09: 1525.28 with 500.40 for feed and 72 for straw, which are worked out here and not said;
     * all else must be what it is there [derived].
     */
    @Test
    void EC09_all_but_feed_and_straw() {
      FigureSheet budget = sheet(THREE + PRICES);
      double rest =
          money(budget, "cash") - money(budget, "line-feed") - money(budget, "line-bedding");
      assertThat(rest).isCloseTo(1525.28 - 500.40 - 72, within(0.01));
      assertThat(money(budget, "line-cut")).isCloseTo(308.88, within(0.01));
      assertThat(money(budget, "line-feed"))
          .isCloseTo(0.60 * band(budget, "feed", "total").likely(), within(0.01));
    }

    /** EC10: by 237.6 kg hanging and 166.3 kg of meat [derived]. */
    @Test
    void EC10_by_hanging_weight_and_by_meat() {
      FigureSheet budget = sheet(THREE + PRICES);
      assertThat(money(budget, "per-kg-hanging"))
          .isCloseTo(money(budget, "cash") / 237.6, within(0.002));
      assertThat(money(budget, "per-kg-meat"))
          .isCloseTo(money(budget, "cash") / 166.32, within(0.002));
      assertThat(money(budget, "per-kg-hanging")).isCloseTo(6.420, Percentage.withPercentage(3));
      assertThat(money(budget, "per-kg-meat")).isCloseTo(9.171, Percentage.withPercentage(3));
    }

    @Test
    void a_price_that_is_not_said_keeps_the_total_unknown_and_is_named() {
      FigureSheet budget = sheet(THREE + PRICES.replace("kill: 45,", ""));
      assertThat(figure(budget, "money", "line-kill"))
          .isEqualTo(new Figure.Missing(List.of("money.kill")));
      assertThat(figure(budget, "money", "cash"))
          .isEqualTo(new Figure.Missing(List.of("money.kill")));
      assertThat(rows(budget, "money", "per-kg-meat")).isEmpty();
      // three pigs at 45 are all that is not in it
      assertThat(money(budget, "known"))
          .isCloseTo(money(sheet(THREE + PRICES), "cash") - 3 * 45, within(0.01));
    }
  }

  /** The same pigs in pounds and feet are the same pigs. */
  @Test
  void a_setup_in_american_units_has_the_same_figures() {
    FigureSheet american =
        sheet(
            THREE
                .replace("400 m2", "4305.564167 sq ft")
                .replace("18 kg", 18 / POUND + " lb")
                .replace("110 kg", 110 / POUND + " lb"));
    FigureSheet metric = sheet(THREE);
    assertThat(american.sections()).hasSameSizeAs(metric.sections());
    for (String key : List.of("hanging", "meat")) {
      assertThat(band(american, "slaughter", key).likely())
          .isCloseTo(band(metric, "slaughter", key).likely(), within(1e-6));
    }
    assertThat(band(american, "feed", "total").likely())
        .isCloseTo(band(metric, "feed", "total").likely(), within(1e-4));
  }

  @Test
  void without_a_day_of_arrival_the_sheet_says_what_it_lacks() {
    FigureSheet open = sheet("pigs: [{name: pigs, count: 2, males: castrated}]");
    assertThat(open.sections()).isNotEmpty();
    assertThat(open.sections())
        .allSatisfy(
            section ->
                assertThat(section.rows())
                    .allSatisfy(
                        row ->
                            assertThat(row.figure())
                                .isEqualTo(new Figure.Missing(List.of("pigs[0].arrives")))));
  }

  @Test
  void pigs_that_are_gone_take_no_room() {
    FigureSheet gone =
        sheet(
            "checkOn: 2027-09-20\n"
                + THREE.replace("targetWeight", "slaughterOn: 2027-09-01, targetWeight"));
    assertThat(gone.sections()).extracting(Section::key).doesNotContain("water", "space");
    assertThat(rows(gone, "growth", "set")).hasSize(1);
  }

  @Test
  void what_the_curve_does_not_reach_is_refused_with_the_limit() {
    FigureSheet heavy = sheet(THREE.replace("110 kg", "180 kg"));
    assertThat(figure(heavy, "growth", "finish")).isInstanceOf(Figure.Beyond.class);
    assertThat(figure(heavy, "feed", "total")).isInstanceOf(Figure.Beyond.class);
  }

  @Nested
  class Fence_sun_worms_and_release {
    private static final String LIVE =
        """
        checkOn: 2027-04-01
        place: {country: united-states, latitude: 45 N, hottestMonth: 30 C}
        pens:
          - {name: lot, area: 400 m2, ground: bare-dry, shade: {kind: none},
             fence: {kind: electric, strands: 2, length: 80 m, growth: medium, output: 1 J,
                     earthRods: 3, conductor: steel-2.5}}
        pigs:
          - {name: pigs, pen: lot, count: 3, breed: modern-cross, sex: males, males: castrated, arrives: 2027-04-24,
             arrivalWeight: 18 kg, weighedBy: scale, targetWeight: 110 kg, trained: no}
        feed: {kind: hand-fed}
        """;

    /** Wires for 15 to 50 kg at 12, 25 and 40 cm (smallholder press and judgement). */
    @Test
    void wires_stand_at_the_heights_for_pigs_of_that_weight() {
      Row wires = rows(sheet(LIVE), "fence", "wires-now").get(0);
      assertThat(((Figure.Count) wires.figure()).count()).isEqualTo(3);
      assertThat(((Figure.Amount) wires.note().figures().get("h0")).band().likely())
          .isCloseTo(0.12, within(1e-9));
      assertThat(((Figure.Amount) wires.note().figures().get("h2")).band().likely())
          .isCloseTo(0.40, within(1e-9));
    }

    /**
     * 1 J draws 100 mA [read], so 8 days without charge from half the charge of a lead-acid battery
     * take 0.1 x 24 x 8 / 0.5 = 38.4 Ah [derived].
     */
    @Test
    void a_battery_lasts_the_days_without_charge() {
      Band battery = ((Figure.Plain) figure(sheet(LIVE), "fence", "battery")).band();
      assertThat(battery.low()).isCloseTo(38.4, within(0.1));
    }

    /** A fence that is not electric has no volts, rods or battery. */
    @Test
    void a_solid_fence_has_no_electric_figures() {
      FigureSheet solid = sheet(LIVE.replaceAll("(?s)fence: .*?}", "fence: {kind: solid}"));
      assertThat(rows(solid, "fence", "energizer")).isEmpty();
      assertThat(rows(solid, "fence", "battery")).isEmpty();
      assertThat(rows(solid, "fence", "solid-height")).hasSize(1);
    }

    /** Roundworm eggs show 42 days after they were picked up, at the earliest (upenn-ascarids). */
    @Test
    void eggs_of_roundworm_show_six_weeks_after_the_arrival() {
      assertThat(
              rows(sheet(LIVE), "worms", "eggs").stream()
                  .filter(r -> r.name().text().contains("large roundworm"))
                  .map(r -> ((Figure.Day) r.figure()).day()))
          .containsExactly(LocalDate.of(2027, 6, 5));
    }

    /** The last dose on the 1st and 28 days of the label: free on the 30th, a day for safety. */
    @Test
    void a_withdrawal_by_the_label_is_told_and_drawn() {
      FigureSheet treated =
          sheet(
              LIVE.replace("checkOn: 2027-04-01", "checkOn: 2027-06-03")
                  + "diary: [{on: 2027-06-01, pigs: pigs, did: treated, active: ivermectin,"
                  + " route: injection, withdrawal: 28 days}]\n");
      assertThat(((Figure.Day) figure(treated, "release", "withdrawal")).day())
          .isEqualTo(LocalDate.of(2027, 6, 30));
      assertThat(treated.plots().get(0).marks())
          .contains(new Plot.Mark(LocalDate.of(2027, 6, 30), "withdrawal over"));
    }

    @Test
    void of_a_medicine_without_a_name_no_date_is_told() {
      FigureSheet treated =
          sheet(
              LIVE.replace("checkOn: 2027-04-01", "checkOn: 2027-06-03")
                  + "diary: [{on: 2027-06-01, pigs: pigs, did: treated}]\n");
      assertThat(((Figure.Words) figure(treated, "release", "withdrawal")).words())
          .startsWith("no date");
    }

    /** At 30 degC the index is over 75 at half damp air: an alert at least (ams-feedlot-thi). */
    @Test
    void the_hottest_days_have_a_stage() {
      assertThat(((Figure.Words) figure(sheet(LIVE), "sun", "stage")).words())
          .isIn("alert", "danger", "emergency");
    }
  }

  @Nested
  class Past_the_usual_weight_and_besides_the_feed {
    /** 20 kg more than 110 kg are 3.6 mm more backfat (tas-2017 [read]). */
    @Test
    void what_twenty_kilos_more_add_in_backfat() {
      Band fat = ((Figure.Plain) figure(sheet(THREE), "slaughter", "heavier")).band();
      assertThat(fat.likely()).isCloseTo(3.6, within(0.05));
    }

    @Test
    void the_review_is_of_lean_pigs_only() {
      assertThat(rows(sheet(THREE.replace("modern-cross", "mangalitsa")), "slaughter", "heavier"))
          .isEmpty();
    }

    /** Whey: short of protein, lysine and minerals (trade press on by-products [read]). */
    @Test
    void what_whey_leaves_short_is_told() {
      Row extras =
          rows(
                  sheet(
                      THREE
                          .replace("18 kg", "30 kg")
                          .replace("kind: hand-fed", "kind: hand-fed, scraps: [whey]")),
                  "feed",
                  "extras")
              .get(0);
      assertThat(extras.note().text()).contains("protein").contains("lysine");
    }
  }
}
