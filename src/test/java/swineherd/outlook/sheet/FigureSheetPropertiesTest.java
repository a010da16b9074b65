package swineherd.outlook.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.figures.Band;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.setups.GeneratedSetup;
import swineherd.setups.Setups;

/** What must hold for the sheet of any setup. */
class FigureSheetPropertiesTest {
  private static final int SETUPS = 150;

  /** Rows of which more pigs need more, or as much. */
  private static final Set<String> GROWS_WITH_PIGS =
      Set.of(
          "feed.total",
          "feed.trough",
          "feed.hopper",
          "water.now",
          "water.end",
          "water.hot",
          "water.drinkers",
          "space.lying-now",
          "space.lying-end",
          "space.law",
          "space.build",
          "space.bed-winter-end",
          "space.bed-summer-end",
          "ground.grass-lives",
          "ground.nitrogen",
          "ground.phosphorus",
          "warmth.straw",
          "slaughter.meat-all",
          "slaughter.freezer",
          "slaughter.trailer");

  private static FigureSheet sheet(GeneratedSetup setup) {
    return FigureSheet.of(setup.read().setup());
  }

  /** Every row by section, subject and key; a number is added where a key comes more than once. */
  private static Map<String, Row> rows(FigureSheet sheet) {
    Map<String, Row> rows = new TreeMap<>();
    for (Section section : sheet.sections()) {
      for (Row row : section.rows()) {
        String key = section.key() + "." + row.key() + " " + section.about();
        int n = 2;
        while (rows.containsKey(key)) {
          key = key.replaceAll(" #\\d+$", "") + " #" + n++;
        }
        rows.put(key, row);
      }
    }
    return rows;
  }

  /** The likely number of a row; null if it has none. */
  private static Double likely(Row row) {
    if (row != null && row.figure() instanceof Figure.Amount amount) {
      return amount.band().likely();
    }
    if (row != null && row.figure() instanceof Figure.Count count) {
      return (double) count.count();
    }
    return null;
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void every_row_is_whole_and_names_what_exists(long seed) {
    int rows = 0;
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      for (Section section : sheet(setup).sections()) {
        assertThat(section.rows()).as(section.key()).isNotEmpty();
        for (Row row : section.rows()) {
          rows++;
          assertThat(Rulebook.sources().keySet()).as(row.key()).containsAll(row.sources());
          checkFilled(row.name());
          checkFilled(row.note());
          check(row.figure());
        }
      }
    }
    assertThat(rows).isGreaterThan(10 * SETUPS);
  }

  private static void checkFilled(Phrase phrase) {
    List<String> placeholders =
        Pattern.compile("\\{(\\w+)}")
            .matcher(phrase.text())
            .results()
            .map(m -> m.group(1))
            .toList();
    assertThat(phrase.figures().keySet()).as(phrase.text()).containsAll(placeholders);
    phrase.figures().values().forEach(FigureSheetPropertiesTest::check);
  }

  private static void check(Figure figure) {
    if (figure instanceof Figure.Amount amount) {
      check(amount.band());
    } else if (figure instanceof Figure.Plain plain) {
      check(plain.band());
    } else if (figure instanceof Figure.Price price) {
      assertThat(price.amount()).isFinite();
    } else if (figure instanceof Figure.Chance chance) {
      assertThat(chance.chance()).isBetween(0.0, 1.0);
    } else if (figure instanceof Figure.Missing missing) {
      assertThat(missing.paths()).isNotEmpty();
      missing
          .paths()
          .forEach(path -> assertThat(Rulebook.questions()).containsKey(Question.keyOf(path)));
    } else if (figure instanceof Figure.Beyond beyond) {
      assertThat(beyond.why()).isNotBlank();
    } else if (figure instanceof Figure.Count count) {
      assertThat(count.count()).isNotNegative();
    }
  }

  private static void check(Band band) {
    assertThat(List.of(band.low(), band.likely(), band.high()))
        .isSorted()
        .allMatch(Double::isFinite);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12})
  void more_pigs_never_need_less(long seed) {
    int compared = 0;
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      Map<String, Row> few = rows(sheet(setup.with("pigs[0].count", "3")));
      Map<String, Row> many = rows(sheet(setup.with("pigs[0].count", "4")));
      for (String key : few.keySet()) {
        Double less = likely(few.get(key));
        Double more = likely(many.get(key));
        if (GROWS_WITH_PIGS.contains(key.split(" ")[0]) && less != null && more != null) {
          assertThat(more).as(key + "\n" + setup).isGreaterThanOrEqualTo(less - 1e-9);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(10 * SETUPS);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {21, 22})
  void colder_never_needs_less_bedding_or_feed(long seed) {
    int compared = 0;
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      Map<String, Row> mild = rows(sheet(setup.with("place.coldestMonth", "2 C")));
      Map<String, Row> cold = rows(sheet(setup.with("place.coldestMonth", "-9 C")));
      for (String key : mild.keySet()) {
        String row = key.split(" ")[0];
        Double less = likely(mild.get(key));
        Double more = likely(cold.get(key));
        if (Set.of("warmth.straw", "warmth.first-bed", "warmth.extra-feed").contains(row)
            && less != null
            && more != null) {
          assertThat(more).as(key + "\n" + setup).isGreaterThanOrEqualTo(less - 1e-9);
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThan(SETUPS / 2);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {31, 32})
  void a_heavier_target_is_never_reached_earlier(long seed) {
    int compared = 0;
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      Map<String, Row> light = rows(sheet(setup.with("pigs[0].targetWeight", "40 kg")));
      Map<String, Row> heavy = rows(sheet(setup.with("pigs[0].targetWeight", "45 kg")));
      Row early = light.get("growth.finish group 0");
      Row late = heavy.get("growth.finish group 0");
      if (early != null
          && late != null
          && early.figure() instanceof Figure.Dates first
          && late.figure() instanceof Figure.Dates second) {
        List<LocalDate> firsts =
            List.of(first.dates().early(), first.dates().likely(), first.dates().late());
        List<LocalDate> seconds =
            List.of(second.dates().early(), second.dates().likely(), second.dates().late());
        for (int i = 0; i < 3; i++) {
          assertThat(seconds.get(i)).as(setup.yaml()).isAfterOrEqualTo(firsts.get(i));
        }
        compared++;
      }
    }
    assertThat(compared).isGreaterThan(SETUPS / 2);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {41})
  void the_units_of_the_reader_change_no_figure(long seed) {
    for (GeneratedSetup setup : Setups.from(seed).limit(SETUPS).toList()) {
      // the usual bag differs: 25 kg or 50 lb
      GeneratedSetup bagged = setup.with("money.bag", "25 kg");
      assertThat(sheet(bagged.with("units", "us")).sections())
          .isEqualTo(sheet(bagged.with("units", "metric")).sections());
    }
  }
}
