package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Floor, air and heat of shelters, and what leads to bitten tails, against published figures. */
class ShelterOutlooksTest {
  private static final String SIX =
      """
      checkOn: 2027-03-01
      place: {country: denmark, latitude: 52 N, hottestMonth: 29 C}
      feed: {kind: hand-fed}
      pens:
        - name: shed
          area: 30 m2
          ground: concrete
          feederLength: 3 m
          shelter: {kind: barn, floorArea: 30 m2, bed: straw, insulated: no}
      pigs:
        - {name: six, count: 6, breed: commercial-cross, sex: gilts, arrives: 2027-04-24,
           arrivalWeight: 20 kg, targetWeight: 100 kg}
      """;

  /**
   * Shade and summer lying room of six pigs of 100 kg: 6 x 1.2 x 0.047 x 100^0.67 = 7.4 m2 (worked
   * example E, Pastorelli 2006 [read] for 0.047). 30 cm2 of opening a pig [judgement].
   */
  @Test
  void floor_is_that_of_pigs_that_lie_apart_at_the_weight_they_reach() {
    ShelterNeed need = Setups.one(ShelterNeed.class, SIX);
    assertThat(need.weight()).isCloseTo(100, within(1.0));
    assertThat(need.area()).isCloseTo(7.4, within(0.1));
    assertThat(need.opening()).isCloseTo(6 * 0.003, within(1e-9));
    assertThat(need.by()).isEqualTo(LocalDate.of(2027, 4, 17));
  }

  /**
   * Upper critical temperature 22 degC at 100 kg (Heitman 20 to 23, Huynh 2005 [derived]); air in
   * hot weather 120 cubic feet a minute from 68 kg on (MWPS-8 [memory]).
   */
  @Test
  void a_house_is_too_hot_for_heavy_pigs_that_cannot_go_out() {
    HotHouse house = Setups.one(HotHouse.class, SIX);
    assertThat(house.copes()).isCloseTo(22, within(0.1));
    assertThat(house.air()).contains("120 cubic feet").contains("200 m3");
    assertThat(house.by()).isEqualTo(LocalDate.of(2027, 6, 1));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "they go out, ground: concrete, ground: moved-pasture",
    "a cool summer, 29 C, 16 C",
    "not known, hottestMonth: 29 C, soil: loam",
    "gone by then, 2027-04-24, 2026-10-24"
  })
  void no_hot_house_where(String why, String from, String to) {
    assertThat(Setups.all(HotHouse.class, SIX.replace(from, to))).as(why).isEmpty();
  }

  /**
   * The pigs' own heat alone: CIGR 2002 [memory], 235 W at 100 kg of which 0.7 warm the air. Hut of
   * 6 m2 with walls of 1.2 m: 17.8 m2 of plywood at 4 W/m2K, 17 m3 of air an hour for each of four
   * pigs: 4 x 164.5 / (71.0 + 22.4) = 7.0 degrees [derived].
   */
  @Test
  void pigs_warm_a_closed_hut_by_themselves() {
    String hut =
        SIX.replace("count: 6", "count: 4")
            .replace("kind: barn, floorArea: 30 m2", "kind: closed-hut, floorArea: 6 m2")
            .replace("ground: concrete", "ground: moved-pasture");
    HotHut hot = Setups.one(HotHut.class, hut);
    assertThat(hot.shut() - hot.hottest()).isCloseTo(7.0, within(0.1));
    assertThat(Setups.all(HotHut.class, hut.replace("insulated: no", "insulated: yes"))).isEmpty();
    assertThat(Setups.all(HotHut.class, hut.replace("29 C", "21 C"))).isEmpty();
  }

  @Test
  void causes_of_bitten_tails_are_counted_once_each() {
    assertThat(Setups.all(TailCauses.class, SIX)).isEmpty();
    TailCauses bare = Setups.one(TailCauses.class, SIX.replace("bed: straw", "bed: bare"));
    assertThat(bare.causes()).isEqualTo(1);
    assertThat(bare.nothingToRoot()).isTrue();
    // six pigs of 100 kg: 0.65 m2 each by law (Directive 2008/120/EC [read]), a trough of 1.8 m
    TailCauses three =
        Setups.one(
            TailCauses.class,
            SIX.replace("bed: straw", "bed: bare")
                .replace("area: 30 m2\n    ground", "area: 3 m2\n    ground")
                .replace("feederLength: 3 m", "feederLength: 1 m"));
    assertThat(three.causes()).isEqualTo(3);
    assertThat(three.words()).contains("too little room", "too short a feeder");
    assertThat(three.law()).contains("European Union");
  }

  @Test
  void no_law_on_docking_where_the_country_is_not_known() {
    TailCauses bare =
        Setups.one(
            TailCauses.class,
            SIX.replace("bed: straw", "bed: bare").replace("country: denmark, ", ""));
    assertThat(bare.law()).isEqualTo("Docking tails removes none of these.");
    assertThat(bare.grounds()).contains("pens[0].ground");
  }

  @Test
  void one_pig_has_nobody_to_bite() {
    assertThat(
            Setups.all(
                TailCauses.class,
                SIX.replace("bed: straw", "bed: bare").replace("count: 6", "count: 1")))
        .isEmpty();
  }
}
