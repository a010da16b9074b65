package swineherd.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.compare.Matters;
import swineherd.report.JsonReport;
import swineherd.report.MarkdownReport;
import swineherd.report.TextReport;
import swineherd.setup.SetupFile;

/** Checks a setup file and prints the ranked checklist. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    header = "Check a setup and print what to do, the strongest first.",
    description = {
      "Reads a setup in YAML or JSON. See scenarios/ for examples.",
      "Writes nothing, unless told to with --record."
    })
final class CheckCommand implements Callable<Integer> {
  private static final long LONGEST_MILLISECONDS = 5_000;

  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

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

  @Option(
      names = "--matters",
      description =
          "Try out the plausible answers of every open question and tell which would move the list"
              + " farthest; takes a second.")
  private boolean tryOut;

  @Option(
      names = "--record",
      description = "Add this check to FILE.checks, for recheck to compare with.")
  private boolean record;

  private List<Matters.Matter> matters(Checklist checklist, KnowledgeBase rules) {
    return tryOut ? Matters.of(checklist, rules, LONGEST_MILLISECONDS) : Matters.resting(checklist);
  }

  @Override
  public Integer call() {
    SetupFile setup = argument.read();
    KnowledgeBase rules = ownRules.read();
    Checklist checklist = Advisor.advise(setup, rules);
    PrintWriter out = spec.commandLine().getOut();
    if (format == Format.text) {
      TextReport report = new TextReport(checklist, all, showRank, Style::bold);
      out.print(report.render());
      out.flush(); // the keeper reads while the rest is worked out
      out.print(report.renderOpen(matters(checklist, rules)));
    } else if (format == Format.markdown) {
      out.print(new MarkdownReport(checklist, matters(checklist, rules), all, showRank).render());
    } else {
      out.print(new JsonReport(checklist, matters(checklist, rules)).render());
    }
    out.flush();
    if (record) {
      Recording.record(spec, argument.file(), setup.setup().checkOn());
    }
    return 0;
  }
}
