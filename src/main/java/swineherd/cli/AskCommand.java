package swineherd.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.ask.Conversation;
import swineherd.ask.PlainTalk;
import swineherd.ask.TerminalTalk;

/** Asks for a setup and writes the file. */
@Command(
    name = "ask",
    mixinStandardHelpOptions = true,
    header = "Ask about your pigs and write the answers into a setup file.",
    description = {
      "About twenty-five questions, then the list and whatever more you want to tell. Every answer"
          + " is in the file at once; a file that is there already is gone on with, and nothing"
          + " in it is lost. Also reads its answers from a pipe, a line each."
    })
final class AskCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      defaultValue = "my-pigs.yaml",
      description = "The setup file; default: ${DEFAULT-VALUE}. It need not exist yet.")
  private Path file;

  @Override
  public Integer call() throws IOException {
    PrintWriter out = spec.commandLine().getOut();
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    try {
      if (isTerminal()) {
        try (TerminalTalk talk = new TerminalTalk()) {
          Advisor.prepare(); // while the first answers are typed, for the list at the end
          return new Conversation(talk, file, today).run();
        }
      }
      BufferedReader in =
          new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
      return new Conversation(new PlainTalk(in, out), file, today).run();
    } catch (IOException e) {
      spec.commandLine().getErr().println(file + ": " + e.getMessage());
      return CommandLine.ExitCode.USAGE;
    }
  }

  /** Whether a person sits at both ends; the launcher has looked. */
  private static boolean isTerminal() {
    return Boolean.getBoolean("swineherd.keyboard") && Boolean.getBoolean("swineherd.terminal");
  }
}
