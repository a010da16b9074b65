package swineherd.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import swineherd.setup.CheckJournal;
import swineherd.setup.SafeFile;

/** Records a check beside the setup file, once it was printed. */
final class Recording {
  private Recording() {}

  /** Records the setup as the file has it now. */
  static void record(CommandSpec spec, Path file, LocalDate day) {
    if (!Files.isRegularFile(file)) {
      throw new ParameterException(spec.commandLine(), "Not recorded: name a file for that.");
    }
    try {
      record(spec, CheckJournal.of(file), new CheckJournal.Check(day, SafeFile.read(file).text()));
    } catch (IOException e) {
      throw notRecorded(spec, e);
    }
  }

  static void record(CommandSpec spec, CheckJournal journal, CheckJournal.Check check) {
    try {
      journal.record(check);
    } catch (IOException e) {
      throw notRecorded(spec, e);
    }
  }

  private static ParameterException notRecorded(CommandSpec spec, IOException e) {
    String why =
        e instanceof AccessDeniedException
            ? "no right to write there: " + e.getMessage()
            : e.getMessage();
    return new ParameterException(spec.commandLine(), "Not recorded: " + why);
  }
}
