package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the build knows of one rule in a DRL file.
 *
 * @param id name of the rule
 * @param topic the folder it stands in
 * @param file the DRL file
 * @param line where it begins
 * @param cardId id of the card it puts on the checklist; null for a rule that only infers
 * @param fills the placeholders it fills
 * @param reads the answers its conditions look at, pattern by pattern
 * @param when its conditions as they are written, for people to read
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record RuleInfo(
    String id,
    String topic,
    String file,
    int line,
    String cardId,
    Set<String> fills,
    List<Reads> reads,
    String when) {

  /**
   * One pattern of a rule.
   *
   * @param type simple name of the fact
   * @param properties names that its constraints mention
   */
  public record Reads(String type, Set<String> properties) {
    private static final Map<String, String> SECTIONS =
        Map.of(
            "Setup", "",
            "Keeper", "keeper.",
            "Place", "place.",
            "Feed", "feed.",
            "Pen", "pens.",
            "Group", "pigs.",
            "Sign", "signs.",
            "DiaryEntry", "diary.");

    /**
     * What the keys of the questions about such a fact begin with, {@code pens.} or nothing; null
     * for what is worked out.
     */
    public String section() {
      return SECTIONS.get(type);
    }

    /** The keys of the questions whose answers it looks at; none for what is worked out. */
    public Set<String> questions() {
      Set<String> keys = new LinkedHashSet<>();
      if (section() != null) {
        properties.forEach(property -> keys.add(section() + property));
        keys.retainAll(Rulebook.questions().keySet());
      }
      return keys;
    }
  }
}
