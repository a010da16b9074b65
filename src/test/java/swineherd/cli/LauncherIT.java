package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher with the finished jars, in a place of its own. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "the launcher is a POSIX shell script")
class LauncherIT {
  private static final Path HERE = Path.of("").toAbsolutePath();

  @TempDir Path home;
  private Path launcher;

  record Run(int exit, String out, String err) {}

  @BeforeEach
  void install() throws IOException {
    launcher = Files.copy(HERE.resolve("swineherd"), home.resolve("swineherd"));
    Files.createDirectories(home.resolve("target"));
    Files.copy(HERE.resolve("target/swineherd.jar"), home.resolve("target/swineherd.jar"));
    copy(HERE.resolve("target/lib"), home.resolve("target/lib"));
    copy(HERE.resolve("scenarios"), home.resolve("scenarios"));
  }

  private static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
  }

  private Run run(Path command, Path folder, String archive, String... args) {
    List<String> line = new ArrayList<>(List.of(command.toString()));
    line.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(line).directory(folder.toFile());
    builder.environment().put("SWINEHERD_ARCHIVE", archive);
    builder.environment().put("XDG_CACHE_HOME", home.resolve("cache").toString());
    try {
      Process process = builder.start();
      process.getOutputStream().close();
      CompletableFuture<String> err =
          CompletableFuture.supplyAsync(() -> text(process.getErrorStream()));
      String out = text(process.getInputStream());
      return new Run(process.waitFor(), out, err.join());
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  private static String text(InputStream stream) {
    try {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private Run check(String archive) {
    return run(launcher, home, archive, "check", "scenarios/alder-bottom.yaml", "--format", "json");
  }

  private List<Path> archives() throws IOException {
    try (Stream<Path> files = Files.walk(home)) {
      return files.filter(f -> f.toString().endsWith(".jsa")).toList();
    }
  }

  @Test
  void the_answer_is_the_same_with_and_without_an_archive() throws IOException {
    Run without = check("no");
    assertThat(without.exit()).isZero();
    assertThat(without.out()).startsWith("{").endsWith("}\n").contains("\"items\"");
    assertThat(without.err()).isEmpty();
    assertThat(archives()).isEmpty();
    assertThat(check("yes")).as("the run that makes it").isEqualTo(without);
    assertThat(archives()).hasSize(1);
    assertThat(check("yes")).as("a run that uses it").isEqualTo(without);
  }

  @Test
  void an_archive_that_does_not_fit_says_nothing_on_standard_output() throws IOException {
    Run whole = check("yes");
    Path archive = archives().get(0);
    assertThat(archive.toFile().setWritable(true)).isTrue();
    Files.writeString(archive, "not an archive");
    Run broken = check("yes");
    assertThat(broken.out()).isEqualTo(whole.out());
    assertThat(broken.exit()).isZero();
  }

  @Test
  void a_rebuilt_jar_gets_a_new_archive_and_the_same_answer() throws Exception {
    Run before = check("yes");
    long made = Files.getLastModifiedTime(archives().get(0)).toMillis();
    Path jar = home.resolve("target/swineherd.jar");
    Thread.sleep(20);
    Files.setLastModifiedTime(
        jar, java.nio.file.attribute.FileTime.fromMillis(System.currentTimeMillis()));
    assertThat(check("yes")).isEqualTo(before);
    assertThat(Files.getLastModifiedTime(archives().get(0)).toMillis()).isGreaterThan(made);
  }

  @Test
  void where_no_archive_can_be_kept_it_runs_without() throws IOException {
    Files.writeString(home.resolve("cache"), "a file where the folder should be");
    Path lib = home.resolve("target");
    // a folder that only root could write to would not stop root: take its name instead
    Path blocked = home.resolve("scenarios/alder-bottom.yaml");
    Path moved = Files.move(blocked, home.resolve("mine.yaml"));
    Run run = run(launcher, home, "yes", "check", moved.toString(), "--format", "json");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).startsWith("{");
    assertThat(lib).isDirectoryNotContaining("glob:**.jsa");
  }

  @Test
  void two_first_runs_at_once_give_the_same_answer() throws IOException {
    CompletableFuture<Run> one = CompletableFuture.supplyAsync(() -> check("yes"));
    CompletableFuture<Run> two = CompletableFuture.supplyAsync(() -> check("yes"));
    assertThat(one.join()).isEqualTo(two.join());
    assertThat(one.join().exit()).isZero();
    assertThat(archives()).as("no half-made archive is left").hasSize(1);
  }

  @Test
  void it_works_from_anywhere_and_through_a_link(@TempDir Path elsewhere) throws IOException {
    Path link = Files.createSymbolicLink(elsewhere.resolve("pigs"), launcher);
    Path file =
        Files.copy(home.resolve("scenarios/alder-bottom.yaml"), elsewhere.resolve("a b.yaml"));
    Run run =
        run(link, elsewhere, "no", "check", file.getFileName().toString(), "--format", "json");
    assertThat(run.exit()).isZero();
    assertThat(run.out()).isEqualTo(check("no").out());
  }

  @Test
  void exit_codes_pass_through_and_errors_stay_off_standard_output() {
    Run run = run(launcher, home, "no", "check", "no-such.yaml");
    assertThat(run.exit()).isEqualTo(2);
    assertThat(run.out()).isEmpty();
    assertThat(run.err()).contains("no-such.yaml: there is no such file");
    assertThat(run(launcher, home, "no", "chek").exit()).isEqualTo(2);
  }
}
