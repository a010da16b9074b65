package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import swineherd.figures.BodyCondition.Bones;
import swineherd.figures.BodyCondition.Verdict;

class BodyConditionTest {
  @ParameterizedTest(name = "V10 {0}: {1} (Porcine Health Management 5, table 2) [read]")
  @CsvSource({
    "SEEN, 1, SAME_DAY",
    "EASILY_FELT, 2, THIS_WEEK",
    "FELT_WITHOUT_PRESSURE, 2.5, LEAN",
    "FELT_WITH_FIRM_PALM, 3, ON_TARGET",
    "FELT_WITH_DIFFICULTY, 3.5, ON_TARGET",
    "NOT_FELT, 4, FAT",
    "DEEPLY_COVERED, 5, FAT"
  })
  void bones_score(Bones bones, double score, Verdict verdict) {
    assertThat(BodyCondition.score(bones)).isEqualTo(score);
    assertThat(BodyCondition.verdict(score)).isEqualTo(verdict);
  }

  @Test
  void a_score_off_the_scale_is_refused() {
    assertThatThrownBy(() -> BodyCondition.verdict(0)).isInstanceOf(OutsideDomainException.class);
  }
}
