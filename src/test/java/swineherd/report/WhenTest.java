package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.rulebook.Stage;
import swineherd.setup.Setup;
import swineherd.setup.SetupReader;

/** Nobody is told to do a thing before the pigs come that came long ago. */
class WhenTest {
  private static final LocalDate DAY = LocalDate.of(2027, 8, 20);
  private static final String THERE =
      """
      checkOn: 2027-08-20
      keeper: {firstTime: yes}
      pens:
        - {name: orchard, fence: {kind: electric, signs: no, gate: weak}}
      pigs:
        - {name: weaners, pen: orchard, count: 3, arrives: 2027-04-24}
      """;
  private static final String TO_COME = THERE.replace("2027-04-24", "2027-12-01");

  private static Checklist advise(String setup) {
    return Advisor.advise(SetupReader.read("setup.yaml", setup, DAY));
  }

  private static List<String> whens(Checklist checklist) {
    Setup setup = checklist.file().setup();
    return checklist.items().stream().map(item -> When.words(item, setup)).toList();
  }

  @Test
  void pigs_that_are_there_do_not_come_again() {
    Checklist checklist = advise(THERE);
    assertThat(checklist.items()).extracting(Item::stage).contains(Stage.BEFORE_ARRIVAL);
    assertThat(whens(checklist))
        .contains("Now.")
        .noneMatch(w -> w.contains("pigs come") || w.contains("bought"));
    assertThat(new TextReport(checklist, false, false, t -> t).render())
        .doesNotContain("efore the pigs come.");
    assertThat(new MarkdownReport(checklist, List.of(), false, false).render())
        .doesNotContain("efore the pigs come.");
  }

  @Test
  void pigs_to_come_are_still_to_come() {
    assertThat(whens(advise(TO_COME))).anyMatch(w -> w.endsWith("efore the pigs come."));
  }

  @Test
  void each_pen_is_told_by_its_own_pigs() {
    String both = TO_COME + "  - {name: elders, pen: yard, count: 2, arrives: 2027-04-24}\n";
    Checklist checklist =
        advise(
            both.replace(
                "pigs:\n", "  - {name: yard, fence: {kind: electric, gate: weak}}\npigs:\n"));
    Setup setup = checklist.file().setup();
    assertThat(checklist.items())
        .filteredOn(i -> i.id().equals("fence.gate"))
        .hasSize(2)
        .allSatisfy(
            i ->
                assertThat(When.words(i, setup).contains("the pigs come"))
                    .isEqualTo(i.advice().about().equals("orchard")));
  }

  @Test
  void where_no_pigs_are_described_nothing_is_judged() {
    assertThat(new TextReport(advise("checkOn: 2027-08-20\n"), false, false, t -> t).render())
        .contains("no pigs are described, so nothing else can be judged yet.")
        .doesNotContain("stands out");
  }
}
