package swineherd.cli;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.report.WinterReport;

/** Tells which pigs meet the winter, and what to have ready by which day. */
@Command(
    name = "winter",
    mixinStandardHelpOptions = true,
    header = "Print who is still there when it freezes, and what to have ready by when.",
    description =
        "The winter side of the checklist, by date. Say when the first hard frost comes and how"
            + " cold the nights get, or the hardiness zone.")
final class WinterCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Format format;

  @Override
  public Integer call() {
    WinterReport report = new WinterReport(Advisor.advise(argument.read(), ownRules.read()));
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> report.text(Style::bold);
          case markdown -> report.markdown();
          case json -> report.json();
        });
    out.flush();
    return 0;
  }
}
