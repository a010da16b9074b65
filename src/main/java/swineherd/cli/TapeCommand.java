package swineherd.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.TapeWeight.PigType;
import swineherd.outlook.Taping;
import swineherd.report.TapeReport;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;
import swineherd.units.Dimension;
import swineherd.units.Quantity;
import swineherd.units.UnreadableException;

/** Tells the weight of a pig from a tape, and what that means for the day its group is finished. */
@Command(
    name = "tape",
    mixinStandardHelpOptions = true,
    header = "Tell what a pig weighs from its girth and length by tape.",
    description = {
      "The girth close behind the front legs, snug; the length from between the ears to the root of"
          + " the tail. Repeat an option for each reading; three are surer than one.",
      "With a setup it also tells when the group will now be finished."
    })
final class TapeCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "The setup; may be left out.")
  private Path file;

  @Option(
      names = "--girth",
      paramLabel = "LENGTH",
      required = true,
      description = "Heart girth, such as \"102 cm\" or \"40 in\".")
  private List<String> girths = new ArrayList<>();

  @Option(
      names = "--length",
      paramLabel = "LENGTH",
      description = "Length, such as \"114 cm\" or \"45 in\"; without it the girth alone is used.")
  private List<String> lengths = new ArrayList<>();

  @Option(
      names = "--type",
      paramLabel = "TYPE",
      description =
          "What the pig is like: ${COMPLETION-CANDIDATES}. Default: as the breed in FILE, or modern.")
  private Type type;

  @Option(
      names = "--group",
      paramLabel = "NAME",
      description = "Which pigs of FILE; may be left out if it has one group.")
  private String group;

  @Option(names = "--on", paramLabel = "DATE", description = "Day of the tape; default: today.")
  private LocalDate on;

  @Mixin private Output output;

  private enum Type {
    modern(PigType.MODERN),
    lean(PigType.LEAN_OUTDOOR),
    lard(PigType.LARD),
    potbellied(PigType.POT_BELLIED);

    private final PigType type;

    Type(PigType type) {
      this.type = type;
    }
  }

  @Override
  public Integer call() {
    Taping taping;
    try {
      taping = taping();
    } catch (OutsideDomainException e) {
      throw refused(TapeReport.refusal(e.getMessage()));
    }
    TapeReport report =
        new TapeReport(
            taping, file == null ? null : file.toString(), Dimension.LENGTH.isUs(girths.get(0)));
    output.print(report::text, report::json, report::markdown);
    return 0;
  }

  private Taping taping() {
    List<Double> girth = metres("--girth", girths);
    List<Double> length = metres("--length", lengths);
    PigType like = type == null ? null : type.type;
    if (file == null) {
      if (group != null) {
        throw refused("--group needs the FILE that the group is in.");
      }
      LocalDate day = on == null ? LocalDate.now(ZoneId.systemDefault()) : on;
      return Taping.of(girth, length, like == null ? PigType.MODERN : like, day);
    }
    SetupFile read = SetupReader.read(file, LocalDate.now(ZoneId.systemDefault()));
    Setup setup = (on == null ? read : read.with("checkOn", on.toString())).setup();
    return Taping.of(girth, length, like, setup, pigs(setup));
  }

  private Group pigs(Setup setup) {
    String names = setup.pigs().stream().map(Group::name).collect(Collectors.joining(", "));
    if (group != null) {
      return setup
          .group(group)
          .orElseThrow(() -> refused("No group is called \"" + group + "\"; there are: " + names));
    }
    if (setup.pigs().size() != 1) {
      throw refused(
          setup.pigs().isEmpty()
              ? "There are no pigs in that file."
              : "Say which pigs with --group; there are: " + names);
    }
    return setup.pigs().get(0);
  }

  private List<Double> metres(String option, List<String> written) {
    List<Double> metres = new ArrayList<>();
    for (String text : written) {
      try {
        metres.add(Quantity.parse(text, Dimension.LENGTH));
      } catch (UnreadableException e) {
        throw refused(option + ": " + e.getMessage() + "; " + e.accepted());
      }
    }
    return metres;
  }

  private ParameterException refused(String why) {
    return new ParameterException(spec.commandLine(), why);
  }
}
