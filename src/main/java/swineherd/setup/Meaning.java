package swineherd.setup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a text says, as maps, lists and words; the order of names does not matter. */
final class Meaning {
  private Meaning() {}

  static Object of(Node node) {
    if (node instanceof Node.Fields fields) {
      Map<String, Object> out = new LinkedHashMap<>();
      fields.fields().forEach((name, field) -> out.put(name, of(field.value())));
      return out;
    }
    if (node instanceof Node.Items items) {
      List<Object> out = new ArrayList<>();
      items.items().forEach(item -> out.add(of(item)));
      return out;
    }
    if (!(node instanceof Node.Scalar scalar) || AnswerReader.isUnknown(scalar.text())) {
      return null;
    }
    return scalar.text().strip().replaceAll("\\s+", " ");
  }

  static Object copy(Object meaning) {
    if (meaning instanceof Map<?, ?> fields) {
      Map<String, Object> copy = new LinkedHashMap<>();
      fields.forEach((name, value) -> copy.put((String) name, copy(value)));
      return copy;
    }
    return meaning instanceof List<?> list
        ? new ArrayList<>(list.stream().map(Meaning::copy).toList())
        : meaning;
  }

  /** The meaning without what is unknown and without sections that say nothing. */
  static Object known(Object meaning) {
    if (meaning instanceof Map<?, ?> fields) {
      Map<String, Object> known = new LinkedHashMap<>();
      fields.forEach(
          (name, value) -> {
            Object inner = known(value);
            if (inner != null
                && !(inner instanceof Map<?, ?> m && m.isEmpty())
                && !(inner instanceof List<?> l && l.isEmpty())) {
              known.put((String) name, inner);
            }
          });
      return known;
    }
    if (meaning instanceof List<?> list) {
      List<Object> known = new ArrayList<>();
      list.forEach(member -> known.add(known(member)));
      return known;
    }
    return AnswerReader.isUnknown((String) meaning) ? null : meaning;
  }

  /** Adds the paths of what is named and unknown. */
  static void unknown(Object meaning, String path, Set<String> paths) {
    if (meaning instanceof Map<?, ?> fields) {
      String prefix = path.isEmpty() ? "" : path + ".";
      fields.forEach((name, value) -> unknown(value, prefix + name, paths));
    } else if (meaning instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        unknown(list.get(i), path + "[" + i + "]", paths);
      }
    } else if (meaning == null) {
      paths.add(path);
    }
  }

  /** What stands at a path; null if nothing does. */
  static Object at(Object meaning, List<Object> steps) {
    Object at = meaning;
    for (Object step : steps) {
      if (at instanceof Map<?, ?> fields) {
        at = fields.get(step);
      } else if (at instanceof List<?> list && step instanceof Integer i && i < list.size()) {
        at = list.get(i);
      } else {
        return null;
      }
    }
    return at;
  }

  /** Sets a value; false if a list on the way is too short. */
  @SuppressWarnings("unchecked") // made by this class
  static boolean put(Object meaning, List<Object> steps, Object value) {
    Object step = steps.get(0);
    List<Object> rest = steps.subList(1, steps.size());
    if (meaning instanceof Map<?, ?> && step instanceof String name) {
      Map<String, Object> fields = (Map<String, Object>) meaning;
      Object inner = fields.get(name);
      if (rest.isEmpty() || inner == null) {
        if (!rest.isEmpty() && rest.get(0) instanceof Integer i && i > 0) {
          return false;
        }
        fields.put(name, nest(rest, value));
        return true;
      }
      return put(inner, rest, value);
    }
    if (meaning instanceof List<?> && step instanceof Integer index) {
      List<Object> list = (List<Object>) meaning;
      if (index == list.size()) {
        list.add(nest(rest, value));
        return true;
      }
      if (index > list.size() || rest.isEmpty()) {
        return false;
      }
      return put(list.get(index), rest, value);
    }
    return false;
  }

  static void remove(Object meaning, List<Object> steps) {
    Object parent = at(meaning, steps.subList(0, steps.size() - 1));
    Object last = steps.get(steps.size() - 1);
    if (parent instanceof Map<?, ?> fields) {
      fields.remove(last);
    } else if (parent instanceof List<?> list && last instanceof Integer index) {
      list.remove(index.intValue());
    }
  }

  /** A value below the rest of a path. */
  static Object nest(List<Object> steps, Object value) {
    Object nested = value;
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i) instanceof String name) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put(name, nested);
        nested = fields;
      } else {
        List<Object> list = new ArrayList<>();
        list.add(nested);
        nested = list;
      }
    }
    return nested;
  }
}
