package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.cli.Runs.Run;

/** What a fresh process loads, and what it does on a machine that lacks something. */
class StartTest {
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin/java").toString();

  @TempDir Path folder;

  private Run run(List<String> command) throws IOException, InterruptedException {
    return run(command, Map.of());
  }

  private Run run(List<String> command, Map<String, String> environment)
      throws IOException, InterruptedException {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().remove("SWINEHERD_TRACE");
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    int exit = process.waitFor();
    return new Run(
        exit,
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  private static List<String> swineherd(List<String> options, String... arguments) {
    return swineherd(System.getProperty("java.class.path"), options, arguments);
  }

  private static List<String> swineherd(
      String classpath, List<String> options, String... arguments) {
    List<String> command = new ArrayList<>(List.of(JAVA));
    command.addAll(options);
    command.addAll(List.of("-cp", classpath));
    command.add(Swineherd.class.getName());
    command.addAll(List.of(arguments));
    return command;
  }

  /**
   * Drawing libraries take long to load: a check, and figures without a chart, do without. So does
   * all but the calendar without the library for calendars.
   */
  @ParameterizedTest
  @ValueSource(strings = {"check", "figures", "winter", "calendar"})
  void a_command_loads_only_the_libraries_it_needs(String command) throws Exception {
    Run run =
        run(
            swineherd(
                List.of("-verbose:class", "-XX:TieredStopAtLevel=1"),
                command,
                "scenarios/rush-end.yaml"));
    assertThat(run.exit()).isZero();
    assertThat(run.out()).contains("swineherd.outlook.Course ");
    assertThat(run.out().contains("biweekly.")).isEqualTo(command.equals("calendar"));
    if (command.equals("check") || command.equals("figures")) {
      assertThat(run.out())
          .doesNotContain(
              "org.knowm.", "de.erichseifert.", " java.awt.", "swineherd.report.Charts ");
    }
  }

  @Test
  void without_fonts_it_says_what_to_install_and_writes_nothing() throws Exception {
    Path chart = folder.resolve("chart.svg");
    Path none = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig></fontconfig>");
    StringBuilder hidden = new StringBuilder("export FONTCONFIG_FILE=" + none);
    for (String fonts : List.of("/usr/share/fonts", "/usr/local/share/fonts", "/usr/share/X11")) {
      hidden.append("; [ ! -d " + fonts + " ] || mount -t tmpfs none " + fonts + " || exit 99");
    }
    List<String> java =
        swineherd(List.of(), "figures", "scenarios/rush-end.yaml", "--chart", chart.toString());
    String command = hidden + "; exec \"$0\" \"$@\"";
    List<String> alone = new ArrayList<>(List.of("unshare", "-m", "sh", "-c", command));
    alone.addAll(java);
    Run run;
    try {
      run = run(alone);
    } catch (IOException e) {
      assumeTrue(false, "no way here to hide the fonts");
      return;
    }
    assumeTrue(run.exit() != 99 && !run.err().contains("unshare:"), "fonts cannot be hidden here");
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("finds no fonts").contains("fontconfig").hasLineCount(1);
    assertThat(chart).doesNotExist();
  }

  /** Where libraries are missing, as after half a copy. */
  private Run checkWithoutRules(Map<String, String> environment) throws Exception {
    String whole = System.getProperty("java.class.path");
    String torn =
        Arrays.stream(whole.split(File.pathSeparator))
            .filter(part -> !part.contains("drools"))
            .collect(Collectors.joining(File.pathSeparator));
    assertThat(torn).isNotEqualTo(whole);
    return run(swineherd(torn, List.of(), "check", "scenarios/rush-end.yaml"), environment);
  }

  @Test
  void a_library_that_is_missing_is_told_in_a_line() throws Exception {
    Run run = checkWithoutRules(Map.of());
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .startsWith("A part of the program is missing or does not fit the rest; build it again")
        .contains("drools")
        .hasLineCount(1);
  }

  @Test
  void a_developer_can_have_the_stack_trace() throws Exception {
    Run run = checkWithoutRules(Map.of("SWINEHERD_TRACE", "1"));
    assertThat(run.exit()).isEqualTo(1);
    assertThat(run.err()).contains("\tat swineherd.advice.KnowledgeBase", "Caused by: ");
  }
}
