package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.cli.Runs.Run;

class FiguresCommandTest {
  @TempDir Path folder;

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "csv"})
  void every_format_of_every_scenario(String format) throws IOException {
    try (var scenarios = Files.list(Path.of("scenarios"))) {
      for (Path scenario :
          scenarios.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList()) {
        Run run = run("figures", scenario.toString(), "--format", format);
        assertThat(run.exit()).as(scenario + ": " + run.err()).isZero();
        assertThat(run.out()).as(scenario.toString()).contains("rowth");
        assertThat(run.err()).as(scenario.toString()).isEmpty();
      }
    }
  }

  @Test
  void a_setup_that_cannot_be_used_is_refused_with_its_place() throws IOException {
    Path file = Files.writeString(folder.resolve("bad.yaml"), "pigs: [{count: 3.5}]\n");
    Run run = run("figures", file.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("bad.yaml:1:").contains("not a whole number");
  }

  @Test
  void a_chart_that_cannot_be_written_is_a_fault_of_the_call() {
    String nowhere = Path.of("no-such-folder", "chart.svg").toString();
    assertThat(run("figures", "scenarios/rush-end.yaml", "--chart", nowhere).exit()).isEqualTo(2);
  }

  @Test
  void an_unknown_format_is_refused_in_a_line() {
    Run run = run("figures", "scenarios/rush-end.yaml", "--format", "pdf");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("--format").contains("csv").doesNotContain("Exception");
  }
}
