package swineherd.cli;

import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** What cannot be done as it was typed, and why. */
final class Refusal {
  private final CommandSpec spec;

  Refusal(CommandSpec spec) {
    this.spec = spec;
  }

  ParameterException because(String message) {
    return new ParameterException(spec.commandLine(), message);
  }

  /**
   * @param what such as {@code pen}
   */
  void unlessOneOf(String what, String name, List<String> names) {
    if (!names.contains(name)) {
      String known =
          names.isEmpty() ? "there is none." : "one of: " + String.join(", ", names) + ".";
      throw because("No " + what + " is called \"" + name + "\"; " + known);
    }
  }
}
