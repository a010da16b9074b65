package swineherd.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import swineherd.figures.Band;
import swineherd.outlook.sheet.Plot;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/**
 * The growth of a group drawn with letters, for a terminal without colour: {@code #} is the likely
 * weight, dots are where eight in ten fall, a line of {@code -} is the target, letters under it are
 * days that matter.
 */
final class TextChart {
  private static final int COLUMNS = 64;
  private static final int LINES = 11;

  private final Plot plot;
  private final UnitSystem units;
  private final long first;
  private final long last;
  private final double top;

  private TextChart(Plot plot, UnitSystem units) {
    this.plot = plot;
    this.units = units;
    LocalDate end = plot.weeks().get(plot.weeks().size() - 1).day();
    for (Plot.Mark mark : plot.marks()) {
      end = mark.day().isAfter(end) ? mark.day() : end;
    }
    this.first = plot.weeks().get(0).day().toEpochDay();
    this.last = end.toEpochDay();
    double highest = plot.weeks().stream().mapToDouble(w -> w.kg().high()).max().orElseThrow();
    this.top = Math.max(highest, plot.target());
  }

  /** The lines of the chart, none longer than a terminal. */
  static List<String> lines(Plot plot, UnitSystem units) {
    return new TextChart(plot, units).lines();
  }

  private List<String> lines() {
    double step = step();
    int rows = (int) Math.ceil(top / step);
    char[][] grid = new char[rows][COLUMNS + 1];
    for (char[] row : grid) {
      Arrays.fill(row, ' ');
    }
    Arrays.fill(grid[Math.min(row(plot.target(), step), rows - 1)], '-');
    for (int column = 0; column <= COLUMNS; column++) {
      Band kg = weightAt(column);
      if (kg != null) {
        for (int row = row(kg.low(), step); row <= row(kg.high(), step); row++) {
          grid[Math.min(row, rows - 1)][column] = '.';
        }
        grid[Math.min(row(kg.likely(), step), rows - 1)][column] = '#';
      }
    }
    List<String> lines = new ArrayList<>();
    for (int row = rows - 1; row >= 0; row--) {
      lines.add(label((row + 1) * step) + " |" + new String(grid[row]).stripTrailing());
    }
    lines.add("       +" + "-".repeat(COLUMNS + 1));
    lines.addAll(marks());
    lines.replaceAll(String::stripTrailing);
    return lines;
  }

  private static int row(double kg, double step) {
    return (int) Math.max(0, Math.ceil(kg / step) - 1);
  }

  /** A round step in the keeper's units, kg. */
  private double step() {
    double unit = units == UnitSystem.US ? Dimension.MASS.toBase(1, "lb") : 1;
    for (double round : new double[] {1, 2, 5, 10, 15, 20, 25, 30, 50}) {
      if (top <= round * unit * LINES) {
        return round * unit;
      }
    }
    return Math.ceil(top / unit / LINES / 100) * 100 * unit;
  }

  private String label(double kg) {
    String symbol = units == UnitSystem.US ? "lb" : "kg";
    return String.format(
        Locale.ROOT, "%3d %s", Math.round(Dimension.MASS.fromBase(kg, symbol)), symbol);
  }

  /** Weight on the day of a column, drawn straight between the weeks; null after the last. */
  private Band weightAt(int column) {
    double day = first + (double) column * (last - first) / COLUMNS;
    List<Plot.Week> weeks = plot.weeks();
    for (int i = 1; i < weeks.size(); i++) {
      long from = weeks.get(i - 1).day().toEpochDay();
      long to = weeks.get(i).day().toEpochDay();
      if (day <= to) {
        double share = (day - from) / (to - from);
        Band a = weeks.get(i - 1).kg();
        Band b = weeks.get(i).kg();
        return new Band(
            between(a.low(), b.low(), share),
            between(a.likely(), b.likely(), share),
            between(a.high(), b.high(), share));
      }
    }
    return null;
  }

  private static double between(double a, double b, double share) {
    return a + share * (b - a);
  }

  /** A letter under each day that matters, and what it stands for. */
  private List<String> marks() {
    char[] letters = new char[COLUMNS + 1];
    Arrays.fill(letters, ' ');
    List<String> said = new ArrayList<>();
    said.add(
        "        from "
            + Dates.words(LocalDate.ofEpochDay(first))
            + "; # likely, . eight in ten, - "
            + Display.amount(plot.target(), Dimension.MASS, units));
    char letter = 'A';
    for (Plot.Mark mark : plot.marks()) {
      int column =
          (int) Math.round((double) (mark.day().toEpochDay() - first) / (last - first) * COLUMNS);
      while (column < COLUMNS && letters[column] != ' ') {
        column++;
      }
      letters[column] = letter;
      said.add("        " + letter + "  " + Dates.words(mark.day()) + ": " + mark.what());
      letter++;
    }
    said.add(0, "        " + new String(letters));
    return said;
  }
}
