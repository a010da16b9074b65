package swineherd.units;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads and writes dates as people do, {@code 24 April 2027}, and as ISO 8601 has them. The month
 * names are kept here because loading them from the platform costs more than a whole check.
 */
public final class Dates {
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");
  private static final Pattern ISO = Pattern.compile("(\\d{4})-(\\d{1,2})-(\\d{1,2})");
  private static final Pattern DAY_FIRST =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?(?: of)? ([a-z]{3,9})\\.?,?(?: (\\d{4}))?");
  private static final Pattern MONTH_FIRST =
      Pattern.compile("([a-z]{3,9})\\.? (\\d{1,2})(?:st|nd|rd|th)?(?:,? (\\d{4}))?");

  private Dates() {}

  /**
   * A date with its year.
   *
   * @throws UnreadableException if it is none, or a day that does not exist
   */
  public static LocalDate parse(String written) {
    String accepted = "write it like 2027-04-24 or 24 April 2027";
    int[] parts = parts(written, accepted);
    if (parts[0] < 0) {
      throw new UnreadableException("\"" + written.strip() + "\" has no year", accepted);
    }
    if (parts[0] < 1990 || parts[0] > 2100) {
      throw new UnreadableException(
          "the year of \"" + written.strip() + "\" is not one in which these pigs live",
          "a year from 1990 to 2100");
    }
    try {
      return LocalDate.of(parts[0], parts[1], parts[2]);
    } catch (DateTimeException e) {
      throw new UnreadableException("there is no " + written.strip(), accepted);
    }
  }

  /**
   * A day of every year; a year that is written with it is left out of account.
   *
   * @throws UnreadableException if it is none, or a day that does not exist
   */
  public static MonthDay parseDayOfYear(String written) {
    String accepted = "write it like 20 October or Oct 20";
    int[] parts = parts(written, accepted);
    try {
      return MonthDay.of(parts[1], parts[2]);
    } catch (DateTimeException e) {
      throw new UnreadableException("there is no " + written.strip(), accepted);
    }
  }

  /** {@code 24 April 2027}. */
  public static String words(LocalDate date) {
    return words(MonthDay.from(date)) + " " + date.getYear();
  }

  /** {@code 24 April}. */
  public static String words(MonthDay day) {
    return day.getDayOfMonth() + " " + MONTHS.get(day.getMonthValue() - 1);
  }

  /** Year (-1 if there is none), month and day. */
  private static int[] parts(String written, String accepted) {
    String text = written.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    Matcher iso = ISO.matcher(text);
    if (iso.matches()) {
      return new int[] {number(iso, 1), number(iso, 2), number(iso, 3)};
    }
    Matcher dayFirst = DAY_FIRST.matcher(text);
    if (dayFirst.matches()) {
      return new int[] {
        number(dayFirst, 3), month(dayFirst.group(2), written, accepted), number(dayFirst, 1)
      };
    }
    Matcher monthFirst = MONTH_FIRST.matcher(text);
    if (monthFirst.matches()) {
      return new int[] {
        number(monthFirst, 3), month(monthFirst.group(1), written, accepted), number(monthFirst, 2)
      };
    }
    if (text.matches("\\d{1,2}[./-]\\d{1,2}[./-]\\d{2,4}")) {
      throw new UnreadableException(
          "\"" + written.strip() + "\" could be two different days", accepted);
    }
    throw new UnreadableException("\"" + written.strip() + "\" is not a date", accepted);
  }

  private static int number(Matcher matcher, int group) {
    return matcher.group(group) == null ? -1 : Integer.parseInt(matcher.group(group));
  }

  private static int month(String name, String written, String accepted) {
    for (int i = 0; i < MONTHS.size(); i++) {
      if (MONTHS.get(i).toLowerCase(Locale.ROOT).startsWith(name)
          || (name.equals("sept") && i == 8)) {
        return i + 1;
      }
    }
    throw new UnreadableException("\"" + written.strip() + "\" names no month", accepted);
  }
}
