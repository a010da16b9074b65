package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;

/** Tables that no calculation reads yet, but texts and rules will. */
class HealthTablesTest {
  @ParameterizedTest(name = "{0} ({1})")
  @CsvSource({
    "us-label-fenbendazole-feed, 21 CFR 558.258 [read], 28, 42",
    "us-label-levamisole, 21 CFR 520.1242 [read], 28, 35",
    "handbook-growers-on-dirt, Pork Industry Handbook 44 [memory], 30, 45",
  })
  void published_schedules_stand_as_published(
      String schedule, String source, double low, double high) {
    Table.Row row = Table.named("deworming-schedules").row(schedule);
    assertThat(row.number("low_d")).isEqualTo(low);
    assertThat(row.number("high_d")).isEqualTo(high);
  }

  @Test
  void a_schedule_shorter_than_worms_can_show_is_marked_unusable() {
    // 14-21 d of the show trade (common practice, no source): below the 41 d of any roundworm or
    // whipworm, so such a plan doses worms that no test could find yet.
    assertThat(Table.named("deworming-schedules").rows())
        .filteredOn(row -> row.maybe("low_d").isPresent() && row.number("low_d") < 21)
        .isNotEmpty()
        .allMatch(row -> row.text("usable").equals("no"));
  }

  @ParameterizedTest(name = "{0}: whipworm {1} ({2})")
  @CsvSource({
    "fenbendazole, yes, 21 CFR 558.258 [read]",
    "dichlorvos, yes, 21 CFR 558.205 [read]",
    "flubendazole, yes, UK data sheet [read]",
    "ivermectin-injection, no-claim, 21 CFR 522.1192 [read]",
    "pyrantel, no-claim, 21 CFR 558.485 [read]",
  })
  void few_actives_claim_whipworm(String active, String claim, String source) {
    assertThat(Table.named("worming-actives").row(active).text("whipworm")).isEqualTo(claim);
  }
}
