package swineherd.cli;

/** Bold headings on a terminal; plain text everywhere else, and where NO_COLOR is set. */
final class Style {
  private static final boolean ON =
      Boolean.getBoolean("swineherd.terminal")
          && System.getenv("NO_COLOR") == null
          && !"dumb".equals(System.getenv("TERM"));

  private Style() {}

  static String bold(String text) {
    return ON ? "\u001b[1m" + text + "\u001b[0m" : text;
  }
}
