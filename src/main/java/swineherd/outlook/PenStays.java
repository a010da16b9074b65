package swineherd.outlook;

import java.util.ArrayList;
import java.util.List;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * A pen in which pigs are or will be.
 *
 * @param index place of the pen in the setup
 * @param pen the pen
 * @param stays of the groups that are or will be in it; at least one
 */
record PenStays(int index, Pen pen, List<Stay> stays) {
  /** All such pens, in the order of the setup. */
  static List<PenStays> of(Setup setup, List<Course> courses) {
    List<Stay> all = Stay.of(setup, courses);
    List<PenStays> pens = new ArrayList<>();
    for (int i = 0; i < setup.pens().size(); i++) {
      Pen pen = setup.pens().get(i);
      List<Stay> there = Stay.in(pen.name(), all);
      if (!there.isEmpty()) {
        pens.add(new PenStays(i, pen, there));
      }
    }
    return pens;
  }

  /** Where the pen stands in the setup. */
  String path() {
    return "pens[" + index + "]";
  }

  /** Whether the number of pigs was said of every group. */
  boolean counted() {
    return stays.stream().allMatch(s -> s.group().count() != null);
  }

  /** Pigs of all groups together; a group that was not counted is one. */
  int count() {
    return stays.stream().mapToInt(Stay::count).sum();
  }
}
