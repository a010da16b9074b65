package swineherd.outlook.sheet;

import java.util.List;

/**
 * One line of a table.
 *
 * @param key short name that stays the same: {@code finish}; several lines of a table may share it
 * @param name what it is
 * @param figure the value, or why there is none
 * @param note what belongs to it; its text may be empty
 * @param sources keys of the sources it rests on; empty where it rests on common practice or
 *     judgement
 */
public record Row(String key, Phrase name, Figure figure, Phrase note, List<String> sources) {
  public Row {
    sources = List.copyOf(sources);
  }
}
