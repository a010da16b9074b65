package swineherd.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.report.ChartException;
import swineherd.report.Charts;
import swineherd.report.FiguresReport;

/** Works out every figure that a setup allows and prints the tables. */
@Command(
    name = "figures",
    mixinStandardHelpOptions = true,
    header = "Print every figure for a setup: growth, feed, water, room, meat, money.",
    description =
        "Reads a setup in YAML or JSON. What cannot be worked out says which answer is missing.")
final class FiguresCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Table format;

  @Option(names = "--sources", description = "Also say what each table rests on.")
  private boolean sources;

  @Option(
      names = "--chart",
      paramLabel = "FILE.svg",
      description = "Also draw growth, feed and budget into this file.")
  private Path chart;

  private enum Table {
    text,
    json,
    csv
  }

  @Override
  public Integer call() {
    FigureSheet sheet = FigureSheet.of(argument.read().setup());
    if (chart != null) {
      try {
        draw(sheet);
      } catch (ChartException e) {
        spec.commandLine().getErr().println(e.getMessage());
        return e.isBadPlace() ? CommandLine.ExitCode.USAGE : CommandLine.ExitCode.SOFTWARE;
      }
    }
    FiguresReport report = new FiguresReport(sheet);
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> report.text(sources, Style::bold);
          case json -> report.json();
          case csv -> report.csv();
        });
    out.flush();
    return 0;
  }

  /** The chart comes first: if it cannot be drawn, that is all that is said. */
  private void draw(FigureSheet sheet) {
    if (!Charts.write(sheet, chart)) {
      spec.commandLine().getErr().println("There is nothing to draw yet, so no chart was written.");
    }
  }
}
