package swineherd.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static swineherd.figures.ForecastTest.known;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * The modern class against 72 pigs that had no part in it: data set dietox, see {@code
 * src/test/resources/dietox/README.md}. Each pig is forecast from its weight in week 1 on a scale,
 * complete feed to appetite, housed, sex unknown (factor 1), feed and pigs weighed.
 *
 * <p>Expected before the data were looked at, and not moved since: the mean within 12 % every week,
 * and six in ten of the weights inside the 80 % band. One trial is one draw of what class and
 * setting hide: a rate 0.094 off in its logarithm (one standard deviation) is 7 to 8 % off in
 * weight at the end; at one and a half, about six in ten pigs are still inside the band.
 *
 * <p>Found: the mean is never more than 4 % off, and 83 % of the weights are inside. In the first
 * two weeks only six in ten are: a weight on a scale has its own error and the pigs' gut fill, and
 * the band is for the pig, not for what the scale will show.
 */
class DietoxTest {
  private static final LocalDate FIRST_WEEK = LocalDate.of(2027, 1, 1);

  private record Week(
      int week,
      int pigs,
      double startKg,
      double meanKg,
      int inside,
      double lowKg,
      double highKg,
      double feedKg) {
    /** One row as it stands in the file. */
    String row() {
      return String.format(
          Locale.ROOT,
          "%d,%d,%.3f,%.3f,%d,%.2f,%.2f,%.3f",
          week,
          pigs,
          startKg,
          meanKg,
          inside,
          lowKg,
          highKg,
          feedKg);
    }
  }

  @Test
  void the_mean_of_every_week_is_within_twelve_per_cent() throws IOException {
    assertThat(weeks()).hasSize(11);
    for (Week week : weeks()) {
      assertThat(forecast(week.startKg, week.week).likely())
          .as("week %s", week.week)
          .isCloseTo(week.meanKg, Percentage.withPercentage(12));
    }
  }

  @Test
  void at_least_six_in_ten_pigs_are_inside_the_band() throws IOException {
    int weighed = 0;
    int inside = 0;
    for (Week week : weeks()) {
      Band band = forecast(week.startKg, week.week);
      assertThat(band.low())
          .as("count again, week %s", week.week)
          .isCloseTo(week.lowKg, within(0.006));
      assertThat(band.high())
          .as("count again, week %s", week.week)
          .isCloseTo(week.highKg, within(0.006));
      weighed += week.pigs;
      inside += week.inside;
    }
    assertThat(weighed).isEqualTo(72 * 11 - 3);
    assertThat(inside / (double) weighed).isGreaterThanOrEqualTo(0.60);
  }

  /**
   * Feed eaten along the forecast, to appetite in a house, nothing wasted. The diets held 6 % of
   * rapeseed oil: 3,450 kcal/kg, a guess from that. Expected before the data were looked at: within
   * 15 % from the third week of feeding on, a tenth for the curve of intake and the rest for the
   * growth. Found: 10 to 13 % too little each week. The intake goes by weight alone, and these pigs
   * gained 0.96 kg a day, more than those behind the curve; nothing was moved for it.
   */
  @Test
  void the_feed_eaten_is_within_fifteen_per_cent() throws IOException {
    Feeding feeding = new Feeding(IntakeCurve.MIXED, 1, 1, 1, 0, 3450);
    for (Week week : weeks()) {
      if (week.week > 3) {
        double[] mornings =
            FeedIntake.mornings(day -> forecastOn(week.startKg, day), 7 * (week.week - 1));
        assertThat(FeedIntake.total(feeding, mornings).kg())
            .as("week %s", week.week)
            .isCloseTo(week.feedKg, Percentage.withPercentage(15));
      }
    }
  }

  @Test
  @EnabledIfSystemProperty(named = "dietox", matches = ".+", disabledReason = "needs the data set")
  void the_counts_are_those_of_the_data_set() throws IOException {
    Map<String, Map<Integer, Double>> pigs = new TreeMap<>();
    Map<Integer, List<Double>> feed = new TreeMap<>();
    try (InputStream in = Files.newInputStream(Path.of(System.getProperty("dietox")))) {
      for (Map<String, String> row : csv(in)) {
        pigs.computeIfAbsent(row.get("Pig"), pig -> new TreeMap<>())
            .put(Integer.valueOf(row.get("Time")), Double.valueOf(row.get("Weight")));
        if (!row.get("Feed").equals("NA")) {
          feed.computeIfAbsent(Integer.valueOf(row.get("Time")), week -> new ArrayList<>())
              .add(Double.valueOf(row.get("Feed")));
        }
      }
    }
    List<String> counted = new ArrayList<>();
    for (int week = 2; week <= 12; week++) {
      int weighed = 0;
      int inside = 0;
      double starts = 0;
      double weights = 0;
      for (Map<Integer, Double> pig : pigs.values()) {
        Double weight = pig.get(week);
        if (weight == null) {
          continue;
        }
        Band band = forecast(pig.get(1), week);
        weighed++;
        inside += weight >= band.low() && weight <= band.high() ? 1 : 0;
        starts += pig.get(1);
        weights += weight;
      }
      Band ofMean = forecast(starts / weighed, week);
      Week row =
          new Week(
              week,
              weighed,
              starts / weighed,
              weights / weighed,
              inside,
              ofMean.low(),
              ofMean.high(),
              feed.get(week).stream().mapToDouble(kg -> kg).average().orElseThrow());
      counted.add(row.row());
    }
    System.out.println(String.join("\n", counted));
    assertThat(weeks().stream().map(Week::row)).containsExactlyElementsOf(counted);
  }

  private static Band forecast(double startKg, int week) {
    return forecastFrom(startKg).weightOn(FIRST_WEEK.plusWeeks(week - 1));
  }

  private static double forecastOn(double startKg, double day) {
    return forecastFrom(startKg).weightOn(FIRST_WEEK.plusDays((long) day)).likely();
  }

  private static Forecast forecastFrom(double startKg) {
    return Forecast.of(
        GrowthClass.named("modern-cross"),
        1,
        Forecast.Setting.MEASURED,
        1,
        known(Weighing.Means.SCALE, FIRST_WEEK, startKg),
        false);
  }

  private static List<Week> weeks() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(DietoxTest.class.getResourceAsStream("/dietox/weeks.csv"))) {
      return csv(in).stream()
          .map(
              row ->
                  new Week(
                      Integer.parseInt(row.get("week")),
                      Integer.parseInt(row.get("pigs")),
                      Double.parseDouble(row.get("start_kg")),
                      Double.parseDouble(row.get("mean_kg")),
                      Integer.parseInt(row.get("inside")),
                      Double.parseDouble(row.get("low_kg")),
                      Double.parseDouble(row.get("high_kg")),
                      Double.parseDouble(row.get("feed_kg"))))
          .toList();
    }
  }

  private static List<Map<String, String>> csv(InputStream in) throws IOException {
    try (MappingIterator<Map<String, String>> rows =
        new CsvMapper()
            .readerForMapOf(String.class)
            .with(CsvSchema.emptySchema().withHeader())
            .readValues(in)) {
      return rows.readAll();
    }
  }
}
