package swineherd.outlook.sheet;

import java.util.Map;

/**
 * Words with figures in them: the figures stay numbers, so that each keeper reads them in his own
 * units.
 *
 * @param text with a placeholder for each figure: {@code from {low} up}
 * @param figures what fills the placeholders
 */
public record Phrase(String text, Map<String, Figure> figures) {
  public Phrase {
    figures = Map.copyOf(figures);
  }
}
