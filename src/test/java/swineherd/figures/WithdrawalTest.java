package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Withdrawal.Basis;
import swineherd.figures.Withdrawal.Clearance;
import swineherd.figures.Withdrawal.Region;
import swineherd.figures.Withdrawal.Treatment;
import swineherd.setup.Country;
import swineherd.setup.DiaryEntry.Route;

class WithdrawalTest {
  private static final LocalDate OCTOBER_1 = LocalDate.of(2025, 10, 1);

  private static Treatment ivermectin(Double label, Double vet, boolean offLabel) {
    return new Treatment("ivermectin", Route.INJECTION, Region.US, OCTOBER_1, label, vet, offLabel);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "W01 fenbendazole feed US (21 CFR 558.258) [read], fenbendazole, FEED, US, 4, 4",
    "W02 ivermectin injection US (21 CFR 522.1192) [read], ivermectin, INJECTION, US, 18, 18",
    "W03 ivermectin premix US (21 CFR 558.300) [read], ivermectin, FEED, US, 5, 5",
    "W03 ivermectin premix UK (data sheet) [read], ivermectin, FEED, EU_UK, 12, 12",
    "W04 doramectin US (21 CFR 522.770) [read], doramectin, INJECTION, US, 24, 24",
    "W05 levamisole US 72 h (21 CFR 520.1242) [read], levamisole, WATER, US, 3, 3",
    "W06 pyrantel US 24 h (21 CFR 558.485) [read], pyrantel, FEED, US, 1, 1",
    "W07 piperazine US (21 CFR 520.1807) [read], piperazine, WATER, US, 21, 21",
    "W08 penicillin US 6 (21 CFR 522.1696b) [read] others 7 [memory],"
        + " penicillin-procaine, INJECTION, US, 6, 7",
    "W09 oxytetracycline 200 mg/mL US (21 CFR 522.1660) [read],"
        + " oxytetracycline-long-acting, INJECTION, US, 28, 28",
    "W10 oxytetracycline 100 mg/mL US (21 CFR 522.1662a) [read],"
        + " oxytetracycline hydrochloride, INJECTION, US, 22, 26",
    "W09 and W10: plain oxytetracycline may be either, oxytetracycline, INJECTION, US, 22, 28",
    "W11 tylosin US (21 CFR 522.2640) [read], tylosin, INJECTION, US, 14, 14",
    "W11 flunixin US (21 CFR 522.970) [read], flunixin, INJECTION, US, 12, 12",
    "chlortetracycline mix US (21 CFR 558.145) [read],"
        + " chlortetracycline-penicillin-sulfamethazine, FEED, US, 15, 15",
    "doramectin UK 77 (earlier 56) [memory], doramectin, INJECTION, EU_UK, 77, 77",
  })
  void the_table_prints(
      String check, String active, Route route, Region region, int low, int high) {
    assertThat(Withdrawal.tableDays(active, route, region)).hasValue(new DayRange(low, high));
  }

  @Test
  void w15_some_penicillins_are_not_for_pigs() {
    // 21 CFR 522.1696a, c [read].
    assertThat(
            Withdrawal.notLabelledForPigs(
                "penicillin-benzathine-procaine", Route.INJECTION, Region.US))
        .isTrue();
    assertThat(Withdrawal.notLabelledForPigs("penicillin-in-oil", Route.INJECTION, Region.US))
        .isTrue();
    assertThat(Withdrawal.notLabelledForPigs("penicillin-procaine", Route.INJECTION, Region.US))
        .isFalse();
    Clearance clearance =
        Withdrawal.clearance(
            new Treatment(
                "penicillin-benzathine-procaine",
                Route.INJECTION,
                Region.US,
                OCTOBER_1,
                30.0,
                null,
                false));
    assertThat(clearance).isEqualTo(new Clearance(null, null, Basis.ASK_THE_VET, false));
  }

  @Test
  void w12_the_first_day_is_one_after_the_label_allows() {
    // 18 days (21 CFR 522.1192 [read]) end on 19 October; one safety day [judgement].
    Clearance clearance = Withdrawal.clearance(ivermectin(18.0, null, false));
    assertThat(clearance)
        .isEqualTo(new Clearance(LocalDate.of(2025, 10, 20), 18, Basis.LABEL_OR_VET, false));
  }

  @Test
  void w13_the_last_dose_before_a_booked_slaughter() {
    // Doramectin 24 days (21 CFR 522.770 [read]) and the safety day [judgement].
    assertThat(Withdrawal.latestLastDose(LocalDate.of(2025, 11, 1), 24))
        .isEqualTo(LocalDate.of(2025, 10, 7));
  }

  @Test
  void w14_hours_round_up_to_days() {
    assertThat(Withdrawal.daysFromHours(72)).isEqualTo(3);
    assertThat(Withdrawal.daysFromHours(73)).isEqualTo(4);
    assertThat(Withdrawal.earliestSlaughter(OCTOBER_1, Withdrawal.daysFromHours(72)))
        .isEqualTo(LocalDate.of(2025, 10, 5));
    assertThat(Withdrawal.earliestSlaughter(OCTOBER_1, 2.1)).isEqualTo(LocalDate.of(2025, 10, 5));
  }

  @Test
  void w16_the_cascade_asks_for_28_days_or_half_as_long_again() {
    // Veterinary Medicines Regulations 2013, schedule 4 paragraph 2 [read].
    assertThat(Withdrawal.cascadeMinimum(OptionalDouble.empty())).isEqualTo(28);
    assertThat(Withdrawal.cascadeMinimum(OptionalDouble.of(21))).isEqualTo(32);
    Clearance clearance =
        Withdrawal.clearance(
            new Treatment("x", Route.INJECTION, Region.EU_UK, OCTOBER_1, null, 20.0, true));
    assertThat(clearance)
        .isEqualTo(new Clearance(LocalDate.of(2025, 10, 30), 28, Basis.LABEL_OR_VET, true));
  }

  @Test
  void a_label_shorter_than_the_table_is_flagged_and_the_longer_counts() {
    Clearance clearance = Withdrawal.clearance(ivermectin(8.0, null, false));
    assertThat(clearance.shorterThanTable()).isTrue();
    assertThat(clearance.days()).isEqualTo(18);
  }

  @Test
  void a_label_longer_than_the_table_is_taken_as_it_is() {
    Clearance clearance = Withdrawal.clearance(ivermectin(28.0, null, false));
    assertThat(clearance.shorterThanTable()).isFalse();
    assertThat(clearance.days()).isEqualTo(28);
  }

  @Test
  void the_longer_of_label_and_vet_counts() {
    assertThat(Withdrawal.clearance(ivermectin(18.0, 30.0, false)).days()).isEqualTo(30);
    assertThat(Withdrawal.clearance(ivermectin(35.0, 30.0, false)).days()).isEqualTo(35);
  }

  @Test
  void without_a_label_the_table_stands_in_where_it_can() {
    assertThat(Withdrawal.clearance(ivermectin(null, null, false)).basis()).isEqualTo(Basis.TABLE);
    Treatment british =
        new Treatment("ivermectin", Route.FEED, Region.EU_UK, OCTOBER_1, null, null, false);
    assertThat(Withdrawal.clearance(british))
        .isEqualTo(new Clearance(null, null, Basis.READ_THE_LABEL, false));
    Treatment unprinted =
        new Treatment("dichlorvos", Route.FEED, Region.US, OCTOBER_1, null, null, false);
    assertThat(Withdrawal.clearance(unprinted).basis()).isEqualTo(Basis.READ_THE_LABEL);
  }

  @Test
  void penicillin_without_a_label_takes_the_longer_of_the_two_printed() {
    // W08: labels say 6 (21 CFR 522.1696b [read]) or 7 [memory].
    Treatment penicillin =
        new Treatment(
            "penicillin-procaine", Route.INJECTION, Region.US, OCTOBER_1, null, null, false);
    assertThat(Withdrawal.clearance(penicillin).days()).isEqualTo(7);
  }

  @Test
  void an_unknown_product_or_one_used_off_its_label_has_no_date() {
    Treatment unknown =
        new Treatment(null, Route.INJECTION, Region.US, OCTOBER_1, null, null, false);
    assertThat(Withdrawal.clearance(unknown).basis()).isEqualTo(Basis.ASK_THE_VET);
    Treatment vetKnows =
        new Treatment(null, Route.INJECTION, Region.US, OCTOBER_1, null, 14.0, false);
    assertThat(Withdrawal.clearance(vetKnows).date()).isEqualTo(LocalDate.of(2025, 10, 16));
    Clearance offLabel = Withdrawal.clearance(ivermectin(18.0, null, true));
    assertThat(offLabel).isEqualTo(new Clearance(null, null, Basis.ASK_THE_VET, false));
    assertThat(Withdrawal.clearance(ivermectin(18.0, 60.0, true)).days()).isEqualTo(60);
  }

  @Test
  void an_unknown_route_allows_for_every_route() {
    // 5 in feed (21 CFR 558.300) and 18 by injection (21 CFR 522.1192) [read].
    assertThat(Withdrawal.tableDays(" Ivermectin", null, Region.US)).hasValue(new DayRange(5, 18));
    assertThat(
            Withdrawal.clearance(
                    new Treatment("ivermectin", null, Region.US, OCTOBER_1, null, null, false))
                .days())
        .isEqualTo(18);
  }

  @ParameterizedTest
  @CsvSource({"UNITED_STATES, US", "SCOTLAND, EU_UK", "OTHER_EU, EU_UK", "CANADA, ELSEWHERE"})
  void a_country_belongs_to_a_region(Country country, Region region) {
    assertThat(Region.of(country)).isEqualTo(region);
    assertThat(Region.of(null)).isEqualTo(Region.ELSEWHERE);
  }

  @Test
  void an_unknown_last_dose_has_no_date() {
    Treatment undated =
        new Treatment("ivermectin", Route.INJECTION, Region.US, null, 18.0, null, false);
    assertThat(Withdrawal.clearance(undated).basis()).isEqualTo(Basis.LAST_DOSE_UNKNOWN);
  }

  @Test
  void of_several_courses_the_latest_date_decides_and_one_without_a_date_blocks() {
    Treatment pyrantel =
        new Treatment("pyrantel", Route.FEED, Region.US, OCTOBER_1.plusDays(10), 1.0, null, false);
    Treatment ivermectin = ivermectin(18.0, null, false);
    assertThat(Withdrawal.clearance(List.of(ivermectin, pyrantel)))
        .hasValue(Withdrawal.clearance(ivermectin));
    Treatment unknown = new Treatment(null, null, null, OCTOBER_1, null, null, false);
    assertThat(Withdrawal.clearance(List.of(ivermectin, unknown, pyrantel)).orElseThrow().date())
        .isNull();
    assertThat(Withdrawal.clearance(List.of())).isEmpty();
  }

  @ParameterizedTest(name = "{0} days are refused")
  @CsvSource({"-1", "NaN", "401"})
  void impossible_days_are_refused(double days) {
    assertThatThrownBy(() -> Withdrawal.clearance(ivermectin(days, null, false)))
        .isInstanceOf(OutsideDomainException.class);
  }

  @Test
  void a_later_dose_or_longer_days_never_give_an_earlier_date_seed_44() {
    Random random = new Random(44);
    Route[] routes = Route.values();
    Region[] regions = Region.values();
    String[] actives = {"ivermectin", "fenbendazole", "oxytetracycline", "something-else"};
    for (int i = 0; i < 2000; i++) {
      double label = random.nextDouble() * 60;
      Treatment t =
          new Treatment(
              actives[random.nextInt(actives.length)],
              routes[random.nextInt(routes.length)],
              regions[random.nextInt(regions.length)],
              OCTOBER_1.plusDays(random.nextInt(100)),
              label,
              null,
              false);
      if (Withdrawal.notByThatRoute(t.active(), t.route(), t.region())) {
        assertThat(Withdrawal.clearance(t).basis()).isEqualTo(Basis.ASK_THE_VET);
        continue;
      }
      Treatment later =
          new Treatment(
              t.active(),
              t.route(),
              t.region(),
              t.lastDose().plusDays(random.nextInt(50)),
              label + random.nextDouble() * 10,
              null,
              false);
      Clearance clearance = Withdrawal.clearance(t);
      assertThat(Withdrawal.clearance(later).date())
          .as("%s against %s", later, t)
          .isAfterOrEqualTo(clearance.date());
      assertThat(Withdrawal.clearance(List.of(t, later)).orElseThrow().date())
          .isAfterOrEqualTo(clearance.date());
      assertThat(Withdrawal.latestLastDose(clearance.date(), clearance.days()))
          .isEqualTo(t.lastDose());
    }
  }

  @Test
  void another_route_than_any_label_has_is_for_the_vet() {
    // 21 CFR 522.1192 and 558.300 [read] are all there is of ivermectin for pigs: injection, feed.
    Treatment pourOn =
        new Treatment("ivermectin", Route.POUR_ON, Region.US, OCTOBER_1, 48.0, null, false);
    assertThat(Withdrawal.clearance(pourOn))
        .isEqualTo(new Clearance(null, null, Basis.ASK_THE_VET, false));
    // The European rows are too few to say so: there the pack that was typed counts.
    Treatment european =
        new Treatment("fenbendazole", Route.WATER, Region.EU_UK, OCTOBER_1, 4.0, null, false);
    assertThat(Withdrawal.clearance(european).date()).isEqualTo(LocalDate.of(2025, 10, 6));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "doramectin 24 (21 CFR 522.770) [read] is the longest of the United States, US, 24",
    "doramectin 77 (UK data sheet) [memory] is the longest of Europe, EU_UK, 77",
    "where nothing is known the longest anywhere counts [judgement], ELSEWHERE, 77",
  })
  void the_longest_withdrawal_of_what_is_given_against_worms(
      String check, Region region, int days) {
    assertThat(Withdrawal.longestForWorms(region)).isEqualTo(days);
  }

  @Test
  void what_is_given_against_worms_is_told_from_the_rest() {
    assertThat(Withdrawal.isForWorms("Fenbendazole")).isTrue();
    assertThat(Withdrawal.isForWorms("oxytetracycline")).isFalse();
    assertThat(Withdrawal.isForWorms("something-else")).isFalse();
    assertThat(Withdrawal.isForWorms(null)).isFalse();
  }

  @Test
  void labels_are_told_by_the_way_it_is_given() {
    // 21 CFR 522.1192 and 558.300 [read]; fenbendazole 3-10 by product [memory].
    assertThat(Withdrawal.labels("ivermectin", Region.US))
        .isEqualTo("18 days by injection, 5 days in feed");
    assertThat(Withdrawal.labels("pyrantel", Region.US)).isEqualTo("1 day in feed");
    assertThat(Withdrawal.labels("fenbendazole", Region.EU_UK)).isEqualTo("3 to 10 days in feed");
    assertThat(Withdrawal.labels("ivermectin", Region.ELSEWHERE)).isEmpty();
  }

  @Test
  void two_words_are_an_active_of_the_table_too() {
    assertThat(Withdrawal.tableDays("Penicillin procaine", Route.INJECTION, Region.US))
        .hasValue(new DayRange(6, 7));
  }

  @Test
  void use_off_the_label_is_hardly_longer_than_half_as_long_again() {
    // 1.5 times the longest label is the least a vet may set (Veterinary Medicines Regulations
    // 2013 [read]); taken here as what to reckon with [judgement].
    assertThat(Withdrawal.hardlyLonger("ivermectin", Region.EU_UK)).isEqualTo(42);
    assertThat(Withdrawal.hardlyLonger(null, Region.US)).isEqualTo(116);
  }

  @Test
  void two_weeks_late_eat_fourteen_days_of_finisher_feed() {
    // About 7 lb a day each: common practice, no source; 14 x 7 = 98 lb.
    assertThat(Withdrawal.extraFeed(14)).isCloseTo(98 * 0.45359237, within(0.5));
  }
}
