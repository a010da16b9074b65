package swineherd.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.advice.KnowledgeBase;
import swineherd.compare.FollowUps;
import swineherd.report.SignsReport;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.Problem;
import swineherd.setup.SetupFile;

/** Tells how urgent signs of illness are, from the file, the command line or both. */
@Command(
    name = "signs",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Something looks wrong: how urgent it is, whom to call, what to do meanwhile.",
    description = {
      "Give the signs in your own words after the file, or under signs in it. The file stays as it"
          + " is.",
      "Example: swineherd signs pigs.yaml \"off feed\" coughing --count 1 --temperature \"41 C\""
    })
final class SignsCommand implements Callable<Integer> {
  /** Longest name of a sign that may be written without quotes, in words. */
  private static final int LONGEST = 6;

  /** What nobody should have to wait for, whatever is wrong with the file or the words. */
  private static final String CALL =
      "If a pig is down, cannot breathe, has fits or blisters, or pigs died: call a vet now; do not"
          + " wait.";

  private static final Pattern WORDS = Pattern.compile("[\\s,.;:!?]+");
  private static final Pattern NUMBER = Pattern.compile("\\d{1,3}(\\.\\d+)?");

  private static final Set<String> NOT = Set.of("no", "not", "without", "never", "isnt", "isn't");

  private static final Set<String> FILLERS =
      Set.of(
          "a", "an", "and", "are", "at", "but", "has", "have", "he", "hes", "he's", "her", "his",
          "in", "is", "it", "its", "it's", "of", "on", "one", "our", "she", "shes", "she's", "some",
          "the", "their", "them", "they", "theyre", "they're", "this", "to", "very", "with");

  /** A bare number in these bounds can only be one scale. */
  private static final double LEAST_C = 35;

  private static final double MOST_C = 45;
  private static final double LEAST_F = 95;
  private static final double MOST_F = 113;

  @Spec private CommandSpec spec;

  @Mixin private SetupArgument argument;

  @Parameters(index = "1..*", paramLabel = "SIGN", description = "What you see, in your words.")
  private List<String> words = List.of();

  @Option(names = "--group", paramLabel = "NAME", description = "Which pigs.")
  private String group;

  @Option(names = "--count", paramLabel = "N", description = "How many show it.")
  private String count;

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description = "Since when: a date, today or yesterday.")
  private String since;

  @Option(
      names = "--temperature",
      paramLabel = "T",
      description = "Rectal temperature, such as \"40.5 C\" or \"105 F\".")
  private String temperature;

  @Option(names = "--breaths", paramLabel = "N", description = "Breaths in a minute, at rest.")
  private String breaths;

  @Mixin private RulesOption ownRules;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "text",
      description = "${COMPLETION-CANDIDATES}; default: ${DEFAULT-VALUE}.")
  private Format format;

  @Override
  public Integer call() {
    try {
      return tell();
    } catch (BadSetupException | ParameterException e) {
      spec.commandLine().getErr().println(CALL);
      throw e;
    }
  }

  private int tell() {
    SetupFile setup = argument.read();
    for (String sign : signs(setup)) {
      setup = setup.and("signs", answers(setup.setup().checkOn(), sign));
    }
    if (setup.setup().signs().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "Say what you see, after the file.\n" + SignsReport.known());
    }
    KnowledgeBase rules = ownRules.read();
    Checklist checklist = Advisor.advise(setup, rules);
    SignsReport report = new SignsReport(checklist, FollowUps.of(checklist, rules));
    PrintWriter out = spec.commandLine().getOut();
    out.print(
        switch (format) {
          case text -> report.text(Style::bold);
          case json -> report.json();
          case markdown -> report.markdown();
        });
    out.flush();
    return 0;
  }

  /** The signs that were named: the longest run of words that names one is one. */
  private List<String> signs(SetupFile setup) {
    Question question = Rulebook.questions().get("signs.sign");
    List<String> typed = typed(question);
    Set<String> signs = new LinkedHashSet<>();
    List<String> unknown = new ArrayList<>();
    boolean not = false;
    for (int from = 0; from < typed.size(); ) {
      int to = Math.min(typed.size(), from + LONGEST);
      while (to > from && question.choice(String.join(" ", typed.subList(from, to))).isEmpty()) {
        to--;
      }
      if (to == from) {
        String word = typed.get(from);
        not = NOT.contains(word);
        if (!not && !FILLERS.contains(word)) {
          unknown.add(word);
        }
        from++;
      } else {
        if (!not) {
          signs.add(String.join(" ", typed.subList(from, to)));
        }
        not = false;
        from = to;
      }
    }
    if (signs.isEmpty() && !unknown.isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), unknown(setup, unknown.get(0)) + "\n" + SignsReport.known());
    }
    if (!unknown.isEmpty()) {
      spec.commandLine()
          .getErr()
          .println("Not understood; tell the vet of it too: " + String.join(" ", unknown));
    }
    if (signs.isEmpty() && (count != null || temperature != null || breaths != null)) {
      signs.add("unknown");
    }
    return List.copyOf(signs);
  }

  /** What was typed; a sentence that is no sign by itself in its words, without stops. */
  private List<String> typed(Question question) {
    List<String> typed = new ArrayList<>();
    for (String argument : words) {
      if (question.choice(argument).isPresent()) {
        typed.add(argument);
      } else {
        for (String word : WORDS.split(argument.toLowerCase(Locale.ROOT).strip())) {
          if (!word.isEmpty()) {
            typed.add(word);
          }
        }
      }
    }
    return typed;
  }

  /** A temperature without its unit, where it can only be one. */
  private String degrees() {
    if (temperature == null || !NUMBER.matcher(temperature.strip()).matches()) {
      return temperature;
    }
    double number = Double.parseDouble(temperature.strip());
    if (number >= LEAST_C && number <= MOST_C) {
      return temperature + " C";
    }
    return number >= LEAST_F && number <= MOST_F ? temperature + " F" : temperature;
  }

  private Map<String, String> answers(LocalDate today, String sign) {
    Map<String, String> answers = new LinkedHashMap<>();
    answers.put("sign", sign);
    answers.put("pigs", group);
    answers.put("count", count);
    answers.put("since", day(today));
    answers.put("temperature", degrees());
    answers.put("breaths", breaths);
    answers.values().removeIf(a -> a == null);
    return answers;
  }

  private String day(LocalDate today) {
    if (since == null) {
      return null;
    }
    return switch (since.toLowerCase(Locale.ROOT)) {
      case "today" -> today.toString();
      case "yesterday" -> today.minusDays(1).toString();
      default -> since;
    };
  }

  private static String unknown(SetupFile setup, String word) {
    try {
      setup.and("signs", Map.of("sign", word));
      throw new IllegalStateException("\"" + word + "\" was not known, and is");
    } catch (BadSetupException e) {
      Problem problem = e.problems().get(e.problems().size() - 1);
      String near = problem.accepted() == null ? "" : problem.accepted();
      int end = near.indexOf('?');
      return "\""
          + word
          + "\" is not a sign that is known here."
          + (end < 0 ? "" : " D" + near.substring(1, end + 1));
    }
  }
}
