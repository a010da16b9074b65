package swineherd.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
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
import swineherd.compare.Comparison;
import swineherd.report.NoteReport;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.Problem;
import swineherd.setup.SafeFile;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.setup.SetupText;
import swineherd.units.Dates;
import swineherd.units.UnreadableException;

/** Adds an entry to the diary of a setup file. */
@Command(
    name = "note",
    mixinStandardHelpOptions = true,
    header = "Note in the diary of a setup file what was done, and say what follows.",
    description = {
      "The entry is added to the diary in the file; everything else in it stays as it is. What"
          + " cannot be right is not written. The group may be left out if there is only one.",
      "",
      "  note pigs.yaml weighed weaners 45 lb",
      "  note pigs.yaml taped weaners 21 kg",
      "  note pigs.yaml treated weaners --active ivermectin --route injection --withdrawal \"28"
          + " days\"",
      "  note pigs.yaml moved weaners back field",
      "  note pigs.yaml died weaners --count 1",
      "  note pigs.yaml fed weaners new load of pellets",
      "  note pigs.yaml vet-said weaners rest, and look again on Friday",
      "  note pigs.yaml done fence.train-first weaners"
    })
final class NoteCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(index = "0", paramLabel = "FILE", description = "The setup.")
  private Path path;

  @Parameters(
      index = "1",
      paramLabel = "WHAT",
      description = "weighed, taped, treated, moved, died, fed, vet-said or done.")
  private String what;

  @Parameters(
      index = "2..*",
      paramLabel = "GROUP and WORDS",
      arity = "0..*",
      description =
          "The group, then the weight, the pen or free words; for done the item's id,"
              + " then the group or pen.")
  private List<String> words = List.of();

  @Option(names = "--on", paramLabel = "DATE", description = "The day it was; default: today.")
  private String on;

  @Option(
      names = "--pig",
      paramLabel = "TAG",
      description = "treated: which of the group, if not all; once for each treated pig.")
  private String pig;

  @Option(
      names = "--active",
      paramLabel = "WORD",
      description = "treated: the active ingredient, as the pack names it; no amount.")
  private String active;

  @Option(
      names = "--route",
      paramLabel = "WAY",
      description = "treated: injection, feed, water, pour-on or by-mouth.")
  private String route;

  @Option(
      names = "--withdrawal",
      paramLabel = "DAYS",
      description = "treated: the meat withdrawal on the label, such as \"28 days\".")
  private String withdrawal;

  @Option(
      names = "--vet-withdrawal",
      paramLabel = "DAYS",
      description = "treated: the meat withdrawal that the vet gave in writing.")
  private String vetWithdrawal;

  @Option(
      names = "--off-label",
      description = "treated: given other than the pack says; only the vet can give the days.")
  private boolean offLabel;

  @Option(
      names = "--girth",
      paramLabel = "LENGTH",
      description = "taped: the heart girth of a usual pig, instead of a weight.")
  private String girth;

  @Option(
      names = "--length",
      paramLabel = "LENGTH",
      description = "taped: its length, with the girth.")
  private String length;

  @Option(names = "--count", paramLabel = "N", description = "died: how many; default: 1.")
  private String count;

  @Option(names = "--note", paramLabel = "WORDS", description = "Anything to remember with it.")
  private String remark;

  @Mixin private RulesOption rules;

  @Override
  public Integer call() {
    if (path.toString().equals("-")) {
      throw wrong("Name the file that is to be written.");
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    SetupFile before = SetupReader.read(path, today);
    SafeFile file = open();
    KnowledgeBase knowledge = rules.read();
    LocalDate day = day(today);
    Checklist list = Advisor.advise(before, knowledge);
    Map<String, String> entry = entry(before.setup(), list, day);
    SetupText text = SetupText.of(path.toString(), file.text()).append("diary", entry);
    SetupFile after;
    try {
      after = text.read(today);
      mustBeKnown(entry.get("item"), knowledge);
    } catch (BadSetupException e) {
      tell(e, day, before.setup().checkOn());
      return CommandLine.ExitCode.USAGE;
    }
    Comparison comparison = Comparison.between(list, Advisor.advise(after, knowledge));
    try {
      file.write(text.text());
    } catch (IOException e) {
      throw wrong(path + ": " + e.getMessage());
    }
    PrintWriter out = spec.commandLine().getOut();
    out.print(new NoteReport(path.toString(), comparison).render());
    out.flush();
    return 0;
  }

  private SafeFile open() {
    try {
      return SafeFile.read(path);
    } catch (IOException e) {
      throw wrong(path + ": " + e.getMessage());
    }
  }

  private LocalDate day(LocalDate today) {
    try {
      return on == null || on.equalsIgnoreCase("today") ? today : Dates.parse(on);
    } catch (UnreadableException e) {
      throw wrong("--on: " + e.getMessage() + "; " + e.accepted() + ".");
    }
  }

  private Map<String, String> entry(Setup setup, Checklist list, LocalDate day) {
    NewEntry entry = new NewEntry(setup, new Refusal(spec));
    entry.on(day);
    entry.did(what);
    if (entry.isDone()) {
      entry.item(words, list);
    } else {
      entry.words(words, girth != null);
    }
    entry.put("pig", pig);
    entry.put("active", active);
    entry.put("route", route);
    entry.put("withdrawal", withdrawal);
    entry.put("vetWithdrawal", vetWithdrawal);
    entry.put("offLabel", offLabel ? "yes" : null);
    entry.put("girth", girth);
    entry.put("length", length);
    entry.put("count", count);
    entry.remark(remark);
    return entry.answers();
  }

  /** The reader lets items of topics that are not ours pass: they may be of rules of one's own. */
  private void mustBeKnown(String item, KnowledgeBase knowledge) {
    if (item != null
        && !knowledge.knows(item)
        && Rulebook.cards().values().stream().noneMatch(c -> c.formerly().contains(item))) {
      throw wrong("No item is called \"" + item + "\"; check --show-rank shows the id of each.");
    }
  }

  /** What is wrong with the entry; it has no place in the file yet. */
  private void tell(BadSetupException bad, LocalDate day, LocalDate checkOn) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("Nothing was written.");
    for (Problem problem : bad.problems()) {
      String name = problem.path().substring(problem.path().lastIndexOf('.') + 1);
      String accepted = problem.accepted() == null ? "" : "; " + problem.accepted();
      if (name.equals("on") && day.isAfter(checkOn)) {
        accepted =
            "; the file has checkOn, so give an earlier day with --on, or change checkOn there";
      }
      err.println(name + ": " + problem.message() + accepted);
    }
  }

  private ParameterException wrong(String message) {
    return new Refusal(spec).because(message);
  }
}
