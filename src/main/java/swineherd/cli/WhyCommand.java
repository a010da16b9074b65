package swineherd.cli;

import java.io.PrintWriter;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.advice.KnowledgeBase;
import swineherd.report.RulePage;
import swineherd.report.RuleSearch;
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

  @Mixin private RulesOption ownRules;

  private KnowledgeBase own;

  private enum Page {
    text,
    markdown
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    own = ownRules.isGiven() ? ownRules.read() : null;
    Map<String, RuleInfo> rules = own == null ? Rulebook.rules() : own.rules();
    if (all) {
      catalogue(out, rules);
      return 0;
    }
    if (words.isEmpty()) {
      throw new ParameterException(spec.commandLine(), "Name a rule or a word, or say --all.");
    }
    if (words.size() == 1 && id(words.get(0), rules).isPresent()) {
      RulePage page = page(rules.get(id(words.get(0), rules).get()));
      out.print(format == Page.text ? page.text() : page.markdown());
      return 0;
    }
    RuleSearch search = new RuleSearch(rules.values(), this::card);
    List<RuleInfo> found = search.find(words);
    found.forEach(rule -> out.println(line(rule)));
    if (!found.isEmpty()) {
      return 0;
    }
    PrintWriter err = spec.commandLine().getErr();
    err.println("No rule speaks of " + String.join(" ", words) + ".");
    List<RuleInfo> near = search.near(String.join(" ", words));
    if (!near.isEmpty()) {
      err.println("Did you mean:");
      near.forEach(rule -> err.println("  " + line(rule)));
    }
    return CommandLine.ExitCode.USAGE;
  }

  /** The id of a rule, also under a name it had before. */
  private static Optional<String> id(String word, Map<String, RuleInfo> rules) {
    if (rules.containsKey(word)) {
      return Optional.of(word);
    }
    return Rulebook.cards().values().stream()
        .filter(card -> card.formerly().contains(word))
        .map(Card::id)
        .findFirst();
  }

  /** The card of a rule; null for one that only concludes something for others. */
  private Card card(RuleInfo rule) {
    if (rule.cardId() == null) {
      return null;
    }
    return own == null ? Rulebook.card(rule.id()) : own.card(rule.id());
  }

  private RulePage page(RuleInfo rule) {
    return new RulePage(rule, card(rule));
  }

  private String line(RuleInfo rule) {
    Card card = card(rule);
    return rule.id() + (card == null ? "" : "  " + RulePage.plain(card.heading()));
  }

  private void catalogue(PrintWriter out, Map<String, RuleInfo> rules) {
    Map<String, List<RuleInfo>> topics =
        rules.values().stream()
            .sorted(Comparator.comparing(RuleInfo::id))
            .collect(Collectors.groupingBy(RuleInfo::topic, TreeMap::new, Collectors.toList()));
    if (format == Page.markdown) {
      out.println("# The rules of swineherd");
      out.println("\n" + RulePage.BRACES + "\n");
      topics.forEach(
          (topic, of) -> out.println("- [%s](#%s), %d rules".formatted(topic, topic, of.size())));
    }
    topics.forEach((topic, of) -> topic(out, topic, of));
  }

  private void topic(PrintWriter out, String topic, Collection<RuleInfo> rules) {
    if (format == Page.text) {
      out.println("\n" + topic);
      rules.forEach(rule -> out.println("  " + line(rule)));
      return;
    }
    out.println("\n## " + topic + "\n");
    rules.forEach(rule -> out.println(page(rule).link()));
    rules.forEach(rule -> out.print(page(rule).markdown()));
  }
}
