package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import swineherd.units.Dimension;

/**
 * One question of {@code rules/questions.yaml}: where its answer stands in a setup file, how it is
 * asked and what can be answered.
 *
 * @param path where the answer stands; {@code []} stands for each of a list: {@code pens[].area}
 * @param label two or three words that quote the answer back
 * @param change whether the keeper can make the answer another one
 * @param ask the question itself
 * @param help why it matters, or how to find out; may be null
 * @param kind what sort of answer it takes
 * @param list whether several answers can be given
 * @param range least and greatest possible answer, in the units of {@link Dimension#base()} for a
 *     quantity; null where there is no limit
 * @param usual least and greatest usual answer; null where none is set
 * @param choices key and words of each possible answer, for {@link Kind#CHOICE}
 * @param choicesFrom the table whose rows are the choices; null where they are listed here
 * @param also other words a keeper may use for a choice, by its key
 * @param when other answers that make this question apply, by their path
 * @param first whether it is among the few that are asked before anything else
 * @param past whether a day that is given without its year is the last such day, not the next
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
public record Question(
    String path,
    String label,
    Change change,
    String ask,
    String help,
    Kind kind,
    boolean list,
    List<Double> range,
    List<Double> usual,
    Map<String, String> choices,
    String choicesFrom,
    Map<String, List<String>> also,
    Map<String, List<String>> when,
    boolean first,
    boolean past) {

  public Question {
    change = change == null ? Change.ALWAYS : change;
    choices = choices == null ? Map.of() : choices;
    also = also == null ? Map.of() : also;
    when = when == null ? Map.of() : when;
  }

  /** What a keeper can do about an answer. */
  public enum Change {
    /** It can be built, bought, moved or decided otherwise. */
    @JsonProperty("always")
    ALWAYS,
    /** It can be chosen as long as the pigs have not come. */
    @JsonProperty("before-arrival")
    BEFORE_ARRIVAL,
    /** It is as it is. */
    @JsonProperty("never")
    NEVER
  }

  /** The sorts of answers. */
  public enum Kind {
    @JsonProperty("text")
    TEXT(null),
    @JsonProperty("yes-no")
    YES_NO(null),
    @JsonProperty("count")
    COUNT(null),
    @JsonProperty("choice")
    CHOICE(null),
    @JsonProperty("date")
    DATE(null),
    @JsonProperty("day-of-year")
    DAY_OF_YEAR(null),
    @JsonProperty("latitude")
    LATITUDE(null),
    /** Money, a plain number. */
    @JsonProperty("price")
    PRICE(null),
    /** Money for each kg, written with the weight it is for. */
    @JsonProperty("price-by-weight")
    PRICE_BY_WEIGHT(null),
    @JsonProperty("mass")
    MASS(Dimension.MASS),
    @JsonProperty("length")
    LENGTH(Dimension.LENGTH),
    @JsonProperty("area")
    AREA(Dimension.AREA),
    @JsonProperty("volume")
    VOLUME(Dimension.VOLUME),
    @JsonProperty("temperature")
    TEMPERATURE(Dimension.TEMPERATURE),
    @JsonProperty("time")
    TIME(Dimension.TIME),
    @JsonProperty("energy")
    ENERGY(Dimension.ENERGY),
    @JsonProperty("voltage")
    VOLTAGE(Dimension.VOLTAGE),
    @JsonProperty("flow")
    FLOW(Dimension.FLOW),
    @JsonProperty("concentration")
    CONCENTRATION(Dimension.CONCENTRATION),
    @JsonProperty("share")
    SHARE(Dimension.SHARE);

    private final Dimension dimension;

    Kind(Dimension dimension) {
      this.dimension = dimension;
    }

    /** The dimension of a quantity; null for other kinds. */
    @JsonIgnore
    public Dimension dimension() {
      return dimension;
    }
  }

  /** The path without its list marks and indexes, as in {@code pens.area}. */
  @JsonIgnore
  public String key() {
    return keyOf(path);
  }

  /** The key of the choice that a keeper's words name; case and hyphens do not matter. */
  public Optional<String> choice(String words) {
    String wanted = plain(words);
    for (Map.Entry<String, String> choice : choices.entrySet()) {
      String key = choice.getKey();
      if (plain(key).equals(wanted)
          || plain(choice.getValue()).equals(wanted)
          || also.getOrDefault(key, List.of()).stream().anyMatch(w -> plain(w).equals(wanted))) {
        return Optional.of(key);
      }
    }
    return Optional.empty();
  }

  private static String plain(String words) {
    return words
        .toLowerCase(Locale.ROOT)
        .replace('_', ' ')
        .replace('-', ' ')
        .strip()
        .replaceAll("\\s+", " ");
  }

  /**
   * The key of the question that an answer's path belongs to: {@code pens[2].area -> pens.area}.
   */
  public static String keyOf(String path) {
    StringBuilder key = new StringBuilder(path.length());
    boolean inside = false;
    for (int i = 0; i < path.length(); i++) {
      char c = path.charAt(i);
      if (c == '[') {
        inside = true;
      } else if (c == ']') {
        inside = false;
      } else if (!inside) {
        key.append(c);
      }
    }
    return key.toString();
  }
}
