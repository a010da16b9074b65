package swineherd.cli;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;

/** Runs commands as they are typed. */
final class Runs {
  record Run(int exit, String out, String err) {
    /** What was printed, as one line. */
    String words() {
      return out.replaceAll("\\s+", " ");
    }
  }

  private Runs() {}

  static Run run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CommandLine line = Swineherd.commandLine();
    line.setOut(new PrintWriter(out));
    line.setErr(new PrintWriter(err));
    int exit = line.execute(args);
    return new Run(exit, out.toString(), err.toString());
  }

  /** Runs one that reads standard input. */
  static Run runOn(String input, String... args) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(input.getBytes(StandardCharsets.UTF_8)));
    try {
      return run(args);
    } finally {
      System.setIn(before);
    }
  }
}
