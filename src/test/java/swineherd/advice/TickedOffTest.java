package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.setup.SetupReader;

class TickedOffTest {
  private static final String PIGS =
      """
      place: {country: england, latitude: 52 N}
      pens:
        - {name: yard, fence: {kind: electric, strands: 2, endVoltage: 1.5 kV}}
        - {name: top, fence: {kind: electric, strands: 2}}
      pigs: [{name: weaners, pen: yard, count: 4, arrives: 2027-05-01, trained: no}]
      """;

  private static Checklist on(String day, String more) {
    return Advisor.advise(SetupReader.read("p.yaml", PIGS + more, LocalDate.parse(day)));
  }

  private static List<String> ids(Checklist checklist) {
    return checklist.items().stream().map(Item::id).toList();
  }

  private static String done(String item, String about) {
    return "- {on: 2027-06-01, did: done, item: " + item + about + "}\n";
  }

  @Test
  void an_item_is_off_the_list_and_is_told_with_its_day() {
    assertThat(ids(on("2027-06-01", ""))).contains("fence.train-first");
    Checklist after = on("2027-06-02", "diary:\n" + done("fence.train-first", ", pigs: weaners"));
    assertThat(ids(after)).doesNotContain("fence.train-first");
    assertThat(after.tickedOff()).hasSize(1);
    assertThat(after.tickedOff().get(0).on()).isEqualTo("2027-06-01");
    assertThat(after.tickedOff().get(0).again()).isEqualTo("2028-05-31");
  }

  @Test
  void it_comes_back_after_the_time_its_card_gives() {
    String diary = "diary:\n" + done("fence.voltage-unsafe", ", pen: yard");
    assertThat(ids(on("2027-06-01", ""))).contains("fence.voltage-unsafe");
    assertThat(ids(on("2027-06-01", diary))).doesNotContain("fence.voltage-unsafe");
    assertThat(ids(on("2027-06-02", diary))).contains("fence.voltage-unsafe");
  }

  @Test
  void a_tick_for_other_pigs_or_another_pen_does_not_count() {
    assertThat(ids(on("2027-06-01", "diary:\n" + done("fence.voltage-unsafe", ", pen: top"))))
        .contains("fence.voltage-unsafe");
  }

  @Test
  void a_tick_without_pigs_or_pen_counts_for_all() {
    assertThat(ids(on("2027-06-01", "diary:\n" + done("fence.train-first", ""))))
        .doesNotContain("fence.train-first");
  }

  @Test
  void pigs_that_moved_since_get_it_anew() {
    String diary =
        "diary:\n"
            + done("fence.train-first", ", pigs: weaners")
            + "- {on: 2027-06-10, pigs: weaners, did: moved, pen: top}\n";
    assertThat(ids(on("2027-06-11", diary))).contains("fence.train-first");
  }

  @Test
  void a_call_for_the_vet_today_never_leaves_by_a_tick() {
    String diary =
        "diary:\n- {on: 2027-06-01, pigs: weaners, did: died}\n"
            + done("diary.died", ", pigs: weaners");
    Checklist checklist = on("2027-06-02", diary);
    assertThat(ids(checklist)).contains("diary.died");
    assertThat(checklist.tickedOff()).isEmpty();
    // a week later it is past, and goes by itself
    assertThat(ids(on("2027-06-09", diary))).doesNotContain("diary.died");
  }

  @Test
  void a_question_never_leaves_by_a_tick() {
    String diary = "diary:\n" + done("water.find-out", ", pen: yard");
    assertThat(ids(on("2027-06-01", diary))).contains("water.find-out");
  }
}
