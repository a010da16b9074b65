package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.rulebook.Table;

class BreedTest {
  @Test
  void every_breed_has_a_growth_class() {
    assertThat(Breed.all()).hasSizeGreaterThanOrEqualTo(35);
    for (Breed breed : Breed.all()) {
      assertThat(GrowthClass.named(breed.growthClass()).key()).isEqualTo(breed.growthClass());
    }
  }

  @Test
  void no_word_means_two_breeds() {
    Map<String, String> meant = new HashMap<>();
    for (Table.Row row : Table.named("breeds").rows()) {
      Stream.of(row.key() + ";" + row.text("name") + ";" + row.text("words"))
          .flatMap(words -> Stream.of(words.split(";")))
          .map(word -> word.strip().toLowerCase(Locale.ROOT).replace('-', ' '))
          .filter(word -> !word.isEmpty())
          .distinct()
          .forEach(word -> assertThat(meant.put(word, row.key())).as(word).isNull());
    }
    assertThat(meant).containsEntry("gos", "gloucestershire-old-spots").hasSizeGreaterThan(100);
  }

  @Test
  void a_breed_that_is_not_in_the_table_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Breed.named("pink"))
        .withMessageContaining("pink");
  }

  @ParameterizedTest(name = "{0}: skin {1}, coat {2}, early {3} (common practice, no source)")
  @CsvSource({
    "large-white, PALE, SHORT, false",
    "middle-white, PALE, SHORT, false",
    "hampshire, MIXED, SHORT, false",
    "tamworth, PIGMENTED, HEAVY, false",
    "mangalitsa, PIGMENTED, HEAVY, false",
    "meishan, PIGMENTED, SHORT, true",
    "kunekune, PIGMENTED, HEAVY, true",
    "pot-bellied, MIXED, SHORT, true",
  })
  void skin_coat_and_ripeness_are_the_breeds(
      String key, Breed.Skin skin, Breed.Coat coat, boolean early) {
    Breed breed = Breed.named(key);
    assertThat(breed.skin()).isEqualTo(skin);
    assertThat(breed.coat()).isEqualTo(coat);
    assertThat(breed.earlyMaturing()).isEqualTo(early);
  }

  @Test
  void a_small_breed_is_never_taken_for_late_ripe() {
    // the safe side, where a litter or tainted meat is at stake
    assertThat(Breed.all())
        .filteredOn(
            b ->
                Stream.of("meishan", "small-lard", "kunekune", "pot-bellied")
                    .anyMatch(b.growthClass()::equals))
        .isNotEmpty()
        .allMatch(Breed::earlyMaturing);
  }
}
