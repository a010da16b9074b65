package swineherd.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
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
  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

  @Mixin private Output output;

  @Override
  public Integer call() {
    WinterReport report = new WinterReport(Advisor.advise(argument.read(), ownRules.read()));
    output.print(() -> report.text(Style::bold), report::json, report::markdown);
    return 0;
  }
}
