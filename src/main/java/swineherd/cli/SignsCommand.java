package swineherd.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
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
import swineherd.ask.SignsHeard;
import swineherd.compare.FollowUps;
import swineherd.figures.Triage;
import swineherd.report.SignsReport;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.Group;
import swineherd.setup.Problem;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.units.Dimension;
import swineherd.units.Quantity;
import swineherd.units.UnreadableException;

/**
 * Tells how urgent signs of illness are, from the file, the command line or both. Whatever else is
 * wrong with the call, somebody who named a sign gets an answer: what cannot be used counts as not
 * said, which never makes it less urgent.
 */
@Command(
    name = "signs",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    header = "Something looks wrong: how urgent it is, whom to call, what to do meanwhile.",
    description = {
      "Give the signs in your own words after the file, or under signs in it. The file stays as it"
          + " is. Without a file it answers too, and takes what it does not know at its worst.",
      "Example: swineherd signs pigs.yaml \"one pig off feed since yesterday, 41 C\" coughing"
    })
final class SignsCommand implements Callable<Integer> {
  /** What nobody should have to wait for, whatever is wrong with the call. */
  static final String CALL =
      "Pig down, gasping, in fits, blistered or dead: call a vet now; do not wait.";

  private static final String NO_FILE = "no file";
  private static final Pattern FILE = Pattern.compile("(?i)-|.*\\.(?:ya?ml|json)|\\S*[/\\\\]\\S*");

  private static final Pattern DEGREES =
      Pattern.compile(
          "(?i)\\s*(\\d{2,3}(?:[.,]\\d+)?)\\s*(?:°|degrees?|deg\\.?)?\\s*(c|f)?(?:elsius|ahrenheit)?\\s*");

  /** A number in these bounds can only be one scale. */
  private static final double LEAST_C = 35;

  private static final double MOST_C = 45;
  private static final double LEAST_F = 95;
  private static final double MOST_F = 113;

  @Spec private CommandSpec spec;

  @Parameters(
      index = "0..*",
      paramLabel = "[FILE] SIGN",
      description = "The setup (- reads standard input), and what you see, in your words.")
  private List<String> words = List.of();

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Look at it as on this day, not the file's checkOn or today.")
  private LocalDate on;

  @Option(names = "--group", paramLabel = "NAME", description = "Which pigs.")
  private String group;

  @Option(names = "--count", paramLabel = "N", description = "How many show it.")
  private String count;

  @Option(
      names = "--since",
      paramLabel = "DATE",
      description = "Since when: a date, today, yesterday, \"3 days ago\".")
  private String since;

  @Option(
      names = "--temperature",
      paramLabel = "T",
      description = "Rectal temperature, such as \"40.5 C\" or \"105 F\".")
  private String temperature;

  @Option(names = "--breaths", paramLabel = "N", description = "Breaths in a minute, at rest.")
  private String breaths;

  @Option(
      names = "--age",
      paramLabel = "T",
      description = "Their age, such as \"10 weeks\", if the file does not say.")
  private String age;

  @Mixin private RulesOption ownRules;

  @Mixin private Output output;

  /** What is to be told beside the answer, a sentence each. */
  private final List<String> notes = new ArrayList<>();

  /** What could not be used. */
  private final List<String> faults = new ArrayList<>();

  @Override
  public Integer call() {
    boolean filed = !words.isEmpty() && isFile(words.get(0));
    SetupFile setup = filed ? read(words.get(0)) : none();
    List<String> typed = filed ? words.subList(1, words.size()) : words;
    LocalDate today = setup.setup().checkOn();
    SignsHeard.Result heard = SignsHeard.hear(typed, today);
    notes.addAll(heard.notes());
    setup = aged(setup);
    List<SignsHeard.Told> signs = signs(heard);
    for (SignsHeard.Told sign : signs) {
      setup = with(setup, answers(heard, sign, today));
    }
    if (setup.setup().signs().isEmpty()) {
      throw new ParameterException(spec.commandLine(), nothing(heard));
    }
    tell(setup, heard);
    faults.stream().distinct().forEach(spec.commandLine().getErr()::println);
    return faults.isEmpty() ? CommandLine.ExitCode.OK : CommandLine.ExitCode.USAGE;
  }

  private void tell(SetupFile setup, SignsHeard.Result heard) {
    KnowledgeBase rules = ownRules.read();
    Checklist checklist = Advisor.advise(setup, rules);
    SignsReport report =
        new SignsReport(
            checklist,
            FollowUps.of(checklist, rules),
            new SignsReport.Beside(
                notes.stream().distinct().toList(),
                heard.unknown(),
                heard.people(),
                heard.breeding(),
                setup.file().equals(NO_FILE)));
    output.print(() -> report.text(Style::bold), report::json, report::markdown);
  }

  private static boolean isFile(String word) {
    try {
      return FILE.matcher(word).matches() || Files.isRegularFile(Path.of(word));
    } catch (InvalidPathException e) {
      return false;
    }
  }

  private LocalDate today() {
    return on == null ? LocalDate.now(ZoneId.systemDefault()) : on;
  }

  /** The setup; an empty one if it cannot be used and signs were named beside it. */
  private SetupFile read(String file) {
    try {
      SetupFile setup = SetupReader.read(Path.of(file), today());
      return on == null ? setup : setup.with("checkOn", on.toString());
    } catch (BadSetupException e) {
      if (words.size() == 1) {
        throw e;
      }
      notes.add("Your file cannot be used, so this is said without it: see the end.");
      faults.add("Of the file nothing was used:");
      e.problems().forEach(p -> faults.add(p.at(e.file())));
      return none();
    } catch (InvalidPathException e) {
      throw new ParameterException(spec.commandLine(), "no file can be called " + file);
    }
  }

  private SetupFile none() {
    return SetupReader.read(NO_FILE, "checkOn: " + today(), today());
  }

  private List<SignsHeard.Told> signs(SignsHeard.Result heard) {
    boolean measured = temperature != null || breaths != null;
    boolean told = heard.temperature() != null || heard.breaths() != null;
    if (heard.signs().isEmpty() && (measured || told || count != null)) {
      return List.of(new SignsHeard.Told("unknown", null));
    }
    return heard.signs();
  }

  private String nothing(SignsHeard.Result heard) {
    String said = "";
    if (!heard.unknown().isEmpty()) {
      said =
          "\""
              + String.join("\", \"", heard.unknown())
              + "\" is not a sign that is known here. If it worries you, call the vet today.\n";
    }
    String noted = notes.isEmpty() ? "" : String.join("\n", notes) + "\n";
    return said
        + noted
        + SignsReport.notForPigs(heard.people(), heard.breeding())
        + "Say what you see, after the file.\n"
        + SignsReport.known();
  }

  /** The setup with the age that was said, where it says none itself. */
  private SetupFile aged(SetupFile setup) {
    if (age == null) {
      return setup;
    }
    try {
      long days = Math.round(Quantity.parse(age, Dimension.TIME));
      String born = setup.setup().checkOn().minusDays(days).toString();
      List<Group> groups = setup.setup().pigs();
      if (groups.isEmpty() && setup.file().equals(NO_FILE)) {
        String text = "{checkOn: %s, pigs: [{name: your pigs, born: %s}]}";
        LocalDate today = setup.setup().checkOn();
        return SetupReader.read(NO_FILE, text.formatted(today, born), today);
      }
      for (int i = 0; i < groups.size(); i++) {
        Group pigs = groups.get(i);
        boolean meant = groups.size() == 1 || pigs.name().equals(group);
        boolean open =
            pigs.born() == null && (pigs.arrives() == null || pigs.ageOnArrival() == null);
        if (meant && open) {
          return setup.with("pigs[" + i + "].born", born);
        }
      }
      notes.add("The age was not used: the file says it, or it is not clear of which pigs.");
    } catch (UnreadableException e) {
      dropped("--age", age, e.getMessage() + "; " + e.accepted());
    } catch (BadSetupException e) {
      dropped("--age", age, e.problems().get(0).message());
    }
    return setup;
  }

  private void dropped(String what, String said, String why) {
    String shown = said.replaceAll("\\p{Cntrl}", " ");
    notes.add(
        "%s \"%s\" cannot be used and counts as not said: see the end.".formatted(what, shown));
    faults.add(what + ": " + why);
  }

  private Map<String, String> answers(
      SignsHeard.Result heard, SignsHeard.Told sign, LocalDate today) {
    Map<String, String> answers = new LinkedHashMap<>();
    answers.put("sign", words(sign.sign()));
    answers.put("pigs", group);
    answers.put("count", count != null ? SignsHeard.number(count) : number(sign.count()));
    answers.put("since", since != null ? SignsHeard.day(since, today) : number(heard.since()));
    answers.put("temperature", degrees(temperature != null ? temperature : heard.temperature()));
    answers.put("breaths", breaths != null ? breaths : heard.breaths());
    answers.values().removeIf(a -> a == null);
    return answers;
  }

  /** A sign in two or three words, where those name it; its key where they do not. */
  private static String words(String sign) {
    if (sign.equals("unknown")) {
      return sign;
    }
    String label = Triage.of(sign).label();
    return Rulebook.questions().get("signs.sign").choice(label).filter(sign::equals).isPresent()
        ? label
        : sign;
  }

  private static String number(Object value) {
    return value == null ? null : value.toString();
  }

  /** A temperature with the unit it can only have; others as they were typed. */
  private String degrees(String typed) {
    Matcher matcher = DEGREES.matcher(typed == null ? "" : typed);
    if (!matcher.matches()) {
      return typed;
    }
    String digits = matcher.group(1).replace(',', '.');
    double number = Double.parseDouble(digits);
    String said = matcher.group(2) == null ? "" : matcher.group(2).toUpperCase(Locale.ROOT);
    boolean celsius = number >= LEAST_C && number <= MOST_C;
    boolean fahrenheit = number >= LEAST_F && number <= MOST_F;
    String unit = celsius ? "C" : fahrenheit ? "F" : said;
    if (!said.isEmpty() && !said.equals(unit)) {
      notes.add("Read %s %s as %s %s: no pig has the other.".formatted(digits, said, digits, unit));
    }
    return (digits + " " + unit).strip();
  }

  /** The setup with one more sign; what cannot be used of it is told and counts as not said. */
  private SetupFile with(SetupFile setup, Map<String, String> answers) {
    Map<String, String> usable = new LinkedHashMap<>(answers);
    while (true) {
      try {
        return setup.and("signs", usable);
      } catch (BadSetupException e) {
        boolean less = false;
        for (Problem problem : e.problems()) {
          String name = problem.path().substring(problem.path().lastIndexOf('.') + 1);
          String said = problem.path().startsWith("signs[") ? usable.remove(name) : null;
          if (said != null) {
            less = true;
            dropped(
                "--" + name.replace("pigs", "group"),
                said,
                problem.message() + (problem.accepted() == null ? "" : "; " + problem.accepted()));
          }
        }
        if (!less) {
          throw e;
        }
      }
    }
  }
}
