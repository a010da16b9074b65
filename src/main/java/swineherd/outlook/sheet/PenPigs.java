package swineherd.outlook.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * A pen and the groups in it of which the growth is known, those left out that are gone. Groups
 * whose pen was not said share one of which nothing is known.
 *
 * @param setup the setup it belongs to
 * @param index its place in the list of pens
 * @param pen what was said of it
 * @param groups the groups in it, those without a growth left out
 */
record PenPigs(Setup setup, int index, Pen pen, List<Pigs> groups) {
  private static final Pen NOT_SAID =
      new Pen(
          "", null, null, null, null, null, null, null, null, null, null, null, null, null, null,
          null);

  static List<PenPigs> of(Setup setup, List<Pigs> all) {
    List<PenPigs> pens = new ArrayList<>();
    for (int i = 0; i < setup.pens().size(); i++) {
      Pen pen = setup.pens().get(i);
      List<Pigs> there =
          all.stream()
              .filter(p -> p.course() != null && !p.gone() && pen.name().equals(p.group().pen()))
              .toList();
      if (!there.isEmpty()) {
        pens.add(new PenPigs(setup, i, pen, there));
      }
    }
    List<Pigs> elsewhere =
        all.stream()
            .filter(p -> p.course() != null && !p.gone() && setup.pen(p.group().pen()).isEmpty())
            .toList();
    if (!elsewhere.isEmpty()) {
      pens.add(new PenPigs(setup, setup.pens().size(), NOT_SAID, elsewhere));
    }
    return pens;
  }

  /**
   * Pigs of one weight.
   *
   * @param count number of pigs
   * @param kg likely live weight of one
   */
  record Present(Pigs pigs, int count, double kg) {}

  /**
   * The pigs in the pen on one day.
   *
   * @param day the day; null if it is not known, and then each group stands at its last weight
   */
  record Moment(LocalDate day, List<Present> present) {
    int pigs() {
      return present.stream().mapToInt(Present::count).sum();
    }

    double heaviest() {
      return present.stream().mapToDouble(Present::kg).max().orElse(0);
    }

    double lightest() {
      return present.stream().mapToDouble(Present::kg).min().orElse(0);
    }

    /** Something that one pig needs by its weight, for all of them. */
    double sum(DoubleUnaryOperator need) {
      return present.stream().mapToDouble(p -> p.count() * need.applyAsDouble(p.kg())).sum();
    }
  }

  String path(String field) {
    return "pens[" + index + "]." + field;
  }

  /** The first day of use: the check, or the first arrival after it. */
  Moment first() {
    LocalDate day = groups.stream().map(Pigs::now).min(Comparator.naturalOrder()).orElseThrow();
    return on(day);
  }

  /** The day on which the pigs in it take the most room. */
  Moment fullest() {
    return peak(moment -> moment.sum(kg -> Math.pow(kg, 2 / 3.0)));
  }

  /**
   * The day on which they need most of something that grows with them: one of the last days of its
   * groups.
   */
  Moment peak(ToDoubleFunction<Moment> need) {
    return lastDays().stream().max(Comparator.comparingDouble(need)).orElseThrow();
  }

  private List<Moment> lastDays() {
    if (groups.stream().anyMatch(p -> p.last() == null)) {
      return List.of(
          new Moment(
              null, groups.stream().map(p -> new Present(p, p.count(), p.endWeight())).toList()));
    }
    return groups.stream().map(p -> on(p.last())).toList();
  }

  /** The pigs in it on a day. */
  Moment on(LocalDate day) {
    List<Present> present = new ArrayList<>();
    for (Pigs pigs : groups) {
      if (pigs.thereBetween(day, day)) {
        present.add(new Present(pigs, pigs.count(), weight(pigs, day)));
      }
    }
    return new Moment(day, List.copyOf(present));
  }

  /**
   * No more than they should leave with, unless the day is set: the last day ends with a few grams
   * over.
   */
  private static double weight(Pigs pigs, LocalDate day) {
    double weight = pigs.weightOn(day);
    return pigs.course().slaughterOn() == null ? Math.min(weight, pigs.endWeight()) : weight;
  }

  /** The last day of any of them; null if one has none. */
  LocalDate last() {
    if (groups.stream().anyMatch(p -> p.last() == null)) {
      return null;
    }
    return groups.stream().map(Pigs::last).max(Comparator.naturalOrder()).orElseThrow();
  }

  Rows rows(String key, String title) {
    Rows rows = new Rows(key, title, pen.name());
    for (Pigs pigs : groups) {
      if (pigs.group().count() == null) {
        rows.assuming("number of pigs not said: figures are for one");
      }
    }
    return rows;
  }
}
