package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import swineherd.figures.Taint;
import swineherd.outlook.LateCastration;
import swineherd.outlook.LeaveBarred;
import swineherd.outlook.Litter;
import swineherd.outlook.TaintRisk;
import swineherd.outlook.TaintVaccine;
import swineherd.outlook.Treated;
import swineherd.units.Dimension;

/**
 * What stands between a group and its slaughter: withdrawal, standstill, taint, and the litter that
 * gilts and boars in reach of each other may make.
 */
final class ReleaseSection {
  private final Rows rows;

  private ReleaseSection(String pigs) {
    this.rows = new Rows("release", "Free to go", pigs);
  }

  /** Empty where nothing stands in the way. */
  static Section of(Pigs pigs, Worked worked) {
    ReleaseSection section = new ReleaseSection(pigs.name());
    treated(pigs, worked).forEach(section::withdrawal);
    worked
        .first(LeaveBarred.class, l -> pigs.name().equals(l.leaver()))
        .ifPresent(section::standstill);
    worked
        .first(LateCastration.class, l -> l.pigs().equals(pigs.name()))
        .ifPresent(section::castration);
    worked.first(TaintRisk.class, t -> t.pigs().equals(pigs.name())).ifPresent(section::taint);
    worked.first(TaintVaccine.class, t -> t.pigs().equals(pigs.name())).ifPresent(section::vaccine);
    worked
        .first(
            Litter.class,
            l -> l.possible() && (pigs.name().equals(l.males()) || pigs.name().equals(l.gilts())))
        .ifPresent(section::litter);
    return section.rows.section();
  }

  /** The day from which the meat of a group is free of all that it was given, if it is known. */
  static Optional<LocalDate> clearOn(Pigs pigs, Worked worked) {
    List<Treated> all = treated(pigs, worked);
    if (all.stream().anyMatch(Treated::blocked)) {
      return Optional.empty();
    }
    return all.stream()
        .filter(t -> t.clearOn() != null)
        .map(Treated::clearOn)
        .max(Comparator.naturalOrder());
  }

  private static List<Treated> treated(Pigs pigs, Worked worked) {
    return worked.all(Treated.class, t -> t.pigs().equals(pigs.name()));
  }

  private void withdrawal(Treated treated) {
    rows.add(
        "withdrawal",
        "Free of " + treated.given() + (treated.pig() == null ? "" : ", pig " + treated.pig()),
        row -> {
          if (treated.lastDose() != null) {
            row.with("last", new Figure.Day(treated.lastDose())).note("last given on {last}");
          }
          if (treated.clearOn() == null) {
            return Figure.words(
                switch (treated.basis()) {
                  case READ_THE_LABEL -> "no date: read the label";
                  case LAST_DOSE_UNKNOWN -> "no date: the day of the last dose is not known";
                  default -> "no date: ask the vet";
                });
          }
          if (treated.blocked() && treated.running()) {
            return Figure.words("not over yet; of something else the end is not known");
          }
          row.with("days", Figure.days(treated.days()));
          row.note("{days} and a day for safety");
          row.note(
              switch (treated.basis()) {
                case LABEL_OR_VET ->
                    treated.shorterThanPrinted()
                        ? "by the longer days of the table: show your label to the vet"
                        : "by the label you read";
                default -> "by the table: confirm it on the label";
              });
          return new Figure.Day(treated.clearOn());
        });
  }

  private void standstill(LeaveBarred barred) {
    rows.add(
        "standstill",
        "Standstill ends",
        row -> {
          row.with("arrives", new Figure.Day(barred.arrives()));
          row.note("after " + barred.arrived() + " come on {arrives}; ask about slaughter");
          return new Figure.Day(barred.first());
        });
  }

  private void castration(LateCastration late) {
    rows.add(
        "castration",
        "Free of taint after castration",
        row -> {
          row.with("cut", new Figure.Day(late.castratedOn())).note("castrated on {cut}");
          return late.clearedOn() == null ? null : new Figure.Day(late.clearedOn());
        });
  }

  private void taint(TaintRisk risk) {
    rows.add(
        "taint",
        "Taint in the males' meat",
        row -> {
          if (risk.day() != null) {
            row.with("day", new Figure.Day(risk.day()));
            row.with("weight", Figure.kg(risk.weight())).note("on {day} at {weight}");
          }
          row.with("over", Figure.percent(risk.androstenone()));
          row.note("{over} over the usual limit of androstenone in " + risk.surveyed());
          return Figure.words(risk.className());
        });
    if (risk.lowerUntil() != null) {
      rows.add("taint-lower", "Less until", row -> new Figure.Day(risk.lowerUntil()));
    }
  }

  private void vaccine(TaintVaccine vaccine) {
    rows.add(
        "vaccine",
        "Second injection against taint before slaughter",
        row -> {
          row.note("the vaccine comes from a vet");
          return Figure.of(Taint.secondBeforeSlaughter(), Dimension.TIME);
        });
    if (vaccine.given() && vaccine.best() != null) {
      rows.add(
          "vaccine-works",
          "It works from",
          row -> {
            row.with("until", new Figure.Day(vaccine.best().until())).note("until {until}");
            return new Figure.Day(vaccine.best().from());
          });
    }
  }

  private void litter(Litter litter) {
    rows.add(
        "separate",
        "Males and gilts apart by",
        row -> litter.separateBy() == null ? null : new Figure.Day(litter.separateBy()));
    rows.add(
        "farrowing",
        "Earliest farrowing if they are not",
        row -> litter.farrowing() == null ? null : new Figure.Day(litter.farrowing()));
  }
}
