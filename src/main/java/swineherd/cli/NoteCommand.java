package swineherd.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
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
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setup.BadSetupException;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.Pen;
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
      names = "--active",
      paramLabel = "WORD",
      description = "treated: the active ingredient, as the pack names it.")
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

  @Option(names = "--count", paramLabel = "N", description = "died: how many; default: 1.")
  private String count;

  @Option(names = "--note", paramLabel = "WORDS", description = "Anything to remember with it.")
  private String remark;

  @Mixin private RulesOption rules;

  private final Map<String, String> entry = new LinkedHashMap<>();

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
    fill(before.setup(), list, day);
    SetupText text = SetupText.of(path.toString(), file.text()).append("diary", entry);
    SetupFile after;
    try {
      after = text.read(today);
      mustBeKnown(knowledge);
    } catch (BadSetupException e) {
      tell(e, before.setup());
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

  private void fill(Setup setup, Checklist list, LocalDate day) {
    Question question = Rulebook.questions().get("diary.did");
    DiaryEntry.Did did = null;
    for (DiaryEntry.Did known : DiaryEntry.Did.values()) {
      if (known.name().replace('_', '-').equalsIgnoreCase(what)) {
        did = known;
      }
    }
    if (did == null) {
      throw wrong(
          "\""
              + what
              + "\" is nothing that can be noted; one of: "
              + String.join(", ", question.choices().keySet())
              + ".");
    }
    entry.put("on", day.toString());
    entry.put("did", what.toLowerCase(java.util.Locale.ROOT));
    if (did == DiaryEntry.Did.DONE) {
      done(setup, list);
    } else {
      String rest = group(setup);
      switch (did) {
        case WEIGHED, TAPED -> entry.put("weight", needed(rest, "the weight, such as 45 lb"));
        case MOVED -> {
          List<String> pens = setup.pens().stream().map(Pen::name).toList();
          mustBeThere(spec, "pen", needed(rest, "the pen they were moved to"), pens);
          entry.put("pen", rest);
        }
        case DIED, TREATED -> {
          if (!rest.isEmpty()) {
            throw wrong("\"" + rest + "\" is no group; " + groups(setup) + ".");
          }
        }
        default -> entry.put("note", needed(rest, "words"));
      }
    }
    put("active", active);
    put("route", route);
    put("withdrawal", withdrawal);
    put("count", count);
    if (remark != null) {
      entry.merge("note", remark, (a, b) -> a + "; " + b);
    }
  }

  private void put(String name, String said) {
    if (said != null) {
      entry.put(name, said);
    }
  }

  private String needed(String rest, String what) {
    if (rest.isBlank()) {
      throw wrong("Say " + what + ".");
    }
    return rest;
  }

  /** Takes the group from the front of the words; it may be left out if there is only one. */
  private String group(Setup setup) {
    for (int n = words.size(); n > 0; n--) {
      String name = String.join(" ", words.subList(0, n));
      for (Group group : setup.pigs()) {
        if (group.name().equalsIgnoreCase(name)) {
          entry.put("pigs", group.name());
          return String.join(" ", words.subList(n, words.size()));
        }
      }
    }
    String all = String.join(" ", words);
    if (setup.pigs().size() != 1) {
      String first = words.isEmpty() ? "" : "\"" + words.get(0) + "\" is no group; ";
      throw wrong((first + "say which pigs; " + groups(setup)) + ".");
    }
    entry.put("pigs", setup.pigs().get(0).name());
    return all;
  }

  private static String groups(Setup setup) {
    return setup.pigs().isEmpty()
        ? "there are no groups in the file"
        : "one of: " + String.join(", ", setup.pigs().stream().map(Group::name).toList());
  }

  /** The item, and whom it was done for; that may be left out if it is on the list once. */
  private void done(Setup setup, Checklist list) {
    if (words.isEmpty()) {
      throw wrong("Say which item; check --show-rank shows the id of each.");
    }
    String item = words.get(0);
    entry.put("item", item);
    String about = String.join(" ", words.subList(1, words.size()));
    if (about.isEmpty()) {
      List<String> all =
          list.items().stream()
              .filter(i -> i.id().equals(item))
              .map(i -> i.advice().about())
              .distinct()
              .toList();
      if (all.size() > 1) {
        throw wrong(item + " is on the list for " + String.join(", ", all) + "; say for which.");
      }
      about = all.isEmpty() ? "" : all.get(0);
    }
    if (setup.group(about).isPresent()) {
      entry.put("pigs", about);
    } else if (setup.pen(about).isPresent()) {
      entry.put("pen", about);
    } else if (!about.isEmpty() && words.size() > 1) {
      List<String> names = new ArrayList<>(setup.pigs().stream().map(Group::name).toList());
      setup.pens().forEach(pen -> names.add(pen.name()));
      mustBeThere(spec, "group or pen", about, names);
    }
  }

  /** The reader lets items of topics that are not ours pass: they may be of rules of one's own. */
  private void mustBeKnown(KnowledgeBase knowledge) {
    String item = entry.get("item");
    if (item != null
        && !knowledge.knows(item)
        && Rulebook.cards().values().stream().noneMatch(c -> c.formerly().contains(item))) {
      throw wrong("No item is called \"" + item + "\"; check --show-rank shows the id of each.");
    }
  }

  /** What is wrong with the entry; it has no place in the file yet. */
  private void tell(BadSetupException bad, Setup setup) {
    PrintWriter err = spec.commandLine().getErr();
    err.println("Nothing was written.");
    for (Problem problem : bad.problems()) {
      String name = problem.path().substring(problem.path().lastIndexOf('.') + 1);
      String accepted = problem.accepted() == null ? "" : "; " + problem.accepted();
      if (name.equals("on") && entry.get("on").compareTo(setup.checkOn().toString()) > 0) {
        accepted =
            "; the file has checkOn, so give an earlier day with --on, or change checkOn there";
      }
      err.println(name + ": " + problem.message() + accepted);
    }
  }

  static void mustBeThere(CommandSpec spec, String what, String name, List<String> names) {
    if (!names.contains(name)) {
      throw new ParameterException(
          spec.commandLine(),
          "No "
              + what
              + " is called \""
              + name
              + "\"; "
              + (names.isEmpty() ? "there is none." : "one of: " + String.join(", ", names) + "."));
    }
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
