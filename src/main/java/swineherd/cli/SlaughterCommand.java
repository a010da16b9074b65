package swineherd.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.report.SlaughterReport;
import swineherd.setup.SetupFile;

/** Tells whether each group is ready for slaughter, and the last weeks day by day. */
@Command(
    name = "slaughter",
    mixinStandardHelpOptions = true,
    header = "Tell whether pigs are ready for slaughter, and the last weeks day by day.",
    description =
        "Weight, withdrawal, standstill, taint, weather and booking of each group; the items of"
            + " the checklist that belong to it; cuts and freezer.")
final class SlaughterCommand implements Callable<Integer> {
  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

  @Mixin private Output output;

  @Override
  public Integer call() {
    SetupFile setup = argument.read();
    Checklist checklist = Advisor.advise(setup, ownRules.read());
    SlaughterReport report = new SlaughterReport(checklist, FigureSheet.of(setup.setup()));
    output.print(() -> report.text(Style::bold), report::json, report::markdown);
    return 0;
  }
}
