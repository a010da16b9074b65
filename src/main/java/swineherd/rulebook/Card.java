package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.units.Dimension;
import swineherd.units.Quantity;

/**
 * The wording of one rule, from {@code rules/TOPIC/TOPIC.yaml}. Placeholders in braces are filled
 * by the rule.
 *
 * @param id name of the rule it belongs to
 * @param kind an item of the checklist, or a line among what is already in order
 * @param heading what to do, in one sentence
 * @param besides its heading where somebody is called sooner for something else, so that it names
 *     no later call; null where it needs none
 * @param doIt how to do it
 * @param why why it applies to this setup
 * @param caution what could go wrong, and what not to do
 * @param ready what to have ready for the vet; may be null
 * @param atRisk which other pigs and people are at risk; may be null
 * @param meat what it means for meat and sale; may be null
 * @param referral whom to call
 * @param stage when it is to be done
 * @param consequence what happens if it is not
 * @param likelihood how likely that is, 0 to 1, where the rule does not give it
 * @param evidence what the advice rests on
 * @param sources keys of the sources
 * @param rests one sentence on how good the evidence is, where there is something to say
 * @param standsFor items that may come to apply once an unknown answer is known; this one says what
 *     depends on it
 * @param covers signs (keys of the table signs) that this item tells along with its own, so that
 *     they need none of their own; those that call for more than its referral keep theirs
 * @param again after how long it is to be done again once it was ticked off, or {@link
 *     #UNTIL_ANSWERED}; null for a year
 * @param formerly ids under which it was known before
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Card(
    String id,
    Kind kind,
    String heading,
    String besides,
    @JsonProperty("do") String doIt,
    String why,
    String caution,
    String ready,
    String atRisk,
    String meat,
    Referral referral,
    Stage stage,
    Consequence consequence,
    Double likelihood,
    Evidence evidence,
    List<String> sources,
    String rests,
    List<String> standsFor,
    List<String> covers,
    String again,
    List<String> formerly) {

  /** Ticked off or not, it stays until the answer it asks for is given. */
  public static final String UNTIL_ANSWERED = "until answered";

  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]\\w*)\\}");

  public Card {
    kind = kind == null ? Kind.ITEM : kind;
    referral = referral == null ? Referral.NONE : referral;
    sources = sources == null ? List.of() : List.copyOf(sources);
    standsFor = standsFor == null ? List.of() : List.copyOf(standsFor);
    covers = covers == null ? List.of() : List.copyOf(covers);
    formerly = formerly == null ? List.of() : List.copyOf(formerly);
  }

  /** What a card is for. */
  public enum Kind {
    @JsonProperty("item")
    ITEM,
    @JsonProperty("in-order")
    IN_ORDER
  }

  /**
   * After how many days it is to be done again once it was ticked off.
   *
   * @throws swineherd.units.UnreadableException if {@link #again} is no length of time
   */
  public int againDays() {
    return again == null || again.equals(UNTIL_ANSWERED)
        ? 365
        : (int) Math.round(Quantity.parse(again, Dimension.TIME));
  }

  /** The part of the id before the dot. */
  public String topic() {
    return id.substring(0, id.indexOf('.'));
  }

  /** The names of all placeholders in its texts. */
  public Set<String> placeholders() {
    Set<String> names = new TreeSet<>();
    for (String text : new String[] {heading, besides, doIt, why, caution, ready, atRisk, meat}) {
      Matcher found = PLACEHOLDER.matcher(text == null ? "" : text);
      while (found.find()) {
        names.add(found.group(1));
      }
    }
    return names;
  }
}
