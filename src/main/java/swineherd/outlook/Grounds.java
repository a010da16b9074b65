package swineherd.outlook;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Collects the paths of the answers that an outlook was worked out from. */
final class Grounds {
  private final Set<String> paths = new LinkedHashSet<>();

  /** Adds answers of one section: {@code of("pigs[0]", "arrives", "breed")}. */
  static Grounds of(String section, String... fields) {
    return new Grounds().and(section, fields);
  }

  Grounds and(String section, String... fields) {
    for (String field : fields) {
      paths.add(section + "." + field);
    }
    return this;
  }

  /** Adds an answer if there is one: what was only assumed is no ground. */
  Grounds said(String path, Object answer) {
    if (answer != null) {
      paths.add(path);
    }
    return this;
  }

  Grounds and(List<String> more) {
    paths.addAll(more);
    return this;
  }

  List<String> list() {
    return List.copyOf(new ArrayList<>(paths));
  }
}
