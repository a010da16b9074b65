package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;

/** Limits that only rules read, and that the classes in code are the rows of their tables. */
class ClimateTablesTest {
  @ParameterizedTest(name = "KG01c: {0}, {1} {2}, CIGR [read]")
  @CsvSource({
    "ammonia-act, 20, ppm",
    "carbon-dioxide, 3000, ppm",
    "carbon-monoxide, 10, ppm",
    "hydrogen-sulphide, 0.5, ppm"
  })
  void limits_of_gases(String key, double value, String unit) {
    Table.Row row = Table.named("air-limits").row(key);
    assertThat(row.number("value")).isEqualTo(value);
    assertThat(row.text("unit")).isEqualTo(unit);
  }

  // Wageningen [read]: no more than 15 to 20 ppm; so the aim lies under it and the stop at the
  // Canadian most of 25 [memory]
  @Test
  void ammonia_is_acted_on_before_it_must_be_fled() {
    Table air = Table.named("air-limits");
    assertThat(air.row("ammonia-aim").number("value")).isLessThan(15);
    assertThat(air.row("ammonia-stop").number("value")).isEqualTo(25);
  }

  // KG02c: Defra PB7950 [read]
  @Test
  void housed_pigs_in_england_have_forty_lux_for_eight_hours() {
    Table.Row england = Table.named("light-limits").row("england");
    assertThat(england.number("lux")).isEqualTo(40);
    assertThat(england.number("hours")).isEqualTo(8);
  }

  @Test
  void every_row_of_a_table_of_classes_has_its_class() {
    assertThat(keys("floor-terms"))
        .containsExactlyInAnyOrderElementsOf(
            List.of(LyingPlace.Floor.values()).stream().map(LyingPlace.Floor::key).toList());
    assertThat(keys("draughts"))
        .containsExactlyElementsOf(
            List.of(LyingPlace.Shelter.values()).stream().map(LyingPlace.Shelter::key).toList());
    assertThat(keys("winter-classes")).containsExactly("A", "B", "C", "D", "E");
    assertThat(keys("uv-bands")).hasSameSizeAs(Sun.UvBand.values());
    assertThat(keys("skin-classes")).hasSameSizeAs(Sun.Skin.values());
    assertThat(keys("heat-classes")).hasSameSizeAs(Heat.SummerClass.values());
    assertThat(keys("snow-densities")).hasSameSizeAs(SnowLoad.Snow.values());
    assertThat(keys("hut-walls")).hasSameSizeAs(HutHeat.Wall.values());
    // these have a stage for "nothing to say" besides
    assertThat(keys("thi-stages")).hasSize(HeatStage.values().length - 1);
    assertThat(keys("wind-chill-stages")).hasSize(WindChill.Stage.values().length - 1);
  }

  @Test
  void every_lead_time_has_its_weeks_or_another_occasion() {
    List<Table.Row> rows = Table.named("winter-lead-times").rows();
    assertThat(rows).hasSizeGreaterThan(10);
    for (Table.Row row : rows) {
      assertThat(WinterClass.valueOf(row.text("from-class")).atLeast(WinterClass.A)).isTrue();
      if (row.text("occasion").equals("before-frost")) {
        assertThat(row.number("weeks-from")).isGreaterThanOrEqualTo(row.number("weeks-by"));
      } else {
        assertThat(row.text("occasion")).isIn("weekly", "cold-snap", "thaw");
        assertThat(row.maybe("weeks-by")).isEmpty();
      }
    }
  }

  @Test
  void preferred_ranges_lie_inside_the_extremes() {
    for (Table.Row row : Table.named("lower-extremes").rows()) {
      assertThat(row.number("lower-extreme-c")).isLessThan(row.number("preferred-low-c"));
      assertThat(row.number("upper-extreme-c")).isGreaterThan(row.number("preferred-high-c"));
    }
  }

  private static List<String> keys(String table) {
    return Table.named(table).rows().stream().map(Table.Row::key).toList();
  }
}
