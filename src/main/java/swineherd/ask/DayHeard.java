package swineherd.ask;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import swineherd.units.Dates;
import swineherd.units.Dimension;
import swineherd.units.Quantity;
import swineherd.units.Spoken;
import swineherd.units.UnitSystem;
import swineherd.units.UnreadableException;

/** Days as people say them: april 10, yesterday, in three weeks, mid October. */
final class DayHeard {
  private static final Pattern AHEAD = Pattern.compile("in (.+)|(.+) from (?:now|today)");
  private static final Pattern AGO = Pattern.compile("(.+) ago");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})[./-](\\d{1,2})(?:[./-](\\d{2}|\\d{4}))?");
  private static final Pattern SHORT_YEAR = Pattern.compile("(.*[a-z].*\\s)['’]?(\\d{2})");
  private static final Pattern PART =
      Pattern.compile(
          "(?:the )?(early|beginning|start|middle|mid|late|end)?(?: of|-)? ?([a-z]{3,9})(?: (\\d{4}))?");
  private static final int A_YEAR = 365;
  private static final int FAR = 270;

  private final LocalDate today;
  private final UnitSystem units;

  DayHeard(LocalDate today, UnitSystem units) {
    this.today = today;
    this.units = units;
  }

  Heard date(String typed, boolean past) {
    String text = plain(typed);
    LocalDate relative = relative(text, past);
    if (relative != null) {
      return sure(relative);
    }
    if (text.matches(".*\\d{4}.*") && !NUMBERS.matcher(text).matches() && !isPart(text)) {
      return sure(Dates.parse(text));
    }
    Matcher numbers = NUMBERS.matcher(text);
    if (numbers.matches()) {
      return numbers(typed, numbers, past);
    }
    if (isPart(text)) {
      Matcher part = PART.matcher(text);
      part.matches();
      MonthDay day = part(part);
      LocalDate date =
          part.group(3) == null ? inferred(day, past) : day.atYear(Integer.parseInt(part.group(3)));
      return Heard.doubtful(date.toString(), words(date));
    }
    return inferred(inferred(Dates.parseDayOfYear(text), past));
  }

  Heard dayOfYear(String typed) {
    String text = plain(typed);
    Matcher numbers = NUMBERS.matcher(text);
    if (numbers.matches()) {
      boolean clear =
          Integer.parseInt(numbers.group(1)) > 12 || Integer.parseInt(numbers.group(2)) > 12;
      String words = Dates.words(monthDay(typed, numbers));
      return clear ? Heard.sure(words, words) : Heard.doubtful(words, words);
    }
    if (isPart(text)) {
      Matcher part = PART.matcher(text);
      part.matches();
      String words = Dates.words(part(part));
      return Heard.doubtful(words, words);
    }
    String words = Dates.words(Dates.parseDayOfYear(text));
    return Heard.sure(words, words);
  }

  private static String plain(String typed) {
    String text =
        typed
            .strip()
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\s+", " ")
            .replaceAll("^(?:on|about|around|the|on the) (?=.)", "")
            .replaceAll("[.!]+$", "");
    Matcher year = SHORT_YEAR.matcher(text);
    boolean named = year.matches() && year.group(1).matches(".*\\d.*");
    return named ? year.group(1) + "20" + year.group(2) : text;
  }

  private LocalDate relative(String text, boolean past) {
    switch (text) {
      case "today", "now" -> {
        return today;
      }
      case "yesterday" -> {
        return today.minusDays(1);
      }
      case "tomorrow" -> {
        return today.plusDays(1);
      }
      default -> {}
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().toLowerCase(Locale.ROOT);
      if (text.matches("(?:this |last |next )?" + name)) {
        boolean back = text.startsWith("last") || (past && !text.startsWith("next"));
        return today.with(back ? TemporalAdjusters.previous(day) : TemporalAdjusters.next(day));
      }
    }
    Matcher ahead = AHEAD.matcher(text);
    if (ahead.matches()) {
      return away(ahead.group(1) == null ? ahead.group(2) : ahead.group(1), 1);
    }
    Matcher ago = AGO.matcher(text);
    return ago.matches() ? away(ago.group(1), -1) : null;
  }

  private LocalDate away(String time, int sign) {
    try {
      double days = Quantity.parse(Spoken.digits(time).replaceFirst("^an? ", "1 "), Dimension.TIME);
      return Math.abs(days) > 50 * A_YEAR ? null : today.plusDays(sign * Math.round(days));
    } catch (UnreadableException e) {
      return null;
    }
  }

  private Heard numbers(String typed, Matcher numbers, boolean past) {
    MonthDay day = monthDay(typed, numbers);
    boolean clear =
        Integer.parseInt(numbers.group(1)) > 12 || Integer.parseInt(numbers.group(2)) > 12;
    LocalDate date = inferred(day, past);
    if (numbers.group(3) != null) {
      int year = Integer.parseInt(numbers.group(3));
      date =
          Dates.parse(
              (year < 100 ? 2000 + year : year)
                  + "-"
                  + day.getMonthValue()
                  + "-"
                  + day.getDayOfMonth());
    }
    return clear ? sure(date) : Heard.doubtful(date.toString(), words(date));
  }

  /** Month first as people in the United States write it, unless only the other way is a day. */
  private MonthDay monthDay(String typed, Matcher numbers) {
    int first = Integer.parseInt(numbers.group(1));
    int second = Integer.parseInt(numbers.group(2));
    boolean monthFirst = second > 12 || (first <= 12 && units == UnitSystem.US);
    try {
      return monthFirst ? MonthDay.of(first, second) : MonthDay.of(second, first);
    } catch (DateTimeException e) {
      throw new UnreadableException("there is no " + typed.strip(), "write it like 24 April");
    }
  }

  private static boolean isPart(String text) {
    Matcher part = PART.matcher(text);
    return part.matches() && isMonth(part.group(2));
  }

  private static boolean isMonth(String name) {
    try {
      Dates.parseDayOfYear("1 " + name);
      return true;
    } catch (UnreadableException e) {
      return false;
    }
  }

  private static MonthDay part(Matcher part) {
    int month = Dates.parseDayOfYear("1 " + part.group(2)).getMonthValue();
    String which = part.group(1) == null ? "mid" : part.group(1);
    int day =
        switch (which) {
          case "early", "beginning", "start" -> 5;
          case "late", "end" -> 25;
          default -> 15;
        };
    return MonthDay.of(month, Math.min(day, YearMonth.of(2027, month).lengthOfMonth()));
  }

  private LocalDate inferred(MonthDay day, boolean past) {
    int year = today.getYear();
    LocalDate date = day.atYear(year);
    while (past ? date.isAfter(today) : date.isBefore(today)) {
      date = day.atYear(past ? --year : ++year);
    }
    return date;
  }

  /** A day that has just gone by may be meant as such, not as the one in a year. */
  private Heard inferred(LocalDate date) {
    boolean far = ChronoUnit.DAYS.between(today, date) > FAR;
    return far ? Heard.doubtful(date.toString(), words(date)) : sure(date);
  }

  private Heard sure(LocalDate date) {
    return Heard.sure(date.toString(), words(date));
  }

  /** {@code 10 April 2027, in 40 days}. */
  private String words(LocalDate date) {
    long days = ChronoUnit.DAYS.between(today, date);
    String away =
        days == 0
            ? "today"
            : Math.abs(days) > A_YEAR
                ? ""
                : days > 0 ? "in " + counted(days) : counted(-days) + " ago";
    String name = date.getDayOfWeek().name();
    return name.charAt(0)
        + name.substring(1).toLowerCase(Locale.ROOT)
        + " "
        + Dates.words(date)
        + (away.isEmpty() ? "" : ", " + away);
  }

  private static String counted(long days) {
    return days == 1 ? "a day" : days < 15 ? days + " days" : Math.round(days / 7.0) + " weeks";
  }
}
