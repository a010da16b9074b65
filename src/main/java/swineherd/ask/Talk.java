package swineherd.ask;

import java.util.List;

/** The other end of a conversation: a person at a terminal, or lines from a pipe. */
public interface Talk {
  /**
   * The next line.
   *
   * @param prompt what stands before it
   * @param words what may be typed, to be completed
   * @return the line as typed; null when there is nothing more to come
   * @throws Interrupted if the person breaks off
   */
  String hear(String prompt, List<String> words);

  /** Shows a text of one or more lines. */
  void say(String text);

  /** Whether somebody sits there who can be asked again. */
  boolean isPerson();

  /** The person broke off, as with Ctrl-C. */
  final class Interrupted extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }
}
