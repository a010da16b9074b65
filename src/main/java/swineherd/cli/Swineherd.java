package swineherd.cli;

import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import swineherd.advice.Advisor;
import swineherd.units.Dates;
import swineherd.units.UnreadableException;

/** The command line. Only {@link #main} ends the process. */
@Command(
    name = "swineherd",
    mixinStandardHelpOptions = true,
    version = "swineherd 0.1.0",
    header = "Advice for people who raise a few pigs for meat.",
    description = {
      "You describe your pigs, pens, fence, shelter, feed and climate in a file; the rules answer"
          + " for that setup: what to do first, by when, why, and whom to call.",
    },
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {"0:done", "1:something unexpected went wrong", "2:the input cannot be used"},
    subcommands = {
      AskCommand.class,
      CheckCommand.class,
      SignsCommand.class,
      NoteCommand.class,
      RecheckCommand.class,
      RemedyCommand.class,
      FiguresCommand.class,
      WinterCommand.class,
      CalendarCommand.class,
      SlaughterCommand.class,
      TapeCommand.class,
      WhyCommand.class,
      SchemaCommand.class,
      CommandLine.HelpCommand.class
    })
public final class Swineherd implements Runnable {
  /** Commands that need the rules. */
  private static final List<String> ADVISING =
      List.of("check", "signs", "note", "recheck", "remedy", "winter", "calendar", "slaughter");

  @Spec private CommandSpec spec;

  public static void main(String[] args) {
    if (!Collections.disjoint(List.of(args), ADVISING)) {
      Advisor.prepare();
    }
    CommandLine line = commandLine();
    int code = run(line, args);
    line.getOut().flush();
    line.getErr().flush();
    System.exit(code);
  }

  /**
   * Runs a command; what picocli does not catch, such as a class that is not there, is told too.
   */
  private static int run(CommandLine line, String... args) {
    try {
      return line.execute(args);
    } catch (Error e) {
      if (List.of(args).contains("signs")) {
        line.getErr().println(SignsCommand.CALL);
      }
      return Faults.tell(e, line.getErr());
    }
  }

  /** The command line, with errors told in a line each and no stack traces. */
  static CommandLine commandLine() {
    CommandLine line = new CommandLine(new Swineherd());
    line.setExecutionStrategy(Swineherd::run);
    line.setExecutionExceptionHandler(
        (exception, command, parsed) -> {
          callFirst(command);
          return Faults.tell(exception, command.getErr());
        });
    line.setParameterExceptionHandler(
        (exception, args) -> {
          CommandLine command = exception.getCommandLine();
          PrintWriter err = command.getErr();
          callFirst(command);
          err.println(exception.getMessage());
          UnmatchedArgumentException.printSuggestions(exception, err);
          err.println("See " + command.getCommandSpec().qualifiedName() + " --help.");
          return CommandLine.ExitCode.USAGE;
        });
    line.setCaseInsensitiveEnumValuesAllowed(true);
    line.registerConverter(Path.class, Swineherd::path);
    line.registerConverter(LocalDate.class, Swineherd::date);
    return line;
  }

  /** Where a pig looks wrong the first word is whom to call, whatever is wrong with the call. */
  private static void callFirst(CommandLine command) {
    if (command.getCommandSpec().userObject() instanceof SignsCommand) {
      command.getErr().println(SignsCommand.CALL);
    }
  }

  /** Runs the command, and tells at the end what went wrong with rules of the keeper's own. */
  private static int run(ParseResult parsed) {
    int code = new CommandLine.RunLast().execute(parsed);
    if (!parsed.hasSubcommand()) {
      return code;
    }
    CommandSpec command = parsed.subcommand().commandSpec();
    for (CommandSpec mixin : command.mixins().values()) {
      if (mixin.userObject() instanceof RulesOption rules && rules.fault().isPresent()) {
        PrintWriter err = command.commandLine().getErr();
        err.println(rules.fault().get());
        err.println("Your own rules failed: what you see is the shipped advice alone.");
        return CommandLine.ExitCode.USAGE;
      }
    }
    return code;
  }

  private static Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      throw new TypeConversionException("no file can be called this");
    }
  }

  private static LocalDate date(String typed) {
    try {
      return Dates.parse(typed);
    } catch (UnreadableException e) {
      throw new TypeConversionException(e.getMessage() + "; " + e.accepted());
    }
  }

  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
