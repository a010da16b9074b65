package swineherd.report;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swineherd.outlook.Taping;

/** A tape as a line for the diary, in the units it was typed in. */
record TapeLine(Taping taping, boolean us) {
  private static final double INCH_M = 0.0254;

  /** Whether girth and length were read once, so that one command can note them. */
  boolean isOneReading() {
    return taping.girths().size() == 1 && taping.lengths().size() <= 1;
  }

  /** As it stands in the file, under diary. */
  String line() {
    StringBuilder line = new StringBuilder("- {on: " + taping.on() + ", pigs: ");
    line.append(taping.pigs() == null ? "NAME" : quoted(taping.pigs()));
    line.append(", did: taped, girth: ").append(lengths(taping.girths()));
    if (!taping.lengths().isEmpty()) {
      line.append(", length: ").append(lengths(taping.lengths()));
    }
    return line.append("}").toString();
  }

  /** The command that notes it. */
  String command(String file) {
    String length =
        taping.lengths().isEmpty() ? "" : " --length \"" + lengths(taping.lengths()) + "\"";
    return "swineherd note "
        + file
        + " taped \""
        + taping.pigs()
        + "\" --girth \""
        + lengths(taping.girths())
        + "\""
        + length
        + " --on "
        + taping.on();
  }

  /** A name as YAML takes it inside braces. */
  private static String quoted(String name) {
    return name.matches("[A-Za-z][A-Za-z0-9 -]*")
        ? name
        : "\"" + name.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
  }

  private String lengths(List<Double> metres) {
    String each =
        metres.stream()
            .map(m -> us ? number(m / INCH_M) + " in" : number(m * 100) + " cm")
            .collect(Collectors.joining(", "));
    return metres.size() == 1 ? each : "[" + each + "]";
  }

  private static String number(double value) {
    String shown = String.format(Locale.ROOT, "%.1f", value);
    return shown.endsWith(".0") ? shown.substring(0, shown.length() - 2) : shown;
  }
}
