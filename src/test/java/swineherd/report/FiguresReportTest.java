package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.setup.Setup;
import swineherd.setup.SetupReader;
import swineherd.setups.GeneratedSetup;
import swineherd.setups.Setups;
import swineherd.units.Dimension;
import swineherd.units.Quantity;

class FiguresReportTest {
  private static final int SETUPS = 60;
  private static final Pattern LIKELY =
      Pattern.compile("(-?[\\d.]+)(?: ([a-zA-Z2/ ]+))?( \\(.*\\))?");

  private static FiguresReport report(GeneratedSetup setup) {
    return new FiguresReport(FigureSheet.of(setup.read().setup()));
  }

  private static JsonNode json(FiguresReport report) {
    try {
      return new ObjectMapper().readTree(report.json());
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static List<Map<String, String>> csv(FiguresReport report) {
    try {
      return new CsvMapper()
          .readerFor(new TypeReference<Map<String, String>>() {})
          .with(CsvSchema.emptySchema().withHeader())
          .<Map<String, String>>readValues(report.csv())
          .readAll();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {51, 52})
  void text_fits_a_terminal_and_has_nothing_unfilled(long seed) {
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      String text = report(setup).text(true, UnaryOperator.identity());
      assertThat(text.lines())
          .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80).doesNotEndWith(" "));
      assertThat(text).doesNotContain("{", "}", "NaN", "Infinity", "null");
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {61, 62})
  void csv_and_json_parse_back_to_the_same_rows(long seed) {
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      FiguresReport report = report(setup);
      List<Map<String, String>> csv = csv(report);
      int i = 0;
      for (JsonNode section : json(report).get("sections")) {
        for (JsonNode row : section.get("rows")) {
          Map<String, String> line = csv.get(i++);
          assertThat(line.get("section")).isEqualTo(section.get("key").asText());
          assertThat(line.get("about")).isEqualTo(section.get("about").asText());
          for (String field : List.of("key", "name", "kind", "shown", "note", "unit", "date")) {
            assertThat(line.get(field)).as(field).isEqualTo(row.path(field).asText());
          }
          for (String field : List.of("low", "likely", "high")) {
            if (row.has(field)) {
              assertThat(Double.parseDouble(line.get(field))).isEqualTo(row.get(field).asDouble());
            } else {
              assertThat(line.get(field)).isEmpty();
            }
          }
        }
      }
      assertThat(csv).hasSize(i);
    }
  }

  /** What the keeper reads, read again, is what was worked out, as far as it is rounded. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {71, 72})
  void units_there_and_back(long seed) {
    int read = 0;
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      for (JsonNode section : json(report(setup)).get("sections")) {
        for (JsonNode row : section.get("rows")) {
          Dimension dimension = dimension(row);
          Matcher shown = LIKELY.matcher(row.get("shown").asText());
          if (dimension != null && !row.has("per") && shown.matches()) {
            double back = Quantity.parse(shown.group(1) + " " + shown.group(2), dimension);
            double likely = row.get("likely").asDouble();
            // two digits at least, whole degrees, days and weeks
            double rounded =
                Math.max(0.051 * Math.abs(likely), dimension == Dimension.TIME ? 4 : 0.6);
            assertThat(back).as(row.toString()).isCloseTo(likely, within(rounded));
            read++;
          }
        }
      }
    }
    assertThat(read).isGreaterThan(10 * SETUPS);
  }

  private static Dimension dimension(JsonNode row) {
    if (!row.get("kind").asText().equals("amount")) {
      return null;
    }
    for (Dimension dimension : Dimension.values()) {
      if (dimension.base().equals(row.get("unit").asText())) {
        return dimension;
      }
    }
    return null;
  }

  @Test
  void an_american_reads_pounds_feet_and_fahrenheit() {
    String yaml =
        """
        place: {country: united-states, state: Ohio, hottestMonth: 86 F}
        pens: [{name: lot, area: 60 x 80 ft, ground: bare-dry}]
        pigs: [{name: pigs, count: 3, arrives: 2027-04-24, arrivalWeight: 40 lb}]
        feed: {kind: self-feeder}
        money: {feed: 18 per 50 lb}
        """;
    Setup setup = SetupReader.read("us.yaml", yaml, LocalDate.of(2027, 3, 1)).setup();
    String text = new FiguresReport(FigureSheet.of(setup)).text(false, UnaryOperator.identity());
    assertThat(text)
        .contains("24 April 2027                     40 lb")
        .contains("in bags of 50 lb")
        .contains("at 0.36 per lb")
        .contains(" F, ")
        .contains(" gal")
        .contains(" per acre")
        .doesNotContain(" kg ")
        .doesNotContain(" m2");
  }
}
