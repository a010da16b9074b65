package swineherd.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import swineherd.advice.KnowledgeBase;

/** The rules that a command goes by: the shipped ones, and one's own. */
final class RulesOption {
  @Option(
      names = "--rules",
      paramLabel = "DIR",
      description = {
        "Also use the rules in this folder. A rule file is a program: it can do anything you can"
            + " do on this computer. Use only files you wrote or would run as a program."
      })
  private Path own;

  /**
   * The rules to go by.
   *
   * @throws swineherd.rulebook.RulebookException if one of one's own is faulty
   */
  KnowledgeBase read() {
    return own == null ? KnowledgeBase.shipped() : KnowledgeBase.with(own);
  }
}
