package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class FiguresCommandTest {
  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... args) {
    CommandLine line = Swineherd.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    return line.execute(args);
  }

  @ParameterizedTest
  @ValueSource(strings = {"text", "json", "csv"})
  void every_format_of_every_scenario(String format) throws IOException {
    try (var scenarios = Files.list(Path.of("scenarios"))) {
      for (Path scenario :
          scenarios.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList()) {
        assertThat(run("figures", scenario.toString(), "--format", format))
            .as(scenario + ": " + err)
            .isZero();
      }
    }
    assertThat(out.toString()).contains("growth".equals(format) ? "" : "rowth");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void a_setup_that_cannot_be_used_is_refused_with_its_place() throws IOException {
    Path file = Files.writeString(folder.resolve("bad.yaml"), "pigs: [{count: 3.5}]\n");
    assertThat(run("figures", file.toString())).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(err.toString()).contains("bad.yaml:1:").contains("not a whole number");
  }

  @Test
  void a_chart_that_cannot_be_written_is_a_fault_of_the_call() {
    String nowhere = Path.of("no-such-folder", "chart.svg").toString();
    assertThat(run("figures", "scenarios/rush-end.yaml", "--chart", nowhere)).isEqualTo(2);
  }

  @Test
  void an_unknown_format_is_refused_in_a_line() {
    assertThat(run("figures", "scenarios/rush-end.yaml", "--format", "pdf")).isEqualTo(2);
    assertThat(err.toString()).contains("--format").contains("csv").doesNotContain("Exception");
  }
}
