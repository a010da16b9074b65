package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.RulebookException;
import swineherd.setup.SetupFile;
import swineherd.setup.SetupReader;

/** A county that asks for a permit, as the developers' guide shows it. */
class OwnRulesTest {
  private static final String RULE =
      """
      package own.county;

      import swineherd.advice.Advice;
      import swineherd.setup.Country;
      import swineherd.setup.Place;

      // the county asks for a permit before the first pig
      rule "county.permit"
      when
          // in this country
          Place(country == Country.UNITED_STATES)
      then
          insertLogical(Advice.of("county.permit", ""));
      end
      """;
  private static final String CARD =
      """
      - id: county.permit
        heading: Ask the county for its permit to keep pigs.
        do: Go to the county office with a sketch of the pens.
        why: The county asks for one before the first pig comes.
        stage: before-buying
        consequence: law
        likelihood: 0.5
        evidence: law
        sources: ["County code, chapter on livestock (read 2026)"]
      """;
  private static final SetupFile SETUP =
      SetupReader.read(
          "test.yaml",
          """
          place: {country: united-states}
          pens: [{name: lot, fence: {kind: electric}}]
          pigs: [{count: 2, trained: no}]
          """,
          LocalDate.of(2027, 3, 1));

  @TempDir Path folder;

  @BeforeEach
  void county() throws IOException {
    write("county/county.drl", RULE);
    write("county/county.yaml", CARD);
  }

  private void write(String file, String text) throws IOException {
    Path path = folder.resolve(file);
    Files.createDirectories(path.getParent());
    Files.writeString(path, text);
  }

  private List<String> faults() {
    RulebookException e =
        catchThrowableOfType(RulebookException.class, () -> KnowledgeBase.with(folder));
    assertThat(e).as("rules that should be refused").isNotNull();
    return e.faults();
  }

  @Test
  void own_rules_add_to_the_shipped_ones_and_take_nothing_away() {
    List<String> shipped = ids(Advisor.advise(SETUP));
    Checklist checklist = Advisor.advise(SETUP, KnowledgeBase.with(folder));
    assertThat(ids(checklist)).containsAll(shipped).contains("county.permit");
    assertThat(checklist.items())
        .filteredOn(i -> i.id().equals("county.permit"))
        .singleElement()
        .satisfies(
            i -> assertThat(i.because()).extracting(Item.Because::path).contains("place.country"));
    assertThat(ids(Advisor.advise(SETUP)))
        .as("the shared rules are as they were")
        .isEqualTo(shipped);
  }

  @Test
  void a_name_of_ours_is_refused() throws IOException {
    write(
        "fence/fence.drl",
        RULE.replace("own.county", "own.fence").replace("county.permit", "fence.train-first"));
    write("fence/fence.yaml", CARD.replace("county.permit", "fence.train-first"));
    assertThat(faults())
        .anySatisfy(
            f -> assertThat(f).contains("fence.drl:8").contains("the name of a shipped rule"));
  }

  @Test
  void a_package_of_ours_is_refused() throws IOException {
    write("county/county.drl", RULE.replace("own.county", "swineherd.rules.county"));
    assertThat(faults())
        .singleElement()
        .asString()
        .contains("county.drl:1: the package must be own.county");
  }

  @Test
  void a_faulty_rule_is_named_with_its_file_and_line() throws IOException {
    write("county/county.drl", RULE.replace("country ==", "land =="));
    assertThat(faults())
        .singleElement()
        .asString()
        .contains("county.drl:8: rule \"county.permit\"");
  }

  @Test
  void a_folder_without_rules_is_told_so() throws IOException {
    Files.delete(folder.resolve("county/county.drl"));
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains("no rules there"));
  }

  @Test
  void the_example_that_is_shipped_works() {
    KnowledgeBase rules = KnowledgeBase.with(Path.of("scenarios/own-rules"));
    SetupFile coming = SETUP.with("pigs[0].arrives", "2027-04-24");
    assertThat(Advisor.advise(coming, rules).items())
        .filteredOn(i -> i.id().equals("county.permit"))
        .singleElement()
        .satisfies(i -> assertThat(i.due()).isEqualTo(LocalDate.of(2027, 4, 10)));
    assertThat(ids(Advisor.advise(SETUP.with("place.country", "canada"), rules)))
        .doesNotContain("county.permit");
  }

  @Test
  void what_is_no_folder_is_told_so() throws IOException {
    assertThatThrownBy(() -> KnowledgeBase.with(folder.resolve("nothing")))
        .isInstanceOf(RulebookException.class)
        .hasMessageContaining("there is no such folder; --rules takes one with TOPIC/TOPIC.drl");
    write("file", "");
    assertThatThrownBy(() -> KnowledgeBase.with(folder.resolve("file")))
        .isInstanceOf(RulebookException.class)
        .hasMessageContaining("no folder that can be read");
    Files.write(folder.resolve("county/county.drl"), new byte[] {(byte) 0xe4, 10});
    assertThat(faults()).singleElement().asString().contains("no text in UTF-8");
  }

  /** A card, what is changed in it, and what is said of that. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "consequence: law | consequence: lawsuit | county.yaml:6: consequence: lawsuit is not"
            + " accepted; one of: people, animals, law, meat, money, comfort",
        "likelihood: 0.5 | likelihood: often | county.yaml:7: likelihood: often is not accepted; a"
            + " number, such as 0.5",
        "likelihood: 0.5 | likelihood: 5 | county.yaml:1: card county.permit: a likelihood lies"
            + " above 0 and up to 1",
        "for its permit | for its {permit} | county.yaml:1: card county.permit: the rule does not"
            + " fill [permit]",
        "why: The | reason: The | an unknown word reason; one of: [",
        "county.permit | county.other | county.yaml:1: card county.other: no rule has this name",
        "- id: county.permit | - kind: item | card without an id",
        "'sources: [\"County code, chapter on livestock (read 2026)\"]' | sources: [] | its"
            + " evidence needs a source",
        "heading: Ask | heading: \"Ask | county.yaml:",
      })
  void a_faulty_card_is_told_with_its_place(String right, String wrong, String told)
      throws IOException {
    assertThat(CARD).contains(right);
    write("county/county.yaml", CARD.replace(right, wrong));
    assertThat(faults())
        .anySatisfy(f -> assertThat(f).contains(told))
        .allSatisfy(f -> assertThat(f).doesNotContain("swineherd.", "java.", "null"));
  }

  /** What stands in the rule, what is put there, and what is said of that. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Place(country | Place(country == | county.drl:11:",
        "Country.UNITED_STATES) | 5) | county.drl:8: rule \"county.permit\": Equality",
        "swineherd.setup.Place | swineherd.setup.Plaice | county.drl:8: rule \"county.permit\":",
        "insertLogical(Advice | foo(); insertLogical(Advice | only insertLogical(...) may stand",
        "Advice.of(\"county.permit\" | Advice.of(\"fence.signs\" | must have its name",
        "\"\")); | \"\")); insertLogical(Advice.of(\"fence.signs\", \"lot\")); | must have its name",
        "when | salience 5 when | no salience",
      })
  void a_faulty_rule_is_told_with_its_place(String right, String wrong, String told)
      throws IOException {
    assertThat(RULE).contains(right);
    write("county/county.drl", RULE.replace(right, wrong));
    assertThat(faults()).anySatisfy(f -> assertThat(f).contains(told));
  }

  /** Conditions and conclusions that fail only while they run. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Country.UNITED_STATES) | Country.UNITED_STATES, country.name().charAt(99) == 'x') |"
            + " county.drl:8: rule \"county.permit\": String index out of range",
        "permit\", \"\") | permit\", \"\").likely(3) | a likelihood is 0 to 1, not 3.0",
        "permit\", \"\")); | permit\", \"\")); insertLogical(new java.math.BigInteger(\"1\")); end"
            + " rule \"county.count\" when $n : java.math.BigInteger() then"
            + " insertLogical($n.add(java.math.BigInteger.ONE)); |"
            + " county.drl: the rules feed each other without end",
      })
  void rules_that_fail_leave_the_shipped_advice_as_it_is(String right, String wrong, String told)
      throws IOException {
    assertThat(RULE).contains(right);
    write("county/county.drl", RULE.replace(right, wrong));
    KnowledgeBase rules = KnowledgeBase.with(folder);
    assertThat(Advisor.advise(SETUP, rules).items()).isEqualTo(Advisor.advise(SETUP).items());
    assertThat(rules.fault()).get().asString().contains(told);
  }

  @Test
  void rules_that_do_not_end_are_not_waited_for() {
    KnowledgeBase rules = KnowledgeBase.with(folder);
    CountDownLatch never = new CountDownLatch(1);
    Supplier<Checklist> endless =
        () -> {
          try {
            never.await();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
          }
          return null;
        };
    assertThat(OwnRulesRun.of(rules, endless, Duration.ofSeconds(1))).isEmpty();
    assertThat(rules.fault()).get().asString().contains("county.drl: not done after 1 seconds");
    assertThat(OwnRulesRun.of(rules, () -> Advisor.advise(SETUP))).as("run again").isEmpty();
  }

  private static List<String> ids(Checklist checklist) {
    return checklist.items().stream().map(Item::id).toList();
  }
}
