package swineherd.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import swineherd.figures.Band;
import swineherd.outlook.sheet.Figure;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.outlook.sheet.Row;
import swineherd.outlook.sheet.Section;
import swineherd.rulebook.Rulebook;
import swineherd.units.Dimension;

/** The sheet of figures, for a terminal of 80 columns, as JSON and as CSV. */
public final class FiguresReport {
  static final String FOOTER =
      "Estimates, to plan by: weigh, measure and look. Your law, the label and your vet come first.";

  private static final int NAME = 32;
  private static final int POINT = 6;
  private static final String INDENT = "  ";

  private final FigureSheet sheet;
  private final FigureWording wording;

  public FiguresReport(FigureSheet sheet) {
    this.sheet = sheet;
    this.wording = new FigureWording(sheet.setup().units());
  }

  /**
   * Tables for a terminal.
   *
   * @param sources whether to say under each table what it rests on
   * @param bold makes a heading stand out, or leaves it as it is
   */
  public String text(boolean sources, UnaryOperator<String> bold) {
    StringBuilder out = new StringBuilder();
    out.append(new Lines().add("", Overview.setup(sheet.setup())));
    Set<String> told = new HashSet<>();
    for (Section section : sheet.sections()) {
      Lines lines = new Lines();
      for (Row row : section.rows()) {
        row(lines, row);
      }
      // what was taken is told once for a group, where it first matters
      String taken =
          section.assumed().stream()
              .filter(assumed -> told.add(section.about() + ": " + assumed))
              .collect(Collectors.joining("; "));
      if (!taken.isEmpty()) {
        lines.add(INDENT + "Taken: ", taken + ".");
      }
      if (sources) {
        sources(lines, section);
      }
      if (section.key().equals("growth")) {
        sheet.plots().stream()
            .filter(plot -> plot.group().equals(section.about()))
            .flatMap(plot -> TextChart.lines(plot, sheet.setup().units()).stream())
            .forEach(lines::line);
      }
      out.append('\n').append(bold.apply(heading(section))).append('\n').append(lines);
    }
    return out.append('\n').append(new Lines().add("", FOOTER)).toString();
  }

  private static String heading(Section section) {
    return section.about().isEmpty() ? section.title() : section.title() + ": " + section.about();
  }

  /** Name and value beside each other; the note behind them if it fits, or else under them. */
  void row(Lines lines, Row row) {
    List<String> names = Lines.wrap(wording.fill(row.name()), NAME);
    String note = wording.fill(row.note());
    String value = wording.words(row.figure());
    if (row.figure() instanceof Figure.Price) {
      // the decimal points stand under each other
      int point = value.indexOf('.');
      value = " ".repeat(Math.max(0, POINT - point)) + value;
    }
    int width = Lines.WIDTH - INDENT.length() - NAME - 2;
    boolean beside = !note.isEmpty() && value.length() + 2 + note.length() <= width;
    List<String> values = value.length() <= width ? List.of(value) : Lines.wrap(value, width);
    for (int i = 0; i < Math.max(names.size(), values.size()); i++) {
      String name = i < names.size() ? names.get(i) : "";
      String shown = i < values.size() ? values.get(i) : "";
      if (i == 0 && beside) {
        shown += "  " + note;
      }
      lines.line(
          (INDENT + String.format(Locale.ROOT, "%-" + NAME + "s", name) + "  " + shown)
              .stripTrailing());
    }
    if (!note.isEmpty() && !beside) {
      lines.add(INDENT.repeat(3), note);
    }
  }

  private static void sources(Lines lines, Section section) {
    Set<String> keys = new LinkedHashSet<>();
    section.rows().forEach(row -> keys.addAll(row.sources()));
    if (!keys.isEmpty()) {
      String cited =
          keys.stream()
              .map(key -> Rulebook.sources().get(key).line())
              .collect(Collectors.joining("; "));
      lines.add(INDENT + "Rests on: ", cited + ".");
    }
  }

  /**
   * As JSON. The names in it are a contract with other programs: fields are added, never renamed.
   * Numbers are in SI units, money for each kg, whatever the keeper reads; {@code shown} is what he
   * reads.
   */
  public String json() {
    ObjectMapper json = new ObjectMapper();
    ObjectNode root = json.createObjectNode();
    root.put("checkedOn", sheet.setup().checkOn().toString());
    root.put("name", sheet.setup().name());
    ArrayNode sections = root.putArray("sections");
    for (Section section : sheet.sections()) {
      ObjectNode node = sections.addObject();
      node.put("key", section.key());
      node.put("title", section.title());
      node.put("about", section.about());
      ArrayNode rows = node.putArray("rows");
      section.rows().forEach(row -> row(rows.addObject(), row));
      ArrayNode assumed = node.putArray("assumed");
      section.assumed().forEach(assumed::add);
    }
    try {
      return json.writerWithDefaultPrettyPrinter().writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private void row(ObjectNode node, Row row) {
    fields(row)
        .forEach(
            (name, value) -> {
              if (value instanceof Double number) {
                node.put(name, number);
              } else if (value instanceof List<?> list) {
                ArrayNode array = node.putArray(name);
                list.forEach(item -> array.add((String) item));
              } else {
                node.put(name, (String) value);
              }
            });
  }

  /** As CSV, a line for each row; several paths or sources are parted by a space. */
  public String csv() {
    CsvSchema.Builder schema = CsvSchema.builder().setUseHeader(true);
    List<String> columns =
        List.of(
            "section", "about", "key", "name", "kind", "low", "likely", "high", "unit", "per",
            "early", "date", "late", "words", "missing", "shown", "note", "sources");
    columns.forEach(schema::addColumn);
    List<Map<String, Object>> rows = new ArrayList<>();
    for (Section section : sheet.sections()) {
      for (Row row : section.rows()) {
        Map<String, Object> cells = new LinkedHashMap<>();
        columns.forEach(column -> cells.put(column, ""));
        cells.put("section", section.key());
        cells.put("about", section.about());
        fields(row)
            .forEach(
                (name, value) ->
                    cells.put(
                        name,
                        value instanceof List<?> list
                            ? list.stream().map(String::valueOf).collect(Collectors.joining(" "))
                            : value));
        rows.add(cells);
      }
    }
    try {
      return new CsvMapper().writer(schema.build()).writeValueAsString(rows);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  /** What JSON and CSV say of a row: text, numbers, lists of text. */
  private Map<String, Object> fields(Row row) {
    Map<String, Object> fields = new LinkedHashMap<>();
    fields.put("key", row.key());
    fields.put("name", wording.fill(row.name()));
    Figure figure = row.figure();
    fields.put("kind", figure.getClass().getSimpleName().toLowerCase(Locale.ROOT));
    if (figure instanceof Figure.Amount amount) {
      band(fields, amount.band(), amount.dimension().base());
      if (amount.per() != Figure.Per.ALL) {
        fields.put("per", amount.per() == Figure.Per.DAY ? Dimension.TIME.base() : "ha");
      }
    } else if (figure instanceof Figure.Plain plain) {
      band(fields, plain.band(), plain.unit());
    } else if (figure instanceof Figure.Price price) {
      band(fields, Band.exactly(price.amount()), "money");
      if (price.perKg()) {
        fields.put("per", Dimension.MASS.base());
      }
    } else if (figure instanceof Figure.Dates dates) {
      fields.put("early", dates.dates().early().toString());
      fields.put("date", dates.dates().likely().toString());
      fields.put("late", dates.dates().late().toString());
    } else if (figure instanceof Figure.Day day) {
      fields.put("date", day.day().toString());
    } else if (figure instanceof Figure.Count count) {
      band(fields, Band.exactly(count.count()), count.many());
    } else if (figure instanceof Figure.Chance chance) {
      band(fields, Band.exactly(chance.chance()), "probability");
    } else if (figure instanceof Figure.Missing missing) {
      fields.put("missing", missing.paths());
    } else if (figure instanceof Figure.Beyond beyond) {
      fields.put("words", beyond.why());
    } else {
      fields.put("words", ((Figure.Words) figure).words());
    }
    fields.put("shown", wording.words(figure));
    fields.put("note", wording.fill(row.note()));
    fields.put("sources", row.sources());
    return fields;
  }

  private static void band(Map<String, Object> fields, Band band, String unit) {
    fields.put("low", band.low());
    fields.put("likely", band.likely());
    fields.put("high", band.high());
    fields.put("unit", unit);
  }
}
