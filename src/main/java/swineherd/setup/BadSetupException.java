package swineherd.setup;

import java.util.List;
import java.util.stream.Collectors;

/** A setup file cannot be used. It holds every problem of the file, in the order of its lines. */
public final class BadSetupException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final transient List<Problem> problems;

  BadSetupException(String file, List<Problem> problems) {
    super(problems.stream().map(p -> p.at(file)).collect(Collectors.joining("\n")));
    this.file = file;
    this.problems = List.copyOf(problems);
  }

  /** The file, as it was named. */
  public String file() {
    return file;
  }

  public List<Problem> problems() {
    return problems;
  }
}
