package swineherd.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupSchema;

/** Prints the schema of setup files. */
@Command(
    name = "schema",
    mixinStandardHelpOptions = true,
    header = "Print the JSON Schema (2020-12) of setup files, for editors and other programs.")
final class SchemaCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    spec.commandLine().getOut().print(SetupSchema.of(Rulebook.questions()));
    spec.commandLine().getOut().flush();
    return 0;
  }
}
