package swineherd.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.compare.Matters;
import swineherd.report.BriefReport;
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
  /** Somebody waits at the screen; what was not tried by then is said. */
  private static final long MOMENT = 3_000;

  /**
   * So many open questions are tried out under a list: enough to show the five that matter most.
   */
  private static final int FIRST = 8;

  /** Where nobody waits at a screen; far more than any setup of a keeper takes. */
  private static final long PATIENCE = 60_000;

  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Mixin private RulesOption ownRules;

  @Mixin private Output output;

  @Option(names = "--all", description = "Also list what is already in order.")
  private boolean all;

  @Option(names = "--show-rank", description = "Show how the rank of each item comes about.")
  private boolean showRank;

  @Option(
      names = "--brief",
      description =
          "One line for each item, for the barn door: what, by when, whom to call. In Markdown each"
              + " is a box to tick.")
  private boolean brief;

  @Option(
      names = "--matters",
      description =
          "Only tell which open questions would move the list, and how far: the plausible answers"
              + " of each are tried out, and of two at once where they are read together.")
  private boolean onlyMatters;

  @Option(
      names = "--record",
      description = "Add this check to FILE.checks, for recheck to compare with.")
  private boolean record;

  @Override
  public Integer call() {
    if (brief && (all || showRank || onlyMatters || output.format() == Format.json)) {
      throw new CommandLine.ParameterException(
          spec.commandLine(),
          "--brief goes with --format text or markdown, without --all, --show-rank or --matters.");
    }
    SetupFile setup = argument.read();
    KnowledgeBase rules = ownRules.read();
    Checklist checklist = Advisor.advise(setup, rules);
    if (brief) {
      BriefReport report = new BriefReport(checklist);
      output.print(output.format() == Format.text ? report.text() : report.markdown());
    } else {
      print(checklist, rules);
    }
    if (record) {
      Recording.record(spec, argument.file(), setup.setup().checkOn());
    }
    return 0;
  }

  private void print(Checklist checklist, KnowledgeBase rules) {
    TextReport text = new TextReport(checklist, all, showRank, Style::bold);
    if (output.format() == Format.text && !onlyMatters) {
      output.print(text.render()); // the keeper reads while the answers are tried out
    }
    Matters.Tried tried = tryOut(checklist, rules);
    output.print(
        () -> onlyMatters ? text.renderMatters(tried) : text.renderOpen(tried),
        () -> new JsonReport(checklist, tried.all()).render(),
        () -> new MarkdownReport(checklist, tried.all(), all, showRank).render());
  }

  private Matters.Tried tryOut(Checklist checklist, KnowledgeBase rules) {
    if (onlyMatters) {
      return Matters.withPairs(checklist, rules, PATIENCE);
    }
    return output.format() == Format.json
        ? Matters.of(checklist, rules, PATIENCE)
        : Matters.first(checklist, rules, MOMENT, FIRST);
  }
}
