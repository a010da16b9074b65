package swineherd.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import swineherd.rulebook.RulebookException;
import swineherd.setup.BadSetupException;

/** Tells what went wrong in a few lines; where in the code, only to those who ask for it. */
final class Faults {
  /** Set to anything, this variable of the environment has the stack traces printed too. */
  private static final String TRACE = "SWINEHERD_TRACE";

  private Faults() {}

  /**
   * Tells of a fault that ended a command.
   *
   * @return the exit code
   */
  static int tell(Throwable fault, PrintWriter err) {
    if (fault instanceof BadSetupException bad) {
      bad.problems().forEach(p -> err.println(p.at(bad.file())));
      return CommandLine.ExitCode.USAGE;
    }
    if (fault instanceof RulebookException bad) {
      bad.faults().forEach(err::println);
      return CommandLine.ExitCode.USAGE;
    }
    if (fault instanceof LinkageError) {
      err.println(
          "A part of the program is missing or does not fit the rest; build it again, or copy all"
              + " of it again ("
              + root(fault)
              + ").");
    } else {
      err.println("Something went wrong that should not: " + fault);
      err.println("Please report it, with the file that led to it.");
    }
    if (System.getenv(TRACE) != null) {
      fault.printStackTrace(err);
    }
    return CommandLine.ExitCode.SOFTWARE;
  }

  private static Throwable root(Throwable fault) {
    Throwable root = fault;
    while (root.getCause() != null) {
      root = root.getCause();
    }
    return root;
  }
}
