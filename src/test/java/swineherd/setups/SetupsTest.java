package swineherd.setups;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import swineherd.setup.Country;
import swineherd.setup.Setup;
import swineherd.units.UnitSystem;

/** The generator is worth nothing if it makes only one sort of setup. */
class SetupsTest {
  @Test
  void seed_1_makes_setups_of_all_sorts_that_can_be_read() {
    List<Setup> setups = Setups.from(1).limit(400).map(s -> s.read().setup()).toList();
    assertThat(setups).extracting(Setup::units).contains(UnitSystem.values());
    assertThat(setups)
        .extracting(s -> s.place().country())
        .contains(Country.AUSTRALIA, Country.UNITED_STATES, Country.ENGLAND, null);
    assertThat(setups).anyMatch(s -> s.pens().isEmpty()).anyMatch(s -> s.pens().size() == 2);
    assertThat(setups).flatExtracting(Setup::pigs).extracting("count").contains(1, 60, null);
    assertThat(setups).anyMatch(s -> !s.diary().isEmpty());
    assertThat(setups).anyMatch(s -> s.money().feed() != null);
  }

  @Test
  void the_same_seed_makes_the_same_setups() {
    assertThat(Setups.from(7).limit(20).toList()).isEqualTo(Setups.from(7).limit(20).toList());
  }
}
