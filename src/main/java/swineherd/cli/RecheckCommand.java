package swineherd.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.compare.Comparison;
import swineherd.report.Lines;
import swineherd.report.RecheckReport;
import swineherd.setup.CheckJournal;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.SafeFile;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.setup.SetupText;
import swineherd.units.Dates;

/** Shows what has changed since an earlier check, or what a move of pigs would change. */
@Command(
    name = "recheck",
    mixinStandardHelpOptions = true,
    header = "Show only what has changed since the last check, and why.",
    description = {
      "With one file: since its last recorded check. The check is then recorded: the setup as it is"
          + " now is added to FILE.checks beside it. Nothing else records but check --record.",
      "With two files: what the second changes against the first. Nothing is recorded.",
      "With --move: what would change if the pigs were moved. Nothing is written or recorded."
    })
final class RecheckCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "[EARLIER] FILE",
      arity = "1..2",
      description =
          "The setup as it is now; before it, if it is not to be the last recorded check,"
              + " the setup as it was.")
  private List<Path> files;

  @Option(
      names = "--on",
      paramLabel = "DATE",
      description = "Look at it as on this day, not the file's checkOn or today.")
  private LocalDate on;

  @Option(
      names = "--move",
      paramLabel = "[GROUP=]PEN",
      description = "Suppose the pigs were moved to this pen that day.")
  private List<String> moves = List.of();

  @Mixin private RulesOption rules;

  @Mixin private Output output;

  @Override
  public Integer call() throws IOException {
    Path file = files.get(files.size() - 1);
    if (files.size() == 2 && !moves.isEmpty()) {
      throw wrong("--move goes with one file: the setup as it is now.");
    }
    if (files.size() == 2) {
      print(
          Comparison.of(asOf(read(files.get(0)), null), asOf(read(file), on), rules.read()), null);
      return 0;
    }
    if (file.toString().equals("-")) {
      throw wrong("What is read from standard input has no record; name a file.");
    }
    return moves.isEmpty() ? sinceLast(file) : supposed(file);
  }

  private int sinceLast(Path file) throws IOException {
    String text = text(file);
    SetupFile now = asOf(SetupReader.read(file.toString(), text, today()), on);
    LocalDate day = now.setup().checkOn();
    CheckJournal journal = CheckJournal.of(file);
    PrintWriter err = spec.commandLine().getErr();
    if (journal.damaged() > 0) {
      err.println(
          journal.file()
              + ": "
              + journal.damaged()
              + " damaged; passed over, the others are good.");
    }
    Optional<CheckJournal.Check> last = journal.lastUntil(day);
    if (last.isEmpty() && !journal.checks().isEmpty()) {
      throw wrong("Every recorded check of it is of a later day than " + day + ".");
    }
    if (last.isEmpty()) {
      Recording.record(spec, journal, new CheckJournal.Check(day, text));
      first(day);
      return 0;
    }
    CheckJournal.Check check = last.get();
    SetupFile then = SetupReader.read(file.toString(), check.text(), check.checkedOn());
    print(Comparison.of(asOf(then, check.checkedOn()), now, rules.read()), null);
    Recording.record(spec, journal, new CheckJournal.Check(day, text));
    return 0;
  }

  private void first(LocalDate day) {
    String words =
        "No check of it was recorded yet. This one is; recheck compares with it from now on.";
    output.print(
        switch (output.format()) {
          case text -> new Lines().add("", words).toString();
          case markdown -> "# Checked " + Dates.words(day) + "\n\n" + words + "\n";
          case json -> "{\"on\": \"" + day + "\", \"recorded\": true, \"firstCheck\": true}\n";
        });
  }

  private int supposed(Path file) {
    String text = text(file);
    SetupFile before = asOf(SetupReader.read(file.toString(), text, today()), on);
    SetupText moved = SetupText.of(file.toString(), text);
    String words = "";
    for (String move : moves) {
      String[] parts = move.split("=", 2);
      Setup setup = before.setup();
      String group = parts.length == 2 ? parts[0].strip() : only(setup);
      String pen = parts[parts.length - 1].strip();
      Refusal refusal = new Refusal(spec);
      refusal.unlessOneOf("group", group, setup.pigs().stream().map(Group::name).toList());
      refusal.unlessOneOf("pen", pen, setup.pens().stream().map(p -> p.name()).toList());
      Map<String, String> entry = new LinkedHashMap<>();
      entry.put("on", setup.checkOn().toString());
      entry.put("pigs", group);
      entry.put("did", "moved");
      entry.put("pen", pen);
      entry.put("note", DiaryEntry.PLANNED);
      moved = moved.append("diary", entry);
      words += (words.isEmpty() ? "" : " and ") + group + " move to " + pen;
    }
    LocalDate day = before.setup().checkOn();
    SetupFile after = asOf(moved.set("checkOn", day.toString()).read(day), day);
    print(Comparison.of(before, after, rules.read()), words);
    return 0;
  }

  private String only(Setup setup) {
    if (setup.pigs().size() != 1) {
      throw wrong("There are several groups; say which: --move GROUP=PEN.");
    }
    return setup.pigs().get(0).name();
  }

  private void print(Comparison comparison, String supposed) {
    RecheckReport report = new RecheckReport(comparison, supposed, Style::bold);
    output.print(report::text, report::json, report::markdown);
  }

  /** The text of a file that can be read as a setup. */
  private String text(Path file) {
    read(file); // tells what is wrong with it
    try {
      return SafeFile.read(file).text();
    } catch (IOException e) {
      throw wrong(file + ": " + e.getMessage());
    }
  }

  private SetupFile read(Path file) {
    return SetupReader.read(file, today());
  }

  private static SetupFile asOf(SetupFile file, LocalDate day) {
    return day == null || day.equals(file.setup().checkOn())
        ? file
        : file.with("checkOn", day.toString());
  }

  private LocalDate today() {
    return on == null ? LocalDate.now(ZoneId.systemDefault()) : on;
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
