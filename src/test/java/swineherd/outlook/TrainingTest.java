package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Band;

class TrainingTest {
  private static String pigs(String checkOn, String fence, String trained) {
    return """
        checkOn: %s
        pens: [{name: field, fence: %s}]
        pigs:
          - {name: weaners, count: 3, arrives: 2027-04-20, arrivalWeight: 18 kg, trained: %s}
        """
        .formatted(checkOn, fence, trained);
  }

  private static Training training(String checkOn, String trainingPen, String trained) {
    return Setups.one(
        Training.class,
        pigs(checkOn, "{kind: electric, trainingPen: " + trainingPen + "}", trained));
  }

  /** Check values TR01 and TR02: days judgement, dates derived. */
  @Test
  void TR02_pigs_that_come_20_April_may_be_turned_out_29_April() {
    Training training = training("2027-03-01", "yes", "no");
    assertThat(training.penReady()).isTrue();
    assertThat(training.days()).isEqualTo(new Band(3, 7, 14));
    assertThat(training.begin()).isEqualTo(LocalDate.of(2027, 4, 22));
    assertThat(training.earliest()).isEqualTo(LocalDate.of(2027, 4, 25));
    assertThat(training.likely()).isEqualTo(LocalDate.of(2027, 4, 29));
    assertThat(training.latest()).isEqualTo(LocalDate.of(2027, 5, 6));
    assertThat(training.by()).isEqualTo(LocalDate.of(2027, 4, 22));
  }

  /** That a week is enough to build it is judgement. */
  @Test
  void a_pen_that_is_not_there_is_to_be_built_a_week_before_they_come() {
    Training training = training("2027-03-01", "no", "no");
    assertThat(training.penReady()).isFalse();
    assertThat(training.by()).isEqualTo(LocalDate.of(2027, 4, 13));
    assertThat(training("2027-03-01", "unknown", "no").penReady()).isFalse();
  }

  @ParameterizedTest(name = "pen: {0}")
  @ValueSource(strings = {"yes", "no"})
  void pigs_that_are_there_begin_today(String pen) {
    Training training = training("2027-04-23", pen, "no");
    assertThat(training.by()).isEqualTo(LocalDate.of(2027, 4, 23));
  }

  @Test
  void days_that_have_passed_untrained_are_counted_anew() {
    Training training = training("2027-06-01", "yes", "no");
    assertThat(training.begin()).isEqualTo(LocalDate.of(2027, 6, 1));
    assertThat(training.likely()).isEqualTo(LocalDate.of(2027, 6, 8));
  }

  /** 10 m2 for two pigs and 20 for five are judgement; three lie between. */
  @Test
  void the_pen_has_room_for_the_group_and_a_wire_at_the_snout() {
    Training training = training("2027-03-01", "no", "no");
    assertThat(training.area()).isCloseTo(13.3, within(0.1));
    // smallholders' press, UK [read]: 8 in, 20 cm
    assertThat(0.20).isBetween(training.nose().low(), training.nose().high());
  }

  /** Judgement. */
  @Test
  void what_is_not_known_is_less_likely_and_least_of_pigs_that_have_long_been_there() {
    double untrained = training("2027-03-01", "no", "no").chance();
    double unknown = training("2027-03-01", "no", "unknown").chance();
    double longThere = training("2027-06-01", "no", "unknown").chance();
    assertThat(untrained).isGreaterThan(unknown);
    assertThat(unknown).isGreaterThan(longThere);
    assertThat(training("2027-06-01", "no", "no").chance()).isEqualTo(longThere);
  }

  /** Two days until the wire is live and 14 at the longest; judgement. */
  @Test
  void after_sixteen_days_behind_a_wire_they_may_know_it_unless_it_is_dead_or_they_just_moved() {
    String setup = pigs("%s", "{kind: electric, endVoltage: %s}", "no");
    assertThat(longThere(setup.formatted("2027-05-06", "unknown"))).isFalse();
    assertThat(longThere(setup.formatted("2027-05-07", "unknown"))).isTrue();
    assertThat(longThere(setup.formatted("2027-05-07", "4 kV"))).isTrue();
    assertThat(longThere(setup.formatted("2027-05-07", "1 kV"))).isFalse();
    String moved = "diary: [{on: 2027-05-01, pigs: weaners, did: moved, pen: field}]\n";
    assertThat(longThere(setup.formatted("2027-05-07", "unknown") + moved)).isFalse();
    assertThat(longThere(setup.formatted("2027-05-18", "unknown") + moved)).isTrue();
  }

  private static boolean longThere(String setup) {
    return Setups.one(Training.class, setup).longThere();
  }

  @Test
  void nobody_is_trained_who_is_trained_already_or_has_something_solid_around() {
    assertThat(Setups.all(Training.class, pigs("2027-03-01", "{kind: electric}", "yes"))).isEmpty();
    assertThat(Setups.all(Training.class, pigs("2027-03-01", "{kind: both}", "no"))).isEmpty();
    assertThat(Setups.all(Training.class, pigs("2027-03-01", "{kind: solid}", "no"))).isEmpty();
  }
}
