package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

/** What moves and deaths in the diary make of the rest; the days are counted by hand. */
class SinceTest {
  private static final String PIGS =
      """
      pens:
        - {name: yard, pigsBefore: no}
        - {name: back field, pigsBefore: no}
        - {name: top}
      pigs:
        - {name: weaners, pen: yard, count: 4, arrives: 2027-05-01}
        - {name: gilts, pen: top, count: 2, arrives: 2027-05-01}
      """;

  private static Setup on(String day, String diary) {
    return SetupReader.read("p.yaml", PIGS + "diary:\n" + diary, LocalDate.parse(day)).setup();
  }

  @Test
  void a_group_that_was_moved_stands_in_the_new_pen_and_the_old_one_rests() {
    Setup setup =
        on("2027-07-01", "- {on: 2027-06-01, pigs: weaners, did: moved, pen: back field}");
    assertThat(setup.group("weaners").orElseThrow().pen()).isEqualTo("back field");
    assertThat(setup.pen("yard").orElseThrow().pigsBefore()).isTrue();
    assertThat(setup.pen("yard").orElseThrow().restedFor()).isEqualTo(30); // the days of June
    assertThat(setup.pen("back field").orElseThrow().pigsBefore()).isFalse();
    assertThat(setup.group("gilts").orElseThrow().pen()).isEqualTo("top");
  }

  @Test
  void rest_counts_over_a_leap_day_and_a_year_s_end() {
    Setup setup =
        on("2028-03-01", "- {on: 2027-12-31, pigs: weaners, did: moved, pen: back field}");
    // 31 days of January, 29 of February, and one
    assertThat(setup.pen("yard").orElseThrow().restedFor()).isEqualTo(61);
  }

  @Test
  void ground_rests_until_others_come_to_it() {
    Setup setup =
        on(
            "2027-08-01",
            """
            - {on: 2027-06-01, pigs: weaners, did: moved, pen: back field}
            - {on: 2027-06-21, pigs: gilts, did: moved, pen: yard}
            """);
    assertThat(setup.pen("yard").orElseThrow().restedFor()).isEqualTo(20);
    assertThat(setup.pen("top").orElseThrow().restedFor()).isEqualTo(41); // 21 June to 1 August
  }

  @Test
  void ground_that_others_stay_on_does_not_rest() {
    Setup setup =
        on(
            "2027-08-01",
            """
            - {on: 2027-06-01, pigs: gilts, did: moved, pen: yard}
            - {on: 2027-06-11, pigs: weaners, did: moved, pen: back field}
            """);
    assertThat(setup.pen("yard").orElseThrow().restedFor()).isNull();
    assertThat(setup.pen("yard").orElseThrow().pigsBefore()).isTrue();
  }

  @Test
  void the_last_move_by_its_day_counts_wherever_it_stands() {
    Setup setup =
        on(
            "2027-08-01",
            """
            - {on: 2027-07-01, pigs: weaners, did: moved, pen: top}
            - {on: 2027-06-01, pigs: weaners, did: moved, pen: back field}
            """);
    assertThat(setup.group("weaners").orElseThrow().pen()).isEqualTo("top");
    assertThat(setup.pen("back field").orElseThrow().restedFor()).isEqualTo(31);
  }

  @Test
  void of_a_move_without_a_day_nobody_knows_how_long_the_ground_has_rested() {
    Setup setup = on("2027-08-01", "- {pigs: weaners, did: moved, pen: back field}");
    assertThat(setup.pen("yard").orElseThrow().pigsBefore()).isTrue();
    assertThat(setup.pen("yard").orElseThrow().restedFor()).isNull();
  }

  @Test
  void those_that_died_count_no_more() {
    Setup setup =
        on(
            "2027-08-01",
            """
            - {on: 2027-06-01, pigs: weaners, did: died}
            - {on: 2027-07-01, pigs: weaners, did: died, count: 2}
            """);
    assertThat(setup.group("weaners").orElseThrow().count()).isEqualTo(1);
    assertThat(setup.group("gilts").orElseThrow().count()).isEqualTo(2);
  }

  @Test
  void a_group_of_which_all_died_is_gone() {
    Setup setup = on("2027-08-01", "- {on: 2027-07-01, pigs: gilts, did: died, count: 2}");
    assertThat(setup.group("gilts").orElseThrow().slaughterOn()).isBefore(setup.checkOn());
  }

  @Test
  void more_dead_than_there_were_is_refused() {
    assertThatThrownBy(() -> on("2027-08-01", "- {pigs: gilts, did: died, count: 3}"))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("at most 2");
  }

  @Test
  void an_item_that_is_none_is_refused_with_the_one_it_may_have_been() {
    assertThatThrownBy(() -> on("2027-08-01", "- {did: done, item: fence.trian-first}"))
        .isInstanceOf(BadSetupException.class)
        .hasMessageContaining("did you mean fence.train-first?");
    assertThat(on("2027-08-01", "- {did: done, item: county.permit}").diary()).hasSize(1);
  }
}
