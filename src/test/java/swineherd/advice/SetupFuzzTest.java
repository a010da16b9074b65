package swineherd.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import swineherd.compare.Matters;
import swineherd.report.JsonReport;
import swineherd.report.MarkdownReport;
import swineherd.report.TextReport;
import swineherd.setup.BadSetupException;
import swineherd.setup.Problem;
import swineherd.setup.SetupReader;

/**
 * Scenarios with random damage: whatever a file holds, there is a checklist or a list of problems
 * in plain words, and soon. Not an example from a publication: the property is the expectation.
 */
class SetupFuzzTest {
  private static final int MUTATIONS = 2_000;
  private static final long SEED = 20_270_301;

  /** Far more than any file takes, even on a busy machine; a search that runs away takes longer. */
  private static final Duration AT_MOST = Duration.ofSeconds(5);

  /** Names of classes and what else only a programmer knows. */
  private static final Pattern PROGRAMMERS_WORDS =
      Pattern.compile(
          "\\b(java|javax|com|org|swineherd|kotlin|sun|jdk)\\.[a-z]"
              + "|[A-Za-z]+(Exception|Error|Event|Parser|Token|Constraints)\\b"
              + "|\\[Source|@[0-9a-f]{5,}|\\bnull\\b|REDACTED");

  private static final List<String> SNIPPETS =
      List.of(
          "\0",
          "\t",
          "\r",
          "\u001b[31m",
          "\uFEFF",
          "\uD83D\uDC16",
          "\uD83D",
          "é",
          "“",
          "−",
          " ",
          "\"",
          "'",
          "{",
          "}",
          "[",
          "]",
          ": ",
          ",",
          "#",
          "&a",
          "*a",
          "!",
          "!!binary x",
          "|",
          ">-",
          "%",
          "@",
          "`",
          "? ",
          "- ",
          "---\n",
          "...\n",
          "<<: ",
          "\\u0000",
          "\\",
          "~",
          "null",
          "yes",
          "unknown",
          "0",
          "-1",
          "1e999",
          "NaN",
          "9".repeat(400),
          "0x7f",
          "2027-02-30",
          "1 Jan 0001",
          "31 December 9999",
          "0 kg",
          "-5 kg",
          "1e-300 kg",
          "999999999999 kg",
          "5 ft 6 in",
          "1/0 m",
          "20 x 40 x 60 ft",
          "-18 C",
          "90 S",
          "a".repeat(5_000),
          "[".repeat(60),
          "{a: ".repeat(60),
          "count: 3\n",
          "    pen: lot\n",
          "elsewhere",
          "gilts",
          "entire",
          "kunekune",
          "none");

  private final ObjectMapper json = new ObjectMapper();

  @Test
  @Timeout(value = 10, unit = TimeUnit.MINUTES)
  void seed_20270301_gives_a_checklist_or_plain_problems_and_nothing_else() throws IOException {
    List<String> texts = new ArrayList<>();
    List<String> files = new ArrayList<>();
    for (Path file : ScenariosTest.scenarios()) {
      files.add(String.valueOf(file.getFileName()));
      texts.add(Files.readString(file));
    }
    Random random = new Random(SEED);
    int checklists = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      int which = random.nextInt(texts.size());
      String text = texts.get(which);
      for (int edits = 1 + random.nextInt(3); edits > 0; edits--) {
        text = mutate(text, texts.get(random.nextInt(texts.size())), random);
      }
      if (check(i, files.get(which), text)) {
        checklists++;
      }
    }
    // both ways out must really be tried
    assertThat(checklists).isBetween(MUTATIONS / 10, MUTATIONS * 9 / 10);
  }

  /** Whether it gave a checklist. */
  private boolean check(int number, String file, String text) throws IOException {
    String what = "mutation " + number + " of " + file + ":\n" + text;
    long start = System.nanoTime();
    boolean checklist;
    try {
      reports(Advisor.advise(SetupReader.read(file, text, Examples.TODAY)), text, number % 50 == 0);
      checklist = true;
    } catch (BadSetupException e) {
      plain(e, what);
      checklist = false;
    } catch (RuntimeException | StackOverflowError e) {
      return fail(what, e);
    }
    assertThat(Duration.ofNanos(System.nanoTime() - start)).as(what).isLessThan(AT_MOST);
    return checklist;
  }

  private void reports(Checklist checklist, String text, boolean all) throws IOException {
    List<Matters.Matter> matters =
        all ? Matters.of(checklist, KnowledgeBase.shipped(), 1_000).all() : List.of();
    assertThat(json.readTree(new JsonReport(checklist, matters).render()).get("items"))
        .hasSize(checklist.items().size());
    String shown =
        new TextReport(checklist, true, true, t -> t).render()
            + new MarkdownReport(checklist, matters, true, true).render();
    assertThat(shown)
        .matches(t -> t.codePoints().noneMatch(c -> Character.isISOControl(c) && c != '\n'));
    for (String word : List.of("null", "NaN", "Infinity")) {
      if (!text.contains(word)) {
        assertThat(shown).doesNotContain(word);
      }
    }
  }

  private static void plain(BadSetupException e, String what) {
    assertThat(e.problems()).as(what).isNotEmpty();
    for (Problem problem : e.problems()) {
      assertThat(problem.message()).as(what).isNotBlank();
      String line = problem.at("f");
      assertThat(line)
          .as(what)
          .hasSizeLessThan(1_000)
          .matches(l -> l.codePoints().noneMatch(Character::isISOControl));
      assertThat(PROGRAMMERS_WORDS.matcher(withoutQuotes(problem)).find())
          .as("words of a programmer in: " + line + "\n" + what)
          .isFalse();
    }
  }

  private static String withoutQuotes(Problem problem) {
    String accepted = problem.accepted() == null ? "" : problem.accepted();
    return (problem.message() + "; " + accepted).replaceAll("\"[^\"]*\"|'[^']*'", "");
  }

  private static String mutate(String text, String other, Random random) {
    if (text.isEmpty()) {
      return other;
    }
    List<String> lines = new ArrayList<>(List.of(text.split("\n", -1)));
    int line = random.nextInt(lines.size());
    int at = random.nextInt(text.length());
    switch (random.nextInt(13)) {
      case 0 -> lines.remove(line);
      case 1 -> lines.add(line, lines.get(random.nextInt(lines.size())));
      case 2 -> lines.set(line, lines.get(random.nextInt(lines.size())));
      case 3 -> {
        String[] others = other.split("\n", -1);
        lines.set(line, others[random.nextInt(others.length)]);
      }
      case 4 -> lines.set(line, " ".repeat(random.nextInt(5)) + lines.get(line));
      case 5 -> lines.set(line, lines.get(line).stripLeading());
      case 6, 7 -> lines.set(line, value(lines.get(line), snippet(random)));
      case 8 -> lines.set(line, lines.get(line).replaceAll("\\d", "" + random.nextInt(10)));
      case 9 -> lines.set(line, lines.get(line).replaceAll("(\\d+)", "-$1"));
      case 10 -> {
        return text.substring(0, at) + snippet(random) + text.substring(at);
      }
      case 11 -> {
        return text.substring(0, at) + text.substring(Math.min(text.length(), at + 1));
      }
      default -> {
        return random.nextInt(4) == 0 ? text.substring(0, at) : swap(text, at);
      }
    }
    return String.join("\n", lines);
  }

  private static String snippet(Random random) {
    return SNIPPETS.get(random.nextInt(SNIPPETS.size()));
  }

  private static String value(String line, String value) {
    int colon = line.indexOf(": ");
    return colon < 0 ? line + value : line.substring(0, colon + 2) + value;
  }

  private static String swap(String text, int at) {
    if (at + 1 >= text.length()) {
      return text;
    }
    return text.substring(0, at) + text.charAt(at + 1) + text.charAt(at) + text.substring(at + 2);
  }
}
