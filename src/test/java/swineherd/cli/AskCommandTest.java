package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupSchema;

/** The questionnaire without a terminal, as a pipe has it; and the schema. */
class AskCommandTest {
  @TempDir Path folder;

  private record Run(int exit, String out, String err) {}

  private static Run run(String input, String... args) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Swineherd.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    try {
      int exit = line.execute(args);
      return new Run(exit, out.toString(), err.toString());
    } finally {
      System.setIn(before);
    }
  }

  @Test
  void lines_from_a_pipe_are_answers_and_their_end_is_the_end() throws IOException {
    Path file = folder.resolve("pigs.yaml");
    Run run = run("metric\nengland\n", "ask", file.toString());
    assertThat(run.exit()).isZero();
    assertThat(run.err()).isEmpty();
    assertThat(run.out())
        .contains("Metric or US units?", "> metric", "  = England", "All is kept in")
        .doesNotContain("\u001b", "\r");
    assertThat(Files.readString(file)).contains("units: metric", "country: england");
  }

  @Test
  void a_line_that_is_not_understood_shows_in_the_exit_code() {
    Run run = run("metric\nnarnia\n", "ask", folder.resolve("pigs.yaml").toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).contains("\"narnia\" is not one of the answers");
  }

  @Test
  void a_file_that_is_wrong_is_told_before_anything_is_asked() throws IOException {
    Path file = Files.writeString(folder.resolve("pigs.yaml"), "place:\n  contry: england\n");
    Run run = run("metric\n", "ask", file.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("pigs.yaml:2:3: place.contry", "did you mean country?");
    assertThat(Files.readString(file)).isEqualTo("place:\n  contry: england\n");
  }

  @Test
  void a_folder_is_no_setup_file() {
    Run run = run("metric\n", "ask", folder.toString());
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.err()).contains("it is not a file").doesNotContain("Exception");
  }

  @Test
  void the_schema_is_printed_as_it_is_shipped() {
    Run run = run("", "schema");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).isEqualTo(SetupSchema.of(Rulebook.questions()));
  }
}
