package swineherd.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import swineherd.advice.Checklist;
import swineherd.figures.Withdrawal;
import swineherd.figures.Withdrawal.Basis;
import swineherd.outlook.Treated;
import swineherd.setup.DiaryEntry;
import swineherd.setup.DiaryEntry.Route;
import swineherd.setup.Feed;
import swineherd.setup.Setup;
import swineherd.units.Dates;

/** What follows from a treatment that was just noted, and what in the note deserves a doubt. */
final class TreatmentNote {
  private static final Pattern AGAINST_TAINT = Pattern.compile("(?i)taint|gnrh|gonadotrop");

  private final Setup setup;
  private final DiaryEntry entry;
  private final Treated noted;
  private final List<Treated> all;
  private final List<String> lines = new ArrayList<>();

  private TreatmentNote(Setup setup, DiaryEntry entry, Treated noted, List<Treated> all) {
    this.setup = setup;
    this.entry = entry;
    this.noted = noted;
    this.all = all;
  }

  /**
   * @param list the checklist with the entry
   * @param entry the last of the diary
   * @return sentences; none if the pigs have gone
   */
  static List<String> of(Checklist list, DiaryEntry entry) {
    Setup setup = list.file().setup();
    String path = "diary[" + (setup.diary().size() - 1) + "].on";
    List<Treated> all =
        list.outlooks().stream()
            .filter(Treated.class::isInstance)
            .map(Treated.class::cast)
            .filter(t -> Objects.equals(t.pigs(), entry.pigs()))
            .toList();
    return all.stream()
        .filter(t -> t.grounds().contains(path))
        .findFirst()
        .map(noted -> new TreatmentNote(setup, entry, noted, all).write())
        .orElse(List.of());
  }

  private List<String> write() {
    shorter();
    nought();
    name();
    longerBefore();
    boolean doubted = !lines.isEmpty();
    lines.add(noted.clearOn() == null ? noDay() : day(doubted));
    if (!noted.each().isEmpty()) {
      lines.add(noted.each());
    }
    if (isInFeed() && noted.clearOn() != null && !noted.blocked()) {
      lines.add("If they get more of it, note that day too: the days begin with the last.");
    }
    return lines;
  }

  private boolean isInFeed() {
    return entry.route() == Route.FEED || entry.route() == Route.WATER;
  }

  private String noDay() {
    return noted.basis() == Basis.ASK_THE_VET
        ? "No day for slaughter can be told: only the vet can give the days for that. Until then "
            + (noted.pig() == null ? "none of them may go" : noted.whom() + " may not go")
            + ". Note the vet's days with --vet-withdrawal, for the same day."
        : "Until its withdrawal is known, "
            + (noted.pig() == null ? "none of them may go" : noted.whom() + " may not go")
            + " to slaughter: the label says it, or the vet.";
  }

  private String day(boolean doubted) {
    if (setup.feed().madeFor() == Feed.MadeFor.MEDICATED) {
      return "No day for slaughter can be told while there is a medicine in their feed. Once it has"
          + " stopped, note its last day, and say in the file what they are fed then (feed.madeFor).";
    }
    if (noted.blocked()) {
      String others =
          all.stream()
              .filter(t -> t.clearOn() == null && t.mayReach())
              .map(Treated::given)
              .distinct()
              .collect(Collectors.joining(", "));
      return "No day for slaughter can be told: the end of something else they were given is not"
          + " known ("
          + others
          + ").";
    }
    StringBuilder words = new StringBuilder();
    if (isInFeed()) {
      words.append("If ").append(Dates.words(entry.on())).append(" was the last day of it, ");
    }
    words.append(isInFeed() ? "as far as this is concerned " : "As far as this is concerned ");
    words.append(noted.pig() == null ? "they" : noted.whom()).append(" may go to slaughter from ");
    words.append(Dates.words(noted.clearOn())).append(", not before.");
    LocalDate last =
        all.stream()
            .map(Treated::clearOn)
            .filter(Objects::nonNull)
            .max(LocalDate::compareTo)
            .orElseThrow();
    if (last.isAfter(noted.clearOn())) {
      words.append(" Something else they were given holds them until ");
      words.append(Dates.words(last)).append('.');
    }
    if (!doubted
        && !isInFeed()
        && noted.slaughterOn() != null
        && !last.isAfter(noted.slaughterOn())) {
      words.append(" The day set, ").append(Dates.words(noted.slaughterOn())).append(", can stay.");
    }
    return words.append(" The label and the vet always win.").toString();
  }

  private void shorter() {
    if (noted.shorterThanPrinted()) {
      lines.add(
          (noted.shorterThanLaw()
                  ? "Have the vet confirm the days: the law there asks for more after use off the"
                      + " label"
                  : "Read the pack again: labels print " + noted.labels())
              + ". Until that is settled "
              + Wording.counted(noted.days(), "day is", "days are")
              + " counted.");
    }
  }

  /** Some labels do say so; of most medicines it is a slip. */
  private void nought() {
    if (isNought() && !noted.shorterThanPrinted()) {
      lines.add(
          "0 days stand on some labels, such as those of vaccines; with most medicines it is a slip."
              + " Read again what the label says of pig meat.");
    }
  }

  private boolean isNought() {
    return Stream.of(entry.withdrawal(), entry.vetWithdrawal()).anyMatch(d -> d != null && d == 0);
  }

  private void name() {
    String active = entry.active();
    if (active == null || Withdrawal.isKnown(active)) {
      return;
    }
    if (AGAINST_TAINT.matcher(active).find()) {
      lines.add(
          "Against taint it counts only as males: vaccinated, with the day of secondVaccine, in the"
              + " group.");
      return;
    }
    Optional<String> nearly = Withdrawal.nearly(active);
    if (nearly.isPresent()) {
      lines.add(
          "Did you mean "
              + nearly.get()
              + "? The days are tested only if the name is written as on the pack.");
    } else if (entry.withdrawal() != null && !isNought()) {
      lines.add("No label of that is known here, so the days noted could not be tested.");
    }
  }

  /** A correction that is shorter does not replace what stands there already. */
  private void longerBefore() {
    Double said = entry.vetWithdrawal() == null ? entry.withdrawal() : entry.vetWithdrawal();
    if (said != null && noted.said() != null && noted.said() > said) {
      lines.add(
          "Longer days stand for it in an earlier entry or beside these, and they count: "
              + Wording.number((int) Math.ceil(noted.said()))
              + ". If those are wrong, change them in the file.");
    }
  }
}
