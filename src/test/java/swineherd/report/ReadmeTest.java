package swineherd.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import swineherd.advice.Advisor;
import swineherd.setup.SetupReader;

/** What the README shows is what the program says. */
class ReadmeTest {
  @Test
  void the_sample_is_the_beginning_of_a_real_checklist() throws IOException {
    String readme = Files.readString(Path.of("README.md"));
    String after = readme.substring(readme.indexOf("## What it looks like"));
    String sample = after.substring(after.indexOf("```\n") + 4);
    sample = sample.substring(0, sample.indexOf("```"));
    String report =
        new TextReport(
                Advisor.advise(
                    SetupReader.read(
                        Path.of("scenarios/alder-bottom.yaml"), LocalDate.of(2027, 3, 1))),
                false,
                false,
                s -> s)
            .render();
    assertThat(report).startsWith(sample);
    assertThat(sample).hasLineCount(sample.split("\n").length).contains(" 2  ");
  }
}
