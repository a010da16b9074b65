package swineherd.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines of a terminal. */
public final class Lines {
  public static final int WIDTH = 80;

  private final StringBuilder out = new StringBuilder();

  /** A paragraph; the first line begins with {@code lead}, the others are indented as far. */
  public Lines add(String lead, String text) {
    return add(lead, " ".repeat(lead.length()), text);
  }

  Lines add(String lead, String indent, String text) {
    List<String> lines = wrap(text, WIDTH - indent.length());
    for (int i = 0; i < lines.size(); i++) {
      out.append((i == 0 ? lead : indent) + lines.get(i)).append('\n');
    }
    return this;
  }

  /** A line that fits. */
  Lines line(String line) {
    out.append(line).append('\n');
    return this;
  }

  Lines gap() {
    out.append('\n');
    return this;
  }

  /** Lines of at most {@code width} characters, broken between words. */
  public static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
