package swineherd.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class DisplayTest {
  @Test
  void several_amounts_share_the_unit_of_the_first() {
    List<Double> heights = List.of(0.10, 0.254, 1.2);
    assertThat(Display.amounts(heights, Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("10, 25 and 120 cm");
    assertThat(Display.amounts(heights, Dimension.LENGTH, UnitSystem.US))
        .isEqualTo("3.9, 10 and 47 in");
    assertThat(Display.amounts(List.of(0.2), Dimension.LENGTH, UnitSystem.METRIC))
        .isEqualTo("20 cm");
  }
}
