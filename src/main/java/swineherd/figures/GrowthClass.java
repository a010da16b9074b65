package swineherd.figures;

import java.time.LocalDate;
import java.util.OptionalDouble;
import swineherd.rulebook.Table;

/**
 * Breeds that grow alike. The rows are in {@code rules/tables/growth-classes.csv}, with the source
 * of each; some are weak, and their {@code sigma} says so.
 *
 * @param key row in the table, or two of them for a cross
 * @param name in the keeper's words
 * @param asymptoteKg where the curve of growing pigs levels off, kg
 * @param ratePerDay rate on complete feed to appetite, housed, healthy, gilts, 1/day
 * @param eightWeekKg usual weight at eight weeks, kg
 * @param sigma standard deviation of ln(rate) from lot to lot of this class
 * @param lowestKg least start weight a forecast is made from, kg
 * @param highestShare greatest weight a forecast is made for, as a share of the asymptote
 * @param sexMatters whether barrows and boars grow faster than gilts
 * @param slaughterFromKg usual live weight at slaughter, least, kg
 * @param slaughterToKg the same, greatest, kg
 * @param slaughterMostKg the most that is usual anywhere, kg
 * @param cautionAboveKg weight above which dates run early, kg; empty where nothing is known
 * @param note what the keeper should know of the class; may be empty
 */
public record GrowthClass(
    String key,
    String name,
    double asymptoteKg,
    double ratePerDay,
    Band eightWeekKg,
    double sigma,
    double lowestKg,
    double highestShare,
    boolean sexMatters,
    double slaughterFromKg,
    double slaughterToKg,
    double slaughterMostKg,
    OptionalDouble cautionAboveKg,
    String note) {
  /**
   * The class in that row of the table.
   *
   * @throws IllegalArgumentException if there is none
   */
  public static GrowthClass named(String key) {
    Table.Row row = Table.named("growth-classes").row(key);
    return new GrowthClass(
        key,
        row.text("name"),
        row.number("asymptote_kg"),
        row.number("rate_per_day"),
        new Band(
            row.number("eight_week_low_kg"),
            row.number("eight_week_kg"),
            row.number("eight_week_high_kg")),
        row.number("sigma"),
        row.number("lowest_kg"),
        row.number("highest_share"),
        row.text("sex_matters").equals("yes"),
        row.number("slaughter_low_kg"),
        row.number("slaughter_high_kg"),
        row.maybe("slaughter_most_kg").orElse(row.number("slaughter_high_kg")),
        row.maybe("caution_above_kg"),
        row.text("note"));
  }

  /**
   * How pigs of a breed grow.
   *
   * @param breed key of the breed; null for one that is not known
   */
  public static GrowthClass ofBreed(String breed) {
    return breed == null ? unknownBreed() : named(Breed.named(breed).growthClass());
  }

  /** The middle of the live weights at which they usually go for slaughter, kg. */
  public double usualSlaughterKg() {
    return (slaughterFromKg + slaughterToKg) / 2;
  }

  /** What is assumed of a weaner of unknown breed: a modern cross, with less trust in the dates. */
  public static GrowthClass unknownBreed() {
    GrowthClass modern = named("modern-cross");
    return new GrowthClass(
        modern.key,
        "breed not known, taken as a " + modern.name,
        modern.asymptoteKg,
        modern.ratePerDay,
        modern.eightWeekKg,
        GrowthFactors.likely("unknown-breed"),
        modern.lowestKg,
        modern.highestShare,
        modern.sexMatters,
        modern.slaughterFromKg,
        modern.slaughterToKg,
        modern.slaughterMostKg,
        modern.cautionAboveKg,
        modern.note);
  }

  /**
   * The offspring of two classes: halfway between them, and 5 % faster, which is half of what
   * extension credits a cross with (source {@code maine-1119}: 9 to 17 %), because one parent is
   * often uncertain. Two breeds of one class stay in it: Tamworth on Berkshire grew like Berkshire
   * (source {@code hoops-2017}). Trust is that of the less known parent, and so are the bounds.
   */
  public GrowthClass crossedWith(GrowthClass other) {
    if (key.equals(other.key)) {
      return sigma >= other.sigma ? this : other;
    }
    return new GrowthClass(
        key + " x " + other.key,
        name + " x " + other.name,
        mean(asymptoteKg, other.asymptoteKg),
        mean(ratePerDay, other.ratePerDay) * GrowthFactors.likely("cross-heterosis"),
        new Band(
            mean(eightWeekKg.low(), other.eightWeekKg.low()),
            mean(eightWeekKg.likely(), other.eightWeekKg.likely()),
            mean(eightWeekKg.high(), other.eightWeekKg.high())),
        Math.max(sigma, other.sigma),
        Math.min(lowestKg, other.lowestKg),
        Math.min(highestShare, other.highestShare),
        sexMatters && other.sexMatters,
        mean(slaughterFromKg, other.slaughterFromKg),
        mean(slaughterToKg, other.slaughterToKg),
        mean(slaughterMostKg, other.slaughterMostKg),
        cautionAboveKg.isPresent() ? cautionAboveKg : other.cautionAboveKg,
        (note + " " + other.note).strip());
  }

  /**
   * The growth curve of this class under the keeper's feed, place and sex.
   *
   * @param factor product of the multipliers on the rate, 0.2 to 1.15; 1 is complete feed to
   *     appetite, housed, healthy, gilts ({@link GrowthFactors#product})
   * @throws OutsideDomainException if the factor is outside its bounds
   */
  public Growth growth(double factor) {
    Band bounds = GrowthFactors.band("factor-bounds");
    OutsideDomainException.within("growth factor", factor, bounds.low(), bounds.high());
    return new Growth(asymptoteKg, ratePerDay * factor, lowestKg, highestShare * asymptoteKg);
  }

  /**
   * What pigs of the class usually weigh at eight weeks, as a weighing with the error that goes
   * with not having seen them: the usual range is taken to hold eight in ten.
   *
   * @param on the day they are eight weeks old
   */
  public KnownWeight usualAtEightWeeks(LocalDate on) {
    double sd = (eightWeekKg.high() - eightWeekKg.low()) / 2 / Normal.Z80;
    return new KnownWeight(on, eightWeekKg.likely(), sd / eightWeekKg.likely());
  }

  private static double mean(double a, double b) {
    return (a + b) / 2;
  }
}
