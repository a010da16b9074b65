package swineherd.rulebook;

import java.util.List;

/**
 * Something under {@code rules/} is wrong; each fault names its file and, where known, its line.
 */
public final class RulebookException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> faults;

  public RulebookException(List<String> faults) {
    super(String.join("\n", faults));
    this.faults = List.copyOf(faults);
  }

  /** One line each, ready to be shown. */
  public List<String> faults() {
    return faults;
  }
}
