package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import swineherd.rulebook.RuleInfo;
import swineherd.rulebook.Rulebook;

/** The page of a rule is for vets: every condition in words, and nothing a programmer wrote. */
class RulePageTest {
  /** What stands in a rule file and in no sentence. */
  private static final Pattern PROGRAMMERS =
      Pattern.compile(
          "==|!=|<=|>=|&&|\\|\\||\\$|::|\\bnull\\b|\\btrue\\b|\\bfalse\\b|\\bmemberOf\\b"
              + "|\\baccumulate\\b|\\bcollectSet\\b|\\(\\)|\\b[a-z]+[A-Z]\\w*|\\b[A-Z][a-z]+[A-Z]\\w*"
              + "|\\b[A-Z]+_[A-Z_]+|\\b\\w+\\.\\w+\\(|//");

  /** A pattern that only fetches the pen or group another pattern named. */
  private static final Pattern ONLY_FETCHES =
      Pattern.compile("(\\$\\w+ : )?(Pen|Group)\\(name == \\$\\w+\\.\\w+\\)");

  @TestFactory
  List<DynamicTest> every_condition_is_said_in_words() {
    return Rulebook.rules().values().stream()
        .map(rule -> DynamicTest.dynamicTest(rule.id(), () -> check(rule)))
        .toList();
  }

  private static void check(RuleInfo rule) {
    assertThat(RulePage.conditions(rule))
        .isNotEmpty()
        .allSatisfy(said -> assertThat(said).isNotBlank().doesNotContainPattern(PROGRAMMERS));
    assertThat(unsaid(rule.when())).as("conditions without a comment above them").isEmpty();
    RulePage page = new RulePage(rule, rule.cardId() == null ? null : Rulebook.card(rule.id()));
    String said = page.text();
    assertThat(said.split("For example it applies|and not when")[0])
        .doesNotContainPattern("==|!=|<=|>=|&&|\\|\\||\\$|\\bnull\\b|\\(\\)");
  }

  /** The patterns that have no comment above them. */
  private static List<String> unsaid(String when) {
    List<String> unsaid = new ArrayList<>();
    boolean said = false;
    int open = 0;
    for (String line : when.lines().map(String::strip).filter(l -> !l.isEmpty()).toList()) {
      if (line.startsWith("//")) {
        said = true;
        continue;
      }
      if (open == 0 && !said && !ONLY_FETCHES.matcher(line).matches()) {
        unsaid.add(line);
      }
      open += (int) line.chars().filter(c -> c == '(').count();
      open -= (int) line.chars().filter(c -> c == ')').count();
      said = false;
    }
    return unsaid;
  }

  @Test
  void a_condition_that_nobody_put_into_words_would_be_seen() {
    assertThat(unsaid("// a pen\n$pen : Pen(area > 5)\nexists PenUse(pen == $pen.name)"))
        .containsExactly("exists PenUse(pen == $pen.name)");
    assertThat("pigs where Pen(area != null)").containsPattern(PROGRAMMERS);
  }
}
