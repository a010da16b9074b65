package swineherd.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.report.Agenda;
import swineherd.report.CalendarFile;

/** Writes everything that has a day as a calendar. */
@Command(
    name = "calendar",
    mixinStandardHelpOptions = true,
    header = "Write everything with a day as a calendar, to be imported (iCalendar, RFC 5545).",
    description = {
      "What to do by when, arrivals, weighings, when the pigs are ready, withdrawals, tests, frost.",
      "Importing a newer one updates what is there; with --out into the same file, what no longer"
          + " holds is cancelled."
    })
final class CalendarCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

  @Option(
      names = "--out",
      paramLabel = "FILE.ics",
      description = "Write it into this file; default: print it.")
  private Path file;

  @Override
  public Integer call() {
    Agenda agenda = Agenda.of(Advisor.advise(argument.read(), ownRules.read()));
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    if (file == null) {
      out.print(CalendarFile.of(agenda, Instant.now()));
    } else {
      try {
        CalendarFile.write(agenda, Instant.now(), file);
      } catch (IOException e) {
        err.println("The calendar cannot be written to " + file + ": " + e.getMessage());
        return CommandLine.ExitCode.SOFTWARE;
      }
      out.println(agenda.entries().size() + " days written to " + file + ".");
    }
    out.flush();
    if (agenda.urgentWithoutDay()) {
      err.println(
          "Something is urgent, and no matter for a calendar: call now. See the checklist.");
    }
    if (!agenda.undated().isEmpty()) {
      err.println(
          "Not in it, for want of a day: " + agenda.undated().size() + " of the checklist.");
    }
    return 0;
  }
}
