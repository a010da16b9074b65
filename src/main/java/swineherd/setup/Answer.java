package swineherd.setup;

/**
 * One answer in the keeper's own words.
 *
 * @param path where it stands: {@code pens[0].area}
 * @param label two or three words for the question
 * @param said what was written
 * @param key what it was read as: the key of a choice, yes or no, or the number in SI units
 * @param line line in the file
 * @param column column in the line
 */
public record Answer(String path, String label, String said, String key, int line, int column) {}
