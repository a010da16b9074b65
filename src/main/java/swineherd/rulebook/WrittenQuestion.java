package swineherd.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import swineherd.units.Latitude;
import swineherd.units.Quantity;

/** A question as it stands in the YAML, with its limits as a person writes them. */
record WrittenQuestion(
    String path,
    String label,
    Question.Change change,
    String ask,
    String help,
    Question.Kind kind,
    boolean list,
    List<String> range,
    List<String> usual,
    Map<String, String> choices,
    String choicesFrom,
    Map<String, List<String>> also,
    Map<String, List<String>> when,
    boolean first,
    boolean past) {

  /**
   * The question with its limits read and the choices of its table filled in.
   *
   * @param tables the choices a table gives: key, then its words
   * @throws IllegalArgumentException if something is missing or does not fit
   */
  Question checked(Function<String, Map<String, List<String>>> tables) {
    if (path == null || label == null || ask == null || kind == null) {
      throw new IllegalArgumentException("needs path, label, ask and kind");
    }
    Map<String, String> words = choices == null ? new LinkedHashMap<>() : choices;
    Map<String, List<String>> others = also == null ? new LinkedHashMap<>() : also;
    if (choicesFrom != null) {
      tables
          .apply(choicesFrom)
          .forEach(
              (key, names) -> {
                words.put(key, names.get(0));
                others.put(key, names.subList(1, names.size()));
              });
    }
    if ((kind == Question.Kind.CHOICE) == words.isEmpty()) {
      throw new IllegalArgumentException("a choice, and only a choice, needs choices");
    }
    if (!words.keySet().containsAll(others.keySet())) {
      throw new IllegalArgumentException("other words for choices that are not there: " + others);
    }
    return new Question(
        path,
        label,
        change,
        ask,
        help,
        kind,
        list,
        limits(range),
        limits(usual),
        words,
        choicesFrom,
        others,
        when,
        first,
        past);
  }

  private List<Double> limits(List<String> written) {
    if (written == null) {
      return null;
    }
    List<Double> limits = new ArrayList<>();
    for (String limit : written) {
      if (kind.dimension() != null) {
        limits.add(Quantity.parse(limit, kind.dimension()));
      } else if (kind == Question.Kind.LATITUDE) {
        limits.add(Latitude.parse(limit));
      } else {
        limits.add(Double.valueOf(limit));
      }
    }
    if (limits.size() != 2 || limits.get(0) > limits.get(1)) {
      throw new IllegalArgumentException("limits are two, the smaller first: " + written);
    }
    return limits;
  }
}
