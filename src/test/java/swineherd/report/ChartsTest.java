package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;
import swineherd.outlook.sheet.FigureSheet;
import swineherd.setup.SetupReader;
import swineherd.setups.Setups;

class ChartsTest {
  private static final String THREE =
      """
      place: {latitude: 45 N, freezes: yes, firstHardFrost: 10 October}
      pigs:
        - {name: gilts, count: 3, breed: modern-cross, sex: gilts, arrives: 2027-04-24,
           arrivalWeight: 18 kg, weighedBy: guess, targetWeight: 110 kg}
      feed: {kind: hand-fed}
      """;

  @TempDir Path folder;

  private static FigureSheet sheet(String yaml) {
    return FigureSheet.of(SetupReader.read("pigs.yaml", yaml, LocalDate.of(2027, 4, 1)).setup());
  }

  private static String texts(Path svg)
      throws IOException, ParserConfigurationException, SAXException {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
    Document document = factory.newDocumentBuilder().parse(svg.toFile());
    NodeList nodes = document.getElementsByTagName("text");
    StringBuilder texts = new StringBuilder();
    for (int i = 0; i < nodes.getLength(); i++) {
      texts.append(nodes.item(i).getTextContent().strip()).append('\n');
    }
    return texts.toString();
  }

  @Test
  void the_days_that_matter_stand_in_the_chart() throws Exception {
    Path file = folder.resolve("chart.svg");
    assertThat(Charts.write(sheet(THREE), file)).isTrue();
    assertThat(texts(file))
        .contains("110 kg: target")
        .contains("21 August 2027: finished")
        // the usual day less 1.28 times the usual spread of 10 days
        .contains("27 September 2027: hard frost may come");
  }

  @Test
  void a_day_that_is_set_is_drawn_and_weights_are_in_the_keepers_units() throws Exception {
    Path file = folder.resolve("chart.svg");
    String set =
        THREE.replace("targetWeight", "slaughterOn: 2027-09-03, targetWeight") + "units: us\n";
    assertThat(Charts.write(sheet(set), file)).isTrue();
    assertThat(texts(file))
        .contains("3 September 2027: slaughter set", "243 lb: target")
        .doesNotContain("finished");
  }

  @Test
  void a_budget_is_drawn_where_there_are_prices() throws Exception {
    Path without = folder.resolve("without.svg");
    Path with = folder.resolve("with.svg");
    Charts.write(sheet(THREE), without);
    Charts.write(sheet(THREE + "money: {weaner: 90, kill: 45}\n"), with);
    assertThat(height(with)).isGreaterThan(height(without));
  }

  private static int height(Path svg) throws IOException {
    Matcher box = Pattern.compile("viewBox=\"0 0 \\d+ (\\d+)\"").matcher(Files.readString(svg));
    assertThat(box.find()).isTrue();
    return Integer.parseInt(box.group(1));
  }

  @Test
  void an_old_chart_is_replaced_and_nothing_else_is_left_beside_it() throws Exception {
    Path file = Files.writeString(folder.resolve("chart.svg"), "old");
    Charts.write(sheet(THREE), file);
    assertThat(Files.readString(file)).startsWith("<?xml").endsWith("</svg>\n");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.toList()).containsExactly(file);
    }
  }

  @Test
  void without_a_group_that_grows_nothing_is_written() {
    Path file = folder.resolve("chart.svg");
    assertThat(Charts.write(sheet("pigs: [{count: 2}]"), file)).isFalse();
    assertThat(file).doesNotExist();
  }

  @Test
  void where_it_cannot_be_written_the_reason_is_told() throws Exception {
    assertThatExceptionOfType(ChartException.class)
        .isThrownBy(() -> Charts.write(sheet(THREE), folder.resolve("no/chart.svg")))
        .withMessageContaining("there is no such folder");
    assertThatExceptionOfType(ChartException.class)
        .isThrownBy(() -> Charts.write(sheet(THREE), folder))
        .withMessageContaining("it is a folder");
    try (Stream<Path> all = Files.list(folder)) {
      assertThat(all.toList()).isEmpty();
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {81})
  void any_setup_can_be_drawn(long seed) throws Exception {
    List<FigureSheet> sheets =
        Setups.from(seed).limit(25).map(s -> FigureSheet.of(s.read().setup())).toList();
    int drawn = 0;
    for (FigureSheet sheet : sheets) {
      Path file = folder.resolve("chart.svg");
      if (Charts.write(sheet, file)) {
        assertThat(texts(file)).doesNotContain("NaN", "Infinity");
        drawn++;
      }
    }
    assertThat(drawn).isGreaterThan(15);
  }
}
