package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.FenceTraining.Need;
import swineherd.figures.FenceTraining.Pen;

class FenceTrainingTest {
  private static final Pen GOOD = new Pen(1.2, 15, 0.3, 0.2, OptionalDouble.of(4500), 2);

  @Test
  void TR01_training_takes_3_likely_7_up_to_14_days_judgement() {
    assertThat(FenceTraining.days()).isEqualTo(new Band(3, 7, 14));
  }

  @Test
  void TR02_pigs_come_20_April_and_may_go_out_29_April_derived() {
    var out = FenceTraining.turnOut(LocalDate.of(2027, 4, 20));
    assertThat(out.likely()).isEqualTo(LocalDate.of(2027, 4, 29));
    assertThat(out.earliest()).isEqualTo(LocalDate.of(2027, 4, 25));
    assertThat(out.latest()).isEqualTo(LocalDate.of(2027, 5, 6));
  }

  @Test
  void the_wire_goes_live_on_the_second_day_after_arrival_by_judgement() {
    assertThat(FenceTraining.wireOn(LocalDate.of(2027, 4, 20)))
        .isEqualTo(LocalDate.of(2027, 4, 22));
  }

  /** Smallholders' press, UK [read]: 8 in (20 cm). */
  @ParameterizedTest(name = "{0} kg")
  @ValueSource(doubles = {12, 15, 20, 30})
  void the_published_height_of_the_training_wire_meets_the_snout(double kg) {
    Band height = FenceTraining.wireHeight(kg);
    assertThat(0.20).isBetween(height.low(), height.high());
  }

  @ParameterizedTest(name = "{0} pigs: {1} m2 [judgement]")
  @CsvSource({"1, 10", "2, 10", "5, 20", "8, 32"})
  void a_pen_has_room_for_its_pigs(int pigs, double area) {
    assertThat(FenceTraining.area(pigs)).isEqualTo(area);
  }

  @Test
  void a_good_pen_lacks_nothing() {
    assertThat(FenceTraining.needs(GOOD, 3, 15)).isEmpty();
  }

  @Test
  void a_poor_pen_is_told_everything_it_lacks() {
    Pen poor = new Pen(0.9, 6, 0, 0.5, OptionalDouble.of(2500), 0.5);
    assertThat(FenceTraining.needs(poor, 3, 15))
        .containsExactlyInAnyOrder(
            Need.HIGHER_WALL,
            Need.MORE_ROOM,
            Need.WIRE_TO_MOVE_IN_OR_OUT,
            Need.WIRE_TO_MOVE_UP_OR_DOWN,
            Need.MORE_VOLTS,
            Need.WATER_FARTHER_FROM_WIRE);
  }

  @Test
  void volts_that_nobody_measured_are_to_be_measured() {
    Pen unmeasured = new Pen(1.2, 15, 0.3, 0.2, OptionalDouble.empty(), 2);
    assertThat(FenceTraining.needs(unmeasured, 3, 15)).containsExactly(Need.VOLTS_TO_MEASURE);
  }

  @Test
  void pigs_over_60_kg_want_a_stronger_wall_common_practice_no_source() {
    Pen pen = new Pen(1.2, 15, 0.3, 0.3, OptionalDouble.of(5000), 2);
    assertThat(FenceTraining.needs(pen, 3, 70)).containsExactly(Need.STRONGER_WALL);
  }

  @Test
  void a_negative_measure_is_refused() {
    assertThatExceptionOfType(OutsideDomainException.class)
        .isThrownBy(() -> new Pen(1.2, -1, 0.3, 0.2, OptionalDouble.empty(), 2));
  }
}
