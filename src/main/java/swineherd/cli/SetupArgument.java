package swineherd.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** The setup that a command is about, and the day it looks at it. */
final class SetupArgument {
  @Parameters(paramLabel = "FILE", description = "The setup; - reads standard input.")
  private Path file;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Look at it as on this day, not the file's checkOn or today.")
  private LocalDate on;

  /** The file as it was named; {@code -} for standard input. */
  Path file() {
    return file;
  }

  /** The day that was asked for, or today. */
  LocalDate today() {
    return on == null ? LocalDate.now(ZoneId.systemDefault()) : on;
  }

  /**
   * The setup, read.
   *
   * @throws swineherd.setup.BadSetupException if something in it is wrong
   */
  SetupFile read() {
    SetupFile setup = SetupReader.read(file, today());
    return on == null ? setup : setup.with("checkOn", on.toString());
  }
}
