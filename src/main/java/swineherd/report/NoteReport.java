package swineherd.report;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import swineherd.advice.Item;
import swineherd.advice.TickedOff;
import swineherd.compare.Comparison;
import swineherd.compare.Comparison.Change;
import swineherd.compare.Comparison.Kind;
import swineherd.figures.Band;
import swineherd.figures.OutsideDomainException;
import swineherd.figures.Reweighing;
import swineherd.outlook.Course;
import swineherd.outlook.DiaryWeight;
import swineherd.rulebook.Referral;
import swineherd.rulebook.Rulebook;
import swineherd.setup.Amounts;
import swineherd.setup.DiaryEntry;
import swineherd.setup.Group;
import swineherd.setup.Setup;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;

/** What was noted in the diary, and what follows from it. */
public final class NoteReport {
  private static final int MOST = 5;

  private final String file;
  private final Comparison comparison;
  private final Setup setup;
  private final DiaryEntry entry;
  private final Wording wording;

  /**
   * @param comparison of the checklists before and after; the entry is the last of the later one
   */
  public NoteReport(String file, Comparison comparison) {
    this.file = file;
    this.comparison = comparison;
    this.setup = comparison.later().file().setup();
    this.entry = setup.diary().get(setup.diary().size() - 1);
    this.wording = new Wording(setup.units());
  }

  /** For a terminal. */
  public String render() {
    Lines lines = new Lines();
    lines.add("", "Noted in " + file + ": " + noted() + ".");
    switch (entry.did()) {
      case WEIGHED, TAPED -> weighed(lines);
      case TREATED -> treated(lines);
      case DIED -> died(lines);
      case DONE -> done(lines);
      case VET_SAID -> vetSaid(lines);
      default -> {
        // the list says what follows
      }
    }
    list(lines, "New on the list", Kind.NEW);
    list(lines, "Off the list", Kind.CLEARED);
    return lines.toString();
  }

  private String noted() {
    String pigs = entry.pigs() == null ? "" : entry.pigs() + " ";
    String what =
        switch (entry.did()) {
          case WEIGHED -> pigs + "weighed " + mass(entry.weight()) + " each";
          case TAPED ->
              pigs
                  + "taped"
                  + DiaryWeight.kg(entry, setup)
                      .map(kg -> ", " + mass(kg) + " each")
                      .orElse("; that gives no weight for such a pig, use a scale");
          case TREATED ->
              (entry.pig() == null ? pigs : "pig " + entry.pig() + " of " + pigs)
                  + "treated"
                  + (entry.active() == null ? "" : " with " + entry.active());
          case MOVED -> pigs + "moved to " + entry.pen();
          case DIED -> Wording.number(entry.countOrOne()) + " of " + pigs + "died";
          case FED -> pigs + "fed: " + entry.note();
          case VET_SAID ->
              "what the vet said of "
                  + pigs.strip()
                  + (Amounts.isIn(entry.note())
                      ? "; the words stand in the file, amounts are not repeated here"
                      : ": " + entry.note());
          case DONE ->
              entry.item()
                  + " done"
                  + (entry.pigs() != null ? " for " + entry.pigs() : "")
                  + (entry.pen() != null ? " in " + entry.pen() : "");
        };
    return Dates.words(entry.on()) + ", " + what.strip();
  }

  private void weighed(Lines lines) {
    Course course =
        comparison.later().outlooks().stream()
            .filter(Course.class::isInstance)
            .map(Course.class::cast)
            .filter(c -> c.pigs().equals(entry.pigs()))
            .findFirst()
            .orElse(null);
    if (course == null) {
      return;
    }
    if (replaces()) {
      lines.add("  ", "It replaces the weight that was noted before for that day.");
    }
    boolean doubted = course.doubted().stream().anyMatch(w -> w.on().equals(entry.on()));
    if (doubted) {
      Band expected = course.weightOn(entry.on());
      lines.add(
          "  ",
          "That is far outside what was to be expected"
              + ", "
              + mass(expected)
              + ". Check the scale and the entry; the forecast does not use it until a second weight"
              + " agrees. If it is right, ask your vet.");
    }
    for (Reweighing weighing : course.weighings()) {
      if (weighing.later().on().equals(entry.on())) {
        expected(lines, weighing);
      }
    }
    if (course.finish() != null) {
      lines.add(
          "  ",
          "They should reach "
              + mass(course.target())
              + " about "
              + Dates.words(course.finish().likely())
              + " ("
              + Dates.words(course.finish().early())
              + " to "
              + Dates.words(course.finish().late())
              + ").");
    }
  }

  private boolean replaces() {
    return setup.diary().subList(0, setup.diary().size() - 1).stream()
        .anyMatch(
            e ->
                Objects.equals(e.on(), entry.on())
                    && Objects.equals(e.pigs(), entry.pigs())
                    && DiaryWeight.kg(e, setup).isPresent());
  }

  private void expected(Lines lines, Reweighing weighing) {
    try {
      Band expected = weighing.before().weightOn(entry.on());
      lines.add("  ", "By the weights before, " + mass(expected) + " was to be expected.");
    } catch (OutsideDomainException e) {
      // so long after the weight before nobody can say
    }
  }

  private void treated(Lines lines) {
    TreatmentNote.of(comparison.later(), entry).forEach(line -> lines.add("  ", line));
  }

  /** What a vet says of days is a remark only, until it is noted as days. */
  private void vetSaid(Lines lines) {
    if (Pattern.compile("(?i)withdraw|slaughter|days? before|wait").matcher(entry.note()).find()) {
      lines.add(
          "  ",
          "Words are not counted. If the vet gave days before slaughter, note them with the"
              + " treatment, on the day of its last dose:");
      lines.line(
          "    note "
              + file
              + " treated "
              + entry.pigs()
              + " --active NAME --vet-withdrawal \"DAYS\" --on DAY");
    }
  }

  private void died(Lines lines) {
    Integer left = setup.group(entry.pigs()).map(Group::count).orElse(null);
    boolean none =
        setup
            .group(entry.pigs())
            .map(g -> g.slaughterOn() != null && g.slaughterOn().isBefore(setup.checkOn()))
            .orElse(false);
    if (left != null && !none) {
      lines.add(
          "  ",
          Wording.capital(entry.pigs())
              + " are reckoned as "
              + Wording.number(left)
              + " from now on.");
    }
  }

  private void done(Lines lines) {
    for (TickedOff off : comparison.later().tickedOff()) {
      if (is(off.item())) {
        lines.add("  ", wording.fill(off.item().card().heading(), off.item().advice()));
        lines.add("  ", "Off the list until " + Dates.words(off.again()) + ".");
        return;
      }
    }
    boolean still = comparison.later().items().stream().anyMatch(this::is);
    var card = Rulebook.cards().get(entry.item());
    String stays = card == null ? null : TickedOff.stays(card);
    if (still) {
      lines.add(
          "  ",
          stays == null
              ? "It has come up again since, so it stays on the list."
              : Wording.capital(stays) + ".");
    } else {
      lines.add("  ", "It is not on the list as it stands now.");
    }
  }

  private boolean is(Item item) {
    String about = item.advice().about();
    return item.id().equals(entry.item())
        && ((entry.pigs() == null && entry.pen() == null)
            || about.equals(entry.pigs())
            || about.equals(entry.pen()));
  }

  private void list(Lines lines, String heading, Kind kind) {
    List<Change> changes =
        comparison.of(kind).stream().filter(c -> kind == Kind.NEW || !c.ticked()).toList();
    if (changes.isEmpty()) {
      return;
    }
    lines.add("", heading + ":");
    for (Change change : changes.subList(0, Math.min(MOST, changes.size()))) {
      Item item = change.item();
      String call =
          kind == Kind.NEW && item.referral() != Referral.NONE
              ? " " + Wording.capital(item.referral().words())
              : "";
      lines.add("  - ", wording.fill(item.card().heading(), item.advice()) + call);
    }
    if (changes.size() > MOST) {
      lines.add(
          "  - ", "and " + Wording.number(changes.size() - MOST) + " more; check shows them.");
    }
  }

  private String mass(double kg) {
    return mass(Band.exactly(kg));
  }

  private String mass(Band kg) {
    return Display.band(kg.low(), kg.likely(), kg.high(), Dimension.MASS, setup.units());
  }
}
