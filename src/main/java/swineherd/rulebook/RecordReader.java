package swineherd.rulebook;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Makes records of plain trees (maps, lists, text, numbers, truth values). A data-binding library
 * does the same and more, but takes 80 of the 200 milliseconds of a whole check to get ready; it is
 * used where nobody waits for it, in the build and in the reports.
 */
public final class RecordReader {
  private static final Map<Class<?>, Map<String, Object>> CONSTANTS = new ConcurrentHashMap<>();

  private RecordReader() {}

  /** Parses JSON into a plain tree. */
  public static Object tree(InputStream json) throws IOException {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      return tree(parser);
    }
  }

  private static Object tree(JsonParser parser) throws IOException {
    JsonToken token = parser.currentToken();
    if (token == JsonToken.START_OBJECT) {
      Map<String, Object> fields = new LinkedHashMap<>();
      while (parser.nextToken() != JsonToken.END_OBJECT) {
        String name = parser.currentName();
        parser.nextToken();
        fields.put(name, tree(parser));
      }
      return fields;
    }
    if (token == JsonToken.START_ARRAY) {
      List<Object> items = new ArrayList<>();
      while (parser.nextToken() != JsonToken.END_ARRAY) {
        items.add(tree(parser));
      }
      return items;
    }
    return switch (token) {
      case VALUE_NULL -> null;
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
      default -> parser.getText();
    };
  }

  /**
   * A tree as a record.
   *
   * @throws IllegalArgumentException if a name in the tree is no component of the record, or a
   *     value is not of its type
   */
  public static <T> T read(Class<T> type, Object tree) {
    return type.cast(value(type, tree));
  }

  /** A map of trees as a map of records. */
  public static <T> Map<String, T> readAll(Class<T> type, Object tree) {
    Map<String, T> all = new LinkedHashMap<>();
    ((Map<?, ?>) tree).forEach((key, value) -> all.put((String) key, read(type, value)));
    return all;
  }

  private static Object value(Type type, Object tree) {
    if (tree == null) {
      return type == boolean.class ? (Object) false : null;
    }
    if (type instanceof ParameterizedType generic) {
      return collection(generic, tree);
    }
    Class<?> of = (Class<?>) type;
    if (of.isRecord()) {
      return record(of, (Map<?, ?>) tree);
    }
    if (of.isEnum()) {
      return constant(of, (String) tree);
    }
    if (of == Integer.class || of == int.class) {
      return ((Number) tree).intValue();
    }
    if (of == LocalDate.class) {
      return LocalDate.parse((String) tree);
    }
    if (of == MonthDay.class) {
      return MonthDay.parse((String) tree);
    }
    return tree;
  }

  private static Object collection(ParameterizedType type, Object tree) {
    Type[] of = type.getActualTypeArguments();
    if (tree instanceof Map<?, ?> fields) {
      Map<Object, Object> map = new LinkedHashMap<>();
      fields.forEach((key, value) -> map.put(key, value(of[1], value)));
      return map;
    }
    List<Object> list = new ArrayList<>();
    for (Object item : (List<?>) tree) {
      list.add(value(of[0], item));
    }
    return type.getRawType() == List.class ? list : new LinkedHashSet<>(list);
  }

  private static Object record(Class<?> type, Map<?, ?> fields) {
    RecordComponent[] components = type.getRecordComponents();
    Class<?>[] types = new Class<?>[components.length];
    Object[] values = new Object[components.length];
    int found = 0;
    for (int i = 0; i < components.length; i++) {
      JsonProperty named = components[i].getAccessor().getAnnotation(JsonProperty.class);
      String name = named == null ? components[i].getName() : named.value();
      types[i] = components[i].getType();
      values[i] = value(components[i].getGenericType(), fields.get(name));
      found += fields.containsKey(name) ? 1 : 0;
    }
    if (found < fields.size()) {
      throw new IllegalArgumentException(
          type.getSimpleName() + " has not all of " + fields.keySet());
    }
    try {
      Constructor<?> constructor = type.getDeclaredConstructor(types);
      return constructor.newInstance(values);
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static Object constant(Class<?> type, String key) {
    Object constant = CONSTANTS.computeIfAbsent(type, RecordReader::constants).get(key);
    if (constant == null) {
      throw new IllegalArgumentException(key + " is no " + type.getSimpleName());
    }
    return constant;
  }

  private static Map<String, Object> constants(Class<?> type) {
    Map<String, Object> constants = new HashMap<>();
    for (Field field : type.getFields()) {
      JsonProperty named = field.getAnnotation(JsonProperty.class);
      if (field.isEnumConstant() && named != null) {
        try {
          constants.put(named.value(), field.get(null));
        } catch (IllegalAccessException e) {
          throw new IllegalStateException(e);
        }
      }
    }
    return constants;
  }
}
