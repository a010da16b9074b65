package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.compare.Matters;
import swineherd.setup.SetupReader;

/**
 * The whole text of two checklists as it was last read and found good. A change of wording, order
 * or number shows here; run with {@code -Dgolden=write} to take the new text over, and read it
 * first.
 */
class GoldenTextTest {
  @ParameterizedTest
  @ValueSource(strings = {"alder-bottom", "bramble-shaw"})
  void the_checklist_reads_as_it_did(String scenario) throws IOException {
    Checklist checklist =
        Advisor.advise(
            SetupReader.read(Path.of("scenarios", scenario + ".yaml"), LocalDate.of(2027, 3, 1)));
    TextReport report = new TextReport(checklist, true, true, s -> s);
    String text = report.render() + report.renderOpen(Matters.Tried.NONE);
    Path golden = Path.of("src/test/resources/golden", scenario + ".txt");
    if ("write".equals(System.getProperty("golden"))) {
      Files.createDirectories(golden.getParent());
      Files.writeString(golden, text);
    }
    assertThat(text).isEqualTo(Files.readString(golden));
    assertThat(text.lines()).allSatisfy(l -> assertThat(l).hasSizeLessThanOrEqualTo(80));
  }
}
