package swineherd.setup;

/**
 * One answer in the keeper's own words.
 *
 * @param path where it stands: {@code pens[0].area}
 * @param label two or three words for the question
 * @param said what was written
 * @param line line in the file
 * @param column column in the line
 */
public record Answer(String path, String label, String said, int line, int column) {}
