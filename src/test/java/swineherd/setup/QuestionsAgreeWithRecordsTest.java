package swineherd.setup;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import swineherd.rulebook.Question;
import swineherd.rulebook.Rulebook;

/** The catalogue of questions and the records say the same, whichever is edited. */
class QuestionsAgreeWithRecordsTest {
  private final Map<String, Type> fields = fields(Setup.class, "", new TreeMap<>());

  @Test
  void every_question_has_a_field_and_every_field_a_question() {
    Map<String, String> asked = new TreeMap<>();
    Rulebook.questions().values().forEach(q -> asked.put(q.path(), typeOf(q)));
    Map<String, String> held = new TreeMap<>();
    fields.forEach((path, type) -> held.put(path, typeOf(type)));
    assertThat(asked).hasSizeGreaterThan(80);
    assertThat(asked.entrySet()).containsExactlyInAnyOrderElementsOf(held.entrySet());
  }

  @Test
  void every_choice_has_a_constant_and_every_constant_a_choice() throws NoSuchFieldException {
    int seen = 0;
    for (Question question : Rulebook.questions().values()) {
      if (fields.get(question.path()) instanceof Class<?> type && type.isEnum()) {
        TreeSet<String> keys = new TreeSet<>();
        for (Object constant : type.getEnumConstants()) {
          keys.add(
              type.getField(((Enum<?>) constant).name()).getAnnotation(JsonProperty.class).value());
        }
        assertThat(new TreeSet<>(question.choices().keySet())).as(question.path()).isEqualTo(keys);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(15);
  }

  @Test
  void a_country_is_known_to_the_tables_by_its_choice() {
    assertThat(Arrays.stream(Country.values()).map(Country::key))
        .containsExactlyInAnyOrderElementsOf(
            Rulebook.questions().get("place.country").choices().keySet());
  }

  private static Map<String, Type> fields(Class<?> type, String path, Map<String, Type> found) {
    for (RecordComponent component : type.getRecordComponents()) {
      String inner = path.isEmpty() ? component.getName() : path + "." + component.getName();
      Type of = component.getGenericType();
      if (of instanceof ParameterizedType list
          && list.getActualTypeArguments()[0] instanceof Class<?> element
          && element.isRecord()) {
        fields(element, inner + "[]", found);
      } else if (of instanceof Class<?> nested && nested.isRecord()) {
        fields(nested, inner, found);
      } else {
        found.put(inner, of);
      }
    }
    return found;
  }

  private static String typeOf(Question question) {
    String one =
        switch (question.kind()) {
          case TEXT -> "text";
          case YES_NO -> "yes-no";
          case COUNT -> "count";
          case CHOICE -> question.choicesFrom() == null ? "choice" : "text";
          case DATE -> "date";
          case DAY_OF_YEAR -> "day-of-year";
          default -> "number";
        };
    return question.list() ? "list of " + one : one;
  }

  private static String typeOf(Type type) {
    if (type instanceof ParameterizedType list) {
      return "list of " + typeOf(list.getActualTypeArguments()[0]);
    }
    Class<?> of = (Class<?>) type;
    if (of.isEnum()) {
      return "choice";
    }
    return Map.of(
            String.class, "text",
            Boolean.class, "yes-no",
            Integer.class, "count",
            LocalDate.class, "date",
            MonthDay.class, "day-of-year",
            Double.class, "number")
        .get(of);
  }
}
