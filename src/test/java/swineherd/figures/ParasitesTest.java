package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.Parasites.History;
import swineherd.figures.Parasites.Input;
import swineherd.figures.Parasites.Keeping;
import swineherd.figures.Parasites.NextTest;
import swineherd.rulebook.Table;
import swineherd.setup.Pen.Ground;

class ParasitesTest {
  private static final double NEVER = Double.POSITIVE_INFINITY;

  /**
   * Worked by hand from the factor table [judgement]: its anchors are the prepatent period of the
   * roundworm (56 d), the label repeat of 4-6 weeks (floor) and handbook schedules (ceiling).
   */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "P06 56*.9*.85*.8*.9*.9 = 27.8,150,BARE_DRY,30,,,9,false,false,35,true",
    "P07 56*1*1*1.3*1*.9 = 65.5,400,MOVED_PASTURE,Infinity,,DOSED_AT_SOURCE,9,false,false,66,false",
    "P08 56*1*1.2*1.1*.9 = 66.5,,BEDDED_CONCRETE,,true,,20,false,false,67,false",
    "P09 56*1.3*1.2*1.15 = 100.5,400,MOVED_PASTURE,Infinity,,TWO_CLEAN_TESTS,20,false,true,90,false",
    "P10 56*1.15*2 = 128.8,600,MOVED_PASTURE,730,,DOSED_AT_SOURCE,65,true,false,129,false",
    "P11 56*.8*.75*.8*.75*.9 = 18.1,60,BARE_WET,0,,KNOWN_POSITIVE,14,false,false,35,true",
    "P12 56*.9*.85*1*1*.9 = 38.6,150,BARE_DRY,365,,DOSED_AT_SOURCE,9,false,false,39,false",
  })
  void the_next_test_follows_the_factors(
      String check,
      Double area,
      Ground ground,
      Double rest,
      Boolean washed,
      History history,
      double weeks,
      boolean breeding,
      boolean cold,
      int days,
      boolean overloaded) {
    NextTest next =
        Parasites.nextTest(new Keeping(area, ground, rest, washed, history, weeks, breeding, cold));
    assertThat(next.days()).isEqualTo(days);
    assertThat(next.overloaded()).isEqualTo(overloaded);
  }

  @Test
  void the_base_is_the_upper_prepatent_value_of_the_roundworm() {
    // 7-8 weeks (veterinary course notes) and about two months (Missouri G2430) [read].
    assertThat(Table.named("parasite-days").row("base").number("days"))
        .isEqualTo(Parasites.prepatent("large-roundworm").orElseThrow().high());
  }

  @Test
  void thirty_two_weeks_still_counts_as_young() {
    Keeping at32 =
        new Keeping(
            240.0, Ground.MOVED_PASTURE, 365.0, null, History.DOSED_AT_SOURCE, 32.0, false, false);
    Keeping over32 =
        new Keeping(
            240.0, Ground.MOVED_PASTURE, 365.0, null, History.DOSED_AT_SOURCE, 32.1, false, false);
    assertThat(Parasites.nextTest(at32).days()).isEqualTo(56);
    assertThat(Parasites.nextTest(over32).days()).isEqualTo(84);
  }

  @Test
  void what_is_unknown_is_named_and_what_does_not_matter_is_not() {
    assertThat(
            Parasites.nextTest(new Keeping(null, null, null, null, null, null, false, null))
                .assumed())
        .containsExactlyInAnyOrder(
            Input.AREA, Input.GROUND, Input.REST, Input.HISTORY, Input.AGE, Input.SEASON);
    assertThat(
            Parasites.nextTest(
                    new Keeping(
                        null,
                        Ground.BEDDED_CONCRETE,
                        null,
                        null,
                        History.DOSED_AT_SOURCE,
                        20.0,
                        false,
                        false))
                .assumed())
        .containsExactly(Input.WASHING);
  }

  @Test
  void p13_the_dung_test_never_comes_before_42_days() {
    // Shortest prepatent period of roundworm and whipworm, about 6 weeks [judgement from read
    // spans].
    LocalDate dose = LocalDate.of(2025, 5, 1);
    assertThat(Parasites.dungTestOn(dose, new NextTest(35, true, Set.of())))
        .isEqualTo(dose.plusDays(42));
    assertThat(Parasites.dungTestOn(dose, new NextTest(66, false, Set.of())))
        .isEqualTo(dose.plusDays(66));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "roundworm 6-8 weeks (Pennsylvania; Missouri G2430) [read], large-roundworm, 42, 56",
    "whipworm 6-8 weeks; 41 d from memory, whipworm, 41, 56",
    "nodular worm about 3 weeks (course notes) [read], nodular-worm, 21, 21",
    "threadworm under 15 d (course notes) [read], threadworm, 6, 14",
    "lungworm about 4 weeks (course notes) [read], lungworm, 28, 28",
    "kidney worm 6-16 months [memory], kidney-worm, 180, 480",
  })
  void worms_take_their_time_to_show_eggs(String check, String worm, int low, int high) {
    assertThat(Parasites.prepatent(worm)).hasValue(new DayRange(low, high));
  }

  @Test
  void a_parasite_without_eggs_in_dung_has_no_prepatent_period() {
    assertThat(Parasites.prepatent("trichina")).isEmpty();
  }

  @Test
  void an_impossible_area_is_refused() {
    Keeping odd = new Keeping(-1.0, Ground.MOVED_PASTURE, 365.0, null, null, 10.0, false, false);
    assertThatThrownBy(() -> Parasites.nextTest(odd)).isInstanceOf(OutsideDomainException.class);
  }

  @Test
  void more_area_or_longer_rest_is_never_a_shorter_interval_seed_42() {
    Random random = new Random(42);
    for (int i = 0; i < 2000; i++) {
      Keeping k = anyKeeping(random);
      Keeping roomier = with(k, k.areaPerPigM2() * (1 + random.nextDouble() * 5), k.restDays());
      Keeping rested = with(k, k.areaPerPigM2(), k.restDays() + random.nextDouble() * 1800);
      int days = Parasites.nextTest(k).days();
      assertThat(Parasites.nextTest(roomier).days()).as("%s", roomier).isGreaterThanOrEqualTo(days);
      assertThat(Parasites.nextTest(rested).days()).as("%s", rested).isGreaterThanOrEqualTo(days);
      assertThat(days).isBetween(35, 180);
    }
  }

  @Test
  void unknown_is_never_longer_than_known_seed_43() {
    Random random = new Random(43);
    for (int i = 0; i < 2000; i++) {
      Keeping k = anyKeeping(random);
      NextTest known = Parasites.nextTest(k);
      for (Keeping blanked : blankedInTurn(k)) {
        NextTest unknown = Parasites.nextTest(blanked);
        // History has a level of its own for unknown, between its best and its worst.
        if (!(blanked.history() == null && k.history() == History.KNOWN_POSITIVE)) {
          assertThat(unknown.days())
              .as("%s against %s", blanked, k)
              .isLessThanOrEqualTo(known.days());
        }
        boolean matters = blanked.areaPerPigM2() != null || k.ground().isEarth();
        assertThat(unknown.assumed()).as("%s", blanked).hasSize(matters ? 1 : 0);
      }
    }
  }

  private static Keeping[] blankedInTurn(Keeping k) {
    return new Keeping[] {
      new Keeping(
          null,
          k.ground(),
          k.restDays(),
          null,
          k.history(),
          k.ageWeeks(),
          false,
          k.coldThroughout()),
      new Keeping(
          k.areaPerPigM2(),
          null,
          k.restDays(),
          null,
          k.history(),
          k.ageWeeks(),
          false,
          k.coldThroughout()),
      new Keeping(
          k.areaPerPigM2(),
          k.ground(),
          null,
          null,
          k.history(),
          k.ageWeeks(),
          false,
          k.coldThroughout()),
      new Keeping(
          k.areaPerPigM2(),
          k.ground(),
          k.restDays(),
          null,
          null,
          k.ageWeeks(),
          false,
          k.coldThroughout()),
      new Keeping(
          k.areaPerPigM2(),
          k.ground(),
          k.restDays(),
          null,
          k.history(),
          null,
          false,
          k.coldThroughout()),
      new Keeping(
          k.areaPerPigM2(), k.ground(), k.restDays(), null, k.history(), k.ageWeeks(), false, null),
    };
  }

  private static Keeping with(Keeping k, double area, double rest) {
    return new Keeping(
        area,
        k.ground(),
        rest,
        k.washed(),
        k.history(),
        k.ageWeeks(),
        k.breeding(),
        k.coldThroughout());
  }

  private static Keeping anyKeeping(Random random) {
    Ground[] earth = {Ground.DEEP_LITTER, Ground.MOVED_PASTURE, Ground.BARE_DRY, Ground.BARE_WET};
    History[] histories = History.values();
    double rest = random.nextInt(10) == 0 ? NEVER : random.nextDouble() * 2400;
    return new Keeping(
        random.nextDouble() * 700,
        earth[random.nextInt(earth.length)],
        rest,
        null,
        histories[random.nextInt(histories.length)],
        random.nextDouble() * 50,
        false,
        random.nextBoolean());
  }
}
