package swineherd.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.report.JsonReport;
import swineherd.report.MarkdownReport;
import swineherd.report.TextReport;
import swineherd.setup.SetupReader;

/** Checks a setup file and prints the ranked checklist. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    header = "Check a setup and print what to do, the strongest first.",
    description = "Reads a setup in YAML or JSON. See scenarios/ for examples.")
final class CheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The setup; - reads standard input.")
  private Path file;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Format format;

  @Option(names = "--all", description = "Also list what is already in order.")
  private boolean all;

  @Option(names = "--show-rank", description = "Show how the rank of each item comes about.")
  private boolean showRank;

  private enum Format {
    text,
    json,
    markdown
  }

  @Override
  public Integer call() {
    Checklist checklist =
        Advisor.advise(SetupReader.read(file, LocalDate.now(ZoneId.systemDefault())));
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> new TextReport(checklist, all, showRank, Style::bold).render();
          case json -> new JsonReport(checklist).render();
          case markdown -> new MarkdownReport(checklist, all, showRank).render();
        });
    out.flush();
    return 0;
  }
}
