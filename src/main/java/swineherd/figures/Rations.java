package swineherd.figures;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import swineherd.rulebook.Table;

/** What the feed should hold at a weight, and what it costs in growth when it does not. */
public final class Rations {
  private static final String WEIGHT = "live weight in kg";
  private static final String GAIN = "gain in kg a day";
  private static final double LYSINE_PER_KG_GAIN = 20;
  private static final double LEAST_PACE = 0.25;
  private static final Set<String> MODERN = Set.of("modern-cross", "improved");

  private Rations() {}

  /**
   * A diet as the growth table of {@code nrc-2012} asks for it.
   *
   * @param energy metabolizable energy, kcal/kg
   * @param sidLysine standardized ileal digestible lysine, % of the feed
   * @param lysine total lysine, % of the feed
   * @param calcium % of the feed
   * @param digestiblePhosphorus standardized total tract digestible phosphorus, % of the feed
   * @param phosphorus total phosphorus, % of the feed
   */
  public record Diet(
      double energy,
      double sidLysine,
      double lysine,
      double calcium,
      double digestiblePhosphorus,
      double phosphorus) {}

  /**
   * The diet of the table {@code rations} for a weight; on an edge the later phase.
   *
   * @param weight live weight in kg, 7 to 135
   * @throws OutsideDomainException for a weight outside 7 to 135 kg
   */
  public static Diet diet(double weight) {
    Table.Row row = phase("rations", OutsideDomainException.within(WEIGHT, weight, 7, 135));
    return new Diet(
        row.number("energy"),
        row.number("sid_lysine"),
        row.number("total_lysine"),
        row.number("calcium"),
        row.number("sttd_phosphorus"),
        row.number("total_phosphorus"));
  }

  /**
   * Crude protein to look for on the label of a bought cereal and soya feed. Entire males need a
   * point more ({@code yen-1986}); a breed slower than the modern ones may do with one or two
   * points less from 50 kg on (common practice), which lowers the likely and the low value but
   * forbids nothing.
   *
   * @param weight live weight in kg, 2.5 to 140
   * @param growthClass key of a {@link GrowthClass}; a cross with a modern parent counts as modern
   * @param entireMales whether any pig fed this is an entire male
   * @return % of the feed; the ends are the advised range
   * @throws OutsideDomainException for a weight outside 2.5 to 140 kg
   */
  public static Band protein(double weight, String growthClass, boolean entireMales) {
    Table.Row row = phase("protein", OutsideDomainException.within(WEIGHT, weight, 2.5, 140));
    Table classes = Table.named("feed-classes");
    boolean modern =
        Arrays.stream(growthClass.split(" x "))
            .anyMatch(parent -> MODERN.contains(classes.row(parent).key()));
    double more = entireMales ? 1 : 0;
    double low = row.number("protein_low") + more;
    double high = row.number("protein_high") + more;
    double likely = (low + high) / 2;
    boolean mayHaveLess = weight >= 50 && !modern;
    return mayHaveLess ? new Band(low - 2, likely - 1, high) : new Band(low, likely, high);
  }

  /**
   * Digestible lysine in a mix of ingredients. Where the table gives a range the lower end counts,
   * since lysine that is not there costs growth.
   *
   * @param kgPerDay kg a day fed to one pig, by row of {@code ingredients}
   * @return g a day, standardized ileal digestible
   * @throws IllegalArgumentException if an ingredient is not in the table
   * @throws OutsideDomainException if an amount lies outside 0 to 20 kg
   */
  public static double lysine(Map<String, Double> kgPerDay) {
    return kgPerDay.entrySet().stream()
        .mapToDouble(
            e ->
                OutsideDomainException.within(e.getKey() + " in kg a day", e.getValue(), 0, 20)
                    * sidLysine(e.getKey())
                    * 10)
        .sum();
  }

  /**
   * The gain that an intake of lysine allows, 20 g for each kg: what the growth table of {@code
   * nrc-2012} comes to in every phase from 25 to 135 kg.
   *
   * @param lysine digestible lysine in g a day, 0 to 200
   * @return kg a day at most
   */
  public static double gainCap(double lysine) {
    return OutsideDomainException.within("lysine in g a day", lysine, 0, 200) / LYSINE_PER_KG_GAIN;
  }

  /**
   * The pace of growth that a diet allows, against a complete one. Never under a quarter, where
   * pigs make do by growing fat and slow (a judgement); pigs on bare maize have stopped growing
   * altogether ({@code jas-1968-maize}), so this is no promise.
   *
   * @param lysine digestible lysine in g a day, 0 to 200
   * @param potentialGain gain on a complete diet at this weight, kg a day, over 0 to 2
   * @return 0.25 to 1, a factor on the rate of growth; the lowest of all such factors counts
   */
  public static double pace(double lysine, double potentialGain) {
    double potential = OutsideDomainException.within(GAIN, potentialGain, 1e-6, 2);
    return Math.max(LEAST_PACE, Math.min(1, gainCap(lysine) / potential));
  }

  private static double sidLysine(String ingredient) {
    return Table.named("ingredients").row(ingredient).number("sid_lysine_low");
  }

  private static Table.Row phase(String table, double weight) {
    Table.Row at = null;
    for (Table.Row row : Table.named(table).rows()) {
      if (at == null || weight >= row.number("from_kg")) {
        at = row;
      }
    }
    return at;
  }
}
