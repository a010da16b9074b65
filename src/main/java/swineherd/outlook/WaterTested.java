package swineherd.outlook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import swineherd.figures.Water;
import swineherd.setup.Pen;
import swineherd.setup.Setup;

/**
 * How good the water of a pen is, as far as it was analysed. There is one for each pen with at
 * least one value.
 *
 * @param pen name of the pen
 * @param quality by the worst of the values
 * @param faults the values that are not good, in words
 */
public record WaterTested(String pen, Water.Quality quality, String faults, List<String> grounds)
    implements Outlook {

  static List<Outlook> of(Setup setup) {
    List<Outlook> all = new ArrayList<>();
    for (int i = 0; i < setup.pens().size(); i++) {
      Pen pen = setup.pens().get(i);
      Map<String, Double> values = new LinkedHashMap<>();
      add(values, "dissolved-solids", pen.water().solids());
      add(values, "sulfate", pen.water().sulfate());
      add(values, "nitrate", pen.water().nitrate());
      if (!values.isEmpty()) {
        all.add(
            new WaterTested(
                pen.name(),
                Water.quality(values),
                faults(values),
                Grounds.of("pens[" + i + "].water", "solids", "sulfate", "nitrate").list()));
      }
    }
    return all;
  }

  private static void add(Map<String, Double> values, String item, Double value) {
    if (value != null) {
      values.put(item, value);
    }
  }

  private static String faults(Map<String, Double> values) {
    return values.entrySet().stream()
        .filter(e -> Water.quality(e.getKey(), e.getValue()) != Water.Quality.GOOD)
        .map(e -> e.getKey().replace('-', ' ') + " " + Math.round(e.getValue()) + " mg/L")
        .collect(Collectors.joining(" and "));
  }
}
