package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Taint.RiskClass;
import swineherd.setup.Setup;
import swineherd.setup.SetupReader;

/**
 * Dates worked out by hand from the intervals of the tables: class bounds of 16 and 24 weeks
 * [judgement between Livest. Prod. Sci. 2005 and the SLU course]; vaccine 4 to 6 weeks before
 * slaughter, gone after 10 (SLU course) [read]; boars fertile by 5 months (Pennsylvania) [read];
 * pregnancy of 114 days (universal).
 */
class TaintOutlookTest {
  private static final LocalDate BORN = LocalDate.of(2025, 3, 1);

  /** Pigs born on 1 March 2025 that came at nine weeks; checked the day after. */
  private static Setup setup(String... lines) {
    String text =
        """
        checkOn: 2025-05-04
        pens: [{name: yard}, {name: orchard}]
        pigs:
          - name: weaners
            pen: yard
            breed: commercial-cross
            born: 2025-03-01
            arrives: 2025-05-03
            arrivalWeight: 20 kg
        """
            + String.join("", List.of(lines).stream().map(l -> "    " + l + "\n").toList());
    return SetupReader.read("test.yaml", text, LocalDate.of(2025, 5, 4)).setup();
  }

  private static <T> List<T> outlooks(Class<T> kind, String... lines) {
    return Outlooks.of(setup(lines)).stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  private static TaintRisk risk(String... lines) {
    return outlooks(TaintRisk.class, lines).get(0);
  }

  private static Litter litter(String... lines) {
    return outlooks(Litter.class, lines).get(0);
  }

  @Test
  void a_slow_breed_leaves_the_lower_class_at_24_weeks_of_age() {
    // Mangalitsa stay far below 100 kg until then: 1 March + 168 d = 16 August, the day before it
    TaintRisk risk =
        risk("sex: males", "males: entire", "crossedWith: mangalitsa", "slaughterOn: 2025-09-13");
    assertThat(risk.riskClass()).isEqualTo(RiskClass.HIGH);
    assertThat(risk.lowerUntil()).isEqualTo(LocalDate.of(2025, 8, 15));
    assertThat(risk.lowerWeight().likely()).isLessThan(100);
    // nine months (274 d) is 30 November
    assertThat(risk.until()).isEqualTo(LocalDate.of(2025, 11, 29));
  }

  @Test
  void the_first_choice_to_be_lost_is_the_vets_lead_of_eight_weeks() {
    // 13 September - 56 d (4 weeks between injections and 4 before slaughter; SLU course [read])
    TaintRisk risk = risk("sex: males", "males: entire", "slaughterOn: 2025-09-13");
    assertThat(risk.vetLead()).isEqualTo(56);
    assertThat(risk.decideBy()).isEqualTo(LocalDate.of(2025, 7, 19));
  }

  @Test
  void a_fast_pig_leaves_the_lower_class_by_its_weight() {
    TaintRisk risk = risk("sex: males", "males: entire", "targetWeight: 115 kg");
    assertThat(risk.riskClass()).isEqualTo(RiskClass.HIGH);
    Course course = outlooks(Course.class, "sex: males", "males: entire").get(0);
    assertThat(risk.lowerUntil()).isBeforeOrEqualTo(BORN.plusDays(167));
    assertThat(course.weightOn(risk.lowerUntil()).likely()).isLessThan(100);
  }

  @Test
  void the_day_set_counts_before_the_target() {
    TaintRisk risk =
        risk("sex: males", "males: entire", "targetWeight: 115 kg", "slaughterOn: 2025-06-14");
    // 15 weeks (105 d) and well under 60 kg
    assertThat(risk.riskClass()).isEqualTo(RiskClass.LOW);
    assertThat(risk.lowerUntil()).isNull();
    assertThat(risk.weight()).isLessThan(60);
  }

  @Test
  void without_age_and_arrival_the_weight_alone_makes_a_least_class() {
    Setup setup =
        SetupReader.read(
                "test.yaml",
                "pigs: [{name: a, sex: males, males: entire, targetWeight: 75 kg}]",
                LocalDate.of(2025, 5, 4))
            .setup();
    TaintRisk risk =
        TaintRisk.of(setup, List.of()).stream().map(TaintRisk.class::cast).findFirst().get();
    assertThat(risk.className()).isEqualTo("at least moderate");
    assertThat(risk.lowerUntil()).isNull();
    assertThat(risk.askBy()).isNull();
    assertThat(risk.here()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"breed: kunekune", "crossedWith: pot-bellied", "crossedWith: meishan"})
  void early_breeds_and_their_crosses_are_a_class_higher(String breed) {
    String[] lines = {"sex: males", "males: entire", "slaughterOn: 2025-06-07"};
    // 14 weeks: low for an ordinary breed
    assertThat(risk(lines).riskClass()).isEqualTo(RiskClass.LOW);
    assertThat(earlyRisk(breed, lines).riskClass()).isEqualTo(RiskClass.MODERATE);
  }

  private static TaintRisk earlyRisk(String breed, String... lines) {
    if (breed.startsWith("breed")) {
      String text =
          """
          checkOn: 2025-05-04
          pigs:
            - {name: weaners, %s, born: 2025-03-01, arrives: 2025-05-03, arrivalWeight: 8 kg,
               %s}
          """
              .formatted(breed, String.join(", ", lines));
      Setup setup = SetupReader.read("test.yaml", text, LocalDate.of(2025, 5, 4)).setup();
      return Outlooks.of(setup).stream()
          .filter(TaintRisk.class::isInstance)
          .map(TaintRisk.class::cast)
          .findFirst()
          .orElseThrow();
    }
    return risk(lines[0], lines[1], lines[2], breed);
  }

  @Test
  void pigs_past_their_forecast_are_judged_as_they_are_today() {
    String text =
        """
        checkOn: %s
        pigs:
          - {name: weaners, breed: commercial-cross, born: 2025-03-01, arrives: 2025-05-03,
             arrivalWeight: 20 kg, targetWeight: 105 kg, sex: mixed, males: entire%s}
        """;
    // nine months (274 d) is 30 November; to 105 kg the forecast ends in August
    List<Outlook> now = outlooksOf(text.formatted("2026-01-10", ""));
    TaintRisk risk = only(TaintRisk.class, now);
    assertThat(risk.day()).isEqualTo(LocalDate.of(2026, 1, 10));
    assertThat(risk.riskClass()).isEqualTo(RiskClass.VERY_HIGH);
    // a litter was possible from 20 November (T15 [judgement]), so it is from today
    Litter litter = only(Litter.class, now);
    assertThat(litter.possible()).isTrue();
    assertThat(litter.farrowing()).isEqualTo(LocalDate.of(2026, 1, 10));
    assertThat(litter.pregnant()).isEqualTo(114);
    assertThat(litter.chance()).isGreaterThan(0.9);
    assertThat(outlooksOf(text.formatted("2026-01-10", ", slaughterOn: 2026-01-09")))
        .noneMatch(TaintRisk.class::isInstance)
        .noneMatch(Litter.class::isInstance);
  }

  @Test
  void gilts_may_be_in_pig_by_males_that_have_gone() {
    String text =
        """
        checkOn: 2025-09-01
        pens: [{name: yard}]
        pigs:
          - {name: boars, pen: yard, breed: landrace, sex: males, males: entire, born: 2025-03-01,
             arrives: 2025-05-03, arrivalWeight: 20 kg, slaughterOn: %s}
          - {name: gilts, pen: yard, breed: landrace, sex: gilts, born: 2025-03-01,
             arrives: 2025-05-03, arrivalWeight: 20 kg, targetWeight: 140 kg}
        """;
    // conception from 29 July (T15 [judgement])
    assertThat(only(Litter.class, outlooksOf(text.formatted("2025-08-20"))).conception())
        .isEqualTo(LocalDate.of(2025, 7, 29));
    assertThat(outlooksOf(text.formatted("2025-07-20"))).noneMatch(Litter.class::isInstance);
  }

  private static List<Outlook> outlooksOf(String text) {
    return List.copyOf(
        Outlooks.of(SetupReader.read("test.yaml", text, LocalDate.of(2025, 5, 4)).setup()));
  }

  private static <T> T only(Class<T> kind, List<Outlook> all) {
    List<T> of = all.stream().filter(kind::isInstance).map(kind::cast).toList();
    assertThat(of).hasSize(1);
    return of.get(0);
  }

  @Test
  void nothing_is_said_of_gilts_or_of_castrated_males() {
    assertThat(outlooks(TaintRisk.class, "sex: gilts")).isEmpty();
    assertThat(outlooks(TaintRisk.class, "sex: mixed", "males: castrated")).isEmpty();
  }

  @Test
  void males_of_which_nobody_knows_count_as_entire_and_the_question_is_due_today() {
    TaintRisk risk = risk("targetWeight: 110 kg");
    assertThat(risk.males()).isNull();
    assertThat(risk.riskClass()).isEqualTo(RiskClass.HIGH);
    assertThat(risk.askBy()).isEqualTo(LocalDate.of(2025, 5, 4));
  }

  @Test
  void never_separated_the_first_litter_comes_in_november() {
    // T15 [judgement] worked example: conception from 29 July, litter from 20 November, and at 28
    // weeks, on 13 September, up to 46 days in pig.
    Litter litter = litter("sex: mixed", "males: entire", "slaughterOn: 2025-09-13");
    // T14: apart by 16 weeks, 112 d
    assertThat(litter.separateBy()).isEqualTo(LocalDate.of(2025, 6, 21));
    assertThat(litter.conception()).isEqualTo(LocalDate.of(2025, 7, 29));
    assertThat(litter.farrowing()).isEqualTo(LocalDate.of(2025, 11, 20));
    assertThat(litter.pregnant()).isEqualTo(46);
    assertThat(litter.possible()).isFalse();
    // 196 d against a mean of 192.5 d, midway between 182 with and 203 without a boar [read]
    assertThat(litter.chance()).isBetween(0.5, 0.7);
  }

  @ParameterizedTest(name = "no litter: {0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "they go the day she could conceive | mixed | entire | slaughterOn: 2025-07-29",
        "castrated as piglets | mixed | castrated | castratedOn: 2025-03-05",
        "castrated, no day said | mixed | castrated | slaughterOn: 2025-09-13",
        "nobody knows of the males | mixed | unknown | slaughterOn: 2025-09-13",
        "no gilts among them | males | entire | slaughterOn: 2025-09-13",
      })
  void a_litter_needs_a_male_a_gilt_and_time(String why, String sex, String males, String more) {
    assertThat(outlooks(Litter.class, "sex: " + sex, "males: " + males, more)).isEmpty();
  }

  @Test
  void a_vaccine_that_wears_off_leaves_time_for_a_litter() {
    // second on 1 July: works from 15 July, before the 29th, until 9 September (10 weeks) [read]
    String[] vaccinated = {"sex: mixed", "males: vaccinated", "secondVaccine: 2025-07-01", ""};
    vaccinated[3] = "slaughterOn: 2025-08-05";
    assertThat(outlooks(Litter.class, vaccinated)).isEmpty();
    vaccinated[3] = "slaughterOn: 2025-10-01";
    assertThat(litter(vaccinated).conception()).isEqualTo(LocalDate.of(2025, 9, 10));
    // a second injection on 20 July works from 3 August: too late
    vaccinated[2] = "secondVaccine: 2025-07-20";
    assertThat(litter(vaccinated).conception()).isEqualTo(LocalDate.of(2025, 7, 29));
  }

  @Test
  void two_groups_in_one_pen_breed_once_both_are_old_enough_and_have_met() {
    String boars =
        """
        checkOn: 2025-05-04
        pens: [{name: yard}, {name: orchard}]
        pigs:
          - {name: boars, pen: yard, breed: landrace, sex: males, males: entire,
             born: 2024-09-01, arrives: 2025-05-03, arrivalWeight: 90 kg, slaughterOn: 2025-10-01}
          - {name: gilts, pen: %s, breed: landrace, sex: gilts,
             born: 2025-03-01, arrives: %s, arrivalWeight: 20 kg, slaughterOn: 2025-09-13}
        """;
    // the boars are seven months old; the gilts are old enough on 29 July
    Litter litter = litterOf(boars.formatted("yard", "2025-05-03")).get(0);
    assertThat(litter.gilts()).isEqualTo("gilts");
    assertThat(litter.males()).isEqualTo("boars");
    assertThat(litter.conception()).isEqualTo(LocalDate.of(2025, 7, 29));
    // the boars are past 16 weeks already: never put them together, from the day they meet
    assertThat(litter.separateBy()).isEqualTo(LocalDate.of(2025, 5, 4));
    assertThat(litterOf(boars.formatted("yard", "2025-08-10")).get(0).conception())
        .isEqualTo(LocalDate.of(2025, 8, 10));
    assertThat(litterOf(boars.formatted("orchard", "2025-05-03"))).isEmpty();
  }

  private static List<Litter> litterOf(String text) {
    Setup setup = SetupReader.read("test.yaml", text, LocalDate.of(2025, 5, 4)).setup();
    return Outlooks.of(setup).stream()
        .filter(Litter.class::isInstance)
        .map(Litter.class::cast)
        .toList();
  }

  @ParameterizedTest(name = "cut {0}, goes {1}: {2}")
  @CsvSource({
    // 56 d (young) and 84 d (mature); the trade waits 4-8 and 8-12 weeks (common practice)
    "2025-05-10, 2025-07-04, 2025-07-05",
    "2025-05-10, 2025-07-05,",
    "2025-04-25, 2025-06-01,",
    "2025-12-01, 2026-02-01, 2026-02-23",
  })
  void late_castrates_wait_for_their_fat_to_clear(String cut, String goes, LocalDate clearedOn) {
    List<LateCastration> late =
        outlooks(
            LateCastration.class,
            "sex: males",
            "males: castrated",
            "castratedOn: " + cut,
            "slaughterOn: " + goes);
    assertThat(late)
        .extracting(LateCastration::clearedOn)
        .isEqualTo(clearedOn == null ? List.of() : List.of(clearedOn));
  }

  @ParameterizedTest(name = "second {0}, slaughter {1}: fits {2}")
  @CsvSource({
    "2025-07-01, 2025-07-29, true",
    "2025-07-01, 2025-08-12, true",
    "2025-07-01, 2025-07-28, false",
    "2025-07-01, 2025-08-13, false",
    // not before 8 + 4 weeks of age: 24 May
    "2025-05-23, 2025-06-25, false",
    "2025-05-24, 2025-06-25, true",
  })
  void the_second_vaccination_lies_four_to_six_weeks_before(
      String second, String slaughter, boolean fits) {
    TaintVaccine vaccine =
        outlooks(
                TaintVaccine.class,
                "sex: males",
                "males: vaccinated",
                "secondVaccine: " + second,
                "slaughterOn: " + slaughter)
            .get(0);
    assertThat(vaccine.fits()).isEqualTo(fits);
  }

  @Test
  void vaccinated_males_without_a_day_never_fit() {
    TaintVaccine vaccine =
        outlooks(TaintVaccine.class, "sex: males", "males: vaccinated", "secondVaccine: 2025-07-01")
            .get(0);
    assertThat(vaccine.fits()).isFalse();
    assertThat(vaccine.best().from()).isEqualTo(LocalDate.of(2025, 7, 29));
    assertThat(vaccine.best().to()).isEqualTo(LocalDate.of(2025, 8, 12));
    assertThat(vaccine.best().until()).isEqualTo(LocalDate.of(2025, 9, 9));
  }
}
