package swineherd.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Month;
import org.junit.jupiter.api.Test;

/** Battery and panel of an energizer against makers' figures, and training on frozen ground. */
class PowerNeedTest {
  private static String power(String answers, String place) {
    return Setups.gilts(
            "{kind: electric, strands: 2, length: 100 m, growth: clean, returnWire: no, "
                + answers
                + "}",
            18,
            110)
        .replace("place: {soil: loam}", "place: {soil: loam, " + place + "}");
  }

  private static final String SUMMER = "latitude: 52 N";

  /** EF21 [derived from an energizer catalogue, read]: 1 J, 100 mA, 8 days at half: 38.4 Ah. */
  @Test
  void battery_for_eight_days_at_half_its_charge() {
    PowerNeed need =
        Setups.one(PowerNeed.class, power("power: battery, output: 1 J, battery: 24", SUMMER));
    assertThat(need.ampereHours()).isEqualTo(39);
    assertThat(need.lasts()).isCloseTo(5, within(1e-9));
    assertThat(need.batteryEnough()).isFalse();
    assertThat(need.watts()).isNull();
  }

  /** The catalogue's 3 J draw 290 mA [read]: 8 days at half are 111 Ah. */
  @Test
  void a_stronger_energizer_draws_more() {
    PowerNeed need =
        Setups.one(PowerNeed.class, power("power: battery, output: 3 J, battery: 120", SUMMER));
    assertThat(need.ampereHours()).isEqualTo(112);
    assertThat(need.batteryEnough()).isTrue();
  }

  /** 80 % of the charge at 0 degC, 50 % at -20 [memory]: 38.4 / 0.5 = 76.8 Ah. */
  @Test
  void lead_gives_less_in_the_cold_if_pigs_are_there_then() {
    String cold = power("power: battery, output: 1 J", "latitude: 52 N, coldestMonth: -20 C");
    assertThat(Setups.one(PowerNeed.class, cold).ampereHours()).isEqualTo(39);
    PowerNeed winter = Setups.one(PowerNeed.class, cold.replace("2027-04-24", "2027-11-01"));
    assertThat(winter.ampereHours()).isEqualTo(77);
    assertThat(winter.batteryEnough()).isNull();
  }

  /**
   * 0.5 to 1 peak sun hour in December from 50 to 55 degrees north [memory]: 0.1 A x 24 h x 12 V x
   * 1.2 / 0.75 = 46.1 W [derived].
   */
  @Test
  void panel_for_the_darkest_month_they_are_there() {
    PowerNeed need =
        Setups.one(
            PowerNeed.class,
            power("power: solar, output: 1 J, panel: 20", SUMMER)
                .replace("2027-04-24", "2027-11-01"));
    assertThat(need.darkest()).isEqualTo(Month.DECEMBER);
    assertThat(need.watts()).isEqualTo(47);
    assertThat(need.panelEnough()).isFalse();
    assertThat(
            Setups.one(PowerNeed.class, power("power: solar, output: 1 J", "latitude: 64 N"))
                .watts())
        .isNull();
  }

  @Test
  void nothing_is_reckoned_for_the_mains_or_above_what_is_published() {
    assertThat(Setups.all(PowerNeed.class, power("power: mains, output: 1 J", SUMMER))).isEmpty();
    assertThat(Setups.all(PowerNeed.class, power("output: 1 J", SUMMER))).isEmpty();
    String strong = power("power: battery, output: 4 J", SUMMER);
    assertThat(Setups.all(PowerNeed.class, strong)).isEmpty();
    assertThat(Setups.all(NotWorkedOut.class, strong))
        .anyMatch(n -> n.figure().equals("battery and panel"));
  }

  /** Training takes 3 to 14 days (judgement); frozen from a month after the first hard frost. */
  @Test
  void training_on_frozen_ground_is_told_only_where_the_days_meet() {
    String winter =
        power("output: 1 J", "latitude: 50 N, coldestMonth: -12 C, firstHardFrost: 10 October")
            .replace("trained: yes", "trained: no")
            .replace("2027-04-24", "2027-12-20");
    FrozenTraining frozen = Setups.one(FrozenTraining.class, winter);
    assertThat(frozen.training().days().likely()).isEqualTo(7);
    assertThat(Setups.all(FrozenTraining.class, winter.replace("2027-12-20", "2027-06-20")))
        .isEmpty();
    assertThat(Setups.all(FrozenTraining.class, winter.replace("trained: no", "trained: yes")))
        .isEmpty();
  }
}
