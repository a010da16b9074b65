package swineherd.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Callable;
import org.apache.commons.text.similarity.LevenshteinDistance;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.Item;
import swineherd.advice.KnowledgeBase;
import swineherd.compare.Remedies;
import swineherd.report.RemedyReport;
import swineherd.rulebook.Card;
import swineherd.rulebook.Rulebook;

/** Shows the smallest changes of answers that would take an item off the list. */
@Command(
    name = "remedy",
    mixinStandardHelpOptions = true,
    header = "Show the smallest changes that would take an item off the list.",
    description =
        "Give the id of an item on the list of that setup (check --show-rank shows them).")
final class RemedyCommand implements Callable<Integer> {
  private static final long PATIENCE = 20_000;

  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Parameters(index = "1", paramLabel = "ID", description = "The item, such as space.too-small.")
  private String id;

  @Option(
      names = "--about",
      paramLabel = "NAME",
      description = "The pigs or pen it is about, if it stands on the list for several.")
  private String about;

  @Mixin private RulesOption ownRules;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "text or json; default: ${DEFAULT-VALUE}.")
  private Format format;

  @Override
  public Integer call() {
    if (format == Format.markdown) {
      return refuse("There is no markdown of this; text or json.");
    }
    KnowledgeBase rules = ownRules.read();
    Checklist checklist = Advisor.advise(argument.read(), rules);
    List<Item> called = checklist.items().stream().filter(i -> isCalled(i.card(), id)).toList();
    List<Item> meant =
        called.stream().filter(i -> about == null || i.advice().about().equals(about)).toList();
    PrintWriter out = spec.commandLine().getOut();
    if (meant.isEmpty()) {
      if (!called.isEmpty()) {
        return refuse(
            id
                + " is not on the list about \""
                + about
                + "\", but about "
                + RemedyReport.names(called)
                + ".");
      }
      if (Rulebook.cards().values().stream().noneMatch(c -> isCalled(c, id))) {
        return refuse("There is no item " + id + suggestion());
      }
      out.print(
          format == Format.text
              ? RemedyReport.notOnTheList(id)
              : RemedyReport.notOnTheListAsJson(id));
      return 0;
    }
    Remedies.Found found = Remedies.of(checklist, rules, meant.get(0), PATIENCE);
    RemedyReport report = new RemedyReport(checklist, found, meant);
    out.print(format == Format.text ? report.text() : report.json());
    return 0;
  }

  private static boolean isCalled(Card card, String id) {
    return card.id().equals(id) || card.formerly().contains(id);
  }

  private int refuse(String message) {
    spec.commandLine().getErr().println(message);
    return CommandLine.ExitCode.USAGE;
  }

  /** The id nearest to what was typed, of those that are like it or of its topic. */
  private String suggestion() {
    LevenshteinDistance distance = new LevenshteinDistance(Math.max(1, id.length() / 4));
    String topic = id.contains(".") ? id.substring(0, id.indexOf('.') + 1) : id + ".";
    LevenshteinDistance any = LevenshteinDistance.getDefaultInstance();
    return Rulebook.cards().values().stream()
        .filter(c -> c.kind() == Card.Kind.ITEM)
        .map(Card::id)
        .filter(other -> other.startsWith(topic) || distance.apply(id, other) >= 0)
        .min(Comparator.comparingInt(other -> any.apply(id, other)))
        .map(near -> "; did you mean " + near + "?")
        .orElse(".");
  }
}
