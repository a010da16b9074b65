package swineherd.ask;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;
import org.jline.reader.UserInterruptException;
import org.jline.reader.impl.completer.ArgumentCompleter.ArgumentLine;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/**
 * A terminal with a line that can be edited, and Tab to complete. Nothing typed is kept as history.
 * The only class that touches the library for it, so that no other command loads that.
 */
public final class TerminalTalk implements Talk, AutoCloseable {
  private static final Logger LIBRARY = Logger.getLogger("org.jline");

  private final Terminal terminal;
  private final LineReader reader;
  private List<String> words = List.of();

  /**
   * @throws IOException if there is no terminal to talk to
   */
  public TerminalTalk() throws IOException {
    LIBRARY.setLevel(Level.OFF); // what it tries and cannot do is no concern of a keeper
    terminal = TerminalBuilder.builder().system(true).dumb(true).graphemeCluster(false).build();
    reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .parser(new WholeLine())
            .completer(
                (r, line, candidates) -> words.forEach(word -> candidates.add(candidate(word))))
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            .variable(LineReader.DISABLE_HISTORY, true)
            .variable(LineReader.BELL_STYLE, "none")
            .build();
  }

  private static Candidate candidate(String word) {
    return new Candidate(word, word, null, null, null, null, true);
  }

  @Override
  public String hear(String prompt, List<String> completions) {
    words = new ArrayList<>(completions);
    try {
      return reader.readLine(prompt);
    } catch (EndOfFileException e) {
      return null;
    } catch (UserInterruptException e) {
      throw new Interrupted();
    }
  }

  @Override
  public void say(String text) {
    terminal.writer().println(text);
    terminal.flush();
  }

  @Override
  public boolean isPerson() {
    return true;
  }

  @Override
  public void close() throws IOException {
    terminal.close();
  }

  /** The line is one word: an answer may hold blanks and quotes. */
  private static final class WholeLine implements Parser {
    @Override
    public ParsedLine parse(String line, int cursor, ParseContext context) {
      return new ArgumentLine(line, cursor);
    }
  }
}
