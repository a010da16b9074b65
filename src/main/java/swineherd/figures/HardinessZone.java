package swineherd.figures;

import java.time.MonthDay;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.rulebook.Table;

/**
 * A plant hardiness zone ({@code usda-zones}): a band of 5 degF of the mean lowest temperature of
 * the year. A thirty-year mean, not the lowest on record.
 *
 * @param number 1 (coldest) to 13
 * @param half the colder or the milder half of the zone
 */
public record HardinessZone(int number, Half half) {
  private static final Pattern WRITTEN = Pattern.compile("(?:zone\\s*)?(\\d{1,2})\\s*([ab]?)");
  private static final double COLDEST_F = -60;
  private static final double HALF_F = 5;
  private static final int ZONES = 13;

  /** Half a zone. */
  public enum Half {
    /** The colder half. */
    A,
    /** The milder half. */
    B
  }

  /**
   * @throws OutsideDomainException if there is no such zone
   */
  public HardinessZone {
    OutsideDomainException.within("hardiness zone", number, 1, ZONES);
  }

  /**
   * Reads {@code 5b} or {@code zone 5}. Without a letter it is the colder half, since warmth hangs
   * on it.
   *
   * @throws OutsideDomainException if it is not a zone
   */
  public static HardinessZone parse(String written) {
    Matcher m = WRITTEN.matcher(written.strip().toLowerCase(Locale.ROOT));
    if (!m.matches()) {
      throw new OutsideDomainException("not a hardiness zone, such as 5b: " + written);
    }
    return new HardinessZone(
        Integer.parseInt(m.group(1)), m.group(2).equals("b") ? Half.B : Half.A);
  }

  /**
   * The zone of a place.
   *
   * @param extremeMinimum mean lowest temperature of the year, degC, -51.1 to 21.1
   * @throws OutsideDomainException outside the thirteen zones
   */
  public static HardinessZone of(double extremeMinimum) {
    double f = extremeMinimum * 1.8 + 32;
    // the edge between two halves belongs to the milder one; the small number undoes rounding
    int halves = (int) Math.floor((f - COLDEST_F) / HALF_F + 1e-9);
    if (Double.isNaN(f) || halves < 0 || halves >= 2 * ZONES) {
      throw new OutsideDomainException(
          "a yearly minimum of " + extremeMinimum + " degC is in no hardiness zone");
    }
    return new HardinessZone(halves / 2 + 1, halves % 2 == 0 ? Half.A : Half.B);
  }

  /** The zone's mean lowest temperature of the year, degC: its two edges and the middle. */
  public Band extremeMinimum() {
    double low = COLDEST_F + 2 * HALF_F * (number - 1) + (half == Half.B ? HALF_F : 0);
    return new Band(celsius(low), celsius(low + HALF_F / 2), celsius(low + HALF_F));
  }

  /**
   * Mean date of the first hard freeze (-2.2 degC) in the United States east of the Rockies, twelve
   * days after the first freeze; good to three weeks. Empty in zones where nothing is known or a
   * freeze is rare. Elsewhere, above all near the sea, a zone says little about the date: ask.
   */
  public Optional<MonthDay> firstHardFreezeEastUnitedStates() {
    Table freezes = Table.named("zone-freezes");
    String key = Integer.toString(number);
    if (!freezes.has(key)) {
      return Optional.empty();
    }
    MonthDay first = MonthDay.parse(freezes.row(key).text("first-freeze"));
    return Optional.of(MonthDay.from(first.atYear(2027).plusDays(12)));
  }

  /**
   * How far that date may be out, days to either side in eight places of ten; zones 3 to 9.
   *
   * @throws IllegalArgumentException for another zone
   */
  public double firstHardFreezeError() {
    return Table.named("zone-freezes").row(Integer.toString(number)).number("error-days");
  }

  @Override
  public String toString() {
    return number + half.name().toLowerCase(Locale.ROOT);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
