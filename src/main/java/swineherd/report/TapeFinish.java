package swineherd.report;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.figures.Reweighing;
import swineherd.outlook.Course;
import swineherd.outlook.Taping;
import swineherd.outlook.sheet.Figure;
import swineherd.units.UnitSystem;

/** What a tape means for the day a group is finished, and whether it is to be believed. */
final class TapeFinish {
  private final Taping taping;
  private final Course course;
  private final FigureWording wording;

  private TapeFinish(Taping taping, boolean us) {
    this.taping = taping;
    this.course = taping.after();
    this.wording = new FigureWording(us ? UnitSystem.US : UnitSystem.METRIC);
  }

  /**
   * @param taping of a group
   */
  static List<String> lines(Taping taping, boolean us) {
    String pigs = Wording.capital(taping.pigs());
    if (taping.after() == null) {
      return List.of(pigs + ": no growth can be worked out from that weight for such pigs.");
    }
    TapeFinish finish = new TapeFinish(taping, us);
    List<String> lines = new ArrayList<>();
    String target = pigs + ", to " + TapeReport.both(taping.after().target()) + ":";
    if (taping.finishAfter() == null) {
      lines.add(target + " farther off than the growth of such pigs is known; set a lower target.");
    } else {
      lines.add(target);
      finish.dates(lines);
    }
    return lines;
  }

  /** A tape that goes against what was weighed or expected. */
  static Optional<String> doubt(Taping taping) {
    if (!taping.isDoubted()) {
      return Optional.empty();
    }
    Band expected = taping.after().weightOn(taping.on());
    return Optional.of(
        "That is far outside what was to be expected"
            + ", about "
            + TapeReport.both(expected.likely())
            + ". Tape again, or use a scale: the finish does not rest on it until a second weight"
            + " agrees. If it is right, ask your vet.");
  }

  private void dates(List<String> lines) {
    DateBand before = taping.finishBefore();
    String now = "now " + wording.words(new Figure.Dates(taping.finishAfter()));
    if (before == null) {
      lines.add(now + ".");
      return;
    }
    long days = ChronoUnit.DAYS.between(before.likely(), taping.finishAfter().likely());
    String moved =
        days == 0
            ? "as before"
            : Wording.counted((int) Math.abs(days), "day", "days")
                + (days < 0 ? " sooner" : " later");
    lines.add("until now " + wording.words(new Figure.Dates(before)) + ";");
    lines.add(now + ", " + moved + ".");
    slow().ifPresent(lines::add);
    lines.add("The day is worth as much as the pig that was taped is like the others.");
  }

  private Optional<String> slow() {
    Optional<Reweighing> last =
        course.weighings().stream().filter(w -> w.later().on().equals(taping.on())).findFirst();
    if (last.isPresent() && last.get().lighter()) {
      Reweighing weighing = last.get();
      double error = Math.hypot(weighing.before().start().error(), weighing.later().error());
      if (weighing.later().kg() >= weighing.before().start().kg() * (1 - error)) {
        return Optional.of("Lighter than before, but within the error of the tape.");
      }
      return Optional.of(
          "Lighter than before: ask your vet, unless one of the two weights was wrong.");
    }
    return last.filter(Reweighing::lagging)
        .map(w -> "Slower than expected: look at feed, water, worms and health.");
  }
}
