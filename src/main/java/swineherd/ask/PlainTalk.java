package swineherd.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.List;

/**
 * Lines in and lines out, for a pipe. What is read is printed too, so that the output tells all.
 */
public final class PlainTalk implements Talk {
  private static final int LONGEST = 10_000;

  private final BufferedReader in;
  private final PrintWriter out;

  public PlainTalk(BufferedReader in, PrintWriter out) {
    this.in = in;
    this.out = out;
  }

  @Override
  public String hear(String prompt, List<String> words) {
    out.print(prompt);
    out.flush();
    String line = line();
    out.println(line == null ? "" : line);
    return line;
  }

  /** The rest of a line that no person typed is left out. */
  private String line() {
    try {
      String line = in.readLine();
      return line == null || line.length() <= LONGEST ? line : line.substring(0, LONGEST);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void say(String text) {
    out.println(text);
    out.flush();
  }

  @Override
  public boolean isPerson() {
    return false;
  }
}
