package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import swineherd.figures.Band;
import swineherd.figures.DateBand;
import swineherd.figures.TapeWeight.Taped;
import swineherd.outlook.Taping;
import swineherd.rulebook.Table;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/** A weight by tape, in both units, with what it is good for and the line for the diary. */
public final class TapeReport {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final String LIMITS =
      "Good for ordinary meat pigs from 20 to 140 kg (44 to 309 lb) that stand square, fed and"
          + " watered as usual. Not for gilts in pig, stunted, very fat or pot-bellied pigs, nor"
          + " after a journey or a fast: use a scale.";
  private static final String GIRTH_LIMITS =
      "Girth alone fits only such pigs as the equation was made on: the same girth is 91 kg (201 lb)"
          + " on one pig and 72 kg (158 lb) on another. Measure the length too.";
  private static final String ROUND =
      "No tape was made for pigs of that kind; take this as no better than a guess, and use a scale.";
  private static final String CARE =
      "Never work out a dose from it: the vet and the label say how a pig is weighed for that.";

  private final Taping taping;
  private final String file;
  private final boolean us;
  private final TapeLine noted;

  /**
   * @param file the setup file, so that the command that notes it can be told; null if none
   * @param us whether the line for the diary is in inches, as it was typed
   */
  public TapeReport(Taping taping, String file, boolean us) {
    this.taping = taping;
    this.file = file;
    this.us = us;
    this.noted = new TapeLine(taping, us);
  }

  /** For a terminal of 80 columns. */
  public String text() {
    Lines lines = new Lines();
    lines.add("", weight());
    lines.add("  ", basis());
    if (taping.byGirth() != null) {
      lines.add("  ", second());
    }
    cautions().forEach(caution -> lines.add("  ", caution));
    lines.gap().add("", "For the diary, under diary:");
    lines.line("  " + noted.line());
    if (file != null && noted.isOneReading()) {
      lines.line("or: " + noted.command(file));
    }
    if (taping.pigs() != null) {
      lines.gap();
      TapeFinish.lines(taping, us).forEach(line -> lines.add("", "  ", line));
    }
    return lines.toString();
  }

  /** As Markdown. */
  public String markdown() {
    StringBuilder out = new StringBuilder("# " + MarkdownReport.escape(weight()) + "\n\n");
    out.append("- ").append(MarkdownReport.escape(basis())).append('\n');
    if (taping.byGirth() != null) {
      out.append("- ").append(MarkdownReport.escape(second())).append('\n');
    }
    cautions().forEach(c -> out.append("- ").append(MarkdownReport.escape(c)).append('\n'));
    out.append("\nFor the diary, under `diary:`\n\n```yaml\n");
    out.append(noted.line()).append("\n```\n");
    if (taping.pigs() != null) {
      out.append('\n');
      TapeFinish.lines(taping, us)
          .forEach(line -> out.append(MarkdownReport.escape(line)).append('\n'));
    }
    return out.toString();
  }

  /** As JSON: SI units, names that stay. */
  public String json() {
    ObjectNode root = JSON.createObjectNode();
    root.put("on", taping.on().toString());
    taping.girths().forEach(root.putArray("girthM")::add);
    taping.lengths().forEach(root.putArray("lengthM")::add);
    root.put("type", key(taping.type()));
    taped(root.putObject("weight"), taping.taped());
    if (taping.byGirth() != null) {
      taped(root.putObject("byGirthAlone"), taping.byGirth());
    }
    root.put("needsScale", taping.type().needsScale());
    root.put("diary", noted.line());
    if (taping.pigs() != null) {
      root.put("pigs", taping.pigs());
      root.put("doubted", taping.isDoubted());
      root.put("targetKg", taping.after() == null ? null : taping.after().target());
      dates(root, "finishBefore", taping.finishBefore());
      dates(root, "finishAfter", taping.finishAfter());
    }
    try {
      return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void taped(ObjectNode node, Taped taped) {
    node.put("lowKg", taped.band().low());
    node.put("likelyKg", taped.kg());
    node.put("highKg", taped.band().high());
    node.put("error", Math.round(taped.error() * 10_000) / 10_000.0);
    taped.equations().forEach(node.putArray("equations")::add);
  }

  private static void dates(ObjectNode root, String name, DateBand dates) {
    if (dates == null) {
      root.putNull(name);
      return;
    }
    root.putObject(name)
        .put("early", dates.early().toString())
        .put("likely", dates.likely().toString())
        .put("late", dates.late().toString());
  }

  private String weight() {
    Band kg = taping.taped().band();
    return "About "
        + both(kg.likely())
        + "; eight times in ten "
        + fromTo(kg, UnitSystem.METRIC)
        + ", "
        + fromTo(kg, UnitSystem.US)
        + ".";
  }

  private static String fromTo(Band kg, UnitSystem units) {
    String low = mass(kg.low(), units);
    return low.substring(0, low.indexOf(' ')) + " to " + mass(kg.high(), units);
  }

  /** A refusal of the figures, with no more digits than a keeper can use. */
  public static String refusal(String why) {
    return "No weight can be told: "
        + FigureWording.rounded(why)
        + ". Measure again, or use a scale.";
  }

  private String basis() {
    int readings = taping.girths().size();
    String how =
        taping.lengths().isEmpty()
            ? "By the girth alone, "
                + equations(taping.taped())
                + ", from "
                + Wording.counted(readings, "reading", "readings")
            : "Girth squared times length, over 400 in inches and pounds, with the addition for a"
                + " light pig; from "
                + Wording.counted(readings, "reading", "readings");
    String error =
        " (standard error "
            + Math.round(100 * taping.taped().error())
            + " %)"
            + (readings < 3 && !taping.lengths().isEmpty() && !taping.type().needsScale()
                ? ". Three readings would halve the error."
                : ".");
    return how + error;
  }

  private String second() {
    return "By the girth alone it would be "
        + both(taping.byGirth().kg())
        + ", "
        + equations(taping.byGirth())
        + ".";
  }

  private static String equations(Taped taped) {
    return "by the equation for "
        + taped.equations().stream()
            .map(key -> Table.named("tape-equations").row(key))
            .map(
                row ->
                    row.text("pigs")
                        + " ("
                        + row.text("minKg")
                        + " to "
                        + row.text("maxKg")
                        + " kg)")
            .collect(Collectors.joining(", the mean with that for "));
  }

  private List<String> cautions() {
    List<String> cautions = new ArrayList<>();
    TapeFinish.doubt(taping).ifPresent(cautions::add);
    if (taping.type().needsScale()) {
      cautions.add(ROUND);
    } else {
      cautions.add(taping.lengths().isEmpty() ? GIRTH_LIMITS : LIMITS);
    }
    cautions.add(CARE);
    return cautions;
  }

  static String both(double kg) {
    return mass(kg, UnitSystem.METRIC) + " (" + mass(kg, UnitSystem.US) + ")";
  }

  private static String mass(double kg, UnitSystem units) {
    return Display.amount(kg, Dimension.MASS, units);
  }

  private static String key(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
