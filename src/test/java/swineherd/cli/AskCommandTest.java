package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static swineherd.cli.Runs.run;
import static swineherd.cli.Runs.runOn;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import swineherd.cli.Runs.Run;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupSchema;

/** The questionnaire without a terminal, as a pipe has it; and the schema. */
class AskCommandTest {
  @TempDir Path folder;

  @Test
  void lines_from_a_pipe_are_answers_and_their_end_is_the_end() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    Run run = runOn("metric\nengland\n", "ask", file.toString());
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("Metric or US units?", "> metric", "  = England", "All is kept in")
        .doesNotContain("\u001b", "\r");
    assertThat(Files.readString(file)).contains("units: metric", "country: england");
  }

  @Test
  void a_line_that_is_not_understood_shows_in_the_exit_code() {
    Run run = runOn("metric\nnarnia\n", "ask", folder.resolve("pigs.yaml").toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).contains("\"narnia\" is not one of the answers");
  }

  @Test
  void a_file_that_is_wrong_is_told_before_anything_is_asked() throws IOException {
    Path file = Files.writeString(folder.resolve("pigs.yaml"), "place:\n  contry: england\n");
    Run run = runOn("metric\n", "ask", file.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("pigs.yaml:2:3: place.contry", "did you mean country?");
    assertThat(Files.readString(file)).isEqualTo("place:\n  contry: england\n");
  }

  @Test
  void a_folder_is_no_setup_file() {
    Run run = runOn("metric\n", "ask", folder.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("it is not a file").doesNotContain("Exception");
  }

  @Test
  void the_schema_is_printed_as_it_is_shipped() {
    Run run = run("schema");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).isEqualTo(SetupSchema.of(Rulebook.questions()));
  }
}
