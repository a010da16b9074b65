package swineherd.setup;

import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * A setup as it was read, with the keeper's own words kept.
 *
 * @param file the file, as it was named
 * @param setup what it says
 * @param answers each answer that was given, by its path, in the order of the file
 * @param tree the answers as plain values in SI units, as {@link Setup} is made of them
 * @param unusual answers that are possible but should be looked at again
 */
public record SetupFile(
    String file,
    Setup setup,
    Map<String, Answer> answers,
    Map<String, Object> tree,
    List<Problem> unusual) {

  /**
   * The same setup with one answer given, changed or taken away.
   *
   * @param path where: {@code pens[0].area}; the pen or group must be there
   * @param value in SI units: a number, a truth value, an ISO date, the key of a choice; null takes
   *     the answer away
   * @throws BadSetupException if it does not go with the other answers
   */
  public SetupFile with(String path, Object value) {
    return SetupReader.change(this, Collections.singletonMap(path, value));
  }

  /**
   * The same setup with several answers changed at once, for such as go only together.
   *
   * @param changes values by their paths, as {@link #with(String, Object)} takes them
   * @throws BadSetupException if they do not go with each other or with the other answers
   */
  public SetupFile with(Map<String, Object> changes) {
    return SetupReader.change(this, changes);
  }

  /**
   * The same setup with one more sign, diary entry or the like.
   *
   * @param list the list it is added to: {@code signs}
   * @param words its answers by their names, as a keeper writes them: {@code temperature -> "41 C"}
   * @throws BadSetupException if one of them cannot be read, or does not go with the others
   */
  public SetupFile and(String list, Map<String, String> words) {
    return SetupReader.add(this, list, words);
  }
}
