package swineherd.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The questionnaire as a program of its own, typed at through a real terminal. */
class AskTerminalTest {
  private static final long PATIENCE_SECONDS = 90;
  private static final String ESCAPES = "\u001b\\[[?0-9;]*[a-zA-Z]|\u001b[=>]|[\r\u0007]";

  /** What is asked, and what is typed: with slips, completion and second thoughts. */
  private static final List<List<String>> TALK =
      List.of(
          List.of("Metric or US", "us"),
          List.of("In which country", "new-z\t"),
          List.of("How far north", "37 ss\u007f"),
          List.of("freeze hard", "maybe"),
          List.of("neither yes nor no", "back"),
          List.of("so far: 37 S", ""),
          List.of("freeze hard", "don't know"),
          List.of("How cold", "40"),
          List.of("Is that 40 F", "y"),
          List.of("What do you call this pen", "hillside"),
          List.of("How big", "12 by 30 ft"),
          List.of("What do they walk on", "6"),
          List.of("What keeps", "2"),
          List.of("solid part made of", "hog"),
          List.of("What do they lie in", "hut"),
          List.of("Is that a low closed hut", "y"),
          List.of("shade at midday", "none"),
          List.of("How do they drink", "a tub"),
          List.of("Is that a trough", "y"),
          List.of("keep running", "n"),
          List.of("What do you call this group", "weaners"),
          List.of("How many pigs", "half a dozen"),
          List.of("Which breed", "commercial"),
          List.of("Males, gilts", "gilts"),
          List.of("When did they come", "tomorrow"),
          List.of("What do they weigh", "about 40 pounds"),
          List.of("How are they fed", "1"),
          List.of("besides their feed", "windfalls"),
          List.of("other pigs", ""),
          List.of("What next", ""));

  private static Path whole;

  @TempDir Path folder;

  private static final class Terminal implements AutoCloseable {
    private final PtyProcess process;
    private final StringBuilder screen = new StringBuilder();
    private int seen;

    Terminal(Path file) throws IOException {
      Map<String, String> environment = new HashMap<>(System.getenv());
      environment.put("TERM", "xterm");
      String classes =
          System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
      List<String> command =
          List.of(
              Path.of(System.getProperty("java.home"), "bin", "java").toString(),
              "-XX:TieredStopAtLevel=1",
              "-Xshare:auto",
              "-Ddrools.lang.level=DRL10",
              "-Dswineherd.terminal=true",
              "-Dswineherd.keyboard=true",
              "-cp",
              classes,
              "swineherd.cli.Swineherd",
              "ask",
              file.toString());
      process =
          new PtyProcessBuilder(command.toArray(String[]::new))
              .setEnvironment(environment)
              .setInitialColumns(80)
              .setInitialRows(24)
              .start();
      Thread reader = new Thread(this::read, "screen");
      reader.setDaemon(true);
      reader.start();
    }

    private void read() {
      byte[] bytes = new byte[4096];
      try (InputStream in = process.getInputStream()) {
        for (int n = in.read(bytes); n >= 0; n = in.read(bytes)) {
          String text = new String(bytes, 0, n, StandardCharsets.UTF_8);
          synchronized (screen) {
            screen.append(text);
            screen.notifyAll();
          }
        }
      } catch (IOException e) {
        // the terminal is gone
      }
    }

    /** Waits until it is shown, after what was waited for before. */
    void expect(String text) throws InterruptedException {
      long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_SECONDS);
      synchronized (screen) {
        while (true) {
          String shown = screen.toString().replaceAll(ESCAPES, "");
          int at = shown.indexOf(text, seen);
          if (at >= 0) {
            seen = at + text.length();
            return;
          }
          long left = TimeUnit.NANOSECONDS.toMillis(end - System.nanoTime());
          assertThat(left).as("not shown: %s in:%n%s", text, shown).isPositive();
          screen.wait(left);
        }
      }
    }

    /** Waits until the question stands there and the line below it is ready to be typed in. */
    void expectQuestion(String text) throws InterruptedException {
      expect(text);
      expect(
          text.startsWith("Is that")
              ? "(y or n) "
              : text.matches("other.*|What next") ? ": " : "> ");
    }

    void type(String keys) throws IOException {
      process.getOutputStream().write(keys.getBytes(StandardCharsets.UTF_8));
      process.getOutputStream().flush();
    }

    /** Answers lines of the talk. */
    void talk(List<List<String>> lines) throws IOException, InterruptedException {
      for (List<String> line : lines) {
        expectQuestion(line.get(0));
        type(line.get(1) + "\r");
      }
    }

    int exit() throws InterruptedException {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
      return process.exitValue();
    }

    void kill() throws InterruptedException {
      process.destroyForcibly();
      exit();
    }

    @Override
    public void close() {
      process.destroyForcibly();
    }
  }

  /** A conversation that nothing breaks off, held once for all. */
  @BeforeAll
  static void whole(@TempDir Path alone) throws IOException, InterruptedException {
    whole = alone.resolve("whole.yaml");
    try (Terminal terminal = new Terminal(whole)) {
      terminal.talk(TALK);
      terminal.expect("All is kept in");
      assertThat(terminal.exit()).isZero();
    }
  }

  @Test
  void a_whole_conversation_at_a_terminal() throws IOException {
    String text = Files.readString(whole);
    assertThat(text)
        .contains(
            "units: us",
            "country: new-zealand",
            "latitude: 37 S",
            "freezes: unknown",
            "coldestMonth: 40 F",
            "area: 12 x 30 ft",
            "kind: closed-hut",
            "kind: trough",
            "count: 6",
            "arrivalWeight: 40 lb",
            "scraps: [garden]");
    try (var files = Files.list(whole.getParent())) {
      assertThat(files).as("nothing is left lying about").hasSize(1);
    }
  }

  @ParameterizedTest(name = "killed at question {0}")
  @ValueSource(ints = {1, 12, 23})
  void killed_at_a_question_it_goes_on_there(int question)
      throws IOException, InterruptedException {
    Path file = folder.resolve("killed.yaml");
    try (Terminal terminal = new Terminal(file)) {
      terminal.talk(TALK.subList(0, question));
      terminal.expectQuestion(TALK.get(question).get(0));
      terminal.type("half an ans");
      terminal.kill();
    }
    try (Terminal terminal = new Terminal(file)) {
      terminal.expect("Going on with");
      terminal.talk(TALK.subList(question, TALK.size()));
      terminal.expect("All is kept in");
      assertThat(terminal.exit()).isZero();
    }
    List<String> lines = new ArrayList<>(Files.readAllLines(file));
    assertThat(lines).isEqualTo(Files.readAllLines(whole));
  }

  @Test
  void ctrl_c_keeps_what_was_answered() throws IOException, InterruptedException {
    Path file = folder.resolve("broken-off.yaml");
    try (Terminal terminal = new Terminal(file)) {
      terminal.talk(TALK.subList(0, 2));
      terminal.expectQuestion("How far north");
      terminal.type("37\u0003");
      terminal.expect("All is kept in");
      assertThat(terminal.exit()).isEqualTo(130);
    }
    assertThat(Files.readString(file)).contains("country: new-zealand").doesNotContain("latitude");
  }

  @Test
  void ctrl_d_ends_it_as_stop_does() throws IOException, InterruptedException {
    Path file = folder.resolve("ended.yaml");
    try (Terminal terminal = new Terminal(file)) {
      terminal.talk(TALK.subList(0, 1));
      terminal.expectQuestion("In which country");
      terminal.type("\u0004");
      terminal.expect("All is kept in");
      assertThat(terminal.exit()).isZero();
    }
  }
}
