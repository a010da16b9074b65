package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import swineherd.report.JsonReport;
import swineherd.report.TextReport;
import swineherd.rulebook.Evidence;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** The setups in {@code scenarios/} run as they are and do not age. */
class ScenariosTest {
  private static final Path SCENARIOS = Path.of("scenarios");

  static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(f -> f.toString().matches(".*\\.(yaml|json)")).sorted().toList();
    }
  }

  private static Checklist advise(Path file, LocalDate today) {
    return Advisor.advise(SetupReader.read(file, today));
  }

  private static Checklist advise(String file) {
    return advise(SCENARIOS.resolve(file), Examples.TODAY);
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void says_the_same_whatever_day_it_is(Path file) {
    Checklist now = advise(file, Examples.TODAY);
    Checklist later = advise(file, Examples.TODAY.plusYears(3));
    assertThat(now.file().answers()).containsKey("checkOn");
    assertThat(new JsonReport(later, List.of()).render())
        .isEqualTo(new JsonReport(now, List.of()).render());
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void fits_a_terminal(Path file) {
    String text = new TextReport(advise(file, Examples.TODAY), true, true, t -> t).render();
    assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(80));
  }

  @Test
  void each_is_listed_once_with_a_name_of_its_own() throws IOException {
    List<String> rows = Files.readAllLines(SCENARIOS.resolve("README.md"));
    Set<String> names = new HashSet<>();
    for (Path file : scenarios()) {
      String link = "[" + file.getFileName() + "](" + file.getFileName() + ")";
      assertThat(rows).filteredOn(r -> r.contains(link)).as(link).hasSize(1);
      SetupFile setup = SetupReader.read(file, Examples.TODAY);
      assertThat(names.add(setup.setup().name())).as(setup.setup().name()).isTrue();
    }
    assertThat(names).hasSizeGreaterThanOrEqualTo(10);
  }

  @Test
  void what_is_nearly_in_order_has_a_short_list_and_what_is_nearly_all_wrong_a_long_one() {
    int shortest = advise("bramble-shaw.yaml").items().size();
    assertThat(shortest).isLessThanOrEqualTo(3);
    assertThat(advise("nettle-corner.yaml").items().size()).isGreaterThan(shortest);
  }

  @Test
  void no_law_is_told_where_the_country_is_not_known() {
    assertThat(advise("rush-end.yaml").items())
        .isNotEmpty()
        .noneMatch(i -> i.card().evidence() == Evidence.LAW);
  }
}
