package swineherd.setup;

import java.util.List;
import java.util.Map;

/**
 * A setup as it was read, with the keeper's own words kept.
 *
 * @param file the file, as it was named
 * @param setup what it says
 * @param answers each answer that was given, by its path, in the order of the file
 * @param unusual answers that are possible but should be looked at again
 */
public record SetupFile(
    String file, Setup setup, Map<String, Answer> answers, List<Problem> unusual) {}
