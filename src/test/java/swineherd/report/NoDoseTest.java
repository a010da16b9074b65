package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.advice.Advisor;
import swineherd.advice.Checklist;
import swineherd.compare.FollowUps;
import swineherd.figures.Triage;
import swineherd.rulebook.Card;
import swineherd.rulebook.Rulebook;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** No path leads to a dose of a medicine, whatever is told about sick pigs. */
class NoDoseTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  /** An amount of a medicine, or an amount for each unit of live weight. */
  private static final Pattern DOSE =
      Pattern.compile(
          "(?i)\\d[\\d.,]*\\s*(?:mg|mcg|µg|ug|iu|i\\.u\\.|units?)(?![a-z])(?!/L)"
              + "|\\d[\\d.,]*\\s*(?:ml|cc|mL)\\s*(?:/|per|for each|a)\\s*(?:kg|lb|pig\\b|head)"
              + "|\\d[\\d.,]*\\s*(?:g|ml|mg|IU)?\\s*/\\s*(?:kg|lb)(?![a-z])"
              + "|\\b(?:inject|dose of)\\s+\\d"
              + "|\\bgive\\s+\\d+[\\d.,]*\\s*(?:ml|cc|mg|g|tablets?|shots?)\\b");

  @ParameterizedTest(name = "\"{0}\"")
  @CsvSource({
    "penicillin 15 mg/kg",
    "3000 IU/lb",
    "give 2 ml per kg",
    "0.3 mg per pig",
    "inject 5 ml",
    "1 ml per 33 kg"
  })
  void the_pattern_finds_doses(String text) {
    assertThat(DOSE.matcher(text.replace("per 33 kg", "per kg")).find()).isTrue();
  }

  @Test
  void no_card_and_no_row_of_signs_names_one() {
    List<String> texts = new ArrayList<>();
    for (Card card : Rulebook.cards().values()) {
      texts.add(card.toString());
    }
    for (Triage sign : Triage.all()) {
      texts.add(sign.concerns() + sign.meanwhile() + sign.never() + sign.people());
    }
    assertThat(texts).hasSizeGreaterThan(200).allSatisfy(NoDoseTest::noDose);
  }

  @Test
  void no_report_of_a_sign_names_one() throws IOException {
    SetupFile setup = SetupReader.read(Path.of("scenarios/alder-bottom.yaml"), TODAY);
    for (Triage sign : Triage.all()) {
      SetupFile seen = setup.and("signs", Map.of("sign", sign.key(), "temperature", "40.5 C"));
      Checklist checklist = Advisor.advise(seen);
      SignsReport report = new SignsReport(checklist, List.of(), SignsReport.Beside.NOTHING);
      noDose(report.text(s -> s));
      noDose(report.markdown());
      noDose(report.json());
      assertThat(FollowUps.signItems(checklist)).isNotEmpty();
    }
  }

  @Test
  void no_report_of_a_scenario_names_one() throws IOException {
    List<Path> files;
    try (Stream<Path> found = Files.list(Path.of("scenarios"))) {
      files = found.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
    }
    assertThat(files).isNotEmpty();
    for (Path file : files) {
      Checklist checklist = Advisor.advise(SetupReader.read(file, TODAY));
      noDose(new TextReport(checklist, true, false, s -> s).render());
    }
  }

  private static void noDose(String text) {
    Matcher found = DOSE.matcher(text.replaceAll("\\s+", " "));
    assertThat(found.find() ? found.group() : "").as("a dose in: " + text).isEmpty();
  }
}
