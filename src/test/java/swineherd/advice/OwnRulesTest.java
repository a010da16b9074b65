package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

  private static List<String> ids(Checklist checklist) {
    return checklist.items().stream().map(Item::id).toList();
  }
}
