package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is normal of a pig, when to vaccinate, and what the diary tells of a death. */
class RoutineOutlooksTest {
  private static final String PIGS =
      """
      checkOn: 2027-06-01
      place: {country: england, latitude: 51 N}
      pens: [{name: field, area: 900 m2, ground: moved-pasture}]
      pigs:
        - {name: pigs, pen: field, count: 3, breed: commercial-cross, arrives: 2027-04-24,
           ageOnArrival: 8 weeks}
      """;

  /**
   * V01, V04: slaughter pigs 39.3 +- 0.3 C (Acta Veterinaria Scandinavica 2015, read), pot-bellied
   * pigs 37.6 +- 0.8 (Journal of the AVMA 1999, read).
   */
  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "commercial-cross, 39.0 to 39.6 C (102.2 to 103.3 F), 20 to 40 breaths a minute, 40.0 C (104.0 F)",
    "pot-bellied, 36.8 to 38.4 C (98.2 to 101.1 F), breathing without effort, 39.7 C (103.5 F)"
  })
  void V01_what_is_normal(String breed, String normal, String breathing, String fever) {
    DailyLook look = Setups.one(DailyLook.class, PIGS.replace("commercial-cross", breed));
    assertThat(look.normal()).isEqualTo(normal);
    assertThat(look.breathing()).isEqualTo(breathing);
    assertThat(look.fever()).isEqualTo(fever);
  }

  /** Arrivals are watched for 30 days: judgement between 2 weeks and 60 days [read]. */
  @ParameterizedTest(name = "on {0}: settled {1}")
  @CsvSource({"2027-05-23, false", "2027-05-24, true"})
  void settled_after_the_month_of_arrival(String today, boolean settled) {
    DailyLook look = Setups.one(DailyLook.class, PIGS.replace("2027-06-01", today));
    assertThat(look.settled()).isEqualTo(settled);
  }

  /**
   * What a piglet has from its sow against erysipelas lasts to about twelve weeks (veterinary
   * clinic, read); two doses three to five weeks apart from eight to twelve weeks [memory].
   */
  @Test
  void days_of_vaccination() {
    Vaccination vaccination =
        Setups.one(Vaccination.class, PIGS.replace("2027-06-01", "2027-03-01"));
    assertThat(vaccination.first()).isEqualTo("8 to 12 weeks");
    assertThat(vaccination.gap()).isEqualTo("3 to 5 weeks");
    // born 27 February
    assertThat(vaccination.until()).endsWith("22 May 2027");
    assertThat(vaccination.by()).isEqualTo(LocalDate.of(2027, 4, 24));
  }

  @Test
  void pigs_that_came_long_ago_or_live_on_a_floor_are_not_asked_about() {
    assertThat(Setups.all(Vaccination.class, PIGS)).isEmpty();
    String floor = PIGS.replace("moved-pasture", "concrete").replace("2027-06-01", "2027-03-01");
    assertThat(Setups.all(Vaccination.class, floor)).isEmpty();
  }

  @ParameterizedTest(name = "died on {0}: {1}")
  @CsvSource({"2027-06-01, 1", "2027-05-26, 1", "2027-05-25, 0"})
  void a_death_is_news_for_a_week(String on, int told) {
    String died = PIGS + "diary: [{on: %s, pigs: pigs, did: died}]\n".formatted(on);
    assertThat(Setups.all(DeadPig.class, died)).hasSize(told);
  }

  @Test
  void two_weeks_before_the_first_pigs_people_and_papers_should_be_settled() {
    Keeping coming = Setups.one(Keeping.class, PIGS.replace("2027-06-01", "2027-03-01"));
    assertThat(coming.here()).isFalse();
    assertThat(coming.by()).isEqualTo(LocalDate.of(2027, 4, 10));
    assertThat(Setups.one(Keeping.class, PIGS).by()).isNull();
    // 400 m, planning pages of AHDB (read); five years, Regulation (EU) 2019/6 (memory)
    assertThat(coming.planningDistance()).isEqualTo(400);
    assertThat(coming.medicineBook()).isEqualTo(1826);
  }

  /**
   * Lice and mange: a second treatment after 14 to 21 days, mites up to four weeks off the pig
   * (Pork Industry Handbook 40 and Mississippi State extension, read).
   */
  @Test
  void lice_and_mange_are_treated_twice_before_the_withdrawal() {
    SkinCheck skin =
        Setups.one(
            SkinCheck.class,
            PIGS.replace("2027-06-01", "2027-03-01")
                .replace("8 weeks}", "8 weeks, source: auction, slaughterOn: 2027-09-20}"));
    assertThat(skin.repeatLow()).isEqualTo(14);
    assertThat(skin.repeatHigh()).isEqualTo(21);
    assertThat(skin.offPig()).isEqualTo(28);
    // the withdrawal, a day for safety, and three weeks between the treatments
    assertThat(skin.lastFirst())
        .isEqualTo(LocalDate.of(2027, 9, 20).minusDays(skin.longest() + 1 + 21));
  }
}
