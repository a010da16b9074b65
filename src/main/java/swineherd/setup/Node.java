package swineherd.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

/** A parsed file with the place of everything in it. Scalars stay the text that was written. */
sealed interface Node {
  int MAX_DEPTH = 12;
  int MAX_NODES = 20_000;

  int line();

  int column();

  /** Named values. */
  record Fields(int line, int column, Map<String, Field> fields) implements Node {}

  /** A named value and the place of its name. */
  record Field(int line, int column, Node value) {}

  /** A list. */
  record Items(int line, int column, List<Node> items) implements Node {}

  /** Text, a number or a truth value, as written; null where nothing was written. */
  record Scalar(int line, int column, String text) implements Node {}

  /**
   * Parses one document.
   *
   * @param problems takes what is wrong with it as YAML or JSON
   * @return null if it could not be parsed, or is empty
   */
  static Node parse(String text, boolean json, List<Problem> problems) {
    JsonFactory factory = json ? new JsonFactory() : new YAMLFactory();
    try (JsonParser parser = factory.createParser(text)) {
      if (parser.nextToken() == null) {
        return null;
      }
      Builder builder = new Builder(parser, problems);
      Node node = builder.node("", 0);
      if (parser.nextToken() != null) {
        problems.add(
            builder.problem("", "a second document begins here", "one setup for each file"));
      }
      return node;
    } catch (TooMuch e) {
      problems.add(e.problem);
      return null;
    } catch (JsonProcessingException e) {
      problems.add(broken(e, json));
      return null;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Whether a character can stand in a file of text: no control characters but tabs and line ends.
   */
  static boolean isText(int c) {
    return !Character.isISOControl(c) || c == '\t' || c == '\n' || c == '\r';
  }

  private static Problem broken(JsonProcessingException e, boolean json) {
    String what = "this is not " + (json ? "JSON" : "YAML") + ": ";
    if (e.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
      Mark at = marked.getProblemMark();
      return new Problem("", at.getLine() + 1, at.getColumn() + 1, what + words(marked), null);
    }
    JsonLocation at = e.getLocation();
    return new Problem(
        "",
        at == null ? 0 : at.getLineNr(),
        at == null ? 0 : at.getColumnNr(),
        what + words(e.getOriginalMessage()),
        null);
  }

  private static String words(MarkedYAMLException e) {
    if (e.getProblem().contains("TAB")) {
      return "a tab cannot begin a line; indent with spaces";
    }
    return e.getContextMark() == null
            || e.getContextMark().getLine() == e.getProblemMark().getLine()
        ? e.getProblem()
        : e.getProblem()
            + ", "
            + e.getContext()
            + " from line "
            + (e.getContextMark().getLine() + 1);
  }

  /** The parser's own words, without the parts that speak of its classes. */
  private static String words(String message) {
    if (message.contains("StreamReadConstraints")) {
      return "a name or a number in it is too long";
    }
    if (message.startsWith("Expected a field name")) {
      return "a name before a colon must be a plain word";
    }
    int source = message.indexOf("[Source");
    String words = source < 0 ? message : message.substring(0, message.lastIndexOf(" (", source));
    return words.lines().findFirst().orElse("it cannot be parsed");
  }

  /** Walks the parser's tokens. */
  final class Builder {
    private final JsonParser parser;
    private final List<Problem> problems;
    private int nodes;

    Builder(JsonParser parser, List<Problem> problems) {
      this.parser = parser;
      this.problems = problems;
    }

    Node node(String path, int depth) throws IOException {
      if (depth > MAX_DEPTH || ++nodes > MAX_NODES) {
        throw new TooMuch(problem(path, "the file is nested too deep or too long", null));
      }
      JsonLocation at = parser.currentTokenLocation();
      if (parser instanceof YAMLParser yaml && yaml.isCurrentAlias()) {
        throw new TooMuch(problem(path, "a reference to another place (*)", "write it out"));
      }
      JsonToken token = parser.currentToken();
      if (token == JsonToken.START_OBJECT) {
        return fields(path, depth, at);
      }
      if (token == JsonToken.START_ARRAY) {
        List<Node> items = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
          items.add(node(path + "[" + items.size() + "]", depth + 1));
        }
        return new Items(at.getLineNr(), at.getColumnNr(), items);
      }
      String text = token == JsonToken.VALUE_NULL ? null : parser.getText();
      return new Scalar(at.getLineNr(), at.getColumnNr(), text);
    }

    private Fields fields(String path, int depth, JsonLocation at) throws IOException {
      Map<String, Field> fields = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        JsonLocation nameAt = parser.currentTokenLocation();
        String name = parser.currentName();
        String inner = path.isEmpty() ? name : path + "." + name;
        parser.nextToken();
        Field field = new Field(nameAt.getLineNr(), nameAt.getColumnNr(), node(inner, depth + 1));
        Field before = fields.putIfAbsent(name, field);
        if (before != null) {
          problems.add(
              new Problem(
                  inner,
                  field.line(),
                  field.column(),
                  "is written twice; first in line " + before.line(),
                  "keep one of them"));
        }
      }
      return new Fields(at.getLineNr(), at.getColumnNr(), fields);
    }

    Problem problem(String path, String message, String accepted) {
      JsonLocation at = parser.currentTokenLocation();
      return new Problem(path, at.getLineNr(), at.getColumnNr(), message, accepted);
    }
  }

  /** Ends the walk at something that must not be followed any further. */
  final class TooMuch extends RuntimeException {
    private static final long serialVersionUID = 1L;
    final transient Problem problem;

    TooMuch(Problem problem) {
      super(problem.message());
      this.problem = problem;
    }
  }
}
