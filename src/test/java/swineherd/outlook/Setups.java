package swineherd.outlook;

import java.time.LocalDate;
import java.util.List;
import swineherd.setup.SetupReader;

/** The outlooks of a setup that a test writes down. */
final class Setups {
  private Setups() {}

  /** All outlooks of one kind. */
  static <T extends Outlook> List<T> all(Class<T> kind, String yaml) {
    return Outlooks.of(SetupReader.read("setup.yaml", yaml, LocalDate.of(2027, 3, 1)).setup())
        .stream()
        .filter(kind::isInstance)
        .map(kind::cast)
        .toList();
  }

  /** The only outlook of its kind. */
  static <T extends Outlook> T one(Class<T> kind, String yaml) {
    List<T> found = all(kind, yaml);
    if (found.size() != 1) {
      throw new AssertionError(found.size() + " outlooks " + kind.getSimpleName());
    }
    return found.get(0);
  }

  /**
   * Three modern gilts in one pen, come on 24 April 2027.
   *
   * @param fence the fence, in flow style
   * @param kg weight on arrival and target
   */
  static String gilts(String fence, double kg, double target) {
    return """
        checkOn: 2027-03-01
        place: {soil: loam}
        feed: {kind: hand-fed}
        pens: [{name: field, area: 900 m2, ground: moved-pasture, fence: %s}]
        pigs:
          - {name: gilts, count: 3, breed: commercial-cross, sex: gilts, arrives: 2027-04-24,
             arrivalWeight: %s kg, targetWeight: %s kg, trained: yes}
        """
        .formatted(fence, kg, target);
  }
}
