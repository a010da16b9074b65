package swineherd.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
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
}
