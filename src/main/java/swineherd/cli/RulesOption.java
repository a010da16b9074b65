package swineherd.cli;

import java.nio.file.Path;
import java.util.Optional;
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

  private KnowledgeBase rules;

  /**
   * The rules to go by.
   *
   * @throws swineherd.rulebook.RulebookException if one of one's own is faulty
   */
  KnowledgeBase read() {
    rules = own == null ? KnowledgeBase.shipped() : KnowledgeBase.with(own);
    return rules;
  }

  boolean isGiven() {
    return own != null;
  }

  /** What went wrong while they ran; the output then holds the shipped advice alone. */
  Optional<String> fault() {
    return rules == null ? Optional.empty() : rules.fault();
  }
}
