package swineherd.setup;

import java.util.List;
import java.util.Map;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;

/**
 * One change of the text of a setup file at one place, with all around it as it was written.
 * Whether the changed text means what was asked for is for {@link SetupText} to see.
 */
final class Edit {
  private final String file;
  private final String text;
  private final String path;
  private final String lineEnd;
  private final Writing writing;
  private final List<Object> missing;
  private Written at;
  private Written parent;
  private Written.Entry entry;
  private boolean inline;
  private String section = "";

  /**
   * @param file how the file is called in messages
   * @param text as it is written now
   * @param path the place, for messages
   * @param steps the names and numbers of that path
   */
  Edit(String file, String text, boolean json, String path, List<Object> steps) {
    this.file = file;
    this.text = text;
    this.path = path;
    int first = text.indexOf('\n');
    lineEnd = first > 0 && text.charAt(first - 1) == '\r' ? "\r\n" : "\n";
    writing = new Writing(json, lineEnd);
    at = Written.in(text, json);
    inline = json;
    int done = 0;
    while (done < steps.size() && step(steps.get(done))) {
      done++;
    }
    missing = steps.subList(done, steps.size());
  }

  private boolean step(Object step) {
    if (at instanceof Written.Fields fields && fields.entry(String.valueOf(step)) != null) {
      inline |= fields.inline();
      entry = fields.entry((String) step);
      parent = at;
      at = entry.value();
      section = section.isEmpty() ? (String) step : section + "." + step;
      return true;
    }
    if (at instanceof Written.Items items
        && step instanceof Integer index
        && index < items.items().size()) {
      inline |= items.inline();
      entry = null;
      parent = at;
      at = items.items().get(index);
      return true;
    }
    return false;
  }

  /** The text with a value at that place; sections on the way that are not there are made. */
  String put(Object value) {
    if (missing.isEmpty()) {
      return replace(value);
    }
    Object inner = Meaning.nest(missing.subList(1, missing.size()), value);
    if (at == null) {
      return begin(Meaning.nest(missing, value));
    }
    if (isVacant(at)) {
      return fill(Meaning.nest(missing, value));
    }
    if (at instanceof Written.Fields fields) {
      String name = (String) missing.get(0);
      return inline || fields.inline()
          ? addInline(fields, name, inner)
          : addLines(fields, name, inner);
    }
    if (at instanceof Written.Items items) {
      return inline || items.inline() ? addInline(items, inner) : addLines(items, inner);
    }
    throw refuse("stands where a section should be");
  }

  /** The first answers of a file that holds none. */
  private String begin(Object tree) {
    String before = text.isEmpty() || text.endsWith("\n") ? text : text + lineEnd;
    return before + writing.block((Map<?, ?>) tree, "");
  }

  private String replace(Object value) {
    if (at instanceof Written.Fields) {
      throw refuse("is a section, not an answer");
    }
    if (at instanceof Written.Items items) {
      noCommentIn(items.start(), items.end(), leaves(items));
      if (items.inline() || inline) {
        return splice(items.start(), items.end(), writing.inline(value));
      }
      int colon = text.indexOf(':', entry.nameEnd());
      noCommentIn(colon, items.start(), List.of());
      return splice(colon + 1, items.end(), " " + lined(value, Written.Style.PLAIN));
    }
    Written.Text old = (Written.Text) at;
    if (old.style() == Written.Style.BLOCK) {
      noCommentIn(old.start(), nextLine(old.start()), List.of());
    }
    String said = lined(value, old.style());
    return splice(old.start(), old.end(), old.start() == old.end() ? " " + said : said);
  }

  private String lined(Object value, Written.Style like) {
    return value instanceof String said
        ? writing.scalar(said, like, inline)
        : writing.inline(value);
  }

  /** Lines below a name that has nothing yet, or an empty pair of brackets. */
  private String fill(Object tree) {
    if (inline) {
      boolean empty = at.start() == at.end();
      return splice(at.start(), at.end(), (empty ? " " : "") + writing.inline(tree));
    }
    if (entry == null || !(tree instanceof Map || ((List<?>) tree).get(0) instanceof Map)) {
      throw refuse("is no place for a section");
    }
    noCommentIn(at.start(), at.end(), List.of(at));
    String rest = rest(at.end());
    String name = text.substring(0, at.start());
    String head =
        (rest.isEmpty() ? name.stripTrailing() : name)
            + text.substring(at.end(), nextLine(at.end()));
    String indent = " ".repeat(entry.start() - lineStart(entry.start()));
    String lines =
        tree instanceof Map<?, ?> fields
            ? writing.block(fields, indent + "  ")
            : writing.member((Map<?, ?>) ((List<?>) tree).get(0), indent + "  ", 2);
    return joined(head, lines, text.substring(nextLine(at.end())));
  }

  private String addLines(Written.Fields fields, String name, Object value) {
    Written.Entry before = before(fields, name);
    int column = fields.start() - lineStart(fields.start());
    String indent = " ".repeat(column);
    String lines = writing.block(Map.of(name, value), indent);
    boolean afterDash = !text.substring(lineStart(fields.start()), fields.start()).isBlank();
    if (before == null && !afterDash) {
      return splice(lineStart(fields.start()), lineStart(fields.start()), lines);
    }
    return after(before == null ? fields.entries().get(0).end() : before.end(), lines);
  }

  private String addLines(Written.Items items, Object value) {
    int column = items.start() - lineStart(items.start());
    String indent = text.substring(lineStart(items.start()), items.start());
    Written last = items.items().get(items.items().size() - 1);
    int inner = last.start() - lineStart(last.start());
    int width = last instanceof Written.Fields f && !f.inline() ? inner - column : 2;
    if (!indent.isBlank() || width < 2 || !(value instanceof Map)) {
      throw refuse("cannot be added to here without damage");
    }
    return after(items.end(), writing.member((Map<?, ?>) value, indent, width));
  }

  /** Puts lines below the line in which something ends. */
  private String after(int end, String lines) {
    if (!rest(end).strip().matches("(#.*)?")) {
      throw refuse("cannot be added here without damage");
    }
    int next = nextLine(end);
    return joined(text.substring(0, next), lines, text.substring(next));
  }

  /** A last line without a line end gets one, and the new last line goes without. */
  private String joined(String before, String lines, String after) {
    return before.endsWith("\n")
        ? before + lines + after
        : before + lineEnd + lines.substring(0, lines.length() - lineEnd.length()) + after;
  }

  private String addInline(Written.Fields fields, String name, Object value) {
    String entry = writing.entry(name, value);
    if (fields.entries().isEmpty()) {
      boolean lines = text.substring(fields.start(), fields.end()).contains("\n");
      String inner = lines ? lineEnd + "  " + entry + lineEnd : entry;
      noCommentIn(fields.start(), fields.end(), List.of());
      return splice(fields.start() + 1, fields.end() - 1, inner);
    }
    Written.Entry before = before(fields, name);
    Written.Entry first = fields.entries().get(0);
    return before == null
        ? splice(first.start(), first.start(), entry + "," + gap(first.start(), fields.start()))
        : splice(before.end(), before.end(), "," + gap(first.start(), fields.start()) + entry);
  }

  private String addInline(Written.Items items, Object value) {
    String member = writing.inline(value);
    if (items.items().isEmpty()) {
      return splice(items.start() + 1, items.end() - 1, member);
    }
    Written first = items.items().get(0);
    int end = items.items().get(items.items().size() - 1).end();
    return splice(end, end, "," + gap(first.start(), items.start()) + member);
  }

  /** Between two members: a blank, or a new line where the first begins one. */
  private String gap(int first, int start) {
    String indent = text.substring(lineStart(first), first);
    return lineStart(first) > start && indent.isBlank() ? lineEnd + indent : " ";
  }

  /** The last that is there of those that the questions put before a name. */
  private Written.Entry before(Written.Fields fields, String name) {
    List<String> order = order(section);
    Written.Entry before = null;
    for (Written.Entry other : fields.entries()) {
      if (position(order, other.name()) < position(order, name)) {
        before = other;
      }
    }
    return before;
  }

  /** The text without what stands at that place, which must be there. */
  String remove() {
    int index =
        parent instanceof Written.Fields fields
            ? fields.entries().indexOf(entry)
            : ((Written.Items) parent).items().indexOf(at);
    int start = entry == null ? at.start() : entry.start();
    int end = entry == null ? at.end() : entry.end();
    boolean commented = hasComment(start, end, leaves(at));
    if (inline) {
      return commented ? unknown() : removeInline(index, start, end);
    }
    int line = lineStart(start);
    String before = text.substring(line, start);
    boolean own = entry == null ? before.strip().equals("-") : before.isBlank();
    if (commented || !own || !rest(end).isEmpty()) {
      return unknown();
    }
    return splice(line, nextLine(end), "");
  }

  private String removeInline(int index, int start, int end) {
    List<int[]> members =
        parent instanceof Written.Fields fields
            ? fields.entries().stream().map(e -> new int[] {e.start(), e.end()}).toList()
            : ((Written.Items) parent)
                .items().stream().map(i -> new int[] {i.start(), i.end()}).toList();
    int from = start;
    int to = end;
    if (index + 1 < members.size()) {
      to = members.get(index + 1)[0];
    } else if (index > 0) {
      from = members.get(index - 1)[1];
    }
    return hasComment(from, to, leaves(at)) ? unknown() : splice(from, to, "");
  }

  /** An answer that cannot go without the comment beside it. */
  private String unknown() {
    if (entry == null || at instanceof Written.Fields || isMembers(at)) {
      throw refuse("cannot go without the comments that belong to it");
    }
    return replace("unknown");
  }

  private boolean isMembers(Written place) {
    return place instanceof Written.Items items
        && items.items().stream().anyMatch(Written.Fields.class::isInstance);
  }

  private void noCommentIn(int start, int end, List<Written> answers) {
    if (hasComment(start, end, answers)) {
      throw refuse("holds a comment that would be lost");
    }
  }

  private boolean hasComment(int start, int end, List<Written> answers) {
    int from = start;
    for (Written answer : answers) {
      if (text.substring(from, Math.max(from, answer.start())).contains("#")) {
        return true;
      }
      from = Math.max(from, answer.end());
    }
    return text.substring(from, Math.max(from, end)).contains("#");
  }

  private BadSetupException refuse(String message) {
    int offset = at == null ? 0 : at.start();
    int line = (int) text.substring(0, offset).chars().filter(c -> c == '\n').count() + 1;
    int column = offset - lineStart(offset) + 1;
    boolean placed = offset > 0;
    Problem problem =
        new Problem(path, placed ? line : 0, placed ? column : 0, message, "change it by hand");
    return new BadSetupException(file, List.of(problem));
  }

  private String splice(int start, int end, String replacement) {
    return text.substring(0, start) + replacement + text.substring(end);
  }

  /** The names of a section in the order of the questions. */
  static List<String> order(String path) {
    String key = Question.keyOf(path);
    String prefix = key.isEmpty() ? "" : key + ".";
    return Rulebook.questions().keySet().stream()
        .filter(k -> k.startsWith(prefix))
        .map(k -> k.substring(prefix.length()).split("\\.", 2)[0])
        .distinct()
        .toList();
  }

  static int position(List<String> order, String name) {
    int at = order.indexOf(name.split("\\.", 2)[0]);
    return at < 0 ? order.size() : at;
  }

  private int lineStart(int offset) {
    return text.lastIndexOf('\n', offset - 1) + 1;
  }

  /** Where the next line begins; the length of the text if there is none. */
  private int nextLine(int offset) {
    int end = text.indexOf('\n', offset);
    return end < 0 ? text.length() : end + 1;
  }

  /** What stands after an offset in its line. */
  private String rest(int offset) {
    return text.substring(offset, nextLine(offset)).stripTrailing();
  }

  private static boolean isVacant(Written place) {
    return place instanceof Written.Text text
        ? AnswerReader.isUnknown(text.text())
        : place instanceof Written.Items items && items.items().isEmpty();
  }

  private static List<Written> leaves(Written place) {
    if (place instanceof Written.Fields fields) {
      return fields.entries().stream().flatMap(e -> leaves(e.value()).stream()).toList();
    }
    return place instanceof Written.Items items
        ? items.items().stream().flatMap(i -> leaves(i).stream()).toList()
        : List.of(place);
  }
}
