package swineherd.outlook.sheet;

import java.time.LocalDate;
import swineherd.figures.Parasites;
import swineherd.outlook.WormGround;
import swineherd.outlook.WormTest;
import swineherd.rulebook.Table;

/** Worms in a group: when to count eggs, until when anything could be given, rest of ground. */
final class WormSection {
  private final Pigs pigs;
  private final Rows rows;

  private WormSection(Pigs pigs) {
    this.pigs = pigs;
    this.rows = new Rows("worms", "Worms", pigs.name());
  }

  /** Empty where no day is known to count from. */
  static Section of(Pigs pigs, Worked worked) {
    WormSection section = new WormSection(pigs);
    worked
        .first(WormTest.class, t -> t.pigs().equals(pigs.name()) && t.due() != null)
        .ifPresent(section::test);
    section.prepatent();
    worked.first(WormGround.class, g -> g.pigs().equals(pigs.name())).ifPresent(section::ground);
    return section.rows.section();
  }

  private void test(WormTest test) {
    rows.assuming(test.assumed());
    rows.add(
        "interval",
        "Count eggs in the dung after",
        row -> {
          row.note("counted from " + test.since().words());
          return Figure.days(test.interval());
        });
    rows.add(
        "due",
        "Next dung count",
        row -> {
          row.note(test.afterSlaughter() ? "they are gone by then" : "the vet reads it with you");
          return new Figure.Day(test.due());
        });
    rows.add(
        "longest",
        "Longest withdrawal of anything usual for worms",
        row -> {
          row.note("of the table for your country; the label in hand goes first");
          return Figure.days(test.longest());
        });
    if (test.lastDose() != null) {
      rows.add(
          "last-dose",
          "After this day it would outlast them",
          row -> new Figure.Day(test.lastDose()));
    }
  }

  /** Counted from the arrival: what they pick up from the first day on. */
  private void prepatent() {
    LocalDate arrives = pigs.group().arrives();
    if (arrives == null) {
      return;
    }
    for (Table.Row worm : Table.named("worms").rows()) {
      Parasites.prepatent(worm.key())
          .filter(days -> !gone(arrives.plusDays(days.low())))
          .ifPresent(
              days ->
                  rows.add(
                      "eggs",
                      "Eggs of " + worm.key().replace('-', ' ') + ", from",
                      row -> {
                        row.with("from", Figure.days(days.low()));
                        row.with("to", Figure.days(days.high()));
                        row.rests(worm.text("source").split(" "));
                        row.note(
                            days.low() == days.high()
                                ? "picked up on arrival, {from} before"
                                : "picked up on arrival, {from} to {to} before");
                        return new Figure.Day(arrives.plusDays(days.low()));
                      }));
    }
  }

  private boolean gone(LocalDate day) {
    return pigs.course() != null && pigs.course().end() != null && day.isAfter(pigs.course().end());
  }

  private void ground(WormGround ground) {
    if (!ground.earth()) {
      return;
    }
    rows.add(
        "rest",
        "Rest of the ground after them",
        row -> {
          row.with("worms", Figure.days(ground.restAfterWorms()));
          row.note("{worms} if worms were bad");
          return Figure.days(ground.rest());
        });
    rows.add(
        "light",
        "Ground for each pig that worms hardly load",
        row -> {
          if (ground.areaPerPig() != null) {
            row.with("has", Figure.m2(ground.areaPerPig())).note("yours have {has}");
          }
          return Figure.m2(ground.lightArea());
        });
  }
}
