package swineherd.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes answers as a person would: plain where that reads back as it was said, else quoted. */
final class Writing {
  private final boolean json;
  private final String lineEnd;

  Writing(boolean json, String lineEnd) {
    this.json = json;
    this.lineEnd = lineEnd;
  }

  /** Named values below each other, each line with its line end. */
  String block(Map<?, ?> fields, String indent) {
    StringBuilder out = new StringBuilder();
    fields.forEach((name, value) -> block(out, indent, (String) name, value));
    return out.toString();
  }

  private void block(StringBuilder out, String indent, String name, Object value) {
    out.append(indent).append(name).append(':');
    if (value instanceof Map<?, ?> inner) {
      out.append(lineEnd).append(block(inner, indent + "  "));
    } else if (value instanceof List<?> list && !list.isEmpty() && list.get(0) instanceof Map) {
      out.append(lineEnd);
      list.forEach(member -> out.append(member((Map<?, ?>) member, indent + "  ", 2)));
    } else {
      out.append(' ')
          .append(
              value instanceof List ? inline(value) : scalar(value, Written.Style.PLAIN, false));
      out.append(lineEnd);
    }
  }

  /**
   * A member of a list that stands in lines.
   *
   * @param indent what stands before its dash
   * @param width from the dash to its names
   */
  String member(Map<?, ?> fields, String indent, int width) {
    String inner = indent + " ".repeat(width);
    return indent + "-" + block(fields, inner).substring(indent.length() + 1);
  }

  /** A value in one line. */
  String inline(Object value) {
    if (value instanceof Map<?, ?> fields) {
      return fields.entrySet().stream()
          .map(e -> entry((String) e.getKey(), e.getValue()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (value instanceof List<?> list) {
      return list.stream().map(this::inline).collect(Collectors.joining(", ", "[", "]"));
    }
    return scalar(value, Written.Style.PLAIN, true);
  }

  /** A named value in one line. */
  String entry(String name, Object value) {
    return (json ? quoted(name) : name) + ": " + inline(value);
  }

  /**
   * One answer.
   *
   * @param like how the answer was written that it replaces
   * @param inline whether it stands in brackets or braces
   */
  String scalar(Object said, Written.Style like, boolean inline) {
    String text = (String) said;
    if (json) {
      boolean plain = like == Written.Style.PLAIN && text.matches("-?(0|[1-9]\\d*)(\\.\\d+)?");
      return plain ? text : quoted(text);
    }
    if (like == Written.Style.SINGLE) {
      return "'" + text.replace("'", "''") + "'";
    }
    boolean plain = like != Written.Style.DOUBLE && readsAs(text, inline);
    return plain ? text : quoted(text);
  }

  /** Whether a text reads back as it is when it is written without quotes. */
  private static boolean readsAs(String text, boolean inline) {
    List<Problem> problems = new ArrayList<>();
    Node node = Node.parse(inline ? "[" + text + "]" : "a: " + text, false, problems);
    Node value = null;
    if (node instanceof Node.Items items && items.items().size() == 1) {
      value = items.items().get(0);
    } else if (node instanceof Node.Fields fields && fields.fields().size() == 1) {
      value = fields.fields().get("a").value();
    }
    return problems.isEmpty() && value instanceof Node.Scalar scalar && text.equals(scalar.text());
  }

  private static String quoted(String text) {
    return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\t", "\\t") + '"';
  }
}
