package swineherd.report;

import de.erichseifert.vectorgraphics2d.Processors;
import de.erichseifert.vectorgraphics2d.VectorGraphics2D;
import de.erichseifert.vectorgraphics2d.util.PageSize;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.knowm.xchart.AnnotationLine;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.XYSeries.XYSeriesRenderStyle;
import org.knowm.xchart.internal.chartpart.Chart;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.SeriesMarkers;
import swineherd.outlook.sheet.Figure;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.outlook.sheet.Plot;
import swineherd.outlook.sheet.Row;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Display;
import swineherd.units.UnitSystem;

/**
 * Charts of a sheet as one SVG file: growth with the days that matter, feed used, budget. The only
 * class that loads the drawing library, so that nothing else waits for it.
 */
public final class Charts {
  private static final int WIDTH = 960;
  private static final int GROWTH_HEIGHT = 460;
  private static final int FEED_HEIGHT = 320;
  private static final int MONEY_HEIGHT = 360;

  /** Told apart by lightness too, for print and for colour-blind eyes. */
  private static final Color[] COLOURS = {
    new Color(0x1b, 0x5e, 0x9b),
    new Color(0xc4, 0x5a, 0x11),
    new Color(0x4d, 0x7d, 0x3a),
    new Color(0x7a, 0x3e, 0x8e),
    new Color(0x55, 0x55, 0x55),
  };

  private static final Color INK = new Color(0x22, 0x22, 0x22);
  private static final Color GRID = new Color(0xdd, 0xdd, 0xdd);

  private final FigureSheet sheet;
  private final UnitSystem units;
  private final LocalDate first;
  private final LocalDate last;
  private final List<Chart<?, ?>> charts = new ArrayList<>();

  private Charts(FigureSheet sheet) {
    this.sheet = sheet;
    this.units = sheet.setup().units();
    List<LocalDate> days =
        sheet.plots().stream()
            .flatMap(
                p ->
                    Stream.concat(
                        p.weeks().stream().map(Plot.Week::day),
                        p.marks().stream().map(Plot.Mark::day)))
            .sorted()
            .toList();
    this.first = days.isEmpty() ? null : days.get(0);
    this.last = days.isEmpty() ? null : days.get(days.size() - 1).plusDays(3);
  }

  /**
   * Draws the charts into a file: the whole of them, or nothing.
   *
   * @return whether there was anything to draw; if not, no file is written
   * @throws ChartException if they cannot be drawn here or the file cannot be written
   */
  public static boolean write(FigureSheet sheet, Path file) {
    System.setProperty("java.awt.headless", "true");
    byte[] svg;
    try {
      svg = new Charts(sheet).svg();
    } catch (IOException e) {
      throw new ChartException("The chart cannot be drawn: " + e.getMessage(), false, e);
    } catch (RuntimeException | Error e) {
      if (isAboutFonts(e)) {
        throw new ChartException(
            "The chart cannot be drawn: this Java finds no fonts to measure its text with."
                + " Install fontconfig and a font, on Debian fontconfig and fonts-dejavu-core.",
            false,
            e);
      }
      throw e;
    }
    if (svg == null) {
      return false;
    }
    save(svg, file);
    return true;
  }

  private static boolean isAboutFonts(Throwable fault) {
    for (Throwable t = fault; t != null; t = t.getCause()) {
      for (StackTraceElement at : t.getStackTrace()) {
        if (at.getClassName().startsWith("sun.font.")
            || at.getClassName().startsWith("sun.awt.FontConfiguration")
            || at.getClassName().startsWith("java.awt.Font")) {
          return true;
        }
      }
    }
    return false;
  }

  private static void save(byte[] svg, Path file) {
    try {
      WholeFile.write(svg, file);
    } catch (IOException e) {
      throw new ChartException(
          "The chart cannot be written to " + file + ": " + e.getMessage(), true, e);
    }
  }

  /** The charts under each other; null if there is none. */
  private byte[] svg() throws IOException {
    if (!sheet.plots().isEmpty()) {
      charts.add(growth());
      if (sheet.plots().stream().allMatch(p -> fed(p).size() > 1)) {
        charts.add(feed());
      }
    }
    List<Row> paid = paid();
    if (!paid.isEmpty()) {
      charts.add(money(paid));
    }
    if (charts.isEmpty()) {
      return null;
    }
    VectorGraphics2D graphics = new VectorGraphics2D();
    int height = 0;
    for (Chart<?, ?> chart : charts) {
      graphics.translate(0, height);
      chart.paint(graphics, WIDTH, chart.getHeight());
      graphics.translate(0, -height);
      height += chart.getHeight();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Processors.get("svg")
        .getDocument(graphics.getCommands(), new PageSize(0, 0, WIDTH, height))
        .writeTo(out);
    return out.toByteArray();
  }

  private XYChart growth() {
    XYChart chart = dated("Growth", GROWTH_HEIGHT, "live weight, " + symbol());
    double top = 0;
    for (Plot plot : sheet.plots()) {
      for (Plot.Week week : plot.weeks()) {
        top = Math.max(top, shown(week.kg().high()));
      }
    }
    int n = 0;
    int marks = 0;
    for (Plot plot : sheet.plots()) {
      Color colour = COLOURS[n++ % COLOURS.length];
      band(chart, plot, colour);
      XYSeries likely =
          chart.addSeries(
              plot.group(),
              plot.weeks().stream().map(w -> date(w.day())).toList(),
              plot.weeks().stream().map(w -> shown(w.kg().likely())).toList());
      likely.setMarker(SeriesMarkers.NONE);
      likely.setLineColor(colour);
      likely.setLineWidth(2.2f);
      for (Plot.Mark mark : plot.marks()) {
        String whose = sheet.plots().size() == 1 ? "" : plot.group() + " ";
        mark(chart, mark.day(), whose + mark.what(), top * (1.22 - 0.06 * (marks++ % 6)));
      }
    }
    if (sheet.plots().size() == 1) {
      target(chart, sheet.plots().get(0));
    }
    chart.getStyler().setYAxisMin(0.0);
    chart.getStyler().setYAxisMax(top * 1.28);
    return chart;
  }

  /** Where eight in ten fall: up along the light end, back along the heavy one. */
  private void band(XYChart chart, Plot plot, Color colour) {
    List<Date> days = new ArrayList<>();
    List<Double> weights = new ArrayList<>();
    for (Plot.Week week : plot.weeks()) {
      days.add(date(week.day()));
      weights.add(shown(week.kg().low()));
    }
    for (int i = plot.weeks().size() - 1; i >= 0; i--) {
      days.add(date(plot.weeks().get(i).day()));
      weights.add(shown(plot.weeks().get(i).kg().high()));
    }
    XYSeries band = chart.addSeries(plot.group() + ": eight in ten fall here", days, weights);
    band.setXYSeriesRenderStyle(XYSeriesRenderStyle.PolygonArea);
    band.setFillColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 50));
    band.setLineColor(new Color(colour.getRed(), colour.getGreen(), colour.getBlue(), 50));
    band.setMarker(SeriesMarkers.NONE);
  }

  /** A dashed line on a day that matters, its words beside it. */
  private static void mark(XYChart chart, LocalDate day, String what, double height) {
    double x = (double) millis(day);
    chart.addAnnotation(new AnnotationLine(x, true, false));
    chart.addAnnotation(new Label(Dates.words(day) + ": " + what, x, height));
  }

  private void target(XYChart chart, Plot plot) {
    String words = Display.amount(plot.target(), Dimension.MASS, units) + ": target";
    double kg = shown(plot.target());
    chart.addAnnotation(new AnnotationLine(kg, false, false));
    chart.addAnnotation(new Label(words, (double) millis(first), kg));
  }

  /**
   * Words beside a point, towards the middle of the chart, on a patch of paper. Written as text, so
   * that they can be searched and read aloud; the library's own are outlines of letters.
   */
  private static final class Label extends AnnotationText {
    private static final int GAP = 6;

    private final String words;

    Label(String words, double x, double y) {
      super(words, x, y, false);
      this.words = words;
    }

    @Override
    public void paint(Graphics2D graphics) {
      graphics.setFont(styler.getAnnotationTextFont());
      FontMetrics font = graphics.getFontMetrics();
      int width = font.stringWidth(words);
      int at = getXAxisScreenValue(x);
      boolean left = at < (getXAxisScreenValueForMin() + getXAxisScreenValueForMax()) / 2;
      int from = left ? at + GAP : at - GAP - width;
      int base = getYAxisScreenValue(y) - GAP / 2;
      graphics.setColor(Color.WHITE);
      graphics.fillRect(from - 1, base - font.getAscent(), width + 2, font.getHeight());
      graphics.setColor(styler.getAnnotationTextFontColor());
      graphics.drawString(words, from, base);
    }
  }

  private XYChart feed() {
    XYChart chart = dated("Feed used, all pigs of a group", FEED_HEIGHT, symbol());
    int n = 0;
    for (Plot plot : sheet.plots()) {
      XYSeries used =
          chart.addSeries(
              plot.group(),
              fed(plot).stream().map(w -> date(w.day())).toList(),
              fed(plot).stream().map(w -> shown(w.fed())).toList());
      used.setMarker(SeriesMarkers.NONE);
      used.setLineColor(COLOURS[n++ % COLOURS.length]);
      used.setLineWidth(2.2f);
    }
    chart.getStyler().setYAxisMin(0.0);
    return chart;
  }

  private static List<Plot.Week> fed(Plot plot) {
    return plot.weeks().stream().filter(w -> w.fed() != null).toList();
  }

  /** The lines of the budget that cost something. */
  private List<Row> paid() {
    return sheet.sections().stream()
        .filter(section -> section.key().equals("money"))
        .flatMap(section -> section.rows().stream())
        .filter(row -> row.key().startsWith("line-"))
        .filter(row -> row.figure() instanceof Figure.Price price && price.amount() > 0)
        .toList();
  }

  private CategoryChart money(List<Row> paid) {
    CategoryChart chart =
        new CategoryChartBuilder()
            .width(WIDTH)
            .height(MONEY_HEIGHT)
            .title("Budget, in your money")
            .build();
    style(chart.getStyler());
    chart.addSeries(
        "cost",
        paid.stream().map(Charts::category).toList(),
        paid.stream().map(row -> ((Figure.Price) row.figure()).amount()).toList());
    chart.getSeriesMap().get("cost").setFillColor(COLOURS[0]);
    chart.getStyler().setLegendVisible(false);
    chart.getStyler().setXAxisLabelRotation(paid.size() > 8 ? 25 : 0);
    chart.getStyler().setAvailableSpaceFill(0.6);
    return chart;
  }

  /** Name and amount: {@code feed 488}. */
  private static String category(Row row) {
    double amount = ((Figure.Price) row.figure()).amount();
    return row.key().replace("line-", "") + " " + Math.round(amount);
  }

  private XYChart dated(String title, int height, String axis) {
    XYChart chart =
        new XYChartBuilder().width(WIDTH).height(height).title(title).yAxisTitle(axis).build();
    style(chart.getStyler());
    chart.getStyler().setDatePattern("d MMM yyyy");
    chart.getStyler().setXAxisTickMarkSpacingHint(140);
    chart.getStyler().setXAxisMin((double) millis(first));
    chart.getStyler().setXAxisMax((double) millis(last));
    return chart;
  }

  private static void style(AxesChartStyler styler) {
    styler.setBaseFont(font(Font.PLAIN, 12));
    styler.setChartTitleFont(font(Font.BOLD, 16));
    styler.setAxisTitleFont(font(Font.PLAIN, 13));
    styler.setAxisTickLabelsFont(font(Font.PLAIN, 12));
    styler.setLegendFont(font(Font.PLAIN, 12));
    styler.setChartBackgroundColor(Color.WHITE);
    styler.setChartFontColor(INK);
    styler.setPlotBackgroundColor(Color.WHITE);
    styler.setPlotBorderVisible(false);
    styler.setPlotGridLinesColor(GRID);
    styler.setPlotGridLinesStroke(new BasicStroke(1f));
    styler.setAnnotationLineColor(INK);
    styler.setAnnotationLineStroke(
        new BasicStroke(
            1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 10f, new float[] {4f}, 0f));
    styler.setAnnotationTextFont(font(Font.PLAIN, 12));
    styler.setAnnotationTextFontColor(INK);
    styler.setLegendPosition(Styler.LegendPosition.OutsideS);
    styler.setLegendLayout(Styler.LegendLayout.Horizontal);
    styler.setLegendBorderColor(Color.WHITE);
    styler.setLocale(Locale.ENGLISH);
    styler.setTimezone(TimeZone.getTimeZone(ZoneOffset.UTC));
    styler.setDecimalPattern("#,##0");
  }

  private static Font font(int style, int size) {
    return new Font(Font.SANS_SERIF, style, size);
  }

  /** The drawing library knows no other kind of day. */
  @SuppressWarnings("JavaUtilDate")
  private static Date date(LocalDate day) {
    return new Date(millis(day));
  }

  private static long millis(LocalDate day) {
    return day.atStartOfDay(ZoneOffset.UTC).toInstant().toEpochMilli();
  }

  private String symbol() {
    return units == UnitSystem.US ? "lb" : "kg";
  }

  private double shown(double kg) {
    return Dimension.MASS.fromBase(kg, symbol());
  }
}
