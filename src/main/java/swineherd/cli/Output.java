package swineherd.cli;

import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The format that a command was asked for, and its way to print in it. */
final class Output {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Format format;

  /** The format that was asked for. */
  Format format() {
    return format;
  }

  /** Prints the answer in the format that was asked for; the others are not worked out. */
  void print(Supplier<String> text, Supplier<String> json, Supplier<String> markdown) {
    Supplier<String> wanted =
        switch (format) {
          case text -> text;
          case json -> json;
          case markdown -> markdown;
        };
    print(wanted.get());
  }

  /** Prints something now, whatever the format. */
  void print(String part) {
    command.commandLine().getOut().print(part);
    command.commandLine().getOut().flush();
  }
}
