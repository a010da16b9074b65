package swineherd.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.report.RulePage;
import swineherd.rulebook.Card;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;

/** Shows the page of a rule, the whole catalogue, or the rules that speak of a word. */
@Command(
    name = "why",
    mixinStandardHelpOptions = true,
    header = "Show what a rule says, when it applies, and what it rests on.",
    description = "Give the id of a rule (check --show-rank shows them), or words to look for.")
final class WhyCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "ID or WORD", arity = "0..*", description = "A rule, or words.")
  private List<String> words = List.of();

  @Option(names = "--all", description = "All rules, topic by topic.")
  private boolean all;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Page format;

  private enum Page {
    text,
    markdown
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (all) {
      catalogue(out);
      return 0;
    }
    if (words.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "Name a rule or a word, or say --all.");
    }
    if (words.size() == 1 && id(words.get(0)).isPresent()) {
      RulePage page = new RulePage(id(words.get(0)).get());
      out.print(format == Page.text ? page.text() : page.markdown());
      return 0;
    }
    List<RuleInfo> found = Rulebook.rules().values().stream().filter(this::speaksOf).toList();
    found.forEach(rule -> out.println(line(rule)));
    if (found.isEmpty()) {
      spec.commandLine().getErr().println("No rule speaks of " + String.join(" ", words) + ".");
      return CommandLine.ExitCode.USAGE;
    }
    return 0;
  }

  /** The id of a rule, also under a name it had before. */
  private static Optional<String> id(String word) {
    if (Rulebook.rules().containsKey(word)) {
      return Optional.of(word);
    }
    return Rulebook.cards().values().stream()
        .filter(card -> card.formerly().contains(word))
        .map(Card::id)
        .findFirst();
  }

  private boolean speaksOf(RuleInfo rule) {
    Card card = rule.cardId() == null ? null : Rulebook.card(rule.id());
    String text =
        (rule.id() + " " + rule.when() + (card == null ? "" : " " + card)).toLowerCase(Locale.ROOT);
    return words.stream().allMatch(word -> text.contains(word.toLowerCase(Locale.ROOT)));
  }

  private static String line(RuleInfo rule) {
    return rule.id()
        + (rule.cardId() == null ? "" : "  " + Rulebook.card(rule.id()).heading().strip());
  }

  private void catalogue(PrintWriter out) {
    String topic = "";
    if (format == Page.markdown) {
      out.println("# The rules of swineherd");
    }
    for (RuleInfo rule : Rulebook.rules().values()) {
      if (!rule.topic().equals(topic)) {
        topic = rule.topic();
        out.println(format == Page.markdown ? "\n## " + topic : "\n" + topic);
      }
      out.print(
          format == Page.markdown
              ? new RulePage(rule.id()).markdown()
              : "  " + line(rule) + System.lineSeparator());
    }
  }
}
