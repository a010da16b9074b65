package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Taint.FatReading;
import swineherd.figures.Taint.Pig;
import swineherd.figures.Taint.Protection;
import swineherd.figures.Taint.Risk;
import swineherd.figures.Taint.RiskClass;
import swineherd.figures.Taint.Sex;
import swineherd.rulebook.Table;

class TaintTest {
  private static final LocalDate BORN = LocalDate.of(2025, 3, 1);

  private static Pig entire(Double ageDays, Double weightKg) {
    return new Pig(Sex.ENTIRE, ageDays, weightKg, false, false, false);
  }

  /** Worked examples of our own classes [judgement], bounded by the surveys tested below. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "T01 entire 75 kg 16 weeks [judgement],      ENTIRE,   112, 75,  false, MODERATE",
    "T02 entire 110 kg 26 weeks [judgement],     ENTIRE,   182, 110, false, HIGH",
    "T03 entire 50 kg 14 weeks [judgement],      ENTIRE,   98,  50,  false, LOW",
    "T04 the same of an early breed [judgement], ENTIRE,   98,  50,  true,  MODERATE",
    "T05 entire 10 months [judgement],           ENTIRE,   304, ,    false, VERY_HIGH",
    "T06 castrate 110 kg 26 weeks [judgement],   CASTRATE, 182, 110, false, NONE",
    "light but old [judgement],                  ENTIRE,   200, 50,  false, HIGH",
    "young but heavy [judgement],                ENTIRE,   100, 100, false, HIGH",
    "just under each bound [judgement],          ENTIRE,   111, 59.9, false, LOW",
  })
  void the_class_is_the_worse_of_age_and_weight(
      String check, Sex sex, Double age, Double weight, boolean early, RiskClass expected) {
    Risk risk = Taint.risk(new Pig(sex, age, weight, early, false, false));
    assertThat(risk.riskClass()).isEqualTo(expected);
  }

  @Test
  void a_dirty_hot_bed_raises_a_male_once_and_gives_a_female_a_low_class() {
    assertThat(Taint.risk(new Pig(Sex.ENTIRE, 98.0, 50.0, true, true, false)).riskClass())
        .isEqualTo(RiskClass.MODERATE);
    assertThat(Taint.risk(new Pig(Sex.FEMALE, 182.0, 110.0, false, true, false)).riskClass())
        .isEqualTo(RiskClass.LOW);
  }

  @Test
  void a_male_used_for_mating_is_very_high_at_any_weight_or_none_known() {
    assertThat(Taint.risk(new Pig(Sex.ENTIRE, null, null, false, false, true)))
        .isEqualTo(new Risk(RiskClass.VERY_HIGH, false));
  }

  @Test
  void with_only_one_of_age_and_weight_the_class_is_a_least_one() {
    assertThat(Taint.risk(entire(null, 75.0))).isEqualTo(new Risk(RiskClass.MODERATE, true));
    assertThat(Taint.risk(entire(112.0, null))).isEqualTo(new Risk(RiskClass.MODERATE, true));
    assertThat(Taint.risk(entire(112.0, 75.0))).isEqualTo(new Risk(RiskClass.MODERATE, false));
  }

  @Test
  void an_entire_male_of_unknown_age_and_weight_gets_no_class() {
    assertThatIllegalArgumentException().isThrownBy(() -> Taint.risk(entire(null, null)));
  }

  @ParameterizedTest(name = "{0} days is refused")
  @ValueSource(doubles = {-1, Double.NaN})
  void an_impossible_age_is_refused(double age) {
    assertThatThrownBy(() -> Taint.risk(entire(age, 50.0)))
        .isInstanceOf(OutsideDomainException.class);
  }

  @Test
  void older_or_heavier_is_never_a_lower_class_seed_41() {
    Random random = new Random(41);
    for (int i = 0; i < 2000; i++) {
      double age = random.nextDouble() * 400;
      double weight = random.nextDouble() * 200;
      boolean early = random.nextBoolean();
      boolean dirty = random.nextBoolean();
      Pig pig = new Pig(Sex.ENTIRE, age, weight, early, dirty, false);
      Pig more =
          new Pig(
              Sex.ENTIRE,
              age + random.nextDouble() * 100,
              weight + random.nextDouble() * 50,
              early,
              dirty,
              false);
      assertThat(Taint.risk(more).riskClass())
          .as("%s against %s", more, pig)
          .isGreaterThanOrEqualTo(Taint.risk(pig).riskClass());
      assertThat(Taint.risk(pig).riskClass()).isNotEqualTo(RiskClass.NONE);
    }
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "T07 skatole over the usual limit of 0.25 (SLU course; J. Swine Health Prod. 5:151) [read],"
        + " 0.9, 0.30, TAINTED",
    "T08 androstenone over the strict limit of 0.5 (Livest. Prod. Sci. 2005) [read],"
        + " 0.6, 0.10, POSSIBLE",
    "androstenone 1.0 is at the usual limit [read], 1.0, 0.0, TAINTED",
    "skatole 0.20 is at the strict limit [read], 0.0, 0.20, POSSIBLE",
    "0.49 and 0.15 are under both (about 2 % still disliked it; Denmark 1996) [read],"
        + " 0.49, 0.15, UNDER_LIMITS",
  })
  void a_fat_sample_reads_by_the_two_limits(
      String check, double androstenone, double skatole, FatReading expected) {
    assertThat(Taint.reading(androstenone, skatole)).isEqualTo(expected);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "T09 young boars of 75 kg (Livest. Prod. Sci. 2005) [read],"
        + " MODERATE, androstenone_over_10_pct, 8.3",
    "the same over 0.5 ppm [read], MODERATE, androstenone_over_05_pct, 18.9",
    "the same skatole over 0.21 ppm [read], MODERATE, skatole_over_limit_pct, 13.0",
    "T10 six EU countries (SLU course) [read], HIGH, androstenone_over_10_pct, 30",
    "the same skatole over 0.25 ppm [read], HIGH, skatole_over_limit_pct, 11",
  })
  void a_class_knows_the_survey_behind_it(
      String check, RiskClass riskClass, String column, double percent) {
    assertThat(Taint.survey(riskClass).orElseThrow().number(column)).isEqualTo(percent);
  }

  @ParameterizedTest
  @EnumSource(
      value = RiskClass.class,
      names = {"NONE", "LOW", "VERY_HIGH"})
  void classes_outside_the_surveys_have_no_shares(RiskClass riskClass) {
    assertThat(Taint.survey(riskClass)).isEmpty();
  }

  @ParameterizedTest(
      name = "{0}: {1} % and {2} % over the limits [read], so {3} over one [derived]")
  @CsvSource({"MODERATE, 8.3, 13.0, 0.20", "HIGH, 30, 11, 0.38"})
  void the_chance_of_a_class_follows_from_its_survey(
      RiskClass riskClass, double androstenone, double skatole, double chance) {
    double either = 1 - (1 - androstenone / 100) * (1 - skatole / 100);
    assertThat(Taint.chance(riskClass)).isEqualTo(chance).isCloseTo(either, within(0.005));
  }

  @Test
  void the_chance_rises_with_the_class_and_is_nil_only_without_testes() {
    assertThat(Taint.chance(RiskClass.NONE)).isZero();
    double before = 0;
    for (RiskClass c : List.of(RiskClass.LOW, RiskClass.MODERATE, RiskClass.HIGH)) {
      assertThat(Taint.chance(c)).isGreaterThan(before);
      before = Taint.chance(c);
    }
    assertThat(Taint.chance(RiskClass.VERY_HIGH)).isGreaterThan(before).isLessThan(1);
  }

  @Test
  void a_class_without_a_survey_is_told_with_the_nearest() {
    assertThat(Taint.nearestSurvey(RiskClass.LOW))
        .isEqualTo(Taint.nearestSurvey(RiskClass.MODERATE));
    assertThat(Taint.nearestSurvey(RiskClass.VERY_HIGH))
        .isEqualTo(Taint.nearestSurvey(RiskClass.HIGH));
    assertThatIllegalArgumentException().isThrownBy(() -> Taint.nearestSurvey(RiskClass.NONE));
  }

  @Test
  void a_vet_must_begin_eight_weeks_before() {
    // 4 weeks between the injections and 4 before slaughter (SLU course) [read]; 8 weeks of
    // clearing [judgement]
    assertThat(Taint.vetLeadDays()).isEqualTo(56);
  }

  @Test
  void the_first_injection_is_taken_as_given_in_time_if_nobody_says() {
    LocalDate second = BORN.plusDays(84);
    assertThat(Taint.protection(BORN, second, second.plusDays(35)))
        .isEqualTo(Protection.AS_LABELLED);
    assertThat(Taint.protection(BORN.plusDays(1), second, second.plusDays(35)))
        .isEqualTo(Protection.NONE);
    assertThat(Taint.protection(null, second, second.plusDays(35)))
        .isEqualTo(Protection.AS_LABELLED);
  }

  @Test
  void a_late_castrate_waits_the_long_end_of_what_the_trade_waits() {
    // 8 and 12 weeks: judgement; common practice 4-8 and 8-12 weeks, no source.
    LocalDate cut = LocalDate.of(2025, 6, 1);
    assertThat(Taint.clearedOn(cut, false)).isEqualTo(LocalDate.of(2025, 7, 27));
    assertThat(Taint.clearedOn(cut, true)).isEqualTo(LocalDate.of(2025, 8, 24));
  }

  @ParameterizedTest(name = "T13 {0} {1} d (SLU course on entire males) [read]")
  @CsvSource({
    "vaccine-gap, 28",
    "vaccine-first-age, 56",
    "vaccine-second-latest, 28",
    "vaccine-second-earliest, 42",
    "vaccine-clear, 14",
    "vaccine-lasts, 70"
  })
  void the_vaccine_keeps_its_published_intervals(String key, double days) {
    assertThat(Table.named("taint-days").row(key).number("days")).isEqualTo(days);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "as the label says,            60, 30, 35, AS_LABELLED",
    "first at 55 days: too young,  55, 30, 35, NONE",
    "27 days between: too close,   60, 27, 35, NONE",
    "13 days before: not yet gone, 60, 30, 13, NONE",
    "20 days before: the vet says, 60, 30, 20, ASK_THE_VET",
    "60 days before: the vet says, 60, 30, 60, ASK_THE_VET",
    "71 days before: worn off,     60, 30, 71, NONE",
  })
  void two_injections_protect_only_as_given(
      String check, long firstAge, long gap, long before, Protection expected) {
    LocalDate first = BORN.plusDays(firstAge);
    LocalDate second = first.plusDays(gap);
    assertThat(Taint.protection(BORN, first, second, second.plusDays(before))).isEqualTo(expected);
  }
}
