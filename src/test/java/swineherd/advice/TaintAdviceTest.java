package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** One cause, one strong item; a litter is a cause of its own. */
class TaintAdviceTest {

  @ParameterizedTest(name = "{0}, {1} {2}: {3}")
  @CsvSource({
    "gilts,  ,                                          2027-04-20, ''",
    "mixed,  castrated,                                 2027-04-20, taint.castrated",
    "mixed,  ,                                          2027-04-20, taint.look",
    "mixed,  ,                                          2027-06-20, taint.ask-breeder",
    ",       ,                                          2027-04-20, taint.look",
    "males,  entire,                                    2027-04-20, taint.entire taint.smell-a-trim",
    "males,  entire,                                    2027-06-20, taint.entire-coming",
    "mixed,  entire,                                    2027-04-20,"
        + " taint.entire taint.separate taint.smell-a-trim",
    "mixed,  entire,                                    2027-06-20,"
        + " taint.entire-coming taint.separate",
    "males,  one-testis,                                2027-04-20,"
        + " taint.one-testis taint.smell-a-trim",
    "males,  hernia,                                    2027-04-20, taint.hernia taint.smell-a-trim",
    "males,  vaccinated,                                2027-04-20,"
        + " taint.smell-a-trim taint.vaccine-unknown",
  })
  void each_state_of_the_males_has_its_items(
      String sex, String males, LocalDate arrives, String expected) {
    String text =
        """
        checkOn: 2027-06-01
        pigs:
          - name: weaners
            count: 4
            breed: commercial-cross
            %s
            %s
            ageOnArrival: 9 weeks
            arrives: %s
            arrivalWeight: 20 kg
            targetWeight: 105 kg
        """
            .formatted(
                sex == null ? "" : "sex: " + sex, males == null ? "" : "males: " + males, arrives);
    SetupFile setup = SetupReader.read("test.yaml", text, LocalDate.of(2027, 6, 1));
    Checklist checklist = Advisor.advise(setup);
    List<String> ids =
        Stream.concat(
                checklist.items().stream().map(Item::id),
                checklist.inOrder().stream().map(o -> o.card().id()))
            .filter(id -> id.startsWith("taint."))
            .sorted()
            .toList();
    assertThat(String.join(" ", ids)).isEqualTo(expected);
  }
}
