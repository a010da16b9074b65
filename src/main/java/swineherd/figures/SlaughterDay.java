package swineherd.figures;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import swineherd.rulebook.Table;
import swineherd.setup.Country;

/**
 * The last days: when to book, when to take the feed away, and whether the weather allows a home
 * kill. How a pig is killed is not told here: a licensed slaughterer or an abattoir does it.
 */
public final class SlaughterDay {
  private SlaughterDay() {}

  /** Hours from the last feed to the kill, as they suit the pig and the meat (fasting). */
  public enum Fast {
    SHORT("short"),
    GOOD("good"),
    LONG("long"),
    TOO_LONG("too-long");

    private final String key;

    Fast(String key) {
      this.key = key;
    }

    private double toHours() {
      return Table.named("fasting").row(key).number("toHours");
    }
  }

  /**
   * When to take the feed away, at home and before loading; water stays until loading.
   *
   * @param earliest not before this
   * @param latest not after this
   * @param fast what the shortest fast possible comes to; {@link Fast#GOOD} unless the pigs leave
   *     home so early that they stand fasted for too long on the road and at the plant
   */
  public record FeedOff(LocalDateTime earliest, LocalDateTime latest, Fast fast) {}

  /** What the weather makes of a carcass killed at home. */
  public enum Hanging {
    /** A cooler is named: the weather does not matter. */
    COOLER,
    /** Cold enough to hang in a ventilated shed. */
    SHED,
    /** Cold enough, and so cold that the meat may freeze on the first day and turn tough. */
    SHED_MAY_FREEZE,
    /** Too warm without a cooler: not on this day. */
    REFUSED
  }

  /**
   * Hours off feed by the clock on the wall.
   *
   * @throws IllegalArgumentException if the kill is before the last feed
   */
  public static double hoursOffFeed(LocalDateTime lastFeed, LocalDateTime kill) {
    if (kill.isBefore(lastFeed)) {
      throw new IllegalArgumentException("killed at " + kill + ", last fed later: " + lastFeed);
    }
    return Duration.between(lastFeed, kill).toMinutes() / 60.0;
  }

  /**
   * How a fast suits, waiting, loading and the road counted in: 12 to 18 hours is good
   * (ontario-05-065); other sources take 16 to 24 h or 24 h, the shorter is kinder.
   *
   * @param hours from the last feed to the kill, 0 or more
   * @throws OutsideDomainException if it is negative or more than a week
   */
  public static Fast fast(double hours) {
    OutsideDomainException.within("hours off feed", hours, 0, 168);
    if (hours < Fast.SHORT.toHours()) {
      return Fast.SHORT;
    }
    if (hours <= Fast.GOOD.toHours()) {
      return Fast.GOOD;
    }
    return hours <= Fast.LONG.toHours() ? Fast.LONG : Fast.TOO_LONG;
  }

  /**
   * When to take the feed away so that the fast is 12 to 18 hours and is spent at home as far as
   * can be: pigs fasted in the plant's pens fight.
   *
   * @param leave when the pigs leave home; for a home kill the time of the kill
   * @param kill when they are killed, not before they leave
   * @throws IllegalArgumentException if it is before
   */
  public static FeedOff feedOff(LocalDateTime leave, LocalDateTime kill) {
    if (kill.isBefore(leave)) {
      throw new IllegalArgumentException("killed at " + kill + ", leaves home later: " + leave);
    }
    LocalDateTime earliest = earlier(before(kill, Fast.GOOD.toHours()), leave);
    LocalDateTime latest = earlier(before(kill, Fast.SHORT.toHours()), leave);
    return new FeedOff(earliest, latest, fast(hoursOffFeed(latest, kill)));
  }

  /**
   * Whether a carcass killed at home can be chilled: without a cooler not if the night is above 1.7
   * C or the day above 4.4 C (usda-fb-2265).
   *
   * @param nightC forecast lowest temperature in degrees C
   * @param dayC forecast highest temperature in degrees C
   * @param coolerNamed whether the keeper has named a cooler; unknown counts as none
   * @throws OutsideDomainException if a temperature is not within -60 to 60 C
   */
  public static Hanging hanging(double nightC, double dayC, boolean coolerNamed) {
    OutsideDomainException.within("night temperature in C", nightC, -60, 60);
    OutsideDomainException.within("day temperature in C", dayC, -60, 60);
    if (coolerNamed) {
      return Hanging.COOLER;
    }
    if (nightC > weather("night") || dayC > weather("day")) {
      return Hanging.REFUSED;
    }
    return nightC < weather("may-freeze") ? Hanging.SHED_MAY_FREEZE : Hanging.SHED;
  }

  /**
   * Day by which the place should be booked: better still on the day the pigs are bought.
   *
   * @param kill the likely day of slaughter
   * @param country where the pigs are; null, where it is not known, counts as the longest
   */
  public static LocalDate bookBy(LocalDate kill, Country country) {
    return kill.minusWeeks((long) Table.named("booking").row(bookingRow(country)).number("weeks"));
  }

  private static String bookingRow(Country country) {
    if (country == Country.UNITED_STATES) {
      return "united-states";
    }
    if (country != null && country.isUnitedKingdom()) {
      return "united-kingdom";
    }
    return country != null && country.isEuropeanUnion() ? "european-union" : "other";
  }

  private static double weather(String key) {
    return Table.named("chilling").row(key).number("limit");
  }

  private static LocalDateTime before(LocalDateTime time, double hours) {
    return time.minusMinutes(Math.round(hours * 60));
  }

  private static LocalDateTime earlier(LocalDateTime a, LocalDateTime b) {
    return a.isBefore(b) ? a : b;
  }
}
