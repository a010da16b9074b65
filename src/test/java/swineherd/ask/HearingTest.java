package swineherd.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;
import swineherd.units.UnitSystem;
import swineherd.units.UnreadableException;

/** What people type, and the form in which the file holds it. */
class HearingTest {
  /** A Monday. */
  private static final LocalDate TODAY = LocalDate.of(2027, 3, 1);

  private static Heard heard(String key, String typed, UnitSystem units) {
    Question question = Rulebook.questions().get(key);
    return new Hearing(units, TODAY, null).hear(question, typed);
  }

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvSource({
    "pens.area, 12 by 30 ft, 12 x 30 ft",
    "pens.area, twelve by thirty feet, 12 x 30 ft",
    "pens.area, half an acre, 0.5 ac",
    "pens.area, an acre and a half, 1.5 ac",
    "pens.area, about 400 square metres, 400 m2",
    "pigs.arrivalWeight, about 35 pounds, 35 lb",
    "pigs.arrivalWeight, 35 lbs each, 35 lb",
    "pigs.ageOnArrival, eight weeks, 8 wk",
    "pigs.ageOnArrival, 2 months, 2 month",
    "place.coldestMonth, minus 20 c, -20 C",
    "place.coldestMonth, minus twenty degrees C, -20 C",
    "place.coldestMonth, 20 below zero c, -20 C",
    "place.coldestMonth, 4f, 4 F",
    "pens.fence.wireHeights, 8 and 18 in, '8 in, 18 in'",
    "pens.fence.wireHeights, '8, 18 inches', '8 in, 18 in'",
    "pens.fence.wireHeights, 8 18 in, '8 in, 18 in'",
    "pens.fence.wireHeights, 20 cm; 45 cm, '20 cm, 45 cm'",
    "pens.fence.endVoltage, 4000, 4000 V",
    "feed.protein, 16, 16 %",
    "pens.fence.output, half a joule, 0.5 J",
    "pigs.count, two dozen, 24",
    "pigs.count, three, 3",
    "pigs.count, 3 weaners, 3",
    "pigs.count, about a dozen, 12",
    "pens.fence.earthRods, none, 0",
    "pens.fence.strands, 2 strands, 2",
    "pens.fence.kind, electric, electric",
    "keeper.children, y, yes",
    "keeper.children, Yep, yes",
    "keeper.children, nope, no",
    "pigs.booked, not yet, no",
    "pigs.arrives, april 10, 2027-04-10",
    "pigs.arrives, 10th of April, 2027-04-10",
    "pigs.arrives, the 10th of april 2028, 2028-04-10",
    "pigs.arrives, 24/4/2027, 2027-04-24",
    "pigs.arrives, in three weeks, 2027-03-22",
    "pigs.arrives, tomorrow, 2027-03-02",
    "pigs.arrives, saturday, 2027-03-06",
    "pigs.arrives, '1 mar', 2027-03-01",
    "pigs.born, 10 february, 2027-02-10",
    "pigs.born, april 10, 2026-04-10",
    "pigs.wormedOn, 2 weeks ago, 2027-02-15",
    "pigs.wormedOn, last sunday, 2027-02-28",
    "signs.since, yesterday, 2027-02-28",
    "place.firstHardFrost, oct 20, 20 October",
    "place.firstHardFrost, 20th of october, 20 October",
    "place.latitude, 45 north, 45 N",
    "place.latitude, 33.9s, 33.9 S",
    "place.latitude, 45°30'N, 45.5 N",
    "place.country, usa, united-states",
    "place.country, New Zealand, new-zealand",
    "place.country, germ, germany",
    "pens.ground, 6, bare-dry",
    "pens.ground, six, bare-dry",
    "pens.ground, deep litter, deep-litter",
    "pens.fence.kind, Both., both",
    "pens.shade.kind, nothing, none",
    "pens.plants, none, none-of-these",
    "pigs.males, barrows, castrated",
    "pigs.males, not castrated, entire",
    "pigs.breed, large white, large-white",
    "feed.scraps, windfalls and whey, 'garden, whey'",
    "feed.scraps, '2, 6', 'garden, whey'",
    "money.weaner, $95 each, $95",
    "money.weaner, ninety five dollars, 95",
    "money.feed, 17 dollars per 50 lb, 17 per 50 lb",
    "money.feed, 15 for a 25 kg bag, 15 per 25 kg bag",
    "money.meat, 5.50 a pound, 5.50 per pound",
    "pigs.name, 'the  old   reds', the old reds",
    "pigs.name, '\"stop\"', stop",
  })
  void is_understood_as_people_say_it(String key, String typed, String written) {
    Heard heard = heard(key, typed, UnitSystem.US);
    assertThat(heard.said()).isEqualTo(written);
    assertThat(heard.doubt()).isFalse();
  }

  @ParameterizedTest(name = "{0} in {2}: {1} may be {3}")
  @CsvSource({
    "pigs.arrivalWeight, 40, US, 40 lb",
    "pigs.arrivalWeight, 15, METRIC, 15 kg",
    "pigs.arrivalWeight, 30 to 40 lb, US, 35 lb",
    "pigs.arrivalWeight, 30-40 lb, US, 35 lb",
    "pens.area, 12 by 30, US, 12 x 30 ft",
    "pens.area, 6 x 8, METRIC, 6 x 8 m",
    "pigs.ageOnArrival, 8, US, 8 wk",
    "pens.fence.openVoltage, 8, US, 8 kV",
    "pens.fence.height, 30, US, 30 in",
    "pens.fence.length, 280, US, 280 ft",
    "place.coldestMonth, 4, US, 4 F",
    "place.latitude, 45, US, 45 N",
    "pigs.arrives, 4/10, US, 2027-04-10",
    "pigs.arrives, 4/10, METRIC, 2027-10-04",
    "pigs.arrives, mid april, US, 2027-04-15",
    "pigs.arrives, end of may, US, 2027-05-25",
    "pigs.arrives, 20 february, US, 2028-02-20",
    "place.firstHardFrost, early october, US, 5 October",
    "pens.ground, concreet, US, concrete",
    "pigs.males, none found, US, one-testis",
    "pens.water.kind, a tub, US, trough",
    "pigs.name, y, US, y",
  })
  void what_had_to_be_guessed_is_asked_about(
      String key, String typed, UnitSystem units, String written) {
    Heard heard = heard(key, typed, units);
    assertThat(heard.said()).isEqualTo(written);
    assertThat(heard.doubt()).isTrue();
  }

  @ParameterizedTest(name = "{0}: {1}")
  @CsvSource({
    "pigs.arrivalWeight, heavy, write it like 14 kg or 30 lb",
    "pigs.arrivalWeight, 40 F, write it like 14 kg or 30 lb",
    "pens.feederLength, 40, write 40 ft or 40 in",
    "pens.fence.endVoltage, 4, write 4 V or 4 kV",
    "pigs.count, a few, such as 3",
    "pigs.count, 2.5, such as 3",
    "pigs.arrives, soon, write it like",
    "pigs.arrives, 31 april, write it like",
    "keeper.children, perhaps, 'y, n or don''t know'",
    "pens.ground, lava, a number from 1 to 7",
    "pens.ground, 8, a number from 1 to 7",
    "place.country, narnia, ? lists all",
    "money.feed, 15 a bag, say of how much",
    "place.latitude, 45 w, write it like",
  })
  void what_is_refused_is_told_with_what_would_be_accepted(
      String key, String typed, String accepted) {
    assertThatExceptionOfType(UnreadableException.class)
        .isThrownBy(() -> heard(key, typed, UnitSystem.US))
        .satisfies(e -> assertThat(e.accepted()).contains(accepted));
  }

  @ParameterizedTest
  @ValueSource(strings = {"don't know", "Dunno", "dont know", "not sure", "no idea", "don’t know"})
  void not_to_know_is_an_answer(String typed) {
    assertThat(Hearing.isUnknown(typed)).isTrue();
  }
}
