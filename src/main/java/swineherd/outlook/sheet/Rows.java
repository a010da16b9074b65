package swineherd.outlook.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import swineherd.figures.OutsideDomainException;

/** Writes the rows of one section. */
final class Rows {
  private final String key;
  private final String title;
  private final String about;
  private final List<Row> rows = new ArrayList<>();
  private final Set<String> assumed = new LinkedHashSet<>();

  Rows(String key, String title, String about) {
    this.key = key;
    this.title = title;
    this.about = about;
  }

  /** A row being written. */
  static final class Draft {
    private final Map<String, Figure> figures = new HashMap<>();
    private final List<String> sources = new ArrayList<>();
    private String note = "";

    private Draft() {}

    /** Fills a placeholder of the name or the note. */
    Draft with(String placeholder, Figure figure) {
      figures.put(placeholder, figure);
      return this;
    }

    /** Says something beside the figure. */
    Draft note(String text) {
      note = note.isEmpty() ? text : note + "; " + text;
      return this;
    }

    /** Names sources by their keys. */
    Draft rests(String... keys) {
      sources.addAll(List.of(keys));
      return this;
    }
  }

  /**
   * Adds a row. Where the figure is refused, the row says which limit was passed.
   *
   * @param name with placeholders, which {@code figure} fills before it works anything out
   * @param figure works the figure out; null adds no row
   */
  Rows add(String rowKey, String name, Function<Draft, Figure> figure) {
    Draft draft = new Draft();
    Figure worked;
    try {
      worked = figure.apply(draft);
    } catch (OutsideDomainException e) {
      worked = new Figure.Beyond(e.getMessage());
      draft.note = "";
    }
    if (worked != null) {
      rows.add(
          new Row(
              rowKey,
              new Phrase(name, draft.figures),
              worked,
              new Phrase(draft.note, draft.figures),
              draft.sources));
    }
    return this;
  }

  /** Adds a row that cannot be had before the answers at those paths are there. */
  Rows lacks(String rowKey, String name, String... paths) {
    return add(rowKey, name, row -> new Figure.Missing(List.of(paths)));
  }

  /** Says what was taken for an answer that is missing. */
  Rows assuming(List<String> what) {
    assumed.addAll(what);
    return this;
  }

  /** Says what was taken for an answer that is missing. */
  Rows assuming(String what) {
    assumed.add(what);
    return this;
  }

  Section section() {
    return new Section(key, title, about, rows, new ArrayList<>(assumed));
  }
}
