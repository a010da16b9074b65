package swineherd.setup;

/**
 * One thing that is wrong with a setup file.
 *
 * @param path where in the setup: {@code pens[0].area}; empty for the file as a whole
 * @param line line in the file, from 1; 0 for the file as a whole
 * @param column column in the line, from 1; 0 for the file as a whole
 * @param message what is wrong, the answer quoted
 * @param accepted what would be accepted instead; may be null
 */
public record Problem(String path, int line, int column, String message, String accepted) {
  private static final int LONGEST_PATH = 80;

  public Problem {
    // what stands in a file must not steer the terminal that shows what is wrong with it
    path = printable(path.length() > LONGEST_PATH ? path.substring(0, LONGEST_PATH) + "..." : path);
    message = printable(message);
  }

  private static String printable(String text) {
    StringBuilder plain = new StringBuilder(text);
    for (int i = 0; i < plain.length(); i++) {
      if (Character.isISOControl(plain.charAt(i))) {
        plain.setCharAt(i, ' ');
      }
    }
    return plain.toString();
  }

  /** The problem as one line: {@code file:line:column: path: message; accepted}. */
  public String at(String file) {
    StringBuilder text = new StringBuilder(file);
    if (line > 0) {
      text.append(':').append(line).append(':').append(column);
    }
    text.append(": ");
    if (!path.isEmpty()) {
      text.append(path).append(": ");
    }
    text.append(message);
    if (accepted != null) {
      text.append("; ").append(accepted);
    }
    return text.toString();
  }
}
