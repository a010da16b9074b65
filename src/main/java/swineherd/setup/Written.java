package swineherd.setup;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Where everything stands in a text that parses: from the first character to the one after the
 * last, without the blanks and comments around it.
 */
sealed interface Written {
  int start();

  int end();

  /**
   * Named values.
   *
   * @param inline whether it stands in braces
   */
  record Fields(int start, int end, boolean inline, List<Entry> entries) implements Written {
    Entry entry(String name) {
      return entries.stream().filter(e -> e.name().equals(name)).findFirst().orElse(null);
    }
  }

  /** A named value; its name stands from {@code start} to {@code nameEnd}. */
  record Entry(String name, int start, int nameEnd, Written value) {
    int end() {
      return Math.max(nameEnd, value.end());
    }
  }

  /**
   * A list.
   *
   * @param inline whether it stands in brackets
   */
  record Items(int start, int end, boolean inline, List<Written> items) implements Written {}

  /** One answer. */
  record Text(int start, int end, Style style, String text) implements Written {}

  /** How an answer is written: as it is, in quotes, or in lines of their own below a sign. */
  enum Style {
    PLAIN,
    SINGLE,
    DOUBLE,
    BLOCK
  }

  /**
   * @param text YAML or JSON that {@link Node#parse} takes without a problem
   * @return null if there is nothing but comments
   */
  static Written in(String text, boolean json) {
    try {
      return json ? inJson(text) : inYaml(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Written inYaml(String text) {
    org.yaml.snakeyaml.nodes.Node root =
        new Yaml(new LoaderOptions()).compose(new StringReader(text));
    return root == null ? null : new InYaml(text).written(root);
  }

  private static Written inJson(String text) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(text)) {
      return parser.nextToken() == null ? null : inJson(parser);
    }
  }

  private static Written inJson(JsonParser parser) throws IOException {
    int start = (int) parser.currentTokenLocation().getCharOffset();
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      List<Entry> entries = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        int nameStart = (int) parser.currentTokenLocation().getCharOffset();
        String name = parser.currentName();
        int nameEnd = nameStart + parser.getTextLength() + 2; // exact unless it holds escapes
        parser.nextToken();
        entries.add(new Entry(name, nameStart, nameEnd, inJson(parser)));
      }
      return new Fields(start, (int) parser.currentLocation().getCharOffset(), true, entries);
    }
    if (token == JsonToken.START_ARRAY) {
      List<Written> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(inJson(parser));
      }
      return new Items(start, (int) parser.currentLocation().getCharOffset(), true, items);
    }
    String text = token == JsonToken.VALUE_NULL ? null : parser.getText(); // reads it to its end
    Style style = token == JsonToken.VALUE_STRING ? Style.DOUBLE : Style.PLAIN;
    int end = (int) parser.currentLocation().getCharOffset();
    return new Text(
        start, style == Style.DOUBLE ? end : start + parser.getTextLength(), style, text);
  }

  /** Walks the parser's nodes. */
  final class InYaml {
    private final String text;

    InYaml(String text) {
      this.text = text;
    }

    Written written(org.yaml.snakeyaml.nodes.Node node) {
      int start = offset(node.getStartMark());
      if (node instanceof MappingNode mapping) {
        List<Entry> entries = new ArrayList<>();
        mapping.getValue().forEach(e -> entries.add(entry(e.getKeyNode(), e.getValueNode())));
        boolean inline = mapping.getFlowStyle() == FlowStyle.FLOW;
        int end = inline ? offset(node.getEndMark()) : entries.get(entries.size() - 1).end();
        return new Fields(start, end, inline, entries);
      }
      if (node instanceof SequenceNode sequence) {
        List<Written> items = sequence.getValue().stream().map(this::written).toList();
        boolean inline = sequence.getFlowStyle() == FlowStyle.FLOW;
        int end = inline ? offset(node.getEndMark()) : items.get(items.size() - 1).end();
        return new Items(start, end, inline, items);
      }
      ScalarNode scalar = (ScalarNode) node;
      int end = offset(node.getEndMark());
      return switch (scalar.getScalarStyle()) {
        case SINGLE_QUOTED -> new Text(start, end, Style.SINGLE, scalar.getValue());
        case DOUBLE_QUOTED -> new Text(start, end, Style.DOUBLE, scalar.getValue());
        case LITERAL, FOLDED ->
            new Text(
                start,
                start + text.substring(start, end).stripTrailing().length(),
                Style.BLOCK,
                scalar.getValue());
        default -> new Text(start, end, Style.PLAIN, scalar.getValue());
      };
    }

    private Entry entry(org.yaml.snakeyaml.nodes.Node key, org.yaml.snakeyaml.nodes.Node value) {
      String name = key instanceof ScalarNode scalar ? scalar.getValue() : "";
      return new Entry(name, offset(key.getStartMark()), offset(key.getEndMark()), written(value));
    }

    /** The parser counts code points. */
    private int offset(Mark mark) {
      return text.offsetByCodePoints(0, mark.getIndex());
    }
  }
}
